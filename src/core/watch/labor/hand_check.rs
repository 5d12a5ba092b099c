//! Waters or hard straining and no lamb comes: a clean hand at half an hour, step in at an hour.
//!
//! A check that found all in order starts the clock anew; a lamb that shows as it should has a clock of its own. One
//! foot, hind feet, a tail or a head alone are no such lamb, and the clock runs on.
//!
//! What goes straight to the vet: a lamb crosswise, too big, deformed, dead; a neck of the womb tight for ten
//! minutes.

use super::{Completion, Duty, EweTask, advanced_well, counted, hand_well, minutes};
use crate::flock::{Ewe, Labor};
use crate::settings::LaborLimits;
use crate::units::Moment;

pub(super) fn duty(ewe: &Ewe, labor: &Labor, now: Moment, limits: LaborLimits) -> Option<Duty> {
    // What presses after a hand that found all well is no reason to wait for longer than that hand would have.
    let from = hand_well(labor).or(labor.pressing())?;
    if advanced_well(labor).is_some() {
        return None;
    }
    let (due, late) = (minutes(limits.hand_check_minutes), minutes(limits.step_in_minutes));
    let task = EweTask::HandCheck { step_in: now.since(from) >= late };
    Some(counted(ewe, task, from, due, late, Completion::Open))
}
