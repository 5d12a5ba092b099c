//! The neck of the womb is tight: a gentle try of ten minutes, then the vet. Red at once when the time is over.

use super::{Discharge, Duty, Task, counted, minutes, vet_since};
use crate::book::{Animal, Event, Found};
use crate::flock::{Ewe, Labor};
use crate::practice::LaborLimits;

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let (from, found) = labor.check?;
    if found != Found::NeckTight || vet_since(labor, from) {
        return None;
    }
    let limit = minutes(limits.neck_minutes);
    let call = Discharge::Note(Event::VetCalled { animal: Animal::Ewe(ewe.id) });
    Some(counted(ewe, Task::NeckTight, from, limit, limit, call))
}
