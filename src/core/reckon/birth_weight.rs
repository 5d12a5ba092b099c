//! What a birth weight means: the optimum of a single is 4.5–5.5 kg, of a twin 93 % of it, of a triplet 78 %.
//!
//! Few ordinary lambs hit the optimum, so "good" is wider (ours): from half a kilogram under it up to 6 kg.

use super::cited::{HANRAHAN_KEADY, common, memory, ours, seen};
use crate::source::Source;
use crate::units::{Mass, OutOfBounds};

/// The weights at which singles live best, in Merinos (AWI).
pub const OPTIMUM_SINGLE: (Mass, Mass) = (Mass::from_kilograms(4.5), Mass::from_kilograms(5.5));

/// A lamb lighter than this is watched, whatever its litter (memory).
pub const WATCH_UNDER: Mass = Mass::from_kilograms(3.0);

/// A lamb heavier than this is a hard birth to watch for, whatever its litter: the ewe is no wider for twins (ours).
pub const HEAVY_OVER: Mass = Mass::from_kilograms(6.0);

/// How far under the optimum is still good (ours: half of what Wilson 2025 found deadly within a litter).
pub const GOOD_MARGIN: Mass = Mass::from_kilograms(0.5);

/// How far under its litter's mean a lamb is in danger (Wilson 2025).
pub const LITTER_GAP: Mass = Mass::from_kilograms(1.0);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Australian Wool Innovation", "Best survival at 4.5–5.5 kg, Merino", None, ""),
    HANRAHAN_KEADY,
    seen("Wilson", "74,448 US range records", Some(2025), ""),
    memory("Under 3.0 kg: watch"),
    common("Over about 6 kg: a hard birth"),
    memory("Hair-breed means"),
    ours("Good is from 0.5 kg under the optimum to 6 kg; very light is under 3.0, 2.8 or 2.3 kg by litter"),
];

/// Mean birth weights of a hair breed by litter size; recalled, low confidence, starting values only.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BreedMean {
    /// The breed.
    pub breed: &'static str,
    /// The mean of singles, twins and triplets, as a range; none where none is recalled for that size.
    pub by_litter: [Option<(Mass, Mass)>; 3],
}

const fn kilograms(least: f64, most: f64) -> Option<(Mass, Mass)> {
    Some((Mass::from_kilograms(least), Mass::from_kilograms(most)))
}

/// Hair breeds are born lighter; the flock's own means replace these (memory, low confidence).
pub const HAIR_BREEDS: &[BreedMean] = &[
    BreedMean {
        breed: "Katahdin",
        by_litter: [kilograms(4.6, 4.6), kilograms(3.9, 3.9), kilograms(3.3, 3.3)],
    },
    BreedMean { breed: "St Croix", by_litter: [kilograms(3.0, 3.0), None, None] },
    BreedMean { breed: "Dorper", by_litter: [kilograms(4.0, 4.5), None, None] },
];

/// What a birth weight comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Far under its optimum: keep it warm and fed.
    VeryLight,
    /// Under what is good for its litter: watch it.
    Light,
    /// Ordinary for its litter.
    Good,
    /// Over 6 kg.
    Heavy,
}

/// Why a verdict came out as it did.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reason {
    /// Under 3.0 kg.
    UnderThreeKilograms,
    /// Under the optimum of its litter size.
    UnderOptimum,
    /// Within the optimum of its litter size.
    InOptimum,
    /// Over the optimum of its litter size.
    OverOptimum,
    /// Over 6 kg: a hard birth, look for its signs.
    HardBirth,
}

/// A birth weight, where it lies, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// The birth weight.
    pub weight: Mass,
    /// Lambs in the litter; 0 counted as a single.
    pub litter_size: u8,
    /// What it comes to.
    pub verdict: Verdict,
    /// Under this: very light.
    pub very_light_under: Mass,
    /// From this on: good.
    pub good_from: Mass,
    /// The least and the most of the optimum for this litter size.
    pub optimum: (Mass, Mass),
    /// Why, most important first.
    pub reasons: Vec<Reason>,
}

