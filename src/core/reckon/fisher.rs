//! Whether two shares differ by more than chance brings: Fisher's exact test, two-sided.
//!
//! Of all tables with the same sums, those count that are no likelier than the one that was seen.

use super::cited::{memory, ours};
use crate::source::Source;

/// Where the rule was printed.
pub const SOURCES: &[Source] = &[
    memory("Fisher’s exact test of two shares: The Design of Experiments, 1935"),
    ours("Weights: how many are over the median of all, by the same test"),
    ours("Said to differ at 5 in 100, divided by how many are compared"),
];

/// So seldom chance alone may bring a difference that is spoken of (ours).
pub const SELDOM: f64 = 0.05;

/// A table's chance this much over another's is the same: rounding.
const SAME: f64 = 1.0 + 1e-7;

/// So many of which something holds, and so many of which it does not.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Sample {
    /// It holds.
    pub yes: u32,
    /// It does not.
    pub no: u32,
}

impl Sample {
    /// Returns how many there are.
    #[must_use]
    pub const fn all(self) -> u64 {
        self.yes as u64 + self.no as u64
    }

    /// Returns the share of which it holds; nought of none.
    #[must_use]
    pub fn share(self) -> f64 {
        if self.all() == 0 { 0.0 } else { f64::from(self.yes) / (f64::from(self.yes) + f64::from(self.no)) }
    }
}

/// Returns how often chance alone brings two samples at least as far apart, 0 to 1; always, where either is empty.
///
/// ```
/// use yeanling_core::reckon::fisher::{Sample, chance};
/// // The lady who tasted tea: three of four cups told right of either kind, 34 of 70 ways.
/// let found = chance(Sample { yes: 3, no: 1 }, Sample { yes: 1, no: 3 });
/// assert!((found - 34.0 / 70.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn chance(one: Sample, other: Sample) -> f64 {
    let (first, second) = (one.all(), other.all());
    let yes = u64::from(one.yes) + u64::from(other.yes);
    let (least, most) = (yes.saturating_sub(second), yes.min(first));
    let float = |count: u64| u32::try_from(count).map_or(f64::INFINITY, f64::from);
    // Begun at the likeliest, so that nothing grows past what can be held.
    let likeliest = ((first + 1) * (yes + 1) / (first + second + 2)).clamp(least, most);
    let up = |count: u64| {
        float(first - count) * float(yes - count) / (float(count + 1) * float(second + count + 1 - yes))
    };
    let mut weights: Vec<(u64, f64)> = vec![(likeliest, 1.0)];
    let mut weight = 1.0;
    for count in likeliest..most {
        weight *= up(count);
        weights.push((count + 1, weight));
    }
    weight = 1.0;
    for count in (least..likeliest).rev() {
        weight /= up(count);
        weights.push((count, weight));
    }
    let seen =
        weights.iter().find(|(count, _)| *count == u64::from(one.yes)).map_or(1.0, |(_, weight)| *weight);
    let all: f64 = weights.iter().map(|(_, weight)| weight).sum();
    let as_far: f64 = weights.iter().map(|(_, weight)| weight).filter(|weight| **weight <= seen * SAME).sum();
    as_far / all
}
