//! How good colostrum is, how much antibody a feed brings, and how long it keeps.

use super::Strength;
use super::cited::{BOND, MERCHANT, VET_TIMES, common, ours, seen};
use crate::settings::FreezerLife;
use crate::source::{HowKnown, Source};
use crate::units::{Brix, Mass, OutOfBounds, Temperature, TimeDelta, Volume};

/// Ewe colostrum is good from this Brix reading on (Page et al. 2022).
pub const GOOD_BRIX: Brix = Brix::from_percent(26.5);

/// The cow's mark, about 50 g/L; it does **not** carry over to ewes (J. Dairy Sci. 2012).
pub const GOOD_BRIX_OF_A_COW: Brix = Brix::from_percent(22.0);

/// Ewe colostrum is good from this much antibody on (Kessler et al. 2021); older targets are 50 and 60 g/L.
pub const GOOD_ANTIBODY: Strength = Strength::from_grams_per_liter(20.0);

/// What a lamb wants in its first 24 h (Alves et al. 2015, memory).
pub const ANTIBODY_WANTED: Mass = Mass::from_kilograms(0.030);

/// Older targets for antibody in ewe colostrum (Bond 2020; Vet Times 2018).
pub const OLDER_TARGETS: [Strength; 2] =
    [Strength::from_grams_per_liter(50.0), Strength::from_grams_per_liter(60.0)];

/// The freezer for which two years are printed (SRUC).
pub const FREEZER_AT: Temperature = Temperature::from_celsius(-18.0);

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
    Source { authors: "Alves et al.", title: "", year: Some(2015), place: "", known: HowKnown::Memory },
    seen("", "Cow colostrum: Brix 22%", Some(2012), "Journal of Dairy Science, doi 10.3168/jds.2012-5823"),
    seen("SRUC", "Order of choice, fridge, freezer, thawing", None, ""),
    seen("WikiVet", "One year in the freezer", None, ""),
    seen("Ozarks Farm", "Six months in the freezer", None, ""),
    common("One year in the freezer"),
    MERCHANT,
    ours("Antibody in a feed is its volume times its strength"),
    ours("A month of freezer life is counted short: six are 181 days"),
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

/// Returns how much of what a lamb wants in its first day this antibody is, in percent of 30 g.
///
/// ```
/// use yeanling_core::reckon::quality::percent_of_wanted;
/// use yeanling_core::units::Mass;
/// assert!((percent_of_wanted(Mass::from_kilograms(0.0125)) - 41.7).abs() < 0.05);
/// ```
#[must_use]
pub const fn percent_of_wanted(antibody: Mass) -> f64 {
    antibody.as_kilograms() / ANTIBODY_WANTED.as_kilograms() * 100.0
}

/// How good ewe colostrum is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Under 26.5%.
    Poor,
    /// 26.5% and over.
    Good,
}

/// A Brix reading of ewe colostrum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// What the refractometer read.
    pub brix: Brix,
    /// How good it is for a ewe's.
    pub grade: Grade,
    /// Whether a cow's would pass and a ewe's does not: 22 to under 26.5%. The cow's mark does not carry over.
    pub only_by_the_cows_mark: bool,
}

/// Returns what a Brix reading of ewe colostrum means (Page et al. 2022).
///
/// # Errors
/// The reading is outside `Brix::OF_COLOSTRUM`, 0 to 40%.
///
/// ```
/// use yeanling_core::reckon::quality::{Grade, reading};
/// use yeanling_core::units::Brix;
/// assert_eq!(reading(Brix::from_percent(26.5)).unwrap().grade, Grade::Good);
/// assert!(reading(Brix::from_percent(265.0)).is_err());
/// ```
pub fn reading(brix: Brix) -> Result<Reading, OutOfBounds<Brix>> {
    let brix = Brix::OF_COLOSTRUM.check(brix)?;
    let grade = if brix >= GOOD_BRIX { Grade::Good } else { Grade::Poor };
    Ok(Reading { brix, grade, only_by_the_cows_mark: grade == Grade::Poor && brix >= GOOD_BRIX_OF_A_COW })
}

/// Where a bag of colostrum lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Store {
    /// In a freezer.
    Freezer,
    /// In a fridge.
    Fridge,
}

/// Whether a bag still serves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Keeps {
    /// It does, for so long still.
    Still(TimeDelta),
    /// It has not for so long.
    Past(TimeDelta),
}

/// Returns how long frozen colostrum keeps: 6 months (Ozarks Farm), 1 year (common practice; WikiVet), 2 years (SRUC).
#[must_use]
pub const fn freezer_life(life: FreezerLife) -> TimeDelta {
    match life {
        FreezerLife::SixMonths => TimeDelta::days(181),
        FreezerLife::OneYear => TimeDelta::days(365),
        FreezerLife::TwoYears => TimeDelta::days(730),
    }
}

/// Returns whether a bag of this age still serves; it does on its last day.
///
/// An age below zero comes from clocks that disagree and is read as just filled.
///
/// ```
/// use yeanling_core::settings::FreezerLife;
/// use yeanling_core::reckon::quality::{Keeps, Store, bag};
/// use yeanling_core::units::TimeDelta;
/// let age = TimeDelta::days(300);
/// assert_eq!(bag(age, Store::Freezer, FreezerLife::OneYear), Keeps::Still(TimeDelta::days(65)));
/// assert_eq!(bag(age, Store::Fridge, FreezerLife::OneYear), Keeps::Past(TimeDelta::days(298)));
/// ```
#[must_use]
pub fn bag(age: TimeDelta, store: Store, life: FreezerLife) -> Keeps {
    let keeps = match store {
        Store::Freezer => freezer_life(life),
        Store::Fridge => FRIDGE,
    };
    let left = keeps - age.max(TimeDelta::zero());
    if left >= TimeDelta::zero() { Keeps::Still(left) } else { Keeps::Past(-left) }
}

/// Whether water is right for thawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Thaw {
    /// Up to 45 °C: right by both sources.
    Right,
    /// Over 45 and under 60 °C: right by SRUC, too hot by the merchant.
    Split,
    /// 60 °C and over: too hot by both.
    TooHot,
}

/// Returns whether water of this temperature is right for thawing; what is no number is too hot.
#[must_use]
pub fn thaw(water: Temperature) -> Thaw {
    let [right, split] = THAW_AT_MOST;
    if water <= right {
        Thaw::Right
    } else if water < split {
        Thaw::Split
    } else {
        Thaw::TooHot
    }
}

/// Where colostrum comes from when the ewe has none, the best first (SRUC).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Origin {
    /// Its own dam.
    OwnDam,
    /// Another ewe of the same flock.
    SameFlock,
    /// A ewe of another flock.
    OtherFlock,
    /// A goat or a cow.
    GoatOrCow,
    /// Powder.
    Powder,
}

impl Origin {
    /// All of them, the best first.
    pub const ALL: [Self; 5] =
        [Self::OwnDam, Self::SameFlock, Self::OtherFlock, Self::GoatOrCow, Self::Powder];
}
