//! An animal that is not right: the vet now or today, a look to the millisecond, and what changes either.

use yeanling_core::book::{Animal, Care, Event, EweId, Illness, LambId, VetSaid};
use yeanling_core::reckon::illness::ewe;
use yeanling_core::terms::{Change, EweSign, EweStage, Gate, LambSign};
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::{
    EweTask, Hold, LambTask, State, Task, ewe_illness, hold_milk, stage_of, validate,
};

use super::{check, ewe_task, find, none};
use crate::scribe::{Scribe, at, hour};

fn ewe_seen(ewe: EweId, signs: &[EweSign]) -> Event {
    let good = Gate::Good;
    Event::Illness(Illness::EweSeen {
        ewe,
        stage: EweStage::Milking,
        standing: good,
        eating: good,
        nothing_out: good,
        signs: signs.to_vec(),
        onset: None,
    })
}

fn lamb_seen(lamb: LambId, signs: &[LambSign]) -> Event {
    let good = Gate::Good;
    Event::Illness(Illness::LambSeen {
        lamb,
        head_up: good,
        swallows: good,
        warm: good,
        signs: signs.to_vec(),
    })
}

fn changed(ewe: EweId, change: Change) -> Event {
    Event::Illness(Illness::Changed { animal: Animal::Ewe(ewe), change })
}

fn said(ewe: EweId, said: VetSaid) -> Event {
    Event::Care(Care::VetSaid { animal: Animal::Ewe(ewe), said })
}

fn vet(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Ill { .. }) | Task::Lamb(_, LambTask::Ill { .. }))
}

fn look(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::IllLook { .. }) | Task::Lamb(_, LambTask::IllLook { .. }))
}

#[track_caller]
fn state(scribe: &Scribe, minute: i64, kind: fn(&Task) -> bool) -> Option<State> {
    find(scribe, at(minute), kind).map(|duty| duty.state(at(minute)))
}

#[test]
fn a_lame_ewe_is_looked_at_in_a_day_and_each_look_says_when_the_next_is() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "15");
    scribe.note(at(10), ewe_seen(ewe, &[EweSign::Lame]));
    none(&scribe, at(10), vet);
    check(&scribe, at(10), look, at(10) + TimeDelta::hours(24), at(40) + TimeDelta::hours(24));
    scribe.note(hour(20), changed(ewe, Change::Better));
    check(&scribe, hour(20), look, hour(44), hour(44) + TimeDelta::minutes(30));
}

#[test]
fn no_better_is_today_worse_is_now_and_a_vet_who_was_not_reached_is_now() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "15");
    scribe.note(at(10), ewe_seen(ewe, &[EweSign::Lame]));
    let mut worse = scribe.clone();
    scribe.note(at(100), changed(ewe, Change::Same));
    let today = find(&scribe, at(100), vet).expect("the vet today");
    assert_eq!(ewe_task(&today), EweTask::Ill { now: false, row: Some(ewe::Row::Lame) });
    assert_eq!((today.danger, today.late), (None, at(10) + TimeDelta::hours(12)));
    scribe.note(at(110), said(ewe, VetSaid::NobodyReached));
    assert_eq!(state(&scribe, 110, vet), Some(State::Danger));
    worse.note(at(100), changed(ewe, Change::Worse));
    assert_eq!(state(&worse, 100, vet), Some(State::Danger));
}

#[test]
fn what_is_now_ends_with_the_vets_visit_or_well_again_and_never_with_a_call() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "15");
    scribe.note(at(10), ewe_seen(ewe, &[EweSign::LeftFlankDrum]));
    assert_eq!(state(&scribe, 10, vet), Some(State::Danger));
    scribe.note(at(12), Event::VetCalled { animal: Animal::Ewe(ewe) });
    assert_eq!(state(&scribe, 600, vet), Some(State::Danger));
    scribe.note(at(13), said(ewe, VetSaid::Advised { what: None, look_again: at(30) }));
    assert_eq!(state(&scribe, 600, vet), Some(State::Danger));
    // A bright look takes nothing back that was not about that very sign.
    scribe.note(at(20), ewe_seen(ewe, &[EweSign::Bright]));
    assert_eq!(state(&scribe, 600, vet), Some(State::Danger));
    let mut well = scribe.clone();
    scribe.note(at(60), said(ewe, VetSaid::Saw { plan: None, look_again: at(300) }));
    assert_eq!(state(&scribe, 61, vet), Some(State::Now));
    assert_eq!(state(&scribe, 301, vet), Some(State::Late));
    scribe.note(at(400), ewe_seen(ewe, &[EweSign::Fits]));
    assert_eq!(state(&scribe, 400, vet), Some(State::Danger));
    well.note(at(60), changed(ewe, Change::Well));
    none(&well, at(60), vet);
    none(&well, at(60), look);
}

