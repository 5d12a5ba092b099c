//! The words of a pen.

use serde::{Deserialize, Serialize};

use crate::units::Length;

/// How large a pen is.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PenSize {
    /// One side, in meters.
    #[serde(rename = "wide-m")]
    pub wide: Length,
    /// The other side, in meters.
    #[serde(rename = "deep-m")]
    pub deep: Length,
}
