//! The sheet in which is noted how an animal left.

use yeanling_core::book::{Animal, Event, Life};
use yeanling_words::life as words;

use super::parts::{choices, save_button, whose, wrong};
use crate::Effect;
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;

const HOW: &str = "leave-how";
const TO: &str = "leave-to";

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, animal: Animal) -> SheetPage {
    let ways = words::DEPARTURES.map(words::departure);
    let ways = choices(HOW, words::LEAVE_ASK, ways, fields.chosen(HOW)).stacked();
    let blocks = Blocks::new()
        .choices(HOW, ways)
        .then(wrong("leave-wrong", fields.error(HOW)))
        .field(TO, Field::new(words::TO, FieldKind::Text, fields.text(TO, "")))
        .button(save_button());
    SheetPage::new(words::LEAVE_ASK, blocks).whose(whose(view, animal))
}

/// Saves how it left.
pub(super) fn save(view: &View, draft: &mut Draft, animal: Animal) -> Vec<Effect> {
    let fields = draft.top();
    let Some(how) = fields.chosen(HOW).and_then(|place| words::DEPARTURES.get(place)) else {
        return draft.say_wrong(HOW, words::NO_HOW);
    };
    let went = Event::Life(Life::Went { animal, how: *how, to: fields.written(TO) });
    draft.save(view, HOW, vec![view.noting(went)])
}
