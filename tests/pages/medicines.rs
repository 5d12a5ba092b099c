//! Medicines: what is withheld until when, what was given, and one medicine for many, noted for all or for none.

use yeanling_core::book::{Animal, Cause, Event, EweId};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Screen, Sheet};
use yeanling_words::{life, medicines as words};

use crate::phone::Phone;
use crate::reach::fields;

fn two_ewes() -> (Phone, EweId) {
    let mut phone = Phone::at("2027-03-01 09:00");
    let ewe = phone.ewe("40");
    phone.ewe("41");
    phone.open(Screen::Medicines);
    (phone, ewe)
}

/// The names of the rows.
fn rows(phone: &Phone) -> Vec<String> {
    let page = phone.page();
    let row = |kind: &Kind| match kind {
        Kind::Row(row) => Some(row.name.clone()),
        _ => None,
    };
    page.all().into_iter().filter_map(|block| row(&block.kind)).collect()
}

#[track_caller]
fn wrong(phone: &Phone, label: &str) -> String {
    let all = fields(&phone.page());
    let found = all.into_iter().find(|(_, field)| field.label == label);
    found.map(|(_, field)| field.error).expect("the field")
}

#[test]
fn without_any_medicine_it_says_what_to_do_first() {
    let (phone, _) = two_ewes();
    phone.says(words::NONE_HELD).says(words::EMPTY).says(words::CAUTION[0]);
}

#[test]
fn one_medicine_for_all_ewes_is_noted_for_all_or_for_none() {
    let (mut phone, _) = two_ewes();
    phone.press(words::MANY).press("All ewes · 2").says(life::TREAT_ASK);
    phone.press("Save");
    assert!(wrong(&phone, life::MEDICINE).contains("Nothing typed yet"));
    phone.write(life::MEDICINE, "Fluke drench").write(life::MEAT_DAYS, "366").press("Save");
    assert!(wrong(&phone, life::MEDICINE).contains("366 days is out of range. Enter 0 to 365."));
    assert_eq!(phone.flock.treatments().len(), 0);
    phone.write(life::MEAT_DAYS, "56").press("Save").says_nowhere(life::TREAT_ASK);
    assert_eq!(rows(&phone), ["Ewe 40", "Ewe 41", "2 ewes"]);
    // Who had it is behind the fold, each a way to her.
    phone.says("Ewe 40").says(words::WHICH);
    phone.says("Fluke drench; meat withdrawal 56 days");
    assert!(phone.undo());
    assert_eq!(rows(&phone), Vec::<String>::new());
}

#[test]
fn days_that_are_no_number_are_said_at_their_field() {
    let (mut phone, ewe) = two_ewes();
    phone.act(&Action::Ask(Sheet::Treat(vec![Animal::Ewe(ewe)])));
    phone.write(life::MEDICINE, "Drench").write(life::MILK_DAYS, "a week").press("Save");
    assert_ne!(wrong(&phone, life::MILK_DAYS), "");
    assert_eq!(wrong(&phone, life::MEAT_DAYS), "");
    assert_eq!(phone.flock.treatments().len(), 0);
}

#[test]
fn it_tells_until_when_and_that_nobody_knows() {
    let (mut phone, ewe) = two_ewes();
    phone.act(&Action::Ask(Sheet::Treat(vec![Animal::Ewe(ewe)])));
    phone.write(life::MEDICINE, "White drench").write(life::MEAT_DAYS, "8").press("Save");
    phone.says("Meat withdrawal: until 9 Mar 09:00 (White drench)");
    phone.says("Milk withdrawal: not known");
    // Eight times 24 hours and a minute on, only the milk is left.
    phone.later(8 * 24 * 60 + 1).says_nowhere("Meat withdrawal: until");
    phone.says("Milk withdrawal: not known");
}

#[test]
fn what_was_given_before_is_filled_in_with_one_tap() {
    let (mut phone, ewe) = two_ewes();
    phone.act(&Action::Ask(Sheet::Treat(vec![Animal::Ewe(ewe)])));
    phone.write(life::MEDICINE, "White drench").write(life::MEAT_DAYS, "8").write(life::REASON, "worms");
    phone.press("by mouth").press("Save");
    phone.press(words::MANY).press("All ewes · 2").press("White drench").press("Save");
    let given = phone.flock.treatments();
    assert_eq!(given.len(), 3);
    assert!(given.iter().all(|given| given.treatment == given_first(&phone)));
}

fn given_first(phone: &Phone) -> yeanling_core::book::Treatment {
    phone.flock.treatments().last().expect("one").treatment.clone()
}

#[test]
fn it_can_have_been_given_on_another_day() {
    let (mut phone, ewe) = two_ewes();
    phone.act(&Action::Ask(Sheet::Treat(vec![Animal::Ewe(ewe)])));
    phone.write(life::MEDICINE, "Drench").write(life::WHEN, "2027-02-30T08:00").press("Save");
    assert_ne!(wrong(&phone, life::MEDICINE), "");
    phone.write(life::WHEN, "2027-03-01T07:30").press(life::DAY_ONLY).press("Save");
    let given = phone.flock.treatments();
    assert_eq!(given.len(), 1);
    assert!(given[0].treatment.day_only);
    assert_eq!(given[0].at, yeanling_core::units::Moment::from_unix_milliseconds(1_803_904_200_000, -300));
}

#[test]
fn an_asterisk_in_a_medicines_name_is_printed_and_means_nothing() {
    let (mut phone, ewe) = two_ewes();
    phone.act(&Action::Ask(Sheet::Treat(vec![Animal::Ewe(ewe)])));
    phone.write(life::MEDICINE, "A*B").write(life::BY, "C*").press("Save");
    phone.says("A∗B, by C∗; meat withdrawal not known");
}

#[test]
fn a_long_record_shows_the_latest_and_more_when_asked() {
    let (mut phone, ewe) = two_ewes();
    for _ in 0..40 {
        phone.act(&Action::Ask(Sheet::Treat(vec![Animal::Ewe(ewe)])));
        phone.write(life::MEDICINE, "Drench").press("Save");
        phone.later(1);
    }
    assert_eq!(rows(&phone).len(), 31);
    phone.press(&yeanling_words::flock::more(10)).says_nowhere(&yeanling_words::flock::more(10));
    assert_eq!(rows(&phone).len(), 41);
}

#[test]
fn the_dead_are_not_among_all_ewes_and_nobody_is_asked_about_none() {
    let (mut phone, ewe) = two_ewes();
    phone.note(Event::Died { animal: Animal::Ewe(ewe), cause: Cause::Unknown });
    phone.press(words::MANY).says("All ewes · 1").says_nowhere(words::ALL_LAMBS);
}
