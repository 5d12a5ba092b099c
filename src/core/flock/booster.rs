//! The booster before lambing: what reaches the lambs through their dam's colostrum, and the bags that were frozen of it.
//!
//! It is noted of each ewe as a treatment, or of a group as a whole by earlier versions: both count alike.

use super::{Ewe, Flock, Lamb};
use crate::book::{Animal, EweId};
use crate::sort_small::SortSmall;
use crate::units::{Moment, TimeDelta};

/// A booster is in the colostrum of the lambing that comes within so long of it (ours: given six weeks before the first
/// ewe, it still serves one that takes to her third heat).
const SERVES: TimeDelta = TimeDelta::days(98);

/// A booster needs so long to be in the colostrum (two weeks: Maryland, NCSU and Missouri end its window then).
pub const IN_COLOSTRUM_AFTER: TimeDelta = TimeDelta::days(14);

impl Flock {
    /// Returns when a ewe was given her booster, oldest first: her own, and those of a group that she was in then.
    #[must_use]
    pub fn boosters(&self, ewe: EweId) -> Vec<Moment> {
        let own = self.treated(Animal::Ewe(ewe)).into_iter().filter(|treated| treated.booster);
        let mut all: Vec<Moment> = own.map(|treated| treated.at).collect();
        let stays = self.ewe(ewe).map_or(&[][..], |ewe: &Ewe| ewe.stays.as_slice());
        for stay in stays {
            let of_group = self.groups.get(&stay.group).map_or(&[][..], |group| group.boosters.as_slice());
            let there = |at: &&Moment| **at >= stay.joined && stay.left.is_none_or(|left| **at <= left);
            all.extend(of_group.iter().filter(there));
        }
        all.sort_small();
        all
    }

    /// Returns the booster that serves the colostrum a ewe has at `at`: the last of the weeks before it.
    #[must_use]
    pub fn boosted_for(&self, ewe: EweId, at: Moment) -> Option<Moment> {
        let last = self.boosters(ewe).into_iter().rev().find(|boosted| *boosted <= at)?;
        (at.since(last) <= SERVES).then_some(last)
    }

    /// Returns the booster of a lamb's dam that reached it, if she had one.
    #[must_use]
    pub fn dam_boosted(&self, lamb: &Lamb) -> Option<Moment> {
        self.boosted_for(lamb.dam?, lamb.born)
    }
}
