//! Ketones in a drop of blood, as a meter reads them: millimoles of beta-hydroxybutyrate a liter, the same unit everywhere.

use super::bounds::{BoundFor, Bounds};
use super::parse_number;
use super::quantity::quantity;
use super::typed::{TypedError, split_units};

/// What a ketone meter reads. Kept in mmol/L.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Ketones(f64);

quantity!(Ketones, "mmol/L", 0, 30);

impl Ketones {
    /// What a meter shows: 0 to 8 mmol/L (ours; handheld meters end near 8).
    pub const ON_A_METER: Bounds<Self> = Bounds { least: Self(0.0), most: Self(8.0), why: BoundFor::Ketones };

    /// Returns a reading of so many mmol/L.
    #[must_use]
    pub const fn from_millimoles(millimoles: f64) -> Self {
        Self(millimoles)
    }

    /// Returns the reading in mmol/L.
    #[must_use]
    pub const fn as_millimoles(self) -> f64 {
        self.0
    }

    /// Reads it as people type it: `1.4`, `1,4 mmol/L`.
    ///
    /// ```
    /// use yeanling_core::units::Ketones;
    /// assert_eq!(Ketones::parse("1,4 mmol/L"), Ok(Ketones::from_millimoles(1.4)));
    /// ```
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, or names another unit.
    pub fn parse(text: &str) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let [(number, unit)] = parts.as_slice() else {
            return Err(TypedError::NotANumber { given: text.trim().to_owned() });
        };
        match unit.as_str() {
            "" | "mmol" | "mmol/l" | "mm" => Ok(Self(parse_number(number)?)),
            _ => Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
        }
    }
}
