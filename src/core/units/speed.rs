//! How fast the wind blows: meters per second inside.

use super::bounds::{BoundFor, Bounds};
use super::quantity::quantity;
use super::typed::{TypedError, split_units};
use super::{System, parse_number};

/// A speed. Kept in meters per second.
///
/// ```
/// use yeanling_core::units::Speed;
/// assert!((Speed::from_kilometers_per_hour(36.0).as_meters_per_second() - 10.0).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Speed(f64);

quantity!(Speed, "m/s", 0, 100);

/// Meters in one international mile, exact by definition.
const METERS_IN_A_MILE: f64 = 1609.344;

/// Kilometers per hour in one meter per second, exact.
const KILOMETERS_PER_HOUR: f64 = 3.6;

impl Speed {
    /// The wind that ewes lamb in: still air to 40 m/s, 89 mph (ours).
    pub const OF_WIND: Bounds<Self> = Bounds { least: Self(0.0), most: Self(40.0), why: BoundFor::Wind };

    /// Returns the speed of so many meters per second.
    #[must_use]
    pub const fn from_meters_per_second(meters: f64) -> Self {
        Self(meters)
    }

    /// Returns the speed of so many kilometers per hour.
    #[must_use]
    pub const fn from_kilometers_per_hour(kilometers: f64) -> Self {
        Self(kilometers / KILOMETERS_PER_HOUR)
    }

    /// Returns the speed of so many miles per hour.
    #[must_use]
    pub const fn from_miles_per_hour(miles: f64) -> Self {
        Self(miles * METERS_IN_A_MILE / 3600.0)
    }

    /// Returns the speed in meters per second.
    #[must_use]
    pub const fn as_meters_per_second(self) -> f64 {
        self.0
    }

    /// Returns the speed in kilometers per hour.
    #[must_use]
    pub const fn as_kilometers_per_hour(self) -> f64 {
        self.0 * KILOMETERS_PER_HOUR
    }

    /// Returns the speed in miles per hour.
    #[must_use]
    pub const fn as_miles_per_hour(self) -> f64 {
        self.0 * 3600.0 / METERS_IN_A_MILE
    }

    /// Reads a speed as people type it: `4`, `4 m/s`, `15 km/h`, `9 mph`.
    ///
    /// A bare number is in meters per second or, on a farm in US units, in miles per hour. The result is rounded to a
    /// hundredth of a meter per second.
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, or names a unit that is no speed.
    pub fn parse(text: &str, system: System) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let [(number, unit)] = parts.as_slice() else {
            return Err(TypedError::NotANumber { given: text.trim().to_owned() });
        };
        let number = parse_number(number)?;
        let speed = match (unit.as_str(), system) {
            ("m/s" | "ms", _) | ("", System::Metric) => Self(number),
            ("km/h" | "kmh" | "kph", _) => Self::from_kilometers_per_hour(number),
            ("mph" | "mi/h", _) | ("", System::Us) => Self::from_miles_per_hour(number),
            _ => return Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
        };
        Ok(Self((speed.0 * 100.0).round() / 100.0))
    }
}
