//! No more leaves the stores than there is, and pieces are whole.

use yeanling_core::book::{BatchId, EntryId, Event, Item, MilkedFrom};
use yeanling_core::units::{Amount, BoundFor, Bounds, Brix, Moment, OutOfBounds, Volume};
use yeanling_core::watch::{Rejection, StoreRejection, validate};

use super::amended;
use crate::scribe::{MS, Scribe, at, ml};

fn of(units: f64) -> Amount {
    Amount::from_units(units)
}

fn came(item: Item, units: f64) -> Event {
    Event::StoreIn { item, amount: of(units) }
}

fn used(item: Item, units: f64) -> Event {
    Event::StoreUsed { item, amount: of(units) }
}

#[track_caller]
fn check_at(scribe: &Scribe, event: &Event, at: Moment, expected: Result<(), StoreRejection>) {
    let got = validate(&scribe.flock(), &scribe.book, event, at, crate::scribe::at(500));
    assert_eq!(got, expected.map_err(Rejection::from), "{event:?}");
}

#[track_caller]
fn check(scribe: &Scribe, event: &Event, expected: Result<(), StoreRejection>) {
    check_at(scribe, event, at(100), expected);
}

#[test]
fn no_more_goes_than_is_there() {
    let mut scribe = Scribe::new(1);
    let item = Item::Hay;
    let short = |given, there| Err(StoreRejection::NotThatMuch { item, given: of(given), there: of(there) });
    check(&scribe, &used(item, 1.0), short(1.0, 0.0));
    scribe.note(at(10), came(item, 100.0));
    check(&scribe, &used(item, 100.0), Ok(()));
    check(&scribe, &used(item, 100.5), short(100.5, 100.0));
    check(&scribe, &Event::StoreThrown { item, amount: of(101.0) }, short(101.0, 100.0));
    check_at(&scribe, &used(item, 1.0), at(10) - MS, short(1.0, 0.0));
    let entry = scribe.note(at(20), used(item, 90.0));
    check(&scribe, &used(item, 11.0), short(11.0, 10.0));
    check_at(&scribe, &used(item, 11.0), at(15), short(11.0, 10.0));
    check(&scribe, &amended(entry, used(item, 100.0), at(20)), Ok(()));
    check(&scribe, &amended(entry, used(item, 101.0), at(20)), short(101.0, 100.0));
    scribe.note(at(30), Event::StoreCounted { item, amount: of(50.0) });
    check(&scribe, &used(item, 50.0), Ok(()));
}

#[track_caller]
fn bounds(item: Item, least: f64, most: f64, outside: &[f64]) {
    let scribe = Scribe::new(1);
    let allowed = Bounds { least: of(least), most: of(most), why: BoundFor::InStore };
    check(&scribe, &came(item, least), Ok(()));
    check(&scribe, &came(item, most), Ok(()));
    for units in outside {
        let out = OutOfBounds { given: of(*units), allowed };
        check(&scribe, &came(item, *units), Err(StoreRejection::Amount { item, out }));
        check(&scribe, &used(item, *units), Err(StoreRejection::Amount { item, out }));
    }
}

#[test]
fn an_amount_is_one_that_a_store_can_hold() {
    bounds(Item::Hay, 0.01, 500_000.0, &[0.0, -1.0, 500_001.0]);
    bounds(Item::Iodine, 1.0, 200_000.0, &[0.0, 0.5, 200_001.0]);
    bounds(Item::Rings, 1.0, 50_000.0, &[0.0, 50_001.0]);
    let none = Event::StoreCounted { item: Item::Rings, amount: Amount::NONE };
    check(&Scribe::new(1), &none, Ok(()));
}

#[test]
fn what_is_counted_one_by_one_is_whole() {
    let scribe = Scribe::new(1);
    let (item, given) = (Item::Teats, of(2.5));
    let refused = Err(StoreRejection::NotWhole { item, given });
    check(&scribe, &came(item, 2.5), refused);
    check(&scribe, &Event::StoreCounted { item, amount: given }, refused);
    check(&scribe, &came(Item::Grain, 2.5), Ok(()));
}

fn freeze(bags: u8, milliliters: f64) -> Event {
    Event::ColostrumFrozen { from: MilkedFrom::Cow, bags, volume: ml(milliliters), brix: None, label: None }
}

#[test]
fn frozen_colostrum_is_in_bags_that_can_be() {
    let mut scribe = Scribe::new(1);
    for bags in [0, 51] {
        check(&scribe, &freeze(bags, 60.0), Err(StoreRejection::Bags { given: bags, least: 1, most: 50 }));
    }
    for milliliters in [9.0, 2001.0] {
        let out = OutOfBounds { given: ml(milliliters), allowed: Volume::FROZEN_BAG };
        check(&scribe, &freeze(1, milliliters), Err(StoreRejection::Bag(out)));
    }
    check(&scribe, &freeze(50, 2000.0), Ok(()));
    let with = |from, brix, label: Option<&str>| Event::ColostrumFrozen {
        from,
        bags: 1,
        volume: ml(60.0),
        brix,
        label: label.map(str::to_owned),
    };
    let given = Brix::from_percent(41.0);
    let out = OutOfBounds { given, allowed: Brix::OF_COLOSTRUM };
    check(&scribe, &with(MilkedFrom::Goat, Some(given), None), Err(StoreRejection::Brix(out)));
    let empty = with(MilkedFrom::SomeEwe, None, Some(" "));
    let got = validate(&scribe.flock(), &scribe.book, &empty, at(0), at(0));
    assert_eq!(got, Err(Rejection::NoText));
    let ewe = scribe.ewe(at(0), "101");
    check(&scribe, &with(MilkedFrom::Ewe(ewe), Some(Brix::from_percent(26.0)), Some("A")), Ok(()));
    scribe.strike(at(1), ewe.entry());
    let got = validate(&scribe.flock(), &scribe.book, &with(MilkedFrom::Ewe(ewe), None, None), at(2), at(2));
    assert_eq!(got, Err(Rejection::NoSuchAnimal));
}

#[test]
fn no_more_bags_are_thawed_than_are_frozen() {
    let mut scribe = Scribe::new(1);
    let batch = scribe.note(at(10), freeze(3, 60.0)).as_batch();
    let thaw = |batch, bags| Event::ColostrumThawed { batch, bags };
    check(&scribe, &thaw(batch, 3), Ok(()));
    check(&scribe, &thaw(batch, 4), Err(StoreRejection::NotThatManyBags { given: 4, there: 3 }));
    check(&scribe, &thaw(batch, 0), Err(StoreRejection::Bags { given: 0, least: 1, most: 50 }));
    let (early, frozen) = (at(10) - MS, at(10));
    check_at(&scribe, &thaw(batch, 1), early, Err(StoreRejection::BeforeFrozen { at: early, frozen }));
    let entry: EntryId = scribe.note(at(20), thaw(batch, 2));
    let thrown = Event::ColostrumThrown { batch, bags: 2 };
    check(&scribe, &thrown, Err(StoreRejection::NotThatManyBags { given: 2, there: 1 }));
    check(&scribe, &amended(entry, thaw(batch, 3), at(20)), Ok(()));
    let other: BatchId = entry.as_batch();
    check(&scribe, &thaw(other, 1), Err(StoreRejection::NoSuchBatch));
}
