//! A failing lamb: cold, hollow, or scored as failing.

use yeanling_core::book::{Animal, Belly, Event, LambId, VigorScale};
use yeanling_core::units::{Temperature, TimeDelta};
use yeanling_core::watch::{
    BeforeMilk, Completion, LambDanger, LambTask, Rejection, State, Task, duties, hold_milk, validate,
};

use super::{check, find, first_milk, lamb_task, none};
use crate::scribe::{Scribe, at, fed, hour, scored};

fn again(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::TakeTemperature))
}

fn vet(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::CallVet | LambTask::Danger(_)))
}

fn hollow(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::Hollow { .. }))
}

fn failing(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::Danger(LambDanger { failing: true, .. })))
}

fn with_lamb() -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    (scribe, lamb)
}

fn taken(lamb: LambId, celsius: f64) -> Event {
    Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(celsius) }
}

#[test]
fn a_cold_reading_is_read_again_in_twenty_minutes_until_it_is_normal() {
    // Source: Henderson 1997, look every 20 minutes.
    let (mut scribe, lamb) = with_lamb();
    scribe.note(at(30), Event::SwallowTried { lamb, able: true });
    scribe.note(at(30), taken(lamb, 38.0));
    check(&scribe, at(30), again, at(50), at(70));
    none(&scribe, at(30), vet);
    scribe.note(at(52), taken(lamb, 38.9));
    scribe.note(at(52), Event::SwallowTried { lamb, able: true });
    check(&scribe, at(52), again, at(72), at(92));
    scribe.note(at(75), taken(lamb, 39.0));
    none(&scribe, at(75), again);
}

#[test]
fn a_lamb_over_five_hours_and_under_37_is_the_vets_at_once() {
    // Source: Eales et al. 1982.
    let (mut scribe, lamb) = with_lamb();
    scribe.note(hour(6), Event::SwallowTried { lamb, able: true });
    scribe.note(hour(6), taken(lamb, 36.9));
    let duty = find(&scribe, hour(6), vet).expect("the vet");
    assert_eq!(duty.due, hour(6));
    let call = Event::VetCalled { animal: Animal::Lamb(lamb) };
    assert_eq!(duty.completion, Completion::Note(call.clone()));
    scribe.note(hour(6), call);
    let duty = find(&scribe, hour(6), vet).expect("a call ends no danger");
    assert_eq!((duty.state(hour(6)), duty.completion), (State::Danger, Completion::Open));
    assert!(find(&scribe, hour(6), again).is_some(), "and it is read again");
}

#[test]
fn a_lamb_that_must_not_have_milk_is_the_vets_first_and_is_not_put_to_suck_by_one_tap() {
    let (mut scribe, lamb) = with_lamb();
    scribe.note(hour(4), Event::SwallowTried { lamb, able: false });
    scribe.note(hour(4), taken(lamb, 36.2));
    let flock = scribe.flock();
    let all = duties(&flock, hour(4), &flock.settings);
    assert!(matches!(all[0].task, Task::Lamb(_, LambTask::Danger(_))), "{all:?}");
    let milk = find(&scribe, hour(4), first_milk).expect("first milk");
    let hold = hold_milk(flock.lamb(lamb).expect("it is there")).map(BeforeMilk::Hold);
    assert!(hold.is_some());
    assert_eq!(lamb_task(&milk), LambTask::FirstMilk { last_call: false, before: hold });
    assert_eq!(milk.completion, Completion::Open);
    // Once it is warm and swallows, it is helped to suck as any other.
    scribe.note(hour(5), Event::SwallowTried { lamb, able: true });
    scribe.note(hour(5), taken(lamb, 39.2));
    let milk = find(&scribe, hour(5), first_milk).expect("first milk");
    assert_eq!(milk.completion, Completion::Note(Event::Sucked { lamb }));
}

#[test]
fn at_five_hours_it_is_still_young_and_just_after_it_is_not() {
    // Source: Henderson 1996; US extension: up to five hours.
    for (minute, called) in [(299, false), (300, false), (301, true)] {
        let (mut scribe, lamb) = with_lamb();
        scribe.note(at(minute), Event::SwallowTried { lamb, able: true });
        scribe.note(at(minute), taken(lamb, 36.0));
        let duty = find(&scribe, at(minute), vet).expect("it is in danger either way");
        assert_eq!(duty.completion != Completion::Open, called, "{minute}");
    }
}

#[test]
fn a_fever_is_the_vets_unless_it_is_low_in_a_bright_lamb_and_gone_in_half_an_hour() {
    // Source: UK hypothermia sheet. Ours: 40.1 to 40.5 °C, bright and sucking, is read again in 30 min out of the heat.
    let (mut scribe, lamb) = with_lamb();
    scribe.note(hour(30), taken(lamb, 40.1));
    assert!(find(&scribe, hour(30), vet).is_some(), "nobody tried it");
    scribe.note(hour(30), Event::SwallowTried { lamb, able: true });
    none(&scribe, hour(30), vet);
    let half = at(30 * 60 + 30);
    check(&scribe, hour(30), again, half, half + TimeDelta::minutes(20));
    let mut better = scribe.clone();
    better.note(half, taken(lamb, 39.8));
    none(&better, half, vet);
    none(&better, half, again);
    scribe.note(half, Event::SwallowTried { lamb, able: true });
    scribe.note(half, taken(lamb, 40.2));
    assert!(find(&scribe, half, vet).is_some(), "twice, half an hour apart");
}

