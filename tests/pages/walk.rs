//! Walks over the screens: a phone in the hands of someone who presses, types, waits, leaves, and takes back what they did;
//! every page on the way is held against the laws.
//!
//! `YEANLING_CASES` says how many presses are made, over all; `cargo xtask soak` makes a million.

use std::collections::BTreeMap;

use yeanling_core::book::Event;
use yeanling_core::settings::Choice;
use yeanling_core::units::{Moment, System};
use yeanling_pages::block::Kind;
use yeanling_pages::{Action, Block, Page, sample};

use crate::chance::Chance;
use crate::phone::Phone;
use crate::reach::{fields, pressables};
use crate::{html, laws, stands};

/// How many presses are made, over all, where nobody asks for more.
const PRESSES: u64 = 16_000;
/// The walks are made in so many parts, one a test, so that they run beside each other.
const PARTS: u64 = 4;
/// So many presses are one walk.
const WALK: u64 = 100;

/// Once in so many presses each button that notes is pressed and taken back.
const UNDO: u32 = 6;

/// What someone types that looks like a sign of the app's own words.
pub(crate) const ODD: &str = "a*b";

/// What people type, right and wrong.
const TYPED: [&str; 16] = [
    "4.2",
    "42",
    "0",
    "",
    "1,000",
    "9 lb 4 oz",
    "nine",
    "-1",
    "195",
    "39.4",
    "102.5",
    "12",
    "1-18",
    ODD,
    "2027-02-01T23:55",
    "7",
];

fn one_of<'a, T>(chance: &mut Chance, all: &'a [T]) -> &'a T {
    let place = chance.below(u32::try_from(all.len()).unwrap_or(1));
    &all[usize::try_from(place).unwrap_or(0)]
}

fn begins() -> Moment {
    Moment::from_unix_milliseconds(1_771_995_600_000, -300)
}

fn walks(part: u64, begin: fn() -> Phone) {
    let asked: Option<u64> = std::env::var("YEANLING_CASES").ok().and_then(|cases| cases.parse().ok());
    let each = asked.unwrap_or(PRESSES).div_ceil(PARTS * WALK);
    let mut seen: BTreeMap<String, u64> = BTreeMap::new();
    for seed in part * each..(part + 1) * each {
        walk(begin(), seed, &mut seen);
    }
    // A walk that sees nothing proves nothing.
    assert!(seen.len() > 15, "{seen:?}");
}

fn walk(mut phone: Phone, seed: u64, seen: &mut BTreeMap<String, u64>) {
    let mut chance = Chance::new(seed);
    let mut story: Vec<String> = Vec::new();
    let screens = phone.screens();
    phone.open(chance.of(&screens));
    for _ in 0..WALK {
        let before = (phone.screen, phone.page());
        story.push(step(&mut phone, &mut chance));
        let page = phone.page();
        *seen.entry(page.title.clone()).or_default() += 1;
        let mut wrong = laws::broken(&phone, phone.screen, &page);
        wrong.extend(html::patched(&phone, (before.0, &before.1), (phone.screen, &page)).err());
        if chance.one_in(UNDO) {
            wrong.extend(undone(&phone));
        }
        assert!(
            wrong.is_empty(),
            "walk {seed}, on {:?}:\n{}\nafter:\n{}",
            phone.screen,
            wrong.join("\n"),
            story.join("\n")
        );
    }
    let missing = stands::missing(&phone);
    assert!(missing.is_empty(), "walk {seed}:\n{}\nafter:\n{}", missing.join("\n"), story.join("\n"));
}

/// Does something that a person might, and tells it.
fn step(phone: &mut Phone, chance: &mut Chance) -> String {
    let page = phone.page();
    match chance.below(20) {
        0 => {
            let screens = phone.screens();
            let screen = chance.of(&screens);
            phone.open(screen);
            format!("opens {screen:?}")
        }
        1 => {
            let minutes = chance.of(&[1, 10, 45, 300, 1500]);
            phone.later(minutes);
            format!("waits {minutes} min")
        }
        2 if phone.undo() => "takes it back".to_owned(),
        3 if !page.sheets.is_empty() => {
            phone.act(&Action::Close);
            "closes the sheet".to_owned()
        }
        4 if page.sheets.is_empty() => {
            let sheet = one_of(chance, &crate::sheets::every(phone)).clone();
            phone.act(&Action::Ask(sheet.clone()));
            format!("asks for {sheet:?}")
        }
        5..=9 => {
            let fields = fields(&page);
            if fields.is_empty() {
                return press(phone, &page, chance);
            }
            let (key, field) = one_of(chance, &fields);
            let text = chance.of(&TYPED);
            phone.act(&Action::Type(key.clone(), text.to_owned()));
            if let Some(left) = field.left.as_ref().filter(|_| chance.below(2) == 0) {
                phone.act(left);
            }
            format!("types {text:?} into {:?}", field.label)
        }
        _ => press(phone, &page, chance),
    }
}

fn press(phone: &mut Phone, page: &Page, chance: &mut Chance) -> String {
    let all = pressables(page);
    if all.is_empty() {
        let screens = phone.screens();
        phone.open(chance.of(&screens));
        return "finds nothing to press and goes on".to_owned();
    }
    let one = one_of(chance, &all).clone();
    phone.act(&one.does);
    format!("presses {:?}", one.name)
}

/// What was noted by a press and is taken back leaves the page as it was: what was struck out stands only where what was
/// noted is listed.
fn undone(phone: &Phone) -> Option<String> {
    let before = without_lists(&phone.page());
    for one in pressables(&phone.page()) {
        let Action::Note(_) = &one.does else { continue };
        let mut other = phone.clone();
        other.act(&one.does);
        if other.screen != phone.screen || other.book.len() == phone.book.len() || !other.undo() {
            continue;
        }
        let after = without_lists(&other.page());
        if before != after {
            return Some(format!("{:?}, then undo, leaves\n{after:#?}\ninstead of\n{before:#?}", one.name));
        }
    }
    None
}

/// Returns the texts of a page but for those of what was noted.
fn without_lists(page: &Page) -> Vec<(String, Vec<String>)> {
    let told = |block: &&std::sync::Arc<Block>| !matches!(block.kind, Kind::Timeline(_));
    page.all().into_iter().filter(told).map(|block| (block.key.to_string(), block.texts())).collect()
}

fn empty_book() -> Phone {
    Phone::with(yeanling_core::book::Book::default(), begins())
}

fn sample_flock() -> Phone {
    Phone::with(sample::book(begins(), System::Metric), begins())
}

fn in_us_units() -> Phone {
    let mut phone = Phone::with(sample::book(begins(), System::Us), begins());
    phone.note(Event::Chose(Choice::System(System::Us)));
    phone
}

#[test]
fn an_empty_book_keeps_the_laws() {
    walks(0, empty_book);
}

#[test]
fn a_flock_in_metric_units_keeps_the_laws() {
    walks(1, sample_flock);
}

#[test]
fn a_flock_in_us_units_keeps_the_laws() {
    walks(2, in_us_units);
}

#[test]
fn a_flock_keeps_the_laws_on_other_walks() {
    walks(3, sample_flock);
}
