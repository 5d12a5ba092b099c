//! Until when rings and tags go on, and when the clostridial vaccine is due.
//!
//! Laws change: every limit here was read in [`READ_IN`], and whoever shows one says "check local rules". The farm can
//! set its own limit for rings. No dose is given; the vaccine's label wins.
//!
//! What the law bans is not offered and not asked for; a book that chose it is told (`marking::banned`).
//!
//! A law's limit is told with the year it was read and "check local rules"; months are counted at their shortest.

use super::cited::{AHDB, ours, seen};
use crate::settings::{DamsVaccinated, RingRule, Rings};
use crate::source::Source;
use crate::terms::Ring;
use crate::units::TimeDelta;

/// The year in which these laws were read.
pub const READ_IN: u16 = 2026;

/// Never a ring before this age: the first milk comes first (AHDB).
pub const RINGS_FROM: TimeDelta = TimeDelta::hours(24);

/// Six months at their shortest (ours).
pub const SIX_MONTHS: TimeDelta = TimeDelta::days(181);

/// Nine months at their shortest (ours).
pub const NINE_MONTHS: TimeDelta = TimeDelta::days(273);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen(
        "NFU",
        "England and Wales: rings only in the first 7 days",
        None,
        "Protection of Animals (Anaesthetics) Act 1964",
    ),
    seen("Wales", "Castration rings to 7 days", None, ""),
    seen("Northern Ireland", "Tail rings to 7 days", None, ""),
    seen("England, Scotland, Northern Ireland", "The tail left covers the vulva or the anus", None, ""),
    seen(
        "German Animal Welfare Act (TierSchG)",
        "Castration with rings banned, §6(2); tails under 8 days, only where indispensable in the single case and by a \
         competent person, §6(1) 3",
        None,
        "",
    ),
    seen("New South Wales and New Zealand", "Rings to 6 months", None, ""),
    AHDB,
    seen("gov.uk", "Tags by 6 months housed, 9 months outdoors, or before leaving", None, ""),
    seen("US rules", "Tags before leaving the farm", None, ""),
    seen("University of Maryland", "Clostridial vaccine by whether the dam had hers", None, ""),
    ours("Months are counted at their shortest: 181 and 273 days"),
    ours(
        "On the last day itself it is too late; where it is not known whether the dam had hers, she had not",
    ),
];

/// When a ring may go on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Window {
    /// What it is for.
    pub ring: Ring,
    /// Whose limit.
    pub rule: RingRule,
    /// From this age on.
    pub from: TimeDelta,
    /// Before this age.
    pub before: TimeDelta,
    /// Whether the limit is a law, of which "check local rules, as read in 2026" is said; false for the farm's own.
    pub law: bool,
}

/// Where a lamb stands in the window of a ring.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RingState {
    /// Too young: so long still.
    TooYoung(TimeDelta),
    /// A ring may go on: so long still.
    Open(TimeDelta),
    /// Too late for a ring.
    Past,
}

/// Says whether the law bans a ring of this kind at any age: in Germany castration (TierSchG §6(2)).
///
/// A book may have chosen it all the same: then nothing asks for the ring, and it is told as not allowed.
#[must_use]
pub const fn banned(rule: RingRule, ring: Ring) -> bool {
    match (rule, ring) {
        (RingRule::Germany, Ring::Castration) => true,
        (RingRule::Germany, Ring::Tail)
        | (
            RingRule::NoRings
            | RingRule::EnglandWales
            | RingRule::NewSouthWales
            | RingRule::NewZealand
            | RingRule::Own { .. },
            _,
        ) => false,
    }
}

/// Returns when a ring of this kind may go on, or none if the farm has chosen no ring for it or the law bans it.
///
/// ```
/// use yeanling_core::settings::{RingRule, Rings};
/// use yeanling_core::reckon::marking::ring;
/// use yeanling_core::terms::Ring;
/// use yeanling_core::units::TimeDelta;
/// let rings = Rings { rule: RingRule::EnglandWales, tails: true, ram_lambs: false };
/// assert_eq!(ring(rings, Ring::Tail).unwrap().before, TimeDelta::days(7));
/// assert_eq!(ring(rings, Ring::Castration), None);
/// ```
#[must_use]
pub const fn ring(rings: Rings, ring: Ring) -> Option<Window> {
    let wanted = match ring {
        Ring::Tail => rings.tails,
        Ring::Castration => rings.ram_lambs,
    };
    let before = match (rings.rule, ring) {
        (RingRule::NoRings, _) => return None,
        (RingRule::EnglandWales, _) => TimeDelta::days(7),
        (RingRule::Germany, Ring::Tail) => TimeDelta::days(8),
        (RingRule::Germany, Ring::Castration) => return None,
        (RingRule::NewSouthWales | RingRule::NewZealand, _) => SIX_MONTHS,
        (RingRule::Own { days }, _) => TimeDelta::days(days as i64),
    };
    if !wanted {
        return None;
    }
    let law = !matches!(rings.rule, RingRule::Own { .. });
    Some(Window { ring, rule: rings.rule, from: RINGS_FROM, before, law })
}

/// Returns where a lamb of this age stands in a window.
#[must_use]
pub fn ring_state(window: &Window, age: TimeDelta) -> RingState {
    if age >= window.before {
        RingState::Past
    } else if age < window.from {
        RingState::TooYoung(window.from - age)
    } else {
        RingState::Open(window.before - age)
    }
}

/// By whose rules a lamb is tagged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TagRule {
    /// Great Britain, housed at night.
    GreatBritainHoused,
    /// Great Britain, outdoors.
    GreatBritainOutdoors,
    /// The USA.
    Usa,
}

/// Returns the age by which a lamb is tagged, or none if only leaving the farm counts; before leaving it always is.
///
/// ```
/// use yeanling_core::reckon::marking::{TagRule, tag_by};
/// use yeanling_core::units::TimeDelta;
/// assert_eq!(tag_by(TagRule::GreatBritainHoused), Some(TimeDelta::days(181)));
/// assert_eq!(tag_by(TagRule::Usa), None);
/// ```
#[must_use]
pub const fn tag_by(rule: TagRule) -> Option<TimeDelta> {
    match rule {
        TagRule::GreatBritainHoused => Some(SIX_MONTHS),
        TagRule::GreatBritainOutdoors => Some(NINE_MONTHS),
        TagRule::Usa => None,
    }
}

/// When the clostridial vaccine is due; the label wins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Vaccine {
    /// Whether the dam had hers.
    pub dam: DamsVaccinated,
    /// The age for the first, the earliest and the latest.
    pub first: (TimeDelta, TimeDelta),
    /// How long after the first the second follows, the earliest and the latest.
    pub second_after: (TimeDelta, TimeDelta),
}

/// Returns when the clostridial vaccine is due (University of Maryland).
///
/// ```
/// use yeanling_core::settings::DamsVaccinated;
/// use yeanling_core::reckon::marking::vaccine;
/// use yeanling_core::units::TimeDelta;
/// assert_eq!(vaccine(DamsVaccinated::Yes).first, (TimeDelta::weeks(6), TimeDelta::weeks(8)));
/// ```
#[must_use]
pub const fn vaccine(dam: DamsVaccinated) -> Vaccine {
    let first = match dam {
        DamsVaccinated::Yes => (TimeDelta::weeks(6), TimeDelta::weeks(8)),
        DamsVaccinated::No | DamsVaccinated::Unknown => (TimeDelta::weeks(3), TimeDelta::weeks(4)),
    };
    Vaccine { dam, first, second_after: (TimeDelta::weeks(3), TimeDelta::weeks(4)) }
}
