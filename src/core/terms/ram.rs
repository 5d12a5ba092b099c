//! The words of a ram.

use serde::{Deserialize, Serialize};

/// How old a ram is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum RamAge {
    /// A ram lamb.
    Lamb,
    /// A yearling.
    Yearling,
    /// A grown ram.
    Mature,
}
