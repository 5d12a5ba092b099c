//! The flock's own share that holds, learned as lambs come: a Beta from the published range, weighed by what each ewe
//! tells so far.
//!
//! A ewe whose day has not come tells nothing: she counts by the chance that one like her has not lambed by now, not as
//! a miss. One that left counts until she left. `weight(p) ∝ Beta(p) · Π chance of what is seen of a ewe, if p holds`.
//!
//! The share that holds is a Beta(36, 12), the printed 0.60 to 0.85 as its middle 95%, weighed by what each ewe
//! tells so far: whose day has not come is no miss, who left is none either. What is not known of it moves a night as
//! a Gamma of the same variance, the whole as an exact mixture.

use std::sync::Arc;

use super::breeding::BreedingSeason;
use super::cycles::{Conception, days, shares};
use super::days::{between, float};
use super::gestation::{Gestation, lambed_by};
use super::mating::Mating;
use crate::reckon::cited::{memory, ours, seen};
use crate::source::Source;
use crate::units::{NaiveDate, NaiveDateTime, NaiveTime};

/// The handbook as a Beta: as if 48 matings had been seen, of which 36 held (ours). Its mean is 0.75, and its middle
/// 95% reaches from 0.62 to 0.86, where 0.60 to 0.85 is printed.
pub const PRIOR: (f64, f64) = (36.0, 12.0);

/// Out of season anything is believed from 9 to 91 in 100 (ours, from what is printed: see [`super::breeding`]).
pub const PRIOR_OUT_OF_SEASON: (f64, f64) = (2.0, 2.0);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    memory("0.75 (0.60 to 0.85) hold at each cycle: guides"),
    seen("New Zealand", "0.72 to 0.79 of mated ewes in one-ram mobs", Some(1975), ""),
    ours("The printed range as a Beta(36, 12), weighed by what each ewe tells so far"),
    ours("A ewe whose day has not come, and one that left before it, is no miss"),
    ours("\"Likely\" is the middle 90%, of what is not known of the share and of chance together"),
];

/// What is known of a ewe's lambing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fate {
    /// She lambed on this date.
    Lambed(NaiveDate),
    /// She had not lambed by this time, which is now or when she left; she may be empty.
    Open(NaiveDateTime),
    /// The same, and a scan found her in lamb.
    Carrying(NaiveDateTime),
    /// She did not hold on any of these days: a scan said so.
    Missed,
}

/// Ewes alike in what they tell of the share that holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Witness {
    /// How many.
    pub ewes: u32,
    /// When the ram was with them.
    pub mating: Mating,
    /// How long they carry.
    pub gestation: Gestation,
    /// What is known of each.
    pub fate: Fate,
}

/// Whose figure it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Whose {
    /// The handbook's alone: nothing has been seen yet.
    Handbook,
    /// The handbook's, moved by what the flock has seen.
    Own,
}

/// Into so many strips the shares from none to all are cut.
const STRIPS: u32 = 200;

/// One in so many of them is asked first.
const FEW: usize = 8;

/// At most so many of them, put together, stand for what is believed: finer is not seen in any answer.
const PARTS: usize = 32;

/// What weighs less than this against the likeliest strip is left out.
const LEAST: f64 = 1e-7;

/// A birth that no mating explains has this chance whatever holds (ours), and so tells nothing.
const UNEXPLAINED: f64 = 1e-9;

/// From so little on, in logarithms, the flock has moved the handbook's figure (ours).
const MOVED: f64 = 0.05;

/// What is believed of the share that holds: some shares, and how likely each is.
#[derive(Clone, Debug, PartialEq)]
pub struct Belief(Arc<[(f64, f64)]>);

impl From<Conception> for Belief {
    /// A share that is known for sure.
    fn from(share: Conception) -> Self {
        Self(Arc::from([(share.as_share(), 1.0)]))
    }
}

impl Belief {
    /// Returns the mean.
    ///
    /// ```
    /// use yeanling_core::reckon::season::conception::{Belief, learned};
    /// use yeanling_core::reckon::season::cycles::Conception;
    /// assert_eq!(Belief::from(Conception::default()).mean(), Conception::default());
    /// assert!((learned(&[]).belief.mean().as_share() - 0.75).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn mean(&self) -> Conception {
        let mean: f64 = self.0.iter().map(|(share, weight)| share * weight).sum();
        // A mean of shares is a share.
        Conception::from_share(mean.clamp(0.0, 1.0)).unwrap_or_default()
    }

    /// Returns the spread (standard deviation); nothing of a share that is known.
    #[must_use]
    pub fn spread(&self) -> f64 {
        let mean = self.mean().as_share();
        self.0.iter().map(|(share, weight)| weight * (share - mean).powi(2)).sum::<f64>().sqrt()
    }

    /// Each share, and how likely it is; together they are sure.
    pub(super) fn each(&self) -> &[(f64, f64)] {
        &self.0
    }
}

