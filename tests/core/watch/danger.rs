//! A lamb in danger: holds on milk hold everywhere, danger comes first and stays first until good news about that very
//! sign.

use yeanling_core::book::{Animal, Belly, Care, Event, GlucoseBy, LambId, Mouth, Suck, VetSaid};
use yeanling_core::units::{Moment, Temperature, TimeDelta};
use yeanling_core::watch::{
    BeforeMilk, Completion, Duty, LambDanger, LambStep, LambTask, State, Task, WhyNot, cold_spell, hold_milk,
    holds, may_wait_until, readiness,
};

use super::{all, feed, find, first_milk, lamb_task, none};
use crate::scribe::{Scribe, at, hour, scored};

pub(super) fn with_lamb() -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.weighed(at(5), lamb, 4.0);
    (scribe, lamb)
}

pub(super) fn taken(lamb: LambId, celsius: f64) -> Event {
    Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(celsius) }
}

pub(super) fn tried(lamb: LambId, able: bool) -> Event {
    Event::SwallowTried { lamb, able }
}

fn said(animal: Animal, said: VetSaid) -> Event {
    Event::Care(Care::VetSaid { animal, said })
}

fn danger(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::Danger(_)))
}

fn call(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::CallVet))
}

fn again(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::TakeTemperature))
}

#[track_caller]
fn state(scribe: &Scribe, minute: i64, kind: fn(&Task) -> bool) -> Option<State> {
    find(scribe, at(minute), kind).map(|duty| duty.state(at(minute)))
}

#[track_caller]
fn lamb_danger(scribe: &Scribe, now: Moment) -> (LambDanger, Duty) {
    let duty = find(scribe, now, danger).expect("a lamb in danger");
    let LambTask::Danger(danger) = lamb_task(&duty) else { panic!("{duty:?}") };
    (danger, duty)
}

#[test]
fn a_thermometer_says_nothing_of_swallowing_nor_standing_of_warmth() {
    let (mut scribe, lamb) = with_lamb();
    scribe.note(at(5), scored(lamb, 4));
    scribe.note(at(30), taken(lamb, 39.3));
    let (failing, duty) = lamb_danger(&scribe, at(31));
    assert!(failing.failing && duty.state(at(31)) == State::Danger);
    assert_eq!(duty.completion, Completion::Note(Event::VetCalled { animal: Animal::Lamb(lamb) }));
    let milk = find(&scribe, at(61), first_milk).expect("not seen to suck");
    assert_eq!(milk.completion, Completion::Open, "sucked is no tap while it fails");
    let (mut cold, lamb) = with_lamb();
    cold.note(at(30), tried(lamb, true));
    cold.note(at(30), taken(lamb, 36.0));
    for event in
        [Event::Stood { lamb }, Event::Sucked { lamb }, Event::LookedAt { animal: Animal::Lamb(lamb) }]
    {
        cold.note(at(40), event);
        assert_eq!(state(&cold, 41, danger), Some(State::Danger));
    }
}

#[test]
fn no_duty_with_milk_in_it_is_for_a_lamb_on_hold() {
    let (mut scribe, lamb) = with_lamb();
    scribe.fed(at(30), lamb, 200.0);
    scribe.note(hour(20), tried(lamb, true));
    scribe.note(hour(20), taken(lamb, 35.5));
    scribe.note(hour(20), Event::BellyFelt { lamb, belly: Belly::Hollow });
    for duty in all(&scribe, hour(22)) {
        match lamb_task(&duty) {
            LambTask::Hollow { before }
            | LambTask::DayTotal { before, .. }
            | LambTask::Feed { before, .. }
            | LambTask::FirstMilk { before, .. } => {
                assert!(matches!(before, Some(BeforeMilk::Hold(_))), "{duty:?}");
            }
            _ => {}
        }
        let milk = matches!(duty.completion, Completion::Note(Event::Fed { .. } | Event::Sucked { .. }));
        assert!(!milk, "{duty:?}");
    }
}

#[test]
fn a_lamb_that_nobody_tried_is_offered_no_milk_and_gets_one_answer() {
    let (mut scribe, lamb) = with_lamb();
    scribe.fed(at(30), lamb, 200.0);
    scribe.note(hour(7), taken(lamb, 38.0));
    let duty = find(&scribe, hour(7), feed).expect("its hours go on");
    let hold = hold_milk(scribe.flock().lamb(lamb).expect("it is there")).map(BeforeMilk::Hold);
    assert_eq!(
        (&duty.completion, lamb_task(&duty)),
        (&Completion::Open, LambTask::Feed { volume: None, before: hold })
    );
    assert!(find(&scribe, hour(7), call).is_some(), "as the steps say");
    scribe.note(hour(7), tried(lamb, true));
    let duty = find(&scribe, hour(7), feed).expect("its hours go on");
    assert!(matches!(duty.completion, Completion::Note(Event::Fed { .. })));
    none(&scribe, hour(7), call);
}

