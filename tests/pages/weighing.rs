//! Weigh lambs: its weight on the keys, what is refused and asked about, and how they grew.

use yeanling_core::book::{Animal, Event, EweId, LambId};
use yeanling_core::units::Mass;
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Key, Screen, State};

use crate::phone::Phone;
use crate::reach::reached;

/// Lambs of 4 kg at birth, forty days old.
fn grown(count: usize) -> (Phone, EweId, Vec<LambId>) {
    let mut phone = Phone::at("2027-02-01 10:00");
    let ewe = phone.ewe("14");
    let lambs: Vec<LambId> = (0..count).map(|_| phone.lamb(ewe)).collect();
    for lamb in lambs.iter().copied() {
        phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    }
    phone.later(40 * 24 * 60).open(Screen::WeighLambs);
    (phone, ewe, lambs)
}

/// Types on the keys.
fn keys(phone: &mut Phone, text: &str) {
    let types = |kind: &Kind| match kind {
        Kind::Keypad(pad) => Some(pad.types.clone()),
        _ => None,
    };
    let key: Key = reached(&phone.page()).iter().find_map(|block| types(&block.kind)).expect("keys");
    phone.act(&Action::Type(key, text.to_owned()));
}

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

#[track_caller]
fn weighs(phone: &Phone, lamb: LambId, kilograms: f64) {
    let last = phone.flock.lamb(lamb).and_then(|lamb| lamb.weights.last()).expect("a weight");
    assert!((last.mass.as_kilograms() - kilograms).abs() < 0.005, "{:?}", last.mass);
}

#[test]
fn each_weight_turns_to_the_next_lamb_and_none_is_passed_over_unasked() {
    let (mut phone, _, lambs) = grown(2);
    is_turn_of(&phone, "14a");
    phone.says("1 of 2").says("last 4.0\u{a0}kg at 0 days");
    phone.press("Save, next").says("Type the weight, or skip it.");
    keys(&mut phone, "15.2");
    phone.says_nowhere("Type the weight");
    phone.press("Save, next");
    weighs(&phone, lambs[0], 15.2);
    is_turn_of(&phone, "14b");
    phone.says("weighed today 1");
    phone.press("Skip").says("All lambs done.");
    phone.press("Start again");
    is_turn_of(&phone, "14a");
    assert!(phone.undo());
    weighs(&phone, lambs[0], 4.0);
}

#[test]
fn a_weight_unlike_the_last_is_asked_about_once_and_other_digits_are_asked_about_anew() {
    let (mut phone, _, lambs) = grown(1);
    phone.note(Event::Weighed { lamb: lambs[0], mass: Mass::from_kilograms(15.0) });
    keys(&mut phone, "8");
    phone.press("Save, next").says("If 8.0\u{a0}kg is right, tap Save again.");
    is_turn_of(&phone, "14a");
    keys(&mut phone, "8.1");
    phone.press("Save, next").says("If 8.1\u{a0}kg is right, tap Save again.");
    phone.press("Save, next");
    weighs(&phone, lambs[0], 8.1);
}

#[test]
fn pounds_are_read_as_pounds_and_nonsense_is_refused_in_words() {
    let (mut phone, _, lambs) = grown(1);
    keys(&mut phone, "4.2.2");
    phone.press("Save, next");
    is_turn_of(&phone, "14a");
    phone.press("lb");
    keys(&mut phone, "33");
    phone.press("Save, next");
    weighs(&phone, lambs[0], 14.97);
}

#[test]
fn digits_stay_with_the_lamb_for_which_they_were_typed() {
    let (mut phone, ewe, lambs) = grown(2);
    keys(&mut phone, "15.2");
    phone.note(Event::Died { animal: Animal::Lamb(lambs[0]), cause: yeanling_core::book::Cause::Unknown });
    is_turn_of(&phone, "14b");
    phone.press("Save, next").says("Type the weight, or skip it.");
    weighs(&phone, lambs[1], 4.0);
    assert!(phone.flock.ewe(ewe).is_some());
}

#[test]
fn a_lamb_is_found_by_its_tag_or_by_what_it_was_ever_called() {
    let (mut phone, _, lambs) = grown(3);
    phone.note(Event::Tagged { animal: Animal::Lamb(lambs[2]), tag: "R7".to_owned() });
    phone.write("Find by tag or mark", "14B");
    is_turn_of(&phone, "14b");
    phone.write("Find by tag or mark", " r7 ");
    is_turn_of(&phone, "R7");
    phone.write("Find by tag or mark", "nobody");
    is_turn_of(&phone, "R7");
    phone.press("Back one");
    is_turn_of(&phone, "14b");
    phone.says_nowhere("nobody");
}

#[test]
fn lambs_of_six_weeks_are_weaned_together_and_brought_back_together() {
    let (mut phone, ..) = grown(2);
    phone.says_nowhere("Weaning");
    phone.later(3 * 24 * 60).says("2 lambs with their ewes, six weeks or older.");
    phone.press("Wean all 2").press("Yes, all 2 today").says_nowhere("six weeks or older");
    assert!(phone.page().sheets.is_empty());
    assert!(phone.undo());
    phone.says("2 lambs with their ewes");
}

#[test]
fn how_they_grew_is_told_with_a_reason_and_leads_to_each() {
    let (mut phone, _, lambs) = grown(1);
    phone.says("A weight at two weeks or older shows how a lamb grew.");
    keys(&mut phone, "15.2");
    phone.press("Save, next");
    let row = |kind: &Kind| match kind {
        Kind::Row(row) if row.to == Some(Screen::Lamb(lambs[0])) => Some(row.clone()),
        _ => None,
    };
    let row = reached(&phone.page()).iter().find_map(|block| row(&block.kind)).expect("its row");
    // (15.2 − 4.0) kg in 40 days.
    assert!(row.text.plain().contains("280"), "{row:?}");
    assert_eq!(row.state, State::Coming);
    phone.press("why? How they grew");
    assert_eq!(phone.page().sheets.len(), 1);
}

#[test]
fn without_a_living_lamb_there_is_nothing_to_weigh() {
    let mut phone = Phone::at("2027-02-01 10:00");
    phone.open(Screen::WeighLambs).says("No live lambs this season.");
}
