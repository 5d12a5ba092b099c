//! A restless ewe is looked at every hour; one that the vet was called for, at the time that this asks for.

use super::{Discharge, Duty, Task, counted, minutes};
use crate::book::{Animal, Event};
use crate::flock::{Ewe, Labor};
use crate::practice::LaborLimits;
use crate::units::{Moment, TimeDelta};
use crate::watch::vet;

/// A look is late so long after its time (ours).
const HALF_HOUR: TimeDelta = TimeDelta::minutes(30);
/// A call to the vet asks for looks so long, where nothing else of her is open (ours).
const CALLED_FOR: TimeDelta = TimeDelta::hours(24);

pub(super) fn restless(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let further = labor.pressing().is_some()
        || !labor.parts.is_empty()
        || !labor.checks.is_empty()
        || !labor.help.is_empty();
    let restless = labor.restless.filter(|_| !further)?;
    let from = labor.looked.map_or(restless, |looked| looked.max(restless));
    let due = minutes(limits.look_minutes);
    Some(counted(ewe, Task::Look, from, due, due + HALF_HOUR, looked(ewe)))
}

/// Returns the look that the last call to the vet asks for: again and again while something of her is open, else once.
pub(super) fn for_the_vet(ewe: &Ewe, busy: bool, now: Moment) -> Option<Duty> {
    let last = ewe.vet.last().filter(|call| now.since(call.at) < CALLED_FOR)?;
    let looked_at = ewe.last_look();
    if !busy && looked_at.is_some_and(|looked| looked > last.at) {
        return None;
    }
    // A birth since ends what she was called for.
    let began = ewe.labor.as_ref().and_then(Labor::began);
    if busy && began.is_some_and(|began| last.at < began) {
        return None;
    }
    let called = vet::called(&ewe.vet, last.at, looked_at)?;
    let wait = called.look_again.since(called.at);
    Some(counted(ewe, Task::Look, called.at, wait, wait + vet::LOOK_LATE, looked(ewe)))
}

const fn looked(ewe: &Ewe) -> Discharge {
    Discharge::Note(Event::LookedAt { animal: Animal::Ewe(ewe.id) })
}