#[test]
fn holds_end_each_by_its_own_good_news() {
    let (mut scribe, lamb) = with_lamb();
    let count = |scribe: &Scribe| holds(scribe.flock().lamb(lamb).expect("it is there")).len();
    scribe.note(at(5), scored(lamb, 4));
    scribe.note(at(10), tried(lamb, false));
    scribe.note(at(10), taken(lamb, 35.0));
    assert_eq!(count(&scribe), 3);
    scribe.note(at(60), taken(lamb, 37.5));
    assert_eq!(count(&scribe), 2, "warm");
    scribe.note(at(61), tried(lamb, true));
    assert_eq!(count(&scribe), 0, "and swallows: so it is failing no more");
    // Without a thermometer: a cold mouth holds, a warm mouth and a strong suck end it.
    let felt = |mouth, suck| Event::Care(Care::MouthFelt { lamb, mouth, suck });
    scribe.note(at(90), felt(Mouth::Cold, Suck::Strong));
    assert_eq!(count(&scribe), 1);
    scribe.note(at(100), felt(Mouth::Warm, Suck::Weak));
    assert_eq!(count(&scribe), 1, "warm alone proves nothing");
    scribe.note(at(110), felt(Mouth::Cool, Suck::Strong));
    assert_eq!(count(&scribe), 1);
    scribe.note(at(120), felt(Mouth::Warm, Suck::Strong));
    assert_eq!(count(&scribe), 0);
}

#[test]
fn danger_is_first_and_says_the_sign_and_the_step_whatever_else_is_tapped() {
    let (mut scribe, lamb) = with_lamb();
    let other = scribe.born(hour(26), None);
    scribe.note(hour(30), tried(lamb, false));
    scribe.note(hour(30), taken(lamb, 35.0));
    let animal = Animal::Lamb(lamb);
    let first = |scribe: &Scribe, now| all(scribe, now).first().map(|duty| (duty.subject(), duty.state(now)));
    for (minute, event) in [
        (1, Event::VetCalled { animal }),
        (2, Event::LookedAt { animal }),
        (3, Event::NavelDipped { lamb }),
        (4, Event::Warmed { lamb }),
        (5, Event::Stood { lamb }),
        (6, said(animal, VetSaid::Coming)),
        (7, Event::Care(Care::GlucoseGiven { lamb, by: GlucoseBy::Trained })),
        (8, taken(lamb, 35.6)),
    ] {
        let now = hour(30) + TimeDelta::minutes(minute);
        scribe.note(now, event);
        assert_eq!(first(&scribe, now), Some((animal, State::Danger)), "minute {minute}");
    }
    let now = hour(30) + TimeDelta::minutes(8);
    let (danger, duty) = lamb_danger(&scribe, now);
    assert_eq!(danger.cold, Some(Some(Temperature::from_celsius(35.6))));
    assert!(danger.no_swallow);
    assert_eq!(danger.step, LambStep::GlucoseGiven);
    let called = duty.vet.expect("the vet is coming");
    assert_eq!(called.look_again, hour(30) + TimeDelta::minutes(26));
    let flock = scribe.flock();
    assert_eq!(may_wait_until(&flock, animal, duty.task.kind(), now), None, "a danger waits for nothing");
    assert!(flock.lamb(other).is_some());
}

#[test]
fn the_vet_saw_it_turns_danger_amber_until_the_look_and_worse_brings_it_back() {
    let (mut scribe, lamb) = with_lamb();
    scribe.note(hour(30), tried(lamb, true));
    scribe.note(hour(30), taken(lamb, 35.5));
    let look_again = hour(32);
    scribe.note(hour(31), said(Animal::Lamb(lamb), VetSaid::Saw { plan: None, look_again }));
    let state = |scribe: &Scribe, now| find(scribe, now, danger).map(|duty| duty.state(now));
    assert_eq!(state(&scribe, hour(31)), Some(State::Now));
    assert_eq!(state(&scribe, look_again), Some(State::Late));
    let minute = hour(31) + TimeDelta::minutes(20);
    let mut warmer = scribe.clone();
    warmer.note(minute, taken(lamb, 35.8));
    assert_eq!(state(&warmer, minute), Some(State::Now));
    scribe.note(minute, taken(lamb, 35.2));
    assert_eq!(state(&scribe, minute), Some(State::Danger));
}

