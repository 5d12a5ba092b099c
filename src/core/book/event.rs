//! The facts that can be noted: one enum, one variant a fact, matched everywhere without a catch-all.
//!
//! A fact once written never gains or loses a field: a later version that knows more writes another fact. What this
//! version cannot read is kept whole as [`Unread`].

use serde::{Deserialize, Serialize};

use super::ids::{EntryId, EweId, LambId};
use crate::practice::Choice;
use crate::units::{Mass, Moment, Volume};

/// An animal that a fact is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Animal {
    /// A ewe.
    Ewe(EweId),
    /// A lamb.
    Lamb(LambId),
}

/// A lamb's sex.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Sex {
    /// A ewe lamb.
    Ewe,
    /// A ram lamb.
    Ram,
}

/// How the birth went, on the six-grade scale of UK recording, each lamb by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ease {
    /// 1: no help.
    Alone,
    /// 2: slight help by hand.
    SlightByHand,
    /// 3: hard pull by hand.
    HardByHand,
    /// 4: the vet helped, without surgery.
    Vet,
    /// 5: the vet helped, with surgery.
    Surgery,
    /// 6: surgery that was planned.
    PlannedSurgery,
}

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

/// Which scale a vigor score is on. Scales run in opposite directions, so the scale is always kept with the score.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum VigorScale {
    /// Four grades at five minutes, 1 the liveliest.
    FourGrade,
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

/// A fact of a kind, or in a form, that this version cannot read: kept whole, handed on, never applied.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread {
    json: String,
}

impl Unread {
    pub(super) const fn from_json(json: String) -> Self {
        Self { json }
    }

    /// Returns the fact as it was written: JSON without white space.
    #[must_use]
    pub fn as_json(&self) -> &str {
        &self.json
    }
}

/// A fact.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Event {
    /// A ewe joined the flock.
    EweCame {
        /// What she is called by; a label, not an identity.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tag: Option<String>,
    },
    /// An animal was given another label.
    Tagged {
        /// Which animal.
        animal: Animal,
        /// What it is called by from now on.
        tag: String,
    },
    /// A lamb was born.
    LambBorn {
        /// Its dam, if known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        dam: Option<EweId>,
        /// A lamb of the same litter, which keeps a litter together while its dam is unknown.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        beside: Option<LambId>,
        /// Its sex, if seen.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        sex: Option<Sex>,
        /// Whether it was born alive.
        alive: bool,
    },
    /// The dam of a lamb became known.
    DamGiven {
        /// Which lamb.
        lamb: LambId,
        /// Its dam.
        dam: EweId,
    },
    /// How a lamb's birth went.
    BirthEase {
        /// Which lamb.
        lamb: LambId,
        /// On the six-grade scale.
        ease: Ease,
    },
    /// A lamb was seen standing.
    Stood {
        /// Which lamb.
        lamb: LambId,
    },
    /// A lamb was seen to suck its dam.
    Sucked {
        /// Which lamb.
        lamb: LambId,
    },
    /// A navel was dipped.
    NavelDipped {
        /// Which lamb.
        lamb: LambId,
    },
    /// A lamb was weighed.
    Weighed {
        /// Which lamb.
        lamb: LambId,
        /// How heavy, in kilograms.
        #[serde(rename = "kg")]
        mass: Mass,
    },
    /// A lamb was fed by hand.
    Fed {
        /// Which lamb.
        lamb: LambId,
        /// How much, in milliliters.
        #[serde(rename = "ml")]
        volume: Volume,
        /// What.
        milk: Milk,
        /// By bottle or tube.
        way: Way,
    },
    /// A lamb's vigor was scored.
    VigorScored {
        /// Which lamb.
        lamb: LambId,
        /// On which scale.
        scale: VigorScale,
        /// The score on that scale.
        score: u8,
    },
    /// A lamb's belly was felt.
    BellyFelt {
        /// Which lamb.
        lamb: LambId,
        /// Full or hollow.
        belly: Belly,
    },
    /// All lambs of a litter are born.
    AllBorn {
        /// Any lamb of the litter.
        lamb: LambId,
    },
    /// An animal died.
    Died {
        /// Which animal.
        animal: Animal,
        /// Of what.
        cause: Cause,
    },
    /// Anything worth remembering about an animal.
    Remarked {
        /// Which animal.
        animal: Animal,
        /// In the shepherd's own words.
        text: String,
    },
    /// The farm made a choice.
    Chose(Choice),
    /// Two records are of one animal.
    SameAnimal {
        /// The record that stays.
        keep: Animal,
        /// The record that is read as the one that stays.
        also: Animal,
    },
    /// An earlier entry should have read so.
    Amended {
        /// Which entry.
        entry: EntryId,
        /// What it should have said.
        event: Box<Self>,
        /// When it should have said it happened.
        at: Moment,
    },
    /// An earlier entry does not count.
    Struck {
        /// Which entry.
        entry: EntryId,
    },
    /// An earlier entry counts after all.
    Restored {
        /// Which entry.
        entry: EntryId,
    },
    /// A fact this version cannot read.
    #[serde(skip)]
    Unread(Unread),
}

impl Event {
    /// Returns the animals that the fact is about; none for the farm's choices, corrections and what cannot be read.
    #[must_use]
    pub fn animals(&self) -> Vec<Animal> {
        match self {
            Self::Tagged { animal, .. } | Self::Died { animal, .. } | Self::Remarked { animal, .. } => {
                vec![*animal]
            }
            Self::LambBorn { dam, .. } => dam.iter().map(|dam| Animal::Ewe(*dam)).collect(),
            Self::DamGiven { lamb, dam } => vec![Animal::Lamb(*lamb), Animal::Ewe(*dam)],
            Self::BirthEase { lamb, .. }
            | Self::Stood { lamb }
            | Self::Sucked { lamb }
            | Self::NavelDipped { lamb }
            | Self::Weighed { lamb, .. }
            | Self::Fed { lamb, .. }
            | Self::VigorScored { lamb, .. }
            | Self::BellyFelt { lamb, .. }
            | Self::AllBorn { lamb } => vec![Animal::Lamb(*lamb)],
            Self::SameAnimal { keep, also } => vec![*keep, *also],
            Self::EweCame { .. }
            | Self::Chose(_)
            | Self::Amended { .. }
            | Self::Struck { .. }
            | Self::Restored { .. }
            | Self::Unread(_) => Vec::new(),
        }
    }

    /// Returns the entry that this fact corrects, if it is a correction.
    #[must_use]
    pub const fn corrects(&self) -> Option<EntryId> {
        match self {
            Self::Amended { entry, .. } | Self::Struck { entry } | Self::Restored { entry } => Some(*entry),
            Self::EweCame { .. }
            | Self::Tagged { .. }
            | Self::LambBorn { .. }
            | Self::DamGiven { .. }
            | Self::BirthEase { .. }
            | Self::Stood { .. }
            | Self::Sucked { .. }
            | Self::NavelDipped { .. }
            | Self::Weighed { .. }
            | Self::Fed { .. }
            | Self::VigorScored { .. }
            | Self::BellyFelt { .. }
            | Self::AllBorn { .. }
            | Self::Died { .. }
            | Self::Remarked { .. }
            | Self::Chose(_)
            | Self::SameAnimal { .. }
            | Self::Unread(_) => None,
        }
    }
}
