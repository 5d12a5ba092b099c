//! The vet's number: given once, it is a button wherever a page says to call.

use yeanling_core::book::{Animal, Event};
use yeanling_core::settings::Choice;
use yeanling_pages::block::Kind;
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
        .open(Screen::SettingsOf(SettingsPart::Vet))
        .write(words::NUMBER, " +1 (555) 010-0199 ")
        .press(words::SAVE);
    assert_eq!(phone.flock.settings.vet_phones.day, "+1 (555) 010-0199");
    phone.says_nowhere(words::SAVE);
    phone.open(Screen::Topic(Topic::Vet));
    assert_eq!(calls(&phone).first(), Some(&pair(words::CALL, "+15550100199")));
    let html = tree::drawn(nodes(&phone, Screen::Topic(Topic::Vet), &phone.page())).html();
    assert!(html.contains("href=\"tel:+15550100199\""), "{html}");
    phone.open(Screen::SettingsOf(SettingsPart::Vet)).write(words::NUMBER, "").press(words::SAVE);
    assert!(phone.flock.settings.vet_phones.is_empty());
}

#[test]
fn of_two_numbers_the_one_for_the_hour_stands_first() {
    for (hour, first) in
        [("12:00", words::CALL_DAY), ("18:00", words::CALL_NIGHT), ("03:12", words::CALL_NIGHT)]
    {
        let mut phone = Phone::at(&format!("2027-02-01 {hour}"));
        phone.open(Screen::SettingsOf(SettingsPart::Vet)).write(words::NUMBER, "555 0100").press(words::SAVE);
        phone.write(words::NIGHT_NUMBER, "555 0199").press(words::SAVE);
        phone.open(Screen::Topic(Topic::Vet));
        let labels: Vec<String> = calls(&phone).into_iter().map(|(label, _)| label).collect();
        assert_eq!((labels.len(), labels[0].as_str()), (2, first), "{hour}");
    }
}

#[test]
fn what_cannot_be_dialed_is_refused_at_its_field() {
    let mut phone = Phone::at("2027-02-01 12:00");
    phone.open(Screen::SettingsOf(SettingsPart::Vet));
    for number in ["ask Jo", "12", "+", "555 0100 after 8", "1234567890123456"] {
        phone.write(words::NUMBER, number).press(words::SAVE).says(words::NOT_A_NUMBER);
    }
    assert_eq!(phone.book.len(), 0);
}

#[test]
fn without_a_number_the_way_to_give_it_stands_there() {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.open(Screen::Topic(Topic::Vet)).press(words::ADD);
    assert_eq!(phone.screen, Screen::SettingsOf(SettingsPart::Vet));
    phone.says(words::NUMBER);
}

#[test]
fn on_the_watch_it_stands_above_all_rows_and_stays_while_a_hand_is_at_work() {
    let mut phone = Phone::at("2027-02-01 12:00");
    phone.open(Screen::SettingsOf(SettingsPart::Vet)).write(words::NUMBER, "555 0100").press(words::SAVE);
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

#[test]
fn two_night_numbers_are_the_call_buttons_of_the_night() {
    let mut phone = Phone::at("2027-02-01 03:12");
    phone.open(Screen::SettingsOf(SettingsPart::Vet));
    phone.write(words::NIGHT_NUMBER, "555 0199").press(words::SAVE);
    phone.write(words::SECOND_NUMBER, "555 0198").press(words::SAVE).says(words::BOTH_GIVEN);
    phone.open(Screen::Topic(Topic::Vet));
    assert_eq!(calls(&phone), [pair(words::CALL_NIGHT, "5550199"), pair(words::CALL_SECOND, "5550198")]);
    phone.note(Event::Chose(Choice::VetPhone("555 0100".to_owned())));
    let third = pair(words::CALL_DAY, "5550100");
    let night = [pair(words::CALL_NIGHT, "5550199"), pair(words::CALL_SECOND, "5550198")];
    assert_eq!(calls(&phone), night, "a third would only push what is to be done further down");
    phone.later(8 * 60);
    assert_eq!(calls(&phone).first(), Some(&third), "by day the day's number is first");
    assert_eq!(calls(&phone).len(), 2);
}

#[test]
fn before_the_season_the_week_asks_what_is_agreed_with_the_vet_until_it_is() {
    let mut phone = Phone::at("2026-10-01 08:00");
    let ewe = phone.ewe("7");
    let group = phone.note(Event::GroupFormed { name: "Top".to_owned() }).as_group();
    phone.note(Event::JoinedGroup { ewe, group });
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.later(34 * 24 * 60).note(Event::RamOut { group });
    phone.open(Screen::Watch).says_nowhere("Agree before lambing");
    // 116 days after the ram went in, a month before the first can lamb.
    phone.later(82 * 24 * 60).open(Screen::Watch).says("Agree before lambing: 4 of 4 open");
    phone.open(Screen::SettingsOf(SettingsPart::Vet)).says(words::BEFORE).says("not yet");
    for what in ["Training", "Glucose", "When one must be killed"] {
        phone.press(&format!("Agreed: {what}"));
    }
    phone.says("agreed ");
    phone.open(Screen::Watch).says("Agree before lambing: 1 of 4 open");
    for number in
        [Choice::VetNightPhone("555 0199".to_owned()), Choice::VetSecondPhone("555 0198".to_owned())]
    {
        phone.note(Event::Chose(number));
    }
    phone.open(Screen::Watch).says_nowhere("Agree before lambing");
}

#[test]
fn how_far_the_first_lamb_is_only_comes_nearer_and_the_row_leads_to_what_is_agreed() {
    let mut phone = Phone::at("2026-10-01 08:00");
    let ewe = phone.ewe("7");
    let group = phone.note(Event::GroupFormed { name: "Top".to_owned() }).as_group();
    phone.note(Event::JoinedGroup { ewe, group });
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.later(34 * 24 * 60).note(Event::RamOut { group });
    let said = |phone: &Phone| {
        phone.page_of(Screen::Watch).all().into_iter().find_map(|block| match &block.kind {
            Kind::Row(row) if row.name == words::TITLE => Some((row.says.plain(), row.to)),
            _ => None,
        })
    };
    let (mut nearest, mut near) = (i64::MAX, 0);
    for _ in 0..(200 * 24 / 5) {
        phone.later(5 * 60);
        let Some((says, to)) = said(&phone) else { continue };
        assert_eq!(to, Some(Screen::SettingsOf(SettingsPart::Vet)));
        let days = if [words::WITHIN_A_WEEK, words::ANY_DAY].contains(&says.as_str()) {
            near += 1;
            7
        } else {
            let days = says.strip_prefix("in ").and_then(|rest| rest.split(' ').next()?.parse().ok());
            days.unwrap_or_else(|| panic!("{says:?} after {nearest} days"))
        };
        assert!(days <= nearest, "{says:?} after {nearest} days");
        nearest = days;
    }
    assert!(near > 50, "the days in which she lambs were seen {near} times");
    phone.open(Screen::SettingsOf(SettingsPart::Vet)).says(words::BEFORE);
}
