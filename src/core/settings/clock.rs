//! How the farm writes the time of day.

use serde::{Deserialize, Serialize};

/// How the time of day is written. What is kept is an instant, whatever this is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Clock {
    /// As each phone's region writes it.
    #[default]
    Phone,
    /// "6:41 am".
    Twelve,
    /// "06:41".
    TwentyFour,
}
