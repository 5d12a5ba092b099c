//! What a bottle lamb takes, against both printed tables.

use super::{kg, ml, near, same_ml};
use yeanling_core::practice::BottleTable;
use yeanling_core::reckon::bottle::{Day, Milk, NoRow, day, mix, strength_if_added};
use yeanling_core::units::{Mass, TimeDelta, Volume};

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
    let milk = |day_of_life| on_day(day_of_life, None, BottleTable::UsHandbook).map(|day| day.milk);
    assert_eq!(milk(2), Ok(Milk::Colostrum));
    assert_eq!(milk(3), Ok(Milk::Milk));
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
fn two_hundred_grams_are_made_up_to_a_liter_not_added_to_one() {
    // Source: feed maker, 200 g + 800 ml; 200 g added to 1 liter is only 167 g/L (ours, arithmetic).
    let (powder, water) = mix(ml(1000.0));
    near(powder.as_kilograms(), 0.2, 1e-12);
    same_ml(water, 800.0);
    let (powder, water) = mix(ml(250.0));
    near(powder.as_kilograms(), 0.05, 1e-12);
    same_ml(water, 200.0);
    let weak = strength_if_added(kg(0.2), ml(1000.0)).expect("a mix");
    near(weak.as_grams_per_liter(), 167.0, 0.5);
    let right = strength_if_added(kg(0.2), ml(800.0)).expect("a mix");
    near(right.as_grams_per_liter(), 200.0, 1e-9);
}

#[test]
fn a_mix_of_nothing_is_nothing() {
    // Source: ours.
    assert_eq!(mix(ml(-5.0)), (kg(0.0), ml(0.0)));
    assert_eq!(mix(ml(f64::NAN)), (kg(0.0), ml(0.0)));
    assert!(strength_if_added(kg(0.0), ml(0.0)).is_none());
}
