//! The cold lamb: from the thermometer to what to do, with a record and without.

use std::time::Duration;

use yeanling_core::book::{Event, LambId, Sex};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Mass, System};
use yeanling_pages::{Request, Screen};

use crate::phone::Phone;

/// A ram lamb of 4 kg, born at 03:12, with its aid open.
fn a_lamb(kilograms: f64) -> (Phone, LambId) {
    let mut phone = Phone::at("2026-02-25 03:12");
    let dam = phone.ewe("12");
    let born = Event::LambBorn { dam: Some(dam), beside: None, sex: Some(Sex::Ram), alive: true };
    let lamb = phone.note(born).as_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(kilograms) });
    phone.note(Event::AllBorn { lamb });
    phone.open(Screen::ColdLamb(Some(lamb)));
    (phone, lamb)
}

#[track_caller]
fn read(phone: &mut Phone, degrees: &str, swallows: &str) {
    phone.keys(degrees).press("Use this reading").press(swallows);
}

#[test]
fn a_cold_lamb_is_read_told_in_order_read_again_in_twenty_minutes_and_done_when_it_is_warm() {
    let (mut phone, _) = a_lamb(4.0);
    phone.says("Normal is");
    read(&mut phone, "36.0", "Yes, both");
    // Henderson 1996; US extension: under 37 °C and up to five hours old.
    phone.says("Dangerously cold, up to 5 h old");
    let steps = [
        "Rub it dry.",
        "Warm it until it reads 37 °C (98.6 °F).",
        "Take its temperature again in 20\u{a0}min.",
        "Then, only with its head up and swallowing: 200\u{a0}ml of colostrum.",
        "Back to its ewe.",
    ];
    phone.says_in_order(&steps);
    phone.says("No milk and no colostrum below 37 °C").says("No glucose for a lamb of up to 5 hours");
    phone.says("03:32").has_no_button("Fed");
    phone.press("Warming begun").says("Warming since 03:12");

    phone.later(21).says("Take its temperature again");
    read(&mut phone, "37.5", "Yes, both");
    phone.says("Readings before");
    phone.says("37 °C (98.6 °F) reached. 36.0 °C, now 37.5 °C.").says("36.0 °C (96.8 °F): dangerously cold");
    phone.press("Fed 200 ml by bottle").says("Fed 200 ml 03:33").has_no_button("Fed");

    phone.later(21);
    read(&mut phone, "39.2", "Yes, both");
    phone.says_in_order(&["Leave it with its ewe. See that it feeds."]);
}

#[test]
fn a_whole_reading_is_taken_once_the_keys_rest_on_it_and_part_of_one_is_not() {
    let (mut phone, lamb) = a_lamb(4.0);
    let readings = |phone: &Phone| phone.flock.lamb(lamb).expect("it").temperatures.len();
    phone.keys("38").rest(Duration::from_secs(20));
    assert_eq!(readings(&phone), 0, "a digit may still come");
    phone.keys(".").rest(Duration::from_secs(20)).keys("9").rest(Duration::from_millis(1000));
    assert_eq!(readings(&phone), 0, "the keys do not rest yet");
    phone.keys("<8").rest(Duration::from_secs(2));
    assert_eq!(readings(&phone), 1);
    phone.says("38.8 °C");
    assert!(phone.undo(), "and it is taken back by one press");
    // What no lamb can have on this scale waits for an answer.
    phone
        .open(Screen::ColdLamb(None))
        .keys("98.6")
        .rest(Duration::from_secs(20))
        .has_button("Use this reading");
}

#[test]
fn a_lamb_that_does_not_swallow_is_the_vets_at_once_and_the_call_is_one_tap() {
    let (mut phone, _) = a_lamb(4.0);
    read(&mut phone, "38", "No");
    phone.says_in_order(&["No tube."]).says("Never tube a lamb that does not hold its head up");
    phone.says("Call your vet now.").has_no_button("Fed");
    phone.press("Vet called").says("Vet called 03:12.").has_no_button("Vet called");
    assert!(phone.undo());
    phone.has_button("Vet called");
}

#[test]
fn a_reading_that_is_taken_back_asks_again_how_warm_it_is() {
    let (mut phone, _) = a_lamb(4.0);
    phone.keys("36").press("Use this reading").says("Does it hold its head up and swallow?");
    assert!(phone.undo());
    phone.says("How warm is it?").says_nowhere("Does it hold its head up");
}

#[test]
fn nobody_sure_of_its_swallow_is_taken_as_no_and_noted_nowhere() {
    let (mut phone, lamb) = a_lamb(4.0);
    let noted = |phone: &Phone| phone.flock.lamb(lamb).map(|lamb| lamb.swallow.len());
    phone.keys("36").press("Use this reading").press("Not sure");
    phone.says("Dangerously cold, up to 5 h old").says("Never tube");
    assert_eq!(noted(&phone), Some(0));
    // Of the next reading it is asked again.
    phone
        .later(1)
        .press("New reading")
        .keys("36.4")
        .press("Use this reading")
        .says("Does it hold its head up and swallow?");
}

