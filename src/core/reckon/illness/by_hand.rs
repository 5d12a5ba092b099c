//! Without a thermometer: a finger in the mouth. Cold is taken as under 37 °C; warm proves nothing.
//!
//! No trial of a finger in a lamb's mouth was found, so each gap takes the safer branch, and a tube still needs a
//! measured 37 °C.

use super::super::cited::{ours, seen};
use super::cited::{GOTLANDS, HOME_FARM_89, INFOVETS, IRISH_FARMERS_25, OURS, SCOTT};
use crate::source::Source;
use crate::terms::{Mouth, Suck};

/// Where it was printed, and how far touch can be trusted at all.
pub const SOURCES: &[Source] = &[
    INFOVETS,
    SCOTT,
    HOME_FARM_89,
    IRISH_FARMERS_25,
    GOTLANDS,
    seen("India", "A trained hand finds 74% of cold human newborns", Some(2008), ""),
    seen("Nepal", "Cold feet find over 80%, and are often wrong", Some(2006), ""),
    seen("Study of dairy cows", "Ears follow the air, not the blood", Some(2025), ""),
    ours("A cold mouth is taken as under 37 °C; warm proves nothing; a tube needs a measured 37 °C"),
    OURS,
];

/// What a finger in the mouth says of a lamb's warmth.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ByHand {
    /// Taken as under 37 °C.
    AsCold,
    /// Cool, and it sucks strongly: let it suck.
    LetItSuck,
    /// Warm, and it sucks strongly: a cold spell is over; a tube still needs a measured 37 °C.
    WarmAndSucks,
    /// Warm, and it does not suck well: nothing is proved.
    Unproven,
}

/// Returns what a finger in the mouth says; the worse of the two answers counts.
///
/// ```
/// use yeanling_core::reckon::illness::by_hand::{ByHand, warmth};
/// use yeanling_core::terms::{Mouth, Suck};
/// assert_eq!(warmth(Mouth::Cool, Suck::Weak), ByHand::AsCold);
/// assert_eq!(warmth(Mouth::Warm, Suck::None), ByHand::Unproven);
/// ```
#[must_use]
pub const fn warmth(mouth: Mouth, suck: Suck) -> ByHand {
    match (mouth, suck) {
        (Mouth::Cold, _) | (Mouth::Cool, Suck::Weak | Suck::None) => ByHand::AsCold,
        (Mouth::Cool, Suck::Strong) => ByHand::LetItSuck,
        (Mouth::Warm, Suck::Strong) => ByHand::WarmAndSucks,
        (Mouth::Warm, Suck::Weak | Suck::None) => ByHand::Unproven,
    }
}
