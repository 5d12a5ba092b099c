//! What antibody in a lamb's serum at a day of age suggests. It suggests; it never proves, and it is no diagnosis.

use super::Strength;
use super::cited::{BOND, ours, seen};
use crate::source::Source;
use crate::units::{OutOfBounds, TimeDelta};

/// Serum under which too little got through is suggested (Bond 2020).
pub const TOO_LITTLE: Strength = Strength::from_grams_per_liter(15.0);

/// Serum under which illness becomes likelier (Gökçe et al. 2025).
pub const ILLNESS: Strength = Strength::from_grams_per_liter(9.98);

/// Serum under which death becomes likelier (Gökçe et al. 2025).
pub const DEATH: Strength = Strength::from_grams_per_liter(1.93);

/// The age at which the marks hold (Bond 2020).
pub const MEASURED_AT: TimeDelta = TimeDelta::hours(24);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    BOND,
    seen("Gökçe et al.", "Illness point 9.98, death point 1.93 g/L", Some(2025), ""),
    ours("A reading on a mark counts as not under it"),
];

/// What a reading suggests, the best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Suggests {
    /// Enough got through.
    Enough,
    /// Too little got through.
    TooLittle,
    /// Too little, and illness is likelier.
    IllnessLikelier,
    /// Too little, and death is likelier.
    DeathLikelier,
}

/// A reading of serum, and what it suggests.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// The antibody (IgG) in the serum.
    pub serum: Strength,
    /// What it suggests.
    pub suggests: Suggests,
    /// Whether it was taken too early for the marks to hold: under 24 h.
    pub early: bool,
}

/// Returns what the antibody in a lamb's serum suggests; `age` is its age when the blood was taken.
///
/// # Errors
/// The reading is outside `Strength::IN_SERUM`, 0 to 100 g/L.
///
/// ```
/// use yeanling_core::reckon::Strength;
/// use yeanling_core::reckon::passive_transfer::{Suggests, reading};
/// use yeanling_core::units::TimeDelta;
/// let low = reading(Strength::from_grams_per_liter(12.0), TimeDelta::hours(26)).unwrap();
/// assert_eq!(low.suggests, Suggests::TooLittle);
/// ```
pub fn reading(serum: Strength, age: TimeDelta) -> Result<Reading, OutOfBounds<Strength>> {
    let serum = Strength::IN_SERUM.check(serum)?;
    let suggests = if serum < DEATH {
        Suggests::DeathLikelier
    } else if serum < ILLNESS {
        Suggests::IllnessLikelier
    } else if serum < TOO_LITTLE {
        Suggests::TooLittle
    } else {
        Suggests::Enough
    };
    Ok(Reading { serum, suggests, early: age < MEASURED_AT })
}
