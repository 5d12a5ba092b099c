//! The sheet that notes when the ram went in or came out.

use yeanling_core::book::{Event, GroupId};
use yeanling_words::{frame, group as words};

use super::{day_of, kin, on_day};
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect};

const DAY: &str = "ram-day";
const RAM: &str = "ram-name";

/// Returns the sheet.
pub(crate) fn sheet(view: &View, fields: &Fields, group: GroupId, goes_in: bool) -> SheetPage {
    let title = if goes_in { words::RAM_IN_ASK } else { words::RAM_OUT_ASK };
    let day = Field::new(words::DAY, FieldKind::Date, fields.text(DAY, &day_of(view.now)));
    let blocks = Blocks::new().field(DAY, day.error(fields.error(DAY)));
    let ram = Field::new(words::RAM, FieldKind::Text, fields.text(RAM, ""));
    let kin = || match (fields.written(RAM), view.flock.groups.get(&group)) {
        (Some(name), Some(group)) => kin::of(view, group, &name),
        _ => Blocks::new(),
    };
    let blocks = if goes_in { blocks.field(RAM, ram).then(kin()) } else { blocks };
    SheetPage::new(title, blocks.button(Button::new("save", frame::SAVE, Action::Save).filled()))
}

/// Saves what was typed.
pub(crate) fn save(view: &View, draft: &mut Draft, group: GroupId, goes_in: bool) -> Vec<Effect> {
    let fields = draft.top();
    let Some(at) = on_day(view, &fields.text(DAY, &day_of(view.now))) else {
        return draft.say_wrong(DAY, words::NO_DAY);
    };
    let ram = fields.written(RAM);
    let event = if goes_in { Event::RamIn { group, ram, age: None } } else { Event::RamOut { group } };
    draft.save(view, DAY, vec![view.noting_at(event, at)])
}
