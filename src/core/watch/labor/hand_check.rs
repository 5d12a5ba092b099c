//! Waters or hard straining and nothing shows: a clean hand at half an hour, step in at an hour.
//!
//! A check that found all in order starts the clock anew; a part that shows has a clock of its own.

use super::{Discharge, Duty, Task, clear_check, counted, minutes, vet_since};
use crate::flock::{Ewe, Labor};
use crate::practice::LaborLimits;
use crate::units::Moment;

pub(super) fn duty(ewe: &Ewe, labor: &Labor, now: Moment, limits: LaborLimits) -> Option<Duty> {
    let from = match labor.check {
        Some((checked, _)) => clear_check(labor)?.max(checked),
        None => labor.pressing()?,
    };
    if !labor.parts.is_empty() || labor.help.is_some() || vet_since(labor, from) {
        return None;
    }
    let (due, late) = (minutes(limits.hand_check_minutes), minutes(limits.step_in_minutes));
    let task = Task::HandCheck { step_in: now.since(from) >= late };
    Some(counted(ewe, task, from, due, late, Discharge::Open))
}
