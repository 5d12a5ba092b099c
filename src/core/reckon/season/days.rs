//! Whole days of the calendar, and numbers cut to whole ones.

use crate::units::{NaiveDate, TimeDelta};

/// Returns the whole number next to zero of a number; the nearest that can be written of one too large, 0 of none.
#[allow(clippy::cast_possible_truncation, reason = "a cast from a float stays within the integer's range")]
pub(super) fn whole(number: f64) -> i64 {
    number as i64
}

/// Returns a whole number as a float; exact for all that is counted here.
#[allow(clippy::cast_precision_loss, reason = "days and ewes stay far under 2^53")]
pub(super) fn float(number: i64) -> f64 {
    number as f64
}

/// Returns a count as a float; exact for all that is counted here.
#[allow(clippy::cast_precision_loss, reason = "nights and ewes stay far under 2^53")]
pub(super) fn counted(number: usize) -> f64 {
    number as f64
}

/// Returns the date so many days later, the last that can be written if there is none.
pub(super) fn later(date: NaiveDate, days: i64) -> NaiveDate {
    let end = if days < 0 { NaiveDate::MIN } else { NaiveDate::MAX };
    TimeDelta::try_days(days).and_then(|span| date.checked_add_signed(span)).unwrap_or(end)
}

/// Returns the days from one date to another.
pub(super) fn between(from: NaiveDate, to: NaiveDate) -> i64 {
    to.signed_duration_since(from).num_days()
}
