//! How a cold lamb is warmed: air of 40 °C, a look every 20 minutes and not sooner, milk from 37 °C on.

use super::body_temperature::warm_enough_to_feed;
use super::cited::{EALES_84, HENDERSON_97, ours};
use crate::source::Source;
use crate::units::{Moment, Temperature, TimeDelta};

/// The air of a warming box (Eales et al.).
pub const AIR: Temperature = Temperature::from_celsius(40.0);

/// From one look to the next (Henderson 1997).
pub const LOOK_EVERY: TimeDelta = TimeDelta::minutes(20);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    EALES_84,
    HENDERSON_97,
    ours("A look before 20 minutes says little; a lamb no warmer after 20 minutes is one for the vet"),
    ours("Two looks with less than 0.5 °C gained: the vet"),
];

/// Which of the treated lambs were counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Treated {
    /// Up to 5 h old.
    ToFiveHours,
    /// Older than 5 h.
    Older,
    /// Found at 37 to 39 °C.
    FoundMild,
    /// Found colder than 37 °C.
    FoundSevere,
}

/// How many of 100 treated lambs lived a week (Eales et al. 1984).
pub const LIVED_A_WEEK_PERCENT: [(Treated, u8); 4] =
    [(Treated::ToFiveHours, 76), (Treated::Older, 64), (Treated::FoundMild, 83), (Treated::FoundSevere, 65)];

/// Whether it is time to look at a warmed lamb again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// Not yet: so long still.
    NotYet(TimeDelta),
    /// Now, or overdue by so long.
    Now(TimeDelta),
}

/// Returns when a lamb is looked at again: 20 minutes after the last reading.
#[must_use]
pub fn look_again(last: Moment) -> Moment {
    last + LOOK_EVERY
}

/// Returns whether it is time to look again; a last reading ahead of now comes from clocks that disagree.
///
/// ```
/// use yeanling_core::reckon::warming::{Look, look};
/// use yeanling_core::units::{Moment, TimeDelta};
/// let last = Moment::from_unix_milliseconds(0, 0);
/// assert_eq!(look(last, last + TimeDelta::minutes(5)), Look::NotYet(TimeDelta::minutes(15)));
/// assert_eq!(look(last, last + TimeDelta::minutes(20)), Look::Now(TimeDelta::zero()));
/// ```
#[must_use]
pub fn look(last: Moment, now: Moment) -> Look {
    look_after(last, LOOK_EVERY, now)
}

/// Returns whether it is time to look again so long after the last reading.
#[must_use]
pub fn look_after(last: Moment, wait: TimeDelta, now: Moment) -> Look {
    let left = (last + wait).since(now).min(wait);
    if left > TimeDelta::zero() { Look::NotYet(left) } else { Look::Now(-left) }
}

/// The least that a lamb under warmth gains from one look to the next (ours).
pub const LEAST_GAIN_IN_DEGREES_CELSIUS: f64 = 0.5;

/// Returns whether a lamb under 37 °C gains too little: no warmer at its last look than at the one before, or less than
/// half a degree over its last two looks, or at each of them. Then it is one for the vet.
///
/// ```
/// use yeanling_core::reckon::warming::stalls;
/// use yeanling_core::units::Temperature;
/// let read = |all: &[f64]| all.iter().map(|c| Temperature::from_celsius(*c)).collect::<Vec<_>>();
/// assert!(!stalls(&read(&[35.0, 35.4])));
/// assert!(stalls(&read(&[35.0, 35.4, 35.8])));
/// assert!(!stalls(&read(&[35.0, 35.4, 35.9])));
/// assert!(stalls(&read(&[35.0, 35.0])));
/// ```
#[must_use]
pub fn stalls(looks: &[Temperature]) -> bool {
    // Hundredths of degrees, so that binary fractions do not decide at the edge.
    let hundredths = |read: &Temperature| (read.as_celsius() * 100.0).round();
    let least = LEAST_GAIN_IN_DEGREES_CELSIUS * 100.0;
    let gained = |from: &Temperature, to: &Temperature| hundredths(to) - hundredths(from);
    match looks {
        [.., last] if warm_enough_to_feed(*last) => false,
        [.., first, second, third] => {
            let each = gained(first, second) < least && gained(second, third) < least;
            gained(second, third) <= 0.0 || each || gained(first, third) < least
        }
        [first, second] => gained(first, second) <= 0.0,
        [] | [_] => false,
    }
}

/// What two readings of a lamb under warmth say.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Progress {
    /// 37 °C or over: it may be fed if it holds its head up and swallows.
    WarmEnough,
    /// Warmer than before, still under 37 °C: go on.
    Rising,
    /// No warmer than before: call the vet (ours).
    NotRising,
}

/// Returns what two readings say; 37 °C is enough whatever was before.
///
/// ```
/// use yeanling_core::reckon::warming::{Progress, progress};
/// use yeanling_core::units::Temperature;
/// let c = Temperature::from_celsius;
/// assert_eq!(progress(c(34.0), c(35.5)), Progress::Rising);
/// assert_eq!(progress(c(34.0), c(34.0)), Progress::NotRising);
/// ```
#[must_use]
pub fn progress(before: Temperature, now: Temperature) -> Progress {
    if warm_enough_to_feed(now) {
        Progress::WarmEnough
    } else if now > before {
        Progress::Rising
    } else {
        Progress::NotRising
    }
}
