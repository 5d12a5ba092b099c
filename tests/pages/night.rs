//! The dark clock: what is due and what comes next, what rings, and what the phone can do about it.

use yeanling_core::book::{Animal, Event, LambId};
use yeanling_pages::phone::{Alarm, Awake, Told};
use yeanling_pages::{Action, Request, Screen};

use crate::phone::Phone;

/// A lamb of 03:00 whose navel is dipped, and the phone on the nail.
fn on_the_nail() -> (Phone, LambId) {
    let mut phone = Phone::at("2026-02-25 03:00");
    let dam = phone.ewe("27");
    let lamb = phone.lamb(dam);
    phone.note(Event::NavelDipped { lamb });
    phone.note(Event::AllBorn { lamb });
    phone.open(Screen::Night);
    (phone, lamb)
}

#[test]
fn what_comes_next_is_told_with_the_time_to_it() {
    let (mut phone, _) = on_the_nail();
    phone.says("Nothing due. Next look: 03:05").says("5 min").says("Set your phone’s alarm for 03:05");
    phone.says("Rings only while this screen is on.").says("Alarm off.").says("Turn alarm on");
    phone.later(1).says("4 min");
    phone.later(4).says("due 03:05").says_nowhere("Nothing due");
}

#[test]
fn an_empty_barn_is_calm() {
    let mut phone = Phone::at("2026-02-25 03:00");
    phone.open(Screen::Night).says("Nothing due, and nothing known to come.");
}

#[test]
fn of_many_that_are_due_three_stand_in_large_words_and_the_watch_has_the_rest() {
    let mut phone = Phone::at("2026-02-25 03:00");
    for tag in ["1", "2", "3", "4", "5"] {
        let dam = phone.ewe(tag);
        phone.lamb(dam);
    }
    phone.later(90).open(Screen::Night);
    let leads = |does: &Action| matches!(does, Action::Go(Screen::Lamb(_) | Screen::Ewe(_)));
    let told = phone.pressables().iter().filter(|one| leads(&one.does)).count();
    // Three that are due, and the next to come where there is one.
    assert!((3..=4).contains(&told), "{:?}", phone.pressables());
    let more = phone.pressables().into_iter().find(|one| one.label.starts_with("and "));
    assert_eq!(more.map(|more| more.does), Some(Action::Go(Screen::Watch)));
}

#[test]
fn the_alarm_is_armed_and_disarmed_and_says_how_it_stands() {
    let (mut phone, _) = on_the_nail();
    phone.press("Turn alarm on");
    phone.says.night.alarm = Alarm::Mute;
    phone.says("No sound yet.");
    phone.press("No sound yet: tap again");
    phone.says.night.alarm = Alarm::Armed(phone.now);
    phone.says("Alarm on, tested 03:00.");
    phone.press("Turn alarm off");
    phone.says.night.alarm = Alarm::Unable;
    phone.says("No sound in this browser.");
    assert_eq!(phone.asked, [Request::Arm, Request::Arm, Request::Disarm]);
}

#[test]
fn whether_the_phone_stays_awake_is_told_once_it_has_answered() {
    let (mut phone, _) = on_the_nail();
    phone.says_nowhere("Held awake.").says_nowhere("may go dark");
    phone.says.night.awake = Awake::Held;
    phone.says("Held awake.");
    phone.says.night.awake = Awake::Refused;
    phone.says("This phone may go dark.");
}

#[test]
fn what_rings_is_answered_by_a_tap_and_leads_to_the_animal() {
    let (mut phone, lamb) = on_the_nail();
    phone.later(5);
    let told: Vec<Told> =
        phone.view(|view| view.duties.iter().map(|duty| Told::of(duty, view.now)).collect());
    phone.says.night.ringing = told[..2].to_vec();
    phone.says("Score its vigor").says("and 1 more").says("tap anywhere");
    phone.press("I’m up");
    assert_eq!(phone.asked, [Request::Answer]);
    phone.says.night.ringing.clear();
    phone.says.night.answered = Some(Animal::Lamb(lamb));
    let go = phone.pressables().into_iter().find(|one| one.label == "Go to 27a");
    assert_eq!(go.map(|go| go.does), Some(Action::Go(Screen::Lamb(lamb))));
}

#[test]
fn the_alarms_go_to_the_phones_own_calendar_all_or_the_next_alone() {
    let (mut phone, _) = on_the_nail();
    phone.press("Alarms to my calendar").press("only this to my calendar");
    let counts: Vec<usize> = phone
        .asked
        .iter()
        .map(|asked| match asked {
            Request::GiveCalendar(_, _, alarms) => alarms.len(),
            other => panic!("{other:?}"),
        })
        .collect();
    assert!(counts[0] > 1, "{counts:?}");
    assert_eq!(counts[1], 1);
    phone.sample = true;
    phone.says("The sample flock stays out of your calendar.").says_nowhere("only this one");
}
