//! What is read at a glance is so: lateness counts from the limit, who was sold is not said to be dead, no empty screen is a dead
//! end, and a round that was gone through begins anew.

use yeanling_core::book::{Animal, Departure, Event, Life, Sex};
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::State;
use yeanling_pages::block::{Kind, Row};
use yeanling_pages::{Page, Screen};

use crate::phone::Phone;

/// Says what of a page is not so.
pub(crate) fn broken(phone: &Phone, screen: Screen, page: &Page) -> Vec<String> {
    let mut wrong = lateness(phone, screen, page);
    wrong.extend(dead_ends(page));
    wrong
}

/// Returns how long "late by 1 day 4 h" says, to the last of its units.
fn late_by(text: &str) -> Option<(TimeDelta, TimeDelta)> {
    let text = text.replace('\u{a0}', " ");
    let words: Vec<&str> = text.split("late by ").nth(1)?.split(' ').collect();
    let unit = |word: &str| match word.trim_end_matches([',', '.', '·']) {
        "day" | "days" => Some(TimeDelta::days(1)),
        "h" => Some(TimeDelta::hours(1)),
        "min" => Some(TimeDelta::minutes(1)),
        _ => None,
    };
    let (mut all, mut least) = (TimeDelta::zero(), TimeDelta::zero());
    for pair in words.chunks(2) {
        let [number, word] = pair else { break };
        let (Ok(number), Some(unit)) = (number.parse::<i32>(), unit(word)) else { break };
        (all, least) = (all + unit * number, unit);
    }
    Some((all, least))
}

/// Nothing is late by more than the time since its limit: what may be done for days is not late by them.
fn lateness(phone: &Phone, screen: Screen, page: &Page) -> Vec<String> {
    let longest: Option<TimeDelta> = phone.view(|view| {
        let of = |animal: Animal| match screen {
            Screen::Ewe(ewe) => animal == Animal::Ewe(ewe),
            Screen::Lamb(lamb) => animal == Animal::Lamb(lamb),
            _ => true,
        };
        let late =
            view.duties.iter().filter(|duty| duty.state(view.now) >= State::Late && of(duty.subject()));
        late.map(|duty| view.now.since(duty.late)).max()
    });
    let says = |row: &Row| {
        let (said, least) = late_by(&row.says.plain())?;
        (said > longest.unwrap_or_default() + least)
            .then(|| format!("{:?} is {:?}, and the longest is {longest:?}", row.name, row.says.plain()))
    };
    let rows = page.all().into_iter().filter_map(|block| match &block.kind {
        Kind::Row(row) => says(row),
        _ => None,
    });
    rows.collect()
}

/// Where there is nothing yet, the next step is one tap away: in the same place, or under the thumb.
fn dead_ends(page: &Page) -> Vec<String> {
    let thumb = page.thumb.iter().any(|block| !block.buttons().is_empty());
    // What is looked for and not there is added, or looked for anew, in the field above.
    let seeks = |key: &str| key == "found-none";
    let empties = page.all().into_iter().filter_map(|block| match &block.kind {
        Kind::Empty(empty) if empty.buttons.is_empty() && !thumb && !seeks(&block.key) => {
            Some(format!("a dead end: {:?}", empty.text.plain()))
        }
        _ => None,
    });
    empties.collect()
}

#[test]
fn a_ring_that_may_go_on_for_days_is_late_only_from_its_limit_on() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("7");
    let lamb = phone.lamb(ewe);
    let rule = yeanling_core::settings::RingRule::EnglandWales;
    let rings = yeanling_core::settings::Rings { rule, tails: true, ram_lambs: false };
    phone.note(Event::Chose(yeanling_core::settings::Choice::Rings(rings)));
    for minutes in [6 * 24 * 60, 25 * 60, 24 * 60] {
        phone.later(minutes);
        for screen in [Screen::Watch, Screen::Lamb(lamb)] {
            assert_eq!(lateness(&phone, screen, &phone.page_of(screen)), Vec::<String>::new());
        }
    }
    assert!(late_by("late by 6 days 4 h").is_some_and(|(all, _)| all == TimeDelta::hours(148)));
}

#[test]
fn a_lamb_that_was_sold_is_not_said_to_be_dead() {
    let mut phone = Phone::at("2027-02-01 23:55");
    phone.note(Event::GroupFormed { name: "All".to_owned() });
    let ewe = phone.ewe("7");
    let lambs = [Sex::Ram, Sex::Ewe].map(|sex| {
        let born = Event::LambBorn { dam: Some(ewe), beside: None, sex: Some(sex), alive: true };
        phone.note(born).as_lamb()
    });
    phone.later(100 * 24 * 60);
    let sold = Life::Went { animal: Animal::Lamb(lambs[0]), how: Departure::Sold, to: None };
    phone.note(Event::Life(sold));
    let mut held = 0;
    let read = |screen: &Screen| !matches!(screen, Screen::Topic(_) | Screen::Ailment(_));
    for screen in phone.screens().into_iter().filter(read) {
        for text in phone.page_of(screen).all().into_iter().flat_map(|block| block.texts()) {
            assert!(!text.contains("1 of 2") && !text.contains("1 alive"), "{screen:?}: {text:?}");
            held += usize::from(text.contains("2 alive") || text.contains("2 lambs"));
        }
    }
    assert!(held > 1, "{held} places tell of both");
}

#[test]
fn no_screen_of_an_empty_book_is_a_dead_end_nor_of_one_with_a_ewe_or_with_animals_that_are_gone() {
    let empty = Phone::at("2027-02-01 23:55");
    let mut ewe = empty.clone();
    ewe.ewe("7");
    let mut gone = ewe.clone();
    let dam = gone.ewe("8");
    let lamb = gone.lamb(dam);
    for animal in [Animal::Lamb(lamb), Animal::Ewe(dam)] {
        gone.note(Event::Died { animal, cause: yeanling_core::book::Cause::Unknown });
    }
    let mut struck = gone.clone();
    struck.note(Event::Deleted { entry: lamb.entry() });
    struck.note(Event::Deleted { entry: dam.entry() });
    for phone in [empty, ewe, gone.clone(), struck] {
        for screen in phone.screens().into_iter().chain(gone.screens()) {
            let ends = dead_ends(&phone.page_of(screen));
            assert!(ends.is_empty(), "{screen:?}: {ends:?}");
        }
    }
}

#[test]
fn what_should_have_been_by_now_is_not_told_as_something_to_come() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("7");
    let lamb = phone.lamb(ewe);
    phone.open(Screen::Lamb(lamb));
    let asks = |phone: &Phone| {
        let mut asked = phone.clone();
        asked.act(&yeanling_pages::Action::Ask(yeanling_pages::Sheet::Vigor(lamb)));
        let page = asked.page();
        let sheet = page.sheets.last().expect("the sheet").blocks.clone();
        sheet.iter().flat_map(|block| block.texts()).collect::<Vec<_>>().join("\n").replace('\u{a0}', " ")
    };
    let mut held = 0;
    for minutes in (5..60).step_by(5) {
        phone.later(5);
        let said = asks(&phone);
        for part in said.split("up by ").skip(1).filter(|part| !part.starts_with("now")) {
            let by: i64 = part.split(' ').next().and_then(|number| number.parse().ok()).expect("a time");
            assert!(minutes < by, "at {minutes} min: {part:?}");
            held += 1;
        }
    }
    assert!(held > 3, "it is told {held} times");
}
