//! The next lamb: looked for at half an hour, a clean hand at an hour, until all are said to be born.

use super::{Discharge, Duty, Task, counted, minutes};
use crate::book::{Event, Found};
use crate::flock::{Ewe, Labor, Litter, Saw, Seen};
use crate::practice::LaborLimits;
use crate::units::Moment;

pub(super) fn duty(ewe: &Ewe, litter: &Litter, now: Moment, limits: LaborLimits) -> Option<Duty> {
    let last = litter.lambs.last().filter(|_| litter.goes_on(now))?;
    // Waters, parts or a hand after the last birth run on the clocks of the labor itself.
    let labor = ewe.labor.as_ref().is_some_and(Labor::runs);
    let empty = |seen: &Seen| seen.at >= litter.latest && seen.what == Saw::Check(Found::Empty);
    if labor || ewe.seen.iter().any(empty) {
        return None;
    }
    let (due, late) = (minutes(limits.next_lamb_minutes), minutes(limits.next_check_minutes));
    let task = Task::NextLamb { check: now.since(litter.latest) >= late };
    let all_born = Discharge::Note(Event::AllBorn { lamb: *last });
    Some(counted(ewe, task, litter.latest, due, late, all_born))
}
