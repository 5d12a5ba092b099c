//! The clocks around lambing: each one minute before, at, and after its limits, and what ends it.

use yeanling_core::book::{Animal, Event, EweId, Found, LambId, Part, Presentation, Sign};
use yeanling_core::settings::{Choice, LaborLimits};
use yeanling_core::units::Moment;
use yeanling_core::watch::{Completion, EweTask, State, Task};

use super::{all, ewe_task, find, none};
use crate::scribe::{Scribe, at, birth, hour};

fn with_ewe() -> (Scribe, EweId) {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(-10_000), "14");
    (scribe, ewe)
}

fn restless(ewe: EweId) -> Event {
    Event::SignSeen { ewe, sign: Sign::Restless }
}

fn checked(ewe: EweId, found: Found) -> Event {
    Event::HandChecked { ewe, found }
}

fn vet(ewe: EweId) -> Event {
    Event::VetCalled { animal: Animal::Ewe(ewe) }
}

fn looked(ewe: EweId) -> Event {
    Event::LookedAt { animal: Animal::Ewe(ewe) }
}

fn look(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Look))
}

fn long_restless(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::LongRestless))
}

fn hand_check(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::HandCheck { .. }))
}

fn progress(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Progress))
}

fn neck(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::CervixClosed))
}

fn put_right(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::PutRight { .. }))
}

fn next_lamb(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::NextLamb { .. }))
}

fn afterbirth(task: &Task) -> bool {
    matches!(task, Task::Ewe(_, EweTask::Afterbirth { .. }))
}

/// Fails unless the duty is of these states one minute before, at and one minute after an instant.
#[track_caller]
fn turns(scribe: &Scribe, kind: fn(&Task) -> bool, minute: i64, before: State, after: State) {
    let state = |minute| find(scribe, at(minute), kind).expect("it is due or coming").state(at(minute));
    assert_eq!((state(minute - 1), state(minute), state(minute + 1)), (before, after, after));
}

#[track_caller]
fn one_tap(scribe: &Scribe, now: Moment, kind: fn(&Task) -> bool, event: Event) {
    assert_eq!(find(scribe, now, kind).map(|duty| duty.completion), Some(Completion::Note(event)));
}

#[test]
fn a_restless_ewe_is_looked_at_hourly_and_a_look_starts_the_hour_anew() {
    // Common practice: progress at least hourly.
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), restless(ewe));
    turns(&scribe, look, 60, State::Coming, State::Now);
    turns(&scribe, look, 90, State::Now, State::Late);
    one_tap(&scribe, at(60), look, looked(ewe));
    scribe.note(at(65), looked(ewe));
    turns(&scribe, look, 125, State::Coming, State::Now);
}

#[test]
fn restless_over_six_hours_is_red_and_looks_do_not_stop_it() {
    // Source: North Canterbury Vets.
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), restless(ewe));
    scribe.note(at(300), looked(ewe));
    turns(&scribe, long_restless, 360, State::Coming, State::Late);
    // Neither waters nor a call to the vet say why; a hand that found all well begins it anew.
    for no_answer in [vet(ewe), Event::WaterBagSeen { ewe }, restless(ewe), Event::StrainingSeen { ewe }] {
        let mut scribe = scribe.clone();
        scribe.note(at(361), no_answer);
        assert_eq!(find(&scribe, at(362), long_restless).map(|duty| duty.state(at(362))), Some(State::Late));
    }
    scribe.note(at(361), checked(ewe, Found::NothingYet));
    turns(&scribe, long_restless, 721, State::Coming, State::Late);
    scribe.note(at(722), Event::PartShowing { ewe, part: Part::ForeFeet });
    none(&scribe, at(722), long_restless);
}

#[test]
fn other_signs_start_no_clock_but_keep_her_in_sight() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::SignSeen { ewe, sign: Sign::UdderTight });
    assert_eq!(all(&scribe, hour(12)), vec![]);
    let flock = scribe.flock();
    assert_eq!(flock.at_work.iter().copied().collect::<Vec<_>>(), [ewe]);
    assert!(!flock.ewe(ewe).and_then(|ewe| ewe.labor.as_ref()).expect("near").runs());
}

