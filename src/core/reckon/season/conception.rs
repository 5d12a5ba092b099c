//! The flock's own share that holds, learned as lambs come: a Beta from the published range, updated by what has lambed
//! and what has not.
//!
//! Each cycle a ewe goes through with the ram is a trial. One that lambed held once and missed in the cycles before it; one
//! that has not lambed missed in every cycle that can no longer bring a lamb.

use super::bounds::{EWES, Refused};
use super::chances::Counts;
use super::cycles::Conception;
use crate::reckon::cited::{ours, seen};
use crate::source::Source;

/// The handbook as a Beta: as if 48 matings had been seen, of which 36 held (ours). Its mean is 0.75, and its middle
/// 95 % reaches from 0.62 to 0.86, where 0.60 to 0.85 is printed.
pub const PRIOR: (f64, f64) = (36.0, 12.0);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Guides", "0.75 (0.60 to 0.85) hold at each cycle", None, ""),
    ours("The printed range as a Beta(36, 12), updated by every cycle that held or passed without"),
    ours("\"Likely\" is the middle 90 %"),
];

/// What the flock has seen: matings that held, and cycles that passed without.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Record {
    /// Cycles that ended in a lambing.
    pub held: u32,
    /// Cycles that passed without.
    pub missed: u32,
}

impl Record {
    /// Adds a ewe that lambed to this cycle, counted from 1; she missed in those before it.
    #[must_use]
    pub fn lambed(self, cycle: u8) -> Self {
        let missed = self.missed.saturating_add(u32::from(cycle.saturating_sub(1)));
        Self { held: self.held.saturating_add(1), missed }
    }

    /// Adds a ewe that has not lambed though so many of her cycles can no longer bring a lamb.
    #[must_use]
    pub fn not_lambed(self, cycles_passed: u8) -> Self {
        Self { missed: self.missed.saturating_add(u32::from(cycles_passed)), ..self }
    }
}

/// Whose figure it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Whose {
    /// The handbook's alone: nothing has been seen yet.
    Handbook,
    /// The handbook's, moved by what the flock has seen.
    Own,
}

/// The share that holds in a cycle, as far as it is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Learned {
    /// What the flock has seen.
    pub record: Record,
    /// Whose figure it is.
    pub whose: Whose,
    /// The mean, with which a forecast is made.
    pub conception: Conception,
    a: f64,
    b: f64,
}

/// Returns the share that holds in a cycle, from the handbook's range and what the flock has seen.
///
/// Beta(36 + held, 12 + missed).
///
/// ```
/// use yeanling_core::reckon::season::conception::{Record, learned};
/// let learned = learned(Record { held: 12, missed: 4 });
/// assert!((learned.conception.as_share() - 0.75).abs() < 1e-12);
/// ```
#[must_use]
pub fn learned(record: Record) -> Learned {
    let (a, b) = (PRIOR.0 + f64::from(record.held), PRIOR.1 + f64::from(record.missed));
    let whose = if record == Record::default() { Whose::Handbook } else { Whose::Own };
    // A mean of a Beta is a share.
    let conception = Conception::from_share(a / (a + b)).unwrap_or_default();
    Learned { record, whose, conception, a, b }
}

/// Ewes that have not lambed yet, and how many cycles can still bring a lamb.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Open {
    /// How many ewes.
    pub ewes: u32,
    /// Their cycles that can still bring a lamb.
    pub cycles_left: u8,
}

/// How many of a group will lamb: "of 40 put to the ram, likely 36 to 39".
#[derive(Clone, Debug, PartialEq)]
pub struct Likely {
    /// Ewes put to the ram.
    pub put: u32,
    /// The mean of those that will have lambed in the end.
    pub mean: f64,
    /// One in twenty times it is fewer.
    pub low: u32,
    /// One in twenty times it is more.
    pub high: u32,
    /// Whose figure it rests on.
    pub whose: Whose,
}

/// Into so many parts the Beta is cut.
const PARTS: u32 = 200;

impl Learned {
    /// Returns how many ewes will have lambed in the end: those that have, and of the open ones a share `1−(1−p)^n`.
    ///
    /// The spread is that of p and that of chance together (Beta-binomial, by the midpoints of 200 strips).
    ///
    /// # Errors
    /// The ewes together are outside `EWES`, 1 to 3,000.
    ///
    /// ```
    /// use yeanling_core::reckon::season::conception::{Open, Record, learned};
    /// let likely = learned(Record::default()).likely(0, &[Open { ewes: 40, cycles_left: 2 }]).unwrap();
    /// assert_eq!((likely.put, likely.low, likely.high), (40, 34, 40));
    /// ```
    pub fn likely(&self, lambed: u32, open: &[Open]) -> Result<Likely, Refused> {
        let put = open.iter().fold(lambed, |sum, open| sum.saturating_add(open.ewes));
        EWES.check(f64::from(put))?;
        let mut spread = vec![0.0; usize::try_from(put).unwrap_or(0) + 1];
        for (share, weight) in self.strips() {
            // Those that stay empty are few, and so are quick to count.
            let alike: Vec<_> = open
                .iter()
                .map(|open| (open.ewes, (1.0 - share).powi(i32::from(open.cycles_left))))
                .collect();
            let empty = Counts::of_unlike(&alike);
            for (number, place) in spread.iter_mut().rev().enumerate() {
                *place += weight * empty.chance_of(number);
            }
        }
        let lambing = Counts::from_chances(spread);
        let (mean, low, high) = (lambing.mean(), lambing.at_most(0.05), lambing.at_most(0.95));
        Ok(Likely { put, mean, low, high, whose: self.whose })
    }

    /// Returns the share that is not passed with this chance: 0.05 and 0.95 span the middle 90 %.
    ///
    /// ```
    /// use yeanling_core::reckon::season::conception::{Record, learned};
    /// let learned = learned(Record::default());
    /// assert!((learned.at_most(0.05) - 0.643).abs() < 0.002 && (learned.at_most(0.95) - 0.846).abs() < 0.002);
    /// ```
    #[must_use]
    pub fn at_most(&self, chance: f64) -> f64 {
        let mut so_far = 0.0;
        let half = 0.5 / f64::from(PARTS);
        for (share, weight) in self.strips() {
            if so_far + weight >= chance {
                return share - half + 2.0 * half * ((chance - so_far) / weight).clamp(0.0, 1.0);
            }
            so_far += weight;
        }
        1.0
    }

    /// Returns the middle of each strip of the Beta, and its weight; all weights sum to one.
    fn strips(&self) -> Vec<(f64, f64)> {
        let middle = |part: u32| (f64::from(part) + 0.5) / f64::from(PARTS);
        let height = |share: f64| (self.a - 1.0) * share.ln() + (self.b - 1.0) * (1.0 - share).ln();
        let top = height(((self.a - 1.0) / (self.a + self.b - 2.0)).clamp(1e-9, 1.0 - 1e-9));
        let strips: Vec<_> =
            (0..PARTS).map(middle).map(|share| (share, (height(share) - top).exp())).collect();
        let sum: f64 = strips.iter().map(|(_, weight)| weight).sum();
        strips.into_iter().map(|(share, weight)| (share, weight / sum)).collect()
    }
}
