//! A worse sign never quiets an alarm: of several clocks of a ewe the earliest and the most urgent stands.

use yeanling_core::book::{Animal, Awaited, Care, Event, EweId, Found, Part, Presentation, Sign, VetSaid};
use yeanling_core::units::Moment;
use yeanling_core::watch::{Completion, EweTask, Rejection, State, Task, Trouble, validate};

use super::{all, ewe_task, find, none};
use crate::scribe::{Scribe, at, hour};

fn with_ewe() -> (Scribe, EweId) {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-10_000), "14");
    (scribe, ewe)
}

fn said(animal: Animal, said: VetSaid) -> Event {
    Event::Care(Care::VetSaid { animal, said })
}

fn next_lamb(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::NextLamb { .. }))
}

fn hand_check(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::HandCheck { .. }))
}

fn put_right(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::PutRight { .. }))
}

fn afterbirth(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Afterbirth { .. }))
}

fn look(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Look))
}

#[track_caller]
fn state(scribe: &Scribe, minute: i64, kind: fn(&Task) -> bool) -> Option<State> {
    find(scribe, at(minute), kind).map(|duty| duty.state(at(minute)))
}

/// The most urgent state of any duty of the animal.
fn worst(scribe: &Scribe, now: Moment, animal: Animal) -> Option<State> {
    all(scribe, now).into_iter().filter(|duty| duty.subject() == animal).map(|duty| duty.state(now)).max()
}

#[test]
fn a_sign_after_the_first_lamb_leaves_the_late_hand_check_late() {
    let (mut scribe, ewe) = with_ewe();
    scribe.born(at(0), Some(ewe));
    assert_eq!(state(&scribe, 65, next_lamb), Some(State::Late));
    for minute in [5, 10, 20, 40, 59, 61, 65] {
        for sign in [
            Event::StrainingSeen { ewe },
            Event::WaterBagSeen { ewe },
            Event::SignSeen { ewe, sign: Sign::Restless },
            Event::SignSeen { ewe, sign: Sign::Apart },
        ] {
            let mut scribe = scribe.clone();
            scribe.note(at(minute), sign.clone());
            assert_eq!(state(&scribe, 65, next_lamb), Some(State::Late), "{sign:?} at {minute}");
            assert_eq!(state(&scribe, 120, next_lamb), Some(State::Late), "{sign:?} at {minute}");
        }
    }
    // A lamb that comes as it should, or a hand that found all well, begins it anew.
    for good in [
        Event::PartShowing { ewe, part: Part::ForeFeet },
        Event::HandChecked { ewe, found: Found::NothingYet },
    ] {
        let mut scribe = scribe.clone();
        scribe.note(at(66), good);
        assert_eq!(state(&scribe, 67, next_lamb), Some(State::Coming));
        assert_eq!(state(&scribe, 126, next_lamb), Some(State::Late));
    }
}

#[test]
fn waters_run_on_while_what_shows_is_no_lamb_that_comes_as_it_should() {
    for part in [Part::Tail, Part::Head, Part::HindFeet, Part::OneFoot] {
        let (mut scribe, ewe) = with_ewe();
        scribe.note(at(0), Event::WaterBagSeen { ewe });
        scribe.note(at(55), Event::PartShowing { ewe, part });
        let worst = worst(&scribe, at(61), Animal::Ewe(ewe));
        assert!(worst >= Some(State::Late), "{part:?}: {worst:?}");
    }
}

#[test]
fn a_tail_or_a_head_alone_is_due_now() {
    for part in [Part::Tail, Part::Head] {
        let (mut scribe, ewe) = with_ewe();
        scribe.note(at(0), Event::PartShowing { ewe, part });
        let duty = find(&scribe, at(0), put_right).expect("put it right");
        assert_eq!(
            (duty.state(at(0)), ewe_task(&duty)),
            (State::Now, EweTask::PutRight { trouble: Trouble::Shows(part) })
        );
        assert_eq!(state(&scribe, 15, put_right), Some(State::Danger));
    }
}

#[test]
fn what_was_late_stays_late_when_a_hand_finds_something_wrong() {
    let wrong =
        [Found::Lamb(Presentation::OneLegBack), Found::Lamb(Presentation::HeadBack), Found::CervixClosed];
    for found in wrong {
        let (mut scribe, ewe) = with_ewe();
        scribe.note(at(0), Event::WaterBagSeen { ewe });
        scribe.note(at(62), Event::HandChecked { ewe, found });
        let worst = worst(&scribe, at(63), Animal::Ewe(ewe));
        assert!(worst >= Some(State::Late), "{found:?}: {worst:?}");
    }
}

#[test]
fn what_was_found_last_stands_and_put_right_is_an_answer() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::HandChecked { ewe, found: Found::Lamb(Presentation::OneLegBack) });
    let mut shows = scribe.clone();
    shows.note(at(8), Event::PartShowing { ewe, part: Part::FeetAndNose });
    none(&shows, at(9), put_right);
    let mut righted = scribe.clone();
    righted.note(at(8), Event::Care(Care::PutRight { ewe }));
    none(&righted, at(9), put_right);
    assert_eq!(
        state(&righted, 38, hand_check),
        Some(State::Now),
        "and born within the half hour, or a hand again"
    );
    // Worse after that is worse.
    righted.note(at(12), Event::PartShowing { ewe, part: Part::Tail });
    assert_eq!(state(&righted, 12, put_right), Some(State::Now));
}

