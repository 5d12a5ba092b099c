//! Up and trying to suck within half an hour; a lamb that sucked has stood.

use super::{Completion, Duty, LambTask, at_ages, minutes};
use crate::book::Event;
use crate::flock::Lamb;
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta};

/// Late so long after the farm's limit (ours: amber at 30 minutes, red at an hour).
const LATE_AFTER: TimeDelta = TimeDelta::minutes(30);

pub(super) fn duty(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    let up = !lamb.stood.is_empty() || !lamb.sucked.is_empty();
    if up || lamb.age(now) > TimeDelta::hours(24) {
        return None;
    }
    let due = minutes(settings.limits.up_minutes);
    let stood = Completion::Note(Event::Stood { lamb: lamb.id });
    Some(at_ages(lamb, LambTask::GetUp, due, due + LATE_AFTER, stood))
}
