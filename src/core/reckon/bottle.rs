//! How much a bottle lamb takes by age, never over 200 ml/kg of its present weight in a day.
//!
//! Both tables count days of life: day 1 is the first 24 h, so that a table's day 2 begins where colostrum ends and
//! its day 35 ends where weaning begins.

use super::PerKilogram;
use super::cited::{VET_SUPPLIER, ours, seen};
use super::colostrum::ONE_FEED;
use super::feeds::{ASSUMED, FIRST_WEEK};
use crate::settings::BottleTable;
use crate::source::Source;
use crate::units::{Mass, NaiveTime, OutOfBounds, TimeDelta, Volume};

/// The most in a day for the present weight (the vet supplier of table one).
pub const MOST_IN_A_DAY: PerKilogram = PerKilogram::from_milliliters(200.0);

const US_HANDBOOK: Source = seen("US sheep handbook", "Bottle feeding by age", None, "");

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    VET_SUPPLIER,
    US_HANDBOOK,
    ours("The middle of the row; the largest feed in week one is 50 ml/kg"),
    ours("Day 1 is the first 24 h"),
    ours("Feeds are spread evenly over 24 h"),
    ours("For \"up to 16 fl oz\" the range starts at 8, the most of the row before"),
];

/// One printed row of a table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// The first day of life it is for; 1 is the first 24 h.
    pub first_day: u16,
    /// The last day of life it is for.
    pub last_day: u16,
    /// The least at one feed.
    pub least: Volume,
    /// The most at one feed.
    pub most: Volume,
    /// Feeds a day.
    pub feeds: u8,
    /// Whether it is colostrum; ewe milk or lamb milk replacer otherwise.
    pub colostrum: bool,
}

const fn milliliters(first_day: u16, last_day: u16, least: f64, most: f64, feeds: u8) -> Row {
    Row {
        first_day,
        last_day,
        least: Volume::from_milliliters(least),
        most: Volume::from_milliliters(most),
        feeds,
        colostrum: false,
    }
}

const fn ounces(first_day: u16, last_day: u16, least: f64, most: f64, feeds: u8, colostrum: bool) -> Row {
    Row {
        first_day,
        last_day,
        least: Volume::from_fluid_ounces(least),
        most: Volume::from_fluid_ounces(most),
        feeds,
        colostrum,
    }
}

/// The vet supplier's table, for a mix of 20% dry matter.
pub const VET_SUPPLIER_ROWS: &[Row] = &[
    milliliters(2, 7, 100.0, 150.0, 5),
    milliliters(8, 14, 180.0, 250.0, 4),
    milliliters(15, 21, 360.0, 500.0, 3),
    milliliters(22, 28, 500.0, 700.0, 3),
    milliliters(29, 35, 750.0, 1000.0, 2),
];

/// The US handbook's table, printed in fluid ounces. Its last row says only "up to 16"; see `SOURCES`.
pub const US_HANDBOOK_ROWS: &[Row] = &[
    ounces(1, 2, 2.0, 3.0, 6, true),
    ounces(3, 4, 3.0, 5.0, 6, false),
    ounces(5, 14, 4.0, 6.0, 4, false),
    ounces(15, 21, 6.0, 8.0, 4, false),
    ounces(22, 35, 8.0, 16.0, 3, false),
];

/// Returns the rows of a table, youngest first.
#[must_use]
pub const fn rows(table: BottleTable) -> &'static [Row] {
    match table {
        BottleTable::VetSupplier => VET_SUPPLIER_ROWS,
        BottleTable::UsHandbook => US_HANDBOOK_ROWS,
    }
}

/// What one lamb takes on one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Day {
    /// The table it comes from.
    pub table: BottleTable,
    /// Whole days since birth; the table's day is one more.
    pub days_old: u16,
    /// The present weight it was worked out for, if known.
    pub weight: Option<Mass>,
    /// Whether it is colostrum; ewe milk or lamb milk replacer otherwise.
    pub colostrum: bool,
    /// Feeds a day.
    pub feeds: u8,
    /// The least at one feed, as printed.
    pub least: Volume,
    /// The most at one feed, as printed.
    pub most: Volume,
    /// The most in the day for this weight; none if the weight is unknown.
    pub cap: Option<Volume>,
    /// One feed: the middle of the row, less if a cap asks for it.
    pub per_feed: Volume,
    /// All feeds of the day together.
    pub day_total: Volume,
    /// Whether a cap made the feed smaller.
    pub capped: bool,
}

