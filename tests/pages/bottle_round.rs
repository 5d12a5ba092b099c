//! The bottle round: one mix, a tick each, and every tick can be taken back.

use yeanling_core::book::{Event, LambId, Milk, Way};
use yeanling_core::settings::Choice;
use yeanling_core::units::{Mass, System, Volume};
use yeanling_pages::{Action, Screen, Sheet};

use crate::phone::Phone;

/// Lambs of one ewe, each weighed and fed by bottle once, so many hours ago.
fn on_the_bottle(count: usize, kilograms: f64, hours: i64) -> (Phone, Vec<LambId>) {
    let mut phone = Phone::at("2026-02-21 01:00");
    let dam = phone.ewe("12");
    let lambs: Vec<LambId> = (0..count).map(|_| phone.lamb(dam)).collect();
    for lamb in &lambs {
        phone.note(Event::Weighed { lamb: *lamb, mass: Mass::from_kilograms(kilograms) });
        let volume = Volume::from_milliliters(kilograms * 50.0);
        phone.note(Event::Fed { lamb: *lamb, volume, milk: Milk::DamColostrum, way: Way::Bottle });
    }
    phone.later(hours * 60).open(Screen::BottleRound);
    (phone, lambs)
}

#[test]
fn three_lambs_get_one_mix_and_a_tick_each() {
    let (mut phone, _) = on_the_bottle(3, 4.0, 71);
    // The vet supplier's days 2 to 7: 100 to 150 ml, five times. 200 g/L made up to 375 ml: 75 g and 300 ml.
    phone.says("125\u{a0}ml of milk replacer").says("375\u{a0}ml for 3 lambs").says("75 g").says("300 ml");
    phone.says("200\u{a0}g added to 1 L of water is only 167 g/L").says("1875\u{a0}ml").says("5 feeds:");
    phone.press("Fed 125 ml, 12a").says("250\u{a0}ml for 2 lambs").says("50 g").says("Fed just now");
    phone.press("Undo, 12a").says("375\u{a0}ml for 3 lambs").says_nowhere("Fed just now");
    for name in ["12a", "12b", "12c"] {
        phone.press(&format!("Fed 125 ml, {name}"));
    }
    phone.says("All of this round are fed.").says("next at 04:48").says_nowhere("One mix");
    assert!(phone.undo());
    phone.says("125\u{a0}ml for 1 lamb");
}

#[test]
fn another_amount_is_asked_for_with_what_it_would_get() {
    let (mut phone, lambs) = on_the_bottle(3, 4.0, 71);
    phone.press("other amount, 12b");
    let [open] = &phone.draft().sheets[..] else { panic!("one sheet lies open") };
    let volume = Some(Volume::from_milliliters(125.0));
    assert_eq!(open.sheet, Sheet::Feed(lambs[1], volume, Milk::Replacer));
}

#[test]
fn the_mix_and_the_powder_until_weaning_answer_why() {
    let (mut phone, _) = on_the_bottle(3, 4.0, 71);
    phone.press("why? Mixing").says("Made up with 300\u{a0}ml of water").says("Feed maker");
    phone.act(&Action::Close);
    phone.press("why? Powder until weaning").says("NDSU");
    phone.act(&Action::Close);
    phone.press("why? Bottle today").says("Bottle today");
}

#[test]
fn the_powder_until_weaning_stands_against_what_is_in_store() {
    let (mut phone, _) = on_the_bottle(3, 4.0, 71);
    // NDSU, 6.8 to 9.1 kg a lamb.
    phone.says("20.4 kg to 27.3 kg");
    phone.write("Powder in store", "10").says("Short of 10.4\u{a0}kg to 17.3\u{a0}kg.");
    phone.write("Powder in store", "ten").says("“ten” is not a number").says_nowhere("Short of");
    phone.write("Lambs", "0").says("0 lambs is out of range");
    phone.write("Lambs", "").says_nowhere("Still needed");
}

#[test]
fn an_old_weight_is_weighed_first_and_not_fed_with_one_tap() {
    let (phone, _) = on_the_bottle(1, 2.0, 74);
    // The last weight guards its stomach: 2 kg, 200 ml/kg in five feeds.
    phone.says("Weigh it first, then 80\u{a0}ml");
    assert!(phone.pressables().iter().all(|one| !one.name.starts_with("Fed")));
}

#[test]
fn a_farm_in_pounds_goes_the_same_round() {
    let (mut phone, _) = on_the_bottle(3, 4.0, 71);
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone.says("4.2\u{a0}fl\u{a0}oz of milk replacer").says("12.6\u{a0}fl\u{a0}oz for 3 lambs").says("75 g");
}

#[test]
fn a_round_without_bottle_lambs_says_what_to_do() {
    let mut phone = Phone::at("2026-02-21 01:00");
    phone.open(Screen::BottleRound).says("No lamb is on the bottle.");
    assert!(phone.pressables().iter().any(|one| one.label == "Lambing"));
    let ewe = phone.ewe("7");
    let lamb = phone.lamb(ewe);
    phone.press("7a");
    assert_eq!(phone.screen, Screen::Lamb(lamb));
}
