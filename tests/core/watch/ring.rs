//! Rings: never in the first day, late at the farm's limit, told for a week when it is too late, silent where unused.

use yeanling_core::book::{Animal, Event, LambId, Ring, Sex};
use yeanling_core::settings::{BreedType, Choice, RingRule, Rings};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Completion, LambTask, Rejection, State, Task, validate};

use super::{check, find, lamb_task, none};
use crate::scribe::{MS, Scribe, at, hour};

fn ring(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::Ring { .. }))
}

fn day(days: i64) -> Moment {
    at(0) + TimeDelta::days(days)
}

fn farm(rule: RingRule, tails: bool, ram_lambs: bool, sex: Option<Sex>) -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    scribe.note(at(-60), Event::Chose(Choice::Rings(Rings { rule, tails, ram_lambs })));
    let lamb = scribe.note(at(0), Event::LambBorn { dam: None, beside: None, sex, alive: true }).as_lamb();
    (scribe, lamb)
}

#[test]
fn a_tail_ring_is_due_at_a_day_and_late_at_the_limit() {
    // Source: NFU, England and Wales: rings only in the first 7 days. AHDB: never in the first 24 hours.
    let (mut scribe, lamb) = farm(RingRule::EnglandWales, true, false, None);
    none(&scribe, hour(24) - MS, ring);
    check(&scribe, hour(24), ring, hour(24), day(7));
    let duty = find(&scribe, hour(24), ring).expect("a ring");
    assert_eq!(lamb_task(&duty), LambTask::Ring { tail: true, castration: false, too_late: false });
    let on = Event::Ringed { lamb, ring: Ring::Tail };
    assert_eq!(duty.completion, Completion::Note(on.clone()));
    scribe.note(hour(30), on);
    none(&scribe, hour(30), ring);
    none(&scribe, day(7), ring);
}

#[test]
fn a_ring_before_a_day_is_refused() {
    // Source: AHDB: never in the first 24 hours.
    let (scribe, lamb) = farm(RingRule::EnglandWales, true, false, None);
    let ask = |now| {
        let event = Event::Ringed { lamb, ring: Ring::Tail };
        validate(&scribe.flock(), &scribe.book, &event, now, now)
    };
    assert_eq!(ask(hour(24) - MS), Err(Rejection::TooYoungToRing { from: hour(24) }));
    assert_eq!(ask(hour(24)), Ok(()));
}

#[test]
fn too_late_is_told_for_a_week_until_the_vet_is_asked() {
    // Ours: a week; the limit is England's.
    let (mut scribe, lamb) = farm(RingRule::EnglandWales, true, false, None);
    let before = find(&scribe, day(7) - MS, ring).expect("still open");
    assert_eq!(before.state(day(7) - MS), State::Now);
    let duty = find(&scribe, day(7), ring).expect("too late");
    assert_eq!(lamb_task(&duty), LambTask::Ring { tail: true, castration: false, too_late: true });
    assert_eq!(duty.state(day(7)), State::Late);
    assert!(find(&scribe, day(14) - MS, ring).is_some());
    none(&scribe, day(14), ring);
    scribe.note(day(8), Event::VetCalled { animal: Animal::Lamb(lamb) });
    none(&scribe, day(8), ring);
}

#[test]
fn only_a_ram_lamb_known_as_one_is_castrated() {
    for (sex, asked) in [(Some(Sex::Ram), true), (Some(Sex::Ewe), false), (None, false)] {
        let (scribe, _) = farm(RingRule::Own { days: 10 }, false, true, sex);
        assert_eq!(find(&scribe, day(2), ring).is_some(), asked, "{sex:?}");
    }
}

#[test]
fn two_rings_are_one_duty_and_each_ends_by_its_own_ring() {
    // Source: NFU, England and Wales: rings only in the first 7 days.
    let (mut scribe, lamb) = farm(RingRule::EnglandWales, true, true, Some(Sex::Ram));
    let duty = find(&scribe, day(2), ring).expect("both");
    assert_eq!(lamb_task(&duty), LambTask::Ring { tail: true, castration: true, too_late: false });
    assert_eq!((duty.late, duty.completion), (day(7), Completion::Open));
    let late = find(&scribe, day(7), ring).expect("both came too late");
    assert_eq!(lamb_task(&late), LambTask::Ring { tail: true, castration: true, too_late: true });
    scribe.note(day(3), Event::Ringed { lamb, ring: Ring::Tail });
    let other = find(&scribe, day(3), ring).expect("the other");
    assert_eq!(lamb_task(&other), LambTask::Ring { tail: false, castration: true, too_late: false });
    let told = find(&scribe, day(7), ring).expect("the other came too late");
    assert_eq!(lamb_task(&told), LambTask::Ring { tail: false, castration: true, too_late: true });
}

#[test]
fn a_farm_that_uses_no_rings_hears_of_none() {
    for (rule, tails) in [(RingRule::NoRings, true), (RingRule::NewZealand, false)] {
        let (scribe, _) = farm(rule, tails, false, Some(Sex::Ram));
        for days in [2, 8, 100, 200] {
            none(&scribe, day(days), ring);
        }
    }
}

#[test]
fn an_old_book_that_chose_castration_rings_in_germany_is_asked_for_none() {
    // Source: German Animal Welfare Act (TierSchG) §6(2), castration with rings banned; as read in 2026.
    let (scribe, _) = farm(RingRule::Germany, false, true, Some(Sex::Ram));
    for days in 0..60 {
        none(&scribe, day(days), ring);
    }
    let (scribe, _) = farm(RingRule::Germany, true, true, Some(Sex::Ram));
    let asked = find(&scribe, day(2), ring).expect("a tail ring");
    assert_eq!(lamb_task(&asked), LambTask::Ring { tail: true, castration: false, too_late: false });
}

#[test]
fn no_kind_of_sheep_asks_for_rings_that_the_farm_has_not_chosen() {
    // Ours: hair sheep above all; a ring is asked for only where the farm has chosen one itself.
    for breed in BreedType::ALL {
        let mut scribe = Scribe::new(1);
        scribe.note(at(-60), Event::Chose(Choice::BreedType(breed)));
        let ram = Event::LambBorn { dam: None, beside: None, sex: Some(Sex::Ram), alive: true };
        scribe.note(at(0), ram);
        for days in 0..200 {
            none(&scribe, day(days), ring);
        }
    }
}

#[test]
fn a_dead_lamb_is_not_ringed() {
    let (mut scribe, lamb) = farm(RingRule::NewZealand, true, false, None);
    assert!(find(&scribe, day(100), ring).is_some());
    scribe.died(day(100), Animal::Lamb(lamb));
    none(&scribe, day(101), ring);
}
