//! The birth weight on the keys: noted when they rest, asked about, taken back, followed.

use std::time::Duration;

use yeanling_core::book::{Event, LambId};
use yeanling_core::settings::{BreedType, Choice};
use yeanling_core::units::{Mass, System, TimeDelta};
use yeanling_pages::Screen;

use crate::lambing::{REST, down, lambing, readout, weighs};

#[test]
fn a_weight_is_noted_once_the_keys_rest_and_corrected_on_them() {
    let mut phone = lambing("3");
    phone.press("Ram lamb").keys("40").rest(REST).says("40 kg");
    assert_eq!(weighs(&phone, "3a"), None);
    phone.keys("<").rest(REST);
    assert_eq!(weighs(&phone, "3a"), Some(4.0));
    phone.keys(".5").rest(REST).says("good for a single");
    assert_eq!(weighs(&phone, "3a"), Some(4.5));
    let noted = phone.flock.lambs.values().map(|lamb| lamb.weights.len()).sum::<usize>();
    assert_eq!(noted, 1, "it is one weight, corrected");
}

#[test]
fn a_weight_is_not_noted_while_the_keys_are_pressed() {
    let mut phone = lambing("3");
    phone.press("Ram lamb").keys("4").rest(REST / 2).keys(".").rest(REST / 2).keys("2");
    assert_eq!(weighs(&phone, "3a"), None);
    phone.rest(REST);
    assert_eq!(weighs(&phone, "3a"), Some(4.2));
}

#[test]
fn pounds_are_asked_about_and_taken_with_one_tap_or_kilograms_with_another() {
    let mut phone = lambing("3");
    phone.press("Ram lamb").keys("9.9").rest(REST).says("Did you mean 9.9\u{a0}lb?");
    phone.press("Yes, 9.9 lb").says_nowhere("Did you mean");
    // It stands there as it was meant.
    assert_eq!((weighs(&phone, "3a"), readout(&phone).as_deref()), (Some(4.49), Some("9.9")));
    assert!(down(&phone).contains(&"lb".to_owned()));
    phone.press("Next lamb").press("Ewe lamb").keys("9.9").press("No, 9.9 kg").says_nowhere("Did you mean");
    phone.rest(REST);
    assert_eq!(weighs(&phone, "3b"), Some(9.9));
    phone.press("All lambs born");
    assert_eq!(phone.screen, Screen::Watch);
}

#[test]
fn digits_that_come_to_no_weight_take_back_what_was_noted_of_the_first() {
    let mut phone = lambing("40");
    phone.press("Ewe lamb").keys("4").rest(REST);
    assert_eq!(weighs(&phone, "40a"), Some(4.0));
    phone.keys("2").rest(REST).says("Enter 0.5 to 12 kg");
    assert_eq!(weighs(&phone, "40a"), None);
    assert!(!phone.undo(), "to bring the first digits back is not offered");
    phone.keys("<<3.9").rest(REST);
    assert_eq!(weighs(&phone, "40a"), Some(3.9));
    // Of another visit what stood before comes back.
    let here = phone.screen;
    phone.open(Screen::Lambing).open(here).press("40a").keys("<<").rest(REST).keys("5").rest(REST);
    assert_eq!((readout(&phone).as_deref(), weighs(&phone, "40a")), (Some("35"), Some(3.9)));
}

#[test]
fn a_point_that_was_left_out_is_offered_and_neither_the_next_lamb_nor_the_end_comes_before_it() {
    let mut phone = lambing("41");
    phone.press("Ewe lamb").keys("42").press("Next lamb").says("The weight is not noted yet");
    phone.press("All lambs born").says("The weight is not noted yet");
    phone.press("4.2 kg?").says_nowhere("The weight is not noted yet");
    phone.rest(REST);
    assert_eq!(weighs(&phone, "41a"), Some(4.2));
    phone.press("Next lamb").says("Another lamb is here");
    phone.press("Ram lamb");
    // Sixteen may be pounds, or miss its point: neither is taken for granted.
    phone.keys("16").has_button("1.6 kg?");
    phone.press("16 lb?").rest(REST);
    assert_eq!(weighs(&phone, "41b"), Some(7.26));
}