#[test]
fn the_branch_is_fixed_when_the_cold_spell_begins_and_ends_with_it() {
    let (mut scribe, lamb) = with_lamb();
    let step = |scribe: &Scribe, now| lamb_danger(scribe, now).0.step;
    scribe.note(at(290), tried(lamb, true));
    scribe.note(at(290), taken(lamb, 35.0));
    scribe.note(at(292), Event::Warmed { lamb });
    assert_eq!(step(&scribe, at(290)), LambStep::WarmNow);
    // In the box it turns five hours old, and stays warm.
    scribe.note(at(311), tried(lamb, true));
    scribe.note(at(311), taken(lamb, 36.0));
    assert_eq!(step(&scribe, at(311)), LambStep::WarmNow);
    let vet = |scribe: &Scribe, now| lamb_danger(scribe, now).1.completion != Completion::Open;
    assert!(!vet(&scribe, at(311)), "young, swallows and gains");
    scribe.note(at(331), tried(lamb, true));
    scribe.note(at(331), taken(lamb, 37.2));
    none(&scribe, at(331), danger);
    // A new spell is an older lamb's; the warmth of the old one ended with it.
    scribe.note(hour(9), tried(lamb, true));
    scribe.note(hour(9), taken(lamb, 36.5));
    assert_eq!(step(&scribe, hour(9)), LambStep::GlucoseFirst);
    let flock = scribe.flock();
    let lamb = flock.lamb(lamb).expect("it is there");
    assert_eq!(cold_spell(lamb).and_then(|spell| spell.warmed(lamb)), None);
}

#[test]
fn two_looks_with_less_than_half_a_degree_gained_are_the_vets() {
    let (mut scribe, lamb) = with_lamb();
    let vet = |scribe: &Scribe, minute| lamb_danger(scribe, at(minute)).1.completion != Completion::Open;
    for (minute, celsius, called) in [(60, 35.0, false), (80, 35.4, false), (100, 35.8, true)] {
        scribe.note(at(minute), tried(lamb, true));
        scribe.note(at(minute), taken(lamb, celsius));
        assert_eq!(vet(&scribe, minute), called, "{minute}");
    }
}

#[test]
fn after_a_cold_spell_it_is_looked_at_within_the_hour_twice() {
    let (mut scribe, lamb) = with_lamb();
    for (minute, celsius) in [(60, 36.0), (80, 39.1)] {
        scribe.note(at(minute), tried(lamb, true));
        scribe.note(at(minute), taken(lamb, celsius));
    }
    let due = |scribe: &Scribe, minute| find(scribe, at(minute), again).map(|duty| duty.due);
    assert_eq!(due(&scribe, 81), Some(at(140)));
    scribe.note(at(130), taken(lamb, 39.2));
    assert_eq!(due(&scribe, 131), Some(at(190)));
    scribe.note(at(190), taken(lamb, 39.2));
    assert_eq!(due(&scribe, 191), None);
}

#[test]
fn hollow_or_long_unfed_is_read_before_milk() {
    let (mut scribe, lamb) = with_lamb();
    let first_milk = |scribe: &Scribe, now| {
        let duty = find(scribe, now, first_milk).expect("not seen to suck");
        (lamb_task(&duty), duty.completion)
    };
    let asks = LambTask::FirstMilk { last_call: false, before: Some(BeforeMilk::Temperature) };
    assert_eq!(first_milk(&scribe, hour(2)), (asks, Completion::Open));
    let mut read = scribe.clone();
    read.note(hour(2), tried(lamb, true));
    read.note(hour(2), taken(lamb, 39.2));
    assert_eq!(first_milk(&read, hour(2)).1, Completion::Note(Event::Sucked { lamb }));
    let mut felt = scribe.clone();
    felt.note(hour(2), Event::Care(Care::MouthFelt { lamb, mouth: Mouth::Warm, suck: Suck::Strong }));
    assert_eq!(first_milk(&felt, hour(2)).1, Completion::Note(Event::Sucked { lamb }));
    scribe.note(hour(3), Event::BellyFelt { lamb, belly: Belly::Hollow });
    let hollow = |scribe: &Scribe| {
        let hollow: fn(&Task) -> bool = |task| matches!(task, Task::Lamb(_, LambTask::Hollow { .. }));
        find(scribe, hour(3), hollow).map(|duty| lamb_task(&duty))
    };
    assert_eq!(hollow(&scribe), Some(LambTask::Hollow { before: Some(BeforeMilk::Temperature) }));
    scribe.note(hour(3), tried(lamb, true));
    scribe.note(hour(3), taken(lamb, 39.2));
    assert_eq!(hollow(&scribe), Some(LambTask::Hollow { before: None }));
}

