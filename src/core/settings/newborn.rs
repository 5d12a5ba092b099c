//! Choices about the newborn: where it lives, what it is measured against, how it is scored, when it is cold.

use serde::{Deserialize, Serialize};

/// Where the newborn lives for its first day.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Housing {
    /// Under a roof, out of the wind.
    #[default]
    Housed,
    /// In the field.
    Outdoors,
}

/// Which breed's mean birth weights stand in until the flock has its own.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BreedMeans {
    /// None. Our default: the recalled means are of low confidence, and the optimum by litter size does without.
    #[default]
    NoBreed,
    /// Katahdin (memory).
    Katahdin,
    /// St Croix (memory; singles only).
    StCroix,
    /// Dorper (memory; singles only).
    Dorper,
}

/// On which scale the farm scores vigor.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum VigorInUse {
    /// Four grades at five minutes, 1 the liveliest. Our default: it needs no instrument.
    #[default]
    FourGrade,
    /// Ten points, 10 the liveliest; eight without an ear oximeter.
    TenPoint,
}

/// Over which chill index lambs are called at risk.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ChillLimit {
    /// 1000 kJ/m²/h (Agriculture Victoria). Our default: the stricter.
    #[default]
    Victoria1000,
    /// 1100 kJ/m²/h (Murdoch).
    Murdoch1100,
}
