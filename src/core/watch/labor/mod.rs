//! The duties of a ewe at lambing, one rule a file: from the first restlessness to the afterbirth.
//!
//! Each clock runs by itself. Only good news about what it watches moves one back: progress, a birth, a clean hand that
//! found all well, a lamb put right. A worse find takes over the clocks that ran, with the earliest of their times; a
//! call to the vet ends none of them.
//!
//! A worse find takes over the clocks that ran, with the earliest of their times (`watch/labor/mod.rs`): what was
//! late before a hand found a leg back is late after it, from the moment it was found. Several clocks of a ewe run side by
//! side; of those that are due the gravest is told, and is as late as the others.
//!
//! Labor's clocks begin anew by good news alone: a lamb that shows as it should and comes further, a lamb put right,
//! a hand that found all well; a birth ends them. A look restarts only the hourly look. What was seen before the last
//! birth belongs to that birth. "Another lamb?" ends by itself after a day, where no scan says more and nothing
//! is seen; else it lasts as long as a litter can. "Not lambing" is refused while a lamb shows or was found.

mod afterbirth;
mod hand_check;
mod long_restless;
mod look;
mod neck;
mod next_lamb;
mod progress;
mod put_right;
mod settled;
pub(super) mod udder;

use super::{Completion, Duty, EweTask, Task, vet};
use crate::book::{Event, Found, Part, Presentation};
use crate::flock::{Ewe, Flock, Labor, Litter};
use crate::settings::LaborLimits;
use crate::units::{Moment, TimeDelta};

/// Returns the duties of a ewe: of a labor that goes on, and of what follows the last birth of her litter.
pub(super) fn duties(
    flock: &Flock,
    ewe: &Ewe,
    litter: Option<&Litter>,
    now: Moment,
    limits: LaborLimits,
) -> Vec<Duty> {
    if !ewe.lives() {
        return Vec::new();
    }
    let labor = ewe.labor.as_ref();
    let mut clocks: Vec<Duty> = [
        litter.and_then(|litter| next_lamb::duty(flock, ewe, litter, now, limits)),
        labor.and_then(|labor| long_restless::duty(ewe, labor, limits)),
        labor.and_then(|labor| hand_check::duty(ewe, labor, now, limits)),
        labor.and_then(|labor| progress::duty(ewe, labor, limits)),
    ]
    .into_iter()
    .flatten()
    .collect();
    clocks.splice(0..0, labor.and_then(|labor| neck::duty(ewe, labor, limits)));
    clocks.splice(0..0, labor.and_then(|labor| put_right::duty(ewe, labor, limits)));
    if matches!(
        clocks.first(),
        Some(Duty { task: Task::Ewe(_, EweTask::PutRight { .. } | EweTask::CervixClosed), .. })
    ) {
        let mut worse = clocks.remove(0);
        // What was already due, late or a danger is no less so for what was found, but none of it before it was found.
        let found = worse.from;
        for clock in &clocks {
            worse.due = worse.due.min(clock.due).max(found);
            worse.late = worse.late.min(clock.late).max(found);
            worse.danger = worse.danger.into_iter().chain(clock.danger.map(|at| at.max(found))).min();
        }
        clocks = vec![worse];
    }
    for clock in &mut clocks {
        with_vet(ewe, clock);
    }
    let busy = !clocks.is_empty();
    let looks = [
        labor.and_then(|labor| look::restless(ewe, labor, limits)),
        look::for_the_vet(ewe, litter.map(|litter| litter.latest), busy, now),
    ];
    // Of two looks the earlier stands.
    clocks.extend(looks.into_iter().flatten().min_by_key(|look| (look.late, look.due)));
    the_gravest_first(&mut clocks);
    clocks.extend(litter.and_then(|litter| udder::duty(flock, ewe, litter, now)));
    clocks.extend(litter.and_then(|litter| settled::duty(ewe, litter, now)));
    clocks.extend(litter.and_then(|litter| afterbirth::duty(ewe, litter, now, limits)));
    clocks
}