#[test]
fn a_call_to_the_vet_ends_no_danger_of_a_ewe_and_each_call_counts() {
    let (mut scribe, ewe) = with_ewe();
    let animal = Animal::Ewe(ewe);
    scribe.note(at(0), Event::HandChecked { ewe, found: Found::Lamb(Presentation::Crosswise) });
    for minute in [1, 20, 40] {
        scribe.note(at(minute), Event::VetCalled { animal });
        assert_eq!(state(&scribe, minute, put_right), Some(State::Danger));
        let looked = find(&scribe, at(minute), look).expect("she is looked at again");
        assert_eq!(looked.due, at(21), "one call more makes no look later");
    }
    // Nobody reached: the call is one tap again.
    scribe.note(at(41), said(animal, VetSaid::NobodyReached));
    let duty = find(&scribe, at(41), put_right).expect("the danger");
    assert_eq!(duty.completion, Completion::Note(Event::VetCalled { animal }));
    // Advice is a plan and a look, no end.
    scribe.note(at(45), said(animal, VetSaid::Advised { what: None, look_again: at(75) }));
    assert_eq!(state(&scribe, 46, put_right), Some(State::Danger));
    assert_eq!(find(&scribe, at(46), look).map(|duty| duty.due), Some(at(75)));
    // The vet saw her and left a plan: amber until the look; worse brings it back.
    scribe.note(at(90), said(animal, VetSaid::Saw { plan: None, look_again: at(150) }));
    assert_eq!(state(&scribe, 91, put_right), Some(State::Now));
    scribe.note(at(100), Event::HandChecked { ewe, found: Found::Lamb(Presentation::TooBig) });
    assert_eq!(state(&scribe, 101, put_right), Some(State::Danger));
    // A birth ends labor's dangers.
    scribe.born(at(110), Some(ewe));
    none(&scribe, at(111), put_right);
}

#[test]
fn another_lamb_ends_by_itself_only_where_nothing_says_that_there_is_one() {
    let (mut scribe, ewe) = with_ewe();
    scribe.born(at(0), Some(ewe));
    assert_eq!(state(&scribe, 1439, next_lamb), Some(State::Late));
    none(&scribe, hour(24), next_lamb);
    let mut strains = scribe.clone();
    strains.note(hour(5), Event::StrainingSeen { ewe });
    assert!(find(&strains, hour(30), next_lamb).is_some());
    // Scanned with two, one born.
    let mut scanned = Scribe::new(2);
    let ewe = scanned.ewe(at(-200_000), "15");
    scanned.note(at(-80_000), Event::Scanned { ewe, lambs: 2, days: None });
    scanned.born(at(0), Some(ewe));
    assert!(find(&scanned, hour(30), next_lamb).is_some());
    assert!(find(&scanned, hour(160), next_lamb).is_some(), "as long as a litter can last");
    scanned.born(hour(31), Some(ewe));
    none(&scanned, hour(56), next_lamb);
}

#[test]
fn she_is_not_said_to_be_not_lambing_while_a_lamb_shows() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::SignSeen { ewe, sign: Sign::Restless });
    let ask =
        |scribe: &Scribe| validate(&scribe.flock(), &scribe.book, &Event::NotLambing { ewe }, at(20), at(20));
    assert_eq!(ask(&scribe), Ok(()));
    scribe.note(at(10), Event::PartShowing { ewe, part: Part::OneFoot });
    assert_eq!(ask(&scribe), Err(Rejection::SheIsLambing));
}

#[test]
fn a_foster_dam_is_asked_for_no_lamb_and_no_afterbirth() {
    let (mut scribe, dam) = with_ewe();
    let other = scribe.ewe(at(-10_000), "15");
    let lamb = scribe.born(at(0), Some(dam));
    scribe.note(at(10), Event::Life(yeanling_core::book::Life::Fostered { lamb, dam: other }));
    for now in [at(65), hour(7), hour(20)] {
        assert_eq!(all(&scribe, now).iter().filter(|duty| duty.subject() == Animal::Ewe(other)).count(), 0);
    }
    assert_eq!(state(&scribe, 65, next_lamb), Some(State::Late), "her own dam's goes on");
}

#[test]
fn the_afterbirth_has_three_answers() {
    let (mut scribe, ewe) = with_ewe();
    scribe.born(at(0), Some(ewe));
    let awaited = |seen| Event::Care(Care::AfterbirthAwaited { ewe, seen });
    let of =
        |scribe: &Scribe, now| find(scribe, now, afterbirth).map(|duty| (duty.state(now), ewe_task(&duty)));
    let mut bright = scribe.clone();
    bright.note(hour(7), awaited(Awaited::NotSeenBright));
    assert_eq!(
        of(&bright, hour(12)),
        Some((State::Coming, EweTask::Afterbirth { vet: false, hanging: false }))
    );
    assert_eq!(of(&bright, hour(13)).map(|(state, _)| state), Some(State::Now));
    // It hangs: still due, and the vet's from where it is late.
    scribe.note(hour(7), awaited(Awaited::Hanging));
    assert_eq!(of(&scribe, hour(8)), Some((State::Now, EweTask::Afterbirth { vet: false, hanging: true })));
    assert_eq!(of(&scribe, hour(12)), Some((State::Late, EweTask::Afterbirth { vet: true, hanging: true })));
    let tap = find(&scribe, hour(12), afterbirth).map(|duty| duty.completion);
    assert_eq!(tap, Some(Completion::Note(Event::AfterbirthPassed { ewe })), "passed stays one tap");
    scribe.note(hour(13), Event::AfterbirthPassed { ewe });
    assert_eq!(of(&scribe, hour(14)), None);
}
