//! What goes round in a flock: seen in several animals within days.

use serde::{Deserialize, Serialize};

/// What goes round.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Spread {
    /// Someone saw blisters, swollen faces, or many that are lame or die.
    Notifiable,
    /// Many lame at once.
    ManyLame,
    /// Well-grown lambs die.
    LambsDying,
    /// Ewes abort.
    Abortions,
    /// Lambs with wet chins.
    WetChins,
    /// Lambs that scour.
    Scours,
}

impl Spread {
    /// All, the most urgent first.
    pub const ALL: [Self; 6] =
        [Self::Notifiable, Self::ManyLame, Self::LambsDying, Self::Abortions, Self::WetChins, Self::Scours];
}
