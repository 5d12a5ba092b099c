//! A group and its rams in numbers: whether the rams are too few, and how many ewes settled in the first cycle.

use std::collections::BTreeMap;

use chrono::NaiveDate;

use super::matings::count;
use crate::book::{EweId, RamAge};
use crate::flock::{Flock, Group};
use crate::reckon::season::cycles::{self, Settled};
use crate::reckon::season::mating::ewes_to_rams;
use crate::units::Moment;

/// The ewes of a group against what is printed for its rams.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Served {
    /// Living ewes in the group.
    pub ewes: u32,
    /// The fewest and the most that are printed for the rams that are in.
    pub printed: (u32, u32),
}

impl Served {
    /// Says whether there are more ewes than are printed for these rams.
    #[must_use]
    pub const fn is_too_many(self) -> bool {
        self.ewes > self.printed.1
    }
}

/// Returns the ewes of a group against what is printed for the rams that are in; none without rams, or where the age of
/// one is not known.
#[must_use]
pub fn served(flock: &Flock, group: &Group) -> Option<Served> {
    let rams: Vec<RamAge> = group.rams_in().map(|ram| ram.age).collect::<Option<_>>()?;
    let lives = |ewe: &EweId| flock.ewe(*ewe).is_some_and(|ewe| ewe.lives());
    let ewes = count(group.ewes().filter(lives).count());
    (!rams.is_empty()).then(|| Served { ewes, printed: ewes_to_rams(&rams) })
}

/// Returns how many ewes of a group settled in the first cycle of its last ram, as known at `now`; none until 20 days
/// after its first lambing.
#[must_use]
pub fn settled(flock: &Flock, group: &Group, now: Moment) -> Option<Settled> {
    let (came, _) = group.ram_times().last().copied()?;
    let mut put: BTreeMap<EweId, Option<NaiveDate>> = BTreeMap::new();
    for window in group.windows().iter().filter(|window| window.ram_in >= came) {
        let lambed = flock.litter_of_window(window).map(|litter| litter.began.local().date());
        let known = put.entry(window.ewe).or_default();
        *known = known.or(lambed);
    }
    let lambed: Vec<NaiveDate> = put.values().copied().flatten().collect();
    cycles::settled(&lambed, count(put.len()), now.local().date())
}
