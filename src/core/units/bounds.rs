//! What a quantity may be, in one place: the least, the most, and why, so that an error can say all three.

/// Names the reason for a pair of bounds; the words for it are chosen where people read them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// No lamb is born lighter or heavier.
    LambAtBirth,
    /// No lamb still on the bottle is lighter or heavier.
    LambOnTheBottle,
    /// No bottle or tube holds less or more.
    OneFeed,
    /// No living lamb reads lower or higher.
    LambTemperature,
    /// No lamb on milk eats more of solid feed.
    SolidsInADay,
    /// No pen for a ewe is narrower or wider.
    PenSide,
}

/// The least and the most that a quantity may be, both allowed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds<Q> {
    /// The least that is allowed.
    pub least: Q,
    /// The most that is allowed.
    pub most: Q,
    /// The reason for both.
    pub why: Why,
}

/// A quantity outside its bounds: what was given, and what is allowed.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("{given:?} is not between {least:?} and {most:?} ({why:?})", least = .allowed.least, most = .allowed.most, why = .allowed.why)]
pub struct OutOfBounds<Q: std::fmt::Debug> {
    /// What was given.
    pub given: Q,
    /// What is allowed.
    pub allowed: Bounds<Q>,
}

impl<Q: PartialOrd + Copy + std::fmt::Debug> Bounds<Q> {
    /// Returns the quantity if it lies within.
    ///
    /// # Errors
    /// The quantity lies outside, or cannot be compared (not a number).
    pub fn check(self, given: Q) -> Result<Q, OutOfBounds<Q>> {
        if given >= self.least && given <= self.most {
            Ok(given)
        } else {
            Err(OutOfBounds { given, allowed: self })
        }
    }
}
