//! How much rain fell: millimeters inside.

use super::bounds::{BoundFor, Bounds};
use super::quantity::quantity;
use super::typed::{TypedError, split_units};
use super::{System, parse_number};

/// A depth of rain. Kept in millimeters.
///
/// ```
/// use yeanling_core::units::Rain;
/// assert!((Rain::from_inches(0.5).as_millimeters() - 12.7).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Rain(f64);

quantity!(Rain, "mm", 0, 2000);

/// Millimeters in one inch, exact by definition.
const MILLIMETERS_IN_AN_INCH: f64 = 25.4;

impl Rain {
    /// The rain of a day: none to 300 mm, 11.8 in (ours).
    pub const OF_A_DAY: Bounds<Self> =
        Bounds { least: Self(0.0), most: Self(300.0), why: BoundFor::RainInADay };

    /// Returns the rain of so many millimeters.
    #[must_use]
    pub const fn from_millimeters(millimeters: f64) -> Self {
        Self(millimeters)
    }

    /// Returns the rain of so many inches.
    #[must_use]
    pub const fn from_inches(inches: f64) -> Self {
        Self(inches * MILLIMETERS_IN_AN_INCH)
    }

    /// Returns the rain in millimeters.
    #[must_use]
    pub const fn as_millimeters(self) -> f64 {
        self.0
    }

    /// Returns the rain in inches.
    #[must_use]
    pub const fn as_inches(self) -> f64 {
        self.0 / MILLIMETERS_IN_AN_INCH
    }

    /// Reads rain as people type it: `10`, `10 mm`, `1 cm`, `0.4 in`, `0.4"`.
    ///
    /// A bare number is in millimeters or, on a farm in US units, in inches. The result is rounded to a hundredth of a
    /// millimeter.
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, or names a unit that is no depth of rain.
    pub fn parse(text: &str, system: System) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let [(number, unit)] = parts.as_slice() else {
            return Err(TypedError::NotANumber { given: text.trim().to_owned() });
        };
        let number = parse_number(number)?;
        let millimeters = match (unit.as_str(), system) {
            ("mm", _) | ("", System::Metric) => number,
            ("cm", _) => number * 10.0,
            ("in" | "inch" | "inches" | "\"" | "″", _) | ("", System::Us) => {
                number * MILLIMETERS_IN_AN_INCH
            }
            _ => return Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
        };
        Ok(Self((millimeters * 100.0).round() / 100.0))
    }
}
