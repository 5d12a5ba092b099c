//! Hay and grain for a season: how much, with what is wasted, and how many bales or bags.
//!
//! Hay as fed = (dry matter − grain × its dry matter) ÷ dry matter of hay ÷ (1 − waste).

use super::bounds::{
    BALE, DAYS_OF_FEEDING, DRY_MATTER, EWE_WEIGHT, EWES, FED_IN_A_DAY, FEED_FOR_ONE_EWE, Refused, SHARE,
    WASTE,
};
use super::chances::rounded_up;
use crate::reckon::cited::{memory, ours, seen};
use crate::source::Source;
use crate::units::Mass;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("A breeder", "10 × 125 lb × 210 d × 4% = 10,500 lb, 263 bales of 40 lb", None, ""),
    memory("Wasted of hay: rack 5 to 15%, ground 25 to 45%"),
    memory("Hay is about 88% dry matter"),
    ours("Bales are rounded up; more than 1,500 kg for one ewe in a season is asked back"),
];

/// The share of dry matter in hay until it is analyzed (memory).
pub const USUAL_DRY_MATTER: f64 = 0.88;

/// How hay is offered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Offered {
    /// In a rack.
    #[default]
    Rack,
    /// On the ground.
    Ground,
}

impl Offered {
    /// Returns the least and the most that is wasted, as shares (memory).
    #[must_use]
    pub const fn waste(self) -> (f64, f64) {
        match self {
            Self::Rack => (0.05, 0.15),
            Self::Ground => (0.25, 0.45),
        }
    }

    /// Returns the middle of what is wasted, as a share.
    #[must_use]
    pub fn usual_waste(self) -> f64 {
        let (least, most) = self.waste();
        f64::midpoint(least, most)
    }
}

/// What one ewe is fed in a day, and what it is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fed {
    /// The dry matter she eats in a day.
    pub dry_matter: Mass,
    /// Of it grain, as fed.
    pub grain: Mass,
    /// The share of dry matter in the grain.
    pub grain_dry_matter: f64,
    /// The share of dry matter in the hay.
    pub hay_dry_matter: f64,
    /// The share of hay that is wasted.
    pub waste: f64,
}

/// Feed for a flock over a season.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Budget {
    /// Ewes.
    pub ewes: u32,
    /// Days.
    pub days: u16,
    /// For one ewe in a day, as fed.
    pub each_day: Mass,
    /// For one ewe over all days.
    pub each: Mass,
    /// For all.
    pub total: Mass,
    /// Bales or bags of that size, rounded up.
    pub bales: u32,
    /// What one weighs.
    pub bale: Mass,
}

/// Returns the hay to offer one ewe in a day, as fed; nothing where grain alone is her dry matter.
///
/// # Errors
/// An amount is outside `FED_IN_A_DAY`, a share of dry matter outside `DRY_MATTER`, or the waste outside `WASTE`.
///
/// ```
/// use yeanling_core::reckon::season::budget::{Fed, hay_each_day};
/// use yeanling_core::units::Mass;
/// let fed = Fed {
///     dry_matter: Mass::from_kilograms(1.8),
///     grain: Mass::from_kilograms(0.5),
///     grain_dry_matter: 0.9,
///     hay_dry_matter: 0.9,
///     waste: 0.1,
/// };
/// assert!((hay_each_day(&fed).unwrap().as_kilograms() - 1.667).abs() < 0.001);
/// ```
pub fn hay_each_day(fed: &Fed) -> Result<Mass, Refused> {
    let dry_matter = FED_IN_A_DAY.check(fed.dry_matter.as_kilograms())?;
    let grain = FED_IN_A_DAY.check(fed.grain.as_kilograms())? * DRY_MATTER.check(fed.grain_dry_matter)?;
    let hay = DRY_MATTER.check(fed.hay_dry_matter)?;
    let waste = WASTE.check(fed.waste)?;
    Ok(Mass::from_kilograms((dry_matter - grain).max(0.0) / hay / (1.0 - waste)))
}

