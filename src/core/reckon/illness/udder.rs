//! The udder check after lambing: with the first suck, by two hours, at the latest at six.
//!
//! Both teats drawn, the plug out, milk seen, warm and soft. No milk: other colostrum at once, and drawn again at an hour.

use super::Urgency;
use super::cited::{COMMON, MAIJALA_88, MASSEY_19, OURS};
use super::ewe::Row;
use crate::source::Source;
use crate::terms::UdderHalf;
use crate::units::TimeDelta;

/// Due by then after the first birth, sooner with the first suck (ours).
pub const DUE: TimeDelta = TimeDelta::hours(2);

/// Late from then on (ours).
pub const LATE: TimeDelta = TimeDelta::hours(6);

/// A half without milk is drawn again after so long (ours).
pub const AGAIN: TimeDelta = TimeDelta::hours(1);

/// A lamb reared on one half is weighed again after so long (ours).
pub const WEIGH_AGAIN: TimeDelta = TimeDelta::days(1);

/// And so on until it is so old (ours): by then its growth tells.
pub const WEIGHED_UNTIL: TimeDelta = TimeDelta::days(3);

/// Where it was printed.
pub const SOURCES: &[Source] = &[OURS, COMMON, MASSEY_19, MAIJALA_88];

/// What the two halves say together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Udder {
    /// Both milk.
    Milks,
    /// One half milks: one lamb on her, others fostered or on the bottle.
    OneHalf,
    /// No milk: other colostrum at once, drawn again at an hour.
    NoMilk,
}

/// Returns what the two halves say.
#[must_use]
pub fn udder(left: UdderHalf, right: UdderHalf) -> Udder {
    match (left == UdderHalf::Milks, right == UdderHalf::Milks) {
        (true, true) => Udder::Milks,
        (true, false) | (false, true) => Udder::OneHalf,
        (false, false) => Udder::NoMilk,
    }
}

/// Returns the row of illness that a half leads to, and how urgent that is, if it leads to one.
///
/// ```
/// use yeanling_core::reckon::illness::{Urgency, ewe::Row, udder::illness};
/// use yeanling_core::terms::UdderHalf;
/// assert_eq!(illness(UdderHalf::ColdOrBlue), Some((Row::UdderCold, Urgency::Now)));
/// assert_eq!(illness(UdderHalf::Dry), None);
/// ```
#[must_use]
pub const fn illness(half: UdderHalf) -> Option<(Row, Urgency)> {
    match half {
        UdderHalf::Milks | UdderHalf::Dry => None,
        UdderHalf::HardOrHot => Some((Row::UdderHot, Urgency::Today)),
        UdderHalf::ColdOrBlue => Some((Row::UdderCold, Urgency::Now)),
    }
}