#[test]
fn digits_that_are_still_asked_about_stand_there_again_and_an_old_question_gives_way() {
    let mut phone = lambing("43");
    phone.press("Ewe lamb").keys("42").rest(REST);
    let (ewe, lamb) = (phone.screen, *phone.flock.lambs.keys().next().expect("a lamb"));
    // By either address.
    for here in [Screen::LambingLamb(lamb), ewe] {
        phone.open(Screen::Lambing).open(here).has_button("43a · weight?");
        phone.press("43a · weight?").has_button("4.2 kg?");
        assert_eq!(readout(&phone).as_deref(), Some("42"));
        phone.press("Next lamb").says("The weight is not noted yet");
    }
    phone.keys("4.1").rest(REST);
    assert_eq!((readout(&phone).as_deref(), weighs(&phone, "43a")), (Some("4.1"), Some(4.1)));
    phone.open(Screen::Lambing).open(ewe).has_button("43a").has_no_button("43a · weight?");
}

#[test]
fn a_weight_noted_since_settles_what_was_asked_about() {
    let mut phone = lambing("43");
    phone.press("Ewe lamb").keys("42").rest(REST);
    let (here, lamb) = (phone.screen, *phone.flock.lambs.keys().next().expect("a lamb"));
    phone.open(Screen::Lambing);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(3.8) });
    phone.open(here).has_no_button("43a · weight?");
    phone.press("43a");
    assert_eq!(readout(&phone).as_deref(), Some("3.8"));
}

#[test]
fn digits_that_are_asked_about_for_long_give_way_to_the_next_key() {
    let mut phone = lambing("24");
    phone.press("Ewe lamb").keys("8.4").rest(REST).says("8.4\u{a0}kg");
    phone.keys("<").rest(REST).keys("4");
    assert_eq!(readout(&phone).as_deref(), Some("8.4"));
    phone.rest(Duration::from_secs(10)).keys("4");
    assert_eq!(readout(&phone).as_deref(), Some("4"));
    // A digit that is taken back goes on with what stands there.
    let mut phone = lambing("25");
    phone.press("Ewe lamb").keys("8.4").rest(Duration::from_secs(10)).keys("<");
    assert_eq!(readout(&phone).as_deref(), Some("8."));
}

#[test]
fn a_weight_that_is_undone_leaves_the_keys_too() {
    let mut phone = lambing("44");
    phone.press("Ewe lamb").keys("4").rest(REST).keys(".5").rest(REST);
    assert!(phone.undo());
    assert_eq!((readout(&phone).as_deref(), weighs(&phone, "44a")), (Some("4"), Some(4.0)));
    let mut phone = lambing("45");
    phone.press("Ewe lamb").keys("4.5").rest(REST);
    assert!(phone.undo());
    assert_eq!((readout(&phone).as_deref(), weighs(&phone, "45a")), (Some(""), None));
}

#[test]
fn what_another_phone_noted_stands_on_the_keys_and_what_is_typed_meanwhile_is_kept() {
    let mut phone = lambing("46");
    phone.press("Ewe lamb").keys("42").rest(REST);
    let lamb: LambId = *phone.flock.lambs.keys().next().expect("a lamb");
    let weighed = phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.4) });
    assert_eq!(readout(&phone).as_deref(), Some("4.4"));
    phone.keys("5");
    let event = Box::new(Event::Weighed { lamb, mass: Mass::from_kilograms(4.6) });
    let at = phone.flock.lines.iter().find(|line| line.entry == weighed).expect("the weight").at;
    phone.note(Event::Amended { entry: weighed, event, at });
    assert_eq!(readout(&phone).as_deref(), Some("4.45"));
    phone.rest(REST);
    assert_eq!(weighs(&phone, "46a"), Some(4.45));
}

#[test]
fn a_unit_chosen_after_the_digits_is_theirs_and_what_is_noted_is_only_told_in_it() {
    let mut phone = lambing("47");
    phone.press("Ewe lamb").keys("9.2").press("lb").rest(REST);
    assert_eq!(weighs(&phone, "47a"), Some(4.17));
    let here = phone.screen;
    phone.open(Screen::Lambing).open(here).press("47a");
    assert_eq!(readout(&phone).as_deref(), Some("4.17"));
    phone.press("lb").rest(REST);
    assert_eq!((readout(&phone).as_deref(), weighs(&phone, "47a")), (Some("9.2"), Some(4.17)));
}

#[test]
fn a_question_that_was_answered_before_the_keys_rested_stays_answered() {
    let mut phone = lambing("48");
    phone.press("Ewe lamb").keys("1").rest(REST).keys("1").press("No, 11.0 kg").rest(REST);
    assert_eq!(weighs(&phone, "48a"), Some(11.0));
}

