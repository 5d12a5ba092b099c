//! Score ewes: a group gone through, a tap for each, and how it stands against its target.

use yeanling_core::book::{Event, EweId, GroupId};
use yeanling_core::units::Mass;
use yeanling_pages::Screen;
use yeanling_pages::block::Kind;

use crate::phone::Phone;
use crate::reach::reached;

/// A group of ewes of 80 kg in October, a month after they joined.
fn group(tags: &[&str]) -> (Phone, GroupId, Vec<EweId>) {
    let mut phone = Phone::at("2026-09-01 10:00");
    let group = phone.note(Event::GroupFormed { name: "Hill".to_owned() }).as_group();
    let ewes: Vec<EweId> = tags.iter().map(|tag| phone.ewe(tag)).collect();
    for ewe in ewes.iter().copied() {
        phone.note(Event::JoinedGroup { ewe, group });
        phone.note(Event::EweWeighed { ewe, mass: Mass::from_kilograms(80.0) });
    }
    phone.later(30 * 24 * 60).open(Screen::ScoreEwes(group));
    (phone, group, ewes)
}

/// Whose turn it is.
fn turn(phone: &Phone) -> Option<String> {
    let name = |kind: &Kind| match kind {
        Kind::Heading(heading) if heading.level == 2 => Some(heading.text.clone()),
        _ => None,
    };
    reached(&phone.page()).iter().find_map(|block| name(&block.kind))
}

#[track_caller]
fn is_turn_of(phone: &Phone, name: &str) {
    assert_eq!(turn(phone).as_deref(), Some(name));
}

#[test]
fn ewes_come_by_their_tags_as_people_count_and_each_tap_turns_to_the_next() {
    let (mut phone, ..) = group(&["2", "10", "9", "1"]);
    is_turn_of(&phone, "Ewe 1");
    phone.says("1 of 4");
    phone.press("2");
    is_turn_of(&phone, "Ewe 2");
    phone.press("Skip");
    is_turn_of(&phone, "Ewe 9");
    phone.press("Back one");
    is_turn_of(&phone, "Ewe 2");
    phone.press("Skip").press("3.5").press("3").says("All ewes in this group done.");
    phone.press("Start again");
    is_turn_of(&phone, "Ewe 1");
    assert!(phone.pressables().iter().all(|one| one.label != "Back one"));
}

#[test]
fn the_thin_ones_are_told_against_the_target_and_who_is_taken_back_leaves_them() {
    let (mut phone, ..) = group(&["2", "10", "9", "1"]);
    phone.says("No score in the last two weeks.");
    phone.press("2").press("Skip").press("3.5").press("3");
    // FAS Scotland, lowland at mating: 3.5. SRUC: 12% of 80 kg a score; 1.5 scores are 14.4 kg.
    phone.says("3 scored, mean 2.83. Target 3.5: 2 below.");
    phone.says("needs 1.5, some 14.4\u{a0}kg, 85 days at 170\u{a0}g");
    assert!(phone.undo());
    phone.says("2 scored, mean 2.75. Target 3.5: 1 below.");
    phone.press("late pregnancy").says("This source has no target for this stage");
    phone.press("why? late pregnancy");
    assert_eq!(phone.page().sheets.len(), 1);
}

#[test]
fn a_scan_and_a_mark_are_noted_by_a_tap_and_each_begins_with_the_first_ewe() {
    let (mut phone, group, ewes) = group(&["1", "2"]);
    phone.press("Skip").press("Scan");
    is_turn_of(&phone, "Ewe 1");
    phone.says_nowhere("Group condition");
    phone.press("Two").press("Empty");
    phone.press("Start again").says("Scanned: 2 lambs");
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.note(Event::CrayonChanged { group, color: "red".to_owned() });
    phone.press("Crayon mark").press("Marked red");
    is_turn_of(&phone, "Ewe 2");
    let color = &phone.flock.ewe(ewes[0]).and_then(|ewe| ewe.marks.last()).expect("a mark").color;
    assert_eq!(color, "red");
}

#[test]
fn what_cannot_be_noted_turns_to_nobody() {
    let (mut phone, _, ewes) = group(&["1", "2"]);
    let stale = phone.pressables().into_iter().find(|one| one.label == "3").expect("a score").does;
    // She turned out never to have come: the finger was on its way.
    phone.note(Event::Deleted { entry: ewes[0].entry() });
    is_turn_of(&phone, "Ewe 2");
    phone.act(&stale);
    assert!(phone.draft().refused.is_some(), "a ewe that is not in the book was scored");
    is_turn_of(&phone, "Ewe 2");
}

#[test]
fn a_group_without_ewes_says_so() {
    let (phone, ..) = group(&[]);
    phone.says("No ewes in this group yet.");
    assert_eq!(turn(&phone).as_deref(), None);
}
