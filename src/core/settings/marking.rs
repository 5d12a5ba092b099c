//! Choices about rings and vaccine: by whose law, on which lambs, and whether the dams were vaccinated.

use serde::{Deserialize, Serialize};

/// Until when a ring may go on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum RingRule {
    /// No rings, and no reminder. Our default: rings are never pressed on a farm that does not use them.
    #[default]
    NoRings,
    /// England and Wales: only in the first 7 days.
    EnglandWales,
    /// Germany: tails under 8 days, and only where indispensable; castration with rings is banned.
    Germany,
    /// New South Wales: 6 months.
    NewSouthWales,
    /// New Zealand: 6 months.
    NewZealand,
    /// The farm's own limit.
    Own {
        /// Until this age in days, `RINGS_OWN_DAYS`.
        days: u16,
    },
}

/// What the farm's own limit may be, in days: from the second day of life to 6 months (ours).
pub const RINGS_OWN_DAYS: (u16, u16) = (2, 181);

/// Which lambs get rings, and until when.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Rings {
    /// By whose law.
    pub rule: RingRule,
    /// Whether tails are ringed.
    pub tails: bool,
    /// Whether ram lambs are castrated by ring.
    pub ram_lambs: bool,
}

/// A limit for rings that makes no sense: what was given, what is allowed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{given} days are not between {least} and {most}")]
pub struct RingDaysError {
    /// Days that were given.
    pub given: u16,
    /// The least days allowed.
    pub least: u16,
    /// The most days allowed.
    pub most: u16,
}

impl Rings {
    /// Returns the choice if its own limit, where it has one, is within `RINGS_OWN_DAYS`.
    ///
    /// # Errors
    /// The farm's own limit is not.
    pub const fn checked(self) -> Result<Self, RingDaysError> {
        let (least, most) = RINGS_OWN_DAYS;
        match self.rule {
            RingRule::Own { days: given } if given < least || given > most => {
                Err(RingDaysError { given, least, most })
            }
            RingRule::NoRings
            | RingRule::EnglandWales
            | RingRule::Germany
            | RingRule::NewSouthWales
            | RingRule::NewZealand
            | RingRule::Own { .. } => Ok(self),
        }
    }
}

/// Whether the dams had their clostridial vaccine before lambing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DamsVaccinated {
    /// Not known. Our default; the earlier dates hold (ours).
    #[default]
    Unknown,
    /// They were.
    Yes,
    /// They were not.
    No,
}