#[test]
fn a_second_look_with_fewer_signs_lowers_nothing() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "15");
    scribe.note(at(10), ewe_seen(ewe, &[EweSign::UdderCold, EweSign::Lame]));
    scribe.note(at(70), ewe_seen(ewe, &[EweSign::Lame]));
    assert_eq!(state(&scribe, 70, vet), Some(State::Danger));
}

#[test]
fn a_tight_belly_or_a_wet_chin_holds_milk_until_the_vet_allows_it() {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    // It may be wet from birth: until it stays dry.
    scribe.note(at(30), lamb_seen(lamb, &[LambSign::WetChin]));
    let hold = |scribe: &Scribe| scribe.flock().lamb(lamb).and_then(hold_milk);
    assert!(matches!(hold(&scribe), Some(Hold::Mouth { .. })));
    scribe.note(at(60), lamb_seen(lamb, &[LambSign::ChinDry]));
    assert_eq!(hold(&scribe), None);
    scribe.note(hour(26), lamb_seen(lamb, &[LambSign::WetChin]));
    assert_eq!(hold(&scribe), Some(Hold::Belly { since: hour(26) }));
    let allowed = Event::Illness(Illness::MilkAllowed { lamb });
    assert!(validate(&scribe.flock(), &scribe.book, &allowed, hour(27), hour(27)).is_ok());
    scribe.note(
        hour(26),
        Event::Illness(Illness::Changed { animal: Animal::Lamb(lamb), change: Change::Well }),
    );
    assert_eq!(hold(&scribe), Some(Hold::Belly { since: hour(26) }));
    scribe.note(hour(28), allowed);
    assert_eq!(hold(&scribe), None);
    scribe.note(hour(29), lamb_seen(lamb, &[LambSign::TightBelly]));
    assert_eq!(hold(&scribe), Some(Hold::Belly { since: hour(29) }));
}

#[test]
fn milk_is_allowed_again_only_where_something_held_it() {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    let allowed = Event::Illness(Illness::MilkAllowed { lamb });
    assert!(validate(&scribe.flock(), &scribe.book, &allowed, at(10), at(10)).is_err());
}

#[test]
fn her_stage_goes_by_what_the_book_knows() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "15");
    let stage = |scribe: &Scribe, now| {
        let flock = scribe.flock();
        stage_of(&flock, flock.ewe(ewe).expect("a ewe"), now)
    };
    assert_eq!(stage(&scribe, at(1)), EweStage::Unknown);
    scribe.note(at(2), Event::StrainingSeen { ewe });
    assert_eq!(stage(&scribe, at(3)), EweStage::Labor);
    let lamb = scribe.born(at(10), Some(ewe));
    scribe.note(at(11), Event::AllBorn { lamb });
    assert_eq!(stage(&scribe, hour(40)), EweStage::AfterLambing);
    assert_eq!(stage(&scribe, hour(24 * 10)), EweStage::Milking);
}

#[test]
fn a_scan_that_tells_the_age_of_her_lambs_says_where_she_is_without_a_ram() {
    // Source: worked case 1 asks for the last six weeks; lambs of 80 days are born 67 days later (147).
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "15");
    scribe.note(at(1), Event::Scanned { ewe, lambs: 2, days: Some(80) });
    let stage = |days: i64| {
        let flock = scribe.flock();
        stage_of(&flock, flock.ewe(ewe).expect("a ewe"), at(1) + TimeDelta::days(days))
    };
    assert_eq!(stage(10), EweStage::Other);
    assert_eq!(stage(16), EweStage::LateInLamb);
    assert_eq!(stage(57), EweStage::LateInLamb);
    assert_eq!(stage(90), EweStage::Unknown, "170 days: nobody carries so long");
}

#[test]
fn an_afterbirth_becomes_the_vets_with_the_hours() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "15");
    scribe.born(at(0), Some(ewe));
    scribe.note(hour(7), ewe_seen(ewe, &[EweSign::AfterbirthHangs]));
    let now = |scribe: &Scribe, hours| {
        let flock = scribe.flock();
        ewe_illness(&flock, flock.ewe(ewe).expect("a ewe"), hour(hours)).map(|course| course.urgency)
    };
    use yeanling_core::reckon::illness::Urgency;
    assert_eq!(now(&scribe, 7), Some(Urgency::hours(6)));
    assert_eq!(now(&scribe, 13), Some(Urgency::Today));
    assert_eq!(now(&scribe, 19), Some(Urgency::Now));
}
