//! Whom frozen colostrum was milked from.

use serde::{Deserialize, Serialize};

use super::ids::EweId;

/// Whom frozen colostrum was milked from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum MilkedFrom {
    /// A ewe of this book.
    Ewe(EweId),
    /// A ewe that is not named, or of another flock.
    SomeEwe,
    /// A goat.
    Goat,
    /// A cow.
    Cow,
}
