//! Water and room at the trough: 3 to 8 liters a ewe and day, 400 to 500 mm of trough.

use super::bounds::{EWES, Refused};
use crate::reckon::cited::seen;
use crate::source::Source;
use crate::units::{Length, Volume};

/// Water for one ewe in a day, from winter to summer (handbook).
pub const EACH_DAY: (Volume, Volume) = (Volume::from_milliliters(3000.0), Volume::from_milliliters(8000.0));

/// Trough for one ewe (EBLEX).
pub const TROUGH: (Length, Length) = (Length::from_meters(0.4), Length::from_meters(0.5));

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen("Handbook", "3 to 8 L a ewe and day, winter to summer", None, ""),
    seen("EBLEX", "400 to 500 mm of trough a ewe", None, ""),
];

/// Water and trough for a group, the least and the most of each.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wanted {
    /// Ewes.
    pub ewes: u32,
    /// Water in a day.
    pub water: (Volume, Volume),
    /// Trough, along one side.
    pub trough: (Length, Length),
}

/// Returns water in a day and trough for so many ewes.
///
/// # Errors
/// The ewes are outside `EWES`, 1 to 3,000.
///
/// ```
/// use yeanling_core::reckon::season::water::wanted;
/// let wanted = wanted(40).unwrap();
/// assert_eq!(wanted.water.1.as_milliliters(), 320_000.0);
/// assert_eq!(wanted.trough.0.as_meters(), 16.0);
/// ```
pub fn wanted(ewes: u32) -> Result<Wanted, Refused> {
    let count = EWES.check(f64::from(ewes))?;
    let water = |each: Volume| Volume::from_milliliters(each.as_milliliters() * count);
    let trough = |each: Length| Length::from_meters(each.as_meters() * count);
    Ok(Wanted {
        ewes,
        water: (water(EACH_DAY.0), water(EACH_DAY.1)),
        trough: (trough(TROUGH.0), trough(TROUGH.1)),
    })
}
