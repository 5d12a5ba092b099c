//! How long a ewe carries: 147 days on the mean, 142 to 152 to watch, never under 138 nor over 159.
//!
//! The day of mating is day 0. From 15 lambings of known mating on, the flock's own mean replaces the handbook's.

use super::bounds::{GESTATION_MEAN, GESTATION_SPREAD, Refused};
use super::days::{between, counted, later, whole};
use crate::reckon::cited::{memory, ours, seen};
pub use crate::settings::BreedType;
use crate::source::Source;
use crate::units::NaiveDate;

/// The days after mating on which a ewe is watched, first and last (*Sheep 201*; Montana *Farm Flock* handbook).
pub const WATCH: (u16, u16) = (142, 152);

/// The days after mating outside which no living lamb is born (*Sheep 201*; Montana *Farm Flock* handbook).
pub const POSSIBLE: (u16, u16) = (138, 159);

/// The spread (standard deviation) within a breed, in days (memory: Forbes 1967 and others, 2.0 to 2.5).
pub const SPREAD_DAYS: f64 = 2.2;

/// From so many lambings of known mating on, the flock's own mean counts (ours).
pub const OWN_FROM: usize = 15;

const MARGIN: f64 = 5.0;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Sheep 201", "147 d; watch 142 to 152; impossible outside 138 to 159", None, ""),
    seen("Montana State", "Farm Flock handbook: 147 d; meat breeds 147, fine-wool 150 to 151", None, ""),
    seen(
        "",
        "St Croix and Blackbelly, n 1,291: 149.8, 147.4 and 146.7 d by litter",
        None,
        "Breed and mating-season effects in landrace hair sheep, abstract 121",
    ),
    seen("Arcott study", "Finn 144, prolific 145, Suffolk 146 d; 7,083 ewes", None, ""),
    memory("A spread of 2.2 d (2.0 to 2.5) within a breed: Forbes 1967 and others"),
    ours("The flock's own mean from 15 lambings of known mating on; the spread stays the handbook's"),
    ours("A hair ewe whose litter is not known counts as carrying twins; fine-wool as 150.5 d"),
    ours("The days to watch reach 5 d to either side of the mean, and never less than 142 to 152"),
];

/// A gestation as it is reckoned with: its mean and its spread in days, Normal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gestation {
    mean_days: f64,
    spread_days: f64,
}

impl Gestation {
    /// Returns a gestation of this mean and standard deviation, both in days.
    ///
    /// # Errors
    /// The mean is outside `GESTATION_MEAN`, 138 to 159 d, or the spread outside `GESTATION_SPREAD`, 1 to 5 d.
    pub fn from_days(mean: f64, spread: f64) -> Result<Self, Refused> {
        Ok(Self { mean_days: GESTATION_MEAN.check(mean)?, spread_days: GESTATION_SPREAD.check(spread)? })
    }

    /// Returns the handbook's gestation of a kind of sheep, for so many lambs if that is known.
    ///
    /// ```
    /// use yeanling_core::reckon::season::gestation::{BreedType, Gestation};
    /// let hair = |litter| Gestation::of(BreedType::Hair, litter).mean_days();
    /// assert_eq!([Some(1), Some(2), Some(3)].map(hair), [149.8, 147.4, 146.7]);
    /// ```
    #[must_use]
    pub const fn of(breed: BreedType, litter: Option<u8>) -> Self {
        let mean_days = match breed {
            BreedType::Any | BreedType::Meat => 147.0,
            BreedType::Hair => match litter {
                Some(1) => 149.8,
                None | Some(0 | 2) => 147.4,
                Some(3..=u8::MAX) => 146.7,
            },
            BreedType::Finn => 144.0,
            BreedType::Prolific => 145.0,
            BreedType::Suffolk => 146.0,
            BreedType::FineWool => 150.5,
        };
        Self { mean_days, spread_days: SPREAD_DAYS }
    }

    /// Returns the mean in days.
    #[must_use]
    pub const fn mean_days(self) -> f64 {
        self.mean_days
    }

    /// Returns the standard deviation in days.
    #[must_use]
    pub const fn spread_days(self) -> f64 {
        self.spread_days
    }

