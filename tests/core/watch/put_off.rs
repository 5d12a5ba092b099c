//! A duty may wait, to its red limit; once that is past a quarter of an hour.

use yeanling_core::book::{Animal, DutyKind, Event, Sign};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{EweTask, Rejection, State, Task, validate};

use super::find;
use crate::scribe::{MS, Scribe, at};

fn look(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Look))
}

/// A restless ewe: her look is due at minute 60 and late at 90.
fn restless() -> (Scribe, Animal) {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-1000), "14");
    scribe.note(at(0), Event::SignSeen { ewe, sign: Sign::Restless });
    (scribe, Animal::Ewe(ewe))
}

fn put_off(animal: Animal, until: Moment) -> Event {
    Event::PutOff { animal, duty: DutyKind::Look, until }
}

#[track_caller]
fn check(scribe: &Scribe, now: Moment, event: &Event, expected: Result<(), Rejection>) {
    assert_eq!(validate(&scribe.flock(), &scribe.book, event, now, now), expected);
}

#[test]
fn a_duty_waits_until_its_red_limit_at_most() {
    let (scribe, ewe) = restless();
    check(&scribe, at(65), &put_off(ewe, at(90)), Ok(()));
    let too_long = Rejection::PutOffTooLong { until: at(90) + MS, most: at(90) };
    check(&scribe, at(65), &put_off(ewe, at(90) + MS), Err(too_long));
}

#[test]
fn what_is_late_waits_a_quarter_of_an_hour() {
    // Ours.
    let (scribe, ewe) = restless();
    check(&scribe, at(100), &put_off(ewe, at(115)), Ok(()));
    let too_long = Rejection::PutOffTooLong { until: at(116), most: at(115) };
    check(&scribe, at(100), &put_off(ewe, at(116)), Err(too_long));
}

#[test]
fn what_is_not_due_cannot_wait() {
    let (scribe, ewe) = restless();
    let feed = Event::PutOff { animal: ewe, duty: DutyKind::Feed, until: at(70) };
    check(&scribe, at(65), &feed, Err(Rejection::NoSuchDuty));
}

#[test]
fn a_duty_that_waits_is_still_there_and_comes_back_as_what_it_is() {
    let (mut scribe, ewe) = restless();
    scribe.note(at(65), put_off(ewe, at(90)));
    let state = |scribe: &Scribe, minute| find(scribe, at(minute), look).expect("there").state(at(minute));
    assert_eq!(state(&scribe, 66), State::Coming);
    assert_eq!(state(&scribe, 89), State::Coming);
    assert_eq!(state(&scribe, 90), State::Late);
    assert_eq!(find(&scribe, at(66), look).map(|duty| duty.comes()), Some(at(90)));
    scribe.note(at(80), Event::LookedAt { animal: ewe });
    let next = find(&scribe, at(100), look).expect("there");
    assert_eq!((next.comes(), next.state(at(140))), (at(140), State::Now));
    assert_eq!(next.late.since(next.due), TimeDelta::minutes(30));
}
