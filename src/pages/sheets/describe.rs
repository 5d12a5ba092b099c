//! The sheet in which is noted what is known of a ewe from before.

use yeanling_core::book::{Animal, BirthDay, Event, EweId, Life};
use yeanling_words::life as words;

use super::parts::{save_button, whose};
use crate::Effect;
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;

const BORN: &str = "describe-born";
const BREED: &str = "describe-breed";

/// Returns the sheet; what is known stands there.
pub(super) fn sheet(view: &View, fields: &Fields, ewe: EweId) -> SheetPage {
    let (born, breed) = typed(view, fields, ewe);
    let born =
        Field::new(words::BORN, FieldKind::Text, born).hint(words::BORN_HINT).error(fields.error(BORN));
    let blocks = Blocks::new()
        .field(BORN, born)
        .field(BREED, Field::new(words::BREED, FieldKind::Text, breed))
        .button(save_button());
    SheetPage::new(words::DESCRIBE_ASK, blocks).whose(whose(view, Animal::Ewe(ewe)))
}

fn typed(view: &View, fields: &Fields, ewe: EweId) -> (String, String) {
    let her = view.flock.grown(ewe);
    let born = her.and_then(|her| her.born).map(typed_birth_day).unwrap_or_default();
    let breed = her.and_then(|her| her.breed.clone()).unwrap_or_default();
    (fields.text(BORN, &born), fields.text(BREED, &breed))
}

fn typed_birth_day(born: BirthDay) -> String {
    match born {
        BirthDay::Year(year) => year.to_string(),
        BirthDay::Day(day) => day.to_string(),
    }
}

/// Saves what was typed.
pub(super) fn save(view: &View, draft: &mut Draft, ewe: EweId) -> Vec<Effect> {
    let (born, breed) = typed(view, draft.top(), ewe);
    let born = match BirthDay::parse(&born) {
        _ if born.trim().is_empty() => None,
        Ok(born) => Some(born),
        Err(wrong) => return draft.say_wrong(BORN, words::no_birth_day(&wrong)),
    };
    let breed = Some(breed.trim().to_owned()).filter(|breed| !breed.is_empty());
    draft.save(view, BORN, vec![view.noting(Event::Life(Life::Described { ewe, born, breed }))])
}
