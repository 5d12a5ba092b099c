//! A ewe is picked, or added on the spot: as a foster dam, into a pen; a lamb is picked for a ewe, a pen for an animal.

use yeanling_core::book::{Animal, Event, EweId, Illness, Life, PenId};
use yeanling_core::flock::Pen;
use yeanling_core::terms::{EweSign, EweStage, Gate};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Sheet};

use super::{phone, with_lamb};
use crate::phone::Phone;
use crate::reach::reached;

fn pen(phone: &mut Phone, name: &str) -> PenId {
    phone.note(Event::PenMade { name: name.to_owned(), size: None }).as_pen()
}

fn in_pen(phone: &Phone, ewe: EweId) -> Option<PenId> {
    phone.flock.pen_of(Animal::Ewe(ewe)).map(|(pen, _)| pen)
}

fn ewes_called(phone: &Phone, tag: &str) -> usize {
    phone.flock.ewes.values().filter(|ewe| ewe.tag.as_deref() == Some(tag)).count()
}

/// Presses Enter in the field for her tag.
fn enter(phone: &mut Phone) {
    let enter = phone.field("Her tag").enter.expect("Enter does something");
    phone.act(&enter);
}

#[test]
fn a_ewe_is_picked_from_those_there_are_and_goes_into_the_pen() {
    let mut phone = phone();
    let (ewe, _) = (phone.ewe("7"), phone.ewe("71"));
    let pen = pen(&mut phone, "4");
    phone.ask(Sheet::PutIn(pen)).press("7").is_closed();
    assert_eq!(in_pen(&phone, ewe), Some(pen));
}

#[test]
fn a_ewe_that_is_new_goes_in_with_one_press_and_undo_takes_back_both() {
    let mut phone = phone();
    phone.ewe("7");
    let pen = pen(&mut phone, "4");
    phone.ask(Sheet::PutIn(pen)).write("Her tag", "ewe 99").press("Add ewe 99").is_closed();
    let ewe = phone.flock.ewes.values().find(|ewe| ewe.tag.as_deref() == Some("99")).expect("she came").id;
    assert_eq!(in_pen(&phone, ewe), Some(pen));
    assert!(phone.undo());
    assert_eq!(ewes_called(&phone, "99"), 0);
    assert!(phone.flock.pens.get(&pen).is_some_and(|pen: &Pen| pen.inside.is_empty()));
}

#[test]
fn what_is_refused_of_a_new_ewe_brings_no_ewe() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Foster(lamb)).write("Her tag", "99");
    let add = phone.pressables().into_iter().find(|one| one.label == "Add ewe 99").expect("she can be added");
    phone.note(Event::Died { animal: Animal::Lamb(lamb), cause: yeanling_core::book::Cause::Cold });
    phone.later(1);
    phone.act(&add.does);
    assert_eq!(ewes_called(&phone, "99"), 0);
    assert_eq!(phone.page().sheets.len(), 1);
    assert!(phone.page().sheets[0].refused.is_some());
}

#[test]
fn typing_narrows_and_enter_takes_the_only_one_or_adds_her() {
    let mut phone = phone();
    let (seven, _) = (phone.ewe("7"), phone.ewe("12"));
    let pen = pen(&mut phone, "4");
    phone.ask(Sheet::PutIn(pen));
    assert!(phone.field("Her tag").enter.is_none(), "of two, none is the one");
    phone.write("Her tag", "7");
    enter(&mut phone);
    assert_eq!(in_pen(&phone, seven), Some(pen));
    phone.ask(Sheet::PutIn(pen)).write("Her tag", "8").tells("No ewe is called that.");
    enter(&mut phone);
    assert_eq!(ewes_called(&phone, "8"), 1);
}

#[test]
fn a_lamb_is_not_offered_the_ewe_that_rears_it_and_she_cannot_be_added_again() {
    let (mut phone, _, lamb) = with_lamb();
    phone.ask(Sheet::Foster(lamb)).write("Her tag", "7").tells("It is her already.");
    assert!(phone.pressables().is_empty());
}

fn aborted(ewe: EweId) -> Event {
    let good = Gate::Good;
    Event::Illness(Illness::EweSeen {
        ewe,
        stage: EweStage::LateInLamb,
        standing: good,
        eating: good,
        nothing_out: good,
        signs: vec![EweSign::Aborted],
        onset: None,
    })
}

