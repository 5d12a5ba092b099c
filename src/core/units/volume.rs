//! How much milk: milliliters inside.

use super::bounds::{BoundFor, Bounds};
use super::quantity::quantity;
use super::typed::{TypedError, split_units};
use super::{System, parse_number};

/// A volume of liquid. Kept in milliliters.
///
/// ```
/// use yeanling_core::units::Volume;
/// assert!((Volume::from_fluid_ounces(2.0).as_milliliters() - 59.147_059).abs() < 1e-6);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Volume(f64);

quantity!(Volume, "ml", 0, 20_000);

/// Milliliters in one US fluid ounce, exact by definition (231 cubic inches to the gallon).
const MILLILITERS_IN_A_FLUID_OUNCE: f64 = 29.573_529_562_5;

impl Volume {
    /// Nothing at all.
    pub const ZERO: Self = Self(0.0);

    /// What can be noted as one feed: 1 to 2,000 ml. Safe volumes are narrower: see `reckon::feeds`.
    pub const ONE_FEED: Bounds<Self> =
        Bounds { least: Self(1.0), most: Self(2000.0), why: BoundFor::OneFeed };

    /// What one bag or bottle of frozen colostrum can hold: 10 to 2,000 ml (ours).
    pub const FROZEN_BAG: Bounds<Self> =
        Bounds { least: Self(10.0), most: Self(2000.0), why: BoundFor::FrozenBag };

    /// Returns the volume of so many milliliters.
    #[must_use]
    pub const fn from_milliliters(milliliters: f64) -> Self {
        Self(milliliters)
    }

    /// Returns the volume of so many US fluid ounces.
    #[must_use]
    pub const fn from_fluid_ounces(ounces: f64) -> Self {
        Self(ounces * MILLILITERS_IN_A_FLUID_OUNCE)
    }

    /// Returns the volume in milliliters.
    #[must_use]
    pub const fn as_milliliters(self) -> f64 {
        self.0
    }

    /// Returns the volume in US fluid ounces.
    #[must_use]
    pub const fn as_fluid_ounces(self) -> f64 {
        self.0 / MILLILITERS_IN_A_FLUID_OUNCE
    }

    /// Returns the volume rounded to the nearest 5 ml, as a syringe or a bottle is read.
    #[must_use]
    pub fn to_nearest_five(self) -> Self {
        Self((self.0 / 5.0).round() * 5.0)
    }

    /// Reads a volume as people type it: `195`, `195 ml`, `0,2 l`, `6.6 fl oz`, `6.6 oz`.
    ///
    /// A bare number is taken in the unit of `system`. The result is rounded to a tenth of a milliliter.
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, or names a unit that is no volume.
    pub fn parse(text: &str, system: System) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let [(number, unit)] = parts.as_slice() else {
            return Err(TypedError::NotANumber { given: text.trim().to_owned() });
        };
        let number = parse_number(number)?;
        let milliliters = match (unit.as_str(), system) {
            ("ml" | "mls" | "cc", _) | ("", System::Metric) => number,
            ("l" | "liter" | "liters" | "litre" | "litres", _) => number * 1000.0,
            ("floz" | "oz" | "ounce" | "ounces", _) | ("", System::Us) => {
                number * MILLILITERS_IN_A_FLUID_OUNCE
            }
            _ => return Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
        };
        Ok(Self((milliliters * 10.0).round() / 10.0))
    }
}

impl std::ops::Add for Volume {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl std::iter::Sum for Volume {
    fn sum<I: Iterator<Item = Self>>(volumes: I) -> Self {
        volumes.fold(Self::ZERO, std::ops::Add::add)
    }
}
