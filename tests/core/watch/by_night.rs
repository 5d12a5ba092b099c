//! A worse sign, one call more, or an hour that strikes makes nothing later, milder or larger: each found in a night.

use yeanling_core::book::{
    Animal, Belly, Care, Event, EweId, Found, LambId, Part, Presentation, Sign, VetSaid,
};
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::{EweTask, LambTask, State, Task};

use super::{feed, find, none};
use crate::scribe::{Scribe, at, hour};

fn with_ewe() -> (Scribe, EweId) {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-10_000), "14");
    (scribe, ewe)
}

fn with_lamb(kilograms: f64) -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.weighed(at(5), lamb, kilograms);
    (scribe, lamb)
}

fn look(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Look) | Task::Lamb(_, LambTask::Look))
}

fn hand_check(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::HandCheck { .. }))
}

fn put_right(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::PutRight { .. }))
}

fn neck(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::CervixClosed))
}

fn next_lamb(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::NextLamb { .. }))
}

fn hollow(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::Hollow { .. }))
}

#[track_caller]
fn state(scribe: &Scribe, minute: i64, kind: fn(&Task) -> bool) -> Option<State> {
    find(scribe, at(minute), kind).map(|duty| duty.state(at(minute)))
}

#[test]
fn one_call_more_makes_no_look_later() {
    let (mut scribe, ewe) = with_ewe();
    for minute in [0, 39] {
        scribe.note(at(minute), Event::VetCalled { animal: Animal::Ewe(ewe) });
    }
    assert_eq!(state(&scribe, 40, look), Some(State::Late));
    let (mut scribe, lamb) = with_lamb(4.0);
    for minute in [0, 39] {
        scribe.note(at(minute), Event::VetCalled { animal: Animal::Lamb(lamb) });
    }
    assert_eq!(state(&scribe, 40, look), Some(State::Late));
}

#[test]
fn a_look_that_was_asked_for_stays_until_she_is_looked_at_whatever_more_is_seen() {
    let (mut scribe, ewe) = with_ewe();
    let animal = Animal::Ewe(ewe);
    scribe.note(at(0), Event::SignSeen { ewe, sign: Sign::Restless });
    scribe.note(at(89), Event::WaterBagSeen { ewe });
    assert_eq!(state(&scribe, 90, look), Some(State::Late));
    // A call asks for a look of its own, and takes none away.
    scribe.note(at(91), Event::VetCalled { animal });
    assert_eq!(state(&scribe, 92, look), Some(State::Late));
    scribe.note(at(93), Event::LookedAt { animal });
    assert_eq!(find(&scribe, at(94), look).map(|duty| duty.due), Some(at(113)), "the vet's");
    // Called before anything showed: that it then shows takes no look away.
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::VetCalled { animal: Animal::Ewe(ewe) });
    scribe.note(at(2), Event::WaterBagSeen { ewe });
    assert_eq!(state(&scribe, 40, look), Some(State::Late));
}

#[test]
fn waters_after_a_hand_that_found_all_well_begin_no_later_clock() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::HandChecked { ewe, found: Found::NothingYet });
    scribe.note(at(29), Event::WaterBagSeen { ewe });
    assert_eq!(state(&scribe, 30, hand_check), Some(State::Now));
}

#[test]
fn what_shows_or_was_found_does_not_end_by_being_said_not_to_be() {
    for event in [
        |ewe| Event::PartShowing { ewe, part: Part::Head },
        |ewe| Event::HandChecked { ewe, found: Found::Lamb(Presentation::OneLegBack) },
        |ewe| Event::HelpBegun { ewe },
    ] {
        let (mut scribe, ewe) = with_ewe();
        scribe.note(at(0), event(ewe));
        scribe.note(at(60), Event::NotLambing { ewe });
        assert_eq!(state(&scribe, 61, put_right), Some(State::Danger));
    }
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::HandChecked { ewe, found: Found::NothingYet });
    scribe.note(at(1), Event::NotLambing { ewe });
    none(&scribe, at(40), hand_check);
}

#[test]
fn a_lamb_that_lies_wrong_behind_a_tight_neck_is_no_later_a_danger() {
    for event in [
        |ewe| Event::PartShowing { ewe, part: Part::Head },
        |ewe| Event::HandChecked { ewe, found: Found::Lamb(Presentation::HeadBack) },
    ] {
        let (mut scribe, ewe) = with_ewe();
        scribe.note(at(0), Event::HandChecked { ewe, found: Found::CervixClosed });
        scribe.note(at(9), event(ewe));
        none(&scribe, at(10), neck);
        assert_eq!(state(&scribe, 10, put_right), Some(State::Danger));
    }
}

#[test]
fn the_vets_plan_makes_nothing_due_that_a_call_would_put_back() {
    let (mut scribe, ewe) = with_ewe();
    scribe.born(at(0), Some(ewe));
    let look_again = at(50);
    let animal = Animal::Ewe(ewe);
    scribe.note(at(1), Event::Care(Care::VetSaid { animal, said: VetSaid::Saw { plan: None, look_again } }));
    assert_eq!(state(&scribe, 2, next_lamb), Some(State::Coming));
    scribe.note(at(3), Event::VetCalled { animal });
    assert_eq!(state(&scribe, 4, next_lamb), Some(State::Coming));
}

#[test]
fn a_lamb_put_right_after_a_birth_begins_the_clock_at_once_and_not_with_the_next_sign() {
    let (mut scribe, ewe) = with_ewe();
    scribe.born(at(0), Some(ewe));
    scribe.note(at(10), Event::Care(Care::PutRight { ewe }));
    assert_eq!(find(&scribe, at(11), next_lamb).map(|duty| duty.late), Some(at(70)));
    scribe.note(at(20), Event::WaterBagSeen { ewe });
    assert_eq!(find(&scribe, at(21), next_lamb).map(|duty| duty.late), Some(at(70)));
}

#[test]
fn a_late_feed_stays_late_when_the_day_turns() {
    // Fed 55 ml at 20½ hours, late from 21 h 50: the table of the second day asks for less, and no later.
    let (mut scribe, lamb) = with_lamb(2.7);
    scribe.fed(at(20 * 60 + 30), lamb, 55.0);
    let late = |scribe: &Scribe, now| find(scribe, now, feed).map(|duty| duty.state(now));
    assert_eq!(late(&scribe, hour(24) - TimeDelta::minutes(1)), Some(State::Late));
    assert_eq!(late(&scribe, hour(24)), Some(State::Late));
}

#[test]
fn a_hollow_belly_is_no_milder_when_it_is_hollow_again_and_does_not_go_with_the_days() {
    let (mut scribe, lamb) = with_lamb(4.0);
    scribe.note(at(60), Event::BellyFelt { lamb, belly: Belly::Hollow });
    scribe.note(at(130), Event::BellyFelt { lamb, belly: Belly::Hollow });
    assert_eq!(state(&scribe, 131, hollow), Some(State::Late));
    assert_eq!(state(&scribe, 5 * 24 * 60, hollow), Some(State::Late));
    scribe.note(at(140), Event::BellyFelt { lamb, belly: Belly::Full });
    scribe.note(at(150), Event::BellyFelt { lamb, belly: Belly::Hollow });
    assert_eq!(find(&scribe, at(151), hollow).map(|duty| duty.since), Some(at(150)));
}

#[test]
fn a_weaned_lamb_is_asked_no_milk() {
    let (mut scribe, lamb) = with_lamb(4.0);
    scribe.fed(at(30), lamb, 200.0);
    scribe.note(hour(30), Event::Weaned { lamb });
    none(&scribe, hour(31), feed);
}
