//! The Watch: every animal with its clock, each done with one tap; what a hand saw keeps its place while it is at work.

use yeanling_core::book::{Animal, Event, LambId, Part, Sign, VigorScale};
use yeanling_core::settings::{Choice, VetAgreed};
use yeanling_core::units::{Mass, TimeDelta};
use yeanling_pages::block::{Kind, Row};
use yeanling_pages::{Action, Button, Request, Screen, State, Stays};

use crate::phone::Phone;

/// So many newborns, each of a ewe of its own with the tags from 7 on, and nothing noted of them.
fn newborns(count: usize) -> (Phone, Vec<LambId>) {
    let mut phone = Phone::at("2026-02-25 03:00");
    let lambs = (7..7 + count)
        .map(|tag| {
            let dam = phone.ewe(&tag.to_string());
            let lamb = phone.lamb(dam);
            phone.note(Event::AllBorn { lamb });
            lamb
        })
        .collect();
    phone.later(2);
    (phone, lambs)
}

/// The rows of animals as they stand.
fn rows(phone: &Phone) -> Vec<Row> {
    let is_row = |key: &str| key.starts_with("lamb-") || key.starts_with("ewe-");
    let page = phone.page();
    let rows = page.all().into_iter().filter(|block| is_row(&block.key));
    rows.filter_map(|block| if let Kind::Row(row) = &block.kind { Some(row.clone()) } else { None }).collect()
}

#[track_caller]
fn row(phone: &Phone, name: &str) -> Row {
    rows(phone).into_iter().find(|row| row.name == name).unwrap_or_else(|| panic!("no row of {name}"))
}

fn names(phone: &Phone) -> Vec<String> {
    rows(phone).into_iter().map(|row| row.name).collect()
}

fn buttons(row: &Row) -> Vec<Button> {
    row.action.iter().chain(&row.others).cloned().collect()
}

/// The words of the buttons that are ticks.
fn ticks(phone: &Phone, name: &str) -> Vec<String> {
    let ticks = buttons(&row(phone, name)).into_iter().filter(|button| button.stays == Stays::Tick);
    ticks.map(|button| button.label).collect()
}

#[test]
fn an_empty_book_says_what_to_do_first() {
    let mut phone = Phone::at("2026-02-25 03:00");
    phone.says("03:00");
    phone.press("Try a sample flock");
    assert_eq!(phone.asked, [Request::LookRound]);
    phone.ewe("7");
    // Nothing says when she lambs: what is agreed with the vet before that is asked at once, and once.
    phone.says("Agree before lambing: 4 of 4 open").says(yeanling_words::vet::ANY_DAY);
    for what in VetAgreed::ALL {
        phone.note(Event::Chose(Choice::VetAgreed(what)));
    }
    for number in
        [Choice::VetNightPhone("555 0100".to_owned()), Choice::VetSecondPhone("555 0101".to_owned())]
    {
        phone.note(Event::Chose(number));
    }
    phone.says("Nothing due");
}

#[test]
fn a_newborn_stands_with_its_clock_its_buttons_and_the_counts() {
    let (mut phone, _) = newborns(1);
    phone.says("Dip the navel").says_nowhere("left for first milk").says("1 now");
    phone.press("Dipped, 7a").later(1);
    phone.says_nowhere("Dip the navel");
}

#[test]
fn three_rows_pressed_one_after_another_keep_their_places_and_become_ticks() {
    let (mut phone, _) = newborns(3);
    let stood = names(&phone);
    for name in ["8a", "7a", "9a"] {
        let before = row(&phone, name).text.plain();
        phone.press(&format!("Dipped, {name}"));
        assert_eq!(names(&phone), stood, "nothing moves");
        assert_eq!(ticks(&phone, name), ["Dipped"]);
        assert_eq!(row(&phone, name).text.plain(), before, "what was done is told beside its tick");
    }
    assert!(phone.pressables().iter().all(|one| one.label != "Dipped"), "a tick is nothing to press");
    phone.later(1);
    assert!(rows(&phone).iter().all(|row| buttons(row).iter().all(|one| one.stays == Stays::Button)));
    assert!(rows(&phone).iter().all(|row| row.text.room().is_empty()));
}

#[test]
fn undo_gives_the_last_button_back_in_its_place() {
    let (mut phone, _) = newborns(3);
    let stood = names(&phone);
    phone.press("Dipped, 7a").press("Dipped, 8a");
    assert!(phone.undo());
    assert_eq!(names(&phone), stood);
    assert_eq!(ticks(&phone, "7a"), ["Dipped"]);
    assert!(ticks(&phone, "8a").is_empty());
    phone.press("Dipped, 8a");
    assert_eq!(ticks(&phone, "8a"), ["Dipped"]);
}

#[test]
fn what_was_noted_on_a_sheet_is_a_tick_too() {
    let (mut phone, lambs) = newborns(2);
    let lamb = lambs[0];
    let done = [Event::NavelDipped { lamb }, Event::Stood { lamb }, Event::Sucked { lamb }];
    done.into_iter().for_each(|event| _ = phone.note(event));
    phone.note(Event::VigorScored { lamb, scale: VigorScale::FourGrade, score: 1 });
    phone.later(90);
    let stood = names(&phone);
    phone.press("Weigh, 7a");
    phone.act(&Action::Answer(vec![Event::Weighed { lamb: lambs[0], mass: Mass::from_kilograms(4.0) }]));
    assert!(phone.draft().sheets.is_empty());
    assert_eq!(ticks(&phone, "7a"), ["Weigh"]);
    assert_eq!(names(&phone).len(), stood.len());
}

