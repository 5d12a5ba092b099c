//! Until when meat or milk may not be used.

use chrono::NaiveDate;
use yeanling_core::reckon::withholding::{
    LastDose, MOST_DAYS, OFF_LABEL_BRITAIN, TooLong, Usable, latest, off_label_britain, usable,
};
use yeanling_core::units::{Moment, TimeDelta};

fn day(month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(2028, month, day).expect("a day")
}

fn at(text: &str) -> Moment {
    text.parse().expect("a moment")
}

#[test]
fn a_six_day_period_ends_on_the_seventh_day() {
    // Source: Finnish Medicines Agency: a 6-day period, usable on the 7th day after the last dose.
    assert_eq!(usable(LastDose::On(day(3, 1)), Some(6)), Ok(Usable::FromDay(day(3, 8))));
    // Over the end of a leap February.
    assert_eq!(usable(LastDose::On(day(2, 25)), Some(6)), Ok(Usable::FromDay(day(3, 3))));
    assert_eq!(usable(LastDose::On(day(2, 25)), Some(0)), Ok(Usable::FromDay(day(2, 26))));
}

#[test]
fn with_the_hour_known_it_is_so_many_times_24_hours() {
    // Source: season figures, "last dose + 24 h × W"; ours.
    let dose = at("2028-03-24T18:30:00+01:00");
    let Ok(Usable::From(from)) = usable(LastDose::At(dose), Some(6)) else { panic!("known") };
    assert_eq!(from.since(dose), TimeDelta::hours(144));
    assert!(!Usable::From(from).at(from - TimeDelta::milliseconds(1)));
    assert!(Usable::From(from).at(from));
}

#[test]
fn what_is_not_known_blocks_and_is_never_nothing() {
    // Ours.
    let unknown = usable(LastDose::On(day(3, 1)), None).expect("no error");
    assert_eq!(unknown, Usable::Unknown);
    assert!(!unknown.at(at("2099-01-01T00:00:00Z")));
    let ends = [Usable::FromDay(day(3, 8)), unknown, Usable::FromDay(day(9, 1))];
    assert_eq!(latest(ends), Some(Usable::Unknown));
}

#[test]
fn of_several_the_latest_end_stands() {
    // Ours.
    let (early, late) = (Usable::FromDay(day(3, 8)), Usable::FromDay(day(4, 1)));
    assert_eq!(latest([early, late, early]), Some(late));
    assert_eq!(latest([]), None);
    let noon = Usable::From(at("2028-03-08T12:00:00+01:00"));
    assert_eq!(latest([early, noon]), Some(noon), "noon of that day is later than its midnight");
    let before = Usable::From(at("2028-03-07T23:59:00+01:00"));
    assert_eq!(latest([before, early]), Some(early));
}

#[test]
fn off_the_label_it_is_half_as_long_again() {
    // Source: UK Veterinary Medicines Directorate: × 1.5, at least as the vet says.
    assert_eq!([0, 1, 6, 7, 28].map(off_label_britain), [0, 2, 9, 11, 42]);
    assert!((OFF_LABEL_BRITAIN - 1.5).abs() < f64::EPSILON);
}

#[test]
fn no_label_says_longer_than_a_year() {
    // Ours.
    assert_eq!(usable(LastDose::On(day(1, 1)), Some(MOST_DAYS + 1)), Err(TooLong { given: 366 }));
}
