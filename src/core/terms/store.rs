//! What lies in the stores: the closed list of things, each with the one unit that it is counted in.
//!
//! The unit goes with the thing and is never written down beside an amount, so that two phones cannot count one thing
//! in two units.

use serde::{Deserialize, Serialize};

/// A thing that a lambing farm keeps in store.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Item {
    /// Hay, in kilograms.
    Hay,
    /// Straw for bedding, in kilograms.
    Straw,
    /// Grain, pellets or another concentrate, in kilograms.
    Grain,
    /// Lamb milk replacer powder, in kilograms.
    MilkPowder,
    /// Colostrum powder, in kilograms.
    ColostrumPowder,
    /// Electrolyte, in pieces: packets.
    Electrolyte,
    /// Iodine for navels, in milliliters.
    Iodine,
    /// Disinfectant, in milliliters.
    Disinfectant,
    /// Lubricant, in milliliters.
    Lubricant,
    /// Gloves, in pieces.
    Gloves,
    /// Lambing ropes, in pieces.
    Ropes,
    /// Harnesses or spoons against prolapse, in pieces.
    Harnesses,
    /// Towels, in pieces.
    Towels,
    /// Feeding bottles, in pieces.
    Bottles,
    /// Teats, in pieces.
    Teats,
    /// Stomach tubes, in pieces.
    Tubes,
    /// Syringes, in pieces.
    Syringes,
    /// Thermometers, in pieces.
    Thermometers,
    /// Marker spray cans or sticks, in pieces.
    Markers,
    /// Crayons for the rams' harnesses, in pieces.
    Crayons,
    /// Ear tags, in pieces.
    Tags,
    /// Rubber rings, in pieces.
    Rings,
}

/// The unit that a thing is counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// By weight, in kilograms.
    Kilograms,
    /// By volume, in milliliters.
    Milliliters,
    /// One by one.
    Pieces,
}

impl Item {
    /// Every thing, in the order of the list.
    pub const ALL: [Self; 22] = [
        Self::Hay,
        Self::Straw,
        Self::Grain,
        Self::MilkPowder,
        Self::ColostrumPowder,
        Self::Electrolyte,
        Self::Iodine,
        Self::Disinfectant,
        Self::Lubricant,
        Self::Gloves,
        Self::Ropes,
        Self::Harnesses,
        Self::Towels,
        Self::Bottles,
        Self::Teats,
        Self::Tubes,
        Self::Syringes,
        Self::Thermometers,
        Self::Markers,
        Self::Crayons,
        Self::Tags,
        Self::Rings,
    ];

    /// Returns the unit that it is counted in.
    #[must_use]
    pub const fn measure(self) -> Measure {
        match self {
            Self::Hay | Self::Straw | Self::Grain | Self::MilkPowder | Self::ColostrumPowder => {
                Measure::Kilograms
            }
            Self::Iodine | Self::Disinfectant | Self::Lubricant => Measure::Milliliters,
            Self::Electrolyte
            | Self::Gloves
            | Self::Ropes
            | Self::Harnesses
            | Self::Towels
            | Self::Bottles
            | Self::Teats
            | Self::Tubes
            | Self::Syringes
            | Self::Thermometers
            | Self::Markers
            | Self::Crayons
            | Self::Tags
            | Self::Rings => Measure::Pieces,
        }
    }
}