/// Returns what the optimum of a single is multiplied by for this litter size (Hanrahan & Keady 2013).
///
/// A litter of 0 is one of unknown size and counts as a single, which is the strictest on light lambs (ours).
#[must_use]
pub const fn litter_factor(litter_size: u8) -> f64 {
    match litter_size {
        0 | 1 => 1.0,
        2 => 0.93,
        3..=u8::MAX => 0.78,
    }
}

/// Returns what a birth weight means in a litter of this size.
///
/// Very light: under 3.0 kg × the litter's factor. Good: from 0.5 kg under the litter's optimum, and never under
/// 3.0 kg, up to 6.0 kg. Heavy: over 6.0 kg. All edges are ours, from AWI, Hanrahan & Keady 2013 and Wilson 2025.
///
/// # Errors
/// The weight is outside `Mass::AT_BIRTH`, 0.5 to 12 kg, or no number.
///
/// ```
/// use yeanling_core::reckon::birth_weight::{Verdict, band};
/// use yeanling_core::units::Mass;
/// assert_eq!(band(Mass::from_kilograms(3.9), 2).unwrap().verdict, Verdict::Good);
/// assert_eq!(band(Mass::from_kilograms(3.9), 1).unwrap().verdict, Verdict::Light);
/// ```
pub fn band(weight: Mass, litter_size: u8) -> Result<Band, OutOfBounds<Mass>> {
    let weight = Mass::AT_BIRTH.check(weight)?;
    let factor = litter_factor(litter_size);
    let scaled = |mass: Mass| Mass::from_kilograms(mass.as_kilograms() * factor);
    let optimum = (scaled(OPTIMUM_SINGLE.0), scaled(OPTIMUM_SINGLE.1));
    let good_from = optimum.0.as_kilograms() - GOOD_MARGIN.as_kilograms();
    let good_from = Mass::from_kilograms(good_from.max(WATCH_UNDER.as_kilograms()));
    let very_light_under = scaled(WATCH_UNDER);

    let verdict = if weight < very_light_under {
        Verdict::VeryLight
    } else if weight < good_from {
        Verdict::Light
    } else if weight <= HEAVY_OVER {
        Verdict::Good
    } else {
        Verdict::Heavy
    };
    let reasons = reasons(weight, optimum);
    Ok(Band { weight, litter_size, verdict, very_light_under, good_from, optimum, reasons })
}

fn reasons(weight: Mass, optimum: (Mass, Mass)) -> Vec<Reason> {
    let mut reasons = Vec::new();
    if weight < WATCH_UNDER {
        reasons.push(Reason::UnderThreeKilograms);
    }
    if weight > HEAVY_OVER {
        reasons.push(Reason::HardBirth);
    }
    reasons.push(if weight < optimum.0 {
        Reason::UnderOptimum
    } else if weight > optimum.1 {
        Reason::OverOptimum
    } else {
        Reason::InOptimum
    });
    reasons
}

/// Returns whether a lamb is in danger for its litter: under half of such lambs live (Wilson 2025).
///
/// It is more than 1 kg under its litter's mean, and the litter is itself under the flock's mean for that size.
///
/// ```
/// use yeanling_core::reckon::birth_weight::litter_alarm;
/// use yeanling_core::units::Mass;
/// let kg = Mass::from_kilograms;
/// assert!(litter_alarm(kg(2.8), kg(3.9), kg(4.1)));
/// assert!(!litter_alarm(kg(2.8), kg(3.9), kg(3.9)));
/// ```
#[must_use]
pub fn litter_alarm(weight: Mass, litter_mean: Mass, flock_mean_for_size: Mass) -> bool {
    let gap = litter_mean.as_kilograms() - weight.as_kilograms();
    gap > LITTER_GAP.as_kilograms() + HALF_A_GRAM && litter_mean < flock_mean_for_size
}

/// Weights are kept to a gram, so that a gap of exactly 1 kg is not more than 1 kg.
const HALF_A_GRAM: f64 = 0.000_5;
