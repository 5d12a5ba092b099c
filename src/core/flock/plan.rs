//! What is planned and has not come about yet: one plan of a thing for a group, or for the whole flock.
//!
//! Nothing of it is told to a ewe, a lamb or a group as if it had been: a plan lies here alone.

use chrono::NaiveDate;

use super::Flock;
use super::group::Staying;
use crate::book::{EntryId, Event, GroupId, PlannedJob, Planning, Standing};
use crate::sort_small::SortSmall;
use crate::units::Moment;

/// Something planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Plan {
    /// What.
    pub what: PlannedJob,
    /// For which group; nothing for the whole flock.
    pub group: Option<GroupId>,
    /// For which day.
    pub on: NaiveDate,
    /// When it was planned.
    pub since: Moment,
    /// The entry that planned it.
    pub entry: EntryId,
}

/// Tells what is meant for the season. What is planned for a group that is not here, or has ended, waits.
pub(super) fn apply(flock: &mut Flock, line: &Standing<'_>, planning: &Planning) {
    match planning {
        Planning::RamStays { group, until } => {
            let stays = until.map_or(Staying::UntilLambed, Staying::Until);
            if let Some(group) = flock.groups.get_mut(group) {
                group.rams.iter_mut().filter(|ram| ram.out.is_none()).for_each(|ram| ram.stays = stays);
            }
            settle(flock, *group, PlannedJob::RamOut);
        }
        Planning::Planned { what, group, on } => {
            let there = |group: &GroupId| flock.groups.get(group).is_some_and(|group| group.parted.is_none());
            let plan =
                on.map(|on| Plan { what: *what, group: *group, on, since: line.at, entry: line.entry.id });
            match plan.filter(|_| group.as_ref().is_none_or(there)) {
                Some(plan) => _ = flock.plans.insert((*group, *what), plan),
                None => _ = flock.plans.remove(&(*group, *what)),
            }
        }
        Planning::RamsMeant { group, rams } => _ = flock.rams_meant.insert(*group, rams.clone()),
        Planning::FeedPutOff { group, until } => {
            if let Some(group) = flock.groups.get_mut(group) {
                group.feed_waits = Some((line.at, *until));
            }
        }
        Planning::Happened { what, group } => _ = flock.plans.remove(&(*group, *what)),
    }
}

/// A ram that comes or goes is what was planned of him, and a group that ends plans nothing more.
pub(super) fn came_about(flock: &mut Flock, event: &Event) {
    if let Event::RamIn { group, .. } = event {
        settle(flock, *group, PlannedJob::RamIn);
    } else if let Event::RamOut { group } = event {
        settle(flock, *group, PlannedJob::RamOut);
    } else if let Event::GroupParted { group } = event {
        flock.plans.retain(|(of, _), _| *of != Some(*group));
        flock.rams_meant.remove(group);
    }
}

fn settle(flock: &mut Flock, group: GroupId, what: PlannedJob) {
    flock.plans.remove(&(Some(group), what));
}

impl Flock {
    /// Returns what is planned and has not come about, the earliest first.
    #[must_use]
    pub fn planned(&self) -> Vec<Plan> {
        let mut plans: Vec<Plan> = self.plans.values().copied().collect();
        plans.sort_small_by_key(|plan| (plan.on, plan.what, plan.group));
        plans
    }

    /// Returns the rams that are meant for a group, by what they are called.
    #[must_use]
    pub fn rams_meant(&self, group: GroupId) -> &[String] {
        self.rams_meant.get(&group).map_or(&[], Vec::as_slice)
    }

    /// Returns the plan of a thing for a group, or for the whole flock.
    #[must_use]
    pub fn plan_of(&self, group: Option<GroupId>, what: PlannedJob) -> Option<&Plan> {
        self.plans.get(&(group, what))
    }
}
