//! The lambs of one birth.

use crate::book::{EweId, LambId};
use crate::units::{Moment, TimeDelta};

/// The longest that may lie between two births of one litter: seven days (ours; far longer than any, so that a late
/// entry still finds its litter, and far shorter than two lambings of one ewe).
pub(super) const APART: TimeDelta = TimeDelta::days(7);

/// A litter: lambs of one dam born together, or lambs noted beside each other while the dam is unknown.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Litter {
    /// The first lamb, which names the litter.
    pub id: LambId,
    /// The dam, if known.
    pub dam: Option<EweId>,
    /// The lambs in the order of their birth.
    pub lambs: Vec<LambId>,
    /// When the first was born.
    pub began: Moment,
    /// When the last so far was born.
    pub latest: Moment,
    /// When all were said to be born.
    pub all_born: Option<Moment>,
}

/// A lambing counts as going on while its last birth is this fresh (ours).
const GOES_ON: TimeDelta = TimeDelta::hours(24);

impl Litter {
    /// Says whether the lambing goes on: not all were said to be born, or one came after that was said.
    #[must_use]
    pub fn goes_on(&self, now: Moment) -> bool {
        self.all_born.is_none_or(|said| self.latest > said) && now.since(self.latest) < GOES_ON
    }
}
