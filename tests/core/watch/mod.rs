//! The watch by its public face: what is due, and what may be noted.

mod after_lambing;
mod before_milk;
mod bottle;
mod by_night;
mod care;
mod choices;
mod danger;
mod first_night;
mod illness;
mod labor;
mod laws;
mod newborn;
mod order;
mod pens;
mod put_off;
mod ring;
mod round;
mod spread;
mod validate;
mod weaning;
mod worse;

use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, EweTask, LambTask, State, Task, duties};

use crate::scribe::{MS, Scribe};

fn all(scribe: &Scribe, now: Moment) -> Vec<Duty> {
    let flock = scribe.flock();
    duties(&flock, now, &flock.settings)
}

/// Returns the duty of this kind at this instant, if there is one.
#[track_caller]
fn find(scribe: &Scribe, now: Moment, kind: fn(&Task) -> bool) -> Option<Duty> {
    let mut found: Vec<Duty> = all(scribe, now).into_iter().filter(|duty| kind(&duty.task)).collect();
    assert!(found.len() < 2, "twice: {found:?}");
    found.pop()
}

/// Fails unless there is such a duty, due and late at these instants and not a millisecond before.
#[track_caller]
fn check(scribe: &Scribe, now: Moment, kind: fn(&Task) -> bool, due: Moment, late: Moment) {
    let duty = find(scribe, now, kind).expect("it is due or coming");
    assert_eq!((duty.due, duty.late), (due, late));
    assert_eq!(duty.state(due - MS), State::Coming);
    assert_eq!((duty.state(due), duty.state(late - MS)), (State::Now, State::Now));
    assert_eq!(duty.state(late), State::Late);
}

/// Fails unless there is no such duty.
#[track_caller]
fn none(scribe: &Scribe, now: Moment, kind: fn(&Task) -> bool) {
    assert_eq!(find(scribe, now, kind), None);
}

/// Returns what a duty asks for a ewe.
#[track_caller]
fn ewe_task(duty: &Duty) -> EweTask {
    match duty.task {
        Task::Ewe(_, task) => task,
        Task::Lamb(..) => panic!("a lamb's: {duty:?}"),
    }
}

/// Returns what a duty asks for a lamb.
#[track_caller]
fn lamb_task(duty: &Duty) -> LambTask {
    match duty.task {
        Task::Lamb(_, task) => task,
        Task::Ewe(..) => panic!("a ewe's: {duty:?}"),
    }
}

fn first_milk(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::FirstMilk { .. }))
}

fn feed(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::Feed { .. }))
}

fn day_total(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::DayTotal { .. }))
}

fn get_up(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::GetUp))
}

fn dip(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::DipNavel))
}

fn dip_again(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::DipNavelAgain))
}

fn weigh(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::Weigh { .. }))
}

fn score(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::ScoreVigor))
}
