//! A belly that felt hollow: the lamb is fed, whatever was seen before; until milk, or a full belly.

use super::{Discharge, Duty, Task, at_once};
use crate::book::Belly;
use crate::flock::Lamb;
use crate::units::TimeDelta;

/// Late so long after it was felt (ours).
const LATE_AFTER: TimeDelta = TimeDelta::hours(1);

pub(super) fn duty(lamb: &Lamb) -> Option<Duty> {
    let felt = lamb.belly.last().filter(|felt| felt.belly == Belly::Hollow)?;
    let milk = lamb.sucked.iter().copied().chain(lamb.feeds.iter().map(|feed| feed.at)).max();
    if milk.is_some_and(|milk| milk >= felt.at) || lamb.weaned.is_some() {
        return None;
    }
    Some(at_once(lamb, Task::Hollow, felt.at, LATE_AFTER, Discharge::Open))
}
