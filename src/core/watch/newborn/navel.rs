//! The navel: dipped at birth, and again some hours after the first dip.

use super::{Completion, Duty, LambTask, at_ages, minutes};
use crate::book::Event;
use crate::flock::Lamb;
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta};

/// The first dip is late after half an hour, the second two hours after its time (ours).
const FIRST_LATE: TimeDelta = TimeDelta::minutes(30);
const AGAIN_LATE: TimeDelta = TimeDelta::hours(2);
/// A navel this old has dried: no more dipping is asked for (ours).
const DRY: TimeDelta = TimeDelta::hours(24);

pub(super) fn duty(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    if lamb.age(now) > DRY {
        return None;
    }
    let dip = Completion::Note(Event::NavelDipped { lamb: lamb.id });
    let again = minutes(settings.limits.navel_again_minutes);
    match lamb.navel.as_slice() {
        [] => Some(at_ages(lamb, LambTask::DipNavel, TimeDelta::zero(), FIRST_LATE, dip)),
        [first] => {
            let due = first.since(lamb.born) + again;
            Some(at_ages(lamb, LambTask::DipNavelAgain, due, due + AGAIN_LATE, dip))
        }
        [_, _, ..] => None,
    }
}
