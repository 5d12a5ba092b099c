//! How much of a thing is in a liquid: antibody in colostrum, powder in a mix.

/// A concentration. Kept in grams per liter.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Strength(f64);

impl Strength {
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
}