#[test]
fn degrees_fahrenheit_from_end_to_end() {
    let (mut phone, _) = a_lamb(Mass::from_pounds(8.8).as_kilograms());
    phone.note(Event::Chose(Choice::System(System::Us)));
    read(&mut phone, "99.5", "Yes, both");
    phone.says("99.5 °F").says("37.5 °C");
    // 8.8 lb at 50 ml/kg is 199.6 ml: 6.7 fl oz.
    phone.says("Feed 6.7\u{a0}fl\u{a0}oz by bottle or tube.").has_button("Fed 6.7 fl oz by bottle");
}

#[test]
fn without_a_record_it_is_kept_on_this_phone_and_starts_over_when_told_to() {
    let mut phone = Phone::at("2026-02-25 03:12");
    phone.open(Screen::ColdLamb(None)).says("Your answers stay on this phone.");
    phone
        .keys("36.0")
        .press("Use this reading")
        .says("How old is it?")
        .says("36.0 °C (96.8 °F): dangerously cold");
    assert!(phone.book.is_empty(), "nothing is noted without a record");
    // As after a reload: what is typed is gone, what was answered is not.
    let kept = phone.says.cold_lamb.clone();
    let mut phone = Phone::at("2026-02-25 03:13");
    phone.says.cold_lamb = kept;
    phone.open(Screen::ColdLamb(None)).press("not known").press("Not sure");
    phone.says("Dangerously cold, age not known: treated as over 5 h");
    phone.says("Glucose injection first, by your vet").says("50 ml/kg");
    phone.write("Weight", "4").says("200\u{a0}ml").says_nowhere("50 ml/kg of colostrum");
    phone.write("Weight", "4000").says("is too heavy").says("50 ml/kg of colostrum");
    phone.write("Weight", "9").press("lb").says("205\u{a0}ml");
    phone.press("Glucose given by vet").says("Glucose given by vet 03:13");
    phone.press("Vet called").says("Vet called 03:13.");
    phone.press("Start over").says("How warm is it?").says_nowhere("Readings before");
    assert_eq!(phone.asked.last(), Some(&Request::KeepColdLamb(String::new())));
}

#[test]
fn what_no_lamb_reads_is_refused_with_why_and_stays() {
    let mut phone = Phone::at("2026-02-25 03:12");
    phone.open(Screen::ColdLamb(None)).press("Use this reading").says("Nothing typed yet");
    phone.keys("45").says_nowhere("Nothing typed yet");
    phone.press("Use this reading");
    phone.says("45 °C is out of range. Enter 15.0 °C to 44.0 °C.").says("45");
    phone.keys("<<98.6").press("Use this reading").says("98.6 reads like °F, and °C is chosen").says("98.6");
    phone.press("It is 98.6 °F").says("37.0 °C (98.6 °F): cold");
}

#[test]
fn another_scale_is_no_mistake_yet() {
    let mut phone = Phone::at("2026-02-25 03:12");
    phone.open(Screen::ColdLamb(None)).keys("98.6").press("Use this reading").says("reads like °F");
    phone.press("°F").says_nowhere("reads like");
    phone.press("Use this reading").says("37.0 °C (98.6 °F): cold");
}

#[test]
fn a_new_reading_is_taken_under_a_question_that_was_not_answered() {
    let mut phone = Phone::at("2026-02-25 03:12");
    phone.open(Screen::ColdLamb(None)).keys("35.5").press("Use this reading").says("How old is it?");
    phone.press("New reading").says("Take its temperature again").says("How old is it?");
    phone.keys("36.5").press("Use this reading").says("36.5 °C").says_nowhere("Take its temperature again");
}

#[test]
fn a_reading_that_no_book_takes_is_refused_where_it_was_typed_and_a_dead_lamb_has_no_aid() {
    let (mut phone, lamb) = a_lamb(4.0);
    let animal = yeanling_core::book::Animal::Lamb(lamb);
    phone.note(Event::Died { animal, cause: yeanling_core::book::Cause::Unknown });
    phone.says("This lamb is dead.").has_no_button("Use this reading");
}

#[test]
fn a_lamb_that_gains_too_little_under_warmth_is_the_vets() {
    let (mut phone, _) = a_lamb(4.0);
    read(&mut phone, "36.0", "Yes, both");
    phone.later(21);
    read(&mut phone, "35.9", "Yes, both");
    phone.says("Not warming: call your vet. 36.0 °C, now 35.9 °C.").has_button("Vet called");
}
