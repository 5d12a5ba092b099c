//! The afterbirth: asked for at 6 hours after the last lamb, late at 12, the vet's at 18. Never pulled.
//!
//! Three answers: it passed; it hangs, which is the vet's from where it is late; it was not seen and she is bright and
//! eats, which is asked again after as long. After three days without a word the clock ends (ours): she is past what it
//! watches, and her page still says that it was never noted.
//!
//! The afterbirth is asked for three days, then no more: a book full of old lambings must not shout.

use super::{Completion, Duty, EweTask, counted, minutes};
use crate::book::{Awaited, Event};
use crate::flock::{Ewe, Litter, Saw};
use crate::settings::LaborLimits;
use crate::units::{Moment, TimeDelta};

/// Told from an hour before it is asked for, and for three days (ours).
const AHEAD: TimeDelta = TimeDelta::hours(1);
const GONE: TimeDelta = TimeDelta::hours(72);

pub(super) fn duty(ewe: &Ewe, litter: &Litter, now: Moment, limits: LaborLimits) -> Option<Duty> {
    let since = now.since(litter.latest);
    let mut answers = ewe.seen.iter().filter(|seen| seen.at >= litter.began);
    if since > GONE || answers.any(|seen| seen.what == Saw::Afterbirth) {
        return None;
    }
    let awaited = |wanted: Awaited| {
        let seen = ewe.seen.iter().filter(|seen| seen.at >= litter.latest);
        seen.filter(|seen| seen.what == Saw::Awaited(wanted)).map(|seen| seen.at).max()
    };
    let (hangs, bright) = (awaited(Awaited::Hanging), awaited(Awaited::NotSeenBright));
    let hanging = hangs.is_some_and(|hangs| bright.is_none_or(|bright| hangs >= bright));
    let (ask, late) = (minutes(limits.afterbirth_ask_minutes), minutes(limits.afterbirth_late_minutes));
    let vet_from = if hanging { late } else { minutes(limits.afterbirth_vet_minutes) };
    let task = EweTask::Afterbirth { vet: since >= vet_from, hanging };
    let passed = Completion::Note(Event::AfterbirthPassed { ewe: ewe.id });
    let mut duty = counted(ewe, task, litter.latest, ask, late, passed);
    if let Some(bright) = bright.filter(|_| !hanging) {
        duty.due = duty.due.max(bright + ask);
        duty.late = duty.late.max(bright + late);
    }
    duty.from = (duty.due - AHEAD).min(hangs.filter(|_| hanging).unwrap_or(duty.due));
    Some(duty)
}
