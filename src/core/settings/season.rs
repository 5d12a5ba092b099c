//! Choices about the season: which kind of sheep, by how long it carries, and where the farm lies.

use serde::{Deserialize, Serialize};

/// Where a farm lies, by which its ewes have a season or none.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Latitude {
    /// North of 30° N. Our default: most who read this are.
    #[default]
    North,
    /// South of 30° S.
    South,
    /// Between.
    Tropics,
}

/// A kind of sheep whose gestation was printed, by the source's name for it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BreedType {
    /// Any sheep: 147 d (*Sheep 201*; Montana).
    #[default]
    Any,
    /// Hair sheep, by litter: 149.8, 147.4 and 146.7 d (St Croix and Blackbelly).
    Hair,
    /// Finn: 144 d (Arcott study).
    Finn,
    /// Prolific: 145 d (Arcott study).
    Prolific,
    /// Suffolk: 146 d (Arcott study).
    Suffolk,
    /// Meat breeds: 147 d (Montana).
    Meat,
    /// Fine-wool breeds: 150 to 151 d (Montana).
    FineWool,
}

impl BreedType {
    /// All of them, as they are offered.
    pub const ALL: [Self; 7] =
        [Self::Any, Self::Hair, Self::Finn, Self::Prolific, Self::Suffolk, Self::Meat, Self::FineWool];
}
