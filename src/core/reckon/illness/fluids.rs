//! How dry a scouring lamb is, and the least that it needs beside its milk: the deficit and a day's upkeep, a feed at a time.
//!
//! Sources differ fivefold on what a skin tent means, so the strictest reading stands. Over 8% needs a vein, which is the
//! vet's. Nothing by mouth with a tight belly, under 37 °C, or without a swallow.

use super::super::PerKilogram;
use super::super::cited::{memory, ours};
use super::super::feeds::MOST_AT_ONCE_LATER;
use super::Urgency;
use super::cited::{DVM360, INFOVETS, MAKING_MILK_MATTER, OURS, RAISING_SHEEP, WISCONSIN};
use crate::source::Source;
use crate::units::{Mass, OutOfBounds, TimeDelta, Volume};

/// A day's upkeep: 1 ml/lb an hour (dvm360).
pub const UPKEEP_MILLILITERS_A_KILOGRAM: f64 = 53.0;

/// The most at once (ours): as a feed of milk.
pub const AT_ONCE: PerKilogram = PerKilogram::from_milliliters(50.0);

/// Fed so often, the soonest and the latest.
pub const EVERY: (TimeDelta, TimeDelta) = (TimeDelta::hours(3), TimeDelta::hours(6));

/// Drier than this needs a vein (dvm360; Wisconsin).
pub const BY_MOUTH_TO_PERCENT: u8 = 8;

/// From so many seconds a skin tent is today's, and from so many it is now (ours, the strictest).
pub const TENT_SECONDS: (u8, u8) = (2, 6);

/// Where it was printed.
pub const SOURCES: &[Source] = &[
    INFOVETS,
    WISCONSIN,
    DVM360,
    MAKING_MILK_MATTER,
    RAISING_SHEEP,
    memory("Young lambs are given 80 to 100 ml/kg a day"),
    ours("A skin tent from 2 s or eyes slightly sunken is today's; from 6 s, a gap or not standing is now"),
    OURS,
];

/// Returns how urgent a skin tent of so many seconds is; nothing is lowered by a quick one.
#[must_use]
pub const fn tent(seconds: u8) -> Option<Urgency> {
    let (today, now) = TENT_SECONDS;
    if seconds >= now {
        Some(Urgency::Now)
    } else if seconds >= today {
        Some(Urgency::Today)
    } else {
        None
    }
}

/// A scouring lamb that is not dry to see is looked at again after so long, if it is bright, sucks and is four days old.
const LOOK: TimeDelta = TimeDelta::hours(6);

/// How dry a lamb is to see, by the strictest source.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Dry {
    /// Eyes normal, and a skin fold that drops back in under 2 s.
    Little,
    /// Eyes slightly sunken (infovets: 6 to 8%).
    EyesSunken,
    /// A skin fold stands 2 to 5 s (University of Wisconsin: 8%; infovets calls it 1 to 5%).
    FoldStands,
    /// A gap at the eye, a skin fold of 6 s and over, or it cannot stand (infovets: 9% and over).
    Deep,
}

impl Dry {
    /// All, the least dry first.
    pub const ALL: [Self; 4] = [Self::Little, Self::EyesSunken, Self::FoldStands, Self::Deep];

    /// Returns how dry it is, in percent of its weight; over 8% the least of it.
    #[must_use]
    pub const fn percent(self) -> u8 {
        match self {
            Self::Little => 5,
            Self::EyesSunken => 6,
            Self::FoldStands => 8,
            Self::Deep => 9,
        }
    }

    /// Returns how urgent it is at the least (ours, the strictest).
    #[must_use]
    pub const fn urgency(self) -> Urgency {
        match self {
            Self::Little => Urgency::Watch(LOOK),
            Self::EyesSunken | Self::FoldStands => Urgency::Today,
            Self::Deep => Urgency::Now,
        }
    }
}

/// What a lamb needs beside its milk.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fluids {
    /// Its weight.
    pub weight: Mass,
    /// How dry it is, in percent of its weight.
    pub percent: u8,
    /// What it has lost.
    pub deficit: Volume,
    /// What a day takes.
    pub upkeep: Volume,
    /// Both: the least in 24 hours.
    pub day: Volume,
    /// The most at once; the first at once, then every 3 to 6 hours.
    pub at_once: Volume,
}

/// Why no volume is told.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NoFluids {
    /// No such lamb.
    #[error(transparent)]
    Weight(#[from] OutOfBounds<Mass>),
    /// It needs a vein: the vet, now.
    #[error("{percent}% dry is more than the mouth can make up")]
    NeedsAVein {
        /// How dry.
        percent: u8,
    },
    /// Nothing may be given by mouth.
    #[error("nothing by mouth")]
    NothingByMouth,
}

/// Returns what a lamb of this weight that is so dry needs, if it can be given by mouth.
///
/// # Errors
/// The weight is outside `Mass::ON_THE_BOTTLE`, it is over 8% dry, or it has a tight belly, is under 37 °C or was not
/// seen to swallow.
///
/// ```
/// use yeanling_core::reckon::illness::fluids::fluids;
/// use yeanling_core::units::Mass;
/// let five = fluids(Mass::from_kilograms(5.0), 6, true).unwrap();
/// assert!((five.day.as_milliliters() - 565.0).abs() < 1e-9);
/// ```
pub fn fluids(weight: Mass, percent: u8, by_mouth: bool) -> Result<Fluids, NoFluids> {
    let weight = Mass::ON_THE_BOTTLE.check(weight)?;
    if percent > BY_MOUTH_TO_PERCENT {
        return Err(NoFluids::NeedsAVein { percent });
    }
    if !by_mouth {
        return Err(NoFluids::NothingByMouth);
    }
    let deficit = deficit(weight, percent);
    let upkeep = Volume::from_milliliters(weight.as_kilograms() * UPKEEP_MILLILITERS_A_KILOGRAM);
    let at_once = AT_ONCE.of(weight);
    let at_once = if at_once > MOST_AT_ONCE_LATER { MOST_AT_ONCE_LATER } else { at_once };
    Ok(Fluids { weight, percent, deficit, upkeep, day: deficit + upkeep, at_once })
}

/// Returns what a lamb of this weight has lost: a liter for each kilogram (infovets).
#[must_use]
pub fn deficit(weight: Mass, percent: u8) -> Volume {
    Volume::from_milliliters(weight.as_kilograms() * 1_000.0 * f64::from(percent) / 100.0)
}
