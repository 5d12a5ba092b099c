//! What lies in the stores and in the freezer, worked out from what was noted.

use yeanling_core::book::{BatchId, Event, Item, MilkedFrom};
use yeanling_core::units::{Amount, Brix, Moment};

use crate::scribe::{Scribe, at, ml};

fn of(units: f64) -> Amount {
    Amount::from_units(units)
}

fn came(item: Item, units: f64) -> Event {
    Event::StoreIn { item, amount: of(units) }
}

fn used(item: Item, units: f64) -> Event {
    Event::StoreUsed { item, amount: of(units) }
}

fn counted(item: Item, units: f64) -> Event {
    Event::StoreCounted { item, amount: of(units) }
}

#[track_caller]
fn level(scribe: &Scribe, item: Item, expected: Option<f64>) {
    assert_eq!(scribe.flock().stores.level(item), expected.map(of), "{item:?}");
}

#[test]
fn a_level_is_what_came_less_what_went_since_the_last_count() {
    let mut scribe = Scribe::new(1);
    level(&scribe, Item::Hay, None);
    scribe.note(at(0), came(Item::Hay, 1000.0));
    scribe.note(at(2), used(Item::Hay, 150.0));
    scribe.note(at(3), Event::StoreThrown { item: Item::Hay, amount: of(50.0) });
    level(&scribe, Item::Hay, Some(800.0));
    level(&scribe, Item::Grain, None);
    let count = scribe.note(at(4), counted(Item::Hay, 700.0));
    scribe.note(at(5), used(Item::Hay, 100.0));
    level(&scribe, Item::Hay, Some(600.0));
    scribe.note(at(1), used(Item::Hay, 400.0));
    level(&scribe, Item::Hay, Some(600.0));
    scribe.strike(at(6), count);
    level(&scribe, Item::Hay, Some(300.0));
}

#[test]
fn two_phones_that_each_use_the_last_leave_none() {
    let mut one = Scribe::new(1);
    one.note(at(0), came(Item::Tubes, 1.0));
    let mut other = Scribe::new(2);
    other.meet(&one);
    one.note(at(1), used(Item::Tubes, 1.0));
    other.note(at(2), used(Item::Tubes, 1.0));
    one.meet(&other);
    level(&one, Item::Tubes, Some(0.0));
    one.note(at(3), came(Item::Tubes, 5.0));
    level(&one, Item::Tubes, Some(5.0));
}

#[test]
fn what_can_be_spared_is_the_least_until_the_next_count() {
    let mut scribe = Scribe::new(1);
    scribe.note(at(10), came(Item::Gloves, 100.0));
    let most = scribe.note(at(20), used(Item::Gloves, 90.0));
    scribe.note(at(30), came(Item::Gloves, 50.0));
    scribe.note(at(40), counted(Item::Gloves, 5.0));
    let spare = |at: Moment, except| scribe.flock().stores.spare(Item::Gloves, at, except);
    assert_eq!(spare(at(9), None), of(0.0));
    assert_eq!(spare(at(15), None), of(10.0));
    assert_eq!(spare(at(15), Some(most)), of(100.0));
    assert_eq!(spare(at(35), None), of(60.0));
    assert_eq!(spare(at(50), None), of(5.0));
}

fn frozen(from: MilkedFrom, bags: u8) -> Event {
    let (brix, label) = (Some(Brix::from_percent(26.0)), None);
    Event::ColostrumFrozen { from, bags, volume: ml(60.0), brix, label }
}

#[test]
fn the_freezer_holds_what_was_not_taken_out_the_oldest_first() {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(at(0), "101");
    let young = scribe.note(at(60), frozen(MilkedFrom::Goat, 2)).as_batch();
    let old = scribe.note(at(10), frozen(MilkedFrom::Ewe(ewe), 4)).as_batch();
    let freezer = |scribe: &Scribe| -> Vec<(BatchId, u8)> {
        scribe.flock().stores.freezer().iter().map(|batch| (batch.id, batch.left())).collect()
    };
    assert_eq!(freezer(&scribe), [(old, 4), (young, 2)]);
    assert_eq!(scribe.flock().stores.frozen(), ml(360.0));
    scribe.note(at(70), Event::ColostrumThawed { batch: old, bags: 1 });
    let thrown = scribe.note(at(80), Event::ColostrumThrown { batch: old, bags: 3 });
    assert_eq!(freezer(&scribe), [(young, 2)]);
    let taken = scribe.flock().stores.batches[&old].taken.clone();
    assert_eq!(taken.iter().map(|it| (it.bags, it.thrown)).collect::<Vec<_>>(), [(1, false), (3, true)]);
    assert_eq!(scribe.flock().stores.batches[&old].left_without(Some(thrown)), 3);
    scribe.strike(at(90), thrown);
    assert_eq!(freezer(&scribe), [(old, 3), (young, 2)]);
    scribe.strike(at(91), young.entry());
    assert_eq!(freezer(&scribe), [(old, 3)]);
    let told = scribe.flock();
    assert_eq!(told.lines_of_stores().count(), 4, "struck lines too");
    let of_her = told.lines_of(yeanling_core::book::Animal::Ewe(ewe)).count();
    assert_eq!(of_her, 2, "she came, and her colostrum was frozen");
}

#[test]
fn every_thing_is_listed_once_with_its_unit() {
    let mut all = Item::ALL.to_vec();
    all.sort_unstable();
    all.dedup();
    assert_eq!(all.len(), Item::ALL.len());
    let forms = Item::ALL.map(|item| serde_json::to_string(&item).expect("a name"));
    let schema = include_str!("../../../public/book.schema.json");
    assert!(forms.iter().all(|form| schema.contains(form.as_str())), "{forms:?}");
}
