//! A lamb whose ewe gave no milk when her udder was drawn: milk from elsewhere at once, until it was fed by hand, she gives
//! milk, or another ewe rears it. What it was seen to suck of her was nothing.
//!
//! It stands in the place of the first milk, and is never milder than that was.

use super::{Completion, Duty, FIRST_TWO_DAYS, LambTask, Task, at_once, before_milk};
use crate::flock::{Flock, Lamb};
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta};
use crate::watch::labor::udder::dry_since;

/// Late so long after the draw (ours).
const LATE_AFTER: TimeDelta = TimeDelta::minutes(30);

/// Puts the duty in the place of the first milk, where the ewe has no milk.
pub(in crate::watch) fn put(
    duties: &mut Vec<Duty>,
    flock: &Flock,
    lamb: &Lamb,
    now: Moment,
    settings: &FarmSettings,
) {
    let Some(mut duty) = duty(flock, lamb, now, settings) else { return };
    let first_milk = |other: &Duty| matches!(other.task, Task::Lamb(_, LambTask::FirstMilk { .. }));
    for first in duties.iter().filter(|other| first_milk(other)) {
        duty.due = duty.due.min(first.due);
        duty.late = duty.late.min(first.late);
    }
    duties.retain(|other| !first_milk(other));
    duties.push(duty);
}

fn duty(flock: &Flock, lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    let ewe = flock.rearer(lamb).and_then(|ewe| flock.ewe(ewe)).filter(|ewe| ewe.lives())?;
    let since = dry_since(ewe, now)?.max(lamb.born);
    let fed = lamb.feeds.iter().any(|feed| feed.at >= since);
    if fed || lamb.on_bottle() || lamb.weaned.is_some() || lamb.least_age(now) > FIRST_TWO_DAYS {
        return None;
    }
    let task = LambTask::DamDry { before: before_milk(lamb, now, settings) };
    Some(at_once(lamb, task, since, LATE_AFTER, Completion::Open))
}
