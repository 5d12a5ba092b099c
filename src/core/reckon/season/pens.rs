//! How many bonding pens will be wanted: a ewe is in one from her lambing until her litter's stay is over.
//!
//! A ewe is in a pen at the end of night t with the chance `Σ_n share_n · [F(t) − F(t − stay_n)]`, n being her lambs; the
//! pens that are taken are the exact count of such ewes.

use super::bounds::{EWES, Refused};
use super::chances::{Alike, Counts};
use super::days::{between, counted, float, later, whole};
use super::forecast::{Curve, span};
use crate::reckon::cited::{memory, ours, seen};
use crate::settings::PenStay;
use crate::source::Source;
use crate::units::NaiveDate;

/// How sure a number of pens is to be enough on the busiest night.
pub const SURE: [f64; 3] = [0.90, 0.95, 0.99];

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Irish Farmers Journal", "One pen for 7 to 8 ewes, for 5 to 6 when prolific", None, ""),
    memory("One pen for ten ewes"),
    ours(
        "Pens taken each night by the forecast and the farm's stay; the number that is enough 90, 95 or 99 times in 100",
    ),
];

/// A rule of thumb for pens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rule {
    /// One for 7 to 8 ewes (Irish Farmers Journal).
    Usual,
    /// One for 5 to 6 ewes, when prolific (Irish Farmers Journal).
    Prolific,
    /// One for ten ewes (memory).
    Ten,
}

impl Rule {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Usual, Self::Prolific, Self::Ten];

    /// Returns the fewest and the most ewes for which there is one pen.
    #[must_use]
    pub const fn ewes_to_a_pen(self) -> (u32, u32) {
        match self {
            Self::Usual => (7, 8),
            Self::Prolific => (5, 6),
            Self::Ten => (10, 10),
        }
    }

    /// Returns the fewest and the most pens for so many ewes, rounded up.
    ///
    /// ```
    /// use yeanling_core::reckon::season::pens::Rule;
    /// assert_eq!(Rule::Usual.pens(60), (8, 9));
    /// ```
    #[must_use]
    pub const fn pens(self, ewes: u32) -> (u32, u32) {
        let (few, many) = self.ewes_to_a_pen();
        (ewes.div_ceil(many), ewes.div_ceil(few))
    }
}

/// The pens of one night, at its end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Night {
    /// Its date.
    pub date: NaiveDate,
    /// The mean of pens taken.
    pub mean: f64,
    /// Enough 90, 95 and 99 times in 100.
    pub enough: [u32; 3],
}

/// How many pens, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted {
    /// Enough on the busiest night 90, 95 and 99 times in 100.
    pub enough: [u32; 3],
    /// The night on which most are wanted.
    pub busiest: NaiveDate,
    /// Every night.
    pub nights: Vec<Night>,
    /// Ewes it was made for.
    pub ewes: u32,
    /// The farm's stay.
    pub stay: PenStay,
    /// What each rule of thumb says: the fewest and the most.
    pub rules: [(Rule, (u32, u32)); 3],
}

/// Returns how many bonding pens will be taken each night, and how many are enough.
///
/// Ewes that are in a pen already are not in the curves and come on top. A part of a day is taken as an even part of its
/// night.
///
/// # Errors
/// There are no ewes, or more than `EWES` together; the nights are more than 800.
pub fn wanted(curves: &[Curve], stay: PenStay) -> Result<Wanted, Refused> {
    let ewes = curves.iter().fold(0_u32, |sum, curve| sum.saturating_add(curve.ewes()));
    EWES.check(f64::from(ewes))?;
    let (first, length) = span(curves)?;
    let stays = [1, 2, 3, 4].map(|lambs| f64::from(stay.hours(lambs)) / 24.0);
    let longest = whole(stays.into_iter().fold(0.0, f64::max).ceil());
    let sums: Vec<_> = curves
        .iter()
        .map(|curve| (between(first, curve.first()), running(curve.nights()), running(curve.sways()), curve))
        .collect();
    let mut nights = Vec::new();
    for day in 0..i64::try_from(length).unwrap_or(0) + longest {
        let end = float(day + 1);
        let mut mean = 0.0;
        let mut taken: Vec<Alike> = Vec::with_capacity(sums.len());
        for (start, chances, sways, curve) in &sums {
            let inside = |sums: &[f64]| -> f64 {
                let by = |day: f64| lambed_by(sums, day - float(*start));
                let by_end = by(end);
                let shares = curve.litters().as_shares().into_iter().zip(stays);
                let shares = shares.filter(|(share, _)| *share > 0.0);
                shares.map(|(share, stay)| share * (by_end - by(end - stay))).sum()
            };
            let chance = inside(chances);
            if chance > 0.0 {
                let sway = if curve.sways().is_empty() { 0.0 } else { inside(sways) };
                taken.push(Alike::one_or_none(curve.ewes(), chance).swaying(sway));
                mean += f64::from(curve.ewes()) * chance;
            }
        }
        let counts = Counts::as_far_as(&taken, SURE[2]);
        nights.push(Night { date: later(first, day), mean, enough: SURE.map(|sure| counts.at_most(sure)) });
    }
    let enough = [0, 1, 2].map(|sure| nights.iter().map(|night| night.enough[sure]).max().unwrap_or(0));
    let busiest = nights.iter().max_by(|one, other| one.mean.total_cmp(&other.mean));
    let busiest = busiest.map_or(first, |night| night.date);
    Ok(Wanted { enough, busiest, nights, ewes, stay, rules: Rule::ALL.map(|rule| (rule, rule.pens(ewes))) })
}

/// Returns the chance to have lambed by the beginning of each night, and by the end of the last.
fn running(nights: &[f64]) -> Vec<f64> {
    let mut so_far = 0.0;
    let mut sums = vec![0.0];
    for night in nights {
        so_far += night;
        sums.push(so_far);
    }
    sums
}

/// Returns the chance to have lambed by a day of a running sum, evenly within a night.
fn lambed_by(sums: &[f64], day: f64) -> f64 {
    let day = day.clamp(0.0, counted(sums.len().saturating_sub(1)));
    let night = usize::try_from(whole(day)).unwrap_or(0);
    let part = day - day.floor();
    let at = |night: usize| sums.get(night).or(sums.last()).copied().unwrap_or(0.0);
    at(night) + part * (at(night + 1) - at(night))
}
