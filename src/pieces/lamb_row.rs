//! A lamb as a row of a list: its name, what it is, how it stands.

use crate::signals::prelude::*;
use yeanling_core::book::LambId;

use crate::farm::use_farm;
use crate::parts::{Row, RowState};
use crate::route::Screen;
use crate::words::common::day_and_clock;
use crate::words::{animals, frame, lamb as words};

/// Shows a lamb as a row that leads to its screen.
#[component]
pub(crate) fn LambRow(
    /// Which lamb.
    id: LambId,
) -> impl IntoView {
    let farm = use_farm();
    let row = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let lamb = ground.flock.lamb(id)?;
            let kind = animals::lamb_kind(lamb, ground.flock.practice.system);
            let kind = format!("{kind} · {}", words::born_at(&day_and_clock(lamb.born, now)));
            Some((animals::lamb(&ground.flock, lamb), kind))
        })
    });
    let name = Signal::derive(move || row.get().map_or_else(|| frame::GONE.to_owned(), |(name, _)| name));
    let kind = Signal::derive(move || row.get().map(|(_, kind)| kind).unwrap_or_default());
    view! { <Row name=name kind=kind state=Signal::stored(RowState::Coming) href=Screen::Lamb(id).hash() /> }
}
