//! The neck of the womb is tight: a gentle try of ten minutes, then the vet. A danger at once when the time is over.

use super::{Discharge, Duty, Task, comes_well, counted, hand_well, minutes};
use crate::book::{Animal, Event, Found};
use crate::flock::{Ewe, Labor};
use crate::practice::LaborLimits;

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let (last, found) = labor.check()?;
    let open = labor.parts.iter().any(|(at, part)| *at > last && comes_well(*part));
    if found != Found::NeckTight || open {
        return None;
    }
    // A second try does not begin the ten minutes anew.
    let well = hand_well(labor);
    let tight = labor.checks.iter().filter(|(at, _)| well.is_none_or(|well| *at > well));
    let (from, _) = tight.into_iter().find(|(_, found)| *found == Found::NeckTight)?;
    let limit = minutes(limits.neck_minutes);
    let call = Discharge::Note(Event::VetCalled { animal: Animal::Ewe(ewe.id) });
    let mut duty = counted(ewe, Task::NeckTight, *from, limit, limit, call);
    duty.danger = Some(*from + limit);
    Some(duty)
}
