//! After a hard pull a lamb is looked at twice, at two and at four hours: it may turn dull then. A look shortly before counts.

use super::{Completion, Duty, LambTask, at_ages};
use crate::book::{Animal, Event, LambingEase};
use crate::flock::Lamb;
use crate::reckon::illness::lamb::AFTER_HARD_BIRTH;
use crate::units::{Moment, TimeDelta};

/// A look so long before its time is that look (ours).
const EARLY: TimeDelta = TimeDelta::minutes(30);
/// It is late so long after its time (ours).
const LATE_AFTER: TimeDelta = TimeDelta::minutes(30);
/// So long it is asked for (ours).
const GONE: TimeDelta = TimeDelta::hours(24);

pub(super) fn duty(lamb: &Lamb, now: Moment) -> Option<Duty> {
    let hard = matches!(lamb.ease, Some(LambingEase::HardByHand | LambingEase::Vet));
    if !hard || lamb.age(now) > GONE {
        return None;
    }
    let (first, second) = AFTER_HARD_BIRTH;
    let looks = lamb.looked.iter().copied().chain(lamb.ill.iter().map(|seen| seen.at));
    let latest = looks.max().map(|at| at.since(lamb.born));
    let due = [first, second].into_iter().find(|due| latest.is_none_or(|latest| latest < *due - EARLY))?;
    let bright = Completion::Note(Event::LookedAt { animal: Animal::Lamb(lamb.id) });
    Some(at_ages(lamb, LambTask::HardBirth, due, due + LATE_AFTER, bright))
}