#[test]
fn who_leaves_the_screen_finds_the_rows_where_they_belong() {
    let (mut phone, _) = newborns(2);
    phone.press("Dipped, 7a");
    assert_eq!(ticks(&phone, "7a"), ["Dipped"]);
    phone.open(Screen::Farm).open(Screen::Watch);
    assert!(ticks(&phone, "7a").is_empty());
}

#[test]
fn an_animal_that_comes_into_danger_goes_first_at_once() {
    let (mut phone, _) = newborns(2);
    phone.press("Dipped, 7a");
    let ewe = phone.ewe("14");
    // By the farm's limit a tail is in danger a quarter of an hour after it was seen.
    let seen = phone.now - TimeDelta::minutes(20);
    phone.note_at(Event::PartShowing { ewe, part: Part::Tail }, seen);
    assert_eq!(names(&phone)[0], "Ewe 14");
    assert_eq!(row(&phone, "Ewe 14").state, State::Danger);
    assert_eq!(ticks(&phone, "7a"), ["Dipped"]);
}

#[test]
fn what_can_be_put_off_asks_until_when() {
    let (mut phone, lambs) = newborns(1);
    assert!(buttons(&row(&phone, "7a")).iter().all(|one| one.key != "later"), "folded behind the line");
    phone.open(Screen::Lamb(lambs[0])).press("Snooze, 7a");
    let asked = phone.draft().sheets.iter().any(|open| {
        matches!(&open.sheet, yeanling_pages::Sheet::Later(duty) if duty.subject() == Animal::Lamb(lambs[0]))
    });
    assert!(asked);
}

#[test]
fn the_round_can_be_walked_by_place() {
    let (mut phone, lambs) = newborns(3);
    assert!(phone.pressables().iter().all(|one| one.label != "By place"), "nobody is in a pen");
    let pen = phone.note(Event::PenMade { name: "2".to_owned(), size: None }).as_pen();
    phone.note(Event::PutInPen { pen, animal: Animal::Lamb(lambs[2]) });
    phone.press("By place");
    phone.says("Pen 2").says("Barn");
    assert_eq!(names(&phone)[0], "9a");
    phone.open(Screen::Farm).open(Screen::Watch);
    assert_eq!(names(&phone)[0], "9a", "the order stays chosen");
}

#[test]
fn what_was_missed_keeps_its_room_while_a_hand_is_at_it() {
    let (mut phone, _) = newborns(1);
    phone.later(120);
    let missed = phone.view(|view| view.duties.to_vec());
    phone.says.missed = missed[..1].to_vec();
    let told = |phone: &Phone| -> Vec<(String, String)> {
        let text = |block: &std::sync::Arc<yeanling_pages::Block>| match &block.inside()[0].kind {
            Kind::Line(line) => (line.text.plain(), line.text.room().to_owned()),
            other => panic!("{other:?}"),
        };
        phone.view(|view| yeanling_pages::standing(view, phone.screen)).iter().map(text).collect()
    };
    let [(late, room)] = &told(&phone)[..] else { panic!("one notice") };
    assert!(late.starts_with("Late: 7a"), "{late}");
    assert_eq!(room, "");
    phone.says.missed_stood = std::mem::take(&mut phone.says.missed);
    assert_eq!(told(&phone), [("Done. Nothing you missed is still late.".to_owned(), late.clone())]);
    phone.says.missed_stood.clear();
    assert!(told(&phone).is_empty());
}

#[test]
fn the_way_to_the_steps_for_a_cold_lamb_is_offered_once() {
    let (mut phone, lambs) = newborns(1);
    let (lamb, animal) = (lambs[0], Animal::Lamb(lambs[0]));
    let temperature = yeanling_core::units::Temperature::from_celsius(35.0);
    phone.note(Event::TemperatureTaken { lamb, temperature });
    phone.later(1);
    assert_eq!(row(&phone, "7a").state, State::Danger);
    let steps = |phone: &Phone| {
        buttons(&row(phone, "7a")).iter().filter(|one| one.label == "Cold lamb steps").count()
    };
    assert_eq!(steps(&phone), 1);
    phone.note(Event::VetCalled { animal });
    phone.later(1);
    assert_eq!(steps(&phone), 1);
}

#[test]
fn nobody_says_that_all_is_well_with_a_ewe_while_she_is_to_be_checked() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("7");
    phone.note(Event::SignSeen { ewe, sign: Sign::Restless });
    phone.later(61);
    let looks =
        |phone: &Phone, label: &str| buttons(&row(phone, "Ewe 7")).iter().any(|one| one.label == label);
    assert!(looks(&phone, "All well"), "a look alone is due");
    phone.note(Event::WaterBagSeen { ewe });
    phone.later(31);
    assert!(!looks(&phone, "All well"));
    for screen in [Screen::Ewe(ewe), Screen::LambingEwe(ewe)] {
        phone.open(screen).has_button("Looked").has_no_button("Looked, all well");
    }
    phone.press("Looked").says("Looked").says_nowhere("all well");
}
