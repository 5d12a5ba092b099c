//! Many at once: crayon marks of a group, ewes picked from the grid, lambs tagged and marked one after another.

use yeanling_core::book::{Event, GroupId};
use yeanling_pages::Screen;
use yeanling_words::{group, tagging};

use crate::phone::Phone;

const DAY: i64 = 24 * 60;

/// Fourteen ewes with a ram since 1 October.
fn fourteen() -> (Phone, GroupId) {
    let mut phone = Phone::at("2026-10-01 09:00");
    phone.open(Screen::Season).press("Form a group").write("Name", "Top field").press("Save");
    let Screen::Group(group) = phone.screen else { panic!("not led to the group: {:?}", phone.screen) };
    phone.press("Add ewes").write("Tags: a list or ranges", "Y-01 to Y-14").press("Put 14 ewes in");
    phone.press("Ram in").press("Save");
    (phone, group)
}

fn marks(phone: &Phone) -> Vec<(String, String, String)> {
    let mut marks: Vec<(String, String, String)> = phone
        .flock
        .ewes
        .values()
        .flat_map(|ewe| {
            let tag = ewe.tag.clone().unwrap_or_default();
            let day = |mark: &yeanling_core::flock::CrayonMark| mark.at.local().date().to_string();
            ewe.marks.iter().map(move |mark| (tag.clone(), mark.color.clone(), day(mark)))
        })
        .collect();
    marks.sort();
    marks
}

#[test]
fn fourteen_ewes_with_four_marks_take_eight_taps_and_the_picking() {
    let (mut phone, _) = fourteen();
    phone.later(20 * DAY);
    let mut taps = 0;
    let mut tap = |phone: &mut Phone, name: &str| {
        taps += 1;
        phone.press(name);
    };
    // The color that is on the ram stands there, and today's day.
    let rounds: [(Option<&str>, &[&str]); 4] = [
        (None, &["Y-01", "Y-02", "Y-03", "Y-04", "Y-05"]),
        (Some("orange"), &["Y-06", "Y-07", "Y-08"]),
        (Some("green"), &["Y-09", "Y-10"]),
        (Some("red"), &["Y-11", "Y-12", "Y-13", "Y-14"]),
    ];
    tap(&mut phone, group::MARKS);
    for (color, ewes) in rounds {
        if let Some(color) = color {
            tap(&mut phone, color);
        }
        for ewe in ewes {
            phone.press(ewe);
        }
        let save = format!("Mark {} ewes", ewes.len());
        tap(&mut phone, &save);
    }
    assert!(taps <= 8, "{taps}");
    let noted = marks(&phone);
    assert_eq!(noted.len(), 14);
    assert!(noted.iter().all(|(_, _, day)| day == "2026-10-21"));
    let of = |color: &str| noted.iter().filter(|(_, one, _)| one == color).count();
    assert_eq!(["yellow", "orange", "green", "red"].map(of), [5, 3, 2, 4]);
}

#[test]
fn the_crayon_that_is_on_the_ram_and_the_day_stand_there_and_another_day_is_one_tap() {
    let (mut phone, id) = fourteen();
    phone.later(17 * DAY).open(Screen::Watch).press("Changed: Top field, Change the crayon").press("blue");
    assert_eq!(phone.flock.groups[&id].crayon(), Some("blue"));
    phone.later(3 * DAY).open(Screen::Group(id)).press(group::MARKS).press("Y-03").press("20 Oct");
    phone.press("Mark 1 ewe");
    assert_eq!(marks(&phone), [("Y-03".to_owned(), "blue".to_owned(), "2026-10-20".to_owned())]);
    phone.says("blue 20 Oct");
    phone.press("Y-04").write(group::OTHER_COLOR, "pink").press("Mark 1 ewe");
    assert!(marks(&phone).iter().any(|(_, color, _)| color == "pink"));
}

#[test]
fn ewes_go_into_a_group_by_being_tapped_as_well_as_typed() {
    let mut phone = Phone::at("2026-09-20 09:00");
    for tag in ["1", "2", "3", "4"] {
        phone.ewe(tag);
    }
    phone.open(Screen::Season).press("Form a group").write("Name", "Low field").press("Save");
    phone.press("Add ewes").press("2").press("4").write("Tags: a list or ranges", "4, 9");
    phone.press("Put 3 ewes in").says("3 ewes");
    let Screen::Group(id) = phone.screen else { panic!("{:?}", phone.screen) };
    assert_eq!(phone.flock.groups[&id].ewes().count(), 3);
    // Who is in is not offered again.
    phone.press("Add ewes").has_no_button("4").has_button("1");
}

#[test]
fn lambs_are_tagged_one_after_another_with_the_next_number_ready() {
    let mut phone = Phone::at("2027-03-01 09:00");
    let dam = phone.ewe("7");
    let lambs = [phone.lamb(dam), phone.lamb(dam), phone.lamb(dam)];
    phone.open(Screen::TagLambs).says("0 of 3 have a tag");
    phone.press("Save, next").says(tagging::NOTHING);
    phone.write(tagging::TAG, "Y-09").press("Save, next").says("1 of 3 have a tag");
    phone.press("Save, next").press("Skip").says(tagging::ALL_DONE);
    let tags = lambs.map(|lamb| phone.flock.lamb(lamb).and_then(|lamb| lamb.tag.clone()));
    assert_eq!(tags, [Some("Y-09".to_owned()), Some("Y-10".to_owned()), None]);
    phone
        .press("Start again")
        .write(tagging::TAG, "Y-10")
        .press("Save, next")
        .says("is on another live animal");
}

#[test]
fn paint_marks_go_on_in_a_row_with_the_number_of_the_dam() {
    let mut phone = Phone::at("2027-03-01 09:00");
    let dam = phone.ewe("7");
    let lambs = [phone.lamb(dam), phone.lamb(dam)];
    phone.open(Screen::TagLambs).press(tagging::PAINT).press("Save, next").press("Save, next");
    phone.says(tagging::ALL_DONE);
    for lamb in lambs {
        assert_eq!(phone.flock.lamb(lamb).map(|lamb| lamb.worn.clone()), Some(vec!["7".to_owned()]));
    }
    let marked = |event: &Event| matches!(event, Event::Life(yeanling_core::book::Life::Marked { .. }));
    assert_eq!(phone.flock.lines.iter().filter(|line| marked(&line.event)).count(), 2);
}
