//! When a bottle lamb is looked at for weaning, and what ends it.

use yeanling_core::book::{Event, LambId, Milk, Way};
use yeanling_core::reckon::weaning::Verdict;
use yeanling_core::settings::{Choice, WeaningRule};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Completion, LambTask, Task, may_be_weaned, next_milk};

use super::{check, find, lamb_task, none};
use crate::scribe::{MS, Scribe, at, fed, hour, kg};

fn weaning(task: &Task) -> bool {
    matches!(task, Task::Lamb(_, LambTask::WeaningCheck { .. }))
}

fn day(days: i64) -> Moment {
    hour(24 * days)
}

/// A lamb of four kilograms at birth, on the bottle.
fn on_the_bottle() -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    scribe.weighed(at(25), lamb, 4.0);
    scribe.note(day(2), fed(lamb, 200.0, Milk::Replacer, Way::Bottle));
    (scribe, lamb)
}

fn solids(scribe: &mut Scribe, at: Moment, lamb: LambId, kilograms: f64) {
    scribe.note(at, Event::SolidsEaten { lamb, mass: kg(kilograms) });
}

#[track_caller]
fn verdict(scribe: &Scribe, lamb: LambId, now: Moment, expected: Verdict) {
    let flock = scribe.flock();
    let lamb = flock.lamb(lamb).expect("it is here");
    let answer = may_be_weaned(lamb, now, flock.settings.weaning_rule).expect("in bounds");
    assert_eq!(answer.verdict, expected, "{:?}", answer.conditions);
}

#[test]
fn with_nothing_known_it_is_asked_about_at_the_earliest_age_of_the_rule() {
    let (mut scribe, _) = on_the_bottle();
    none(&scribe, day(34) - MS, weaning);
    check(&scribe, day(34), weaning, day(35), day(42));
    assert_eq!(find(&scribe, day(35), weaning).map(|duty| duty.completion), Some(Completion::Open));
    scribe.note(day(3), Event::Chose(Choice::WeaningRule(WeaningRule::FourWeeks)));
    check(&scribe, day(27), weaning, day(28), day(35));
}

#[test]
fn after_a_look_it_is_asked_about_again_a_day_later() {
    let (mut scribe, lamb) = on_the_bottle();
    scribe.weighed(day(36), lamb, 8.0);
    check(&scribe, day(36), weaning, day(37), day(44));
    solids(&mut scribe, hour(36 * 24 + 6), lamb, 0.1);
    check(&scribe, hour(36 * 24 + 6), weaning, hour(37 * 24 + 6), hour(44 * 24 + 6));
}

#[test]
fn when_all_is_met_it_is_one_tap_and_the_tap_ends_it() {
    let (mut scribe, lamb) = on_the_bottle();
    for days in [34, 35, 36] {
        solids(&mut scribe, day(days), lamb, 0.25);
    }
    scribe.weighed(day(36), lamb, 10.0);
    verdict(&scribe, lamb, day(36), Verdict::Ready);
    check(&scribe, day(36), weaning, day(36), day(43));
    let duty = find(&scribe, day(36), weaning).expect("due");
    let wean = Event::Weaned { lamb };
    assert_eq!(
        (lamb_task(&duty), duty.completion),
        (LambTask::WeaningCheck { ready: true }, Completion::Note(wean.clone()))
    );
    scribe.note(day(36), wean);
    none(&scribe, day(36), weaning);
    none(&scribe, day(43), weaning);
}

#[test]
fn solids_count_on_three_days_running_up_to_yesterday() {
    let (mut scribe, lamb) = on_the_bottle();
    scribe.weighed(day(36), lamb, 10.0);
    solids(&mut scribe, day(34), lamb, 0.3);
    solids(&mut scribe, day(36), lamb, 0.3);
    verdict(&scribe, lamb, day(36), Verdict::Unknown);
    solids(&mut scribe, day(35), lamb, 0.2);
    verdict(&scribe, lamb, day(36), Verdict::NotYet);
    // What is noted last of a day stands.
    solids(&mut scribe, hour(35 * 24 + 1), lamb, 0.3);
    verdict(&scribe, lamb, day(37), Verdict::Ready);
    verdict(&scribe, lamb, day(38), Verdict::Unknown);
}

#[test]
fn a_lamb_with_its_dam_is_not_asked_about_and_an_old_one_no_more() {
    let (mut scribe, lamb) = on_the_bottle();
    check(&scribe, day(120) - MS, weaning, day(35), day(42));
    none(&scribe, day(120), weaning);
    scribe.sucked(day(40), lamb);
    none(&scribe, day(41), weaning);
}

#[test]
fn after_the_first_day_colostrum_gives_way_to_milk_replacer() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "14");
    let (known, orphan) = (scribe.born(at(0), Some(ewe)), scribe.born(at(0), None));
    let milk = |scribe: &Scribe, lamb, now| {
        let flock = scribe.flock();
        next_milk(&flock, flock.lamb(lamb).expect("it is here"), now, &flock.settings)
    };
    assert_eq!(milk(&scribe, known, at(30)), Milk::DamColostrum);
    assert_eq!(milk(&scribe, orphan, at(30)), Milk::EweColostrum);
    scribe.fed(at(30), known, 200.0);
    assert_eq!(milk(&scribe, known, hour(24) - MS), Milk::DamColostrum);
    assert_eq!(milk(&scribe, known, hour(24)), Milk::Replacer);
    scribe
        .note(hour(25), Event::Chose(Choice::BottleTable(yeanling_core::settings::BottleTable::UsHandbook)));
    assert_eq!(milk(&scribe, known, hour(47)), Milk::DamColostrum);
    assert_eq!(milk(&scribe, known, hour(48)), Milk::Replacer);
    scribe.note(hour(49), fed(known, 100.0, Milk::Milk, Way::Bottle));
    assert_eq!(milk(&scribe, known, hour(50) + TimeDelta::days(3)), Milk::Milk);
}
