//! How warm: degrees Celsius inside.

use super::bounds::{BoundFor, Bounds, OutOfBounds};
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
    /// What a thermometer in a living lamb can read: 15 to 44 °C, 59 to 111.2 °F (ours).
    ///
    /// The two scales do not overlap within it, so that a number of the wrong scale is always told apart.
    pub const IN_A_LAMB: Bounds<Self> =
        Bounds { least: Self(15.0), most: Self(44.0), why: BoundFor::LambTemperature };

    /// What a thermometer in a living ewe can read: 30 to 44 °C, 86 to 111.2 °F (ours).
    pub const IN_A_EWE: Bounds<Self> =
        Bounds { least: Self(30.0), most: Self(44.0), why: BoundFor::EweTemperature };

    /// The mean air that ewes lamb in: −30 to 40 °C (ours).
    pub const OF_THE_AIR: Bounds<Self> =
        Bounds { least: Self(-30.0), most: Self(40.0), why: BoundFor::Weather };

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

    /// Returns the reading if a living lamb can have it; `typed_in` is the system in which it was typed.
    ///
    /// # Errors
    /// It lies outside `IN_A_LAMB`; the error says whether the same number makes sense on the other scale.
    ///
    /// ```
    /// use yeanling_core::units::{System, Temperature};
    /// let slip = Temperature::from_celsius(98.6).in_a_lamb(System::Metric).unwrap_err();
    /// assert_eq!(slip.reads_like, Some(System::Us));
    /// ```
    pub fn in_a_lamb(self, typed_in: System) -> Result<Self, NotInALamb> {
        Self::IN_A_LAMB.check(self).map_err(|out| {
            let (number, other) = match typed_in {
                System::Metric => (Self::from_fahrenheit(self.as_celsius()), System::Us),
                System::Us => (Self::from_celsius(self.as_fahrenheit()), System::Metric),
            };
            let fits = Self::IN_A_LAMB.check(number).is_ok();
            NotInALamb { out, typed_in, reads_like: fits.then_some(other) }
        })
    }

    /// Reads a temperature as people type it: `39`, `38,5`, `102 F`, `38.5 °C`.
    ///
    /// A bare number is taken in the unit of `system`. The result is rounded to a hundredth of a degree.
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, or names a unit that is no temperature.
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

/// A reading that no living lamb has, and the scale on which the same number would make sense.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("{out}")]
pub struct NotInALamb {
    /// What was given, and what is allowed.
    pub out: OutOfBounds<Temperature>,
    /// The system in which it was typed.
    pub typed_in: System,
    /// The system in which the same number is a lamb's temperature: "that reads like °F".
    pub reads_like: Option<System>,
}
