//! After a lambing: the udder check and what it leads on to, a ewe that is settled, and looks after a hard birth.

use yeanling_core::book::Milk;
use yeanling_core::book::{Animal, Care, Cause, Event, EweId, Illness, LambId, LambingEase, Life};
use yeanling_core::reckon::illness::{Urgency, ewe};
use yeanling_core::terms::{EweSign, EweStage, Gate, UdderHalf};
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::{
    Completion, DrawFrom, EweTask, LambTask, State, Task, dams_milk, ewe_illness, next_milk,
};

use super::{check, ewe_task, find, none};
use crate::scribe::{Scribe, at, hour};

use UdderHalf::{ColdOrBlue, Dry, HardOrHot, Milks};

const HALVES: [UdderHalf; 4] = [Milks, Dry, HardOrHot, ColdOrBlue];

fn udder(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Udder { .. }))
}

fn settled(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Settled))
}

fn dam_dry(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::DamDry { .. }))
}

fn first_milk(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::FirstMilk { .. }))
}

fn weigh_again(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::WeighAgain))
}

fn hard_birth(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::HardBirth))
}

fn lambed() -> (Scribe, EweId, LambId) {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-10_000), "14");
    let lamb = scribe.born(at(0), Some(ewe));
    (scribe, ewe, lamb)
}

fn checked(ewe: EweId, left: UdderHalf, right: UdderHalf) -> Event {
    Event::Illness(Illness::UdderChecked { ewe, left, right })
}

#[test]
fn the_udder_is_checked_with_the_first_suck_or_at_two_hours_and_is_late_at_six() {
    let (scribe, ewe, lamb) = lambed();
    none(&scribe, at(59), udder);
    check(&scribe, at(61), udder, hour(2), hour(6));
    let mut sucked = scribe.clone();
    sucked.sucked(at(40), lamb);
    check(&sucked, at(40), udder, at(40), hour(6));
    let mut later = scribe.clone();
    later.sucked(at(180), lamb);
    check(&later, at(180), udder, hour(2), hour(6));
    let mut done = scribe.clone();
    done.note(at(50), checked(ewe, Milks, Milks));
    none(&done, at(50), udder);
    // A twin asks for no second check.
    done.born(at(70), Some(ewe));
    none(&done, at(200), udder);
}

#[test]
fn both_halves_are_one_tap() {
    let (scribe, ewe, _) = lambed();
    let duty = find(&scribe, at(130), udder).expect("a check");
    assert_eq!(duty.completion, Completion::Note(checked(ewe, Milks, Milks)));
}

#[test]
fn a_ewe_that_died_or_aborted_is_not_checked_and_one_that_rears_a_lamb_is() {
    let (mut scribe, ewe, lamb) = lambed();
    let mut dead = scribe.clone();
    dead.note(at(10), Event::Died { animal: Animal::Ewe(ewe), cause: Cause::Unknown });
    none(&dead, at(130), udder);
    let aborted = Event::Illness(Illness::EweSeen {
        ewe,
        stage: EweStage::LateInLamb,
        standing: Gate::Good,
        eating: Gate::Good,
        nothing_out: Gate::Good,
        signs: vec![EweSign::Aborted],
        onset: None,
    });
    scribe.note(at(5), aborted);
    assert!(find(&scribe, at(130), udder).is_some(), "her lamb lives and sucks");
    scribe.died(at(20), Animal::Lamb(lamb));
    none(&scribe, at(130), udder);
}

#[test]
fn a_half_without_milk_is_drawn_again_in_an_hour_and_once() {
    let (mut scribe, ewe, _) = lambed();
    scribe.note(at(60), checked(ewe, Milks, Dry));
    check(&scribe, at(60), udder, at(120), at(180));
    let duty = find(&scribe, at(120), udder).expect("the second draw");
    assert_eq!(ewe_task(&duty), EweTask::Udder { again: true });
    let mut milk = scribe.clone();
    milk.note(at(120), checked(ewe, Milks, Milks));
    none(&milk, at(120), udder);
    scribe.note(at(120), checked(ewe, Milks, Dry));
    none(&scribe, at(120), udder);
}

