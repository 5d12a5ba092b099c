//! How a lamb grows against the eight-week target: a straight line from its birth weight to 20 kg.
//!
//! No band of growth by age is printed; the target and its flag are. The line between is ours.
//!
//! No band of growth by age is printed, so the chart goes straight from the birth weight to AHDB's 20 kg.

use super::cited::{ours, seen};
use crate::source::Source;
use crate::units::{Mass, OutOfBounds, TimeDelta};

/// What a lamb should weigh at eight weeks (AHDB).
pub const TARGET: Mass = Mass::from_kilograms(20.0);

/// The age of the target.
pub const TARGET_AT: TimeDelta = TimeDelta::days(56);

/// Under this share of the target a lamb is flagged (AHDB).
pub const FLAG_PERCENT: f64 = 85.0;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("AHDB", "Eight-week target 20 kg, flag under 85%", None, ""),
    ours("A straight line from the birth weight to the target, and the flag at 85% of the line"),
];

/// What a lamb of an age should weigh.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expected {
    /// On the line to the target.
    pub target: Mass,
    /// Under this it is flagged; never under its birth weight.
    pub flag: Mass,
}

/// Returns what a lamb of this birth weight should weigh at this age, up to eight weeks.
///
/// None before birth and after eight weeks: the target says nothing about those.
///
/// # Errors
/// The birth weight is outside `Mass::AT_BIRTH`.
///
/// ```
/// use yeanling_core::reckon::growth::{TARGET, TARGET_AT, expected};
/// use yeanling_core::units::Mass;
/// let at_eight_weeks = expected(Mass::from_kilograms(4.0), TARGET_AT).unwrap().unwrap();
/// assert_eq!((at_eight_weeks.target, at_eight_weeks.flag), (TARGET, Mass::from_kilograms(17.0)));
/// ```
pub fn expected(birth_weight: Mass, age: TimeDelta) -> Result<Option<Expected>, OutOfBounds<Mass>> {
    let born = Mass::AT_BIRTH.check(birth_weight)?.as_kilograms();
    if age < TimeDelta::zero() || age > TARGET_AT {
        return Ok(None);
    }
    let share = age.as_seconds_f64() / TARGET_AT.as_seconds_f64();
    let target = born + (TARGET.as_kilograms() - born) * share;
    let flag = (target * FLAG_PERCENT / 100.0).max(born);
    Ok(Some(Expected { target: Mass::from_kilograms(target), flag: Mass::from_kilograms(flag) }))
}
