//! Whom a fact is about: a ewe or a lamb.

use serde::{Deserialize, Serialize};

use super::ids::{EweId, LambId};

/// An animal that a fact is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Animal {
    /// A ewe.
    Ewe(EweId),
    /// A lamb.
    Lamb(LambId),
}
