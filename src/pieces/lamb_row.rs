//! A lamb as a row of a list: its name, what it is, how it stands.

use crate::signals::prelude::*;
use yeanling_core::book::LambId;
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::units::Moment;

use crate::farm::use_farm;
use crate::parts::{Row, RowState};
use crate::route::Screen;
use crate::words::common::day_and_clock;
use crate::words::{animals, frame, lamb as words, life};

/// Shows a lamb as a row that leads to its screen.
#[component]
pub(crate) fn LambRow(
    /// Which lamb.
    id: LambId,
) -> impl IntoView {
    let farm = use_farm();
    let row = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| Some(lamb_words(&ground.flock, ground.flock.lamb(id)?, now)))
    });
    let name = Signal::derive(move || row.get().map_or_else(|| frame::GONE.to_owned(), |(name, _)| name));
    let kind = Signal::derive(move || row.get().map(|(_, kind)| kind).unwrap_or_default());
    view! { <Row name=name kind=kind state=Signal::stored(RowState::Coming) href=Screen::Lamb(id).hash() /> }
}

/// Returns a lamb's name, and what and of when it is: "ram lamb · born 02:14".
pub(crate) fn lamb_words(flock: &Flock, lamb: &Lamb, now: Moment) -> (String, String) {
    let kind = animals::lamb_kind(lamb, flock.practice.system);
    let kind = format!("{kind} · {}", words::born_at(&day_and_clock(lamb.born, now)));
    let with = lamb.foster_dam().map(|ewe| format!(" · {}", life::with_ewe(&animals::ewe_of(flock, ewe))));
    (animals::lamb(flock, lamb), kind + &with.unwrap_or_default())
}
