//! A lamb as a row of a list: its name, what it is, how it stands.

use yeanling_core::book::LambId;
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::units::Moment;
use yeanling_words::common::day_and_clock;
use yeanling_words::{animals, frame, lamb as words, life};

use crate::block::Row;
use crate::page::key_of;
use crate::view::View;
use crate::{Key, Screen};

/// Returns a lamb as a row that leads to its screen.
pub(crate) fn lamb_row(view: &View, id: LambId) -> (Key, Row) {
    let told = view.flock.lamb(id).map(|lamb| lamb_words(view.flock, lamb, view.now));
    let (name, kind) = told.unwrap_or_else(|| (frame::NOT_HERE.to_owned(), String::new()));
    (key_of("lamb", id.entry()), Row::new(name).kind(kind).to(Screen::Lamb(id)))
}

/// Returns a lamb's name, and what and of when it is: "ram lamb · born 02:14".
pub(crate) fn lamb_words(flock: &Flock, lamb: &Lamb, now: Moment) -> (String, String) {
    let kind = animals::lamb_kind(lamb, flock.settings.system);
    let kind = format!("{kind} · {}", words::born_at(&day_and_clock(lamb.born, now)));
    let with = lamb.foster_dam().map(|ewe| format!(" · {}", life::with_ewe(&animals::ewe_of(flock, ewe))));
    (animals::lamb(flock, lamb), kind + &with.unwrap_or_default())
}
