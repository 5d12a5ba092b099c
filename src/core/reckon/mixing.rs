//! How powder is mixed: made up **to** a volume, never added to one.
//!
//! A gram of powder takes up a milliliter, so 200 g and 800 ml make one liter; the same 200 g added to a whole liter
//! is only 167 g/L, which starves a lamb slowly. Every mix therefore carries the strength of that mistake.

use super::Strength;
use super::cited::{FEED_MAKER, ours, seen};
use crate::source::Source;
use crate::units::{BoundFor, Bounds, Mass, OutOfBounds, Temperature, Volume};

/// The printed strength: 200 g of powder in each liter of the finished mix. The label's own rate comes first.
pub const MIX: Strength = Strength::from_grams_per_liter(200.0);

/// The water stays under this (feed maker).
pub const WATER_UNDER: Temperature = Temperature::from_celsius(45.0);

/// What lamb replacer holds: 30% fat, at least 24% protein (NDSU). Calf replacer never does.
pub const FAT_PERCENT: u8 = 30;

/// The least protein of lamb replacer (NDSU).
pub const PROTEIN_AT_LEAST_PERCENT: u8 = 24;

/// What can be mixed for one round: 1 ml to 100 liters (ours).
pub const ONE_ROUND: Bounds<Volume> = Bounds {
    least: Volume::from_milliliters(1.0),
    most: Volume::from_milliliters(100_000.0),
    why: BoundFor::OneRound,
};

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    FEED_MAKER,
    seen("NDSU", "Lamb replacer: 30% fat, at least 24% protein", None, ""),
    ours("A gram of powder takes up a milliliter, at any rate"),
    ours("A label's rate is between 100 and 300 g/L"),
];

/// What to weigh out and measure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mix {
    /// The finished mix.
    pub finished: Volume,
    /// How strong it is.
    pub rate: Strength,
    /// The powder to weigh out.
    pub powder: Mass,
    /// The water to shake it up with.
    pub water: Volume,
    /// How weak it would be if the powder were added to the finished volume of water.
    pub if_added: Strength,
}

/// Why there is no mix.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NoMix {
    /// Nothing is to be mixed, or more than a farm can.
    #[error("not a round: {0}")]
    Finished(#[from] OutOfBounds<Volume>),
    /// The rate is none that a label prints.
    #[error("not a rate: {0}")]
    Rate(#[from] OutOfBounds<Strength>),
}

/// Returns the powder and the water that are made up to so much finished mix.
///
/// # Errors
/// The volume is outside `ONE_ROUND`, or the rate outside `Strength::ON_A_LABEL`.
///
/// ```
/// use yeanling_core::reckon::mixing::{MIX, sample_to};
/// use yeanling_core::units::{Mass, Volume};
/// let mix = sample_to(Volume::from_milliliters(1000.0), MIX).unwrap();
/// assert_eq!((mix.powder, mix.water), (Mass::from_kilograms(0.2), Volume::from_milliliters(800.0)));
/// assert_eq!(mix.if_added.as_grams_per_liter().round(), 167.0);
/// ```
pub fn sample_to(finished: Volume, rate: Strength) -> Result<Mix, NoMix> {
    let finished = ONE_ROUND.check(finished)?;
    let rate = Strength::ON_A_LABEL.check(rate)?;
    let milliliters = finished.as_milliliters();
    let grams = milliliters / 1000.0 * rate.as_grams_per_liter();
    let weak = grams / (grams + milliliters) * 1000.0;
    Ok(Mix {
        finished,
        rate,
        powder: Mass::from_kilograms(grams / 1000.0),
        water: Volume::from_milliliters(milliliters - grams),
        if_added: Strength::from_grams_per_liter(weak),
    })
}

/// Returns one mix for a whole round of lambs, each with its own volume.
///
/// # Errors
/// As `sample_to`, for the sum.
///
/// ```
/// use yeanling_core::reckon::mixing::{MIX, round};
/// use yeanling_core::units::{Mass, Volume};
/// let feeds = [150.0, 125.0, 225.0].map(Volume::from_milliliters);
/// assert_eq!(round(&feeds, MIX).unwrap().powder, Mass::from_kilograms(0.1));
/// ```
pub fn round(feeds: &[Volume], rate: Strength) -> Result<Mix, NoMix> {
    sample_to(feeds.iter().copied().sum(), rate)
}

/// Returns the powder, and the water to shake it up with, for so much finished mix at 200 g made up to a liter.
///
/// For what a table asks for; below zero counts as nothing.
///
/// ```
/// use yeanling_core::reckon::mixing::mix;
/// use yeanling_core::units::{Mass, Volume};
/// let (powder, water) = mix(Volume::from_milliliters(1000.0));
/// assert_eq!((powder, water), (Mass::from_kilograms(0.2), Volume::from_milliliters(800.0)));
/// ```
#[must_use]
pub fn mix(finished: Volume) -> (Mass, Volume) {
    let finished = finished.as_milliliters().max(0.0);
    let grams = finished / 1000.0 * MIX.as_grams_per_liter();
    (Mass::from_kilograms(grams / 1000.0), Volume::from_milliliters(finished - grams))
}

/// Returns the strength of powder added to water, which is less than the same powder made up to that volume.
///
/// None if there is neither powder nor water.
///
/// ```
/// use yeanling_core::reckon::mixing::strength_if_added;
/// use yeanling_core::units::{Mass, Volume};
/// let weak = strength_if_added(Mass::from_kilograms(0.2), Volume::from_milliliters(1000.0)).unwrap();
/// assert_eq!(weak.as_grams_per_liter().round(), 167.0);
/// ```
#[must_use]
pub fn strength_if_added(powder: Mass, water: Volume) -> Option<Strength> {
    let grams = powder.as_kilograms() * 1000.0;
    let finished = grams + water.as_milliliters();
    (finished > 0.0).then(|| Strength::from_grams_per_liter(grams / finished * 1000.0))
}
