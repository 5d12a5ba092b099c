//! All animals: any of them is found by any tag or mark it ever wore, or by where it is.

use yeanling_core::book::{Animal, Event, EweId, Life};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Screen, Sheet};

use crate::phone::Phone;
use crate::reach::fields;

/// A phone with so many ewes, tagged from 1 on.
fn with_ewes(count: usize) -> (Phone, Vec<EweId>) {
    let mut phone = Phone::at("2026-02-21 01:00");
    let ewes = (1..=count).map(|tag| phone.ewe(&tag.to_string())).collect();
    phone.open(Screen::Flock);
    (phone, ewes)
}

/// The names of the rows that are seen.
fn seen(phone: &Phone) -> Vec<String> {
    let rows = phone.pressables().into_iter();
    let is_row = |does: &Action| matches!(does, Action::Go(Screen::Ewe(_) | Screen::Lamb(_)));
    rows.filter(|one| is_row(&one.does)).map(|one| one.name).collect()
}

#[test]
fn an_empty_flock_says_what_to_do_first() {
    let mut phone = Phone::at("2026-02-21 01:00");
    phone.open(Screen::Flock).says("No animals yet.").says("0 ewes · 0 lambs");
}

#[test]
fn a_tag_finds_its_ewe_and_her_lambs_and_enter_leads_to_the_only_one() {
    let (mut phone, ewes) = with_ewes(3);
    let lamb = phone.lamb(ewes[1]);
    phone.write("Find a tag or a name", "2a");
    assert_eq!(seen(&phone), ["2a"]);
    let enter = fields(&phone.page())[0].1.enter.clone();
    assert_eq!(enter, Some(Action::Go(Screen::Lamb(lamb))));
    phone.write("Find a tag or a name", "2");
    assert_eq!(seen(&phone), ["Ewe 2", "2a"]);
    assert_eq!(fields(&phone.page())[0].1.enter, None);
    phone.write("Find a tag or a name", "7").says("Nothing is called that.");
    phone.write("Find a tag or a name", "").says("Shown: here");
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 2", "Ewe 3", "2a"]);
}

#[test]
fn a_tag_that_nobody_wears_can_be_added_and_one_that_is_worn_not() {
    let (mut phone, _) = with_ewes(3);
    phone.write("Find a tag or a name", "7").press("Add ewe 7").says("4 ewes");
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 2", "Ewe 3", "Ewe 7"]);
    phone.write("Find a tag or a name", "7");
    assert!(phone.pressables().iter().all(|one| !one.label.starts_with("Add ewe")));
    phone.write("Find a tag or a name", "");
    assert!(phone.undo());
    phone.says("3 ewes");
}

#[test]
fn a_ewe_is_found_by_her_tag_with_the_word_before_it_and_none_of_that_name_is_offered() {
    let (mut phone, _) = with_ewes(3);
    phone.write("Find a tag or a name", "ewe 2").has_no_button("Add ewe");
    assert_eq!(seen(&phone), ["Ewe 2"]);
    phone.write("Find a tag or a name", "Ewe 77").press("Add ewe 77").says("4 ewes");
}

#[test]
fn an_animal_is_found_by_every_tag_and_mark_it_ever_had_and_no_other_living_one_has_its_tag() {
    let (mut phone, ewes) = with_ewes(3);
    let lamb = Animal::Lamb(phone.lamb(ewes[1]));
    let tag = |phone: &mut Phone, tag: &str| {
        _ = phone.ask(Sheet::Tag(lamb)).write("Tag or mark", tag).press("Save");
    };
    tag(&mut phone, "3");
    phone.tells("Tag 3 is on another live animal").act(&Action::Close);
    tag(&mut phone, "7001");
    tag(&mut phone, "7002");
    phone.note(Event::Life(Life::Marked { animal: lamb, mark: "41 blue".to_owned() }));
    for known in ["7001", "7002", "41 bl"] {
        phone.write("Find a tag or a name", known);
        assert_eq!(seen(&phone), ["7002"], "{known}");
    }
}

#[test]
fn of_a_large_flock_a_dozen_are_drawn_and_more_when_they_are_asked_for() {
    let (mut phone, _) = with_ewes(60);
    assert_eq!(seen(&phone).len(), 12);
    phone.press("Show more (48)");
    assert_eq!(seen(&phone).len(), 60);
    phone.write("Find a tag or a name", "1");
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 10", "Ewe 11", "Ewe 12"]);
    phone.press("Show more (11)");
    assert_eq!(seen(&phone).len(), 15);
    phone.write("Find a tag or a name", "12");
    phone.write("Find a tag or a name", "1");
    assert_eq!(seen(&phone).len(), 4, "another key begins anew");
}

#[test]
fn which_animals_are_shown_can_be_chosen() {
    let (mut phone, ewes) = with_ewes(2);
    let lamb = phone.lamb(ewes[0]);
    phone.press("Dead or gone").says("Shown: dead or gone").says("None at the moment.");
    phone.note(Event::Died { animal: Animal::Lamb(lamb), cause: yeanling_core::book::Cause::Starved });
    assert_eq!(seen(&phone), ["1a"]);
}

#[test]
fn what_was_looked_for_stands_again_for_who_comes_back_from_an_animal_alone() {
    let (mut phone, ewes) = with_ewes(3);
    phone.write("Find a tag or a name", "2");
    phone.open(Screen::Ewe(ewes[1])).open(Screen::Flock);
    assert_eq!(seen(&phone), ["Ewe 2"]);
    phone.open(Screen::Farm).open(Screen::Flock);
    assert_eq!(seen(&phone), ["Ewe 1", "Ewe 2", "Ewe 3"]);
}

#[test]
fn a_key_draws_nothing_anew_but_the_rows_it_finds() {
    let (mut phone, _) = with_ewes(200);
    let list = |phone: &Phone| {
        let page = phone.page();
        page.all().into_iter().find(|block| block.key == "here-list").cloned().expect("the list")
    };
    phone.write("Find a tag or a name", "1");
    let before = list(&phone);
    phone.write("Find a tag or a name", "19");
    assert!(std::sync::Arc::ptr_eq(&before, &list(&phone)), "what is out of sight is the same");
    let rows = phone.page().all().iter().filter(|block| block.key.starts_with("found-ewes-")).count();
    // The list and four places.
    assert_eq!(rows, 5);
    let places = |phone: &Phone| -> Vec<String> {
        let page = phone.page();
        let rows = page.all().into_iter().filter(|block| matches!(block.kind, Kind::Row(_)));
        rows.map(|row| row.key.to_string()).filter(|key| key.starts_with("found")).collect()
    };
    let before = places(&phone);
    phone.write("Find a tag or a name", "1");
    assert_eq!(places(&phone), before, "a row is a place that takes other words");
}
