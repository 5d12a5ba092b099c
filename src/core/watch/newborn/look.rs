//! A lamb that the vet was called for is looked at again, when the call asks for it.

use super::{Completion, Duty, LambTask, at_once, holds};
use crate::book::{Animal, Event};
use crate::flock::Lamb;
use crate::units::{Moment, TimeDelta};
use crate::watch::vet;

/// A call asks for looks so long, where nothing else of the lamb is open (ours).
const CALLED_FOR: TimeDelta = TimeDelta::hours(24);

pub(super) fn duty(lamb: &Lamb, now: Moment) -> Option<Duty> {
    let last = lamb.vet.last().filter(|call| now.since(call.at) < CALLED_FOR)?;
    // A reading or a try is a look too.
    let looks = [
        lamb.looked.last().copied(),
        lamb.temperatures.last().map(|reading| reading.at),
        lamb.mouth.last().map(|felt| felt.at),
        lamb.swallow.last().map(|(at, _)| *at),
    ];
    let looked = looks.into_iter().flatten().max();
    if holds(lamb).is_empty() && looked.is_some_and(|looked| looked > last.at) {
        return None;
    }
    let called = vet::called(&lamb.vet, last.at - CALLED_FOR, looked)?;
    let looked_at = Completion::Note(Event::LookedAt { animal: Animal::Lamb(lamb.id) });
    let wait = called.look_again.since(called.at);
    let mut duty = at_once(lamb, LambTask::Look, called.at, wait + vet::LOOK_LATE, looked_at);
    duty.due = called.look_again;
    Some(duty)
}
