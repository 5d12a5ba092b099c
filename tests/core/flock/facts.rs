//! What was seen of an animal, and what follows from it.

use yeanling_core::book::{Animal, Belly, Event, LambId, LambingEase, Milk, Sex, Way};
use yeanling_core::flock::Lamb;
use yeanling_core::settings::{Choice, DayRule, FarmSettings, Housing, Limits};
use yeanling_core::units::{Mass, Moment, System, TimeDelta};

use crate::scribe::{MS, Scribe, at, birth, fed, hour, kg, ml, scored};

fn with_lamb() -> (Scribe, LambId) {
    let mut scribe = Scribe::new(1);
    let lamb = scribe.born(at(0), None);
    (scribe, lamb)
}

#[track_caller]
fn lamb(scribe: &Scribe, id: LambId) -> Lamb {
    scribe.flock().lamb(id).expect("it is here").clone()
}

#[test]
fn every_fact_is_told_of_its_lamb_in_the_order_in_which_it_happened() {
    let (mut scribe, id) = with_lamb();
    scribe.sucked(at(50), id);
    scribe.sucked(at(40), id);
    scribe.note(at(31), Event::Stood { lamb: id });
    scribe.note(at(8), Event::NavelDipped { lamb: id });
    scribe.note(at(3), Event::BirthEase { lamb: id, ease: LambingEase::Vet });
    scribe.note(at(5), scored(id, 2));
    scribe.note(at(6), Event::BellyFelt { lamb: id, belly: Belly::Hollow });
    scribe.weighed(at(60), id, 4.0);
    let feed = scribe.note(at(70), fed(id, 60.0, Milk::PowderColostrum, Way::Tube));
    let lamb = lamb(&scribe, id);
    assert_eq!(lamb.sucked, [at(40), at(50)]);
    assert_eq!((lamb.stood, lamb.navel, lamb.ease), (vec![at(31)], vec![at(8)], Some(LambingEase::Vet)));
    assert_eq!((lamb.vigor[0].at, lamb.vigor[0].score), (at(5), 2));
    assert_eq!((lamb.belly[0].at, lamb.belly[0].belly), (at(6), Belly::Hollow));
    assert_eq!((lamb.weights[0].at, lamb.weights[0].mass), (at(60), kg(4.0)));
    let [fed] = lamb.feeds[..] else { panic!("one feed: {:?}", lamb.feeds) };
    assert_eq!(
        (fed.entry, fed.at, fed.volume, fed.milk, fed.way),
        (feed, at(70), ml(60.0), Milk::PowderColostrum, Way::Tube)
    );
    assert_eq!(scribe.flock().lamb(id).and_then(Lamb::first_milk), Some(at(40)));
}

#[test]
fn facts_of_a_birth_undone_wait_and_come_back_with_it() {
    let (mut scribe, id) = with_lamb();
    scribe.weighed(at(30), id, 4.0);
    scribe.sucked(at(40), id);
    let before = lamb(&scribe, id);
    scribe.strike(at(50), id.entry());
    assert_eq!(scribe.flock().lamb(id), None);
    assert!(scribe.flock().litters.is_empty());
    scribe.weighed(at(55), id, 4.1);
    scribe.restore(at(60), id.entry());
    let after = lamb(&scribe, id);
    assert_eq!((after.weights.len(), after.sucked.len()), (2, 1));
    assert_eq!(Lamb { weights: before.weights.clone(), ..after }, before);
}

#[test]
fn a_fact_arrives_before_its_lamb_and_is_told_when_that_comes() {
    let (scribe, id) = with_lamb();
    let mut other = Scribe::new(2);
    other.sucked(at(20), id);
    assert!(other.flock().lambs.is_empty());
    other.meet(&scribe);
    assert_eq!(lamb(&other, id).sucked, [at(20)]);
}

#[test]
fn two_phones_that_meet_have_one_flock() {
    let (mut one, id) = with_lamb();
    let mut other = Scribe::new(2);
    other.meet(&one);
    one.weighed(at(30), id, 4.0);
    other.sucked(at(25), id);
    other.strike(at(31), id.entry());
    one.meet(&other);
    other.meet(&one);
    assert_eq!(one.book, other.book);
    assert_eq!(one.flock(), other.flock());
    assert_eq!(one.flock().lamb(id), None);
    one.restore(at(10), id.entry());
    other.meet(&one);
    assert_eq!(lamb(&other, id).sucked, [at(25)], "restored by a phone whose clock is behind");
}