#[test]
fn a_lamb_is_told_apart_from_the_one_whose_keys_were_left() {
    let mut phone = lambing("49");
    phone.press("Ewe lamb").press("Next lamb").press("Ram lamb").keys("42").press("49a").keys("3.9");
    phone.rest(Duration::from_secs(20));
    assert_eq!((weighs(&phone, "49a"), weighs(&phone, "49b")), (Some(3.9), None));
    phone.press("49b · weight?").press("4.2 kg?").rest(REST);
    assert_eq!(weighs(&phone, "49b"), Some(4.2));
}

#[test]
fn pounds_and_ounces_are_typed_as_the_scale_shows_them() {
    let mut phone = lambing("50");
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone.press("Ewe lamb").keys("8l4").says("8 lb 4 oz").says("3.74 kg");
    phone.rest(REST);
    assert_eq!(weighs(&phone, "50a"), Some(3.74));
    let here = phone.screen;
    phone.open(Screen::Lambing).open(here).press("50a").says("8 lb 4 oz");
    // The decimal of a scale that shows tenths.
    phone.press("Next lamb").press("Ram lamb").keys("8.4").says("8.4 lb");
    phone.rest(REST);
    assert_eq!(weighs(&phone, "50b"), Some(3.81));
    phone.press("Next lamb").press("Ram lamb").keys("84").has_button("8.4 lb?");
    phone.press("8 lb 4 oz?").rest(REST);
    assert_eq!(weighs(&phone, "50c"), Some(3.74));
}

#[test]
fn digits_typed_just_before_the_app_was_closed_are_noted_when_it_opens_again() {
    let mut phone = lambing("51");
    phone.press("Ewe lamb").keys("4.2");
    let lamb: LambId = *phone.flock.lambs.keys().next().expect("a lamb");
    let typed_at = phone.now;
    phone.closed().later(30).open(Screen::Watch);
    assert_eq!(weighs(&phone, "51a"), Some(4.2));
    assert_eq!(phone.flock.lambs[&lamb].weights[0].at, typed_at);
    assert!(phone.says.half_typed.is_empty());
    // What is still asked about waits.
    let mut phone = lambing("52");
    phone.press("Ewe lamb").keys("42");
    let here = phone.screen;
    phone.closed().open(here).press("52a · weight?").has_button("4.2 kg?");
    assert_eq!(weighs(&phone, "52a"), None);
}

#[test]
fn a_first_lamb_is_judged_for_the_litter_that_is_still_to_come() {
    let mut phone = lambing("53");
    phone.press("Ewe lamb").keys("3.9").says("light for a single, good for a twin");
    phone.rest(REST).later(60);
    phone.says("light for a single").says_nowhere("good for a twin");
    let mut phone = lambing("54");
    let ewe = crate::lambing::first_ewe(&phone);
    let scanned = phone.now + TimeDelta::days(-70);
    phone.note_at(Event::Scanned { ewe, lambs: 2, days: None }, scanned);
    phone.press("Ewe lamb").keys("3.9").says("good for a twin").says_nowhere("single");
    phone.rest(REST);
    let lamb = *phone.flock.lambs.keys().next().expect("a lamb");
    phone.open(Screen::Lamb(lamb)).says("good for a twin").says_nowhere("for a single");
}

#[test]
fn a_hair_sheep_is_not_judged_by_the_figures_of_wool_breeds_unsaid() {
    let mut phone = lambing("55");
    phone.note(Event::Chose(Choice::BreedType(BreedType::Hair)));
    phone.press("Ewe lamb").keys("3.9").says("figures of wool breeds");
    phone.rest(REST);
    let lamb = *phone.flock.lambs.keys().next().expect("a lamb");
    phone.open(Screen::Lamb(lamb)).says("figures of wool breeds").says_nowhere("yours average");
    // From fifteen singles on what the flock's own weigh stands beside it.
    for _ in 0..14 {
        let dam = phone.ewe(&format!("h{}", phone.flock.ewes.len()));
        let other = phone.lamb(dam);
        phone.note(Event::Weighed { lamb: other, mass: Mass::from_kilograms(3.4) });
    }
    phone.open(Screen::Lamb(lamb)).says("figures of wool breeds; yours average 3.4");
}
