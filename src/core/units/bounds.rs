//! What a quantity may be, in one place: the least, the most, and why, so that an error can say all three.

/// Names the reason for a pair of bounds; the words for it are chosen where people read them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BoundFor {
    /// No lamb is born lighter or heavier.
    LambAtBirth,
    /// No lamb of its age is lighter or heavier.
    LambOfItsAge,
    /// No lamb still on the bottle is lighter or heavier.
    LambOnTheBottle,
    /// No bottle or tube holds less or more.
    OneFeed,
    /// No living lamb reads lower or higher.
    LambTemperature,
    /// No pen for a ewe is narrower or wider.
    PenSide,
    /// No weather that ewes lamb in is colder or warmer.
    Weather,
    /// No wind that anyone stands in is stronger, and none is weaker than still air.
    Wind,
    /// No day rains less or more.
    RainInADay,
    /// No colostrum reads lower or higher.
    BrixOfColostrum,
    /// No living ewe reads lower or higher.
    EweTemperature,
    /// A ketone meter shows no less and no more.
    Ketones,
    /// No colostrum holds less or more antibody.
    AntibodyInColostrum,
    /// No lamb's serum holds less or more antibody.
    AntibodyInSerum,
    /// No label of lamb milk replacer asks for less or more powder.
    LabelRate,
    /// No one round of feeding takes less or more.
    OneRound,
    /// No lamb at weaning is lighter or heavier.
    LambAtWeaning,
    /// A bucket holds no less and no more than a lamb eats in a day.
    SolidsInADay,
    /// No farm has fewer or more lambs on the bottle.
    LambsOnTheBottle,
    /// No store holds less or more powder.
    PowderInStore,
    /// No grown ewe is lighter or heavier.
    EweWeight,
    /// No ewe is given more of an extra feed in a day.
    ExtraFeed,
    /// The scale of condition runs so far in a living ewe.
    ConditionScore,
    /// No bag of frozen colostrum holds less or more.
    FrozenBag,
    /// No store holds less or more of it.
    InStore,
    /// No newborn's heart beats slower or faster.
    Pulse,
    /// No sheep is sold for more.
    Price,
    /// A share runs from nothing to the whole.
    Percent,
}

/// The least and the most that a quantity may be, both allowed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds<Q> {
    /// The least that is allowed.
    pub least: Q,
    /// The most that is allowed.
    pub most: Q,
    /// The reason for both.
    pub why: BoundFor,
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
