//! The order of the watch: late before now before coming, and what a life hangs on first.

use yeanling_core::book::{Animal, Event};
use yeanling_core::units::Moment;
use yeanling_core::watch::{BeforeMilk, Duty, LambTask, State, Task};

use super::{all, lamb_task};
use crate::scribe::{Scribe, at};

#[track_caller]
fn check(scribe: &Scribe, now: Moment, expected: &[LambTask]) {
    let tasks: Vec<LambTask> = all(scribe, now).iter().map(lamb_task).collect();
    assert_eq!(tasks, expected);
}

const FIRST_MILK: LambTask = LambTask::FirstMilk { last_call: false, before: None };
const FIRST_MILK_LATE: LambTask =
    LambTask::FirstMilk { last_call: false, before: Some(BeforeMilk::Temperature) };

#[test]
fn a_newborn_left_alone_is_watched_in_the_order_of_what_matters() {
    let mut scribe = Scribe::new(1);
    scribe.born(at(0), None);
    // The navel now; the rest as it comes, at 5, 30, 30 and 60 minutes.
    check(
        &scribe,
        at(0),
        &[
            LambTask::DipNavel,
            LambTask::ScoreVigor,
            LambTask::GetUp,
            LambTask::Weigh { for_feeds: false },
            FIRST_MILK,
        ],
    );
    check(
        &scribe,
        at(10),
        &[
            LambTask::DipNavel,
            LambTask::ScoreVigor,
            LambTask::GetUp,
            LambTask::Weigh { for_feeds: false },
            FIRST_MILK,
        ],
    );
    // At half an hour the navel is late, and getting up goes before the score.
    check(
        &scribe,
        at(30),
        &[
            LambTask::DipNavel,
            LambTask::GetUp,
            LambTask::ScoreVigor,
            LambTask::Weigh { for_feeds: false },
            FIRST_MILK,
        ],
    );
    // At an hour getting up is late and goes before the navel.
    check(
        &scribe,
        at(60),
        &[LambTask::GetUp, LambTask::DipNavel, FIRST_MILK, LambTask::Weigh { for_feeds: false }],
    );
    // At two hours milk is late, and first; a thermometer comes before it.
    check(
        &scribe,
        at(120),
        &[FIRST_MILK_LATE, LambTask::GetUp, LambTask::DipNavel, LambTask::Weigh { for_feeds: false }],
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
    let duties = all(&scribe, at(90));
    let milk = duties.iter().filter(|duty| lamb_task(duty) == FIRST_MILK);
    let milk: Vec<Animal> = milk.map(Duty::subject).collect();
    assert_eq!(milk, [Animal::Lamb(first), Animal::Lamb(second)]);
}

#[test]
fn what_a_life_hangs_on_comes_before_what_was_due_earlier() {
    let mut scribe = Scribe::new(1);
    let older = scribe.born(at(-30), None);
    scribe.sucked(at(-10), older);
    let younger = scribe.born(at(0), None);
    let late: Vec<Task> = all(&scribe, at(125))
        .iter()
        .filter(|duty| duty.state(at(125)) == State::Late)
        .map(|duty| duty.task)
        .collect();
    let expected = [
        Task::Lamb(younger, FIRST_MILK_LATE),
        Task::Lamb(younger, LambTask::GetUp),
        Task::Lamb(older, LambTask::DipNavel),
        Task::Lamb(younger, LambTask::DipNavel),
    ];
    assert_eq!(late, expected);
}

#[test]
fn the_weights_of_tasks_put_life_first() {
    let volume = crate::scribe::ml(1.0);
    let ranks = [
        (LambTask::FirstMilk { last_call: true, before: None }, 0),
        (LambTask::Feed { volume: None, before: None }, 0),
        (LambTask::DayTotal { given: volume, target: volume, before: None }, 1),
        (LambTask::GetUp, 1),
        (LambTask::DipNavel, 2),
        (LambTask::DipNavelAgain, 3),
        (LambTask::ScoreVigor, 4),
        (LambTask::Weigh { for_feeds: false }, 5),
    ];
    for (task, rank) in ranks {
        assert_eq!(task.weight(), rank, "{task:?}");
    }
}