#[track_caller]
fn birth_weight(minutes: &[(TimeDelta, f64)], expected: Option<f64>) {
    let (mut scribe, id) = with_lamb();
    for (age, kilograms) in minutes {
        scribe.weighed(at(0) + *age, id, *kilograms);
    }
    assert_eq!(lamb(&scribe, id).birth_weight(), expected.map(kg));
}

#[test]
fn a_birth_weight_is_the_first_within_a_day() {
    let day = TimeDelta::hours(24);
    birth_weight(&[], None);
    birth_weight(&[(TimeDelta::zero(), 4.0)], Some(4.0));
    birth_weight(&[(day - MS, 4.0)], Some(4.0));
    birth_weight(&[(day, 4.0)], None);
    birth_weight(&[(TimeDelta::hours(3), 4.2), (TimeDelta::hours(1), 4.0), (day, 5.0)], Some(4.0));
}

#[track_caller]
fn recent_weight(scribe: &Scribe, id: LambId, now: Moment, expected: Option<Mass>) {
    assert_eq!(lamb(scribe, id).recent_weight(now), expected, "{now}");
}

#[test]
fn a_weight_is_present_for_four_days() {
    let (mut scribe, id) = with_lamb();
    recent_weight(&scribe, id, at(0), None);
    scribe.weighed(at(0), id, 4.0);
    let four = TimeDelta::days(4);
    recent_weight(&scribe, id, at(0), Some(kg(4.0)));
    recent_weight(&scribe, id, at(0) + four, Some(kg(4.0)));
    recent_weight(&scribe, id, at(0) + four + MS, None);
    recent_weight(&scribe, id, at(0) - MS, None);
    scribe.weighed(hour(72), id, 5.0);
    recent_weight(&scribe, id, hour(72) - MS, Some(kg(4.0)));
    recent_weight(&scribe, id, hour(72), Some(kg(5.0)));
    recent_weight(&scribe, id, hour(72) + four + MS, None);
    assert_eq!(lamb(&scribe, id).weight(), Some(kg(5.0)), "the latest, however old");
}

#[test]
fn a_lamb_lives_from_the_hand_until_it_is_seen_to_suck() {
    let (mut scribe, id) = with_lamb();
    assert!(!lamb(&scribe, id).hand_fed());
    scribe.sucked(at(10), id);
    assert!(!lamb(&scribe, id).hand_fed());
    scribe.fed(at(20), id, 100.0);
    assert!(lamb(&scribe, id).hand_fed());
    let sucked = scribe.sucked(at(30), id);
    assert!(!lamb(&scribe, id).hand_fed());
    scribe.strike(at(31), sucked);
    assert!(lamb(&scribe, id).hand_fed());
    scribe.sucked(at(20), id);
    assert!(!lamb(&scribe, id).hand_fed(), "at the same time the dam counts");
}

#[test]
fn what_was_given_counts_after_the_one_instant_and_up_to_the_other() {
    let (mut scribe, id) = with_lamb();
    for (minutes, milliliters) in [(0, 50.0), (60, 100.0), (120, 200.0)] {
        scribe.fed(at(minutes), id, milliliters);
    }
    scribe.fed(hour(24), id, 400.0);
    scribe.fed(hour(24) + MS, id, 800.0);
    let lamb = lamb(&scribe, id);
    assert_eq!(lamb.given(at(0), at(120)), ml(300.0));
    assert_eq!(lamb.given(at(0) - MS, at(120) - MS), ml(150.0));
    assert_eq!(lamb.given(at(120), at(120)), ml(0.0));
    assert_eq!(lamb.given_first_day(at(60)), ml(150.0));
    assert_eq!(lamb.given_first_day(hour(99)), ml(750.0), "a feed at 24 hours is of the first day");
}

#[test]
fn a_feed_struck_or_amended_counts_as_it_stands() {
    let (mut scribe, id) = with_lamb();
    let feed = scribe.fed(at(10), id, 900.0);
    scribe.amend(at(11), feed, fed(id, 90.0, Milk::Milk, Way::Bottle), at(9));
    let given = |scribe: &Scribe| lamb(scribe, id).given_first_day(hour(24));
    assert_eq!(given(&scribe), ml(90.0));
    assert_eq!((lamb(&scribe, id).feeds[0].entry, lamb(&scribe, id).feeds[0].at), (feed, at(9)));
    scribe.strike(at(12), feed);
    assert_eq!(given(&scribe), ml(0.0));
}

