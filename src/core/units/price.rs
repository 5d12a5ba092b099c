//! What an animal was sold for, in the farm's own money: nothing is turned from one money into another.

use super::bounds::{BoundFor, Bounds};
use super::quantity::quantity;
use super::typed::{TypedError, parse_number};

/// A price in the farm's own money.
///
/// ```
/// use yeanling_core::units::Price;
/// assert_eq!(Price::parse(" $180 "), Ok(Price::from_money(180.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Price(f64);

quantity!(Price, "money", 0, 1_000_000_000);

impl Price {
    /// What one animal can be sold for (ours; wider than any sheep's).
    pub const OF_AN_ANIMAL: Bounds<Self> =
        Bounds { least: Self(0.0), most: Self(100_000.0), why: BoundFor::Price };

    /// Returns a price of so much money.
    #[must_use]
    pub const fn from_money(money: f64) -> Self {
        Self(money)
    }

    /// Returns how much money it is.
    #[must_use]
    pub const fn as_money(self) -> f64 {
        self.0
    }

    /// Reads a price as people type it, with or without a sign of money before or behind it: `180`, `$182.50`, `90 €`.
    ///
    /// # Errors
    /// Nothing was typed, or it is no number.
    pub fn parse(text: &str) -> Result<Self, TypedError> {
        let signs = |c: char| c.is_whitespace() || "$€£¥".contains(c);
        parse_number(text.trim_matches(signs)).map(Self)
    }
}
