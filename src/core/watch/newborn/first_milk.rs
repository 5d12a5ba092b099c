//! First milk: seen to suck, or fed by hand. Help at an hour, red at two, the last call at six, by the farm's limits.
//!
//! It does not end with the window: a lamb of a day that has had nothing is a matter for a hand or a vet.

use super::{Completion, Duty, FIRST_TWO_DAYS, LambTask, at_ages, before_milk, looked_at_since, minutes};
use crate::book::Event;
use crate::flock::Lamb;
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta};

/// A look at its warmth says something for so long (ours).
const READ_BEFORE: TimeDelta = TimeDelta::hours(1);

pub(super) fn duty(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    if !is_asked(lamb, now) {
        return None;
    }
    let limits = settings.limits;
    let last_call = lamb.age(now) >= minutes(limits.last_call_minutes);
    // Who is too cold or cannot swallow is not put to the ewe with one tap.
    let before = before_milk(lamb, now, settings);
    let suck = match before {
        Some(_) => Completion::Open,
        None => Completion::Note(Event::Sucked { lamb: lamb.id }),
    };
    let task = LambTask::FirstMilk { last_call, before };
    Some(at_ages(lamb, task, minutes(limits.help_minutes), minutes(limits.red_minutes), suck))
}

fn is_asked(lamb: &Lamb, now: Moment) -> bool {
    lamb.first_milk().is_none() && lamb.least_age(now) <= FIRST_TWO_DAYS
}

/// Says whether a thermometer, or a finger in the mouth, comes first: who is late and was not seen to nurse may be cold.
pub(super) fn reads_first(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> bool {
    let late = lamb.age(now) >= minutes(settings.limits.red_minutes);
    is_asked(lamb, now) && late && !looked_at_since(lamb, now - READ_BEFORE)
}
