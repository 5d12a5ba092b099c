//! The screens that are still drawn by hand.

mod bottle_round;
mod cold_lamb;
mod ewe;
mod flock;
mod help;
mod lamb;
mod lambing;
mod lost;
mod night;
mod watch;
mod year;

pub(crate) use flock::Sought;
pub(crate) use lambing::{HalfTyped, JustBorn};

use crate::signals::prelude::*;

use crate::route::Screen;

/// Returns the screen at an address.
pub(crate) fn show(screen: Screen) -> AnyView {
    match screen {
        Screen::Watch => view! { <watch::Watch /> }.into_any(),
        Screen::Lambing => view! { <lambing::Who /> }.into_any(),
        Screen::LambingEwe(ewe) => view! { <lambing::Lambing of=lambing::Of::Ewe(ewe) /> }.into_any(),
        Screen::LambingUnknown => view! { <lambing::Lambing of=lambing::Of::Unknown /> }.into_any(),
        Screen::LambingLamb(lamb) => view! { <lambing::Lambing of=lambing::Of::Lamb(lamb) /> }.into_any(),
        Screen::Lamb(lamb) => view! { <lamb::LambScreen id=lamb /> }.into_any(),
        Screen::Ewe(ewe) => view! { <ewe::EweScreen id=ewe /> }.into_any(),
        Screen::Flock => view! { <flock::Flock /> }.into_any(),
        Screen::BottleRound => view! { <bottle_round::BottleRound /> }.into_any(),
        Screen::ColdLamb(lamb) => view! { <cold_lamb::ColdLamb lamb=lamb /> }.into_any(),
        Screen::Help => view! { <help::Help /> }.into_any(),
        Screen::Year => view! { <year::Year /> }.into_any(),
        Screen::Night => view! { <night::Night /> }.into_any(),
        Screen::Lost => view! { <lost::Lost /> }.into_any(),
        _ => ().into_any(),
    }
}
