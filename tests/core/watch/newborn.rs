//! The duties of a newborn: when each is due, when late, and what ends it.

use yeanling_core::book::{Animal, Event, LambId};
use yeanling_core::settings::{Choice, Limits};
use yeanling_core::units::Moment;
use yeanling_core::watch::{BeforeMilk, Completion, LambTask, State, Task};

use super::{all, check, dip, dip_again, find, first_milk, get_up, lamb_task, none, score, weigh};
use crate::scribe::{MS, Scribe, at, birth, hour, scored};

fn with_lamb() -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    (scribe, lamb)
}

/// Fails unless the duty is there at one instant and gone a millisecond later.
#[track_caller]
fn ends_after(scribe: &Scribe, last: Moment, kind: fn(&Task) -> bool) {
    assert!(find(scribe, last, kind).is_some(), "still there at {last}");
    none(scribe, last + MS, kind);
}

/// Fails unless one tap notes this.
#[track_caller]
fn one_tap(scribe: &Scribe, now: Moment, kind: fn(&Task) -> bool, event: Event) {
    assert_eq!(find(scribe, now, kind).map(|duty| duty.completion), Some(Completion::Note(event)));
}

#[test]
fn a_lamb_that_is_not_yet_born_asks_for_nothing() {
    let (scribe, _) = with_lamb();
    assert_eq!(all(&scribe, at(0) - MS), vec![]);
    let mut at_birth: Vec<_> = all(&scribe, at(0)).iter().map(|duty| (duty.from, duty.subject())).collect();
    at_birth.dedup();
    assert_eq!(at_birth.len(), 1, "all of one lamb, in sight from its birth");
    assert_eq!(all(&scribe, at(0)).len(), 5);
}

#[test]
fn it_should_be_up_in_half_an_hour() {
    let (mut scribe, lamb) = with_lamb();
    check(&scribe, at(0), get_up, at(30), at(60));
    one_tap(&scribe, at(0), get_up, Event::Stood { lamb });
    ends_after(&scribe, hour(24), get_up);
    scribe.fed(at(20), lamb, 60.0);
    assert!(find(&scribe, at(40), get_up).is_some(), "a bottle does not make it stand");
    scribe.note(at(45), Event::Stood { lamb });
    none(&scribe, at(45), get_up);
}

#[test]
fn a_lamb_that_sucked_has_stood() {
    let (mut scribe, lamb) = with_lamb();
    scribe.sucked(at(25), lamb);
    none(&scribe, at(25), get_up);
}

#[test]
fn first_milk_is_due_at_an_hour_and_late_at_two() {
    let (scribe, lamb) = with_lamb();
    check(&scribe, at(0), first_milk, at(60), at(120));
    one_tap(&scribe, at(0), first_milk, Event::Sucked { lamb });
    ends_after(&scribe, hour(48), first_milk);
}

#[test]
fn the_last_call_for_first_milk_comes_at_six_hours() {
    let (scribe, _) = with_lamb();
    let last_call = |now| find(&scribe, now, first_milk).map(|duty| lamb_task(&duty));
    assert_eq!(
        last_call(hour(6) - MS),
        Some(LambTask::FirstMilk { last_call: false, before: Some(BeforeMilk::Temperature) })
    );
    assert_eq!(
        last_call(hour(6)),
        Some(LambTask::FirstMilk { last_call: true, before: Some(BeforeMilk::Temperature) })
    );
    assert_eq!(
        last_call(hour(30)),
        Some(LambTask::FirstMilk { last_call: true, before: Some(BeforeMilk::Temperature) })
    );
}

#[test]
fn any_milk_is_first_milk() {
    let (mut scribe, lamb) = with_lamb();
    let fed = scribe.fed(at(50), lamb, 60.0);
    none(&scribe, at(50), first_milk);
    scribe.strike(at(51), fed);
    assert!(find(&scribe, at(51), first_milk).is_some());
    scribe.sucked(at(55), lamb);
    none(&scribe, at(55), first_milk);
}

#[test]
fn the_navel_is_dipped_at_once_and_six_hours_after() {
    let (mut scribe, lamb) = with_lamb();
    check(&scribe, at(0), dip, at(0), at(30));
    one_tap(&scribe, at(0), dip, Event::NavelDipped { lamb });
    ends_after(&scribe, hour(24), dip);
    none(&scribe, at(0), dip_again);
    let dipped = scribe.note(at(10), Event::NavelDipped { lamb });
    none(&scribe, at(10), dip);
    check(&scribe, at(10), dip_again, at(370), at(490));
    one_tap(&scribe, at(10), dip_again, Event::NavelDipped { lamb });
    ends_after(&scribe, hour(24), dip_again);
    scribe.note(at(370), Event::NavelDipped { lamb });
    none(&scribe, at(370), dip_again);
    none(&scribe, at(370), dip);
    scribe.strike(at(371), dipped);
    check(&scribe, at(371), dip_again, at(370 + 360), at(370 + 480));
}

