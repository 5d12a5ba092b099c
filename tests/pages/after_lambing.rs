//! After a lambing, on the pages: the udder check in the fewest taps and where it leads, a ewe that is settled, a lamb after
//! a hard birth.

use yeanling_core::book::{Animal, Event, EweId, LambId, LambingEase};
use yeanling_core::terms::UdderHalf;
use yeanling_core::units::Mass;
use yeanling_pages::{Action, Screen};

use crate::phone::Phone;

use UdderHalf::{Dry, Milks};

/// Ewe 7 has lambed a single two hours and ten minutes ago.
fn lambed() -> (Phone, EweId, LambId) {
    let mut phone = Phone::at("2027-02-01 03:12");
    let ewe = phone.ewe("7");
    let lamb = phone.lamb(ewe);
    phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    phone.note(Event::AllBorn { lamb });
    phone.later(130);
    (phone, ewe, lamb)
}

fn udder(phone: &Phone, ewe: EweId) -> Option<(UdderHalf, UdderHalf)> {
    phone.flock.ewe(ewe).and_then(|ewe| ewe.udder.last()).map(|seen| (seen.left, seen.right))
}

/// Presses an answer about the left or the right half.
fn half(phone: &mut Phone, right: bool, says: &str) {
    let all = phone.pressables();
    let found: Vec<Action> = all.into_iter().filter(|one| one.label == says).map(|one| one.does).collect();
    assert_eq!(found.len(), 2, "{says:?} is offered for each half");
    phone.act(&found[usize::from(right)]);
}

#[test]
fn both_run_is_one_tap_on_the_watch_and_two_through_the_sheet() {
    let (mut phone, ewe, _) = lambed();
    let mut sheet = phone.clone();
    phone.open(Screen::Watch).says("Draw both teats");
    phone.press("Both run, Ewe 7");
    assert_eq!(udder(&phone, ewe), Some((Milks, Milks)));
    sheet.open(Screen::Ewe(ewe)).press("Udder check").says("the plug comes out");
    sheet.press("Both run, soft");
    assert_eq!(udder(&sheet, ewe), Some((Milks, Milks)));
    assert!(sheet.page().sheets.is_empty());
    assert!(phone.undo());
    assert_eq!(udder(&phone, ewe), None);
}

#[test]
fn one_half_without_milk_leads_to_one_lamb_on_her_and_a_second_draw() {
    let (mut phone, ewe, _) = lambed();
    phone.open(Screen::Watch).press("Half by half, Ewe 7");
    half(&mut phone, false, "no milk");
    assert_eq!(udder(&phone, ewe), None, "one half was answered");
    half(&mut phone, true, "milk, warm, soft");
    assert_eq!(udder(&phone, ewe), Some((Dry, Milks)));
    assert_eq!(phone.screen, Screen::Ewe(ewe));
    phone.says("One half of her udder gives milk").says("Leave one lamb on her.");
    phone.later(60).open(Screen::Watch).says("draw the teats again");
}

#[test]
fn no_milk_feeds_her_lamb_from_elsewhere_and_at_the_second_draw_asks_for_the_vet() {
    let (mut phone, ewe, lamb) = lambed();
    phone.note(Event::Sucked { lamb });
    for _ in 0..2 {
        phone.open(Screen::Ewe(ewe)).press("Udder check");
        half(&mut phone, false, "no milk");
        half(&mut phone, true, "no milk");
        phone.says("Her udder gives no milk").says("Other colostrum for her lambs now.");
        phone.open(Screen::Watch).says("Its ewe has no milk").says("feed it");
        phone.later(60);
    }
    phone.open(Screen::Watch).says("vet today");
    phone.open(Screen::IllEwe(ewe)).says("No oxytocin by your own guess.");
}

#[test]
fn a_hot_half_leads_to_she_is_not_right_and_a_cold_one_to_the_vet_now() {
    for (answer, says) in [("hard or hot", "Call your vet today"), ("cold or blue", "Call your vet now")] {
        let (mut phone, ewe, _) = lambed();
        phone.open(Screen::Ewe(ewe)).press("Udder check");
        half(&mut phone, true, "milk, warm, soft");
        half(&mut phone, false, answer);
        assert_eq!(phone.screen, Screen::IllEwe(ewe));
        phone.says(says).says("Check now").says("Standing?");
    }
}

#[test]
fn a_settled_ewe_is_one_tap_and_one_that_is_not_leads_to_she_is_not_right() {
    let (mut phone, ewe, _) = lambed();
    phone.open(Screen::Ewe(ewe)).says("Feed and water before her");
    let mut not = phone.clone();
    phone.press("Up, eating, Ewe 7").says_nowhere("Feed and water before her:");
    phone.says("Up, eating and drinking");
    not.press("Not right");
    assert_eq!(not.screen, Screen::IllEwe(ewe));
}

#[test]
fn after_a_hard_birth_a_bright_lamb_is_one_tap_and_a_dull_one_leads_on() {
    let (mut phone, _, lamb) = lambed();
    phone.note(Event::Sucked { lamb });
    phone.note(Event::NavelDipped { lamb });
    phone.open(Screen::Watch).says_nowhere("Hard birth");
    phone.note(Event::BirthEase { lamb, ease: LambingEase::HardByHand });
    phone.open(Screen::Lamb(lamb)).says("Hard birth: bright, nursing, warm?");
    let name = phone.name(Animal::Lamb(lamb));
    phone.press(&format!("Bright, {name}")).says_nowhere("Hard birth");
    phone.later(110).says("Hard birth");
}

#[test]
fn the_eyes_are_looked_at_with_the_navel() {
    let mut phone = Phone::at("2027-02-01 03:12");
    let ewe = phone.ewe("7");
    phone.lamb(ewe);
    phone.open(Screen::Watch).says("look at both eyes");
}

#[test]
fn on_her_lambing_the_udder_is_asked_for_once_it_is_due() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("7");
    phone.open(Screen::LambingEwe(ewe));
    let lamb = phone.lamb(ewe);
    phone.note(Event::AllBorn { lamb });
    phone.says_nowhere("After lambing");
    // A press here makes it due: it comes in below, and nothing moves.
    phone.note(Event::Sucked { lamb });
    phone.says("After lambing").has_button("Both run");
    let place = |phone: &Phone| {
        let page = phone.page();
        let all = page.blocks.iter().position(|block| block.key == "after-lambing");
        (all.expect("it stands there"), page.blocks.len())
    };
    assert!(place(&phone).0 > 0, "{:?}", place(&phone));
    // Who comes to it again finds it on top.
    phone.open(Screen::Watch).open(Screen::LambingEwe(ewe));
    assert_eq!(place(&phone).0, 0);
    phone.press("Both run, Ewe 7");
    phone.says_nowhere("Draw each teat").has_no_button("Both run");
}
