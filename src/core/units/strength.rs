//! How much of a thing is in a liquid: antibody in colostrum, powder in a mix. Grams per liter inside.

use super::bounds::{BoundFor, Bounds};
use super::parse_number;
use super::quantity::quantity;
use super::typed::{TypedError, split_units};

/// A concentration. Kept in grams per liter.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Strength(f64);

quantity!(Strength, "g/L", 0, 1000);

impl Strength {
    /// What a label of lamb milk replacer asks for: 100 to 300 g in each liter of the finished mix (ours).
    pub const ON_A_LABEL: Bounds<Self> =
        Bounds { least: Self(100.0), most: Self(300.0), why: BoundFor::LabelRate };

    /// What colostrum holds of antibody: 0 to 200 g/L (ours).
    pub const IN_COLOSTRUM: Bounds<Self> =
        Bounds { least: Self(0.0), most: Self(200.0), why: BoundFor::AntibodyInColostrum };

    /// What serum holds of antibody: 0 to 100 g/L (ours).
    pub const IN_SERUM: Bounds<Self> =
        Bounds { least: Self(0.0), most: Self(100.0), why: BoundFor::AntibodyInSerum };

    /// Returns the concentration of so many grams per liter.
    #[must_use]
    pub const fn from_grams_per_liter(grams: f64) -> Self {
        Self(grams)
    }

    /// Returns grams per liter.
    #[must_use]
    pub const fn as_grams_per_liter(self) -> f64 {
        self.0
    }

    /// Reads a concentration as people type it: `200`, `200 g/l`, `50 g per liter`; the unit is the same everywhere.
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, or names a unit that is no concentration.
    pub fn parse(text: &str) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let [(number, unit)] = parts.as_slice() else {
            return Err(TypedError::NotANumber { given: text.trim().to_owned() });
        };
        match unit.as_str() {
            "" | "g/l" | "g/liter" | "g/litre" | "gperl" | "gperliter" | "gperlitre" | "mg/ml" => {
                Ok(Self(parse_number(number)?))
            }
            "g/dl" => Ok(Self(parse_number(number)? * 10.0)),
            _ => Err(TypedError::OtherUnit { given: text.trim().to_owned() }),
        }
    }
}
