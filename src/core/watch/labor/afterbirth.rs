//! The afterbirth: asked for at 6 hours after the last lamb, late at 12, the vet's at 18. Never pulled.
//!
//! After three days without a word the clock ends (ours): she is past what it watches, and her page still says that
//! it was never noted.

use super::{Discharge, Duty, Task, counted, minutes};
use crate::book::Event;
use crate::flock::{Ewe, Litter, Saw, Seen};
use crate::practice::LaborLimits;
use crate::units::{Moment, TimeDelta};

/// Told from an hour before it is asked for, and for three days (ours).
const AHEAD: TimeDelta = TimeDelta::hours(1);
const GONE: TimeDelta = TimeDelta::hours(72);

pub(super) fn duty(ewe: &Ewe, litter: &Litter, now: Moment, limits: LaborLimits) -> Option<Duty> {
    let passed = |seen: &Seen| seen.at >= litter.began && seen.what == Saw::Afterbirth;
    let since = now.since(litter.latest);
    if since > GONE || ewe.seen.iter().any(passed) {
        return None;
    }
    let due = minutes(limits.afterbirth_ask_minutes);
    let task = Task::Afterbirth { vet: since >= minutes(limits.afterbirth_vet_minutes) };
    let noted = Discharge::Note(Event::AfterbirthPassed { ewe: ewe.id });
    let mut duty = counted(ewe, task, litter.latest, due, minutes(limits.afterbirth_late_minutes), noted);
    duty.from = duty.due - AHEAD;
    Some(duty)
}
