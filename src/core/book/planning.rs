//! What is meant for the season: that a ram stays, what is planned for which day, and that it came about.
//!
//! Nothing planned counts as noted: a ram-in that is planned brings no ram in. A plan of the same thing for the same
//! group takes the place of the one before it.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use super::ids::GroupId;
use crate::units::Moment;

/// What is meant for the season.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Planning {
    /// The rams that are in with a group stay with it.
    RamStays {
        /// Which group.
        group: GroupId,
        /// Until when they count as in; nothing when they stay until each ewe has lambed.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        until: Option<Moment>,
    },
    /// Something is planned for a day, in the place of what was planned of it before.
    Planned {
        /// What.
        what: PlannedJob,
        /// For which group; nothing for the whole flock.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        group: Option<GroupId>,
        /// For which day; nothing when it is planned no more.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        on: Option<NaiveDate>,
    },
    /// Which rams are meant for a group: they are noted by these names when its ram goes in as planned.
    RamsMeant {
        /// Which group.
        group: GroupId,
        /// What they are called by.
        rams: Vec<String>,
    },
    /// The next step of a group's extra feed waits until a day.
    FeedPutOff {
        /// Which group.
        group: GroupId,
        /// Until which day.
        until: NaiveDate,
    },
    /// What was planned came about; a ram's coming and going are noted beside it as facts of their own.
    Happened {
        /// What.
        what: PlannedJob,
        /// For which group; nothing for the whole flock.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        group: Option<GroupId>,
    },
}

/// What can be planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum PlannedJob {
    /// The ram goes in.
    RamIn,
    /// The ram comes out.
    RamOut,
    /// The ewes are scanned.
    Scan,
    /// The ewes are shorn.
    Shearing,
    /// Ewes and lambs go out to grass.
    TurnOut,
}

impl PlannedJob {
    /// All of them, in the order of the season.
    pub const ALL: [Self; 5] = [Self::RamIn, Self::RamOut, Self::Scan, Self::Shearing, Self::TurnOut];
}

impl Planning {
    /// Returns the group that it is about, if it is about one.
    #[must_use]
    pub const fn group(&self) -> Option<GroupId> {
        match self {
            Self::RamStays { group, .. } | Self::FeedPutOff { group, .. } | Self::RamsMeant { group, .. } => {
                Some(*group)
            }
            Self::Planned { group, .. } | Self::Happened { group, .. } => *group,
        }
    }
}
