//! The season ahead and its groups: from an empty book to a plan, what is refused on the way, and what goes to the calendar.

use yeanling_core::book::{Event, GroupId};
use yeanling_pages::block::Kind;
use yeanling_pages::phone::FileTrouble;
use yeanling_pages::{Action, Heard, Request, Screen};

use crate::phone::Phone;
use crate::reach::reached;

/// Sixty ewes, put to the ram from the first of October to the twentieth of November.
fn planned() -> (Phone, GroupId) {
    let mut phone = Phone::at("2026-11-25 10:00");
    phone.open(Screen::Season).press("Form a group").write("Name", "Lower field").press("Save");
    let Screen::Group(group) = phone.screen else { panic!("not led to the group: {:?}", phone.screen) };
    phone.press("Add ewes").write("Tags: a list or ranges", "101–158, 7, 9, 7, 140-138");
    phone.write("In the group since", "2026-10-01").press("Put 60 ewes in");
    phone.press("Ram in").write("Day", "2026-10-01").press("Save");
    phone.press("Ram out").write("Day", "2026-11-20").press("Save");
    (phone, group)
}

fn dates(phone: &Phone) -> Vec<(String, String)> {
    let rows = |kind: &Kind| match kind {
        Kind::Ledger(ledger) => {
            Some(ledger.rows.iter().map(|row| (row.name.clone(), row.value.plain())).collect())
        }
        _ => None,
    };
    reached(&phone.page()).iter().find_map(|block| rows(&block.kind)).unwrap_or_default()
}

#[track_caller]
fn falls_on(phone: &Phone, begins: &str, day: &str) {
    let dates = dates(phone);
    assert!(dates.iter().any(|(name, on)| name.starts_with(begins) && on == day), "{dates:?}");
}

#[test]
fn from_an_empty_book_to_a_plan_for_sixty_ewes() {
    let mut phone = Phone::at("2026-11-25 10:00");
    phone.open(Screen::Season).says("Form a group. Add its ewes and the ram");
    let (mut phone, _) = planned();
    phone.says("60 ewes · ram in 1 Oct to 20 Nov");
    // Ram in + 142 and ram out + 152; the booster four weeks before the first: season figures, section 1 and 7.
    falls_on(&phone, "Booster", "23 Jan");
    falls_on(&phone, "First lambs", "20 Feb");
    phone.open(Screen::Season).says("60 put to the ram · none has lambed");
    // 60 ewes, three cycles at what the handbook's 0.60 to 0.85 leaves open, Beta(36, 12): 60 × (1 − 12·13·14 / (48·49·50)).
    phone.says("59 lambings to come").says("Most pens around").says("Of 60 put to the ram,");
    phone.press("why? Lambings per night").says("75 in 100 settle per 17-day cycle, the handbook’s");
}

#[test]
fn a_typed_list_says_what_becomes_of_each_tag_before_anything_is_noted() {
    let mut phone = Phone::at("2026-11-25 10:00");
    phone.ewe("9");
    let group = phone.note(Event::GroupFormed { name: "Hill".to_owned() }).as_group();
    phone.open(Screen::Group(group)).press("Add ewes");
    assert!(phone.pressables().iter().all(|one| !one.label.starts_with("Put ")), "nothing is typed yet");
    phone.write("Tags: a list or ranges", "101–158, 7, 9, 7, 140-138");
    phone.says("1 of your ewes").says("59 new: 101, 102").says("Typed twice, counted once: 7");
    phone.says("“140-138” ends before it starts: left out");
    assert_eq!(phone.flock.ewes.len(), 1);
    phone.press("Put 60 ewes in").says("60 ewes · no ram yet");
    assert!(phone.undo());
    assert_eq!(phone.flock.ewes.len(), 1, "all of them go at once");
    phone.says("0 ewes · no ram yet");
}

#[test]
fn a_day_that_is_none_or_too_early_is_refused_and_stays_as_it_was_typed() {
    let mut phone = Phone::at("2026-11-25 10:00");
    let group = phone.note(Event::GroupFormed { name: "Hill".to_owned() }).as_group();
    phone
        .open(Screen::Group(group))
        .press("Ram in")
        .write("Day", "tomorrow")
        .press("Save")
        .says("That is not a date.");
    phone.write("Day", "2026-11-01").press("Save").press("Ram out").write("Day", "2026-10-30").press("Save");
    phone.says("came out at 30 Oct");
    let day = crate::reach::fields(&phone.page()).into_iter().find(|(_, field)| field.label == "Day");
    assert_eq!(day.map(|(_, field)| field.value).as_deref(), Some("2026-10-30"));
    phone.write("Day", "2026-11-20").press("Save").says("ram in 1 Nov to 20 Nov");
}

