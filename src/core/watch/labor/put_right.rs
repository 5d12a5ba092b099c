//! A lamb that lies wrong, or that is being pulled: put right within ten minutes, or the vet; some lies at once.

use super::{Discharge, Duty, Needs, Task, counted, minutes, needs, vet_since};
use crate::book::{Animal, Event, Found};
use crate::flock::{Ewe, Labor};
use crate::practice::LaborLimits;
use crate::units::TimeDelta;

/// Late so long after its time: the longer of the printed 10 to 15 minutes.
const LATE_AFTER: TimeDelta = TimeDelta::minutes(5);

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let lie = match labor.check {
        Some((_, Found::Lamb(lie))) => Some(lie),
        Some((_, Found::NeckTight | Found::NothingYet | Found::Empty)) | None => None,
    };
    let wrong = lie.is_some_and(|lie| needs(lie) != Needs::Nothing);
    let checked = labor.check.filter(|_| wrong).map(|(at, _)| at);
    let from = checked.into_iter().chain(labor.help).min()?;
    if vet_since(labor, from) {
        return None;
    }
    let limit = match lie.map(needs) {
        Some(Needs::Vet) => TimeDelta::zero(),
        Some(Needs::Help | Needs::Nothing) | None => minutes(limits.put_right_minutes),
    };
    let call = Discharge::Note(Event::VetCalled { animal: Animal::Ewe(ewe.id) });
    Some(counted(ewe, Task::PutRight { lie }, from, limit, limit + LATE_AFTER, call))
}
