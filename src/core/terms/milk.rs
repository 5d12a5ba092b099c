//! The words of a feed by hand: what it was, and how it was given.

use serde::{Deserialize, Serialize};

/// What was in the bottle or the tube.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Milk {
    /// Colostrum of its own dam.
    DamColostrum,
    /// Colostrum of another ewe.
    EweColostrum,
    /// Colostrum of a goat or a cow.
    OtherColostrum,
    /// Colostrum from powder.
    PowderColostrum,
    /// Lamb milk replacer.
    Replacer,
    /// Ewe's, goat's or cow's milk that is no colostrum.
    Milk,
}

/// How it was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Way {
    /// The lamb sucked a bottle.
    Bottle,
    /// By stomach tube.
    Tube,
}
