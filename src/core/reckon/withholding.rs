//! Until when meat or milk of a treated animal may not be used.
//!
//! With the hour known it is 24 hours a day from the last dose. With the date alone the day of the last dose is day 0
//! and the whole of the last day counts: the first usable day is the date + the period + 1. What is not known blocks,
//! it is never nothing. Of several treatments the latest end stands. The label and the vet come first.

use super::cited::{ours, seen};
use crate::source::Source;
use crate::units::{Moment, TimeDelta};
use chrono::{Days, NaiveDate};

/// Longer than any label (ours); more is a slip of the pen.
pub const MOST_DAYS: u16 = 365;

/// Off the label in Great Britain a period is at least the label's times this, and at least as the vet says.
pub const OFF_LABEL_BRITAIN: f64 = 1.5;

/// How long records of use off the label are kept in the United States, in years.
pub const US_RECORDS_YEARS: u8 = 2;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    seen(
        "Finnish Medicines Agency",
        "A six-day period: usable on the seventh day after the last dose",
        None,
        "",
    ),
    seen(
        "UK Veterinary Medicines Directorate",
        "Off label: at least half as long again, and as the vet says",
        None,
        "",
    ),
    seen("US rules", "Off label only on a vet’s order; records for two years", None, ""),
    ours("With the hour known: the last dose and 24 hours a day; what is not known blocks"),
];

/// When the last dose was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LastDose {
    /// At this instant.
    At(Moment),
    /// On this day; the hour is not known.
    On(NaiveDate),
}

/// From when something may be used again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Usable {
    /// From this instant on.
    From(Moment),
    /// From the start of this day on.
    FromDay(NaiveDate),
    /// Nobody knows: not before the label or the vet was asked.
    Unknown,
}

impl Usable {
    /// Says whether it may be used at this instant.
    #[must_use]
    pub fn at(self, now: Moment) -> bool {
        match self {
            Self::From(from) => now >= from,
            Self::FromDay(day) => now.local().date() >= day,
            Self::Unknown => false,
        }
    }

    /// Returns the later of two ends; not knowing is later than any.
    #[must_use]
    pub fn later(self, other: Self) -> Self {
        match (self, other) {
            (Self::Unknown, _) | (_, Self::Unknown) => Self::Unknown,
            (Self::From(one), Self::From(two)) => Self::From(one.max(two)),
            (Self::FromDay(one), Self::FromDay(two)) => Self::FromDay(one.max(two)),
            // The day begins at its midnight; an instant on that day or after it is the later end.
            (Self::From(at), Self::FromDay(day)) | (Self::FromDay(day), Self::From(at)) => {
                if at.local().date() >= day { Self::From(at) } else { Self::FromDay(day) }
            }
        }
    }
}

/// A period that no label has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooLong {
    /// What was given, in days.
    pub given: u16,
}

/// Returns from when it may be used, `days` after the last dose; unknown days block.
///
/// # Errors
/// More than `MOST_DAYS`.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::withholding::{LastDose, Usable, usable};
/// let day = |day| NaiveDate::from_ymd_opt(2026, 3, day).unwrap();
/// assert_eq!(usable(LastDose::On(day(1)), Some(6)), Ok(Usable::FromDay(day(8))));
/// assert_eq!(usable(LastDose::On(day(1)), None), Ok(Usable::Unknown));
/// ```
pub fn usable(last: LastDose, days: Option<u16>) -> Result<Usable, TooLong> {
    let Some(days) = days else { return Ok(Usable::Unknown) };
    if days > MOST_DAYS {
        return Err(TooLong { given: days });
    }
    Ok(match last {
        LastDose::At(at) => Usable::From(at + TimeDelta::days(days.into())),
        LastDose::On(day) => match day.checked_add_days(Days::new(u64::from(days) + 1)) {
            Some(day) => Usable::FromDay(day),
            None => Usable::Unknown,
        },
    })
}

/// Returns the latest of several ends; none when nothing was given.
#[must_use]
pub fn latest(ends: impl IntoIterator<Item = Usable>) -> Option<Usable> {
    ends.into_iter().reduce(Usable::later)
}

/// Returns the least days off the label in Great Britain: the label's and half as many again, rounded up.
#[must_use]
pub const fn off_label_britain(label_days: u16) -> u16 {
    label_days.saturating_add(label_days.div_ceil(2))
}