#[test]
fn it_is_weighed_in_its_first_day() {
    let (mut scribe, lamb) = with_lamb();
    check(&scribe, at(0), weigh, at(30), hour(6));
    assert_eq!(find(&scribe, at(0), weigh).map(|duty| duty.completion), Some(Completion::Open));
    ends_after(&scribe, hour(24) - MS, weigh);
    let weighed = scribe.weighed(at(40), lamb, 4.0);
    none(&scribe, at(40), weigh);
    scribe.strike(at(41), weighed);
    assert!(find(&scribe, at(41), weigh).is_some());
}

#[test]
fn its_vigor_is_scored_in_the_first_hour_or_not_at_all() {
    let (mut scribe, lamb) = with_lamb();
    check(&scribe, at(0), score, at(5), at(60));
    assert_eq!(find(&scribe, at(0), score).map(|duty| duty.completion), Some(Completion::Open));
    ends_after(&scribe, hour(1) - MS, score);
    scribe.note(at(6), scored(lamb, 2));
    none(&scribe, at(6), score);
}

#[test]
fn the_farm_has_limits_of_its_own() {
    let (mut scribe, lamb) = with_lamb();
    let limits = Limits {
        up_minutes: 20,
        help_minutes: 45,
        red_minutes: 90,
        last_call_minutes: 240,
        navel_again_minutes: 120,
    };
    scribe.note(at(0), Event::Chose(Choice::Limits(limits)));
    check(&scribe, at(0), get_up, at(20), at(50));
    check(&scribe, at(0), first_milk, at(45), at(90));
    let task = |now| find(&scribe, now, first_milk).map(|duty| lamb_task(&duty));
    assert_eq!(
        task(at(240) - MS),
        Some(LambTask::FirstMilk { last_call: false, before: Some(BeforeMilk::Temperature) })
    );
    assert_eq!(
        task(at(240)),
        Some(LambTask::FirstMilk { last_call: true, before: Some(BeforeMilk::Temperature) })
    );
    scribe.note(at(10), Event::NavelDipped { lamb });
    check(&scribe, at(10), dip_again, at(130), at(250));
}

#[test]
fn the_dead_and_the_born_dead_ask_for_nothing() {
    let (mut scribe, lamb) = with_lamb();
    scribe.born_dead(at(0));
    scribe.fed(at(30), lamb, 60.0);
    assert!(!all(&scribe, at(40)).is_empty());
    let died = scribe.died(at(41), Animal::Lamb(lamb));
    assert_eq!(all(&scribe, at(41)), vec![]);
    scribe.strike(at(42), died);
    assert!(!all(&scribe, at(42)).is_empty());
}

#[test]
fn a_birth_undone_asks_for_nothing() {
    let (mut scribe, lamb) = with_lamb();
    scribe.strike(at(1), lamb.entry());
    assert_eq!(all(&scribe, at(60)), vec![]);
}

/// Fails unless a lamb born at the one instant is due its first milk just at the other, an hour later.
#[track_caller]
fn an_hour_later(born: &str, due: &str) {
    let (born, due): (Moment, Moment) = (born.parse().expect("a moment"), due.parse().expect("a moment"));
    let mut scribe = Scribe::new(1);
    scribe.note(born, birth(None, None));
    let duty = find(&scribe, due, first_milk).expect("it is due");
    assert_eq!((duty.state(due - MS), duty.state(due)), (State::Coming, State::Now));
    assert_eq!(duty.due.as_unix_milliseconds(), due.as_unix_milliseconds());
}

#[test]
fn elapsed_time_stays_right_when_the_clocks_are_changed() {
    an_hour_later("2026-03-29T00:30:00.000+00:00", "2026-03-29T02:30:00.000+01:00");
    an_hour_later("2026-10-25T01:30:00.000+01:00", "2026-10-25T01:30:00.000+00:00");
    an_hour_later("2026-03-08T01:30:00.000-05:00", "2026-03-08T03:30:00.000-04:00");
    an_hour_later("2026-11-01T01:30:00.000-04:00", "2026-11-01T01:30:00.000-05:00");
}
