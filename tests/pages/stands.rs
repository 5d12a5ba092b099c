//! Every fact that was noted stands in a timeline, where it can be changed and taken back, as long as what it is about is there.

use std::collections::BTreeSet;

use yeanling_core::book::{Animal, Event, Life};
use yeanling_core::flock::{Flock, Line};
use yeanling_pages::block::Kind;
use yeanling_pages::{Key, key_of};

use crate::phone::Phone;

/// Returns the keys of all lines that stand in a timeline somewhere.
fn standing(phone: &Phone) -> BTreeSet<Key> {
    let mut keys = BTreeSet::new();
    for screen in phone.screens() {
        for block in phone.page_of(screen).all() {
            if let Kind::Timeline(lines) = &block.kind {
                keys.extend(lines.iter().map(|line| line.key.clone()));
            }
        }
    }
    keys
}

/// Says whether what a line is about is there: with it the line comes back, and till then it stands nowhere.
fn is_there(flock: &Flock, line: &Line) -> bool {
    let animal = |animal| match animal {
        Animal::Ewe(ewe) => flock.ewe(ewe).is_some(),
        Animal::Lamb(lamb) => flock.lamb(lamb).is_some(),
    };
    let (event, id) = (&line.event, line.entry);
    match event {
        // What a newer version wrote is passed on as it is, and cannot be read here.
        Event::Unread(_) | Event::Amended { .. } | Event::Deleted { .. } | Event::Restored { .. } => false,
        Event::Chose(_) => true,
        Event::EweCame { .. } | Event::Life(Life::KeptAsEwe { .. }) => animal(Animal::Ewe(id.as_ewe())),
        Event::LambBorn { .. } => animal(Animal::Lamb(id.as_lamb())),
        Event::PenMade { .. } => flock.pens.contains_key(&id.as_pen()),
        Event::GroupFormed { .. } => flock.groups.contains_key(&id.as_group()),
        // What is about an animal comes back with it, also where a pen or a group is still there.
        _ if event.animals().next().is_some() => event.animals().any(animal),
        _ => {
            event.is_of_the_stores()
                || event.pen().is_some_and(|pen| flock.pens.contains_key(&pen))
                || event.group().is_some_and(|group| flock.groups.contains_key(&group))
        }
    }
}

fn missing_of(flock: &Flock, standing: &BTreeSet<Key>) -> Vec<String> {
    let lines = flock.lines.iter().filter(|line| is_there(flock, line));
    let lines = lines.filter(|line| !standing.contains(&key_of("noted", line.entry)));
    lines.map(|line| format!("stands in no timeline: {:?}", line.event)).collect()
}

/// Returns the facts that stand in no timeline.
pub(crate) fn missing(phone: &Phone) -> Vec<String> {
    missing_of(&phone.flock, &standing(phone))
}

#[test]
fn every_fact_of_the_sample_flock_stands_in_a_timeline() {
    let begins = yeanling_core::units::Moment::from_unix_milliseconds(1_771_995_600_000, -300);
    let book = yeanling_pages::sample::book(begins, yeanling_core::units::System::Metric);
    let phone = Phone::with(book, begins);
    assert_eq!(missing(&phone), Vec::<String>::new());
}

#[test]
fn a_fact_that_stands_nowhere_is_found() {
    let mut phone = Phone::at("2027-02-01 23:55");
    let ewe = phone.ewe("7");
    phone.note(Event::Remarked { animal: Animal::Ewe(ewe), text: "calm".to_owned() });
    let whole = standing(&phone);
    assert_eq!(missing_of(&phone.flock, &whole), Vec::<String>::new());
    for key in &whole {
        let less: BTreeSet<Key> = whole.iter().filter(|other| *other != key).cloned().collect();
        assert_eq!(missing_of(&phone.flock, &less).len(), 1, "{key}");
    }
    assert_eq!(whole.len(), 2);
}
