//! The sheets that note when the ram went in or came out, and that he stays.

use chrono::NaiveTime;
use yeanling_core::book::{Event, GroupId, PlannedJob, Planning};
use yeanling_words::common::read_field_day;
use yeanling_words::{frame, group as words, plan};

use super::{day_of, kin, on_day};
use crate::block::{Choice, Choices, Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect};

const DAY: &str = "ram-day";
const RAM: &str = "ram-name";
const UNTIL: &str = "ram-until";

/// Returns the sheet.
pub(crate) fn sheet(view: &View, fields: &Fields, group: GroupId, goes_in: bool) -> SheetPage {
    let title = if goes_in { words::RAM_IN_ASK } else { words::RAM_OUT_ASK };
    let day = Field::new(words::DAY, FieldKind::Date, fields.text(DAY, &day_of(view.now)));
    let day = day.hint(words::DAY_AHEAD);
    let blocks = Blocks::new().field(DAY, day.error(fields.error(DAY)));
    let ram = Field::new(words::RAM, FieldKind::Text, fields.text(RAM, ""));
    let kin = || match (fields.written(RAM), view.flock.groups.get(&group)) {
        (Some(name), Some(group)) => kin::of(view, group, &name),
        _ => Blocks::new(),
    };
    let blocks = if goes_in {
        blocks.field(RAM, ram).choices("ram-of-book", of_book(view, fields)).then(kin())
    } else {
        blocks
    };
    SheetPage::new(title, blocks.button(Button::new("save", frame::SAVE, Action::Save).filled()))
}

/// The rams of the book, each by his tag: a press types it.
fn of_book(view: &View, fields: &Fields) -> Choices {
    let living = view.flock.rams.values().filter(|ram| ram.lives());
    let tags: Vec<&str> = living.filter_map(|ram| ram.tag.as_deref()).collect();
    let typed = fields.text(RAM, "");
    let chosen = tags.iter().position(|tag| tag.eq_ignore_ascii_case(typed.trim()));
    let options = tags.iter().map(|tag| Choice::new(*tag, Action::Type(RAM.into(), (*tag).to_owned())));
    Choices::new(words::OF_BOOK, options.collect(), chosen).snug()
}

/// Saves what was typed.
pub(crate) fn save(view: &View, draft: &mut Draft, group: GroupId, goes_in: bool) -> Vec<Effect> {
    let fields = draft.top();
    let typed = fields.text(DAY, &day_of(view.now));
    let Some(at) = on_day(view, &typed) else { return draft.say_wrong(DAY, words::NO_DAY) };
    if let Some(day) = read_field_day(&typed).filter(|day| *day > view.now.local().date()) {
        // A day ahead is planned: nothing is noted that has not come yet.
        let what = if goes_in { PlannedJob::RamIn } else { PlannedJob::RamOut };
        let planned = Planning::Planned { what, group: Some(group), on: Some(day) };
        return draft.save(view, DAY, vec![view.noting(Event::Planning(planned))]);
    }
    let ram = fields.written(RAM);
    let event = if goes_in { Event::RamIn { group, ram, age: None } } else { Event::RamOut { group } };
    draft.save(view, DAY, vec![view.noting_at(event, at)])
}

/// Returns the sheet that says that he stays.
pub(crate) fn stays_sheet(fields: &Fields) -> SheetPage {
    let until = Field::new(plan::HE_STAYS_UNTIL, FieldKind::Date, fields.text(UNTIL, ""));
    let blocks = Blocks::new().text(plan::HE_STAYS_TEXT).field(UNTIL, until.error(fields.error(UNTIL)));
    let save = Button::new("save", plan::HE_STAYS, Action::Save).filled();
    SheetPage::new(plan::HE_STAYS_ASK, blocks.button(save))
}

/// Saves that he stays: until the end of the day that was typed, or until each ewe has lambed.
pub(crate) fn save_stays(view: &View, draft: &mut Draft, group: GroupId) -> Vec<Effect> {
    let until = match draft.top().written(UNTIL) {
        None => None,
        Some(typed) => {
            let Some(day) = read_field_day(&typed) else { return draft.say_wrong(UNTIL, words::NO_DAY) };
            let end = NaiveTime::from_hms_opt(23, 59, 0).unwrap_or_default();
            Some((view.at_local)(day.and_time(end)))
        }
    };
    let stays = Event::Planning(Planning::RamStays { group, until });
    draft.save(view, UNTIL, vec![view.noting(stays)])
}
