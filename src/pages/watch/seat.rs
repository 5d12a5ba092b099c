//! Where an animal stands on the Watch: on whose card, in which pen. While a hand is at work it keeps its seat.

use yeanling_core::book::{Animal, EweId};
use yeanling_core::flock::{Ewe, Flock, Lamb};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, EweTask, State, Task};
use yeanling_words::{animals, pens, watch as words};

use crate::Screen;
use crate::sheets::is_alone;

/// A lamb that no ewe rears is offered to one on its card for so long (ours); later on its own page.
const FOSTERED_UNTIL: TimeDelta = TimeDelta::days(3);

/// Where an animal stands.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Seat {
    /// Whose card it stands on: the ewe that rears it, or its own.
    pub(super) family: Animal,
    /// Whose that is.
    pub(super) title: String,
    /// A few soft words about the family.
    pub(super) aside: String,
    /// Where the card's head leads.
    pub(super) to: Option<Screen>,
    /// The pen it is in; nothing for the barn.
    pub(super) place: Option<String>,
    /// Whether no ewe rears it and one may still take it.
    pub(super) wants_ewe: bool,
    /// The afterbirth alone is asked of her, and this is asked alike of others; whether it is the vet's.
    pub(super) alike: Option<bool>,
    /// Whether it is the most urgent, whose ribbon is shown.
    pub(super) leads: bool,
    /// Whether it came while a hand was at work: it makes no room on a card that stands.
    pub(super) newly: bool,
}

/// Returns the seat of an animal.
pub(super) fn seat(flock: &Flock, animal: Animal, duties: &[&Duty], now: Moment) -> Seat {
    let ewe = match animal {
        Animal::Ewe(ewe) => Some(ewe),
        Animal::Lamb(id) => {
            flock.lamb(id).filter(|lamb| !is_alone(flock, lamb)).and_then(|lamb| flock.rearer(lamb))
        }
    };
    let lamb = match animal {
        Animal::Ewe(_) => None,
        Animal::Lamb(id) => flock.lamb(id),
    };
    let place = place(flock, animal);
    let (family, title, aside, to) = match (ewe.and_then(|ewe| flock.ewe(ewe)), lamb) {
        (Some(ewe), _) => {
            let title = words::family(&animals::ewe(ewe), place_of_ewe(flock, ewe).as_deref());
            (Animal::Ewe(ewe.id), title, reared(flock, ewe), Some(Screen::Ewe(ewe.id)))
        }
        // A litter whose dam nobody knows stays together.
        (None, Some(lamb)) if lamb.dam.is_none() && lamb.foster_dam().is_none() => {
            (Animal::Lamb(lamb.litter), words::NO_EWE.to_owned(), String::new(), None)
        }
        (None, _) => (animal, words::NO_EWE.to_owned(), String::new(), None),
    };
    let wants_ewe = ewe.is_none() && lamb.is_some_and(|lamb| lamb.age(now) < FOSTERED_UNTIL);
    let (leads, newly) = (false, false);
    Seat { family, title, aside, to, place, wants_ewe, alike: alike(duties, now), leads, newly }
}

/// Returns the pen an animal is in, in words.
pub(super) fn place(flock: &Flock, animal: Animal) -> Option<String> {
    let (pen, _) = flock.pen_of(animal)?;
    flock.pens.get(&pen).map(pens::pen)
}

fn place_of_ewe(flock: &Flock, ewe: &Ewe) -> Option<String> {
    place(flock, Animal::Ewe(ewe.id))
}

/// Says whom a ewe rears: a lamb of another by its name, else how many.
fn reared(flock: &Flock, ewe: &Ewe) -> String {
    let lambs = flock.lambs_at_foot(ewe.id);
    let others: Vec<String> = lambs
        .iter()
        .filter(|lamb| lamb.foster_dam() == Some(ewe.id) && lamb.dam != Some(ewe.id))
        .map(|lamb| animals::lamb(flock, lamb))
        .collect();
    if others.is_empty() { words::rears_own(lambs.len()) } else { words::rears(&others) }
}

/// Says of a lamb that is not with its own dam who rears it; nothing of one that is.
pub(super) fn reared_by(flock: &Flock, lamb: &Lamb) -> String {
    let name = |ewe: EweId| animals::ewe_of(flock, ewe);
    match lamb.foster_dam() {
        _ if lamb.on_bottle() && is_alone(flock, lamb) => yeanling_words::life::ON_BOTTLE.to_owned(),
        _ if is_alone(flock, lamb) => words::NO_EWE_SOFT.to_owned(),
        Some(ewe) if lamb.dam != Some(ewe) => words::with_ewe(&name(ewe)),
        Some(_) | None => String::new(),
    }
}

/// Says whether the afterbirth is all that is asked of a ewe, and whether it is the vet's; nothing where it hangs.
fn alike(duties: &[&Duty], now: Moment) -> Option<bool> {
    let mut due = duties.iter().filter(|duty| duty.state(now) > State::Coming);
    match (due.next()?.task, due.next()) {
        (Task::Ewe(_, EweTask::Afterbirth { vet, hanging: false }), None) => Some(vet),
        _ => None,
    }
}
