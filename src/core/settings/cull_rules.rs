//! The farm's own marks for keeping or culling: from how often on a ewe is looked at again.
//!
//! All are off until the farm sets one. What trade and handbooks cull for stands beside each, where it is set.

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

/// More that a farm can mind of a ewe; nothing where it does not.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct CullSigns {
    /// Seasons in which a half of her udder was dry, hard or cold.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub udder: Option<u8>,
    /// Times that she was seen lame, two weeks apart or more.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lame: Option<u8>,
    /// Seasons with a prolapse.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub prolapse: Option<u8>,
    /// Seasons in which she lambed late in her group.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub late: Option<u8>,
    /// Her last score, in quarters: under this she is thin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thin: Option<u8>,
    /// What she weaned a season, in percent of the flock's mean: under this it is light.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub light: Option<u8>,
}

impl CullSigns {
    /// Scores to be thin by, in quarters: 1 to 4.
    pub const THIN: (u8, u8) = (4, 16);
    /// Percent of the flock's mean to be light by.
    pub const LIGHT: (u8, u8) = (10, 100);

    /// Returns them if each count is at least one and at most [`CullRules::MOST`], and the others are within their bounds.
    #[must_use]
    pub fn checked(self) -> Option<Self> {
        let within =
            |of: Option<u8>, (least, most): (u8, u8)| of.is_none_or(|of| (least..=most).contains(&of));
        let counts = [self.udder, self.lame, self.prolapse, self.late];
        let counted = counts.into_iter().all(|count| within(count, (1, CullRules::MOST)));
        (counted && within(self.thin, Self::THIN) && within(self.light, Self::LIGHT)).then_some(self)
    }
}
