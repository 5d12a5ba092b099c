//! How a group holds cycle by cycle: of those still open a share p in each 17 days, `p(1−p)^(k−1)` in cycle k.

use super::bounds::{CONCEPTION, Refused};
use super::days::{float, whole};
use super::gestation::Gestation;
use super::mating::Mating;
use crate::reckon::cited::{memory, ours, seen};
use crate::source::Source;

/// The length of a cycle, in days (*Raising Sheep*).
pub const CYCLE_DAYS: u16 = 17;

/// The shortest and the longest cycle, in days (*Raising Sheep*).
pub const CYCLE_RANGE_DAYS: (u16, u16) = (14, 19);

/// The share that holds in each cycle, and its printed range (guides, seen; New Zealand 1975, 0.72 to 0.79, recalled).
pub const HOLDS: f64 = 0.75;

/// The least and the most that is printed for it.
pub const HOLDS_RANGE: (f64, f64) = (0.60, 0.85);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Raising Sheep", "A cycle of 17 d, 14 to 19", None, ""),
    seen("Guides", "0.75 (0.60 to 0.85) hold at each cycle", None, ""),
    memory("0.72 to 0.79 of mated ewes in one-ram mobs: New Zealand data of 1975"),
    seen("Oregon State University", "Settled in the first cycle: lambing within 20 d of the first", None, ""),
    ours("A last cycle cut short counts for the share of its days"),
    ours("Matings lie evenly over a cycle; after a long time without a ram they bunch, and two peaks come"),
];

/// The share of ewes that hold to the ram in one cycle.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Conception(f64);

impl Conception {
    /// Returns a share that holds.
    ///
    /// # Errors
    /// The share is outside 0 to 1, or no number.
    ///
    /// ```
    /// use yeanling_core::reckon::season::cycles::Conception;
    /// assert!(Conception::from_share(0.7).is_ok() && Conception::from_share(1.2).is_err());
    /// ```
    pub fn from_share(share: f64) -> Result<Self, Refused> {
        CONCEPTION.check(share).map(Self)
    }

    /// Returns the share, 0 to 1.
    #[must_use]
    pub const fn as_share(self) -> f64 {
        self.0
    }

    /// Returns the share of all ewes that holds in cycle `k`, counted from 1: `p(1−p)^(k−1)`; none in cycle 0.
    ///
    /// ```
    /// use yeanling_core::reckon::season::cycles::Conception;
    /// let third = Conception::from_share(0.7).unwrap().in_cycle(3);
    /// assert!((third - 0.063).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn in_cycle(self, k: u8) -> f64 {
        k.checked_sub(1).map_or(0.0, |before| self.0 * self.empty_after(before))
    }

    /// Returns the share of all ewes that is empty after so many cycles: `(1−p)^n`.
    #[must_use]
    pub fn empty_after(self, cycles: u8) -> f64 {
        (1.0 - self.0).powi(i32::from(cycles))
    }
}

impl Default for Conception {
    /// 0.75, the middle of what is printed.
    fn default() -> Self {
        Self(HOLDS)
    }
}

/// One cycle of a group with its ram.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cycle {
    /// Counted from 1.
    pub number: u8,
    /// The first day after ram in; 0 is the day he went in.
    pub from_day: f64,
    /// The day after ram in on which it ends, not counted any more.
    pub to_day: f64,
    /// The share of all ewes put to the ram that holds in it.
    pub share: f64,
}

/// Returns the cycles of a group, and the share of its ewes that holds in each.
///
/// A last cycle of fewer than 17 days counts for its days: who is not in heat on them is not mated (ours). What the
/// shares leave of 1 stays empty.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::cycles::{Conception, cycles};
/// use yeanling_core::reckon::season::mating::Mating;
/// let mating = Mating::new(NaiveDate::from_ymd_opt(2026, 10, 1).unwrap(), None).unwrap();
/// let shares: Vec<f64> = cycles(mating, Conception::default()).iter().map(|cycle| cycle.share).collect();
/// assert_eq!(shares, [0.75, 0.1875, 0.046875]);
/// ```
#[must_use]
pub fn cycles(mating: Mating, conception: Conception) -> Vec<Cycle> {
    let (length, days) = (f64::from(CYCLE_DAYS), float(mating.days()));
    let mut found: Vec<Cycle> = Vec::new();
    let mut open = 1.0;
    for number in 1..=u8::MAX {
        let from_day = length * f64::from(number - 1);
        if from_day >= days {
            break;
        }
        let to_day = days.min(from_day + length);
        let share = open * conception.0 * (to_day - from_day) / length;
        found.push(Cycle { number, from_day, to_day, share });
        open -= share;
    }
    found
}

/// Returns in which cycle a ewe held that lambed so many days after ram in, counted from 1.
///
/// Gestation is taken at its mean; what comes before the first cycle belongs to it.
///
/// ```
/// use yeanling_core::reckon::season::cycles::cycle_of;
/// use yeanling_core::reckon::season::gestation::Gestation;
/// assert_eq!([140, 163, 164, 181].map(|day| cycle_of(day, Gestation::default())), [1, 1, 2, 3]);
/// ```
#[must_use]
pub fn cycle_of(day: i64, gestation: Gestation) -> u8 {
    let mated = (day - whole(gestation.mean_days().round())).max(0);
    u8::try_from(mated / i64::from(CYCLE_DAYS)).map_or(u8::MAX, |before| before.saturating_add(1))
}

/// Returns how many cycles can no longer bring a lamb so many days after ram in.
///
/// Those are past whose last day and the last day to watch after it, usually 152, have gone by.
///
/// ```
/// use yeanling_core::reckon::season::cycles::cycles_passed;
/// use yeanling_core::reckon::season::gestation::Gestation;
/// assert_eq!([0, 168, 169, 186].map(|day| cycles_passed(day, Gestation::default())), [0, 0, 1, 2]);
/// ```
#[must_use]
pub fn cycles_passed(day: i64, gestation: Gestation) -> u8 {
    let over = (day - gestation.watch_days().1).max(0) / i64::from(CYCLE_DAYS);
    u8::try_from(over).unwrap_or(u8::MAX)
}
