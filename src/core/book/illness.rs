//! The facts of illness: what was seen of a ewe or a lamb that is not right, what was measured, and how it goes on.

use serde::{Deserialize, Serialize};

use super::animal::Animal;
use super::ids::{EweId, LambId};
use crate::terms::{Change, EweSign, EweStage, Gate, LambSign, Onset, Spread, UdderHalf};
use crate::units::{Ketones, Temperature};

/// A fact of illness.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Illness {
    /// A ewe was seen that is not right.
    EweSeen {
        /// Which ewe.
        ewe: EweId,
        /// Where she is in her year, if someone said so; else the book says.
        stage: EweStage,
        /// Whether she stands.
        standing: Gate,
        /// Whether she eats.
        eating: Gate,
        /// Whether there is no bleeding and nothing out.
        #[serde(rename = "nothing-out")]
        nothing_out: Gate,
        /// What was seen of her.
        signs: Vec<EweSign>,
        /// Over how long, if that is known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        onset: Option<Onset>,
    },
    /// A lamb was seen that is not right.
    LambSeen {
        /// Which lamb.
        lamb: LambId,
        /// Whether its head is up.
        #[serde(rename = "head-up")]
        head_up: Gate,
        /// Whether it swallows and sucks.
        swallows: Gate,
        /// Whether it is warm.
        warm: Gate,
        /// What was seen of it.
        signs: Vec<LambSign>,
    },
    /// An animal that was not right was looked at again.
    Changed {
        /// Which animal.
        animal: Animal,
        /// How it is now.
        change: Change,
    },
    /// A ewe's temperature was taken.
    EweTemperature {
        /// Which ewe.
        ewe: EweId,
        /// How warm, in degrees Celsius.
        #[serde(rename = "celsius")]
        temperature: Temperature,
    },
    /// A pulse was counted.
    Pulse {
        /// Of which animal.
        animal: Animal,
        /// Beats a minute.
        #[serde(rename = "per-minute")]
        per_minute: u16,
    },
    /// Breaths were counted.
    Breaths {
        /// Of which animal.
        animal: Animal,
        /// Breaths a minute.
        #[serde(rename = "per-minute")]
        per_minute: u16,
    },
    /// A ewe's ketones were read by a meter.
    KetonesRead {
        /// Which ewe.
        ewe: EweId,
        /// How much, in mmol/L.
        #[serde(rename = "millimoles")]
        ketones: Ketones,
    },
    /// A fold of a lamb's skin was lifted, and stood so long.
    SkinTent {
        /// Which lamb.
        lamb: LambId,
        /// In seconds.
        seconds: u8,
    },
    /// Both teats of a ewe were drawn.
    UdderChecked {
        /// Which ewe.
        ewe: EweId,
        /// The left half.
        left: UdderHalf,
        /// The right half.
        right: UdderHalf,
    },
    /// What goes round in the flock was seen to, told of an animal that has it.
    SpreadSeenTo {
        /// An animal that has it.
        animal: Animal,
        /// What goes round.
        spread: Spread,
    },
    /// The vet allows a lamb milk again that had a tight belly or a wet chin.
    MilkAllowed {
        /// Which lamb.
        lamb: LambId,
    },
}

impl Illness {
    /// Returns the animal that the fact is about.
    pub(super) const fn animal(&self) -> Animal {
        match self {
            Self::EweSeen { ewe, .. }
            | Self::EweTemperature { ewe, .. }
            | Self::KetonesRead { ewe, .. }
            | Self::UdderChecked { ewe, .. } => Animal::Ewe(*ewe),
            Self::LambSeen { lamb, .. } | Self::SkinTent { lamb, .. } | Self::MilkAllowed { lamb } => {
                Animal::Lamb(*lamb)
            }
            Self::Changed { animal, .. }
            | Self::Pulse { animal, .. }
            | Self::Breaths { animal, .. }
            | Self::SpreadSeenTo { animal, .. } => *animal,
        }
    }
}
