//! The words of a lamb: its sex, its vigor, its belly, its mouth, where it is ringed, and what it died of.

use serde::{Deserialize, Serialize};

/// A lamb's sex.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Sex {
    /// A ewe lamb.
    Ewe,
    /// A ram lamb.
    Ram,
}

/// Which scale a vigor score is on. Scales run in opposite directions, so the scale is always kept with the score.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum VigorScale {
    /// Four grades at five minutes, 1 the liveliest.
    FourGrade,
    /// Ten points, 10 the liveliest.
    TenPoint,
    /// The ten points without the oximeter's two, 8 the liveliest.
    EightPoint,
}

/// How the flanks in front of the hip feel.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Belly {
    /// Full; they resist the hand.
    Full,
    /// Hollow.
    Hollow,
}

/// How warm a lamb's mouth and tongue felt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mouth {
    /// Cold: taken as under 37 °C.
    Cold,
    /// Cool.
    Cool,
    /// Warm: it proves nothing.
    Warm,
}

/// How a lamb sucked a finger.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Suck {
    /// Strongly.
    Strong,
    /// Weakly.
    Weak,
    /// Not at all.
    None,
}

/// Where a ring was put.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ring {
    /// On the tail.
    Tail,
    /// On the scrotum.
    Castration,
}

impl Ring {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Tail, Self::Castration];
}

/// What an animal died of, as far as can be told in a barn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Cause {
    /// Starved, or not mothered.
    Starved,
    /// Cold.
    Cold,
    /// A hard birth.
    HardBirth,
    /// Infection.
    Infection,
    /// A predator.
    Predator,
    /// Born with a fault.
    Deformity,
    /// An accident, or lain on.
    Accident,
    /// Not known.
    Unknown,
}
