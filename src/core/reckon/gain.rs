//! How fast a lamb grew between two weights: `(W₂ − W₁) ÷ days`, in grams a day.
//!
//! A weight is held against the one before: over a kilogram a day, or two fifths lost, one of the two is wrong.

use super::cited::{memory, ours, seen};
use crate::source::Source;
use crate::units::{Mass, Moment};

/// Weights closer than this tell nothing of growth: what it drank weighs more (ours).
pub const LEAST_DAYS: f64 = 1.0;

/// No lamb grows faster than this, in grams a day (ours: twice what the fastest breeds are printed to gain); a weight
/// that says so was mistyped.
pub const MOST_GRAMS_A_DAY: f64 = 1000.0;

/// No lamb loses more than this share of its weight and lives, in percent (ours).
pub const MOST_LOST_PERCENT: f64 = 40.0;

/// A gain over this, in grams a day, is asked about (ours: the fastest lambs are printed to gain about 500).
pub const ODD_GRAMS_A_DAY: f64 = 600.0;

/// A loss over this share of the weight, in percent, is asked about (ours).
pub const ODD_LOST_PERCENT: f64 = 10.0;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Penn State Extension", "Gain = (weight − birth weight) ÷ days", None, ""),
    memory("The fastest lambs gain about 500 g a day"),
    ours("At least a day between two weights; over 1000 g a day is a slip of the pen"),
    ours("No lamb loses more than 40% of its weight and lives"),
    ours("Asked about: a gain over 600 g a day, a loss over 10% of the weight"),
];

/// What a lamb gained between two weights.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gain {
    /// In all; less than nothing when it lost.
    pub kilograms: f64,
    /// Over so many days.
    pub days: f64,
    /// A day.
    pub grams_a_day: f64,
}

/// Returns the gain from one weight to a later one; none when they lie less than a day apart.
///
/// ```
/// use yeanling_core::reckon::gain::gain;
/// use yeanling_core::units::{Mass, Moment, TimeDelta};
/// let born: Moment = "2026-03-01T04:00:00+01:00".parse().unwrap();
/// let gain = gain((born, Mass::from_kilograms(4.0)), (born + TimeDelta::days(56), Mass::from_kilograms(20.0)));
/// assert_eq!(format!("{:.0}", gain.unwrap().grams_a_day), "286");
/// ```
#[must_use]
pub fn gain(before: (Moment, Mass), after: (Moment, Mass)) -> Option<Gain> {
    let days = after.0.since(before.0).as_seconds_f64() / 86_400.0;
    let kilograms = after.1.as_kilograms() - before.1.as_kilograms();
    (days >= LEAST_DAYS).then(|| Gain { kilograms, days, grams_a_day: kilograms * 1000.0 / days })
}

/// Says whether a weight can follow another: no faster than any lamb grows, no more lost than one lives through.
///
/// Within the first day nothing is said, so that a second weighing can put the first one right.
#[must_use]
pub fn plausible(before: (Moment, Mass), after: (Moment, Mass)) -> bool {
    let Some(gain) = gain(before, after) else { return true };
    let lost = -gain.kilograms / before.1.as_kilograms() * 100.0;
    gain.grams_a_day <= MOST_GRAMS_A_DAY && lost <= MOST_LOST_PERCENT
}

/// Says whether a weight is so unlike the one before that it is asked about: a lamb that lost more than a tenth, or
/// gained more than 600 g a day. Within the first day a tenth more is odd too.
///
/// ```
/// use yeanling_core::reckon::gain::odd;
/// use yeanling_core::units::{Mass, Moment, TimeDelta};
/// let born: Moment = "2026-03-01T04:00:00+01:00".parse().unwrap();
/// let after = |days, kilograms| (born + TimeDelta::days(days), Mass::from_kilograms(kilograms));
/// assert!(odd(after(0, 4.0), after(58, 2.1)) && !odd(after(0, 4.0), after(58, 21.0)));
/// assert!(odd(after(57, 20.0), after(57, 2.0)));
/// ```
#[must_use]
pub fn odd(before: (Moment, Mass), after: (Moment, Mass)) -> bool {
    let lost = (1.0 - after.1.as_kilograms() / before.1.as_kilograms()) * 100.0;
    lost > ODD_LOST_PERCENT
        || match gain(before, after) {
            Some(gain) => gain.grams_a_day > ODD_GRAMS_A_DAY,
            None => -lost > ODD_LOST_PERCENT,
        }
}
