//! What a farm knows from before it had this book: that an animal is a ram, who its parents are, how it was born and
//! reared, and by what other name it is known.
//!
//! A ram comes in as any grown animal does and is then said to be a ram: so one that was taken for a ewe can be put right,
//! and keeps all that was noted of him.

use serde::{Deserialize, Serialize};

use super::animal::Animal;
use super::ids::{EweId, LambId};

/// What is known from before.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Past {
    /// A grown animal that came in is a ram, and was one from the start.
    IsRam {
        /// Which.
        animal: EweId,
    },
    /// Who an animal's sire is, in the place of what was said of it before.
    Sired {
        /// Which animal.
        animal: Animal,
        /// Its sire: a grown animal that is a ram.
        ram: EweId,
    },
    /// Who a grown animal's dam is; a lamb's dam is noted with its birth.
    DamOf {
        /// Which grown animal.
        animal: EweId,
        /// Its dam.
        dam: EweId,
    },
    /// Of how many an animal was born, though not all of them are in the book.
    BornAs {
        /// Which animal.
        animal: Animal,
        /// One of so many, itself included.
        of: u8,
    },
    /// With how many a lamb was reared, though not all of them are in the book.
    RearedAs {
        /// Which lamb.
        lamb: LambId,
        /// As one of so many at a ewe, itself included; nothing when it was reared by hand.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        of: Option<u8>,
    },
    /// A ram lamb is castrated; nobody knows when or how.
    IsWether {
        /// Which lamb.
        lamb: LambId,
    },
    /// An animal is known by another name beside its tag.
    Called {
        /// Which animal.
        animal: Animal,
        /// The name.
        name: String,
    },
}

impl Past {
    /// The most lambs of one birth that anything is noted of (ours).
    pub const MOST_OF: u8 = 6;

    /// Returns the animals that the fact is about, two at most.
    pub(super) const fn animals(&self) -> [Option<Animal>; 2] {
        match self {
            Self::IsRam { animal } => [Some(Animal::Ewe(*animal)), None],
            Self::Sired { animal, ram } => [Some(*animal), Some(Animal::Ewe(*ram))],
            Self::DamOf { animal, dam } => [Some(Animal::Ewe(*animal)), Some(Animal::Ewe(*dam))],
            Self::BornAs { animal, .. } | Self::Called { animal, .. } => [Some(*animal), None],
            Self::RearedAs { lamb, .. } | Self::IsWether { lamb } => [Some(Animal::Lamb(*lamb)), None],
        }
    }
}
