//! One file a screen. A screen reads the farm, shows parts and pieces, and notes the next thing; it knows no other.

mod bottle_round;
mod cold_lamb;
mod ewe;
mod feed;
mod figures;
mod flock;
mod hand_over;
mod lamb;
mod lambing;
mod night;
mod pens;
mod race;
mod season;
mod watch;
mod weighing;

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
        Screen::Pens => view! { <pens::Pens /> }.into_any(),
        Screen::Pen(pen) => view! { <pens::PenScreen id=pen /> }.into_any(),
        Screen::BottleRound => view! { <bottle_round::BottleRound /> }.into_any(),
        Screen::ColdLamb(lamb) => view! { <cold_lamb::ColdLamb lamb=lamb /> }.into_any(),
        Screen::Figures => view! { <figures::Figures /> }.into_any(),
        Screen::HandOver => view! { <hand_over::HandOver /> }.into_any(),
        // Drawn as pages.
        Screen::More
        | Screen::Stores
        | Screen::Practice
        | Screen::Medicines
        | Screen::Year
        | Screen::Help
        | Screen::Lost => ().into_any(),
        Screen::Season => view! { <season::Season /> }.into_any(),
        Screen::Group(id) => view! { <season::GroupScreen id=id /> }.into_any(),
        Screen::Race(id) => view! { <race::Race id=id /> }.into_any(),
        Screen::Weighing => view! { <weighing::Weighing /> }.into_any(),
        Screen::Feed => view! { <feed::FeedScreen /> }.into_any(),
        Screen::Night => view! { <night::Night /> }.into_any(),
    }
}
