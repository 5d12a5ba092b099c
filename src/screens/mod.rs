//! One file a screen. A screen reads the farm, shows parts and pieces, and notes the next thing; it knows no other.

mod cold_lamb;
mod ewe;
mod feed;
mod figures;
mod hand_over;
mod help;
mod lamb;
mod lambing;
mod lost;
mod medicines;
mod pens;
mod practice;
mod race;
mod season;
mod weighing;
mod year;

pub(crate) use lambing::{HalfTyped, JustBorn};

use crate::signals::prelude::*;

use crate::route::Screen;

/// Returns the screen at an address.
pub(crate) fn show(screen: Screen) -> AnyView {
    match screen {
        Screen::Lambing => view! { <lambing::Who /> }.into_any(),
        Screen::LambingEwe(ewe) => view! { <lambing::Lambing of=lambing::Of::Ewe(ewe) /> }.into_any(),
        Screen::LambingUnknown => view! { <lambing::Lambing of=lambing::Of::Unknown /> }.into_any(),
        Screen::LambingLamb(lamb) => view! { <lambing::Lambing of=lambing::Of::Lamb(lamb) /> }.into_any(),
        Screen::Lamb(lamb) => view! { <lamb::LambScreen id=lamb /> }.into_any(),
        Screen::Ewe(ewe) => view! { <ewe::EweScreen id=ewe /> }.into_any(),
        Screen::Pens => view! { <pens::Pens /> }.into_any(),
        Screen::Pen(pen) => view! { <pens::PenScreen id=pen /> }.into_any(),
        Screen::ColdLamb(lamb) => view! { <cold_lamb::ColdLamb lamb=lamb /> }.into_any(),
        Screen::Figures => view! { <figures::Figures /> }.into_any(),
        Screen::HandOver => view! { <hand_over::HandOver /> }.into_any(),
        Screen::Help => view! { <help::Help /> }.into_any(),
        Screen::Practice => view! { <practice::Practice /> }.into_any(),
        // Drawn as pages.
        Screen::More
        | Screen::Stores
        | Screen::BottleRound
        | Screen::Night
        | Screen::Flock
        | Screen::Watch => ().into_any(),
        Screen::Season => view! { <season::Season /> }.into_any(),
        Screen::Group(id) => view! { <season::GroupScreen id=id /> }.into_any(),
        Screen::Race(id) => view! { <race::Race id=id /> }.into_any(),
        Screen::Medicines => view! { <medicines::Medicines /> }.into_any(),
        Screen::Weighing => view! { <weighing::Weighing /> }.into_any(),
        Screen::Feed => view! { <feed::FeedScreen /> }.into_any(),
        Screen::Year => view! { <year::Year /> }.into_any(),
        Screen::Lost => view! { <lost::Lost /> }.into_any(),
    }
}