/// The share that holds in a cycle, as far as it is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Learned {
    /// Whose figure it is.
    pub whose: Whose,
    /// Whether it began with what is printed of ewes in season, or wide open.
    pub season: BreedingSeason,
    /// The mean.
    pub conception: Conception,
    /// What a forecast is made with.
    pub belief: Belief,
    strips: Vec<f64>,
}

/// Returns the share that holds in a cycle, from the handbook's range and what the flock's ewes tell.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::conception::{Fate, Witness, learned};
/// use yeanling_core::reckon::season::gestation::Gestation;
/// use yeanling_core::reckon::season::mating::Mating;
/// let date = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap();
/// let mating = Mating::new(date(2026, 10, 1), Some(date(2026, 10, 17))).unwrap();
/// let of = |ewes, fate| Witness { ewes, mating, gestation: Gestation::default(), fate };
/// let held = of(12, Fate::Lambed(date(2027, 3, 4)));
/// let waiting = of(4, Fate::Open(date(2027, 2, 1).and_hms_opt(9, 0, 0).unwrap()));
/// let missed = of(4, Fate::Open(date(2027, 5, 1).and_hms_opt(9, 0, 0).unwrap()));
/// // 36 + 12 of 48 + 12, and then of 48 + 16: who is only waited for is no miss.
/// assert!((learned(&[held, waiting]).conception.as_share() - 0.8).abs() < 1e-4);
/// assert!((learned(&[held, missed]).conception.as_share() - 0.75).abs() < 1e-4);
/// ```
#[must_use]
pub fn learned(witnesses: &[Witness]) -> Learned {
    learned_in(BreedingSeason::Within, witnesses)
}

/// Returns the same for ewes mated in their season or out of it.
///
/// ```
/// use yeanling_core::reckon::season::breeding::BreedingSeason;
/// use yeanling_core::reckon::season::conception::learned_in;
/// let open = learned_in(BreedingSeason::Outside, &[]);
/// assert!(open.at_most(0.05) < 0.15 && open.at_most(0.95) > 0.85);
/// ```
#[must_use]
pub fn learned_in(season: BreedingSeason, witnesses: &[Witness]) -> Learned {
    let (a, b) = match season {
        BreedingSeason::Within => PRIOR,
        BreedingSeason::Outside => PRIOR_OUT_OF_SEASON,
    };
    let middle = |strip: u32| (f64::from(strip) + 0.5) / f64::from(STRIPS);
    let shares_of_strips: Vec<f64> = (0..STRIPS).map(middle).collect();
    let prior: Vec<f64> = shares_of_strips
        .iter()
        .map(|share| (a - 1.0) * share.ln() + (b - 1.0) * (1.0 - share).ln())
        .collect();
    let chances: Vec<(&Witness, f64, Vec<f64>)> = witnesses
        .iter()
        .map(|witness| {
            let (of_all, of_cycles) = chances(witness);
            (witness, of_all, of_cycles)
        })
        .collect();
    let told = |asked: &[usize]| {
        told(&chances, &asked.iter().map(|strip| shares_of_strips[*strip]).collect::<Vec<_>>())
    };
    let highest = |heights: &[f64]| heights.iter().copied().fold(f64::NEG_INFINITY, f64::max);

    // A few strips tell where the others are worth the asking.
    let few: Vec<usize> = (0..prior.len()).step_by(FEW).collect();
    let told_of_few = told(&few);
    let handbooks = highest(&prior);
    let likely = few.iter().zip(&told_of_few).filter(|(strip, _)| prior[**strip] > handbooks - 3.0);
    let (least, most) = likely.fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), (_, told)| {
        (told.min(least), told.max(most))
    });
    let whose = if most - least > MOVED { Whose::Own } else { Whose::Handbook };
    let rough: Vec<f64> = few.iter().zip(told_of_few).map(|(strip, told)| prior[*strip] + told).collect();
    let top = highest(&rough);
    let mut worth =
        few.iter().zip(&rough).filter(|(_, height)| **height > top - 25.0).map(|(strip, _)| *strip);
    let first = worth.next().unwrap_or(0);
    let last = worth.next_back().unwrap_or(first);
    let asked: Vec<usize> = (first.saturating_sub(FEW)..prior.len().min(last + FEW + 1)).collect();

    let heights: Vec<f64> =
        asked.iter().zip(told(&asked)).map(|(strip, told)| prior[*strip] + told).collect();
    let top = highest(&heights);
    let mut strips = vec![0.0; prior.len()];
    for (strip, height) in asked.iter().zip(heights) {
        strips[*strip] = (height - top).exp();
    }
    let sum: f64 = strips.iter().sum();
    for strip in &mut strips {
        *strip /= sum;
    }
    let mean: f64 = strips.iter().zip(&shares_of_strips).map(|(weight, share)| weight * share).sum();
    let conception = Conception::from_share(mean.clamp(0.0, 1.0)).unwrap_or_default();
    Learned { whose, season, conception, belief: believed(&strips, &shares_of_strips), strips }
}

