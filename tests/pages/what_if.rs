//! A season before it happens: from an empty book to a plan that is taken, two plans side by side, and next season from this.

use yeanling_core::book::{Event, EweId, GroupId};
use yeanling_pages::block::{Kind, Ledger};
use yeanling_pages::{Action, Screen, Sheet};
use yeanling_words::what_if as words;

use crate::phone::Phone;

const DAY: i64 = 24 * 60;

#[track_caller]
fn ledger(phone: &Phone) -> Ledger {
    let page = phone.page();
    let found = page.all().into_iter().find_map(|block| match &block.kind {
        Kind::Ledger(ledger) => Some(ledger.clone()),
        _ => None,
    });
    found.expect("what it comes to")
}

/// What stands in a row, of both plans.
#[track_caller]
fn row(phone: &Phone, name: &str) -> (String, String) {
    let ledger = ledger(phone);
    let found = ledger.rows.iter().find(|row| row.name == name).expect("the row");
    (found.value.plain(), found.other.plain())
}

#[test]
fn from_an_empty_book_all_born_before_the_shearer_comes_is_a_plan_in_eight_presses() {
    let mut phone = Phone::at("2026-09-01 09:00");
    phone.open(Screen::Season).says(words::TITLE);
    phone.open(Screen::Plan).says(words::TYPE_ALL);
    phone.write(words::EWES, "14").write(words::PENS, "2").write(words::PEOPLE, "2");
    phone.press(words::LAST).write(words::LAST_DAY, "2027-04-20");
    phone.says("Plan A: ram in 16 Oct 2026 to 18 Nov, lambs 7 Mar to 19 Apr");
    assert_eq!(row(&phone, words::RAM_IN), ("16 Oct".to_owned(), String::new()));
    phone.says("Half of the lambings: ").says("2 there: ").says(" each");
    phone.press("Take plan A");
    let Screen::Group(group) = phone.screen else { panic!("not led to the group: {:?}", phone.screen) };
    phone.says("Lambing Mar 2027").says("no ram yet, planned for 16 Oct");
    phone.says("18 Nov, in 78 days").says("30 Dec, in 120 days");
    assert_eq!(phone.flock.groups[&group].rams_in().count(), 0);
    // On its day it is asked, and nothing counts before.
    phone.press("Add ewes").write("Tags: a list or ranges", "1-14").press("Put 14 ewes in");
    phone.later(45 * DAY).open(Screen::Watch).press("Yes: Lambing Mar 2027, Ram in");
    phone.open(Screen::Group(group)).says("ram in since 16 Oct");
}

#[test]
fn two_plans_stand_side_by_side_and_the_second_can_be_taken() {
    let mut phone = Phone::at("2026-09-01 09:00");
    phone.open(Screen::Plan).write(words::EWES, "24");
    assert_eq!(row(&phone, words::FIRST), ("1 Apr".to_owned(), String::new()));
    // The second goes by a month too; its months stand below those of the first.
    phone.act(&Action::Choose("plan-by-b".into(), 1));
    phone.act(&Action::Choose("plan-month-b".into(), 1));
    phone.act(&Action::Choose("plan-ram-b".into(), 1));
    assert_eq!(row(&phone, words::FIRST), ("1 Apr".to_owned(), "1 Feb".to_owned()));
    assert_eq!(ledger(&phone).heads, ("Plan A".to_owned(), "Plan B".to_owned()));
    let nights = row(&phone, words::UP);
    assert!(
        nights.0.parse::<u32>().expect("a count") < nights.1.parse::<u32>().expect("a count"),
        "{nights:?}"
    );
    phone.press("Take plan B").says("planned for 12 Sep");
}

