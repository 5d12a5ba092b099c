//! Why an animal was culled, as a shepherd says it.

use serde::{Deserialize, Serialize};

/// Why an animal was culled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CullReason {
    /// Her udder or teats.
    Udder,
    /// Teeth, or age.
    Age,
    /// She was empty, or missed a season.
    Empty,
    /// A prolapse.
    Prolapse,
    /// Trouble at lambing.
    Lambing,
    /// She does not mother her lambs.
    Mothering,
    /// Her lambs do not grow, or do not live.
    PoorLambs,
    /// Lame, or bad feet.
    Feet,
    /// Thin for good.
    Condition,
    /// Sick too often, or worms.
    Health,
    /// Wild, or dangerous to people.
    Temper,
    /// Anything else.
    Other,
}

impl CullReason {
    /// All of them, in the order of the list.
    pub const ALL: [Self; 12] = [
        Self::Udder,
        Self::Age,
        Self::Empty,
        Self::Prolapse,
        Self::Lambing,
        Self::Mothering,
        Self::PoorLambs,
        Self::Feet,
        Self::Condition,
        Self::Health,
        Self::Temper,
        Self::Other,
    ];
}
