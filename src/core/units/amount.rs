//! How much of a thing lies in the store: counted in that thing's own unit, which the thing itself names.

use super::quantity::quantity;

/// An amount of something in the store: kilograms, milliliters or pieces, as the thing it is of is measured.
///
/// ```
/// use yeanling_core::units::Amount;
/// assert!((Amount::from_units(12.0).as_units() - 12.0).abs() < f64::EPSILON);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Amount(f64);

quantity!(Amount, "units", 0, 1_000_000_000);

impl Amount {
    /// Nothing at all.
    pub const NONE: Self = Self(0.0);

    /// Returns an amount of so many of the thing's own unit.
    #[must_use]
    pub const fn from_units(units: f64) -> Self {
        Self(units)
    }

    /// Returns the amount in the thing's own unit.
    #[must_use]
    pub const fn as_units(self) -> f64 {
        self.0
    }

    /// Says whether it is a whole number, as pieces are.
    #[must_use]
    pub fn is_whole(self) -> bool {
        self.0.fract().abs() < f64::EPSILON
    }

    /// Returns what is left when so much is taken away; never less than nothing.
    #[must_use]
    pub fn less(self, taken: Self) -> Self {
        Self((self.0 - taken.0).max(0.0))
    }
}

impl std::ops::Add for Amount {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}
