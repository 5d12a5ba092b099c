//! How lively a lamb is, how full, what a finger feels, what the vet said, when a lamb that was found was born, how long a duty
//! can wait.

use yeanling_core::book::{Animal, Belly, Care, Event, LambId, Mouth, Suck, VetSaid, VigorScale};
use yeanling_core::reckon::ten_point::Sign;
use yeanling_core::settings::{Choice, VigorInUse};
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{self, Duty};
use yeanling_pages::{Screen, Sheet, sample};
use yeanling_words::{danger, why};

use super::with_lamb;
use crate::phone::Phone;
use crate::reach::pressables;

#[test]
fn a_grade_of_vigor_is_one_press_and_its_scale_stands_beside_it() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Vigor(lamb)).tells("7a").tells("Four-grade scale, 1 is best");
    let grade = phone.pressables().into_iter().find(|one| one.label.starts_with("2 · on its chest"));
    phone.act(&grade.expect("the second grade").does);
    phone.is_closed();
    phone.has_noted(&Event::VigorScored { lamb, scale: VigorScale::FourGrade, score: 2 });
}

#[test]
fn why_a_grade_is_asked_lies_over_the_sheet_and_leaves_it_open() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Vigor(lamb)).press("why? Vigor grade 1 of 4, 1 is best");
    phone.tells("Graded once, at 5 minutes");
    assert_eq!(phone.page().sheets.len(), 2);
    phone.act(&yeanling_pages::Action::Close);
    assert_eq!(phone.page().sheets.len(), 1);
}

#[test]
fn ten_points_are_scored_once_every_sign_was_answered() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Chose(Choice::Vigor(VigorInUse::TenPoint)));
    phone.ask(Sheet::Vigor(lamb));
    let looks = |sign| why::sign(sign).1;
    for sign in [Sign::Pulse, Sign::Breathing, Sign::Gums, Sign::Nose] {
        phone.press(looks(sign)[2]);
    }
    phone.tells("Answer every sign");
    assert!(!phone.pressables().iter().any(|one| one.name == "Note the score"));
    phone.press(looks(Sign::Rump)[1]).tells_not("Answer every sign");
    phone.press("Note the score").is_closed();
    phone.has_noted(&Event::VigorScored { lamb, scale: VigorScale::TenPoint, score: 9 });
}

#[test]
fn without_an_oximeter_the_score_is_of_eight_points() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::TenPoint(lamb));
    for sign in [Sign::Pulse, Sign::Gums, Sign::Nose, Sign::Rump] {
        phone.press(why::sign(sign).1[1]);
    }
    phone.press("No oximeter").press("Note the score").is_closed();
    phone.has_noted(&Event::VigorScored { lamb, scale: VigorScale::EightPoint, score: 4 });
}

#[test]
fn a_belly_is_one_press() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Belly(lamb)).press("Hollow").is_closed();
    phone.has_noted(&Event::BellyFelt { lamb, belly: Belly::Hollow });
}

#[test]
fn a_finger_in_the_mouth_is_noted_once_both_was_told_in_either_order() {
    for turn in [false, true] {
        let (mut phone, _, lamb) = with_lamb();
        phone.ask(Sheet::Mouth(lamb)).tells("A warm one proves nothing");
        let before = phone.book.len();
        let mut told = [danger::mouth(Mouth::Cool), danger::suck(Suck::Weak)];
        if turn {
            told.reverse();
        }
        phone.press(told[0]);
        assert_eq!(phone.book.len(), before);
        phone.press(told[1]).is_closed();
        phone.has_noted(&Event::Care(Care::MouthFelt { lamb, mouth: Mouth::Cool, suck: Suck::Weak }));
    }
}

#[test]
fn a_vet_who_comes_or_is_not_reached_is_one_press() {
    let (mut phone, ewe, _) = with_lamb();
    let animal = Animal::Ewe(ewe);
    for said in [VetSaid::Coming, VetSaid::NobodyReached] {
        phone.ask(Sheet::Vet(animal)).press(danger::said(&said)).is_closed();
        phone.has_noted(&Event::Care(Care::VetSaid { animal, said }));
    }
}

