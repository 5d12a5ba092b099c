//! Feet or nose show: they come further within half an hour. A look is no progress; a further part, or a hand, is.

use super::{Discharge, Duty, Task, clear_check, counted, minutes, vet_since};
use crate::flock::{Ewe, Labor};
use crate::practice::LaborLimits;
use crate::units::TimeDelta;

/// Late so long after its time (ours).
const LATE_AFTER: TimeDelta = TimeDelta::minutes(15);

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let (shown, _) = *labor.parts.last()?;
    let from = match labor.check {
        Some((checked, _)) if checked > shown => clear_check(labor)?,
        Some(_) | None => shown,
    };
    if labor.help.is_some_and(|help| help >= from) || vet_since(labor, from) {
        return None;
    }
    let due = minutes(limits.progress_minutes);
    Some(counted(ewe, Task::Progress, from, due, due + LATE_AFTER, Discharge::Open))
}
