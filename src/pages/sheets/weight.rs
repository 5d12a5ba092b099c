//! The sheet in which a lamb's weight is noted.

use yeanling_core::book::{Animal, Event, LambId};
use yeanling_core::units::{Mass, TimeDelta, TypedError};
use yeanling_words::{errors, lamb as words};

use super::parts::{save_button, whose};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::weight::{self, Weighed};
use crate::{Action, Effect};

const WEIGHT: &str = "lamb-weight";

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, lamb: LambId) -> SheetPage {
    let blocks = weight::pad(fields, WEIGHT, words::WEIGHT, view.system(), question(view, fields, lamb))
        .button(save_button());
    SheetPage::new(words::WEIGH_ASK, blocks).whose(whose(view, Animal::Lamb(lamb)))
}

/// Asks whether pounds were meant, once what is typed was to be saved.
fn question(view: &View, fields: &Fields, lamb: LambId) -> Blocks {
    if !is_newborn(view, lamb) || !weight::was_asked(fields, WEIGHT, view.system()) {
        return Blocks::new();
    }
    let unit = weight::unit(fields, WEIGHT, view.system());
    match Weighed::at_birth(&fields.text(WEIGHT, ""), unit) {
        Weighed::Ask(typed, meant) => {
            weight::ask_pounds(typed, meant, |mass| Action::Answer(vec![Event::Weighed { lamb, mass }]))
        }
        Weighed::Nothing | Weighed::Good(_) | Weighed::Wrong(_) => Blocks::new(),
    }
}

/// Whether what is weighed now is a birth weight.
fn is_newborn(view: &View, lamb: LambId) -> bool {
    view.flock.lamb(lamb).is_some_and(|lamb| lamb.age(view.now) < TimeDelta::hours(24))
}

/// Saves what was typed.
pub(super) fn save(view: &View, draft: &mut Draft, lamb: LambId) -> Vec<Effect> {
    let unit = weight::unit(draft.top(), WEIGHT, view.system());
    let text = draft.top().text(WEIGHT, "");
    draft.top_mut().right(WEIGHT);
    let said = |error: &TypedError| errors::typed(error, errors::Field::Mass, unit);
    let weighed = if is_newborn(view, lamb) {
        Weighed::at_birth(&text, unit)
    } else {
        Mass::parse(&text, unit).map_or_else(|error| Weighed::Wrong(said(&error)), Weighed::Good)
    };
    let mass = match weighed {
        Weighed::Good(mass) => mass,
        Weighed::Nothing => return draft.say_wrong(WEIGHT, said(&TypedError::Empty)),
        Weighed::Wrong(wrong) => return draft.say_wrong(WEIGHT, wrong),
        Weighed::Ask(..) => {
            weight::keep_asked(draft.top_mut(), WEIGHT, view.system());
            return Vec::new();
        }
    };
    // A newborn's weight is held against what newborns weigh, not against its last.
    let asks = if is_newborn(view, lamb) {
        None
    } else {
        weight::asks_once(view, draft.top_mut(), WEIGHT, lamb, mass)
    };
    match asks {
        Some(question) => draft.say_wrong(WEIGHT, question),
        None => draft.save(view, WEIGHT, vec![view.noting(Event::Weighed { lamb, mass })]),
    }
}