#[test]
fn a_hollow_belly_asks_for_milk_although_it_was_seen_to_suck() {
    let (mut scribe, lamb) = with_lamb();
    scribe.sucked(at(20), lamb);
    scribe.note(at(90), Event::BellyFelt { lamb, belly: Belly::Hollow });
    check(&scribe, at(90), hollow, at(90), at(150));
    let mut other = scribe.clone();
    other.note(at(100), Event::BellyFelt { lamb, belly: Belly::Full });
    none(&other, at(100), hollow);
    scribe.weighed(at(95), lamb, 4.0);
    scribe.fed(at(100), lamb, 80.0);
    assert!(find(&scribe, at(100), hollow).is_some(), "a part of a feed is its part");
    scribe.fed(at(110), lamb, 105.0);
    none(&scribe, at(110), hollow);
}

#[test]
fn the_worst_grade_is_seen_to_until_something_is_better() {
    // Source: UK levy-board breeding scheme with SRUC: grade 4, head down, may labor to breathe.
    let (mut scribe, lamb) = with_lamb();
    scribe.note(at(5), scored(lamb, 4));
    let danger =
        |scribe: &Scribe, minute| find(scribe, at(minute), failing).map(|duty| duty.state(at(minute)));
    let call = |scribe: &Scribe, minute| {
        find(scribe, at(minute), failing).map(|duty| duty.completion != Completion::Open)
    };
    assert_eq!((danger(&scribe, 5), call(&scribe, 5)), (Some(State::Danger), Some(false)), "hands first");
    assert_eq!(call(&scribe, 15), Some(true), "not looked at in ten minutes, it is the vet's");
    // Neither that it stood, nor a warm reading, nor a suck says that it swallows.
    for event in [Event::Stood { lamb }, Event::Sucked { lamb }, taken(lamb, 39.3)] {
        scribe.note(at(12), event);
        assert_eq!(danger(&scribe, 12), Some(State::Danger));
    }
    assert_eq!(call(&scribe, 12), Some(true), "read warm, and nobody tried it");
    scribe.note(at(13), Event::SwallowTried { lamb, able: true });
    none(&scribe, at(13), failing);
}

#[test]
fn points_run_the_other_way() {
    // Source: ten-point newborn score, 75 Polypay lambs; bands from memory.
    for (score, seen_to) in [(3, true), (4, false), (10, false)] {
        let (mut scribe, lamb) = with_lamb();
        scribe.note(at(5), Event::VigorScored { lamb, scale: VigorScale::TenPoint, score });
        assert_eq!(find(&scribe, at(6), failing).is_some(), seen_to, "{score}");
    }
}

#[test]
fn two_feeds_within_an_hour_lie_in_one_stomach() {
    // Ours: together they keep the guard of one feed, 60 ml/kg.
    let (mut scribe, lamb) = with_lamb();
    scribe.weighed(at(1), lamb, 4.0);
    scribe.fed(at(60), lamb, 200.0);
    let ask = |minute, milliliters| {
        let event =
            fed(lamb, milliliters, yeanling_core::book::Milk::DamColostrum, yeanling_core::book::Way::Bottle);
        validate(&scribe.flock(), &scribe.book, &event, at(minute), at(minute))
    };
    assert_eq!(ask(61, 40.0), Ok(()));
    let together = crate::scribe::ml(400.0);
    assert_eq!(ask(61, 200.0), Err(Rejection::TooSoon { last: at(60), together }));
    assert_eq!(ask(119, 200.0), Err(Rejection::TooSoon { last: at(60), together }));
    assert_eq!(ask(120, 200.0), Ok(()));
}

#[test]
fn an_old_try_says_nothing_of_a_new_reading() {
    // Ours: a lamb changes in twenty minutes; a cold lamb that nobody tried is the vet's.
    let (mut scribe, lamb) = with_lamb();
    scribe.note(at(30), Event::SwallowTried { lamb, able: true });
    scribe.note(at(40), taken(lamb, 36.5));
    let call = |scribe: &Scribe, minute| {
        find(scribe, at(minute), vet).map(|duty| duty.completion != Completion::Open)
    };
    assert_eq!(call(&scribe, 40), Some(false));
    scribe.note(at(61), taken(lamb, 37.0));
    assert_eq!(call(&scribe, 61), Some(true), "nobody tried it again");
    scribe.note(at(62), Event::SwallowTried { lamb, able: true });
    none(&scribe, at(62), vet);
}
