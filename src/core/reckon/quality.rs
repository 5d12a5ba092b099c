//! How good colostrum is, how much antibody a feed brings, and how long it keeps.

use super::Strength;
use super::cited::{BOND, VET_TIMES, common, ours, seen};
use crate::source::{Known, Source};
use crate::units::{Mass, Temperature, TimeDelta, Volume};

/// Ewe colostrum is good from this Brix reading on, in percent (Page et al. 2022). Cow figures do not carry over.
pub const GOOD_BRIX_PERCENT: f64 = 26.5;

/// Ewe colostrum is good from this much antibody on (Kessler et al. 2021); older targets are 50 and 60 g/L.
pub const GOOD_ANTIBODY: Strength = Strength::from_grams_per_liter(20.0);

/// What a lamb wants in its first 24 h (Alves et al. 2015, memory).
pub const ANTIBODY_WANTED: Mass = Mass::from_kilograms(0.030);

/// Blood antibody at 24 h under which too little got through is suggested, never proved (Bond 2020).
pub const TOO_LITTLE_IN_BLOOD: Strength = Strength::from_grams_per_liter(15.0);

/// Blood antibody under which illness becomes likelier (Gökçe et al. 2025).
pub const ILLNESS_IN_BLOOD: Strength = Strength::from_grams_per_liter(9.98);

/// Blood antibody under which death becomes likelier (Gökçe et al. 2025).
pub const DEATH_IN_BLOOD: Strength = Strength::from_grams_per_liter(1.93);

/// How long frozen colostrum keeps: 6 months (Ozarks Farm), 1 year (common practice), 2 years at −18 °C (SRUC).
pub const FREEZER: [TimeDelta; 3] = [TimeDelta::days(183), TimeDelta::days(365), TimeDelta::days(730)];

/// How long it keeps in a fridge (SRUC).
pub const FRIDGE: TimeDelta = TimeDelta::days(2);

/// The warmest water to thaw it in: 45 °C (merchant, the stricter), 60 °C (SRUC). Never a microwave.
pub const THAW_AT_MOST: [Temperature; 2] = [Temperature::from_celsius(45.0), Temperature::from_celsius(60.0)];

/// The temperature to feed it at.
pub const FEED_AT: Temperature = Temperature::from_celsius(39.0);

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Page et al.", "Brix of ewe colostrum", Some(2022), "UK-Vet Livestock"),
    seen("Kessler et al.", "", Some(2021), "Journal of Dairy Science 104:2438"),
    BOND,
    VET_TIMES,
    Source { authors: "Alves et al.", title: "", year: Some(2015), place: "", known: Known::Memory },
    seen("", "Cow colostrum: Brix 22 %", Some(2012), "Journal of Dairy Science, doi 10.3168/jds.2012-5823"),
    seen("Gökçe et al.", "", Some(2025), ""),
    seen("SRUC", "Order of choice, fridge, freezer, thawing", None, ""),
    seen("WikiVet", "One year in the freezer", None, ""),
    seen("Ozarks Farm", "Six months in the freezer", None, ""),
    common("One year in the freezer"),
    ours("Antibody in a feed is its volume times its strength"),
];

/// Returns the antibody in a feed: volume × strength.
///
/// ```
/// use yeanling_core::reckon::{Strength, quality::antibody};
/// use yeanling_core::units::Volume;
/// let feed = antibody(Volume::from_milliliters(250.0), Strength::from_grams_per_liter(50.0));
/// assert!((feed.as_kilograms() - 0.0125).abs() < 1e-12);
/// ```
#[must_use]
pub const fn antibody(volume: Volume, strength: Strength) -> Mass {
    let grams = volume.as_milliliters() / 1000.0 * strength.as_grams_per_liter();
    Mass::from_kilograms(grams / 1000.0)
}

/// Returns whether ewe colostrum of this Brix reading, in percent, is good: 26.5 and over (Page et al. 2022).
#[must_use]
pub fn is_good(brix_percent: f64) -> bool {
    brix_percent >= GOOD_BRIX_PERCENT
}
