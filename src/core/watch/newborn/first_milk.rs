//! First milk: seen to suck, or fed by hand. Help at an hour, red at two, the last call at six, by the farm's limits.
//!
//! It does not end with the window: a lamb of a day that has had nothing is a matter for a hand or a vet.

use super::{Discharge, Duty, FIRST_TWO_DAYS, Task, at_ages, hold_milk, minutes};
use crate::book::Event;
use crate::flock::Lamb;
use crate::practice::Practice;
use crate::units::Moment;

pub(super) fn duty(lamb: &Lamb, now: Moment, practice: &Practice) -> Option<Duty> {
    if lamb.first_milk().is_some() || lamb.age(now) > FIRST_TWO_DAYS {
        return None;
    }
    let limits = practice.limits;
    let last_call = lamb.age(now) >= minutes(limits.last_call_minutes);
    // Who is too cold or cannot swallow is not put to the ewe with one tap.
    let hold = hold_milk(lamb).is_some();
    let suck = if hold { Discharge::Open } else { Discharge::Note(Event::Sucked { lamb: lamb.id }) };
    let task = Task::FirstMilk { last_call, hold };
    Some(at_ages(lamb, task, minutes(limits.help_minutes), minutes(limits.red_minutes), suck))
}
