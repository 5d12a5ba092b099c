//! A lamb on the scales, and a ewe.

use yeanling_core::book::Event;
use yeanling_core::settings::Choice;
use yeanling_core::units::{Mass, System};
use yeanling_pages::Sheet;

use super::with_lamb;

#[test]
fn a_wrong_weight_is_refused_with_what_is_allowed_and_stays_in_the_field() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Weight(lamb));
    let before = phone.book.len();
    for (typed, said) in [
        ("0", "0 kg"),
        ("40", "40 kg"),
        ("4..2", "more than one point"),
        ("abc", "is not a number"),
        ("", "Nothing typed yet"),
    ] {
        phone.write("Weight", typed).press("Save").tells(said);
        phone.has_typed("Weight", typed);
    }
    assert_eq!(phone.book.len(), before);
    phone.write("Weight", "4,2").press("Save").is_closed();
    phone.has_noted(&Event::Weighed { lamb, mass: Mass::from_kilograms(4.2) });
}

#[test]
fn what_was_wrong_goes_with_other_digits_and_with_another_unit() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Weight(lamb)).write("Weight", "40").press("Save").tells("40 kg");
    phone.write("Weight", "4").tells_not("40 kg");
    phone.write("Weight", "40").press("Save").tells("40 kg");
    phone.press("lb").tells_not("40 kg");
}

#[test]
fn pounds_are_asked_about_and_either_answer_is_noted() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Weight(lamb)).write("Weight", "9.9").tells_not("Did you mean").press("Save");
    phone.tells("Did you mean 9.9 lb?");
    phone.write("Weight", "9.8").tells_not("Did you mean");
    phone.press("Save").press("Yes, 9.8 lb").is_closed();
    let Event::Weighed { mass, .. } = *phone.noted() else { panic!("{:?}", phone.noted()) };
    assert!((mass.as_pounds() - 9.8).abs() < 0.01);
    assert!(phone.undo());
    phone.ask(Sheet::Weight(lamb)).write("Weight", "9.9").press("Save").press("No, 9.9 kg").is_closed();
    phone.has_noted(&Event::Weighed { lamb, mass: Mass::from_kilograms(9.9) });
}

#[test]
fn a_weight_in_pounds_is_not_asked_about() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Weight(lamb)).press("lb").write("Weight", "9.9").press("Save").is_closed();
    let Event::Weighed { mass, .. } = *phone.noted() else { panic!("{:?}", phone.noted()) };
    assert!((mass.as_pounds() - 9.9).abs() < 0.01);
}

#[test]
fn a_farm_in_pounds_begins_in_pounds() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone.ask(Sheet::Weight(lamb)).write("Weight", "9 lb 4 oz").press("Save").is_closed();
    let Event::Weighed { mass, .. } = *phone.noted() else { panic!("{:?}", phone.noted()) };
    assert!((mass.as_pounds() - 9.25).abs() < 0.01);
}

#[test]
fn a_weight_unlike_the_last_is_asked_about_once_and_taken_when_pressed_again() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.later(58 * 24 * 60);
    phone.ask(Sheet::Weight(lamb)).write("Weight", "3.4").press("Save");
    phone.tells("3.4 kg").tells("4.0 kg");
    // Other digits are asked about anew.
    phone.write("Weight", "3.3").press("Save").tells("3.3 kg");
    phone.press("Save").is_closed();
    phone.has_noted(&Event::Weighed { lamb, mass: Mass::from_kilograms(3.3) });
}

#[test]
fn a_ewe_is_weighed() {
    let (mut phone, ewe, _) = with_lamb();
    phone.ask(Sheet::EweWeight(ewe)).tells("Ewe 7").write("Weight", "heavy").press("Save");
    phone.tells("is not a number");
    phone.write("Weight", "71.5").press("Save").is_closed();
    phone.has_noted(&Event::EweWeighed { ewe, mass: Mass::from_kilograms(71.5) });
}
