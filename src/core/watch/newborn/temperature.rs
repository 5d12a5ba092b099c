//! A lamb that read too cold is read again in twenty minutes; where the table says so, the vet is called at once.
//!
//! The table goes by the age at the reading and by the try of head and swallow made with it; what is not known takes the
//! safer branch there. Only a normal reading ends it.

use super::{Discharge, Duty, Task, at_once};
use crate::book::{Animal, Event};
use crate::flock::Lamb;
use crate::reckon::cold_lamb::{Answer, Vet, decide};
use crate::units::{Moment, TimeDelta};

/// A second reading is late so long after its time (ours). A call to the vet is late as soon as the table asks for it.
const LATE_AFTER: TimeDelta = TimeDelta::minutes(20);

fn answer(lamb: &Lamb) -> Option<(Moment, Answer)> {
    let last = lamb.temperatures.last()?;
    let answer = decide(last.temperature, Some(lamb.age(last.at)), lamb.swallows()).ok()?;
    Some((last.at, answer))
}

pub(super) fn again(lamb: &Lamb) -> Option<Duty> {
    let (read, answer) = answer(lamb)?;
    let wait = answer.look_again?;
    let mut duty = at_once(lamb, Task::TakeTemperature, read, wait + LATE_AFTER, Discharge::Open);
    duty.due = read + wait;
    Some(duty)
}

pub(super) fn vet(lamb: &Lamb) -> Option<Duty> {
    let (read, answer) = answer(lamb)?;
    if answer.vet != Vet::Now || lamb.vet.iter().any(|called| *called >= read) {
        return None;
    }
    let call = Discharge::Note(Event::VetCalled { animal: Animal::Lamb(lamb.id) });
    Some(at_once(lamb, Task::CallVet, read, TimeDelta::zero(), call))
}