#[test]
fn no_milk_at_two_draws_is_the_vets_today() {
    // Source: common practice; ours.
    let (mut scribe, ewe, _) = lambed();
    let ill = |scribe: &Scribe, minute| {
        let flock = scribe.flock();
        let course = ewe_illness(&flock, &flock.ewes[&ewe], at(minute))?;
        Some((course.answer.rows.first()?.row, course.urgency))
    };
    scribe.note(at(60), checked(ewe, Dry, Dry));
    assert_eq!(ill(&scribe, 60), None);
    let mut soon = scribe.clone();
    soon.note(at(65), checked(ewe, Dry, Dry));
    assert_eq!(ill(&soon, 65), None, "it is the same draw");
    scribe.note(at(120), checked(ewe, Dry, Dry));
    assert_eq!(ill(&scribe, 120), Some((ewe::Row::NoMilk, Urgency::Today)));
}

#[test]
fn a_half_that_is_hot_or_cold_is_her_illness_with_what_is_asked_first_still_to_be_looked_at() {
    for (half, row, urgency) in
        [(HardOrHot, ewe::Row::UdderHot, Urgency::Today), (ColdOrBlue, ewe::Row::UdderCold, Urgency::Now)]
    {
        let (mut scribe, ewe, _) = lambed();
        scribe.note(at(60), checked(ewe, Milks, half));
        let flock = scribe.flock();
        let course = ewe_illness(&flock, &flock.ewes[&ewe], at(60)).expect("she is not right");
        assert_eq!((course.first(), course.urgency), (Some(row), urgency));
        assert_eq!(course.answer.check_now.len(), 3);
        // The same ewe is asked whether she stands and eats by her illness, and within ten minutes.
        none(&scribe, at(130), settled);
    }
}

#[test]
fn lambs_of_a_ewe_without_milk_are_fed_from_elsewhere_at_once_whatever_they_sucked() {
    let (mut scribe, ewe, lamb) = lambed();
    let twin = scribe.born(at(5), Some(ewe));
    scribe.sucked(at(30), lamb);
    scribe.note(at(60), checked(ewe, Dry, Dry));
    let of = |scribe: &Scribe, minute: i64, lamb: LambId, kind: fn(&Task) -> bool| {
        super::all(scribe, at(minute))
            .into_iter()
            .find(|duty| duty.subject() == Animal::Lamb(lamb) && kind(&duty.task))
            .map(|duty| (duty.state(at(minute)), duty.completion))
    };
    assert_eq!(of(&scribe, 60, lamb, dam_dry), Some((State::Now, Completion::Open)));
    assert_eq!(of(&scribe, 90, lamb, dam_dry).map(|one| one.0), Some(State::Late));
    // It stands in the place of the first milk, with its hours: "Sucked" is no longer one tap.
    assert_eq!(of(&scribe, 60, twin, first_milk), None);
    assert_eq!(of(&scribe, 60, twin, dam_dry).map(|one| one.0), Some(State::Now));
    // It ends with a feed, with milk in her udder, or with another ewe.
    let mut fed = scribe.clone();
    fed.fed(at(70), lamb, 150.0);
    assert_eq!(of(&fed, 200, lamb, dam_dry), None);
    let mut milk = scribe.clone();
    milk.note(at(120), checked(ewe, Milks, Milks));
    assert_eq!(of(&milk, 121, lamb, dam_dry), None);
    assert!(of(&milk, 121, twin, first_milk).is_some());
    let other = scribe.ewe(at(-10_000), "15");
    scribe.note(at(65), Event::Life(Life::Fostered { lamb, dam: other }));
    assert_eq!(of(&scribe, 66, lamb, dam_dry), None);
}

#[test]
fn a_lamb_reared_on_one_half_is_weighed_a_day_after_its_last_weight_for_three_days() {
    let (mut scribe, ewe, lamb) = lambed();
    scribe.weighed(at(40), lamb, 4.0);
    scribe.note(at(60), checked(ewe, Milks, Dry));
    none(&scribe, at(40) + TimeDelta::hours(24) - crate::scribe::MS, weigh_again);
    let duty = find(&scribe, at(40) + TimeDelta::hours(24), weigh_again).expect("to be weighed");
    assert_eq!(duty.due, at(40) + TimeDelta::hours(24));
    scribe.weighed(hour(26), lamb, 4.2);
    none(&scribe, hour(27), weigh_again);
    assert!(find(&scribe, hour(50), weigh_again).is_some());
    none(&scribe, hour(73), weigh_again);
    // On two halves nobody asks for it.
    scribe.note(hour(49), checked(ewe, Milks, Milks));
    none(&scribe, hour(50), weigh_again);
}

