//! How many of many independent ewes: the exact spread of a sum of unlike chances, without a simulation.
//!
//! Each ewe brings 0, 1, 2, … of something with her own chances `q₀, q₁, …`; the spread of the sum is the convolution of
//! all. Where each `q₀` is large, as on any one night, it is had in near-linear time from `G′ = G · Σ n·Q′/Q`, the same
//! convolution as a series; of the others, those that bring one or none are had as a binomial, the rest one by one.

use super::days::{counted, whole};

/// The most of one thing that one ewe brings.
pub(super) const MOST_EACH: usize = 4;

/// The chances of one ewe to bring 0, 1, … of a thing, and how many ewes have just these.
#[derive(Clone, Copy, Debug)]
pub(super) struct Alike {
    /// How many ewes.
    pub(super) ewes: u32,
    /// Each ewe's chances; they sum to one.
    pub(super) each: [f64; MOST_EACH + 1],
}

impl Alike {
    /// Returns ewes that each bring one with this chance, or none.
    pub(super) fn one_or_none(ewes: u32, chance: f64) -> Self {
        let chance = chance.clamp(0.0, 1.0);
        Self { ewes, each: [1.0 - chance, chance, 0.0, 0.0, 0.0] }
    }
}

/// The spread of a count: the chance of each number from 0 on.
#[derive(Clone, Debug, PartialEq)]
pub struct Counts {
    chances: Vec<f64>,
}

/// From this chance of none on the series is used: it loses no more than a few units in the last place there.
const SERIES_FROM: f64 = 0.8;

/// What is less than this is nothing.
const NOTHING: f64 = 1e-17;

impl Counts {
    /// Returns the spread of the sum over all ewes.
    pub(super) fn of(all: &[Alike]) -> Self {
        let most: usize = all.iter().map(|alike| usize_of(alike.ewes) * MOST_EACH).sum();
        let mut chances = series(all.iter().filter(|alike| alike.each[0] >= SERIES_FROM), most);
        for alike in all.iter().filter(|alike| alike.each[0] < SERIES_FROM) {
            if let [_, chance, 0.0, 0.0, 0.0] = alike.each {
                chances = product(&chances, &binomial(alike.ewes, chance));
                continue;
            }
            for _ in 0..alike.ewes {
                chances = product(&chances, &alike.each);
            }
        }
        Self { chances }
    }

    /// Returns the chance of just so many.
    #[must_use]
    pub fn chance_of(&self, number: usize) -> f64 {
        self.chances.get(number).copied().unwrap_or(0.0)
    }

    /// Returns the mean.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.chances.iter().enumerate().map(|(number, chance)| counted(number) * chance).sum()
    }

    /// Returns the least number that is not passed with this chance.
    ///
    /// ```
    /// use yeanling_core::reckon::season::forecast::Counts;
    /// let coins = Counts::of_alike(2, 0.5);
    /// assert_eq!([0.05, 0.5, 0.95].map(|chance| coins.at_most(chance)), [0, 1, 2]);
    /// ```
    #[must_use]
    pub fn at_most(&self, chance: f64) -> u32 {
        let mut so_far = 0.0;
        for (number, one) in self.chances.iter().enumerate() {
            so_far += one;
            if so_far >= chance - 1e-12 {
                return u32_of(number);
            }
        }
        u32_of(self.chances.len().saturating_sub(1))
    }

    /// Returns how many of so many alike ewes, each with this chance; a chance beyond 0 to 1 is cut to it.
    #[must_use]
    pub fn of_alike(ewes: u32, chance: f64) -> Self {
        Self::of(&[Alike::one_or_none(ewes, chance)])
    }

    /// Returns how many of ewes that are alike in groups: how many there are, and the chance of each.
    pub(super) fn of_unlike(groups: &[(u32, f64)]) -> Self {
        let all: Vec<_> = groups.iter().map(|(ewes, chance)| Alike::one_or_none(*ewes, *chance)).collect();
        Self::of(&all)
    }

    /// Returns the spread with these chances of 0, 1, …
    pub(super) const fn from_chances(chances: Vec<f64>) -> Self {
        Self { chances }
    }
}

