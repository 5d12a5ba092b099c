//! What a birth weight means: the optimum of a single is 4.5–5.5 kg, of a twin 93% of it, of a triplet 78%.
//!
//! Few ordinary lambs hit the optimum, so "good" is wider (ours): from half a kilogram under it up to 6 kg.
//!
//! A breed's recalled mean raises no alarm; the flock's own does, from 15 lambs of that litter size on.

use super::cited::{HANRAHAN_KEADY, common, memory, ours, seen};
use crate::settings::BreedMeans;
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
    seen(
        "",
        "St Croix, 4,078 lambs: 3.01 kg of first lambings, 3.14 and 3.15 kg of later ones, all litters together",
        None,
        "Environmental factors and ram influence litter size, birth, and weaning weight in Saint Croix hair sheep",
    ),
    ours("The flock's own mean replaces any other from 15 lambs of a litter size on"),
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

    let held = to_the_gram(weight);
    let verdict = if held < to_the_gram(very_light_under) {
        Verdict::VeryLight
    } else if held < to_the_gram(good_from) {
        Verdict::Light
    } else if held <= HEAVY_OVER {
        Verdict::Good
    } else {
        Verdict::Heavy
    };
    let reasons = reasons(held, (to_the_gram(optimum.0), to_the_gram(optimum.1)));
    Ok(Band { weight, litter_size, verdict, very_light_under, good_from, optimum, reasons })
}

/// Weights and edges are held against each other in whole grams, so that what a float leaves of 3.51 − 0.5 decides nothing.
fn to_the_gram(mass: Mass) -> Mass {
    Mass::from_kilograms((mass.as_kilograms() * 1000.0).round() / 1000.0)
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

/// From so many lambs of a litter size on, the flock's own mean replaces any other (ours).
pub const OWN_FROM: u16 = 15;

/// The flock's own mean for a litter size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OwnMean {
    /// The mean.
    pub mean: Mass,
    /// Over so many lambs.
    pub lambs: u16,
}

/// Which mean a weight was held against.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MeanUsed {
    /// The flock's own, over so many lambs.
    Own {
        /// How many.
        lambs: u16,
    },
    /// A breed's (memory, low confidence), until the flock has enough lambs of its own.
    Breed {
        /// Which breed.
        breed: BreedMeans,
        /// How many lambs of its own the flock has so far.
        lambs: u16,
    },
    /// None: only the optimum by litter size.
    Optimum {
        /// How many lambs of its own the flock has so far.
        lambs: u16,
    },
}

/// A birth weight against its band, its litter and its flock.
#[derive(Clone, Debug, PartialEq)]
pub struct Against {
    /// Where it lies by litter size.
    pub band: Band,
    /// The mean of its litter, if all are weighed.
    pub litter_mean: Option<Mass>,
    /// Which mean stands for the flock.
    pub used: MeanUsed,
    /// That mean; none when only the optimum is there.
    pub mean: Option<Mass>,
    /// Under half of such lambs live (Wilson 2025): see `litter_alarm`. Never from a breed's recalled mean.
    pub red: bool,
}

/// Returns a breed's mean for a litter size: the middle of its range, or none where none is recalled (memory).
///
/// ```
/// use yeanling_core::settings::BreedMeans;
/// use yeanling_core::reckon::birth_weight::breed_mean;
/// use yeanling_core::units::Mass;
/// assert_eq!(breed_mean(BreedMeans::Dorper, 1), Some(Mass::from_kilograms(4.25)));
/// assert_eq!(breed_mean(BreedMeans::Dorper, 2), None);
/// ```
#[must_use]
pub fn breed_mean(breed: BreedMeans, litter_size: u8) -> Option<Mass> {
    let name = match breed {
        BreedMeans::NoBreed => return None,
        BreedMeans::Katahdin => "Katahdin",
        BreedMeans::StCroix => "St Croix",
        BreedMeans::Dorper => "Dorper",
    };
    let means = HAIR_BREEDS.iter().find(|means| means.breed == name)?;
    let place = usize::from(litter_size.clamp(1, 3)) - 1;
    let (least, most) = means.by_litter.get(place).copied().flatten()?;
    Some(Mass::from_kilograms(f64::midpoint(least.as_kilograms(), most.as_kilograms())))
}

/// Returns a birth weight against its band, its litter's mean and the flock's.
///
/// The flock's own mean for this litter size counts from `OWN_FROM` lambs on; before that a breed's, if the farm chose
/// one. Red needs the flock's own mean: a recalled one is no ground for an alarm (ours).
///
/// # Errors
/// The weight, the litter's mean or the flock's is outside `Mass::AT_BIRTH`.
///
/// ```
/// use yeanling_core::settings::BreedMeans;
/// use yeanling_core::reckon::birth_weight::{OwnMean, against};
/// use yeanling_core::units::Mass;
/// let kg = Mass::from_kilograms;
/// let own = Some(OwnMean { mean: kg(4.1), lambs: 15 });
/// assert!(against(kg(2.8), 3, Some(kg(3.9)), own, BreedMeans::NoBreed).unwrap().red);
/// ```
pub fn against(
    weight: Mass,
    litter_size: u8,
    litter_mean: Option<Mass>,
    own: Option<OwnMean>,
    breed: BreedMeans,
) -> Result<Against, OutOfBounds<Mass>> {
    let band = band(weight, litter_size)?;
    let litter_mean = litter_mean.map(|mean| Mass::AT_BIRTH.check(mean)).transpose()?;
    let own_mean = own.map(|own| Mass::AT_BIRTH.check(own.mean)).transpose()?;
    let lambs = own.map_or(0, |own| own.lambs);
    let breed_mean = breed_mean(breed, litter_size);
    let (used, mean) = if lambs >= OWN_FROM && own_mean.is_some() {
        (MeanUsed::Own { lambs }, own_mean)
    } else if breed_mean.is_some() {
        (MeanUsed::Breed { breed, lambs }, breed_mean)
    } else {
        (MeanUsed::Optimum { lambs }, None)
    };
    let red = match used {
        MeanUsed::Own { .. } => {
            litter_mean.zip(mean).is_some_and(|(litter, flock)| litter_alarm(weight, litter, flock))
        }
        MeanUsed::Breed { .. } | MeanUsed::Optimum { .. } => false,
    };
    Ok(Against { band, litter_mean, used, mean, red })
}
