//! A restless ewe is looked at every hour; one that the vet was called for, every half hour until the vet is there.

use super::{Discharge, Duty, Task, counted, minutes};
use crate::book::{Animal, Event};
use crate::flock::{Ewe, Labor};
use crate::practice::LaborLimits;
use crate::units::TimeDelta;

/// A look is late so long after its time, and a ewe that waits for the vet is looked at so often (ours).
const HALF_HOUR: TimeDelta = TimeDelta::minutes(30);

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let waiting = labor.vet.is_some();
    let further = labor.pressing().is_some()
        || !labor.parts.is_empty()
        || labor.check.is_some()
        || labor.help.is_some();
    if further && !waiting {
        return None;
    }
    let started = if waiting { labor.vet } else { labor.restless }?;
    let from = labor.looked.map_or(started, |looked| looked.max(started));
    let due = if waiting { HALF_HOUR } else { minutes(limits.look_minutes) };
    let looked = Discharge::Note(Event::LookedAt { animal: Animal::Ewe(ewe.id) });
    Some(counted(ewe, Task::Look, from, due, due + HALF_HOUR, looked))
}