/// Returns the strips that weigh anything, neighbors put together until they are few; their mean stays.
fn believed(strips: &[f64], shares: &[f64]) -> Belief {
    let top = strips.iter().copied().fold(0.0, f64::max);
    let kept: Vec<(f64, f64)> = shares
        .iter()
        .copied()
        .zip(strips.iter().copied())
        .filter(|(_, weight)| *weight > LEAST * top)
        .collect();
    let together = kept.len().div_ceil(PARTS).max(1);
    let sum: f64 = kept.iter().map(|(_, weight)| weight).sum();
    let put = |some: &[(f64, f64)]| {
        let weight: f64 = some.iter().map(|(_, weight)| weight).sum();
        (some.iter().map(|(share, weight)| share * weight).sum::<f64>() / weight, weight / sum)
    };
    Belief(kept.chunks(together).map(put).collect())
}

/// Returns the logarithm of the chance of all that is seen, for each of these shares that may hold.
fn told(witnesses: &[(&Witness, f64, Vec<f64>)], asked: &[f64]) -> Vec<f64> {
    let mut told = vec![0.0; asked.len()];
    let mut mating = None;
    let mut table: Vec<f64> = Vec::new();
    for (witness, of_all, of_cycles) in witnesses {
        // They come mating by mating, so what holds in each cycle is seldom worked out anew.
        if mating != Some(witness.mating) {
            table = asked.iter().flat_map(|share| shares(witness.mating, *share)).collect();
            mating = Some(witness.mating);
        }
        let ewes = f64::from(witness.ewes);
        for (told, held) in told.iter_mut().zip(table.chunks(of_cycles.len().max(1))) {
            let of_cycles = held.iter().zip(of_cycles).map(|(share, chance)| share * chance);
            let chance = of_all + of_cycles.sum::<f64>();
            *told += ewes * (chance.max(0.0) + UNEXPLAINED).ln();
        }
    }
    told
}

/// Returns the chance of what is seen of a ewe: of all ewes, and what each cycle adds for the share that holds in it.
fn chances(witness: &Witness) -> (f64, Vec<f64>) {
    let Witness { mating, gestation, fate, .. } = *witness;
    let by = |time: NaiveDateTime, (from, to): (f64, f64)| {
        let since = time.signed_duration_since(mating.ram_in().and_time(NaiveTime::MIN));
        lambed_by(since.as_seconds_f64() / 86_400.0, from, to, gestation)
    };
    let of_cycles = |chance: &dyn Fn((f64, f64)) -> f64| days(mating).map(chance).collect();
    match fate {
        Fate::Lambed(on) => {
            let day = float(between(mating.ram_in(), on));
            let on_it =
                |(from, to)| lambed_by(day + 1.0, from, to, gestation) - lambed_by(day, from, to, gestation);
            (0.0, of_cycles(&on_it))
        }
        Fate::Open(time) => (1.0, of_cycles(&|cycle| -by(time, cycle))),
        Fate::Carrying(time) => (0.0, of_cycles(&|cycle| 1.0 - by(time, cycle))),
        Fate::Missed => (1.0, of_cycles(&|_| -1.0)),
    }
}

/// How many of a flock will lamb: "of 40 put to the ram, likely 36 to 39".
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
    /// Of those put to the ram, who was scanned empty and has not lambed; they are not among those likely.
    pub empty: u32,
    /// Whose figure it rests on.
    pub whose: Whose,
}

impl Learned {
    /// Returns the share that is not passed with this chance: 0.05 and 0.95 span the middle 90%.
    ///
    /// ```
    /// use yeanling_core::reckon::season::conception::learned;
    /// let learned = learned(&[]);
    /// assert!((learned.at_most(0.05) - 0.643).abs() < 0.002 && (learned.at_most(0.95) - 0.846).abs() < 0.002);
    /// ```
    #[must_use]
    pub fn at_most(&self, chance: f64) -> f64 {
        let mut so_far = 0.0;
        for (strip, weight) in (0..STRIPS).zip(&self.strips) {
            if so_far + weight >= chance {
                let part = ((chance - so_far) / weight).clamp(0.0, 1.0);
                return (f64::from(strip) + part) / f64::from(STRIPS);
            }
            so_far += weight;
        }
        1.0
    }
}
