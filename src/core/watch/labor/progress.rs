//! Feet or nose show: they come further within half an hour. A look is no progress, nor is the same part once more; a
//! further part is, a hand that found all well, or a lamb put right.

use super::{Completion, Duty, EweTask, advanced, counted, hand_well, minutes};
use crate::flock::{Ewe, Labor};
use crate::settings::LaborLimits;
use crate::units::TimeDelta;

/// Late so long after its time (ours).
const LATE_AFTER: TimeDelta = TimeDelta::minutes(15);

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let shown = advanced(labor)?;
    let from = hand_well(labor).map_or(shown, |well| well.max(shown));
    let due = minutes(limits.progress_minutes);
    Some(counted(ewe, EweTask::Progress, from, due, due + LATE_AFTER, Completion::Open))
}