#[test]
fn a_bag_at_0210_is_amber_at_0245_and_red_at_0315() {
    // Source: Maryland, Anexa, CHB Vets: 60 min; extension guides (memory): 30 min.
    let (mut scribe, ewe) = with_ewe();
    let bag: Moment = "2026-02-25T02:10:00.000-05:00".parse().expect("a moment");
    scribe.note(bag, Event::WaterBagSeen { ewe });
    let state = |clock: &str| {
        let now: Moment = format!("2026-02-25T{clock}:00.000-05:00").parse().expect("a moment");
        let duty = find(&scribe, now, hand_check).expect("it runs");
        (duty.state(now), ewe_task(&duty))
    };
    let early = EweTask::HandCheck { step_in: false };
    assert_eq!(state("02:39"), (State::Coming, early));
    assert_eq!(state("02:40"), (State::Now, early));
    assert_eq!(state("02:45"), (State::Now, early));
    assert_eq!(state("03:09"), (State::Now, early));
    assert_eq!(state("03:10"), (State::Late, EweTask::HandCheck { step_in: true }));
    assert_eq!(state("03:15"), (State::Late, EweTask::HandCheck { step_in: true }));
}

#[test]
fn straining_runs_on_the_same_clock_from_whichever_came_first() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::StrainingSeen { ewe });
    scribe.note(at(20), Event::WaterBagSeen { ewe });
    turns(&scribe, hand_check, 30, State::Coming, State::Now);
    turns(&scribe, hand_check, 60, State::Now, State::Late);
}

#[test]
fn a_hand_that_finds_all_in_order_starts_the_clock_anew() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::WaterBagSeen { ewe });
    scribe.note(at(35), checked(ewe, Found::NothingYet));
    turns(&scribe, hand_check, 65, State::Coming, State::Now);
    scribe.note(at(70), checked(ewe, Found::Lamb(Presentation::Normal)));
    turns(&scribe, hand_check, 100, State::Coming, State::Now);
    none(&scribe, at(80), put_right);
}

#[test]
fn what_shows_comes_further_in_half_an_hour_and_a_look_is_no_progress() {
    // Memory and common practice: progress at least every 30 min.
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::WaterBagSeen { ewe });
    scribe.note(at(10), Event::PartShowing { ewe, part: Part::ForeFeet });
    none(&scribe, at(40), hand_check);
    scribe.note(at(30), looked(ewe));
    turns(&scribe, progress, 40, State::Coming, State::Now);
    turns(&scribe, progress, 55, State::Now, State::Late);
    scribe.note(at(42), Event::PartShowing { ewe, part: Part::FeetAndNose });
    turns(&scribe, progress, 72, State::Coming, State::Now);
    // The same part once more is no progress.
    scribe.note(at(60), Event::PartShowing { ewe, part: Part::FeetAndNose });
    turns(&scribe, progress, 72, State::Coming, State::Now);
    // Help takes the clock over as it stands.
    scribe.note(at(90), Event::HelpBegun { ewe });
    none(&scribe, at(91), progress);
    assert_eq!(find(&scribe, at(91), put_right).map(|duty| duty.state(at(91))), Some(State::Late));
}

#[test]
fn parts_may_show_before_any_waters() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::PartShowing { ewe, part: Part::OneFoot });
    scribe.note(at(5), Event::WaterBagSeen { ewe });
    turns(&scribe, progress, 30, State::Coming, State::Now);
}

#[test]
fn a_tight_neck_is_the_vets_after_ten_minutes() {
    // Source: NADIS, gentle try of at most 10 min.
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), checked(ewe, Found::CervixClosed));
    turns(&scribe, neck, 10, State::Coming, State::Danger);
    one_tap(&scribe, at(10), neck, vet(ewe));
    none(&scribe, at(10), hand_check);
    // A second try does not begin the ten minutes anew, and a call ends no danger.
    scribe.note(at(9), checked(ewe, Found::CervixClosed));
    turns(&scribe, neck, 10, State::Coming, State::Danger);
    scribe.note(at(11), vet(ewe));
    let duty = find(&scribe, at(12), neck).expect("the danger is there");
    assert_eq!((duty.state(at(12)), duty.completion), (State::Danger, Completion::Open));
    assert_eq!(duty.vet.map(|called| called.look_again), Some(at(31)));
    scribe.note(at(40), Event::PartShowing { ewe, part: Part::ForeFeet });
    none(&scribe, at(40), neck);
}

