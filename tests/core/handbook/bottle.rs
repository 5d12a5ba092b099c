//! What a bottle lamb takes, against both printed tables.

use super::{kg, ml, same_ml};
use yeanling_core::reckon::bottle::{Day, NoRow, day, times};
use yeanling_core::settings::BottleTable;
use yeanling_core::units::{Mass, NaiveTime, TimeDelta, Volume};

fn on_day(day_of_life: i64, weight: Option<Mass>, table: BottleTable) -> Result<Day, NoRow> {
    day(TimeDelta::days(day_of_life - 1), weight, table)
}

#[track_caller]
fn check(table: BottleTable, days: [i64; 2], least: Volume, most: Volume, feeds: u8) {
    for day_of_life in days {
        let day = on_day(day_of_life, None, table).expect("a row");
        assert_eq!((day.least, day.most, day.feeds), (least, most, feeds), "day {day_of_life}");
        let middle = f64::midpoint(least.as_milliliters(), most.as_milliliters());
        same_ml(day.per_feed, middle);
        same_ml(day.day_total, middle * f64::from(feeds));
        assert!(!day.capped && day.cap.is_none());
    }
}

#[test]
fn the_vet_suppliers_table_is_as_printed() {
    // Source: a vet supplier's table, 20 % dry matter mix.
    let row = |days, least, most, feeds| check(BottleTable::VetSupplier, days, ml(least), ml(most), feeds);
    row([2, 7], 100.0, 150.0, 5);
    row([8, 14], 180.0, 250.0, 4);
    row([15, 21], 360.0, 500.0, 3);
    row([22, 28], 500.0, 700.0, 3);
    row([29, 35], 750.0, 1000.0, 2);
}

#[test]
fn the_us_handbooks_table_is_as_printed() {
    // Source: a US handbook's table, in fluid ounces. DIFFERENCE: "up to 16" starts at 8 (ours).
    let oz = Volume::from_fluid_ounces;
    let row = |days, least, most, feeds| check(BottleTable::UsHandbook, days, oz(least), oz(most), feeds);
    row([1, 2], 2.0, 3.0, 6);
    row([3, 4], 3.0, 5.0, 6);
    row([5, 14], 4.0, 6.0, 4);
    row([15, 21], 6.0, 8.0, 4);
    row([22, 35], 8.0, 16.0, 3);
}

#[test]
fn only_the_us_table_begins_with_colostrum() {
    // Source: a US handbook's table, days 1–2.
    let colostrum = |day_of_life| on_day(day_of_life, None, BottleTable::UsHandbook).map(|day| day.colostrum);
    assert_eq!((colostrum(2), colostrum(3)), (Ok(true), Ok(false)));
}

#[test]
fn outside_the_table_there_is_no_row() {
    // Source: both tables end at day 35; the vet supplier's begins at day 2. Day 1 is the first 24 h (ours).
    let table = BottleTable::VetSupplier;
    assert_eq!(on_day(1, None, table), Err(NoRow::TooYoung { table, day: 1, first_day: 2 }));
    assert_eq!(day(TimeDelta::hours(-3), None, table), Err(NoRow::TooYoung { table, day: 1, first_day: 2 }));
    assert!(day(TimeDelta::hours(24), None, table).is_ok());
    for table in [BottleTable::VetSupplier, BottleTable::UsHandbook] {
        assert!(day(TimeDelta::days(35) - TimeDelta::seconds(1), None, table).is_ok());
        assert_eq!(
            day(TimeDelta::days(35), None, table),
            Err(NoRow::TooOld { table, day: 36, last_day: 35 })
        );
        assert!(matches!(day(TimeDelta::days(1_000_000), None, table), Err(NoRow::TooOld { .. })));
    }
}

#[test]
fn three_kilograms_never_get_more_than_600_ml_a_day() {
    // Source: the same vet supplier, 200 ml/kg a day.
    for table in [BottleTable::VetSupplier, BottleTable::UsHandbook] {
        for day_of_life in 1..=35 {
            let Ok(day) = on_day(day_of_life, Some(kg(3.0)), table) else { continue };
            assert_eq!(day.cap, Some(ml(600.0)));
            assert!(day.day_total.as_milliliters() <= 600.0 + 1e-9, "{day:?}");
        }
    }
    let capped = on_day(10, Some(kg(3.0)), BottleTable::VetSupplier).expect("a row");
    assert!(capped.capped);
    same_ml(capped.per_feed, 150.0);
    same_ml(capped.day_total, 600.0);
}

#[test]
fn in_week_one_no_feed_is_over_50_ml_per_kilogram() {
    // Source: ours.
    let light = on_day(7, Some(kg(2.0)), BottleTable::UsHandbook).expect("a row");
    same_ml(light.per_feed, 100.0);
    assert!(light.capped);
    let later = on_day(8, Some(kg(2.5)), BottleTable::UsHandbook).expect("a row");
    same_ml(later.per_feed, 125.0);
}

#[test]
fn an_ordinary_lamb_takes_the_middle_of_the_row() {
    // Source: a vet supplier's table; the middle is ours.
    let day = on_day(3, Some(kg(4.5)), BottleTable::VetSupplier).expect("a row");
    assert!(!day.capped);
    same_ml(day.per_feed, 125.0);
    assert_eq!((day.days_old, day.cap), (2, Some(ml(900.0))));
}

#[test]
fn a_weight_no_bottle_lamb_has_is_refused() {
    // Source: ours, 0.5 to 30 kg.
    for kilograms in [0.0, -3.0, 40.0, f64::NAN] {
        let refused = on_day(10, Some(kg(kilograms)), BottleTable::VetSupplier);
        assert!(matches!(refused, Err(NoRow::NotAWeight(_))), "{kilograms}: {refused:?}");
    }
}

#[test]
fn feeds_are_spread_evenly_over_a_day_from_the_first() {
    // Source: ours, arithmetic.
    let six = NaiveTime::from_hms_opt(6, 0, 0).expect("a time");
    let at =
        |feeds| times(feeds, six).iter().map(|time| time.format("%H:%M").to_string()).collect::<Vec<_>>();
    assert_eq!(at(5), ["06:00", "10:48", "15:36", "20:24", "01:12"]);
    assert_eq!(at(4), ["06:00", "12:00", "18:00", "00:00"]);
    assert_eq!(at(3), ["06:00", "14:00", "22:00"]);
    assert_eq!(at(2), ["06:00", "18:00"]);
    assert_eq!(at(1), ["06:00"]);
    assert!(at(0).is_empty());
}