/// What hangs less on is late beside something graver that is due: then that is as late, so that it is told and not the other.
fn the_gravest_first(duties: &mut [Duty]) {
    let others: Vec<(u8, Moment)> = duties.iter().map(|duty| (duty.task.weight(), duty.late)).collect();
    for duty in duties {
        let lesser = others.iter().filter(|(weight, _)| *weight > duty.task.weight()).map(|(_, late)| *late);
        if let Some(late) = lesser.min() {
            duty.late = duty.late.min(late.max(duty.due));
        }
    }
}

/// What was noted of the vet since the clock began: the call is one tap until it was made; a visit with a plan ends the
/// danger, and the next look is the one that the vet asked for.
fn with_vet(ewe: &Ewe, clock: &mut Duty) {
    let labor = ewe.labor.as_ref();
    let looked = labor.and_then(|labor| labor.looked);
    let Some(called) = vet::called(&ewe.vet, clock.since, looked) else { return };
    let calls = matches!(&clock.completion, Completion::Note(Event::VetCalled { .. }));
    if calls && !called.nobody_reached() {
        clock.completion = Completion::Open;
    }
    let worse = labor.and_then(newest).is_some_and(|newest| newest > called.at);
    if called.vet_saw() && !worse {
        clock.danger = None;
        clock.late = clock.late.max(called.look_again);
    }
    clock.vet = Some(called);
}

/// Returns when the last sign was seen that had not been seen before.
fn newest(labor: &Labor) -> Option<Moment> {
    let part = |(at, part): &(Moment, Part)| {
        let before = labor.parts.iter().any(|(other, same)| same == part && other < at);
        (!before).then_some(*at)
    };
    let check = |(at, found): &(Moment, Found)| {
        let before = labor.checks.iter().any(|(other, same)| same == found && other < at);
        (!before).then_some(*at)
    };
    let seen = [labor.restless, labor.waters, labor.straining];
    let seen = seen.into_iter().flatten().chain(labor.parts.iter().filter_map(part));
    seen.chain(labor.checks.iter().filter_map(check)).max()
}

/// How far a part that shows has come: one foot or two hind feet, two fore feet, feet and nose. A tail or a head alone
/// has come no way at all.
const fn come(part: Part) -> u8 {
    match part {
        Part::Tail | Part::Head => 0,
        Part::OneFoot | Part::HindFeet => 1,
        Part::ForeFeet => 2,
        Part::FeetAndNose => 3,
    }
}

/// Says whether what shows is a lamb that comes as it should.
const fn comes_well(part: Part) -> bool {
    come(part) >= 2
}

/// Returns when what shows first came as far as it has, if it has come any way.
fn advanced(labor: &Labor) -> Option<Moment> {
    let furthest = labor.parts.iter().map(|(_, part)| come(*part)).max().filter(|come| *come > 0)?;
    labor.parts.iter().find(|(_, part)| come(*part) == furthest).map(|(at, _)| *at)
}

/// Returns when what shows first came as far as it has, if the lamb comes as it should.
fn advanced_well(labor: &Labor) -> Option<Moment> {
    advanced(labor).filter(|_| labor.parts.iter().any(|(_, part)| comes_well(*part)))
}

/// Returns when a clean hand last found all well.
fn found_well(labor: &Labor) -> Option<Moment> {
    let well = |found: Found| match found {
        Found::NothingYet | Found::Lamb(Presentation::Normal) => true,
        Found::CervixClosed | Found::Empty | Found::Lamb(_) => false,
    };
    labor.checks.iter().rev().find(|(_, found)| well(*found)).map(|(at, _)| *at)
}

/// Returns the last good news that a hand brought: all found well, or a lamb put right.
fn hand_well(labor: &Labor) -> Option<Moment> {
    found_well(labor).into_iter().chain(labor.put_right.last().copied()).max()
}

/// A duty of this ewe, counted from an instant.
fn counted(
    ewe: &Ewe,
    task: EweTask,
    from: Moment,
    due: TimeDelta,
    late: TimeDelta,
    completion: Completion,
) -> Duty {
    Duty {
        task: Task::Ewe(ewe.id, task),
        since: from,
        from,
        due: from + due,
        late: from + late,
        danger: None,
        vet: None,
        completion,
        put_off: None,
    }
}

fn minutes(minutes: u16) -> TimeDelta {
    TimeDelta::minutes(i64::from(minutes))
}
