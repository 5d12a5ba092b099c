//! How a group holds cycle by cycle: of those still open a share p in each 17 days, `p(1−p)^(k−1)` in cycle k.

use super::bounds::{CONCEPTION, Refused};
use super::days::{between, float};
use super::mating::Mating;
use crate::reckon::cited::{memory, ours, seen};
use crate::source::Source;
use crate::units::NaiveDate;

/// The length of a cycle, in days (*Raising Sheep*).
pub const CYCLE_DAYS: u16 = 17;

/// The shortest and the longest cycle, in days (*Raising Sheep*).
pub const CYCLE_RANGE_DAYS: (u16, u16) = (14, 19);

/// The share that holds in each cycle, and its range (guides, recalled; New Zealand 1975, 0.72 to 0.79, seen).
pub const HOLDS: f64 = 0.75;

/// The least and the most that is printed for it.
pub const HOLDS_RANGE: (f64, f64) = (0.60, 0.85);

/// Who lambs within so many days of the first settled in the first cycle (Oregon State University).
pub const SETTLED_DAYS: i64 = 20;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Raising Sheep", "A cycle of 17 d, 14 to 19", None, ""),
    memory("0.75 (0.60 to 0.85) hold at each cycle: guides"),
    seen("New Zealand", "0.72 to 0.79 of mated ewes in one-ram mobs", Some(1975), ""),
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
    let numbered = (1..=u8::MAX).zip(days(mating)).zip(shares(mating, conception.0));
    numbered.map(|((number, (from_day, to_day)), share)| Cycle { number, from_day, to_day, share }).collect()
}

/// The first day of each cycle, and the day on which it ends, in days after ram in.
pub(super) fn days(mating: Mating) -> impl Iterator<Item = (f64, f64)> {
    let (length, days) = (f64::from(CYCLE_DAYS), float(mating.days()));
    let of = move |number: u8| (length * f64::from(number), days.min(length * f64::from(number + 1)));
    (0..u8::MAX).map(of).take_while(move |(from, _)| *from < days)
}

/// The share of all ewes that holds in each cycle, if this share does of those still open.
pub(super) fn shares(mating: Mating, share: f64) -> impl Iterator<Item = f64> {
    let mut open = 1.0;
    days(mating).map(move |(from, to)| {
        let held = open * share * (to - from) / f64::from(CYCLE_DAYS);
        open -= held;
        held
    })
}

/// How many settled in the first cycle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Settled {
    /// Ewes that lambed within `SETTLED_DAYS` of the first.
    pub ewes: u32,
    /// Ewes put to the ram.
    pub put: u32,
}

impl Settled {
    /// Returns the share of all that were put to the ram.
    #[must_use]
    pub fn share(self) -> f64 {
        f64::from(self.ewes) / f64::from(self.put)
    }
}

/// Returns how many ewes of a group settled in the first cycle: those lambing within 20 days of the first, of those put
/// to the ram. None before these 20 days are over on `today`, when nobody lambed, and of more lambings than ewes.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::cycles::settled;
/// let march = |day| NaiveDate::from_ymd_opt(2027, 3, day).unwrap();
/// let settled = settled(&[march(1), march(12), march(21), march(22)], 5, march(30)).unwrap();
/// assert_eq!((settled.ewes, settled.put, settled.share()), (3, 5, 0.6));
/// ```
#[must_use]
pub fn settled(lambed: &[NaiveDate], put: u32, today: NaiveDate) -> Option<Settled> {
    let first = *lambed.iter().min()?;
    let in_time = lambed.iter().filter(|day| between(first, **day) <= SETTLED_DAYS).count();
    let ewes = u32::try_from(in_time).ok().filter(|_| lambed.len() <= usize::try_from(put).unwrap_or(0))?;
    (between(first, today) > SETTLED_DAYS).then_some(Settled { ewes, put })
}