#[test]
fn a_lamb_that_is_not_put_right_in_ten_minutes_is_the_vets_and_red_at_fifteen() {
    // Source: the veterinary red list, 10 to 15 min.
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), checked(ewe, Found::Lamb(Presentation::OneLegBack)));
    turns(&scribe, put_right, 10, State::Coming, State::Now);
    turns(&scribe, put_right, 15, State::Now, State::Danger);
    one_tap(&scribe, at(10), put_right, vet(ewe));
    scribe.note(at(12), birth(Some(ewe), None));
    none(&scribe, at(13), put_right);
}

#[test]
fn a_lamb_across_goes_to_the_vet_at_once() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), checked(ewe, Found::Lamb(Presentation::Crosswise)));
    assert_eq!(find(&scribe, at(0), put_right).map(|duty| duty.state(at(0))), Some(State::Danger));
}

#[test]
fn help_without_a_known_lie_runs_on_the_same_clock() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::PartShowing { ewe, part: Part::ForeFeet });
    scribe.note(at(20), Event::HelpBegun { ewe });
    turns(&scribe, put_right, 30, State::Coming, State::Now);
}

#[test]
fn while_the_vet_is_on_the_way_she_is_looked_at_every_twenty_minutes() {
    // Ours.
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::WaterBagSeen { ewe });
    scribe.note(at(61), vet(ewe));
    assert_eq!(find(&scribe, at(62), hand_check).map(|duty| duty.state(at(62))), Some(State::Late));
    turns(&scribe, look, 81, State::Coming, State::Now);
    scribe.note(at(92), looked(ewe));
    turns(&scribe, look, 112, State::Coming, State::Now);
    // A second call makes no look later, and counts as the first did.
    scribe.note(at(105), vet(ewe));
    turns(&scribe, look, 112, State::Coming, State::Now);
    scribe.note(at(113), looked(ewe));
    turns(&scribe, look, 133, State::Coming, State::Now);
}

#[test]
fn a_birth_ends_what_came_before_and_starts_the_next_lambs_clock() {
    // Source: Anexa, next lamb within 30 min, check at 60.
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), restless(ewe));
    scribe.note(at(30), Event::WaterBagSeen { ewe });
    scribe.note(at(40), Event::PartShowing { ewe, part: Part::ForeFeet });
    let lamb = scribe.born(at(50), Some(ewe));
    for kind in [look, long_restless, hand_check, progress, put_right] {
        none(&scribe, at(51), kind);
    }
    turns(&scribe, next_lamb, 80, State::Coming, State::Now);
    turns(&scribe, next_lamb, 110, State::Now, State::Late);
    assert_eq!(
        find(&scribe, at(110), next_lamb).map(|duty| ewe_task(&duty)),
        Some(EweTask::NextLamb { check: true })
    );
    one_tap(&scribe, at(80), next_lamb, Event::AllBorn { lamb });
    let second: LambId = scribe.born(at(90), Some(ewe));
    turns(&scribe, next_lamb, 120, State::Coming, State::Now);
    let mut said = scribe.clone();
    said.note(at(121), Event::AllBorn { lamb: second });
    none(&said, at(122), next_lamb);
    scribe.note(at(121), checked(ewe, Found::Empty));
    none(&scribe, at(122), next_lamb);
    assert_eq!(scribe.flock().at_work.len(), 0);
}

#[test]
fn a_second_bag_after_a_birth_has_its_own_clock_and_leaves_the_next_lambs_as_it_is() {
    let (mut scribe, ewe) = with_ewe();
    scribe.born(at(0), Some(ewe));
    scribe.note(at(10), Event::WaterBagSeen { ewe });
    turns(&scribe, next_lamb, 30, State::Coming, State::Now);
    turns(&scribe, hand_check, 40, State::Coming, State::Now);
    turns(&scribe, next_lamb, 60, State::Now, State::Late);
}