#[test]
fn what_the_vet_advises_is_noted_with_when_to_look_again() {
    let (mut phone, _, lamb) = with_lamb();
    let animal = Animal::Lamb(lamb);
    let advised = |what: Option<&str>, look_again: Moment| VetSaid::Advised {
        what: what.map(str::to_owned),
        look_again,
    };
    let label = danger::said(&advised(None, phone.now));
    phone.ask(Sheet::Vet(animal)).tells_not("Look again in").press(label).tells("Look again in");
    phone.write("In your own words, if you like", "Keep it warm").press("1 h").later(2);
    phone.press("Save").is_closed();
    let again = phone.now + TimeDelta::hours(1);
    let said = advised(Some("Keep it warm"), again);
    phone.has_noted(&Event::Care(Care::VetSaid { animal, said }));
    // Nothing else was chosen: twenty minutes.
    phone.ask(Sheet::Vet(animal)).press(label).press("Save").is_closed();
    let said = advised(None, phone.now + TimeDelta::minutes(20));
    phone.has_noted(&Event::Care(Care::VetSaid { animal, said }));
}

fn born(phone: &Phone, lamb: LambId) -> Moment {
    phone.flock.lamb(lamb).expect("the lamb").born
}

#[test]
fn a_lamb_that_was_found_can_be_as_old_as_is_said_and_undo_takes_all_of_it_back() {
    let (mut phone, _, lamb) = with_lamb();
    let seen = born(&phone, lamb);
    for found in danger::Found::ALL {
        phone.ask(Sheet::Found(lamb)).press(found.words()).is_closed();
        assert_eq!(born(&phone, lamb), seen - TimeDelta::hours(found.hours()));
        assert_eq!(phone.flock.lamb(lamb).and_then(|lamb| lamb.found), Some(seen));
    }
    assert!(phone.undo());
    phone.ask(Sheet::Found(lamb)).press(danger::Found::Hour.words());
    let mut fresh = with_lamb();
    let seen = born(&fresh.0, fresh.2);
    fresh.0.ask(Sheet::Found(fresh.2)).press(danger::Found::SixHours.words());
    assert!(fresh.0.undo());
    assert_eq!(born(&fresh.0, fresh.2), seen);
    assert_eq!(fresh.0.flock.lamb(fresh.2).and_then(|lamb| lamb.found), None);
}

fn duty_of(phone: &Phone, animal: Animal) -> Duty {
    let all = watch::duties(&phone.flock, phone.now, &phone.flock.settings);
    all.into_iter().find(|duty| duty.subject() == animal).expect("something is due")
}

#[test]
fn a_duty_waits_to_its_limit_and_no_further() {
    let (mut phone, _, lamb) = with_lamb();
    let animal = Animal::Lamb(lamb);
    let duty = duty_of(&phone, animal);
    let most = watch::may_wait_until(&phone.flock, animal, duty.task.kind(), phone.now).expect("it may wait");
    phone.ask(Sheet::Later(Box::new(duty.clone())));
    let page = phone.page();
    let offered = pressables(&page);
    assert!(!offered.is_empty());
    for one in &offered {
        let yeanling_pages::Action::Answer(events) = &one.does else { panic!("{:?}", one.does) };
        let [Event::PutOff { until, .. }] = events[..] else { panic!("{events:?}") };
        assert!(until <= most && until > phone.now, "{}", one.label);
    }
    phone.act(&offered[0].does);
    phone.is_closed();
    let until = phone.now + TimeDelta::minutes(10);
    phone.has_noted(&Event::PutOff { animal, duty: duty.task.kind(), until });
}

#[test]
fn a_duty_that_cannot_wait_offers_nothing_and_says_so() {
    let now = Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let mut phone = Phone::with(sample::book(now, System::Metric), now);
    phone.open(Screen::Farm);
    let soon = now + TimeDelta::minutes(10);
    let waits = |duty: &Duty| {
        watch::may_wait_until(&phone.flock, duty.subject(), duty.task.kind(), now).unwrap_or(now) >= soon
    };
    let all = watch::duties(&phone.flock, now, &phone.flock.settings);
    let duty = all.into_iter().find(|duty| !waits(duty)).expect("something cannot wait");
    phone.ask(Sheet::Later(Box::new(duty))).tells(&yeanling_words::watch::later_until("", true)[..10]);
    assert!(phone.pressables().is_empty());
}
