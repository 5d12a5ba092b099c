//! The two systems of units that people read and type.

use serde::{Deserialize, Serialize};

/// Names a system of units for reading and typing; what is kept is always SI.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum System {
    /// Kilograms, milliliters, degrees Celsius.
    #[default]
    Metric,
    /// Pounds, US fluid ounces, degrees Fahrenheit.
    Us,
}
