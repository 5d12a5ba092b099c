//! The first run: four questions, each of which may be skipped, and eighteen ewes from nothing.

use yeanling_core::settings::BreedType;
use yeanling_core::units::System;
use yeanling_pages::{Action, Screen};
use yeanling_words::{flock, setup as words, vet, watch};

use crate::phone::Phone;

fn first_run() -> Phone {
    let mut phone = Phone::at("2027-02-01 12:00");
    phone.open(Screen::Watch).press(watch::SET_UP);
    assert_eq!(phone.screen, Screen::Setup);
    phone
}

#[test]
fn all_four_are_noted_with_one_press_and_the_flock_comes_next() {
    let mut phone = first_run();
    phone.press("lb, fl oz, °F").press(words::HAIR).write(vet::NUMBER, "555 0100").write(words::PENS, "6");
    assert_eq!(phone.book.len(), 0);
    phone.press(words::DONE);
    assert_eq!(phone.screen, Screen::Flock);
    let farm = &phone.flock.settings;
    assert_eq!(
        (farm.system, farm.breed_type, farm.vet_phones.day.as_str()),
        (System::Us, BreedType::Hair, "555 0100")
    );
    let names: Vec<&str> = phone.flock.pens.values().map(|pen| pen.name.as_str()).collect();
    assert_eq!(names, ["1", "2", "3", "4", "5", "6"]);
    assert!(phone.undo());
    assert!(phone.flock.pens.values().all(|pen| pen.closed.is_some()) || phone.flock.pens.is_empty());
    assert!(phone.flock.settings.vet_phones.is_empty());
}

#[test]
fn whoever_skips_all_of_it_notes_nothing() {
    let mut phone = first_run();
    phone.press(words::DONE);
    assert_eq!((phone.screen, phone.book.len()), (Screen::Flock, 0));
}

#[test]
fn the_units_begin_as_the_phones_region_has_them() {
    let mut phone = first_run();
    phone.says.region_us = true;
    phone.press(words::DONE);
    assert_eq!(phone.flock.settings.system, System::Us);
}

#[test]
fn the_clock_is_the_phones_and_can_be_changed() {
    use yeanling_core::settings::Clock;
    let mut phone = first_run();
    phone.press(words::DONE);
    assert_eq!(phone.flock.settings.clock, Clock::Phone);
    let mut phone = first_run();
    phone.says("As your phone has them");
    phone.press("6:41 am").press(words::DONE);
    assert_eq!(phone.flock.settings.clock, Clock::Twelve);
    // What the phone has already is nothing to note.
    let mut phone = first_run();
    phone.press("06:41").press(words::DONE);
    assert_eq!((phone.flock.settings.clock, phone.book.len()), (Clock::Phone, 0));
}

#[test]
fn what_is_wrong_is_said_at_its_field_and_nothing_is_noted() {
    let mut phone = first_run();
    phone.write(vet::NUMBER, "Jo").press(words::DONE).says(vet::NOT_A_NUMBER);
    phone
        .write(vet::NUMBER, "")
        .write(words::PENS, "61")
        .press(words::DONE)
        .says("61 is out of range. Enter 0 to 60.");
    assert_eq!((phone.screen, phone.book.len()), (Screen::Setup, 0));
}

#[test]
fn eighteen_ewes_come_of_a_range_and_go_again_as_one() {
    let mut phone = Phone::at("2027-02-01 12:00");
    phone.open(Screen::Flock).write(flock::FIND, "1-18").press("Add 18 ewes: 1 to 18");
    assert_eq!(phone.flock.ewes.len(), 18);
    phone.says("Ewe 1").says("Ewe 18");
    // Those that are there are not added twice.
    phone.write(flock::FIND, "17-20").press("Add 2 ewes: 19 to 20");
    assert_eq!(phone.flock.ewes.len(), 20);
    assert!(phone.undo());
    assert_eq!(phone.flock.ewes.values().filter(|ewe| ewe.lives()).count(), 18);
    // What looks like a range may be one tag.
    phone.write(flock::FIND, "30-32");
    let adds: Vec<Action> = phone
        .pressables()
        .into_iter()
        .filter(|one| one.label.starts_with("Add"))
        .map(|one| one.does)
        .collect();
    assert_eq!(adds.len(), 2, "{adds:?}");
}
