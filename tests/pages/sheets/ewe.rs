//! A ewe in the field: condition, scan, crayon mark.

use yeanling_core::book::Event;
use yeanling_core::units::Condition;
use yeanling_pages::Sheet;

use super::phone;

#[test]
fn a_condition_is_a_score_and_perhaps_a_quarter() {
    let mut phone = phone();
    let ewe = phone.ewe("7");
    phone.ask(Sheet::Condition(ewe)).tells("Ewe 7").press("Save").tells("Choose a score from 1 to 5.");
    phone.press("3").tells_not("Choose a score").press("+ ½").press("Save").is_closed();
    phone.has_noted(&Event::Conditioned { ewe, score: Condition::from_score(3.5) });
    phone.ask(Sheet::Condition(ewe)).press("2").press("Save").is_closed();
    phone.has_noted(&Event::Conditioned { ewe, score: Condition::from_score(2.0) });
    // No hand tells more than five.
    phone.ask(Sheet::Condition(ewe)).press("5").press("+ ¾").press("Save").tells("out of range");
    assert_eq!(phone.page().sheets.len(), 1);
}

#[test]
fn a_scan_tells_how_many_and_perhaps_how_old() {
    let mut phone = phone();
    let ewe = phone.ewe("7");
    let days = "Age of the lambs, if the scanner said";
    phone.ask(Sheet::Scan(ewe)).press("Save").tells("Tap how many lambs the scan showed.");
    phone.press("Two").press("Save").is_closed();
    phone.has_noted(&Event::Scanned { ewe, lambs: 2, days: None });
    phone.ask(Sheet::Scan(ewe)).press("One").write(days, "3.5").press("Save").wrong_at(days);
    phone.write(days, "80").press("Save").is_closed();
    phone.has_noted(&Event::Scanned { ewe, lambs: 1, days: Some(80) });
    phone.ask(Sheet::Scan(ewe)).press("Empty").write(days, "80").press("Save");
    phone.tells("She scanned empty, so leave the lambs’ age blank.");
}

#[test]
fn the_crayon_of_her_group_is_written_ready() {
    let mut phone = phone();
    let ewe = phone.ewe("7");
    phone.ask(Sheet::Mark(ewe)).has_typed("Color", "").press("Save").wrong_at("Color");
    phone.act(&yeanling_pages::Action::Close);
    let group = phone.note(Event::GroupFormed { name: "Hill".to_owned() }).as_group();
    phone.note(Event::JoinedGroup { ewe, group });
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.note(Event::CrayonChanged { group, color: "red".to_owned() });
    phone.later(5);
    phone.ask(Sheet::Mark(ewe)).has_typed("Color", "red").press("Save").is_closed();
    phone.has_noted(&Event::CrayonMark { ewe, color: "red".to_owned() });
}
