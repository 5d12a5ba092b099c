//! How warm: degrees Celsius inside.

use super::bounds::{Bounds, Why};
use super::quantity::quantity;
use super::typed::{TypedError, split_units};
use super::{System, parse_number};

/// A temperature. Kept in degrees Celsius.
///
/// ```
/// use yeanling_core::units::Temperature;
/// assert!((Temperature::from_fahrenheit(102.2).as_celsius() - 39.0).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Temperature(f64);

quantity!(Temperature, "degrees C", -60, 120);

impl Temperature {
    /// What a thermometer in a lamb can read: 15 to 45 °C (ours).
    pub const IN_A_LAMB: Bounds<Self> =
        Bounds { least: Self(15.0), most: Self(45.0), why: Why::LambTemperature };

    /// Returns the temperature of so many degrees Celsius.
    #[must_use]
    pub const fn from_celsius(celsius: f64) -> Self {
        Self(celsius)
    }

    /// Returns the temperature of so many degrees Fahrenheit.
    #[must_use]
    pub const fn from_fahrenheit(fahrenheit: f64) -> Self {
        Self((fahrenheit - 32.0) * 5.0 / 9.0)
    }

    /// Returns the temperature in degrees Celsius.
    #[must_use]
    pub const fn as_celsius(self) -> f64 {
        self.0
    }

    /// Returns the temperature in degrees Fahrenheit.
    #[must_use]
    pub const fn as_fahrenheit(self) -> f64 {
        self.0 * 9.0 / 5.0 + 32.0
    }

    /// Reads a temperature as people type it: `39`, `38,5`, `102 F`, `38.5 °C`.
    ///
    /// A bare number is taken in the unit of `system`. The result is rounded to a hundredth of a degree.
    ///
    /// # Errors
    /// What was typed is empty, is no number, or names a unit that is no temperature.
    pub fn parse(text: &str, system: System) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let [(number, unit)] = parts.as_slice() else {
            return Err(TypedError::NotANumber { given: text.trim().to_owned() });
        };
        let number = parse_number(number)?;
        let celsius = match (unit.trim_start_matches('°'), system) {
            ("c", _) | ("", System::Metric) => number,
            ("f", _) | ("", System::Us) => (number - 32.0) * 5.0 / 9.0,
            _ => return Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
        };
        Ok(Self((celsius * 100.0).round() / 100.0))
    }
}
