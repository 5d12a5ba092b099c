//! One ewe: what she is, her litters and those she rears, when she may lamb, what can be noted of her.

use yeanling_core::book::{Animal, BirthDay, Cause, Event, Life};
use yeanling_core::units::System;
use yeanling_pages::{Action, Page, Screen, Sheet, sample};

use crate::phone::Phone;
use crate::reach::texts;

#[track_caller]
fn says(phone: &Phone, all: &[&str]) {
    let said: Vec<String> = texts(&phone.page()).iter().map(|text| text.replace('\u{a0}', " ")).collect();
    for text in all {
        assert!(said.iter().any(|one| one.contains(text)), "{text:?} is not said:\n{}", said.join("\n"));
    }
}

fn asks(page: &Page, sheet: &Sheet) -> bool {
    let is = |button: &yeanling_pages::Button| matches!(&button.does, Action::Ask(one) if one == sheet);
    page.all().iter().any(|block| block.buttons().into_iter().any(is))
}

#[test]
fn her_litters_stand_latest_first_with_each_lamb_and_those_she_rears_of_others_apart() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let (ewe, other) = (phone.ewe("14"), phone.ewe("41"));
    let own = [phone.lamb(ewe), phone.lamb(ewe)];
    let fostered = phone.lamb(other);
    phone.note(Event::Life(Life::Fostered { lamb: fostered, dam: ewe }));
    phone.open(Screen::Ewe(ewe));
    says(&phone, &["Ewe 14", "2 lambs", "14a", "14b", "Fostered to her", "41a", "1 lambing, 2 lambs"]);
    phone.press("14b");
    assert_eq!(phone.screen, Screen::Lamb(own[1]));
    let seven = phone.ewe("7");
    phone.open(Screen::Ewe(seven));
    says(&phone, &["No lambs noted yet."]);
}

#[test]
fn what_is_noted_of_her_by_one_tap_is_taken_back_by_one() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("14");
    phone.open(Screen::Ewe(ewe));
    let before = phone.page();
    for label in ["Afterbirth passed", "Looked, all well", "Vet called"] {
        phone.press(label);
        assert!(phone.undo(), "{label} was noted");
    }
    assert_eq!(texts(&phone.page()).first(), texts(&before).first());
}

#[test]
fn she_stands_in_her_pen_and_is_let_out_of_it() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("14");
    let pen = phone.note(Event::PenMade { name: "2".to_owned(), size: None }).as_pen();
    phone.open(Screen::Ewe(ewe));
    let out = |phone: &Phone| phone.pressables().iter().any(|one| one.label == "Out of the pen");
    assert!(!out(&phone));
    phone.note(Event::PutInPen { animal: Animal::Ewe(ewe), pen });
    says(&phone, &["since 23:55"]);
    phone.press("Out of the pen");
    assert!(!out(&phone));
}

#[test]
fn when_she_may_lamb_is_told_with_its_chances_and_asked_why() {
    let now = Phone::at("2027-02-01 23:55").now;
    let mut phone = Phone::with(sample::book(now, System::Metric), now);
    let awaited = phone
        .flock
        .ewes
        .keys()
        .copied()
        .find(|ewe| matches!(yeanling_core::seasons::awaited(&phone.flock, *ewe, now), Some(Ok(_))));
    phone.open(Screen::Ewe(awaited.expect("one is awaited")));
    says(&phone, &["When she may lamb", "within 12 h", "likely"]);
    phone.press("why? When she may lamb");
    says(&phone, &["settle at each service, marked or not", "8 in 10 lamb within the days named"]);
}

#[test]
fn her_lambing_is_under_the_thumb_and_goes_on_once_it_has_begun() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("14");
    phone.open(Screen::Ewe(ewe));
    assert!(phone.pressables().iter().any(|one| one.label == "Lambing"));
    phone.lamb(ewe);
    phone.press("Resume lambing");
    assert_eq!(phone.screen, Screen::LambingEwe(ewe));
}

#[test]
fn a_dead_ewe_keeps_her_record_and_only_what_is_still_known_of_her_is_noted() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("14");
    phone.note(Event::Died { animal: Animal::Ewe(ewe), cause: Cause::Unknown });
    phone.open(Screen::Ewe(ewe));
    says(&phone, &["She is dead. Her record stays."]);
    let page = phone.page();
    assert!(page.thumb.is_empty());
    assert!(asks(&page, &Sheet::Examined(Animal::Ewe(ewe))));
    assert!(
        !asks(&page, &Sheet::Death(Animal::Ewe(ewe))) && !asks(&page, &Sheet::WhichPen(Animal::Ewe(ewe)))
    );
}

#[test]
fn two_records_of_one_ewe_are_joined_by_one_press_and_both_addresses_show_her() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let (ewe, also) = (phone.ewe("14"), phone.ewe("14 blue"));
    phone.note(Event::Life(Life::Described { ewe, born: Some(BirthDay::Year(2022)), breed: None }));
    phone.open(Screen::Ewe(ewe)).press("Merge duplicate").press("14 blue");
    assert!(phone.page().sheets.is_empty());
    assert_eq!(phone.flock.ewe(also).expect("she").id, phone.flock.ewe(ewe).expect("she").id);
    let title = phone.page().title;
    phone.open(Screen::Ewe(also));
    assert_eq!(phone.page().title, title);
    says(&phone, &["born 2022"]);
}
