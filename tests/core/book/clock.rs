//! The clock of the book: what was noted far ahead of a phone's own clock pulls nothing along with it.

use proptest::prelude::*;
use uuid::Uuid;
use yeanling_core::book::{DeviceId, Entry, Event, standing};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Moment, System, TimeDelta};

use super::arbitrary::{config, entries};
use crate::scribe::{Scribe, at};

/// A day on which nobody of this flock lives.
fn far() -> Moment {
    "2099-03-14T03:00:00.000-05:00".parse().expect("a moment")
}

/// A phone that has just taken in what another noted while its clock stood in 2099: a ewe.
fn after_a_file_from_2099() -> (Scribe, Entry) {
    let mut other = Scribe::new(2);
    let came = other.ewe(far(), "99");
    let mut scribe = Scribe::new(1);
    scribe.ewe(at(0), "14");
    scribe.meet(&other);
    let entry = other.book.entries().next().expect("one").clone();
    assert_eq!(entry.id.as_ewe(), came);
    (scribe, entry)
}

#[test]
fn what_was_noted_in_2099_does_not_pull_the_clock_along() {
    let (mut scribe, _) = after_a_file_from_2099();
    assert_eq!(scribe.book.next_noted(at(5)), at(5));
    let id = scribe.note(at(6), Event::EweCame { tag: None });
    assert_eq!(scribe.book.entry(id).map(|entry| entry.noted), Some(at(6)));
    assert_eq!(scribe.book.next_noted(at(6)), at(6) + TimeDelta::milliseconds(1));
}

#[test]
fn what_was_noted_in_2099_can_be_taken_back_restored_and_changed() {
    let (mut scribe, from_2099) = after_a_file_from_2099();
    let reads = |scribe: &Scribe| {
        let line = standing(&scribe.book).into_iter().find(|line| line.entry.id == from_2099.id);
        line.map(|line| (line.event.clone(), line.struck)).expect("it stands")
    };
    scribe.strike(at(5), from_2099.id);
    assert!(reads(&scribe).1, "it was taken back");
    scribe.restore(at(6), from_2099.id);
    assert!(!reads(&scribe).1, "it was brought back");
    let event = Event::EweCame { tag: Some("9".to_owned()) };
    scribe.amend(at(7), from_2099.id, event.clone(), at(-5));
    assert_eq!(reads(&scribe), (event, false));
    assert_eq!(scribe.book.next_noted(at(8)), at(8), "corrections to it pull nothing along either");
}

#[test]
fn the_choice_made_last_stands_though_one_from_2099_is_here() {
    let mut other = Scribe::new(2);
    other.note(far(), Event::Chose(Choice::System(System::Us)));
    let mut scribe = Scribe::new(1);
    scribe.meet(&other);
    assert_eq!(scribe.flock().settings.system, System::Us);
    scribe.note(at(5), Event::Chose(Choice::System(System::Metric)));
    assert_eq!(scribe.flock().settings.system, System::Metric);
}

#[test]
fn a_phone_set_back_by_years_still_corrects_what_it_noted_before() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.note(at(0), Event::EweCame { tag: None });
    scribe.strike("1970-01-01T00:00:00.000+00:00".parse().expect("a moment"), ewe);
    assert!(scribe.flock().ewes.is_empty());
}

#[track_caller]
fn check(scribe: &Scribe, now: Moment, expected: Option<Moment>) {
    let device = DeviceId::from_uuid(Uuid::from_u128(1));
    assert_eq!(scribe.book.doubts(now, device), expected, "at {now}");
}

#[test]
fn a_clock_is_doubted_for_what_lies_near_ahead() {
    let mut scribe = Scribe::new(1);
    check(&scribe, at(0), None);
    scribe.ewe(at(90), "14");
    check(&scribe, at(90), None);
    check(&scribe, at(88), None);
    check(&scribe, at(87), Some(at(90)));
    check(&scribe, at(90 - 2 * 24 * 60), Some(at(90)));
}

#[test]
fn a_file_from_2099_makes_no_clock_doubtful() {
    let (mut scribe, _) = after_a_file_from_2099();
    check(&scribe, at(5), None);
    scribe.ewe(at(90), "15");
    check(&scribe, at(5), Some(at(90)));
    check(&scribe, at(95), None);
}

#[test]
fn a_phone_set_back_by_years_is_doubted_and_one_that_was_ahead_for_an_hour_is_not() {
    let long_ago: Moment = "2020-01-01T00:00:00.000+00:00".parse().expect("a moment");
    let mut scribe = Scribe::new(1);
    for minutes in [0, 5, 9] {
        scribe.ewe(at(minutes), "14");
    }
    check(&scribe, long_ago, Some(at(5)));
    scribe.ewe(far(), "15");
    check(&scribe, at(30), None);
    check(&scribe, long_ago, Some(at(5)));
}

#[test]
fn an_entry_from_ahead_is_known_by_when_it_was_noted_and_by_when_it_happened() {
    let entry = |noted: Moment, when: Moment, event: Event| {
        let mut scribe = Scribe::new(1);
        let id = scribe.note_when(when, noted, event);
        scribe.book.entry(id).expect("it was noted").clone()
    };
    let ewe = || Event::EweCame { tag: None };
    assert_eq!(entry(at(0), at(-5), ewe()).ahead_of(at(-2)), None);
    assert_eq!(entry(at(0), at(-5), ewe()).ahead_of(at(-3)), Some(at(0)));
    assert_eq!(entry(at(0), far(), ewe()).ahead_of(at(0)), Some(far()));
    let target = after_a_file_from_2099().1.id;
    let moved = Event::Amended { entry: target, event: Box::new(ewe()), at: far() };
    assert_eq!(entry(at(0), at(0), moved).ahead_of(at(0)), Some(far()));
}

proptest! {
    #![proptest_config(config(200))]

    #[test]
    fn what_is_noted_now_is_never_dated_days_ahead(all in entries(), minutes in -5_000_000..5_000_000_i64) {
        let mut scribe = Scribe::new(9);
        scribe.book.union(all);
        let now = at(minutes);
        let noted = scribe.book.next_noted(now);
        prop_assert!(noted >= now && noted.since(now) <= TimeDelta::days(3), "{noted} at {now}");
    }
}
