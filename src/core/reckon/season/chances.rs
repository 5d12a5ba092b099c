//! How many of many independent ewes: the exact spread of a sum of unlike chances, without a simulation.
//!
//! Each ewe brings 0, 1, 2, … of something with her own chances `q₀, q₁, …`; the spread of the sum is the convolution of
//! all. Where each `q₀` is large, as on any one night, it is had in near-linear time from `G′ = G · Σ n·Q′/Q`, the same
//! convolution as a series; of the others, those that bring one or none are had as a binomial, the rest one by one.
//! What is not known of all alike, as the share that holds, moves them together: the series carries it along.
//!
//! The spread of a night is a power series, not a product ewe by ewe: `G′ = G · Σ n·Q′/Q` gives the same convolution
//! in near-linear time while each ewe most likely does not lamb that night; the few likelier ones are multiplied in.

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
    /// By how much the mean of each moves with one spread of what all of them hang on.
    pub(super) sway: f64,
}

impl Alike {
    /// Returns ewes that each bring one with this chance, or none.
    pub(super) fn one_or_none(ewes: u32, chance: f64) -> Self {
        let chance = chance.clamp(0.0, 1.0);
        Self { ewes, each: [1.0 - chance, chance, 0.0, 0.0, 0.0], sway: 0.0 }
    }

    /// Returns the same, where the mean of each moves so with one spread of what all of them hang on.
    pub(super) const fn swaying(self, sway: f64) -> Self {
        Self { sway, ..self }
    }

    fn mean(&self) -> f64 {
        let [_, one, two, three, four] = self.each;
        one + 2.0 * two + 3.0 * three + 4.0 * four
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

/// By so much a sum of chances may fall short by rounding alone.
const HAIR: f64 = 1e-12;

impl Counts {
    /// Returns the spread of the sum over all ewes.
    pub(super) fn of(all: &[Alike]) -> Self {
        Self::as_far_as(all, f64::INFINITY)
    }

    /// Returns the spread of the sum over all ewes, at least as far as to the number that is not passed with this chance:
    /// what lies behind is seldom asked for, and costs the most.
    pub(super) fn as_far_as(all: &[Alike], sure: f64) -> Self {
        let most: usize = all.iter().map(|alike| usize_of(alike.ewes) * MOST_EACH).sum();
        let one_by_one = all.iter().any(|alike| alike.each[0] < SERIES_FROM);
        let sure = if one_by_one { f64::INFINITY } else { sure };
        let mut chances = series(all.iter().filter(|alike| alike.each[0] >= SERIES_FROM), most, sure);
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
            if so_far >= chance - HAIR {
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

    /// Returns the chances of 0, 1, …
    pub(super) fn chances(&self) -> &[f64] {
        &self.chances
    }

    /// Returns the spread with these chances of 0, 1, …
    pub(super) const fn from_chances(chances: Vec<f64>) -> Self {
        Self { chances }
    }
}

/// Returns the product of all `Q(z)^n` as a power series, for ewes that most likely bring none; no further than to the
/// number by which the chances come to `sure`.
///
/// Where all sway together, every mean times one factor, the factor is a Gamma about 1 of the variance `c` that the sways
/// come to: `E[G^factor] = (1 − c·ln G)^(−1/c) = H`, and `H′·(1 − c·ln G) = H·(ln G)′` gives H term by term as well.
fn series<'a>(all: impl Iterator<Item = &'a Alike>, most: usize, sure: f64) -> Vec<f64> {
    let (mut none, mut mean, mut sway) = (0.0, 0.0, 0.0);
    let mut slope: Vec<f64> = Vec::new();
    for alike in all {
        let ewes = f64::from(alike.ewes);
        none += ewes * alike.each[0].ln();
        mean += ewes * alike.mean();
        sway += ewes * alike.sway;
        add_slope(&mut slope, ewes, &alike.each);
    }
    let shaken = if mean > NOTHING { (sway / mean).powi(2) } else { 0.0 };
    let mut so_far = if shaken > HAIR { (-(-shaken * none).ln_1p() / shaken).exp() } else { none.exp() };
    let hold = 1.0 - shaken * none;
    let places = (1..).map(counted);
    let slope: Vec<(f64, f64)> = slope
        .iter()
        .zip(places)
        .map(|(slope, place)| (slope * (1.0 - shaken), shaken * slope / place))
        .collect();
    let mut chances = vec![so_far];
    let mut quiet = 0;
    for number in 1..=most {
        if so_far >= sure - HAIR {
            break;
        }
        // A loop by places, since it is the heart of it all.
        let mut sum = 0.0;
        let place = counted(number);
        for (term, (slope, more)) in slope.iter().take(number).enumerate() {
            sum += (slope + more * place) * chances[number - 1 - term];
        }
        let chance = (sum / (place * hold)).max(0.0);
        quiet = if chance < NOTHING && place > mean + 1.0 { quiet + 1 } else { 0 };
        if quiet > MOST_EACH {
            break;
        }
        chances.push(chance);
        so_far += chance;
    }
    chances
}

/// Adds the series of `n·Q′/Q`: its terms d are `d_j·q₀ = (j+1)·q_{j+1} − Σ q_i·d_{j−i}`; of one lamb or none
/// `d_j = −d_{j−1}·q₁/q₀`.
fn add_slope(slope: &mut Vec<f64>, ewes: f64, each: &[f64; MOST_EACH + 1]) {
    let [_, one, two, three, four] = each.map(|chance| chance / each[0]);
    let is_one_or_none = two + three + four <= 0.0;
    let own = [one, 2.0 * two, 3.0 * three, 4.0 * four];
    let mut last = [0.0; MOST_EACH];
    let mut quiet = 0;
    for term in 0..400 {
        let value = if is_one_or_none && term > 0 {
            -last[0] * one
        } else {
            let own = own.get(term).copied().unwrap_or(0.0);
            own - (one * last[0] + two * last[1] + three * last[2] + four * last[3])
        };
        last = [value, last[0], last[1], last[2]];
        match slope.get_mut(term) {
            Some(slope) => *slope += ewes * value,
            None => slope.push(ewes * value),
        }
        quiet = if (ewes * value).abs() < NOTHING { quiet + 1 } else { 0 };
        if quiet > MOST_EACH || (is_one_or_none && quiet > 0) {
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