#[test]
fn a_ewe_after_lambing_is_seen_up_and_eating_by_two_hours_after_the_last_lamb() {
    let (mut scribe, ewe, _) = lambed();
    scribe.note(at(10), Event::Care(Care::Settled { ewe }));
    none(&scribe, at(130), settled);
    scribe.born(at(40), Some(ewe));
    check(&scribe, at(101), settled, at(160), at(400));
    scribe.note(at(170), Event::Care(Care::Settled { ewe }));
    none(&scribe, at(171), settled);
}

#[test]
fn after_a_hard_pull_a_lamb_is_looked_at_at_two_and_at_four_hours() {
    // Source: dvm360.
    let (mut scribe, _, lamb) = lambed();
    none(&scribe, at(130), hard_birth);
    scribe.note(at(1), Event::BirthEase { lamb, ease: LambingEase::HardByHand });
    check(&scribe, at(2), hard_birth, hour(2), at(150));
    let look = Event::LookedAt { animal: Animal::Lamb(lamb) };
    scribe.note(at(60), look.clone());
    check(&scribe, at(61), hard_birth, hour(2), at(150));
    scribe.note(at(100), look.clone());
    check(&scribe, at(101), hard_birth, hour(4), at(270));
    scribe.note(at(245), look);
    none(&scribe, at(246), hard_birth);
    let easy = Event::BirthEase { lamb, ease: LambingEase::SlightByHand };
    let (mut scribe, _, lamb) = lambed();
    scribe.note(at(1), easy);
    assert_eq!(lamb, scribe.flock().lambs[&lamb].id);
    none(&scribe, at(130), hard_birth);
}

/// What a lamb is fed next, and from which half of its dam, a minute after the check.
fn milk(scribe: &Scribe, lamb: LambId, now: yeanling_core::units::Moment) -> (Milk, Option<DrawFrom>) {
    let flock = scribe.flock();
    let lamb = flock.lamb(lamb).expect("it is there");
    (next_milk(&flock, lamb, now, &flock.settings), dams_milk(&flock, lamb, now))
}

#[test]
fn no_colostrum_comes_from_an_udder_that_is_dry_hot_or_cold_and_of_one_half_only_from_the_other() {
    for left in HALVES {
        for right in HALVES {
            for fed in [false, true] {
                let (mut scribe, ewe, lamb) = lambed();
                if fed {
                    scribe.fed(at(30), lamb, 100.0);
                }
                assert_eq!(milk(&scribe, lamb, at(31)).0, Milk::DamColostrum);
                scribe.note(at(60), checked(ewe, left, right));
                let from = match (left == Milks, right == Milks) {
                    (true, true) => DrawFrom::Either,
                    (true, false) => DrawFrom::Left,
                    (false, true) => DrawFrom::Right,
                    (false, false) => DrawFrom::Neither,
                };
                let fit = if from == DrawFrom::Neither { Milk::EweColostrum } else { Milk::DamColostrum };
                assert_eq!(milk(&scribe, lamb, at(61)), (fit, Some(from)), "{left:?} {right:?} {fed}");
                // Milk at a later draw is good news about the very thing.
                scribe.note(at(120), checked(ewe, Milks, Milks));
                assert_eq!(milk(&scribe, lamb, at(121)), (Milk::DamColostrum, Some(DrawFrom::Either)));
            }
        }
    }
}

#[test]
fn an_udder_seen_to_be_ill_after_the_check_gives_nothing_nor_does_a_dead_ewe() {
    for sign in [EweSign::UdderHot, EweSign::UdderCold, EweSign::NoMilk] {
        let (mut scribe, ewe, lamb) = lambed();
        scribe.note(at(60), checked(ewe, Milks, Milks));
        let good = Gate::Good;
        let seen = Illness::EweSeen {
            ewe,
            stage: EweStage::AfterLambing,
            standing: good,
            eating: good,
            nothing_out: good,
            signs: vec![sign],
            onset: None,
        };
        scribe.note(at(90), Event::Illness(seen));
        assert_eq!(milk(&scribe, lamb, at(91)), (Milk::EweColostrum, Some(DrawFrom::Neither)), "{sign:?}");
    }
    let (mut scribe, ewe, lamb) = lambed();
    scribe.died(at(20), Animal::Ewe(ewe));
    assert_eq!(milk(&scribe, lamb, at(21)).0, Milk::EweColostrum);
}
