//! What to have in the house before the first lamb: `⌈ewes × rate × 1.25⌉ × units + one spare`.
//!
//! No quantities per ewe are published: the rates of trouble are, what one case takes is ours.

use super::bounds::{Allowed, COLOSTRUM_EACH, EWES, Figure, Refused, SHARE, UNITS_PER_USE};
use super::chances::rounded_up;
use crate::reckon::cited::{ours, seen};
use crate::reckon::powder;
use crate::settings::PowderRule;
use crate::source::Source;
use crate::terms::{Item, Measure};
use crate::units::{Mass, Volume};

/// A quarter more than is expected (ours).
pub const MARGIN: f64 = 1.25;

/// Ewes helped at birth, as a share (Cornell).
pub const HELPED: f64 = 0.05;

/// Ewes with a prolapse, as a share: the more of 1 to 1.25% (NADIS says about 1%).
pub const PROLAPSED: f64 = 0.0125;

/// Lambs that need colostrum from the freezer, and lambs that go on the bottle, as a share until the flock knows its
/// own (ours).
pub const ON_THE_BOTTLE: f64 = 0.05;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Cornell", "Help at birth: 5%", None, ""),
    seen("NADIS", "Prolapse: about 1%", None, ""),
    ours("Need = ⌈ewes × rate × 1.25⌉ × units + one spare; what one case takes"),
    ours("One lamb in twenty needs frozen colostrum or a bottle, until the flock knows its own share"),
];

/// What the rate of a thing is counted on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Per {
    /// Ewes that lamb, at this share.
    Ewe(f64),
    /// Lambs born, at this share.
    Lamb(f64),
    /// The house: as many whatever the flock.
    House,
}

/// A thing, what it is counted on, and how many one case takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rate {
    /// The thing.
    pub item: Item,
    /// What it is counted on.
    pub per: Per,
    /// How many one case takes, and how many the house has: pairs of gloves and of tags, dips of iodine, portions of
    /// lubricant, bottles of disinfectant.
    pub units: f64,
}

const fn rate(item: Item, per: Per, units: f64) -> Rate {
    Rate { item, per, units }
}

/// Where a farm starts; what one case takes is ours, each line is the farm's to change.
pub const KIT: &[Rate] = &[
    rate(Item::Gloves, Per::Ewe(HELPED), 4.0),
    rate(Item::Lubricant, Per::Ewe(HELPED), 1.0),
    rate(Item::Ropes, Per::House, 2.0),
    rate(Item::Harnesses, Per::Ewe(PROLAPSED), 1.0),
    rate(Item::Iodine, Per::Lamb(1.0), 2.0),
    rate(Item::Tags, Per::Lamb(1.0), 1.0),
    rate(Item::Thermometers, Per::House, 1.0),
    rate(Item::Bottles, Per::Lamb(ON_THE_BOTTLE), 1.0),
    rate(Item::Teats, Per::Lamb(ON_THE_BOTTLE), 2.0),
    rate(Item::Tubes, Per::House, 1.0),
    rate(Item::Syringes, Per::House, 2.0),
    rate(Item::Electrolyte, Per::Lamb(ON_THE_BOTTLE), 2.0),
    rate(Item::Markers, Per::House, 1.0),
    rate(Item::Disinfectant, Per::House, 1.0),
    rate(Item::Towels, Per::Ewe(HELPED), 2.0),
];

/// How many of a thing to have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Need {
    /// The thing, what it is counted on, how many one case takes.
    pub rate: Rate,
    /// Cases to expect, with the margin, rounded up; 1 for the house.
    pub cases: u32,
    /// How many to have, the spare among them.
    pub have: u32,
}

impl Need {
    /// Returns how many pieces that is; none of what the stores count by weight or volume.
    #[must_use]
    pub const fn pieces(&self) -> Option<u32> {
        match self.rate.item.measure() {
            Measure::Pieces if matches!(self.rate.item, Item::Gloves | Item::Tags) => {
                Some(self.have.saturating_mul(2))
            }
            Measure::Pieces => Some(self.have),
            Measure::Kilograms | Measure::Milliliters => None,
        }
    }
}

