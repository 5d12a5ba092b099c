//! So much milk for each kilogram of lamb: the form in which most guidance is printed.

use crate::units::{Mass, Volume};

/// A volume for each kilogram of body weight. Kept in milliliters per kilogram.
///
/// ```
/// use yeanling_core::reckon::PerKilogram;
/// use yeanling_core::units::{Mass, Volume};
/// let feed = PerKilogram::from_milliliters(50.0).of(Mass::from_kilograms(5.0));
/// assert_eq!(feed, Volume::from_milliliters(250.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct PerKilogram(f64);

impl PerKilogram {
    /// Returns so many milliliters per kilogram.
    #[must_use]
    pub const fn from_milliliters(milliliters: f64) -> Self {
        Self(milliliters)
    }

    /// Returns milliliters per kilogram.
    #[must_use]
    pub const fn as_milliliters(self) -> f64 {
        self.0
    }

    /// Returns the volume for a lamb of this weight.
    #[must_use]
    pub const fn of(self, weight: Mass) -> Volume {
        Volume::from_milliliters(self.0 * weight.as_kilograms())
    }
}