#[test]
fn a_part_of_a_feed_moves_the_next_by_its_part() {
    let (mut scribe, lamb) = with_lamb();
    scribe.fed(hour(30), lamb, 125.0);
    scribe.weighed(hour(30), lamb, 4.0);
    let due = |scribe: &Scribe, now| find(scribe, now, feed).expect("its hours").due;
    assert_eq!(due(&scribe, hour(30)), hour(30) + TimeDelta::minutes(288));
    scribe.fed(hour(35), lamb, 50.0);
    assert_eq!(due(&scribe, hour(35)), hour(35) + TimeDelta::minutes(144), "half of the least printed feed");
    let rest = find(&scribe, hour(35), feed).map(|duty| lamb_task(&duty));
    assert_eq!(rest, Some(LambTask::Feed { volume: Some(crate::scribe::ml(50.0)), before: None }));
}

#[test]
fn a_small_bottle_lamb_is_asked_no_more_than_its_last_weight_bears() {
    // The middle of 100 to 150 ml is 62 ml/kg of 2 kg: more than a stomach holds.
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.weighed(at(25), lamb, 2.0);
    scribe.fed(at(30), lamb, 100.0);
    for day in 1..7 {
        let now = hour(day * 24) + TimeDelta::hours(1);
        scribe.fed(now - TimeDelta::hours(5), lamb, 80.0);
        let Some(LambTask::Feed { volume: Some(volume), .. }) =
            find(&scribe, now, feed).map(|duty| lamb_task(&duty))
        else {
            panic!("day {day}");
        };
        assert!(volume.as_milliliters() <= 100.0, "{volume:?} on day {day}");
    }
}

#[test]
fn a_lamb_found_after_its_birth_takes_the_safer_age_everywhere() {
    let mut scribe = Scribe::new(1);
    // Found at six hours, born at some time since midnight of this night.
    let lamb = scribe.born(at(0), None);
    scribe.note(hour(6), Event::Care(Care::FoundBorn { lamb }));
    scribe.note(hour(6), tried(lamb, true));
    scribe.note(hour(6), taken(lamb, 36.0));
    assert_eq!(lamb_danger(&scribe, hour(6)).0.step, LambStep::GlucoseFirst, "it may be over five hours");
    let milk = find(&scribe, hour(6), first_milk).expect("not seen to suck");
    assert_eq!(milk.state(hour(6)), State::Late, "it may have been without for six hours");
    // And it may be only a day old when the oldest would be thirty hours: it still has a first day's milk.
    let flock = scribe.flock();
    let found = flock.lamb(lamb).expect("it is there");
    assert_eq!(
        (found.age(hour(25)), found.least_age(hour(25))),
        (TimeDelta::hours(25), TimeDelta::hours(19))
    );
}

#[test]
fn what_was_put_off_waits_past_no_limit_that_came_later() {
    let (mut scribe, lamb) = with_lamb();
    let animal = Animal::Lamb(lamb);
    scribe.fed(hour(25), lamb, 100.0);
    let due = find(&scribe, hour(25), feed).expect("its hours").late;
    let kind = yeanling_core::book::DutyKind::Feed;
    scribe.note(hour(29), Event::PutOff { animal, duty: kind, until: due });
    // Half a feed since then brings the next one sooner: the old wait is not its own.
    scribe.fed(hour(29) + TimeDelta::minutes(10), lamb, 20.0);
    let duty = find(&scribe, hour(30), feed).expect("its hours");
    assert_eq!(duty.put_off, None);
    assert_eq!(duty.comes(), duty.due);
}

#[test]
fn hold_milk_tells_the_worst_of_several() {
    let (mut scribe, lamb) = with_lamb();
    scribe.note(at(60), tried(lamb, false));
    scribe.note(at(60), taken(lamb, 35.0));
    let flock = scribe.flock();
    let hold = hold_milk(flock.lamb(lamb).expect("it is there"));
    assert!(matches!(hold, Some(yeanling_core::watch::Hold::NoSwallow { .. })), "{hold:?}");
}

#[test]
fn a_pair_with_a_lamb_that_is_held_from_milk_does_not_leave_its_pen() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-10_000), "14");
    let lamb = scribe.born(at(0), Some(ewe));
    scribe.sucked(at(20), lamb);
    let ready = |scribe: &Scribe| readiness(&scribe.flock(), ewe, at(0), hour(80)).why_not;
    assert_eq!(ready(&scribe), []);
    scribe.note(hour(70), tried(lamb, false));
    scribe.note(hour(70), taken(lamb, 39.4));
    assert_eq!(ready(&scribe), [WhyNot::Held(lamb)]);
    scribe.note(hour(71), tried(lamb, true));
    assert_eq!(ready(&scribe), []);
}
