//! The bonding pens: who is in, who may go out, and why not yet.

use yeanling_core::book::{Animal, Event, EweId, LambId, PenId};
use yeanling_core::units::Temperature;
use yeanling_core::watch::{Completion, EweTask, State, Task, WhyNot, readiness};

use super::{check, find, none};
use crate::scribe::{MS, Scribe, at, hour};

fn let_out(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::LetOut))
}

fn pen(scribe: &mut Scribe, name: &str) -> PenId {
    scribe.note(at(-100), Event::PenMade { name: name.to_owned(), size: None }).as_pen()
}

fn put(scribe: &mut Scribe, minute: i64, ewe: EweId, pen: PenId) {
    scribe.note(at(minute), Event::PutInPen { animal: Animal::Ewe(ewe), pen });
}

/// Ewe 14 with twins that sucked, in a pen since minute 60.
fn twins() -> (Scribe, EweId, [LambId; 2], PenId) {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-1000), "14");
    let lambs = [scribe.born(at(0), Some(ewe)), scribe.born(at(20), Some(ewe))];
    for lamb in lambs {
        scribe.sucked(at(40), lamb);
    }
    let pen = pen(&mut scribe, "1");
    put(&mut scribe, 60, ewe, pen);
    (scribe, ewe, lambs, pen)
}

fn why_not(scribe: &Scribe, hours: i64, ewe: EweId) -> Vec<WhyNot> {
    readiness(&scribe.flock(), ewe, at(60), hour(hours)).why_not
}

#[test]
fn twins_go_out_after_two_days() {
    // Source: equipment firm's lambing diary: twins two days.
    let (scribe, ewe, ..) = twins();
    let due = at(60) + yeanling_core::units::TimeDelta::hours(48);
    check(&scribe, due - MS, let_out, due, due + yeanling_core::units::TimeDelta::hours(12));
    assert_eq!(why_not(&scribe, 48, ewe), [WhyNot::Stay]);
    assert_eq!(why_not(&scribe, 49, ewe), []);
    let out = Event::LetOut { animal: Animal::Ewe(ewe) };
    assert_eq!(find(&scribe, due, let_out).map(|duty| duty.completion), Some(Completion::Note(out.clone())));
    let mut scribe = scribe;
    scribe.note(due, out);
    none(&scribe, due, let_out);
}

#[test]
fn what_holds_them_back_is_said() {
    let (mut scribe, ewe, [first, second], _) = twins();
    let third = scribe.born(at(50), Some(ewe));
    assert_eq!(why_not(&scribe, 80, ewe), [WhyNot::NotFed(third)]);
    scribe.sucked(hour(74), third);
    assert_eq!(why_not(&scribe, 80, ewe), []);
    let taken =
        |lamb, celsius| Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(celsius) };
    scribe.note(hour(75), taken(first, 38.9));
    scribe.note(hour(75), taken(second, 40.1));
    scribe.note(hour(75), Event::Accepted { lamb: third, accepts: false });
    assert_eq!(
        why_not(&scribe, 80, ewe),
        [WhyNot::Temperature(first), WhyNot::Temperature(second), WhyNot::TurnedAway(third)]
    );
    assert!(find(&scribe, hour(80), let_out).is_none(), "nothing is asked for that may not be done");
    scribe.note(hour(76), taken(first, 39.0));
    scribe.note(hour(76), taken(second, 40.0));
    scribe.note(hour(76), Event::Accepted { lamb: third, accepts: true });
    assert_eq!(why_not(&scribe, 80, ewe), []);
    assert_eq!(find(&scribe, hour(80), let_out).map(|duty| duty.state(hour(80))), Some(State::Now));
}

#[test]
fn a_hand_fed_lamb_needs_a_feed_of_the_day() {
    let (mut scribe, ewe, [first, _], _) = twins();
    scribe.fed(hour(30), first, 100.0);
    assert_eq!(why_not(&scribe, 54, ewe), []);
    assert_eq!(why_not(&scribe, 55, ewe), [WhyNot::NotFed(first)]);
}

#[test]
fn lambs_go_with_their_dam_and_a_dead_one_does_not_count() {
    let (mut scribe, ewe, [first, second], one) = twins();
    let in_pen = |scribe: &Scribe, animal| scribe.flock().pen_of(animal).map(|(pen, _)| pen);
    assert_eq!(in_pen(&scribe, Animal::Lamb(first)), Some(one));
    scribe.died(at(70), Animal::Lamb(second));
    assert_eq!(in_pen(&scribe, Animal::Lamb(second)), None);
    assert_eq!(why_not(&scribe, 25, ewe), [], "a single stays a day");
    scribe.note(at(80), Event::LetOut { animal: Animal::Lamb(first) });
    assert_eq!(in_pen(&scribe, Animal::Lamb(first)), None, "taken out alone");
    assert_eq!(in_pen(&scribe, Animal::Ewe(ewe)), Some(one));
}

#[test]
fn a_move_empties_the_first_pen_and_a_used_pen_is_soiled_until_it_is_cleaned() {
    let (mut scribe, ewe, _, one) = twins();
    let two = pen(&mut scribe, "2");
    let soiled = |scribe: &Scribe, pen| scribe.flock().pens[&pen].soiled();
    assert_eq!((soiled(&scribe, one), soiled(&scribe, two)), (true, false));
    put(&mut scribe, 120, ewe, two);
    let flock = scribe.flock();
    assert_eq!((flock.pens[&one].inside.len(), flock.pens[&two].inside.len()), (0, 1));
    assert_eq!((soiled(&scribe, one), soiled(&scribe, two)), (true, true));
    scribe.note(at(130), Event::PenCleaned { pen: one });
    assert_eq!((soiled(&scribe, one), soiled(&scribe, two)), (false, true));
}

#[test]
fn two_ewes_in_one_pen_are_both_there() {
    let (mut scribe, _, _, one) = twins();
    let other = scribe.ewe(at(0), "15");
    put(&mut scribe, 90, other, one);
    assert_eq!(scribe.flock().pens[&one].inside.len(), 2);
}

#[test]
fn a_ewe_without_a_lamb_waits_for_a_word() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-1000), "14");
    let pen = pen(&mut scribe, "1");
    put(&mut scribe, 60, ewe, pen);
    assert_eq!(why_not(&scribe, 100, ewe), [WhyNot::NoLambs]);
    none(&scribe, hour(100), let_out);
}