#[test]
fn a_ewe_that_aborted_is_not_offered_a_lamb_and_it_is_said_why() {
    let (mut phone, _, lamb) = with_lamb();
    let sick = phone.ewe("8");
    phone.ewe("9");
    phone.note(aborted(sick));
    phone
        .ask(Sheet::Foster(lamb))
        .tells("Aborted this season, so not listed: Ewe 8. Never foster onto them.");
    let offered: Vec<String> = phone.pressables().into_iter().map(|one| one.label).collect();
    assert!(offered.contains(&"9".to_owned()) && !offered.contains(&"8".to_owned()), "{offered:?}");
    phone.write("Her tag", "8").tells("She aborted this season.");
    assert!(phone.pressables().is_empty(), "nor is she added anew");
    // She takes none on, and her own lamb is not offered to another.
    let mut hers = phone.clone();
    hers.act(&Action::Close);
    hers.ask(Sheet::TakeOn(sick)).tells("Never foster a lamb onto her");
    assert!(hers.pressables().is_empty());
    let (mut other, dam, _) = with_lamb();
    let next = other.ewe("9");
    other.note(aborted(dam));
    other.ask(Sheet::TakeOn(next)).tells("Not listed, their ewe aborted: 7a.");
    assert!(other.pressables().is_empty());
}

#[test]
fn a_lamb_finds_another_ewe_and_undo_brings_it_back() {
    let (mut phone, ewe, lamb) = with_lamb();
    let other = phone.ewe("8");
    phone.ask(Sheet::Foster(lamb)).press("8").is_closed();
    phone.has_noted(&Event::Life(Life::Fostered { lamb, dam: other }));
    assert!(phone.undo());
    let rearer = phone.flock.lamb(lamb).and_then(|lamb| phone.flock.rearer(lamb));
    assert_eq!(rearer, Some(ewe));
}

#[test]
fn those_that_have_lambed_stand_first_where_a_lamb_needs_a_dam() {
    let (mut phone, _, _) = with_lamb();
    phone.ewe("8");
    let pen = pen(&mut phone, "4");
    phone.ask(Sheet::PutIn(pen));
    let titles: Vec<String> = reached(&phone.page())
        .iter()
        .filter_map(|block| match &block.kind {
            Kind::Section(section) => Some(section.title.clone()),
            _ => None,
        })
        .collect();
    assert_eq!(titles, ["Lambed already", "Ewes"]);
}

#[test]
fn of_many_ewes_the_first_are_shown_and_how_many_there_are_more() {
    let mut phone = phone();
    for tag in 1..=75 {
        phone.ewe(&tag.to_string());
    }
    let pen = pen(&mut phone, "4");
    phone.ask(Sheet::PutIn(pen)).tells(&yeanling_words::lambing::and_more(15));
    assert_eq!(phone.pressables().len(), 60);
    phone.write("Her tag", "75").press("75").is_closed();
}

#[test]
fn a_ewe_takes_a_lamb_on_those_without_a_ewe_first() {
    let (mut phone, ewe, own) = with_lamb();
    let other = phone.ewe("8");
    let (with, alone) = (phone.lamb(other), phone.lamb(other));
    phone.note(Event::Accepted { lamb: alone, accepts: false });
    phone.later(1);
    phone.ask(Sheet::TakeOn(ewe));
    let names: Vec<String> = phone.pressables().into_iter().map(|one| one.label).collect();
    let name = |lamb| phone.name(Animal::Lamb(lamb));
    assert_eq!(names, [name(alone), name(with)], "her own is {}", name(own));
    phone.press(&names[0]).is_closed();
    phone.has_noted(&Event::Life(Life::Fostered { lamb: alone, dam: ewe }));
}

#[test]
fn a_ewe_with_no_lamb_to_take_on_is_told_so() {
    let (mut phone, ewe, _) = with_lamb();
    phone.ask(Sheet::TakeOn(ewe)).tells("No lamb under two weeks");
    assert!(phone.pressables().is_empty());
}

#[test]
fn an_animal_is_moved_to_another_pen_empty_and_clean_ones_first() {
    let (mut phone, ewe, _) = with_lamb();
    let animal = Animal::Ewe(ewe);
    phone.ask(Sheet::WhichPen(animal)).tells("There is no other pen");
    phone.act(&Action::Close);
    let (full, clean) = (pen(&mut phone, "1"), pen(&mut phone, "2"));
    let other = phone.ewe("8");
    phone.note(Event::PutInPen { animal: Animal::Ewe(other), pen: full });
    phone.ask(Sheet::WhichPen(animal)).tells("Empty, clean").tells("Ewe 8");
    let first = phone.pressables()[0].clone();
    phone.act(&first.does);
    assert_eq!(in_pen(&phone, ewe), Some(clean));
    // Where she is already is not offered.
    phone.ask(Sheet::WhichPen(animal));
    assert_eq!(phone.pressables().len(), 1);
}
