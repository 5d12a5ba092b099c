//! The vet's number: given once, it is a button wherever a page says to call.

use yeanling_core::book::{Animal, Event};
use yeanling_pages::{Action, Screen, SettingsPart};
use yeanling_words::help::Topic;
use yeanling_words::vet as words;

use crate::html::nodes;
use crate::phone::Phone;
use crate::tree;

/// What can be dialed on the page, each with what its button says.
fn calls(phone: &Phone) -> Vec<(String, String)> {
    let call = |does: &Action| match does {
        Action::Call(number) => Some(number.clone()),
        _ => None,
    };
    phone.pressables().into_iter().filter_map(|one| Some((one.label, call(&one.does)?))).collect()
}

fn pair(label: &str, number: &str) -> (String, String) {
    (label.to_owned(), number.to_owned())
}

#[test]
fn a_number_given_once_is_a_button_that_dials() {
    let mut phone = Phone::at("2027-02-01 12:00");
    phone
        .open(Screen::SettingsOf(SettingsPart::Farm))
        .write(words::NUMBER, " +1 (555) 010-0199 ")
        .press(words::SAVE);
    assert_eq!(phone.flock.settings.vet_phones.day, "+1 (555) 010-0199");
    phone.says_nowhere(words::SAVE);
    phone.open(Screen::Topic(Topic::Vet));
    assert_eq!(calls(&phone).first(), Some(&pair(words::CALL, "+15550100199")));
    let html = tree::drawn(nodes(&phone, Screen::Topic(Topic::Vet), &phone.page())).html();
    assert!(html.contains("href=\"tel:+15550100199\""), "{html}");
    phone.open(Screen::SettingsOf(SettingsPart::Farm)).write(words::NUMBER, "").press(words::SAVE);
    assert!(phone.flock.settings.vet_phones.is_empty());
}

#[test]
fn of_two_numbers_the_one_for_the_hour_stands_first() {
    for (hour, first) in
        [("12:00", words::CALL_DAY), ("18:00", words::CALL_NIGHT), ("03:12", words::CALL_NIGHT)]
    {
        let mut phone = Phone::at(&format!("2027-02-01 {hour}"));
        phone
            .open(Screen::SettingsOf(SettingsPart::Farm))
            .write(words::NUMBER, "555 0100")
            .press(words::SAVE);
        phone.write(words::NIGHT_NUMBER, "555 0199").press(words::SAVE);
        phone.open(Screen::Topic(Topic::Vet));
        let labels: Vec<String> = calls(&phone).into_iter().map(|(label, _)| label).collect();
        assert_eq!((labels.len(), labels[0].as_str()), (2, first), "{hour}");
    }
}

#[test]
fn what_cannot_be_dialed_is_refused_at_its_field() {
    let mut phone = Phone::at("2027-02-01 12:00");
    phone.open(Screen::SettingsOf(SettingsPart::Farm));
    for number in ["ask Jo", "12", "+", "555 0100 after 8", "1234567890123456"] {
        phone.write(words::NUMBER, number).press(words::SAVE).says(words::NOT_A_NUMBER);
    }
    assert_eq!(phone.book.len(), 0);
}

#[test]
fn without_a_number_the_way_to_give_it_stands_there() {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.open(Screen::Topic(Topic::Vet)).press(words::ADD);
    assert_eq!(phone.screen, Screen::SettingsOf(SettingsPart::Farm));
    phone.says(words::NUMBER);
}

#[test]
fn on_the_watch_it_stands_above_all_rows_and_stays_while_a_hand_is_at_work() {
    let mut phone = Phone::at("2027-02-01 12:00");
    phone.open(Screen::SettingsOf(SettingsPart::Farm)).write(words::NUMBER, "555 0100").press(words::SAVE);
    let ewe = phone.ewe("7");
    let lamb = phone.lamb(ewe);
    phone.open(Screen::Watch);
    assert_eq!(calls(&phone), []);
    phone.later(7 * 60).says("call your vet");
    let first = phone.page().blocks.first().map(|block| block.buttons().len() + block.inside().len());
    assert_eq!((first, calls(&phone)), (Some(1), vec![pair(words::CALL, "5550100")]));
    let dead = Event::Died { animal: Animal::Lamb(lamb), cause: yeanling_core::book::Cause::Unknown };
    phone.act(&Action::Note(vec![dead]));
    assert_eq!(calls(&phone).len(), 1, "nothing moves under the hand");
}
