//! The order of the watch: late before now before coming, and what a life hangs on first.

use yeanling_core::book::{Animal, Event};
use yeanling_core::units::Moment;
use yeanling_core::watch::{State, Task};

use super::all;
use crate::scribe::{Scribe, at};

#[track_caller]
fn check(scribe: &Scribe, now: Moment, expected: &[Task]) {
    let tasks: Vec<Task> = all(scribe, now).iter().map(|duty| duty.task).collect();
    assert_eq!(tasks, expected);
}

const FIRST_MILK: Task = Task::FirstMilk { last_call: false, hold: false, check: false };
const FIRST_MILK_LATE: Task = Task::FirstMilk { last_call: false, hold: false, check: true };

#[test]
fn a_newborn_left_alone_is_watched_in_the_order_of_what_matters() {
    let mut scribe = Scribe::new(1);
    scribe.born(at(0), None);
    // The navel now; the rest as it comes, at 5, 30, 30 and 60 minutes.
    check(
        &scribe,
        at(0),
        &[Task::DipNavel, Task::ScoreVigor, Task::GetUp, Task::Weigh { for_feeds: false }, FIRST_MILK],
    );
    check(
        &scribe,
        at(10),
        &[Task::DipNavel, Task::ScoreVigor, Task::GetUp, Task::Weigh { for_feeds: false }, FIRST_MILK],
    );
    // At half an hour the navel is late, and getting up goes before the score.
    check(
        &scribe,
        at(30),
        &[Task::DipNavel, Task::GetUp, Task::ScoreVigor, Task::Weigh { for_feeds: false }, FIRST_MILK],
    );
    // At an hour getting up is late and goes before the navel.
    check(&scribe, at(60), &[Task::GetUp, Task::DipNavel, FIRST_MILK, Task::Weigh { for_feeds: false }]);
    // At two hours milk is late, and first; a thermometer comes before it.
    check(
        &scribe,
        at(120),
        &[FIRST_MILK_LATE, Task::GetUp, Task::DipNavel, Task::Weigh { for_feeds: false }],
    );
}

#[test]
fn late_comes_before_now_and_now_before_coming() {
    let mut scribe = Scribe::new(1);
    for minutes in [0, 50, 90, 119] {
        let lamb = scribe.born(at(minutes), None);
        scribe.weighed(at(minutes), lamb, 4.0);
        scribe.note(at(minutes), Event::NavelDipped { lamb });
    }
    for now in [119, 120, 130, 160, 200, 420, 600, 1400, 1500] {
        let states: Vec<State> = all(&scribe, at(now)).iter().map(|duty| duty.state(at(now))).collect();
        assert!(states.is_sorted_by(|one, next| one >= next), "{now}: {states:?}");
        assert!(!states.is_empty(), "{now}");
    }
}

#[test]
fn of_two_lambs_with_the_same_duty_the_one_due_first_comes_first() {
    let mut scribe = Scribe::new(1);
    let (second, first) = (scribe.born(at(10), None), scribe.born(at(0), None));
    let milk: Vec<Animal> =
        all(&scribe, at(90)).iter().filter(|duty| duty.task == FIRST_MILK).map(|duty| duty.subject).collect();
    assert_eq!(milk, [Animal::Lamb(first), Animal::Lamb(second)]);
}

#[test]
fn what_a_life_hangs_on_comes_before_what_was_due_earlier() {
    let mut scribe = Scribe::new(1);
    let older = scribe.born(at(-30), None);
    scribe.sucked(at(-10), older);
    let younger = scribe.born(at(0), None);
    let late: Vec<(Animal, Task)> = all(&scribe, at(125))
        .iter()
        .filter(|duty| duty.state(at(125)) == State::Late)
        .map(|duty| (duty.subject, duty.task))
        .collect();
    let expected = [
        (Animal::Lamb(younger), FIRST_MILK_LATE),
        (Animal::Lamb(younger), Task::GetUp),
        (Animal::Lamb(older), Task::DipNavel),
        (Animal::Lamb(younger), Task::DipNavel),
    ];
    assert_eq!(late, expected);
}

#[test]
fn the_weights_of_tasks_put_life_first() {
    let volume = crate::scribe::ml(1.0);
    let ranks = [
        (Task::FirstMilk { last_call: true, hold: false, check: false }, 0),
        (Task::Feed { volume: None, hold: false, weigh: false }, 0),
        (Task::DayTotal { given: volume, want: volume, hold: false }, 1),
        (Task::GetUp, 1),
        (Task::DipNavel, 2),
        (Task::DipNavelAgain, 3),
        (Task::ScoreVigor, 4),
        (Task::Weigh { for_feeds: false }, 5),
    ];
    for (task, rank) in ranks {
        assert_eq!(task.weight(), rank, "{task:?}");
    }
}
