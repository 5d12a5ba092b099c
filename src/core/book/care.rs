//! The facts of care: what the vet said, glucose, a finger in the mouth, the afterbirth that is still awaited, a lamb
//! that was put right, a ewe that is settled after lambing, a lamb that was found already born.

use serde::{Deserialize, Serialize};

use super::animal::Animal;
use super::ids::{EweId, LambId};
use crate::terms::{Mouth, Suck};
use crate::units::Moment;

/// A fact of care.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Care {
    /// What came of a call to the vet, or of the vet's visit.
    VetSaid {
        /// For which animal.
        animal: Animal,
        /// What came of it.
        said: VetSaid,
    },
    /// A lamb was given glucose.
    GlucoseGiven {
        /// Which lamb.
        lamb: LambId,
        /// By whom.
        by: GlucoseBy,
    },
    /// A finger was put in a lamb's mouth.
    MouthFelt {
        /// Which lamb.
        lamb: LambId,
        /// How warm mouth and tongue felt.
        mouth: Mouth,
        /// How it sucked the finger.
        suck: Suck,
    },
    /// The afterbirth was looked for and has not passed.
    AfterbirthAwaited {
        /// Which ewe.
        ewe: EweId,
        /// What was seen.
        seen: Awaited,
    },
    /// A lamb that lay wrong was put right.
    PutRight {
        /// Its dam.
        ewe: EweId,
    },
    /// A ewe that has lambed stands, eats and drinks, and has feed and water before her.
    Settled {
        /// Which ewe.
        ewe: EweId,
    },
    /// A lamb was found already born: its birth's own instant is the earliest that it can have been.
    FoundBorn {
        /// Which lamb.
        lamb: LambId,
    },
}

/// What came of a call to the vet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum VetSaid {
    /// The vet is on the way.
    Coming,
    /// The vet advised something over the phone.
    Advised {
        /// What, in the shepherd's own words, if it was written down.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        what: Option<String>,
        /// When to look again.
        #[serde(rename = "look-again")]
        look_again: Moment,
    },
    /// Nobody was reached.
    NobodyReached,
    /// The vet saw the animal and left a plan.
    Saw {
        /// What, in the shepherd's own words, if it was written down.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        plan: Option<String>,
        /// When to look again.
        #[serde(rename = "look-again")]
        look_again: Moment,
    },
}

/// Who gave glucose: the vet, or someone whom the vet has trained and supplied.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum GlucoseBy {
    /// The vet.
    Vet,
    /// Someone the vet has trained.
    Trained,
}

/// What was seen of a ewe whose afterbirth has not passed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Awaited {
    /// It hangs from her.
    Hanging,
    /// It was not seen; she is bright and eats.
    NotSeenBright,
}

impl Care {
    /// Returns the animal that the fact is about.
    pub(super) const fn animal(&self) -> Animal {
        match self {
            Self::VetSaid { animal, .. } => *animal,
            Self::GlucoseGiven { lamb, .. } | Self::MouthFelt { lamb, .. } | Self::FoundBorn { lamb } => {
                Animal::Lamb(*lamb)
            }
            Self::AfterbirthAwaited { ewe, .. } | Self::PutRight { ewe } | Self::Settled { ewe } => {
                Animal::Ewe(*ewe)
            }
        }
    }
}
