//! How long colostrum works: the first hour, then 2, 6 and 12 h, closed at 24 h.
//!
//! An age below zero comes from clocks that disagree; it is read as just born.

use super::cited::{AHDB, RUMA, VET_TIMES, common, ours, seen};
use crate::source::Source;
use crate::units::TimeDelta;

/// Where one stretch of the window ends and the next begins.
pub const EDGES: [TimeDelta; 5] = [
    TimeDelta::hours(1),
    TimeDelta::hours(2),
    TimeDelta::hours(6),
    TimeDelta::hours(12),
    TimeDelta::hours(24),
];

/// The age at which the window closes.
pub const CLOSE: TimeDelta = TimeDelta::hours(24);

/// The study that found no difference; shown beside the others.
pub const DISSENT: Source = seen(
    "Hernández-Castellano et al.",
    "No difference in blood antibody between a first feed at 2 h and at 14 h, 40 lambs",
    Some(2015),
    "Journal of Dairy Science 98:204",
);

/// The study whose points the curve runs through.
pub const CURVE: Source = seen("Dominguez et al.", "", Some(2001), "Research in Veterinary Science 70:275");

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    CURVE,
    RUMA,
    seen("SRUC", "First feed within 2 h", None, ""),
    VET_TIMES,
    AHDB,
    seen("Teagasc", "First feed within 6 h", None, ""),
    seen("Kerr", "12 h is the latest", None, "Washington State University"),
    seen("Oregon State University", "12 h is the latest", None, "Small Farms"),
    common("The first hour is best, then the first few hours; worth having up to 24 h"),
    ours("Straight lines through the points of Dominguez et al."),
    DISSENT,
];

/// Where in the window a lamb stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stretch {
    /// Under 1 h: best.
    FirstHour,
    /// 1 h to under 2 h: still on target.
    ToTwoHours,
    /// 2 h to under 6 h: the latest by AHDB and Teagasc.
    ToSixHours,
    /// 6 h to under 12 h: late.
    ToTwelveHours,
    /// 12 h to under 24 h: little still gets through.
    ToClose,
    /// 24 h and over: no antibody gets through.
    Closed,
}

/// Returns the stretch of the window at this age; an edge belongs to the stretch that it begins.
///
/// ```
/// use yeanling_core::reckon::window::{Stretch, stretch};
/// use yeanling_core::units::TimeDelta;
/// assert_eq!(stretch(TimeDelta::minutes(59)), Stretch::FirstHour);
/// assert_eq!(stretch(TimeDelta::hours(24)), Stretch::Closed);
/// ```
#[must_use]
pub fn stretch(age: TimeDelta) -> Stretch {
    let [one, two, six, twelve, close] = EDGES;
    if age < one {
        Stretch::FirstHour
    } else if age < two {
        Stretch::ToTwoHours
    } else if age < six {
        Stretch::ToSixHours
    } else if age < twelve {
        Stretch::ToTwelveHours
    } else if age < close {
        Stretch::ToClose
    } else {
        Stretch::Closed
    }
}

/// Returns the time until the window closes, at most 24 h, or none when it has closed.
///
/// ```
/// use yeanling_core::reckon::window::left;
/// use yeanling_core::units::TimeDelta;
/// assert_eq!(left(TimeDelta::hours(20)), Some(TimeDelta::hours(4)));
/// assert_eq!(left(TimeDelta::hours(24)), None);
/// ```
#[must_use]
pub fn left(age: TimeDelta) -> Option<TimeDelta> {
    let age = age.max(TimeDelta::zero());
    (age < CLOSE).then(|| CLOSE - age)
}

/// Returns how much of the swallowed antibody still reaches the blood, in percent, 16.9 down to 0.
///
/// Straight lines (ours) through 16.9% at half an hour, 9.8% at 12 h and none at 24 h (Dominguez et al. 2001).
///
/// ```
/// use yeanling_core::reckon::window::absorption;
/// use yeanling_core::units::TimeDelta;
/// assert!((absorption(TimeDelta::hours(6)) - 13.5).abs() < 0.05);
/// ```
#[must_use]
pub fn absorption(age: TimeDelta) -> f64 {
    let hours = hours(age);
    if hours <= 0.5 {
        16.9
    } else if hours <= 12.0 {
        16.9 - (hours - 0.5) * (16.9 - 9.8) / 11.5
    } else if hours < 24.0 {
        9.8 * (24.0 - hours) / 12.0
    } else {
        0.0
    }
}

/// Returns where an age lies on the ribbon, 0 at birth and 1 at 24 h and after.
///
/// The scale is the square root of the age (ours), so that the first two hours take more than a quarter of it.
///
/// ```
/// use yeanling_core::reckon::window::place_on_ribbon;
/// use yeanling_core::units::TimeDelta;
/// assert!((place_on_ribbon(TimeDelta::hours(6)) - 0.5).abs() < 1e-12);
/// ```
#[must_use]
pub fn place_on_ribbon(age: TimeDelta) -> f64 {
    (hours(age) / 24.0).min(1.0).sqrt()
}

/// Returns an age in hours, never below zero.
fn hours(age: TimeDelta) -> f64 {
    age.max(TimeDelta::zero()).as_seconds_f64() / 3600.0
}
