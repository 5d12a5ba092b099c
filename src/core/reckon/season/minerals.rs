//! Copper and selenium: how much is too much, counted over everything a ewe eats.
//!
//! `ppm = Σ(kg dry matter × ppm) ÷ Σ kg dry matter`. A feed whose figure is not known makes the whole unknown.

use super::bounds::{COPPER_IN_FEED, FED_IN_A_DAY, Refused, SELENIUM_IN_FEED};
use crate::reckon::cited::{common, ours, seen};
use crate::source::Source;
use crate::units::Mass;

/// The most copper in the whole diet, in milligrams per kilogram of dry matter (Duncan 1997).
pub const COPPER_MOST_PPM: f64 = 15.0;

/// From here on copper poisons where molybdenum is low (Berger).
pub const COPPER_POISONS_PPM: f64 = 10.0;

/// The most selenium in the feed, in milligrams per kilogram (US law, FDA 1997).
pub const SELENIUM_MOST_PPM: f64 = 0.3;

/// The most selenium for one sheep in a day, in milligrams (US law, FDA 1997).
pub const SELENIUM_MOST_A_DAY_MG: f64 = 0.7;

/// The most selenium in a free-choice mineral, in milligrams per kilogram (US law, FDA 1997).
pub const SELENIUM_FREE_CHOICE_PPM: f64 = 90.0;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Duncan", "Copper: the whole diet at most 15 ppm", Some(1997), ""),
    seen("Berger", "Copper poisons from 10 ppm when molybdenum is low", None, ""),
    seen(
        "FDA",
        "Selenium: 0.3 ppm of feed, 0.7 mg a head a day, 90 ppm in free-choice mineral",
        Some(1997),
        "",
    ),
    common("No copper mineral for sheep"),
    ours("However strong a mineral is, the whole diet is judged by what it comes to"),
    ours("A feed whose figure is not known leaves the whole diet unknown, never zero"),
];

/// What must be said with every answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caution {
    /// Ask the vet: what a flock has too little or too much of is measured, not guessed.
    AskVet,
}

/// One thing a ewe eats.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// Its dry matter in a day.
    pub dry_matter: Mass,
    /// Copper in its dry matter, in milligrams per kilogram; none if not known.
    pub copper_ppm: Option<f64>,
    /// Selenium in its dry matter, in milligrams per kilogram; none if not known.
    pub selenium_ppm: Option<f64>,
}

/// What the copper of a diet comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Copper {
    /// Under 10 ppm.
    Safe,
    /// 10 to 15 ppm: poison where molybdenum is low.
    Watch,
    /// Over 15 ppm: too much.
    TooMuch,
    /// A feed's copper is not known.
    Unknown,
}

/// What the selenium of a diet comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Selenium {
    /// Within US law.
    Within,
    /// Over 0.3 ppm of the diet, or over 0.7 mg a day.
    TooMuch,
    /// A feed's selenium is not known.
    Unknown,
}

/// Copper and selenium of a whole diet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Guarded {
    /// Copper of the diet, in milligrams per kilogram of dry matter; of the known feeds if one is not.
    pub copper_ppm: f64,
    /// What that comes to. What is known can be too much already.
    pub copper: Copper,
    /// Selenium of the diet, in milligrams per kilogram of dry matter; of the known feeds if one is not.
    pub selenium_ppm: f64,
    /// Selenium in a day, in milligrams; of the known feeds if one is not.
    pub selenium_mg: f64,
    /// What that comes to.
    pub selenium: Selenium,
    /// What must be said.
    pub caution: Caution,
}

/// Returns copper and selenium over everything that one ewe eats in a day.
///
/// # Errors
/// A feed has more copper than a million ppm or more than 90 ppm of selenium, or an amount is outside `FED_IN_A_DAY`.
///
/// ```
/// use yeanling_core::reckon::season::minerals::{Copper, Part, guard};
/// use yeanling_core::units::Mass;
/// let part = |kilograms, copper| Part {
///     dry_matter: Mass::from_kilograms(kilograms),
///     copper_ppm: Some(copper),
///     selenium_ppm: Some(0.1),
/// };
/// let guarded = guard(&[part(1.5, 6.0), part(0.5, 40.0)]).unwrap();
/// assert_eq!((guarded.copper_ppm, guarded.copper), (14.5, Copper::Watch));
/// assert_eq!(guard(&[part(1.99, 5.0), part(0.01, 3885.0)]).unwrap().copper, Copper::TooMuch);
/// ```
pub fn guard(parts: &[Part]) -> Result<Guarded, Refused> {
    let (mut copper_mg, mut selenium_mg, mut kilograms) = (0.0, 0.0, 0.0);
    let (mut copper_known, mut selenium_known) = (true, true);
    for part in parts {
        let dry_matter = FED_IN_A_DAY.check(part.dry_matter.as_kilograms())?;
        kilograms += dry_matter;
        match part.copper_ppm {
            Some(ppm) => copper_mg += dry_matter * COPPER_IN_FEED.check(ppm)?,
            None => copper_known = false,
        }
        match part.selenium_ppm {
            Some(ppm) => selenium_mg += dry_matter * SELENIUM_IN_FEED.check(ppm)?,
            None => selenium_known = false,
        }
    }
    let of_diet = |milligrams: f64| if kilograms > 0.0 { milligrams / kilograms } else { 0.0 };
    let (copper_ppm, selenium_ppm) = (of_diet(copper_mg), of_diet(selenium_mg));
    let copper = if copper_ppm > COPPER_MOST_PPM + SLACK {
        Copper::TooMuch
    } else if !copper_known {
        Copper::Unknown
    } else if copper_ppm >= COPPER_POISONS_PPM - SLACK {
        Copper::Watch
    } else {
        Copper::Safe
    };
    let over = selenium_ppm > SELENIUM_MOST_PPM + SLACK || selenium_mg > SELENIUM_MOST_A_DAY_MG + SLACK;
    let selenium = if over {
        Selenium::TooMuch
    } else if selenium_known {
        Selenium::Within
    } else {
        Selenium::Unknown
    };
    Ok(Guarded { copper_ppm, copper, selenium_ppm, selenium_mg, selenium, caution: Caution::AskVet })
}

/// What sums of floats may be off; no feed is measured so finely.
const SLACK: f64 = 1e-9;
