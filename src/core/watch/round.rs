//! A round with the bottle: feeds that fall close together, so that one trip and one mix serve several lambs.

use super::{Duty, LambTask, Task};
use crate::sort_small::SortSmall;
use crate::units::{Moment, TimeDelta, Volume};

/// Feeds due within so long of the first go into one round (ours).
const TOGETHER: TimeDelta = TimeDelta::minutes(45);

/// A round.
#[derive(Clone, Debug, PartialEq)]
pub struct Round {
    /// When its first feed is due.
    pub due: Moment,
    /// Its feeds, the first due first.
    pub feeds: Vec<Duty>,
    /// All volumes together, as far as they are known.
    pub volume: Volume,
}

/// Returns the next round: the feed due first, and all due soon after it or already due; none when no lamb is fed.
#[must_use]
pub fn round(duties: &[Duty], now: Moment) -> Option<Round> {
    let mut feeds: Vec<Duty> = duties
        .iter()
        .filter(|duty| matches!(duty.task, Task::Lamb(_, LambTask::Feed { .. })))
        .cloned()
        .collect();
    feeds.sort_small_by_key(|duty| (duty.comes(), duty.subject()));
    let due = feeds.first()?.comes();
    let until = due.max(now) + TOGETHER;
    feeds.retain(|duty| duty.comes() <= until);
    let volume = feeds.iter().filter_map(volume).sum();
    Some(Round { due, feeds, volume })
}

fn volume(duty: &Duty) -> Option<Volume> {
    if let Task::Lamb(_, LambTask::Feed { volume, .. }) = duty.task { volume } else { None }
}
