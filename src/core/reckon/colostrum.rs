//! How much colostrum a newborn wants: `volume = ml/kg × weight`, by 6, 18 and 24 hours.
//!
//! A day never wants less than its first 18 hours. A farm that chose the ten-percent floor is the one exception: its
//! day is the floor, nothing earlier asks for more, and the answer carries a caution.
//!
//! A day never wants less than its first 18 hours: outdoors Mellor & Murray's 210 ml/kg by 18 h stands above the 200
//! ml/kg of the day, so the day is raised. With the ten-percent rule all is held to that floor, and the answer says
//! so.

use super::PerKilogram;
use super::cited::{AHDB, BOND, MELLOR_MURRAY, MERCHANT, RUMA, UK_SHEET, VET_TIMES, ours, seen};
use crate::settings::{DayRule, Housing};
use crate::source::Source;
use crate::units::{Mass, OutOfBounds, Volume};

/// One feed, as soon as possible and at the latest at 4 to 6 h; also the most at one feed (AHDB; Vet Times 2018).
pub const ONE_FEED: PerKilogram = PerKilogram::from_milliliters(50.0);

/// In the first 6 h together (Bond 2020).
pub const FIRST_SIX_HOURS: PerKilogram = PerKilogram::from_milliliters(100.0);

const HOBBY_PRESS: Source = seen("Hobby press", "10% of body weight", None, "");

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    AHDB,
    BOND,
    MELLOR_MURRAY,
    RUMA,
    VET_TIMES,
    MERCHANT,
    UK_SHEET,
    HOBBY_PRESS,
    ours("A day is never less than its first 18 hours, unless the farm chose the ten-percent floor"),
];

/// What one source asks for, in how many hours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayFigure {
    /// Who says so.
    pub source: Source,
    /// The least of its range.
    pub low: PerKilogram,
    /// The most of its range; the same as `low` where one figure is printed.
    pub high: PerKilogram,
    /// The hours from birth for which it is meant.
    pub hours: u8,
}

const fn figure(source: Source, low: f64, high: f64, hours: u8) -> DayFigure {
    DayFigure {
        source,
        low: PerKilogram::from_milliliters(low),
        high: PerKilogram::from_milliliters(high),
        hours,
    }
}

/// What each source asks for in the first day, so that an answer can show how far they lie apart.
pub const DAY_SPREAD: &[DayFigure] = &[
    figure(AHDB, 200.0, 200.0, 24),
    figure(RUMA, 210.0, 290.0, 24),
    figure(MERCHANT, 210.0, 210.0, 24),
    figure(MELLOR_MURRAY, 180.0, 210.0, 18),
    figure(HOBBY_PRESS, 100.0, 100.0, 24),
];

/// What a source adds in cold, wet or windy weather, in percent of the day's volume.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ColdExtra {
    /// Who says so.
    pub source: Source,
    /// The least, in percent.
    pub low_percent: u8,
    /// The most, in percent.
    pub high_percent: u8,
}

/// The extra for cold, wet or windy weather.
pub const COLD_EXTRA: &[ColdExtra] = &[
    ColdExtra { source: MERCHANT, low_percent: 15, high_percent: 20 },
    ColdExtra { source: UK_SHEET, low_percent: 20, high_percent: 30 },
];

/// What must be said with an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caution {
    /// The farm chose the ten-percent floor, which is half the guidance.
    HalfTheGuidance,
}

/// How much colostrum one newborn wants, exact; round for reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ColostrumTarget {
    /// The birth weight it was worked out for.
    pub weight: Mass,
    /// The farm's rule for the day.
    pub rule: DayRule,
    /// Where the lamb lives.
    pub housing: Housing,
    /// One feed, and the most at one feed.
    pub next_feed: Volume,
    /// Together by 6 h of age.
    pub by_6h: Volume,
    /// Together by 18 h of age.
    pub by_18h: Volume,
    /// Together by 24 h of age.
    pub by_24h: Volume,
    /// What the rule alone says for 24 h; `by_24h` may be more.
    pub rule_24h: Volume,
}

impl ColostrumTarget {
    /// Returns what must be said with this answer, if anything.
    #[must_use]
    pub const fn caution(&self) -> Option<Caution> {
        match self.rule {
            DayRule::Ahdb200 | DayRule::Ruma210 => None,
            DayRule::TenPercent => Some(Caution::HalfTheGuidance),
        }
    }
}

/// Returns the figure of a rule for the first 24 h.
#[must_use]
pub const fn day_figure(rule: DayRule) -> PerKilogram {
    PerKilogram::from_milliliters(match rule {
        DayRule::Ahdb200 => 200.0,
        DayRule::Ruma210 => 210.0,
        DayRule::TenPercent => 100.0,
    })
}

/// Returns what a lamb burns in its first 18 h, as colostrum (Mellor & Murray 1986).
#[must_use]
pub const fn eighteen_hour_figure(housing: Housing) -> PerKilogram {
    PerKilogram::from_milliliters(match housing {
        Housing::Housed => 180.0,
        Housing::Outdoors => 210.0,
    })
}

/// Returns how much colostrum a newborn of this birth weight wants.
///
/// With the ten-percent rule the 6 and 18 h volumes are held to the floor as well: a farm that chose it would
/// otherwise be asked for more by 18 h than for the whole day.
///
/// # Errors
/// The weight is outside `Mass::AT_BIRTH`, 0.5 to 12 kg, or no number.
///
/// ```
/// use yeanling_core::settings::{DayRule, Housing};
/// use yeanling_core::reckon::colostrum::target;
/// use yeanling_core::units::{Mass, Volume};
/// let target = target(Mass::from_kilograms(5.0), DayRule::Ahdb200, Housing::Housed).unwrap();
/// assert_eq!(target.next_feed, Volume::from_milliliters(250.0));
/// assert_eq!(target.by_24h, Volume::from_milliliters(1000.0));
/// ```
pub fn target(weight: Mass, rule: DayRule, housing: Housing) -> Result<ColostrumTarget, OutOfBounds<Mass>> {
    let weight = Mass::AT_BIRTH.check(weight)?;
    let rule_24h = day_figure(rule).of(weight);
    let by_6h = FIRST_SIX_HOURS.of(weight);
    let by_18h = eighteen_hour_figure(housing).of(weight);
    let (by_6h, by_18h, by_24h) = match rule {
        DayRule::Ahdb200 | DayRule::Ruma210 => (by_6h, by_18h, larger(rule_24h, by_18h)),
        DayRule::TenPercent => (smaller(by_6h, rule_24h), smaller(by_18h, rule_24h), rule_24h),
    };
    let next_feed = ONE_FEED.of(weight);
    Ok(ColostrumTarget { weight, rule, housing, next_feed, by_6h, by_18h, by_24h, rule_24h })
}

/// Returns what every source asks for this lamb: who, the least and the most of its range, and in how many hours.
#[must_use]
pub fn others(target: &ColostrumTarget) -> Vec<(Source, Volume, Volume, u8)> {
    DAY_SPREAD
        .iter()
        .map(|figure| {
            (figure.source, figure.low.of(target.weight), figure.high.of(target.weight), figure.hours)
        })
        .collect()
}

fn larger(one: Volume, other: Volume) -> Volume {
    if one > other { one } else { other }
}

fn smaller(one: Volume, other: Volume) -> Volume {
    if one < other { one } else { other }
}
