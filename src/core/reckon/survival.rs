//! How many lambs of a birth weight live: the flock's own, in bins, each with its Wilson interval.
//!
//! `(p + z²/2n ± z·√(p(1−p)/n + z²/4n²)) ÷ (1 + z²/n)`, z = 1.96 for 95%. Under 30 lambs nothing is drawn: the interval
//! would be the whole paper.

use super::cited::{ours, seen};
use crate::sort_small::SortSmall;
use crate::source::Source;
use crate::units::Mass;

/// Nothing is said of fewer lambs (ours).
pub const LEAST_LAMBS: usize = 30;

/// A bin is so wide (ours).
pub const BIN_KILOGRAMS: f64 = 0.5;

/// The half-width of 95% of a normal distribution, in standard deviations.
const Z: f64 = 1.959_963_984_540_054;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen(
        "Wilson",
        "Probable inference, the law of succession, and statistical inference",
        Some(1927),
        "JASA 22:209",
    ),
    ours("Bins of half a kilogram; nothing under 30 lambs"),
];

/// A share with the interval in which it lies, 95 times in a hundred.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Interval {
    /// The share seen, 0 to 1.
    pub share: f64,
    /// Not less than this.
    pub from: f64,
    /// Not more than this.
    pub to: f64,
}

/// Returns the Wilson interval of `count` of `of`; none of nothing, or of more than there are.
///
/// ```
/// use yeanling_core::reckon::survival::wilson;
/// let nine_of_ten = wilson(9, 10).unwrap();
/// assert_eq!(format!("{:.3} {:.3}", nine_of_ten.from, nine_of_ten.to), "0.596 0.982");
/// ```
#[must_use]
pub fn wilson(count: u32, of: u32) -> Option<Interval> {
    if of == 0 || count > of {
        return None;
    }
    let n = f64::from(of);
    let share = f64::from(count) / n;
    let (middle, bottom) = (share + Z * Z / (2.0 * n), 1.0 + Z * Z / n);
    let reach = Z * (share * (1.0 - share) / n + Z * Z / (4.0 * n * n)).sqrt();
    Some(Interval {
        share,
        from: ((middle - reach) / bottom).max(0.0),
        to: ((middle + reach) / bottom).min(1.0),
    })
}

/// A lamb that was weighed at birth, and whether it lived to the age that is asked about.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fate {
    /// Its birth weight.
    pub birth: Mass,
    /// Whether it lived.
    pub lived: bool,
}

/// Lambs of about one birth weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bin {
    /// From this weight on.
    pub from: Mass,
    /// Under this weight.
    pub to: Mass,
    /// How many.
    pub lambs: u32,
    /// How many lived.
    pub lived: u32,
    /// The share that lived.
    pub interval: Interval,
}

/// Returns the bins that hold lambs, the lightest first; none under 30 lambs.
#[must_use]
pub fn by_birth_weight(lambs: &[Fate]) -> Option<Vec<Bin>> {
    if lambs.len() < LEAST_LAMBS {
        return None;
    }
    let mut bins: Vec<(f64, u32, u32)> = Vec::new();
    for lamb in lambs {
        // A hundredth of a gram keeps 4.5 kg, however it was typed, out of the bin below.
        let bin = ((lamb.birth.as_kilograms() + 1e-5) / BIN_KILOGRAMS).floor();
        let lived = u32::from(lamb.lived);
        match bins.iter_mut().find(|(there, ..)| (there - bin).abs() < 0.5) {
            Some((_, all, living)) => (*all, *living) = (*all + 1, *living + lived),
            None => bins.push((bin, 1, lived)),
        }
    }
    bins.sort_small_by(|one, two| one.0.total_cmp(&two.0));
    let kilograms = |bin: f64| Mass::from_kilograms(bin * BIN_KILOGRAMS);
    let bin = |(bin, lambs, lived): (f64, u32, u32)| {
        let interval = wilson(lived, lambs)?;
        Some(Bin { from: kilograms(bin), to: kilograms(bin + 1.0), lambs, lived, interval })
    };
    Some(bins.into_iter().filter_map(bin).collect())
}
