//! The next lamb: looked for at half an hour, a clean hand at an hour, until all are said to be born.
//!
//! A bag, straining or restlessness after a birth say that one more may come, and leave this clock as it is; only a lamb
//! that shows as it should, or a hand that found all well, begins it anew. It ends by itself after [`ENDS`], but never
//! while her scan showed more than were born, or while she is seen to go on: then it lasts as long as a litter can.

use super::{Completion, Duty, EweTask, advanced_well, counted, hand_well, minutes};
use crate::book::{Event, Found};
use crate::flock::{Ewe, Flock, Labor, Litter, Saw, Seen};
use crate::settings::LaborLimits;
use crate::units::{Moment, TimeDelta};

/// So long after the last birth it ends by itself, where nothing says that more may come (ours: as long as a lambing counts as
/// going on). Nobody said before that all are born, so it is asked.
const ENDS: TimeDelta = TimeDelta::hours(24);

/// Says whether a scan of this litter saw more lambs than were born.
fn more_were_scanned(flock: &Flock, ewe: &Ewe, litter: &Litter) -> bool {
    flock.scanned_for(ewe.id, litter.latest).is_some_and(|lambs| usize::from(lambs) > litter.lambs.len())
}

pub(super) fn duty(
    flock: &Flock,
    ewe: &Ewe,
    litter: &Litter,
    now: Moment,
    limits: LaborLimits,
) -> Option<Duty> {
    let last = litter.lambs.last()?;
    let empty = |seen: &Seen| seen.at >= litter.latest && seen.what == Saw::Check(Found::Empty);
    if litter.all_said_born() || ewe.seen.iter().any(empty) {
        return None;
    }
    let labor = ewe.labor.as_ref();
    let goes_on = labor.is_some_and(Labor::runs) || more_were_scanned(flock, ewe, litter);
    if !goes_on && now.since(litter.latest) >= ENDS {
        return None;
    }
    let good = labor.and_then(|labor| hand_well(labor).max(advanced_well(labor)));
    let from = good.map_or(litter.latest, |good| good.max(litter.latest));
    let (due, late) = (minutes(limits.next_lamb_minutes), minutes(limits.next_check_minutes));
    let task = EweTask::NextLamb { check: now.since(from) >= late };
    let all_born = Completion::Note(Event::AllBorn { lamb: *last });
    Some(counted(ewe, task, from, due, late, all_born))
}