/// What becomes of hay that is offered.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Becomes {
    /// What is eaten, as fed.
    pub eaten: Mass,
    /// The dry matter of that.
    pub dry_matter: Mass,
    /// What is wasted, as fed.
    pub wasted: Mass,
}

/// Returns what becomes of hay that is offered as fed, waste included: the basis of a ration beside it.
///
/// # Errors
/// The amount is outside `FED_IN_A_DAY`, the share of dry matter outside `DRY_MATTER`, or the waste outside `WASTE`.
///
/// ```
/// use yeanling_core::reckon::season::budget::becomes;
/// use yeanling_core::units::Mass;
/// let of = becomes(Mass::from_kilograms(2.0), 0.9, 0.1).unwrap();
/// assert!((of.dry_matter.as_kilograms() - 1.62).abs() < 1e-12);
/// ```
pub fn becomes(offered: Mass, dry_matter: f64, waste: f64) -> Result<Becomes, Refused> {
    let offered = FED_IN_A_DAY.check(offered.as_kilograms())?;
    let wasted = offered * WASTE.check(waste)?;
    let eaten = offered - wasted;
    let dry_matter = Mass::from_kilograms(eaten * DRY_MATTER.check(dry_matter)?);
    Ok(Becomes { eaten: Mass::from_kilograms(eaten), dry_matter, wasted: Mass::from_kilograms(wasted) })
}

/// Returns feed for a flock from what one ewe gets in a day, as fed, and the bales or bags it comes in.
///
/// # Errors
/// Ewes, days, the amount or the bale are outside `EWES`, `DAYS_OF_FEEDING`, `FED_IN_A_DAY`, `BALE`, or one ewe would
/// get more than `FEED_FOR_ONE_EWE`, 1,500 kg.
///
/// ```
/// use yeanling_core::reckon::season::budget::flock;
/// use yeanling_core::units::Mass;
/// let kg = Mass::from_kilograms;
/// assert_eq!(flock(60, 100, kg(2.0), kg(20.0)).unwrap().bales, 600);
/// assert!(flock(1, 300, kg(10.0), kg(20.0)).is_err(), "3 t for one ewe");
/// ```
pub fn flock(ewes: u32, days: u16, each_day: Mass, bale: Mass) -> Result<Budget, Refused> {
    let count = EWES.check(f64::from(ewes))?;
    let long = DAYS_OF_FEEDING.check(f64::from(days))?;
    let each = FEED_FOR_ONE_EWE.check(FED_IN_A_DAY.check(each_day.as_kilograms())? * long)?;
    let one = BALE.check(bale.as_kilograms())?;
    let total = each * count;
    Ok(Budget {
        ewes,
        days,
        each_day,
        each: Mass::from_kilograms(each),
        total: Mass::from_kilograms(total),
        bales: rounded_up(total / one),
        bale,
    })
}

/// Returns a breeder's sum: ewes × weight × days × a share of body weight.
///
/// # Errors
/// A figure is outside what it may be, or one ewe would get more than `FEED_FOR_ONE_EWE`.
///
/// ```
/// use yeanling_core::reckon::season::budget::by_body_weight;
/// use yeanling_core::units::Mass;
/// let hay = by_body_weight(10, Mass::from_pounds(125.0), 210, 0.04, Mass::from_pounds(40.0)).unwrap();
/// assert_eq!(hay.bales, 263);
/// ```
pub fn by_body_weight(ewes: u32, weight: Mass, days: u16, share: f64, bale: Mass) -> Result<Budget, Refused> {
    let each = EWE_WEIGHT.check(weight.as_kilograms())? * SHARE.check(share)?;
    flock(ewes, days, Mass::from_kilograms(each), bale)
}

/// Returns a total that was given as feed for so many ewes, if a ewe can eat so much.
///
/// # Errors
/// The ewes are outside `EWES`, or it is more than `FEED_FOR_ONE_EWE` each, 1,500 kg.
pub fn plausible(total: Mass, ewes: u32) -> Result<Mass, Refused> {
    let ewes = EWES.check(f64::from(ewes))?;
    FEED_FOR_ONE_EWE.check(total.as_kilograms() / ewes).map(|_| total)
}