/// Returns the product of all `Q(z)^n` as a power series, for ewes that most likely bring none.
fn series<'a>(all: impl Iterator<Item = &'a Alike>, most: usize) -> Vec<f64> {
    let mut none = 0.0;
    let mut mean = 0.0;
    let mut slope: Vec<f64> = Vec::new();
    for Alike { ewes, each } in all {
        let ewes = f64::from(*ewes);
        none += ewes * each[0].ln();
        mean += ewes * (1..=MOST_EACH).map(|number| counted(number) * each[number]).sum::<f64>();
        add_slope(&mut slope, ewes, each);
    }
    let mut chances = vec![none.exp()];
    for number in 1..=most {
        let sum: f64 = slope.iter().zip(chances.iter().rev()).map(|(slope, chance)| slope * chance).sum();
        let chance = (sum / counted(number)).max(0.0);
        let is_over = counted(number) > mean + 1.0
            && chance < NOTHING
            && chances.iter().rev().take(MOST_EACH).all(|chance| *chance < NOTHING);
        if is_over {
            break;
        }
        chances.push(chance);
    }
    chances
}

/// Adds the series of `n·Q′/Q`: its terms d are `d_j·q₀ = (j+1)·q_{j+1} − Σ q_i·d_{j−i}`.
fn add_slope(slope: &mut Vec<f64>, ewes: f64, each: &[f64; MOST_EACH + 1]) {
    let mut last = [0.0; MOST_EACH];
    let mut quiet = 0;
    for term in 0..400 {
        let own = if term < MOST_EACH { counted(term + 1) * each[term + 1] } else { 0.0 };
        let before: f64 = each[1..].iter().zip(last).map(|(chance, last)| chance * last).sum();
        let value = (own - before) / each[0];
        last = [value, last[0], last[1], last[2]];
        if slope.len() <= term {
            slope.push(0.0);
        }
        slope[term] += ewes * value;
        quiet = if (ewes * value).abs() < NOTHING { quiet + 1 } else { 0 };
        if quiet > MOST_EACH {
            break;
        }
    }
}

/// Returns the spread of how many of so many ewes, each with this chance: from the likeliest number on to both sides, by
/// `P(k+1)/P(k) = (n−k)/(k+1) · q/(1−q)`, so that nothing is lost where the chance of none is as good as nothing.
fn binomial(ewes: u32, chance: f64) -> Vec<f64> {
    let most = usize_of(ewes);
    if chance >= 1.0 {
        let mut all = vec![0.0; most + 1];
        all[most] = 1.0;
        return all;
    }
    let odds = chance / (1.0 - chance);
    let up = |number: usize| counted(most - number) / counted(number + 1) * odds;
    let likeliest = usize::try_from(whole((counted(most + 1) * chance).floor())).unwrap_or(0).min(most);
    let mut chances = vec![0.0; most + 1];
    chances[likeliest] = 1.0;
    for number in likeliest..most {
        chances[number + 1] = chances[number] * up(number);
    }
    for number in (0..likeliest).rev() {
        chances[number] = chances[number + 1] / up(number);
    }
    let sum: f64 = chances.iter().sum();
    for chance in &mut chances {
        *chance /= sum;
    }
    shortened(chances)
}

/// Returns the spread of the sum of two counts.
fn product(chances: &[f64], others: &[f64]) -> Vec<f64> {
    let top = others.iter().rposition(|chance| *chance > 0.0).unwrap_or(0);
    let mut product = vec![0.0; chances.len() + top];
    for (more, other) in others.iter().enumerate().take(top + 1).filter(|(_, other)| **other > 0.0) {
        for (place, chance) in product[more..].iter_mut().zip(chances) {
            *place += chance * other;
        }
    }
    shortened(product)
}

/// Returns the chances without those at the end that are nothing.
fn shortened(mut chances: Vec<f64>) -> Vec<f64> {
    while chances.len() > 1 && chances.last().is_some_and(|chance| *chance < NOTHING) {
        chances.pop();
    }
    chances
}

fn usize_of(number: u32) -> usize {
    usize::try_from(number).unwrap_or(usize::MAX)
}

fn u32_of(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

/// Returns the least whole number not under this one, as a count; what is a hair over a whole number is that number.
pub(super) fn rounded_up(number: f64) -> u32 {
    u32::try_from(whole((number - 1e-9).ceil()).max(0)).unwrap_or(u32::MAX)
}