    /// Returns the first and the last day after mating to watch: 142 and 152, or further out where the mean lies so.
    #[must_use]
    pub fn watch_days(self) -> (i64, i64) {
        let first = whole((self.mean_days - MARGIN).floor());
        let last = whole((self.mean_days + MARGIN).ceil());
        let (least, most) = (i64::from(POSSIBLE.0), i64::from(POSSIBLE.1));
        (first.min(i64::from(WATCH.0)).max(least), last.max(i64::from(WATCH.1)).min(most))
    }
}

impl Default for Gestation {
    /// 147 days with a spread of 2.2.
    fn default() -> Self {
        Self::of(BreedType::Any, None)
    }
}

/// Which mean stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MeanUsed {
    /// The flock's own.
    Own {
        /// Over so many lambings.
        lambings: usize,
    },
    /// The handbook's.
    Handbook {
        /// How many lambings of its own the flock has so far.
        lambings: usize,
    },
}

/// How long a ewe is taken to carry, and why.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expected {
    /// Mean and spread.
    pub gestation: Gestation,
    /// The kind of sheep.
    pub breed: BreedType,
    /// Lambs, if known.
    pub litter: Option<u8>,
    /// Which mean stands.
    pub used: MeanUsed,
    /// What the handbook says for this kind of sheep and litter.
    pub handbook: Gestation,
    /// The shortest and the longest mean that is printed for this kind of sheep, in days.
    pub range_days: (f64, f64),
}

/// What a length outside 138 to 159 days can mean.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MayMean {
    /// Another ram was there before or after.
    AnotherRam,
    /// The mating was on another date.
    AnotherDate,
    /// Lost early: born far too soon, or the ewe lost a first litter and held again later.
    LostEarly,
}

/// A length of gestation that cannot be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{days} days from mating to lambing are not between {least} and {most}: another ram, another date, or lost early?", least = POSSIBLE.0, most = POSSIBLE.1)]
pub struct Impossible {
    /// Days from mating to lambing, as given.
    pub days: i64,
}

impl Impossible {
    /// What it can mean.
    pub const PERHAPS: [MayMean; 3] = [MayMean::AnotherRam, MayMean::AnotherDate, MayMean::LostEarly];

    /// Returns the least and the most days that are possible.
    #[must_use]
    pub const fn allowed() -> (u16, u16) {
        POSSIBLE
    }
}

/// Returns the days from mating to lambing, if a ewe can carry so long.
///
/// # Errors
/// The days are outside `POSSIBLE`, 138 to 159.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::gestation::length;
/// let day = |month, day| NaiveDate::from_ymd_opt(2026, month, day).unwrap();
/// assert_eq!(length(day(1, 1), day(5, 28)), Ok(147));
/// assert_eq!(length(day(1, 1), day(5, 1)).unwrap_err().days, 120);
/// ```
pub fn length(mated: NaiveDate, lambed: NaiveDate) -> Result<u16, Impossible> {
    let days = between(mated, lambed);
    u16::try_from(days)
        .ok()
        .filter(|days| (POSSIBLE.0..=POSSIBLE.1).contains(days))
        .ok_or(Impossible { days })
}

/// Returns how long a ewe of this kind and litter carries: by the handbook, or by the flock's own lambings.
///
/// `own` are the days from mating to lambing that the flock has seen; they count from `OWN_FROM` on. The spread stays
/// the handbook's: a crayon mark is read a day late and would widen it (ours).
///
/// # Errors
/// One of the flock's own lengths is outside `POSSIBLE`, or their mean is (it cannot be then).
///
/// ```
/// use yeanling_core::reckon::season::gestation::{BreedType, MeanUsed, expected};
/// let own = expected(BreedType::Any, None, &[149; 15]).unwrap();
/// assert_eq!((own.gestation.mean_days(), own.used), (149.0, MeanUsed::Own { lambings: 15 }));
/// ```
pub fn expected(breed: BreedType, litter: Option<u8>, own: &[u16]) -> Result<Expected, Impossible> {
    for days in own {
        if !(POSSIBLE.0..=POSSIBLE.1).contains(days) {
            return Err(Impossible { days: i64::from(*days) });
        }
    }
    let handbook = Gestation::of(breed, litter);
    let lambings = own.len();
    let (gestation, used) = if lambings >= OWN_FROM {
        let mean_days = own.iter().map(|days| f64::from(*days)).sum::<f64>() / counted(lambings);
        (Gestation { mean_days, ..handbook }, MeanUsed::Own { lambings })
    } else {
        (handbook, MeanUsed::Handbook { lambings })
    };
    Ok(Expected { gestation, breed, litter, used, handbook, range_days: range_days(breed) })
}

