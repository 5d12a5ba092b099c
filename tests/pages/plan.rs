//! Plans: a day ahead is planned, its day asks whether it happened, and a ram that stays is asked for no more.

use yeanling_core::book::{Event, GroupId};
use yeanling_pages::{Action, Screen, Sheet};

use crate::phone::Phone;

const DAY: i64 = 24 * 60;

/// A group of three ewes without a ram, on 1 October.
fn three_ewes() -> (Phone, GroupId) {
    let mut phone = Phone::at("2026-10-01 09:00");
    phone.open(Screen::Season).press("Form a group").write("Name", "Top field").press("Save");
    let Screen::Group(group) = phone.screen else { panic!("not led to the group: {:?}", phone.screen) };
    phone.press("Add ewes").write("Tags: a list or ranges", "1-3").press("Put 3 ewes in");
    (phone, group)
}

#[test]
fn a_ram_in_five_days_ahead_is_planned_and_its_day_asks() {
    let (mut phone, group) = three_ewes();
    phone.press("Ram in").write("Day", "2026-10-06").press("Save");
    phone.says("no ram yet, planned for 6 Oct").says("6 Oct, in 5 days");
    assert_eq!(phone.flock.groups[&group].rams_in().count(), 0);
    phone.open(Screen::Season).says("Top field").says("Ram in: 6 Oct, in 5 days");
    phone.later(3 * DAY).open(Screen::Watch).says("Ram in, planned for 6 Oct").says("in 2 days");
    phone.has_no_button("Yes");
    phone.later(2 * DAY).open(Screen::Watch).says("did it happen?");
    phone.press("Yes: Top field, Ram in");
    phone.later(1).open(Screen::Watch).says_nowhere("did it happen?");
    phone.open(Screen::Group(group)).says("3 ewes · ram in since 6 Oct").says_nowhere("planned for");
}

#[test]
fn asked_late_yes_means_the_day_that_was_planned() {
    let (mut phone, group) = three_ewes();
    phone.press("Plan dates").write("Ram in", "2026-10-06").write("Scan", "2026-12-28").press("Save");
    phone.later(9 * DAY).open(Screen::Watch).press("Yes: Top field, Ram in");
    let came = phone.flock.groups[&group].ram_times()[0].0;
    assert_eq!(came.local().date().to_string(), "2026-10-06");
    phone.open(Screen::Group(group)).says("28 Dec, in 79 days");
}

#[test]
fn it_was_on_another_day_will_be_on_another_or_not_at_all() {
    let (mut phone, group) = three_ewes();
    phone.press("Plan dates").write("Ram in", "2026-10-03").press("Save");
    phone.later(4 * DAY).open(Screen::Watch).press("Another day: Top field, Ram in");
    phone.write("Day", "2026-10-09").press("Save").later(1);
    phone.open(Screen::Watch).says_nowhere("did it happen?");
    phone.later(5 * DAY).open(Screen::Watch).press("Another day: Top field, Ram in");
    phone.write("Day", "2026-10-08").press("Save").open(Screen::Group(group)).says("ram in since 8 Oct");

    phone
        .open(Screen::Season)
        .press("Plan shearing and turn-out")
        .write("Shearing", "2026-10-12")
        .press("Save");
    phone.later(2 * DAY).open(Screen::Watch).says("Whole flock");
    phone.press("No: Whole flock, Shearing");
    phone.later(1).open(Screen::Watch).says_nowhere("Shearing");
}

#[test]
fn what_cannot_be_planned_is_said_where_it_was_typed() {
    let (mut phone, _) = three_ewes();
    phone.press("Plan dates").write("Ram out", "2026-09-01").press("Save");
    phone.says("1 Sep 2026 cannot be planned. Enter 1 Oct 2026 to 30 Sep 2028.");
    phone.write("Ram out", "").press("Save").says("Enter a day, or change one.");
}

#[test]
fn a_ram_that_stays_is_no_longer_asked_for_and_the_ewes_go_into_a_new_group() {
    let (mut phone, group) = three_ewes();
    phone.press("Ram in").write("Day", "2026-10-01").press("Save");
    phone.later(50 * DAY).open(Screen::Watch).has_button("He is out");
    phone.press("He stays: Top field").says("until she has lambed");
    phone.press("He stays");
    phone.later(1).open(Screen::Watch).has_no_button("He is out");
    phone.open(Screen::Group(group)).says("ram in since 1 Oct, he stays until each ewe has lambed");
    // A year later, three ewes lambed in March.
    let ewes: Vec<_> = phone.flock.groups[&group].ewes().collect();
    phone.later(115 * DAY);
    for ewe in ewes {
        phone.note(Event::LambBorn { dam: Some(ewe), beside: None, sex: None, alive: true });
    }
    phone.later(190 * DAY).open(Screen::Season).press("Form a group").write("Name", "Next").press("Save");
    phone.press("Add ewes").write("Tags: a list or ranges", "1-3").press("Put 3 ewes in");
    phone.press("Ram in").press("Save");
    phone.open(Screen::Season).says("3 put to the ram · none has lambed");
}

#[test]
fn how_long_he_stays_can_be_a_day() {
    let (mut phone, group) = three_ewes();
    phone.press("Ram in").press("Save").later(10 * DAY);
    phone.act(&Action::Ask(Sheet::RamStays(group)));
    phone.write("In until, if there is a day", "2026-09-01").press("He stays").says("The ram went in at");
    phone.write("In until, if there is a day", "2027-01-15").press("He stays");
    phone.open(Screen::Group(group)).says("he stays until 15 Jan");
}