#[test]
fn who_cannot_join_is_named_and_nobody_joins() {
    let mut phone = Phone::at("2026-10-01 10:00");
    let ewe = phone.ewe("7");
    let group = phone.note(Event::GroupFormed { name: "Hill".to_owned() }).as_group();
    phone.note(Event::JoinedGroup { ewe, group });
    phone.open(Screen::Group(group)).press("Add ewes").write("Tags: a list or ranges", "8, 7");
    phone.press("Put 2 ewes in").says("Ewe 7: ");
    assert_eq!(phone.flock.ewes.len(), 1);
}

#[test]
fn two_groups_of_one_name_do_not_stand_at_once() {
    let mut phone = Phone::at("2026-10-01 10:00");
    let group = phone.note(Event::GroupFormed { name: "Hill".to_owned() }).as_group();
    phone.open(Screen::Season).press("Form a group").write("Name", "hill").press("Save");
    phone.says("There is a group with that name");
    phone.act(&Action::Close);
    phone.press("Hill");
    phone.press("End group").says("This group has ended. Its record stays.");
    assert!(phone.pressables().iter().all(|one| one.label != "Add ewes" && one.label != "End group"));
    phone.open(Screen::Season).press("Form a group").write("Name", "Hill").press("Save");
    assert_ne!(phone.screen, Screen::Group(group));
}

#[test]
fn ewes_that_joined_after_the_ram_count_from_then_until_it_is_said_that_they_were_with_him() {
    let mut phone = Phone::at("2026-10-01 10:00");
    let group = phone.note(Event::GroupFormed { name: "Hill".to_owned() }).as_group();
    phone.note(Event::RamIn { group, ram: None, age: None });
    phone.later(10 * 24 * 60);
    let ewe = phone.ewe("7");
    phone.note(Event::JoinedGroup { ewe, group });
    phone.open(Screen::Group(group)).says("1 ewe is in the group since 11 Oct, the ram since 1 Oct.");
    phone.press("They were with the ram from 1 Oct").says_nowhere("Dates count from the later day");
    assert!(phone.undo());
    phone.says("Dates count from the later day");
}

#[test]
fn a_ewe_is_taken_out_of_her_group_and_brought_back() {
    let (mut phone, _) = planned();
    phone.says("60 ewes");
    phone.press("Take out, Ewe 101").says("59 ewes");
    assert!(phone.undo());
    phone.says("60 ewes");
    phone.press("Ewe 101");
    assert!(matches!(phone.screen, Screen::Ewe(_)));
}

#[test]
fn a_ewe_past_her_days_is_told_apart() {
    let (mut phone, _) = planned();
    phone.open(Screen::Season).says_nowhere("Overdue");
    phone.later(165 * 24 * 60).says("Overdue");
}

#[test]
fn the_dates_go_to_the_calendar_at_seven_in_the_morning_and_the_page_says_how_it_went() {
    let (mut phone, group) = planned();
    phone.press("Add dates to my calendar");
    let Some(Request::GiveCalendar(key, name, alarms)) = phone.asked.last().cloned() else {
        panic!("{:?}", phone.asked)
    };
    assert_eq!(name, "yeanling-season.ics");
    // Seven in the morning at five hours west of Greenwich.
    let booster = alarms.iter().find(|alarm| alarm.summary.contains("Booster")).expect("the booster");
    assert_eq!(booster.at.local().to_string(), "2027-01-23 07:00:00");
    assert_eq!(booster.at.offset_minutes(), -300);
    assert!(booster.summary.starts_with("Lower field: ") && booster.url == Screen::Season.hash());
    assert!(alarms.iter().all(|alarm| alarm.at > phone.now));

    let failed = Some(FileTrouble::Failed("no room".to_owned()));
    phone.act(&Action::Heard(Heard::Given(key.clone(), failed)));
    phone.says("Not saved: the browser says “no room”");
    phone.act(&Action::Heard(Heard::Given(key, None)));
    phone.says("Open the file to add the alarms.").says_nowhere("It was not saved");
    // What was said goes with the screen.
    phone.open(Screen::Season).open(Screen::Group(group)).says_nowhere("Open the file to add the alarms.");
}

#[test]
fn the_sample_flock_stays_out_of_the_calendar() {
    let (mut phone, _) = planned();
    phone.sample = true;
    phone.says("The sample flock stays out of your calendar.");
    assert!(phone.pressables().iter().all(|one| one.label != "Add dates to my calendar"));
}