/// Returns how many of a thing to have: `⌈count × rate × 1.25⌉ × units + 1`.
///
/// `ewes` are those expected to lamb, `lambs` those expected to be born.
///
/// # Errors
/// The ewes are outside `EWES`, or the lambs more than four times as many; a rate is outside 0 to 1, or the units
/// outside `UNITS_PER_USE`.
///
/// ```
/// use yeanling_core::reckon::season::shopping::{HELPED, Per, Rate, need};
/// use yeanling_core::terms::Item;
/// let gloves = Rate { item: Item::Gloves, per: Per::Ewe(HELPED), units: 4.0 };
/// assert_eq!(need(gloves, 60, 100.0).unwrap().have, 4 * 4 + 1);
/// ```
pub fn need(rate: Rate, ewes: u32, lambs: f64) -> Result<Need, Refused> {
    let ewes = EWES.check(f64::from(ewes))?;
    let lambs = lambs_of(lambs, ewes)?;
    let cases = match rate.per {
        Per::Ewe(share) => rounded_up(ewes * SHARE.check(share)? * MARGIN),
        Per::Lamb(share) => rounded_up(lambs * SHARE.check(share)? * MARGIN),
        Per::House => 1,
    };
    let units = UNITS_PER_USE.check(rate.units)?;
    Ok(Need { rate, cases, have: rounded_up(f64::from(cases) * units).saturating_add(1) })
}

fn lambs_of(lambs: f64, ewes: f64) -> Result<f64, Refused> {
    Allowed { figure: Figure::Lambs, most: ewes * 4.0, least: 0.0 }.check(lambs)
}

/// Returns the whole kit for a flock, in the order of `KIT`.
///
/// # Errors
/// The ewes are outside `EWES`, or the lambs more than four times as many.
pub fn kit(ewes: u32, lambs: f64) -> Result<Vec<Need>, Refused> {
    KIT.iter().map(|rate| need(*rate, ewes, lambs)).collect()
}

/// Colostrum to freeze.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Freeze {
    /// Lambs it is for, with the margin.
    pub lambs: u32,
    /// For one lamb.
    pub each: Volume,
    /// Together, with one lamb's share to spare.
    pub total: Volume,
}

/// Returns the colostrum to have frozen: for a share of the lambs and a quarter more, and for one to spare.
///
/// `each` is what one lamb takes in its first day: `reckon::colostrum::target`.
///
/// # Errors
/// The lambs are outside what 3,000 ewes bear, the share outside 0 to 1, or `each` outside `COLOSTRUM_EACH`.
///
/// ```
/// use yeanling_core::reckon::season::shopping::freeze;
/// use yeanling_core::units::Volume;
/// let freeze = freeze(100.0, 0.05, Volume::from_milliliters(800.0)).unwrap();
/// assert_eq!((freeze.lambs, freeze.total.as_milliliters()), (7, 6400.0));
/// ```
pub fn freeze(lambs: f64, share: f64, each: Volume) -> Result<Freeze, Refused> {
    let lambs = rounded_up(lambs_of(lambs, EWES.most)? * SHARE.check(share)? * MARGIN);
    let one = COLOSTRUM_EACH.check(each.as_milliliters())?;
    let total = Volume::from_milliliters(one * (f64::from(lambs) + 1.0));
    Ok(Freeze { lambs, each, total })
}

/// Powder to buy.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Powder {
    /// Lambs it is for, with the margin.
    pub lambs: u32,
    /// The rule.
    pub rule: PowderRule,
    /// The least and the most.
    pub total: (Mass, Mass),
}

/// Returns the powder to buy for a share of the lambs and a quarter more, until weaning.
///
/// # Errors
/// The lambs are outside what 3,000 ewes bear, or the share outside 0 to 1.
///
/// ```
/// use yeanling_core::settings::PowderRule;
/// use yeanling_core::reckon::season::shopping::powder;
/// let powder = powder(100.0, 0.05, PowderRule::NewZealand).unwrap();
/// assert_eq!((powder.lambs, powder.total.0.as_kilograms()), (7, 49.0));
/// ```
pub fn powder(lambs: f64, share: f64, rule: PowderRule) -> Result<Powder, Refused> {
    let lambs = rounded_up(lambs_of(lambs, EWES.most)? * SHARE.check(share)? * MARGIN);
    let (least, most) = powder::for_one_lamb(rule);
    let all = |one: Mass| Mass::from_kilograms(one.as_kilograms() * f64::from(lambs));
    Ok(Powder { lambs, rule, total: (all(least), all(most)) })
}
