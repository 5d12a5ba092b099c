//! How long: meters inside.

use super::bounds::{BoundFor, Bounds};
use super::quantity::quantity;
use super::typed::{TypedError, UnitPair, split_units};
use super::{System, parse_number};

/// A length. Kept in meters.
///
/// ```
/// use yeanling_core::units::Length;
/// assert!((Length::from_feet(5.0).as_meters() - 1.524).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Length(f64);

quantity!(Length, "m", 0, 1000);

/// Meters in one international foot, exact by definition (1959 agreement).
const METERS_IN_A_FOOT: f64 = 0.3048;

impl Length {
    /// What a side of a pen can be: 0.5 to 20 m (ours).
    pub const PEN_SIDE: Bounds<Self> = Bounds { least: Self(0.5), most: Self(20.0), why: BoundFor::PenSide };

    /// Returns the length of so many meters.
    #[must_use]
    pub const fn from_meters(meters: f64) -> Self {
        Self(meters)
    }

    /// Returns the length of so many international feet.
    #[must_use]
    pub const fn from_feet(feet: f64) -> Self {
        Self(feet * METERS_IN_A_FOOT)
    }

    /// Returns the length in meters.
    #[must_use]
    pub const fn as_meters(self) -> f64 {
        self.0
    }

    /// Returns the length in international feet.
    #[must_use]
    pub const fn as_feet(self) -> f64 {
        self.0 / METERS_IN_A_FOOT
    }

    /// Reads a length as people type it: `1.5`, `1,5 m`, `150 cm`, `5 ft`, `5'`, `5 ft 6 in`.
    ///
    /// A bare number is taken in meters or in feet, by `system`. The result is rounded to a millimeter.
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, names a unit that is no length, or is of feet that are
    /// not whole or inches that make a foot.
    pub fn parse(text: &str, system: System) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let meters = match parts.as_slice() {
            [(number, unit)] => one_part(text, parse_number(number)?, unit, system)?,
            [(feet, ft), (inches, inch)] if is_feet(ft) && (inch.is_empty() || is_inches(inch)) => {
                UnitPair::FeetInches.together(text, feet, inches)? * METERS_IN_A_FOOT
            }
            _ => return Err(TypedError::NotANumber { given: text.trim().to_owned() }),
        };
        Ok(Self((meters * 1000.0).round() / 1000.0))
    }
}

fn one_part(text: &str, number: f64, unit: &str, system: System) -> Result<f64, TypedError> {
    match (unit, system) {
        ("m" | "meter" | "meters" | "metre" | "metres", _) | ("", System::Metric) => Ok(number),
        ("cm", _) => Ok(number / 100.0),
        ("", System::Us) => Ok(number * METERS_IN_A_FOOT),
        (ft, _) if is_feet(ft) => Ok(number * METERS_IN_A_FOOT),
        (inch, _) if is_inches(inch) => Ok(number / 12.0 * METERS_IN_A_FOOT),
        _ => Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
    }
}

fn is_feet(unit: &str) -> bool {
    matches!(unit, "ft" | "foot" | "feet" | "'" | "’")
}

fn is_inches(unit: &str) -> bool {
    matches!(unit, "in" | "inch" | "inches" | "\"" | "”")
}
