//! The pen board and one pen: who is in, who may go out and why not yet, and its card for paper.

use yeanling_core::book::{Animal, Event, EweId, PenId};
use yeanling_pages::block::Kind;
use yeanling_pages::{Request, Screen, State};

use crate::phone::Phone;
use crate::reach::reached;

fn pen(phone: &mut Phone, name: &str) -> PenId {
    phone.note(Event::PenMade { name: name.to_owned(), size: None }).as_pen()
}

fn put_in(phone: &mut Phone, ewe: EweId, pen: PenId) {
    phone.note(Event::PutInPen { animal: Animal::Ewe(ewe), pen });
}

/// A ewe with two lambs that sucked, in a pen.
fn penned() -> (Phone, EweId, PenId) {
    let mut phone = Phone::at("2027-02-01 23:55");
    let (ewe, pen) = (phone.ewe("14"), pen(&mut phone, "1"));
    for _ in 0..2 {
        let lamb = phone.lamb(ewe);
        phone.note(Event::Sucked { lamb });
    }
    put_in(&mut phone, ewe, pen);
    phone.open(Screen::Pens);
    (phone, ewe, pen)
}

fn state(phone: &Phone, name: &str) -> State {
    let row = |kind: &Kind| match kind {
        Kind::Row(row) if row.name == name => Some(row.state),
        _ => None,
    };
    reached(&phone.page()).iter().find_map(|block| row(&block.kind)).expect("the row")
}

#[test]
fn a_pen_is_set_up_with_its_sides_and_stands_empty() {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.open(Screen::Pens).says("No pens yet");
    phone
        .press("Set up a pen")
        .write("Wide, if you like", "1.5")
        .write("Deep, if you like", "1.8")
        .press("Save");
    phone.says("Pen 1").says("1.5 × 1.8 m").says("Empty, clean");
    assert_eq!(state(&phone, "Pen 1"), State::Done);
    assert!(phone.undo());
    phone.says("No pens yet");
}

#[test]
fn a_pen_of_a_name_that_stands_or_with_one_side_alone_is_not_set_up() {
    let mut phone = Phone::at("2027-02-01 23:55");
    pen(&mut phone, "Corner");
    phone.open(Screen::Pens).press("Set up a pen").write("Name", " corner ").press("Save");
    phone.says("There is a pen with that name");
    phone.write("Name", "2").says_nowhere("There is a pen with that name");
    phone.write("Wide, if you like", "5").press("Save").says("Give both sides, or neither.");
    phone.write("Deep, if you like", "wide").press("Save").says("“wide”");
    assert_eq!(phone.flock.pens.len(), 1);
    phone.write("Deep, if you like", "").write("Wide, if you like", "").press("Save").says("Pen 2");
}

#[test]
fn a_pair_may_go_out_once_the_stay_is_over_and_earlier_only_by_a_button_that_says_so() {
    let (mut phone, ..) = penned();
    phone.says("Ewe 14 and 2 lambs · just in").says("Not yet: stay ends");
    assert_eq!(state(&phone, "Pen 1"), State::Coming);
    phone.press("Turn out early Pen 1").says("Empty, not cleaned since");
    assert!(phone.undo());
    phone.later(4 * 24 * 60).says("Ready to turn out");
    assert_eq!(state(&phone, "Pen 1"), State::Now);
    phone.press("Out Pen 1").press("Cleaned and bedded Pen 1").says("Empty, clean");
}

#[test]
fn a_lamb_that_was_not_seen_to_suck_holds_its_pair_back() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let (ewe, pen) = (phone.ewe("14"), pen(&mut phone, "1"));
    phone.lamb(ewe);
    put_in(&mut phone, ewe, pen);
    phone.open(Screen::Pens).later(4 * 24 * 60).says("14a not seen to nurse, not fed");
    assert!(phone.pressables().iter().any(|one| one.name == "Turn out early Pen 1"));
}

#[test]
fn two_ewes_in_one_pen_and_a_pen_not_cleaned_before_are_told() {
    let (mut phone, ewe, first) = penned();
    phone.says_nowhere("Two ewes in one pen").says_nowhere("Not cleaned before");
    phone.note(Event::LetOut { animal: Animal::Ewe(ewe) });
    phone.later(1);
    let others = [phone.ewe("7"), phone.ewe("9")];
    for other in others {
        put_in(&mut phone, other, first);
    }
    phone.says("Two ewes in one pen").says("Was not cleaned before they went in.");
}

#[test]
fn a_pen_is_opened_and_given_another_name_that_is_not_empty() {
    let (mut phone, _, id) = penned();
    phone.press("Pen 1");
    assert_eq!(phone.screen, Screen::Pen(id));
    phone.press("Another name").press("Save");
    assert!(!phone.page().sheets.is_empty(), "an empty name was taken");
    phone.write("Name", "By the door").press("Save").says("Pen By the door");
    assert!(phone.undo());
    phone.says("Pen 1");
}

#[test]
fn a_pen_is_taken_down_only_when_nobody_is_in_and_leads_back_to_the_others() {
    let (mut phone, _, id) = penned();
    phone.open(Screen::Pen(id)).press("Remove pen");
    assert_eq!(phone.screen, Screen::Pen(id), "someone is in");
    assert!(phone.draft().refused.is_some());
    phone.press("Turn out early").press("Remove pen");
    assert_eq!(phone.screen, Screen::Pens);
    phone.says("No pens yet");
    phone.open(Screen::Pen(id)).says("This pen was removed. Its record stays.");
    assert!(phone.pressables().iter().all(|one| one.name != "Put in"));
}

#[test]
fn who_is_in_a_pen_leads_to_them_and_can_be_moved() {
    let (mut phone, ewe, id) = penned();
    let other = pen(&mut phone, "2");
    phone.open(Screen::Pen(id)).press("Move").press("Pen 2").says_nowhere("Ewe 14 and 2 lambs");
    phone.open(Screen::Pen(other)).says("Ewe 14 and 2 lambs");
    phone.press("Ewe 14");
    assert_eq!(phone.screen, Screen::Ewe(ewe));
}

#[test]
fn a_ewe_is_put_into_a_pen_from_the_board() {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.ewe("14");
    pen(&mut phone, "1");
    phone.open(Screen::Pens).press("Put in Pen 1").press("14").says("Ewe 14 · just in");
    assert!(phone.page().sheets.is_empty());
}

#[test]
fn the_card_of_a_pen_has_the_dam_her_lambs_and_what_is_still_to_do() {
    let (mut phone, _, id) = penned();
    phone.open(Screen::Pen(id));
    let card = |kind: &Kind| match kind {
        Kind::PaperCard(card) => Some(card.clone()),
        _ => None,
    };
    let card = phone.page().all().iter().find_map(|block| card(&block.kind)).expect("a card");
    let [lambs, withdrawal, to_do] = &card.lists[..] else { panic!("{card:?}") };
    assert!(lambs.heading.contains("Ewe 14") && lambs.lines.len() == 2, "{lambs:?}");
    assert!(withdrawal.lines.is_empty());
    assert!(to_do.boxes && to_do.lines.iter().any(|line| line.starts_with("14a: ")), "{to_do:?}");
    phone.press("Print its card");
    assert_eq!(phone.asked, [Request::Print]);
}

#[test]
fn a_pen_that_is_not_in_the_book_says_so() {
    let (mut phone, _, id) = penned();
    assert!(phone.undo() && phone.flock.pens.contains_key(&id));
    let strange = PenId::from_uuid(uuid::Uuid::from_u128(9));
    phone.open(Screen::Pen(strange)).says(yeanling_words::frame::GONE);
}
