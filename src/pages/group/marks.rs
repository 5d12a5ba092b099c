//! Crayon marks of a whole group: the color and the day stand there, the ewes are picked, one press notes them all.

use chrono::{Days, NaiveDate};
use yeanling_core::book::{Event, EweId, GroupId};
use yeanling_core::flock::{Ewe, Group};
use yeanling_words::common::{read_field_day, short_date};
use yeanling_words::{group as words, rejections, season};

use super::day_of;
use crate::block::{Choice, Choices, Field, FieldKind};
use crate::draft::{Draft, Fields, Noting};
use crate::page::{Blocks, SheetPage};
use crate::pick_many::{self, Pickable};
use crate::view::View;
use crate::{Action, Button, Effect, Sheet};

const COLOR: &str = "marks-color";
const OTHER: &str = "marks-other-color";
const AGO: &str = "marks-day";
const DAY: &str = "marks-other-day";
const EWES: &str = "marks-ewe";

/// So many days back in one tap; the last is any other day.
const AGOS: [Option<u64>; 4] = [Some(0), Some(1), Some(2), None];

/// The colors to choose from: the crayon that is on the ram first, then those that were, then the usual ones.
fn colors(group: &Group) -> Vec<String> {
    let mut colors: Vec<String> = Vec::new();
    let worn = group.crayons.iter().rev().map(|(_, color)| color.as_str());
    for color in worn.chain(words::COLORS) {
        if colors.iter().all(|other| !other.eq_ignore_ascii_case(color)) {
            colors.push(color.to_owned());
        }
    }
    colors
}

/// The living ewes of a group.
fn ewes<'a>(view: &View<'a>, group: &'a Group) -> Vec<&'a Ewe> {
    group.ewes().filter_map(|ewe| view.flock.ewe(ewe)).filter(|ewe| ewe.lives()).collect()
}

/// Returns the sheet.
pub(crate) fn sheet(view: &View, fields: &Fields, id: GroupId) -> SheetPage {
    let Some(group) = view.flock.groups.get(&id) else { return SheetPage::new(words::MARKS, Blocks::new()) };
    let options = colors(group).into_iter().enumerate();
    let options = options.map(|(place, color)| Choice::new(color, Action::Choose(COLOR.into(), place)));
    let color = Choices::new(season::COLOR, options.collect(), Some(fields.chosen(COLOR).unwrap_or(0)));
    let other = Field::new(words::OTHER_COLOR, FieldKind::Text, fields.text(OTHER, ""));
    let changed =
        Button::new("crayon-changed", words::CRAYON_CHANGED, Action::Ask(Sheet::Crayon(id))).small();
    let came = group.ram_times().last().map(|(came, _)| *came);
    let pickable = |ewe: &Ewe| {
        // What was marked since this ram came; an earlier season's mark is no mark of his.
        let last = ewe.marks.last().filter(|mark| came.is_none_or(|came| mark.at >= came));
        let note = last.map(|mark| words::marked(&mark.color, mark.at.local().date())).unwrap_or_default();
        Pickable { ewe: ewe.id, note }
    };
    let ewes = ewes(view, group);
    let ids: Vec<EweId> = ewes.iter().map(|ewe| ewe.id).collect();
    let count = pick_many::picked(fields, EWES, &ids).len();
    let save = Button::new("save", words::mark(count), Action::Save).filled().off_if(count == 0);
    let blocks = Blocks::new()
        .choices(COLOR, color.labelled().snug())
        .fold("marks-other", words::OTHER_COLOR, Blocks::new().field(OTHER, other).button(changed))
        .choices(AGO, days(view, fields));
    let blocks = match fields.pick(AGO, &AGOS, AGOS[0]) {
        Some(_) => blocks,
        None => {
            let day = Field::new(words::DAY, FieldKind::Date, fields.text(DAY, &day_of(view.now)));
            blocks.field(DAY, day.error(fields.error(DAY)))
        }
    };
    let grid = pick_many::blocks(view, fields, EWES, ewes.into_iter().map(pickable).collect());
    let blocks = if grid.is_empty() { blocks.text(words::NO_EWES) } else { blocks.then(grid) };
    SheetPage::new(words::MARKS, blocks.wrong(fields.error(EWES)).button(save)).whose(group.name.clone())
}

/// Today, the two days before it, and any other.
fn days(view: &View, fields: &Fields) -> Choices {
    let today = view.now.local().date();
    let option = |(place, ago): (usize, Option<u64>)| {
        let label = match ago {
            Some(0) => words::TODAY.to_owned(),
            Some(ago) => short_date(back(today, ago)),
            None => words::OTHER_DAY.to_owned(),
        };
        Choice::new(label, Action::Choose(AGO.into(), place))
    };
    let options = AGOS.into_iter().enumerate().map(option).collect();
    Choices::new(words::SEEN_ON, options, Some(fields.chosen(AGO).unwrap_or(0))).labelled().snug()
}

fn back(today: NaiveDate, days: u64) -> NaiveDate {
    today.checked_sub_days(Days::new(days)).unwrap_or(today)
}

/// Notes the marks; the sheet stays for the next color.
pub(crate) fn save(view: &View, draft: &mut Draft, id: GroupId) -> Vec<Effect> {
    let Some(group) = view.flock.groups.get(&id) else { return Vec::new() };
    draft.top_mut().all_right();
    let fields = draft.top();
    let colors = colors(group);
    let chosen = fields.chosen(COLOR).and_then(|place| colors.get(place)).or(colors.first()).cloned();
    let color = fields.written(OTHER).or(chosen).unwrap_or_default();
    let day = match fields.pick(AGO, &AGOS, AGOS[0]) {
        Some(ago) => Some(back(view.now.local().date(), ago)),
        None => read_field_day(&fields.text(DAY, &day_of(view.now))),
    };
    let Some(day) = day else { return draft.say_wrong(DAY, words::NO_DAY) };
    let at = view.on_day(day);
    let ids: Vec<EweId> = ewes(view, group).iter().map(|ewe| ewe.id).collect();
    let mark = |ewe: EweId| view.noting_at(Event::CrayonMark { ewe, color: color.clone() }, at);
    let notings: Vec<Noting> = pick_many::picked(fields, EWES, &ids).into_iter().map(mark).collect();
    if notings.is_empty() {
        return Vec::new();
    }
    if let Err(rejection) = view.validate(&notings) {
        let said = rejections::rejection(&rejection, view.now, view.system());
        return draft.say_wrong(EWES, said);
    }
    pick_many::let_go(draft.top_mut(), EWES, &ids);
    draft.top_mut().forget(OTHER);
    vec![Effect::Note(notings)]
}

/// Returns the sheet that says which crayon is on the ram now.
pub(crate) fn crayon_sheet(view: &View, id: GroupId) -> SheetPage {
    let Some(group) = view.flock.groups.get(&id) else { return SheetPage::new(words::CRAYON, Blocks::new()) };
    let now = group.crayon().unwrap_or_default();
    let other = |color: &String| !color.eq_ignore_ascii_case(now);
    let option = |color: String| {
        let event = Event::CrayonChanged { group: id, color: color.clone() };
        Choice::new(color, Action::Answer(vec![event]))
    };
    let options = colors(group).into_iter().filter(other).map(option).collect();
    let blocks = Blocks::new()
        .text(words::CRAYON_TEXT)
        .choices("crayon-now", Choices::new(words::CRAYON, options, None).snug());
    SheetPage::new(words::CRAYON, blocks).whose(group.name.clone())
}