/// Why a table has no answer.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NoRow {
    /// The lamb is younger than the table: colostrum rules.
    #[error("day {day} is before day {first_day} of {table:?}")]
    TooYoung {
        /// The table.
        table: BottleTable,
        /// The lamb's day of life; 1 is the first 24 h.
        day: u16,
        /// The table's first day of life.
        first_day: u16,
    },
    /// The lamb is older than the table: time to wean.
    #[error("day {day} is after day {last_day} of {table:?}")]
    TooOld {
        /// The table.
        table: BottleTable,
        /// The lamb's day of life.
        day: u16,
        /// The table's last day of life.
        last_day: u16,
    },
    /// The present weight is none of a lamb on the bottle.
    #[error("not a weight: {0}")]
    NotAWeight(OutOfBounds<Mass>),
}

/// Returns what a bottle lamb takes on this day of its life.
///
/// `weight` is the **present** weight: a birth weight weeks later would starve the lamb, so give none rather than an
/// old one. One feed is the middle of the row, but never over 200 ml/kg ÷ feeds, and in the first 7 days never over
/// 50 ml/kg (ours); for that last cap an unknown weight counts as `feeds::ASSUMED`.
///
/// # Errors
/// The age lies outside the table, or the weight outside `Mass::ON_THE_BOTTLE`.
///
/// ```
/// use yeanling_core::settings::BottleTable;
/// use yeanling_core::reckon::bottle::day;
/// use yeanling_core::units::{Mass, TimeDelta, Volume};
/// let lamb = Some(Mass::from_kilograms(3.0));
/// let day = day(TimeDelta::days(9), lamb, BottleTable::VetSupplier).unwrap();
/// assert_eq!((day.feeds, day.per_feed), (4, Volume::from_milliliters(150.0)));
/// assert_eq!(day.day_total, Volume::from_milliliters(600.0));
/// ```
pub fn day(age: TimeDelta, weight: Option<Mass>, table: BottleTable) -> Result<Day, NoRow> {
    let weight = weight.map(|weight| Mass::ON_THE_BOTTLE.check(weight)).transpose();
    let weight = weight.map_err(NoRow::NotAWeight)?;
    let days_old = u16::try_from(age.num_days().max(0)).unwrap_or(u16::MAX);
    let row = row(days_old.saturating_add(1), table)?;

    let feeds = f64::from(row.feeds);
    let middle = (row.least.as_milliliters() + row.most.as_milliliters()) / 2.0;
    let cap = weight.map(|weight| MOST_IN_A_DAY.of(weight));
    let share = cap.map_or(f64::INFINITY, |cap| cap.as_milliliters() / feeds);
    let single = if age < FIRST_WEEK {
        ONE_FEED.of(weight.unwrap_or(ASSUMED)).as_milliliters()
    } else {
        f64::INFINITY
    };
    let per_feed = middle.min(share).min(single);
    Ok(Day {
        table,
        days_old,
        weight,
        colostrum: row.colostrum,
        feeds: row.feeds,
        least: row.least,
        most: row.most,
        cap,
        per_feed: Volume::from_milliliters(per_feed),
        day_total: Volume::from_milliliters(per_feed * feeds),
        capped: per_feed < middle,
    })
}

fn row(day: u16, table: BottleTable) -> Result<&'static Row, NoRow> {
    let rows = rows(table);
    if let Some(row) = rows.iter().find(|row| (row.first_day..=row.last_day).contains(&day)) {
        return Ok(row);
    }
    let first_day = rows.first().map_or(0, |row| row.first_day);
    let last_day = rows.last().map_or(0, |row| row.last_day);
    Err(if day < first_day {
        NoRow::TooYoung { table, day, first_day }
    } else {
        NoRow::TooOld { table, day, last_day }
    })
}

/// Returns the times of day of so many feeds, spread evenly over 24 h from the first; in the order of feeding.
///
/// Minutes are cut off: five feeds from 06:00 are at 06:00, 10:48, 15:36, 20:24 and 01:12 (ours, arithmetic).
///
/// ```
/// use chrono::NaiveTime;
/// use yeanling_core::reckon::bottle::times;
/// let six = NaiveTime::from_hms_opt(6, 0, 0).unwrap();
/// let at: Vec<String> = times(4, six).iter().map(|time| time.format("%H:%M").to_string()).collect();
/// assert_eq!(at, ["06:00", "12:00", "18:00", "00:00"]);
/// ```
#[must_use]
pub fn times(feeds: u8, first: NaiveTime) -> Vec<NaiveTime> {
    let minutes = |feed: u8| 24 * 60 * i64::from(feed) / i64::from(feeds.max(1));
    (0..feeds).map(|feed| first.overflowing_add_signed(TimeDelta::minutes(minutes(feed))).0).collect()
}
