//! Weighing: the volumes hang on it, so within two hours; a weight after a day is no birth weight.
//!
//! A lamb on the bottle is fed by its last weight until it is weighed again, so that its stomach is safe; after three
//! days unweighed in its first weeks weighing comes first, so that it is not starved either.

use super::{Completion, Duty, LambTask, at_ages, at_once};
use crate::flock::Lamb;
use crate::reckon::bottle;
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta};

/// Due at half an hour, when it is dry and has been with its dam; late at six (ours).
const DUE: TimeDelta = TimeDelta::minutes(30);
const LATE: TimeDelta = TimeDelta::hours(6);
/// On the bottle it is weighed again after so long, and is late a day later (ours).
const AGAIN: TimeDelta = TimeDelta::days(3);
const AGAIN_LATE: TimeDelta = TimeDelta::days(1);

pub(super) fn duty(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    if let Some(due) = for_feeds(lamb, now, settings) {
        let mut duty = at_once(lamb, LambTask::Weigh { for_feeds: true }, due, AGAIN_LATE, Completion::Open);
        duty.from = due.min(now);
        return Some(duty);
    }
    if lamb.birth_weight().is_some() || lamb.age(now) >= TimeDelta::hours(24) {
        return None;
    }
    Some(at_ages(lamb, LambTask::Weigh { for_feeds: false }, DUE, LATE, Completion::Open))
}

/// Returns since when a bottle lamb of a day or more is to be weighed before its feeds can be trusted, if it is.
pub(super) fn for_feeds(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Moment> {
    let age = lamb.age(now);
    let on_table = bottle::day(age, None, settings.bottle_table).is_ok();
    if !lamb.on_bottle() || age < TimeDelta::hours(24) || !on_table {
        return None;
    }
    let due = lamb.last_weight(now).map_or(lamb.born + TimeDelta::hours(24), |last| last.at + AGAIN);
    (now.since(due) >= TimeDelta::zero()).then_some(due)
}
