//! From how many animals within how many days something goes round in a flock, and how urgent that is.
//!
//! One sick lamb is a lamb's; three in five days are the pens', the colostrum's or the ewes' feed.

use super::super::cited::ours;
use super::cited::{EALES_86, GOV_UK, IRISH_FARMERS_25, TEAGASC};
use super::{Ailment, Urgency, ewe, lamb};
use crate::source::Source;
use crate::terms::Spread;
use crate::units::TimeDelta;

/// A lamb that died from this age on, and not at birth or of hunger, is one of lambs dying (ours).
pub const WELL_GROWN: TimeDelta = TimeDelta::days(14);

/// Where it was printed; the counts are ours.
pub const SOURCES: &[Source] = &[
    GOV_UK,
    IRISH_FARMERS_25,
    EALES_86,
    TEAGASC,
    ours("Three lambs with wet chins, or three that scour, in five days"),
    ours("Five lame in five days; two well-grown lambs dead in five days; a second abortion in sixty"),
];

/// When something goes round.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rule {
    /// In so many animals.
    pub animals: usize,
    /// Within so long.
    pub within: TimeDelta,
    /// How urgent it is.
    pub urgency: Urgency,
    /// The row of the tables that it is about.
    pub about: Ailment,
}

const fn in_days(animals: usize, days: i64, urgency: Urgency, about: Ailment) -> Rule {
    Rule { animals, within: TimeDelta::days(days), urgency, about }
}

/// Returns when something goes round.
///
/// ```
/// use yeanling_core::reckon::illness::spread::rule;
/// use yeanling_core::terms::Spread;
/// assert_eq!(rule(Spread::WetChins).animals, 3);
/// ```
#[must_use]
pub const fn rule(spread: Spread) -> Rule {
    match spread {
        Spread::Notifiable => in_days(1, 5, Urgency::Now, Ailment::Ewe(ewe::Row::MayBeNotifiable)),
        Spread::ManyLame => in_days(5, 5, Urgency::Now, Ailment::Ewe(ewe::Row::MayBeNotifiable)),
        Spread::LambsDying => in_days(2, 5, Urgency::Now, Ailment::Lamb(lamb::Row::FoundDead)),
        Spread::Abortions => in_days(2, 60, Urgency::Now, Ailment::Ewe(ewe::Row::Aborted)),
        Spread::WetChins => in_days(3, 5, Urgency::Today, Ailment::Lamb(lamb::Row::WateryMouth)),
        Spread::Scours => in_days(3, 5, Urgency::Today, Ailment::Lamb(lamb::Row::Scour)),
    }
}