#[test]
fn a_death_counts_from_the_first_and_ends_when_it_is_struck() {
    let (mut scribe, id) = with_lamb();
    let ewe = scribe.ewe(at(0), "23");
    assert!(lamb(&scribe, id).lives());
    let second = scribe.died(at(90), Animal::Lamb(id));
    let first = scribe.died(at(80), Animal::Lamb(id));
    scribe.died(at(70), Animal::Ewe(ewe));
    let death = |scribe: &Scribe| lamb(scribe, id).died.map(|death| death.at);
    assert_eq!(death(&scribe), Some(at(80)));
    assert!(!lamb(&scribe, id).lives());
    assert_eq!(scribe.flock().ewe(ewe).and_then(|ewe| ewe.died).map(|death| death.at), Some(at(70)));
    scribe.strike(at(91), first);
    assert_eq!(death(&scribe), Some(at(90)));
    scribe.strike(at(92), second);
    assert!(lamb(&scribe, id).lives());
}

#[test]
fn a_lamb_born_dead_never_lived() {
    let mut scribe = Scribe::new(1);
    let id = scribe.born_dead(at(0));
    assert_eq!((lamb(&scribe, id).lives(), lamb(&scribe, id).died), (false, None));
}

#[test]
fn a_birth_amended_is_read_as_amended() {
    let (mut scribe, id) = with_lamb();
    let ewe = scribe.ewe(at(0), "23");
    let ram = Event::LambBorn { dam: Some(ewe), beside: None, sex: Some(Sex::Ram), alive: false };
    scribe.amend(at(9), id.entry(), ram, at(-30));
    let lamb = lamb(&scribe, id);
    assert_eq!((lamb.born, lamb.dam, lamb.sex, lamb.born_alive), (at(-30), Some(ewe), Some(Sex::Ram), false));
    assert_eq!(lamb.age(at(0)), TimeDelta::minutes(30));
}

#[test]
fn a_tag_is_the_one_given_last() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "23");
    let tag = |scribe: &Scribe| scribe.flock().ewe(ewe).and_then(|ewe| ewe.tag.clone());
    assert_eq!(tag(&scribe).as_deref(), Some("23"));
    for (minutes, tag) in [(20, "32"), (10, "28")] {
        scribe.note(at(minutes), Event::Tagged { animal: Animal::Ewe(ewe), tag: tag.to_owned() });
    }
    assert_eq!(tag(&scribe).as_deref(), Some("32"));
}

#[track_caller]
fn settings(scribe: &Scribe, expected: &FarmSettings) {
    assert_eq!(&scribe.flock().settings, expected);
}

#[test]
fn of_several_choices_the_one_noted_last_holds() {
    let mut scribe = Scribe::new(1);
    settings(&scribe, &FarmSettings::default());
    for choice in [
        Choice::DayRule(DayRule::TenPercent),
        Choice::System(System::Us),
        Choice::Housing(Housing::Outdoors),
        Choice::DayRule(DayRule::Ruma210),
    ] {
        scribe.note(at(0), Event::Chose(choice));
    }
    let mut expected = FarmSettings {
        system: System::Us,
        housing: Housing::Outdoors,
        day_rule: DayRule::Ruma210,
        ..FarmSettings::default()
    };
    settings(&scribe, &expected);
    let last = scribe.note(at(-600), Event::Chose(Choice::System(System::Metric)));
    expected.system = System::Metric;
    settings(&scribe, &expected);
    scribe.strike(at(1), last);
    expected.system = System::Us;
    settings(&scribe, &expected);
}

#[test]
fn a_choice_made_after_a_phone_with_a_wrong_clock_holds() {
    let mut ahead = Scribe::new(1);
    ahead.note(hour(48), Event::Chose(Choice::System(System::Us)));
    let mut other = Scribe::new(2);
    other.meet(&ahead);
    other.note(at(0), Event::Chose(Choice::System(System::Metric)));
    assert_eq!(other.flock().settings.system, System::Metric);
}

#[test]
fn limits_without_sense_change_nothing() {
    let mut scribe = Scribe::new(1);
    let sound = Limits { up_minutes: 20, ..Limits::default() };
    scribe.note(at(0), Event::Chose(Choice::Limits(sound)));
    scribe.note(at(1), Event::Chose(Choice::Limits(Limits { red_minutes: 6000, ..sound })));
    assert_eq!(scribe.flock().settings.limits, sound);
}

#[test]
fn a_birth_is_told_by_the_elapsed_time_although_the_clocks_were_changed() {
    let mut scribe = Scribe::new(1);
    let moment = |text: &str| text.parse::<Moment>().expect("a moment");
    let born = moment("2026-03-29T00:30:00.000+00:00");
    let id = scribe.note(born, birth(None, None)).as_lamb();
    assert_eq!(lamb(&scribe, id).age(moment("2026-03-29T02:30:00.000+01:00")), TimeDelta::hours(1));
}
