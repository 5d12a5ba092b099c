//! The neck of the womb is tight: a gentle try of ten minutes, then the vet. A danger at once when the time is over.

use super::{Completion, Duty, EweTask, comes_well, counted, hand_well, minutes};
use crate::book::{Animal, Event, Found};
use crate::flock::{Ewe, Labor};
use crate::settings::LaborLimits;

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    // A second try does not begin the ten minutes anew, nor does what else is found to be wrong.
    let open = labor.parts.iter().filter(|(_, part)| comes_well(*part)).map(|(at, _)| *at).max();
    let good = hand_well(labor).max(open);
    let mut since = labor.checks.iter().filter(|(at, _)| good.is_none_or(|good| *at > good));
    let (from, _) = since.find(|(_, found)| *found == Found::CervixClosed)?;
    let limit = minutes(limits.neck_minutes);
    let call = Completion::Note(Event::VetCalled { animal: Animal::Ewe(ewe.id) });
    let mut duty = counted(ewe, EweTask::CervixClosed, *from, limit, limit, call);
    duty.danger = Some(*from + limit);
    Some(duty)
}
