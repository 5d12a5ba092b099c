//! What a ewe of this flock weighs: the mean of those weighed, and until there are enough what is usual of their kind.

use crate::flock::Flock;
use crate::reckon::mature_weight::usual;
use crate::settings::BreedType;
use crate::units::{Mass, Moment};

/// From so many grown ewes weighed on the flock's own mean counts (ours).
const OWN_FROM: u32 = 5;

/// A ewe is grown from so many years on (ours).
const GROWN: u16 = 2;

/// What a ewe weighs, and whose figure it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EweWeight {
    /// The weight.
    pub mass: Mass,
    /// Whose.
    pub whose: Whose,
}

/// Whose figure a weight is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Whose {
    /// The mean of so many of the flock's own ewes.
    Own {
        /// How many.
        ewes: u32,
    },
    /// That of a kind of sheep.
    Kind(BreedType),
}

/// Returns what a ewe of this flock weighs, as known at `now`.
#[must_use]
pub fn ewe_weight(flock: &Flock, now: Moment) -> EweWeight {
    let grown = flock
        .ewes
        .values()
        .filter(|ewe| ewe.lives() && flock.ewe_years(ewe.id, now).is_none_or(|years| years >= GROWN));
    let weights = grown.filter_map(|ewe| ewe.weight());
    let (sum, ewes) =
        weights.fold((0.0, 0_u32), |(sum, ewes), weight| (sum + weight.mass.as_kilograms(), ewes + 1));
    if ewes >= OWN_FROM {
        let mass = Mass::from_kilograms(sum / f64::from(ewes));
        return EweWeight { mass, whose: Whose::Own { ewes } };
    }
    let kind = flock.settings.breed_type;
    EweWeight { mass: usual(kind), whose: Whose::Kind(kind) }
}