#[test]
fn a_lamb_noted_before_any_labor_leaves_none_open() {
    let (mut scribe, ewe) = with_ewe();
    scribe.born(at(30), Some(ewe));
    // Written later, seen before.
    scribe.note_when(at(0), at(40), Event::WaterBagSeen { ewe });
    none(&scribe, at(45), hand_check);
    assert_eq!(scribe.flock().ewe(ewe).and_then(|ewe| ewe.labor.clone()), None);
}

#[test]
fn the_last_lamb_at_0400_asks_at_1000_is_amber_at_1600_and_red_at_2200() {
    // Source: MSD Vet Manual.
    let (mut scribe, ewe) = with_ewe();
    let last: Moment = "2026-02-25T04:00:00.000-05:00".parse().expect("a moment");
    scribe.note(last, birth(Some(ewe), None));
    let state = |clock: &str| {
        let now: Moment = format!("2026-02-25T{clock}:00.000-05:00").parse().expect("a moment");
        find(&scribe, now, afterbirth).map(|duty| (duty.state(now), ewe_task(&duty)))
    };
    let (amber, red) = (
        EweTask::Afterbirth { vet: false, hanging: false },
        EweTask::Afterbirth { vet: true, hanging: false },
    );
    assert_eq!(state("08:59"), None);
    assert_eq!(state("09:59"), Some((State::Coming, amber)));
    assert_eq!(state("10:00"), Some((State::Now, amber)));
    assert_eq!(state("15:59"), Some((State::Now, amber)));
    assert_eq!(state("16:00"), Some((State::Late, amber)));
    assert_eq!(state("21:59"), Some((State::Late, amber)));
    assert_eq!(state("22:00"), Some((State::Late, red)));
    scribe.note(last, Event::AfterbirthPassed { ewe });
    none(&scribe, last + yeanling_core::units::TimeDelta::hours(7), afterbirth);
}

#[test]
fn the_afterbirth_is_asked_for_three_days() {
    let (mut scribe, ewe) = with_ewe();
    scribe.born(at(0), Some(ewe));
    assert!(find(&scribe, hour(72), afterbirth).is_some());
    none(&scribe, hour(72) + crate::scribe::MS, afterbirth);
}

#[test]
fn two_labors_of_one_ewe_are_one() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), restless(ewe));
    scribe.note(at(50), restless(ewe));
    turns(&scribe, look, 60, State::Coming, State::Now);
}

#[test]
fn she_was_not_lambing_after_all() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), restless(ewe));
    scribe.note(at(30), Event::NotLambing { ewe });
    assert_eq!(all(&scribe, hour(8)), vec![]);
    scribe.note(hour(9), restless(ewe));
    assert!(find(&scribe, hour(10), look).is_some());
}

#[test]
fn a_dead_ewe_has_no_clocks() {
    let (mut scribe, ewe) = with_ewe();
    scribe.note(at(0), Event::WaterBagSeen { ewe });
    let lamb = scribe.born(at(20), Some(ewe));
    scribe.died(at(25), Animal::Ewe(ewe));
    let duties = all(&scribe, hour(8));
    assert!(duties.iter().all(|duty| duty.subject() == Animal::Lamb(lamb)), "{duties:?}");
}

#[test]
fn the_farm_sets_its_own_limits() {
    let (mut scribe, ewe) = with_ewe();
    let limits = LaborLimits { look_minutes: 30, hand_check_minutes: 20, ..LaborLimits::default() };
    scribe.note(at(-1), Event::Chose(Choice::LaborLimits(limits)));
    scribe.note(at(0), restless(ewe));
    turns(&scribe, look, 30, State::Coming, State::Now);
    // Without the look, it would be as late as that.
    scribe.note(at(39), Event::LookedAt { animal: Animal::Ewe(ewe) });
    scribe.note(at(40), Event::WaterBagSeen { ewe });
    turns(&scribe, hand_check, 60, State::Coming, State::Now);
}
