//! What up to five feeds give a ewe in a day, held against what she needs; what is shortest is named.

use super::bounds::{DRY_MATTER, ENERGY_OF_FEED, FED_IN_A_DAY, FEEDS, Refused, SHARE};
use super::days::counted;
use super::minerals::{Guarded, Part, guard};
use super::requirement::{Energy, Need};
use crate::reckon::cited::{ours, seen};
use crate::source::Source;
use crate::units::Mass;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("National Research Council", "Nutrient Requirements of Sheep, Table 1", Some(1985), ""),
    ours("Short is under 97% of the table’s row; more dry matter than 110% of it is more than she eats"),
    ours("No ration is balanced by a table alone: feeds are analyzed, ewes are scored"),
];

/// Under this share of what is needed a ration is short (ours: what tables and scales are off).
pub const SHORT_UNDER: f64 = 0.97;

/// Over this share of the table's dry matter a ewe leaves feed (ours).
pub const LEAVES_OVER: f64 = 1.10;

/// One feed as it is given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Feed {
    /// For one ewe in a day, as fed.
    pub fed: Mass,
    /// Its share of dry matter, 0.05 to 1.
    pub dry_matter: f64,
    /// Metabolizable energy in a kilogram of dry matter.
    pub energy: Energy,
    /// The share of crude protein in its dry matter.
    pub protein: f64,
    /// The share of calcium in its dry matter.
    pub calcium: f64,
    /// Copper in its dry matter, in milligrams per kilogram; none if not known.
    pub copper_ppm: Option<f64>,
    /// Selenium in its dry matter, in milligrams per kilogram; none if not known.
    pub selenium_ppm: Option<f64>,
}

/// What is held against the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Nutrient {
    /// Dry matter.
    DryMatter,
    /// Metabolizable energy.
    Energy,
    /// Crude protein.
    Protein,
    /// Calcium.
    Calcium,
}

/// One nutrient of a ration: what it gives and what is needed, in kilograms, energy in megacalories.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Held {
    /// Which.
    pub nutrient: Nutrient,
    /// What the ration gives.
    pub given: f64,
    /// What the table asks.
    pub needed: f64,
}

impl Held {
    /// Returns what is given as a share of what is needed.
    #[must_use]
    pub fn share(self) -> f64 {
        self.given / self.needed
    }

    /// Returns whether it is short.
    #[must_use]
    pub fn is_short(self) -> bool {
        self.share() < SHORT_UNDER
    }
}

/// A ration held against the table.
#[derive(Clone, Debug, PartialEq)]
pub struct Checked {
    /// What is needed, and how that is known.
    pub need: Need,
    /// Dry matter, energy, protein and calcium, in this order.
    pub held: [Held; 4],
    /// The nutrient with the smallest share, if any is short.
    pub limiting: Option<Nutrient>,
    /// What all feeds weigh as fed, without waste.
    pub as_fed: Mass,
    /// Whether it is more dry matter than she eats.
    pub leaves: bool,
    /// Copper and selenium.
    pub minerals: Guarded,
}

/// Returns a ration of one to five feeds held against what a ewe needs.
///
/// # Errors
/// There are no feeds or more than five, or a figure of one is outside what a feed can be: see `bounds`.
///
/// ```
/// use yeanling_core::reckon::season::ration::{Feed, Nutrient, check};
/// use yeanling_core::reckon::season::requirement::{Energy, FeedStage, need};
/// use yeanling_core::units::Mass;
/// let straw = Feed {
///     fed: Mass::from_kilograms(1.4),
///     dry_matter: 0.9,
///     energy: Energy::from_megacalories(1.5),
///     protein: 0.04,
///     calcium: 0.003,
///     copper_ppm: None,
///     selenium_ppm: None,
/// };
/// let checked = check(&[straw], need(FeedStage::Maintenance, Mass::from_kilograms(70.0)).unwrap()).unwrap();
/// assert_eq!(checked.limiting, Some(Nutrient::Protein));
/// ```
pub fn check(feeds: &[Feed], need: Need) -> Result<Checked, Refused> {
    FEEDS.check(counted(feeds.len()))?;
    let (mut dry_matter, mut energy, mut protein, mut calcium) = (0.0, 0.0, 0.0, 0.0);
    let mut parts = Vec::new();
    for feed in feeds {
        let dry = FED_IN_A_DAY.check(feed.fed.as_kilograms())? * DRY_MATTER.check(feed.dry_matter)?;
        dry_matter += dry;
        energy += dry * ENERGY_OF_FEED.check(feed.energy.as_megacalories())?;
        protein += dry * SHARE.check(feed.protein)?;
        calcium += dry * SHARE.check(feed.calcium)?;
        parts.push(Part {
            dry_matter: Mass::from_kilograms(dry),
            copper_ppm: feed.copper_ppm,
            selenium_ppm: feed.selenium_ppm,
        });
    }
    let held = |nutrient, given, needed| Held { nutrient, given, needed };
    let row = need.row;
    let held = [
        held(Nutrient::DryMatter, dry_matter, row.dry_matter.as_kilograms()),
        held(Nutrient::Energy, energy, row.energy.as_megacalories()),
        held(Nutrient::Protein, protein, row.protein.as_kilograms()),
        held(Nutrient::Calcium, calcium, row.calcium.as_kilograms()),
    ];
    let least = held.iter().min_by(|one, other| one.share().total_cmp(&other.share()));
    let limiting = least.filter(|held| held.is_short()).map(|held| held.nutrient);
    let leaves = held[0].share() > LEAVES_OVER;
    let as_fed = Mass::from_kilograms(feeds.iter().map(|feed| feed.fed.as_kilograms()).sum());
    Ok(Checked { need, held, as_fed, limiting, leaves, minerals: guard(&parts)? })
}
