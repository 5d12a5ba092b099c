//! The watch by its public face: what is due, and what may be noted.

mod allow;
mod bottle;
mod by_night;
mod care;
mod choices;
mod danger;
mod labor;
mod laws;
mod newborn;
mod order;
mod pens;
mod put_off;
mod ring;
mod round;
mod weaning;
mod worse;

use yeanling_core::units::Moment;
use yeanling_core::watch::{Duty, State, Task, duties};

use crate::scribe::{MS, Scribe};

fn all(scribe: &Scribe, now: Moment) -> Vec<Duty> {
    let flock = scribe.flock();
    duties(&flock, now, &flock.practice)
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

fn first_milk(task: &Task) -> bool {
    matches!(task, Task::FirstMilk { .. })
}

fn feed(task: &Task) -> bool {
    matches!(task, Task::Feed { .. })
}

fn day_total(task: &Task) -> bool {
    matches!(task, Task::DayTotal { .. })
}

fn get_up(task: &Task) -> bool {
    matches!(task, Task::GetUp)
}

fn dip(task: &Task) -> bool {
    matches!(task, Task::DipNavel)
}

fn dip_again(task: &Task) -> bool {
    matches!(task, Task::DipNavelAgain)
}

fn weigh(task: &Task) -> bool {
    matches!(task, Task::Weigh { .. })
}

fn score(task: &Task) -> bool {
    matches!(task, Task::ScoreVigor)
}