const fn range_days(breed: BreedType) -> (f64, f64) {
    match breed {
        BreedType::Any => (144.0, 151.0),
        BreedType::Hair => (146.7, 149.8),
        BreedType::Finn => (144.0, 144.0),
        BreedType::Prolific => (145.0, 145.0),
        BreedType::Suffolk => (146.0, 146.0),
        BreedType::Meat => (147.0, 147.0),
        BreedType::FineWool => (150.0, 151.0),
    }
}

/// When a ewe of a known mating may lamb.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Due {
    /// The first day to watch.
    pub first: NaiveDate,
    /// The likeliest day.
    pub likely: NaiveDate,
    /// The last day to watch.
    pub last: NaiveDate,
}

/// Returns when a ewe mated on this day may lamb: mating is day 0.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::gestation::{Gestation, due};
/// let due = due(NaiveDate::from_ymd_opt(2026, 10, 1).unwrap(), Gestation::default());
/// assert_eq!(due.likely, NaiveDate::from_ymd_opt(2027, 2, 25).unwrap());
/// ```
#[must_use]
pub fn due(mated: NaiveDate, gestation: Gestation) -> Due {
    let (first, last) = gestation.watch_days();
    let likely = whole(gestation.mean_days.round());
    Due { first: later(mated, first), likely: later(mated, likely), last: later(mated, last) }
}

/// Returns the share of ewes that have lambed so many days after ram in, if they held between days `from` and `to`.
///
/// `F(t; a, b) = σ/(b−a) · [g((t−μ−a)/σ) − g((t−μ−b)/σ)]` with `g(x) = x·Φ(x) + φ(x)`: matings lie evenly from a to b,
/// gestation is Normal(μ, σ). All days are days after ram in; where `to` is not after `from` all held at `from`.
///
/// ```
/// use yeanling_core::reckon::season::gestation::{Gestation, lambed_by};
/// let share = lambed_by(147.0, 0.0, 0.0, Gestation::default());
/// assert!((share - 0.5).abs() < 1e-12);
/// ```
#[must_use]
pub fn lambed_by(day: f64, from: f64, to: f64, gestation: Gestation) -> f64 {
    let Gestation { mean_days: mean, spread_days: spread } = gestation;
    let place = |mated: f64| (day - mean - mated) / spread;
    let share = if to > from {
        spread / (to - from) * (integral(place(from)) - integral(place(to)))
    } else {
        below(place(from))
    };
    share.clamp(0.0, 1.0)
}

/// Φ, the share of a Normal(0, 1) below x.
pub(super) fn below(x: f64) -> f64 {
    0.5 * libm::erfc(-x * std::f64::consts::FRAC_1_SQRT_2)
}

/// g, the integral of Φ: `x·Φ(x) + φ(x)`.
fn integral(x: f64) -> f64 {
    // 1 / sqrt(2π)
    const HEIGHT: f64 = 0.398_942_280_401_432_7;
    if x > FAR {
        x
    } else if x < -FAR {
        0.0
    } else {
        x * below(x) + HEIGHT * (-0.5 * x * x).exp()
    }
}

/// From here on a Normal has nothing left that a float can show.
const FAR: f64 = 9.0;

/// Returns how many days after mating the first and the last of a thousand million ewes lamb.
pub(super) fn reach_days(gestation: Gestation) -> (f64, f64) {
    let far = gestation.spread_days * 7.0;
    (gestation.mean_days - far, gestation.mean_days + far)
}
