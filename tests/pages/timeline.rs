//! What was noted, newest first: each line can be changed, taken back, and brought back.

use yeanling_core::book::{Animal, Event};
use yeanling_core::units::Mass;
use yeanling_pages::Screen;
use yeanling_pages::block::{Kind, Noted};

use crate::phone::Phone;
use crate::reach::reached;
use crate::sheets::with_lamb;

fn lines(phone: &Phone) -> Vec<Noted> {
    let is = |block: std::sync::Arc<yeanling_pages::Block>| match &block.kind {
        Kind::Timeline(lines) => Some(lines.clone()),
        _ => None,
    };
    reached(&phone.page()).into_iter().find_map(is).unwrap_or_default()
}

fn told(phone: &Phone) -> Vec<String> {
    lines(phone).iter().map(|line| line.text.plain().replace('\u{a0}', " ")).collect()
}

#[test]
fn an_animals_lines_stand_there_the_newest_first_each_named_by_what_it_says() {
    let (mut phone, _, lamb) = with_lamb();
    phone.later(4);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.later(1);
    phone.note(Event::Sucked { lamb });
    phone.open(Screen::Lamb(lamb));
    assert_eq!(told(&phone), ["Nursed", "Weighed 4.0 kg", "Ram lamb born"]);
    let times: Vec<String> = lines(&phone).into_iter().map(|line| line.time).collect();
    assert!(
        times.iter().zip(["00:01", "00:00", "23:55"]).all(|(time, clock)| time.ends_with(clock)),
        "{times:?}"
    );
    let names: Vec<String> = lines(&phone)[1].buttons.iter().map(|button| button.name.clone()).collect();
    assert_eq!(names, ["change: Weighed 4.0 kg", "undo: Weighed 4.0 kg"]);
}

#[test]
fn a_line_is_changed_taken_back_and_brought_back() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.open(Screen::Lamb(lamb)).press("change: Weighed 4.0 kg");
    phone.write("Weight", "4.4").press("Save").is_closed();
    assert_eq!(lines(&phone)[0].note, yeanling_words::frame::AMENDED);
    phone.press("undo: Weighed 4.4 kg");
    assert!(lines(&phone)[0].struck);
    assert!(phone.flock.lambs[&lamb].weights.is_empty());
    phone.press("restore: Weighed 4.4 kg");
    assert!(!lines(&phone)[0].struck);
    assert_eq!(phone.flock.lambs[&lamb].weights.len(), 1);
}

#[test]
fn a_pens_lines_stand_on_its_page() {
    let (mut phone, ewe, _) = with_lamb();
    let pen = phone.note(Event::PenMade { name: "4".to_owned(), size: None }).as_pen();
    phone.later(1);
    phone.note(Event::PutInPen { animal: Animal::Ewe(ewe), pen });
    phone.later(1);
    phone.note(Event::PenCleaned { pen });
    phone.open(Screen::Pen(pen));
    assert_eq!(lines(&phone).len(), 3, "{:?}", told(&phone));
}

#[test]
fn what_a_person_wrote_names_no_button_with_a_sign_of_the_apps_own() {
    let (mut phone, _, lamb) = with_lamb();
    phone.note(Event::Remarked { animal: Animal::Lamb(lamb), text: "*two* ears".to_owned() });
    phone.open(Screen::Lamb(lamb));
    assert!(lines(&phone)[0].buttons.iter().all(|button| !button.name.contains('*')));
}