#[test]
fn a_plan_is_taken_for_a_group_that_has_no_ram_yet() {
    let mut phone = Phone::at("2026-09-01 09:00");
    phone.open(Screen::Season).press("Form a group").write("Name", "Hill").press("Save");
    let Screen::Group(hill) = phone.screen else { panic!("{:?}", phone.screen) };
    phone.press("Add ewes").write("Tags: a list or ranges", "1-8").press("Put 8 ewes in");
    phone.open(Screen::Plan).press("Take plan A");
    assert_eq!(phone.screen, Screen::Group(hill));
    assert_eq!(phone.flock.groups.len(), 1);
    phone.says("planned for 10 Nov");
    assert!(phone.undo());
    phone.says_nowhere("planned for 10 Nov");
}

#[test]
fn what_cannot_be_is_said_with_what_can() {
    let mut phone = Phone::at("2026-11-01 09:00");
    phone.open(Screen::Plan).write(words::EWES, "14").press(words::LAST);
    phone.write(words::LAST_DAY, "2027-04-20");
    phone.says(
        "The ram would have had to go in on 16 Oct 2026. The earliest day you can enter is 6 May 2027.",
    );
    phone.has_no_button("Take plan");
    phone.write(words::LAST_DAY, "2027-05-06").says("ram in 1 Nov 2026").has_button("Take plan A");
    phone.write(words::EWES, "0").has_no_button("Take plan");
    phone.write(words::LAST_DAY, "in spring").says(words::NO_DAY);
}

#[test]
fn out_of_season_and_too_short_a_housing_are_said() {
    let mut phone = Phone::at("2026-11-01 09:00");
    phone.open(Screen::Plan).write(words::EWES, "14").write(words::HOUSING, "30");
    phone.act(&Action::Choose("plan-month-a".into(), 9));
    phone.says(words::OUT_OF_SEASON).says(words::TOO_SHORT);
    phone.act(&Action::Choose("plan-month-a".into(), 3));
    phone.says_nowhere(words::OUT_OF_SEASON);
    phone.write(words::HOUSING, "90").says_nowhere(words::TOO_SHORT);
}

/// A group of four that lambed in March, now in August.
fn august() -> (Phone, GroupId, Vec<EweId>) {
    let mut phone = Phone::at("2026-10-02 09:00");
    phone.open(Screen::Season).press("Form a group").write("Name", "Top").press("Save");
    let Screen::Group(group) = phone.screen else { panic!("{:?}", phone.screen) };
    phone.press("Add ewes").write("Tags: a list or ranges", "1-4").press("Put 4 ewes in");
    phone.press("Ram in").write("The ram’s name or tag, if you like", "Flint").press("Save");
    phone.later(34 * DAY).press("Ram out").press("Save").later(116 * DAY);
    let ewes: Vec<EweId> = phone.flock.groups[&group].ewes().collect();
    for ewe in &ewes {
        phone.note(Event::LambBorn { dam: Some(*ewe), beside: None, sex: None, alive: true });
    }
    phone.later(150 * DAY);
    (phone, group, ewes)
}

#[test]
fn next_season_is_taken_with_its_ewes_its_ram_and_its_days() {
    let (mut phone, old, ewes) = august();
    phone.open(Screen::Plan).says("4 ewes · ram Flint in 1 Oct 2027");
    phone.press("Take it: Top 2027");
    let Screen::Group(next) = phone.screen else { panic!("not led to the group: {:?}", phone.screen) };
    assert_ne!(next, old);
    assert_eq!(phone.flock.groups[&next].ewes().collect::<Vec<_>>(), ewes);
    assert!(phone.flock.groups[&old].parted.is_some());
    phone.says("planned for 1 Oct").says("4 Nov, in ");
    phone.open(Screen::Season).says_nowhere("4 put to the ram");
    let days =
        (chrono::NaiveDate::from_ymd_opt(2027, 10, 1).expect("a day") - phone.now.local().date()).num_days();
    phone.later(days * DAY).open(Screen::Watch).press("Yes: Top 2027, Ram in");
    let rams: Vec<_> = phone.flock.groups[&next].rams_in().map(|ram| ram.label.clone()).collect();
    assert_eq!(rams, [Some("Flint".to_owned())]);
    phone.open(Screen::Plan).says_nowhere(words::NEXT);
    phone.act(&Action::Ask(Sheet::Plan(Some(next))));
}
