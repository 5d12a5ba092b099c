//! The farm's own marks for keeping or culling: from how often on a ewe is looked at again.
//!
//! Marks for keeping or culling are the farm's own: none is set until it sets one, since none is published.

use serde::{Deserialize, Serialize};

/// From how often on something marks a ewe; nothing where the farm does not mind it.
///
/// No handbook sets these: each is the farm's own.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct CullRules {
    /// Births with a hard pull or a vet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hard_births: Option<u8>,
    /// Lambs lost before they were reared, those born dead among them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lost: Option<u8>,
    /// Lambs of hers that she turned away.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub turned_away: Option<u8>,
    /// Seasons put to the ram without lambs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub barren: Option<u8>,
    /// Whole years of age.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub years: Option<u8>,
}

impl CullRules {
    /// The most that a mark can be set to.
    pub const MOST: u8 = 30;

    /// Returns the marks if each is at least one and at most `MOST`: from none on every ewe would be marked.
    #[must_use]
    pub fn checked(self) -> Option<Self> {
        let all = [self.hard_births, self.lost, self.turned_away, self.barren, self.years];
        all.into_iter().flatten().all(|from| (1..=Self::MOST).contains(&from)).then_some(self)
    }
}
