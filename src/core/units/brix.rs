//! What a refractometer reads: percent Brix.

use super::bounds::{BoundFor, Bounds};
use super::parse_number;
use super::quantity::quantity;
use super::typed::{TypedError, split_units};

/// A Brix reading. Kept in percent.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Brix(f64);

quantity!(Brix, "% Brix", 0, 100);

impl Brix {
    /// What colostrum can read: 0 to 40 % (ours; a refractometer for colostrum ends near 32 or 40).
    pub const OF_COLOSTRUM: Bounds<Self> =
        Bounds { least: Self(0.0), most: Self(40.0), why: BoundFor::BrixOfColostrum };

    /// Returns a reading of so many percent.
    #[must_use]
    pub const fn from_percent(percent: f64) -> Self {
        Self(percent)
    }

    /// Returns the reading in percent.
    #[must_use]
    pub const fn as_percent(self) -> f64 {
        self.0
    }

    /// Reads a Brix reading as people type it: `26.5`, `26,5 %`, `26.5 Brix`. The unit is the same everywhere.
    ///
    /// ```
    /// use yeanling_core::units::Brix;
    /// assert_eq!(Brix::parse("26,5 %"), Ok(Brix::from_percent(26.5)));
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
            "" | "%" | "brix" | "%brix" | "°bx" | "bx" | "°brix" => Ok(Self(parse_number(number)?)),
            _ => Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
        }
    }
}
