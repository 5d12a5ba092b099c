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
    phone.press("Skip").press("Skip").says("All lambs done.");
    phone.open(Screen::Flock).open(Screen::WeighLambs);
    is_turn_of(&phone, "14a");
    phone.press("Skip").open(Screen::Flock).open(Screen::WeighLambs);
    is_turn_of(&phone, "14b");
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

/// A flock of so many single lambs of 4 kg at birth, each weighed at sixty days: the last two far behind.
fn sixty_days(lambs: usize) -> (Phone, Vec<LambId>) {
    let mut phone = Phone::at("2027-02-01 10:00");
    let born: Vec<LambId> = (0..lambs)
        .map(|number| {
            let ewe = phone.ewe(&format!("{}", 100 + number));
            phone.lamb(ewe)
        })
        .collect();
    for lamb in born.iter().copied() {
        phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    }
    phone.later(60 * 24 * 60).open(Screen::WeighLambs);
    for (number, lamb) in born.iter().copied().enumerate() {
        let late = number + 2 >= lambs;
        let mass = Mass::from_kilograms(if late {
            12.0
        } else {
            20.0 + f64::from(u8::try_from(number).expect("few")) / 100.0
        });
        phone.note(Event::Weighed { lamb, mass });
    }
    (phone, born)
}

/// The lambs under how they grew, from the top.
fn ranked(phone: &Phone) -> Vec<(LambId, State)> {
    let row = |kind: &Kind| match kind {
        Kind::Row(row) => row.to.and_then(|to| match to {
            Screen::Lamb(lamb) => Some((lamb, row.state)),
            _ => None,
        }),
        _ => None,
    };
    reached(&phone.page()).iter().filter_map(|block| row(&block.kind)).collect()
}

#[test]
fn of_a_large_flock_those_that_lag_stand_first_and_the_rest_is_a_press_away() {
    let (mut phone, born) = sixty_days(90);
    let first = ranked(&phone);
    assert_eq!(first.len(), 40);
    let lag: Vec<LambId> =
        first.iter().filter(|(_, state)| *state == State::Now).map(|(lamb, _)| *lamb).collect();
    assert_eq!(lag, born[88..]);
    assert_eq!(lag, first[..2].iter().map(|(lamb, _)| *lamb).collect::<Vec<_>>());
    phone.press("Show more (50)");
    assert_eq!(ranked(&phone).len(), 80);
    phone.press("Show more (10)");
    assert_eq!(ranked(&phone).len(), 90);
    phone.says_nowhere("Show more");
}

#[test]
fn lambs_are_ranked_at_one_age_that_can_be_chosen() {
    let (mut phone, born) = sixty_days(6);
    phone.says("Adjusted to 60 days.").says_nowhere("90 days");
    phone.later(32 * 24 * 60);
    for lamb in born.iter().copied().take(4) {
        phone.note(Event::Weighed { lamb, mass: Mass::from_kilograms(30.0) });
    }
    phone.open(Screen::WeighLambs).says("Adjusted to 90 days.").says("not weighed near that age");
    phone.press("60 days (6)").says("Adjusted to 60 days.").says_nowhere("not weighed near that age");
}
