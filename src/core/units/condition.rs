//! How fat a ewe feels over the loin: a condition score.

use super::bounds::{BoundFor, Bounds};
use super::parse_number;
use super::quantity::quantity;
use super::typed::{TypedError, split_units};

/// A body condition score. Kept in whole scores; a step of the hand is a half or a quarter.
///
/// ```
/// use yeanling_core::units::Condition;
/// assert!(Condition::from_score(2.75).is_in_quarters());
/// assert!(!Condition::from_score(2.8).is_in_quarters());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Condition(f64);

quantity!(Condition, "scores", 0, 5);

impl Condition {
    /// What a hand can score in a living ewe: 1 to 5 (Russel, Doney and Gunn 1969; 0 is near death).
    pub const OF_A_EWE: Bounds<Self> =
        Bounds { least: Self(1.0), most: Self(5.0), why: BoundFor::ConditionScore };

    /// Returns a score.
    #[must_use]
    pub const fn from_score(score: f64) -> Self {
        Self(score)
    }

    /// Returns the score of so many quarters: 11 quarters are 2.75.
    #[must_use]
    pub fn from_quarters(quarters: u8) -> Self {
        Self(f64::from(quarters) / 4.0)
    }

    /// Returns the score.
    #[must_use]
    pub const fn as_score(self) -> f64 {
        self.0
    }

    /// Says whether the score is of whole quarters, the finest step that a hand tells apart.
    #[must_use]
    pub fn is_in_quarters(self) -> bool {
        (self.0 * 4.0).fract().abs() < f64::EPSILON
    }

    /// Reads a score as people type it: `3`, `2.5`, `2,75`. The scale is the same everywhere.
    ///
    /// ```
    /// use yeanling_core::units::Condition;
    /// assert_eq!(Condition::parse("2,75"), Ok(Condition::from_score(2.75)));
    /// ```
    ///
    /// # Errors
    /// What was typed is empty, is no number, may be thousands, or has a unit.
    pub fn parse(text: &str) -> Result<Self, TypedError> {
        let parts = split_units(text)?;
        let [(number, unit)] = parts.as_slice() else {
            return Err(TypedError::NotANumber { given: text.trim().to_owned() });
        };
        if unit.is_empty() {
            Ok(Self(parse_number(number)?))
        } else {
            Err(TypedError::OtherUnit { given: text.trim().to_owned() })
        }
    }
}
