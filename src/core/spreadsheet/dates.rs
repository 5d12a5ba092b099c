//! Dates as spreadsheets write them: `14-Mar-2022`, `2022-03-14 03:12`, `14.3.22`, `3/14/2022`, or a number of days.
//!
//! Whether the day or the month stands first in `3/4/2022` is judged over a whole table, and asked where nothing tells.

use chrono::{Days, NaiveDate, NaiveDateTime, NaiveTime};

use crate::book::DayOrder;

/// A date as far as it is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dated {
    /// A year alone.
    Year(u16),
    /// A day.
    Day(NaiveDate),
    /// An instant by the clock it was lived at.
    At(NaiveDateTime),
}

/// Why a date cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NoDate {
    /// It is none.
    #[error("no date")]
    Unknown,
    /// The day or the month may stand first.
    #[error("the day or the month may stand first")]
    TwoWays,
}

const MONTHS: [&str; 12] =
    ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/// A year of two digits is of this century below it, and of the last from it on (ours).
const CENTURY: u32 = 50;

/// The days of spreadsheets that are read as dates, from 1954 to 2099: counted from the end of 1899.
const SERIALS: std::ops::RangeInclusive<u64> = 20_000..=73_050;

/// Reads a date; without an order, one that can be read both ways is not guessed at.
///
/// # Errors
/// It is none, or can be read both ways.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::spreadsheet::{Dated, date};
/// let day = NaiveDate::from_ymd_opt(2022, 3, 14).map(Dated::Day);
/// for text in ["14-Mar-2022", "March 14, 2022", "14.3.22", "3/14/2022", "44634", "20220314"] {
///     assert_eq!(date(text, None).ok(), day, "{text}");
/// }
/// assert!(date("3/4/2022", None).is_err());
/// ```
pub fn date(text: &str, order: Option<DayOrder>) -> Result<Dated, NoDate> {
    let text = text.trim().trim_start_matches('\'');
    if let Some(dated) = number_alone(text) {
        return Ok(dated);
    }
    let (day, time) = parted(text);
    let day = in_three(day, order)?;
    match time {
        None => Ok(Dated::Day(day)),
        Some(time) => clock(time).map(|time| Dated::At(day.and_time(time))).ok_or(NoDate::Unknown),
    }
}

/// Returns what stands first in the dates of a table: the one order in which all of them can be read; nothing where both
/// or neither can.
pub fn order_of<'a>(texts: impl Iterator<Item = &'a str>) -> Option<DayOrder> {
    let (mut day_first, mut month_first) = (false, false);
    for text in texts {
        let (day, _) = parted(text.trim().trim_start_matches('\''));
        let Some((_, [one, two, _])) = numbers(day) else { continue };
        if let (Some(one), Some(two)) = (value(one), value(two)) {
            day_first |= one > 12 && one <= 31 && two <= 12;
            month_first |= two > 12 && two <= 31 && one <= 12;
        }
    }
    match (day_first, month_first) {
        (true, false) => Some(DayOrder::DayFirst),
        (false, true) => Some(DayOrder::MonthFirst),
        (true, true) | (false, false) => None,
    }
}

/// A year, a day in eight digits, or a spreadsheet's number of days.
fn number_alone(text: &str) -> Option<Dated> {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    if !digits(whole) || !(part.is_empty() || digits(part)) {
        return None;
    }
    let number: u64 = whole.parse().ok()?;
    match whole.len() {
        4 if part.is_empty() && (1900..=2100).contains(&number) => {
            u16::try_from(number).ok().map(Dated::Year)
        }
        8 if part.is_empty() => {
            let (year, month, day) =
                (whole[..4].parse().ok()?, whole[4..6].parse().ok()?, whole[6..].parse().ok()?);
            NaiveDate::from_ymd_opt(year, month, day).map(Dated::Day)
        }
        5 if SERIALS.contains(&number) => {
            let day = NaiveDate::from_ymd_opt(1899, 12, 30)?.checked_add_days(Days::new(number))?;
            let share: f64 = if part.is_empty() { 0.0 } else { format!("0.{part}").parse().ok()? };
            let minutes = (share * 1440.0).round();
            if minutes <= 0.0 {
                return Some(Dated::Day(day));
            }
            let minutes = (0..1440_u32).find(|minute| f64::from(*minute) >= minutes)?;
            Some(Dated::At(day.and_time(NaiveTime::from_hms_opt(minutes / 60, minutes % 60, 0)?)))
        }
        _ => None,
    }
}

/// Parts a day from the time behind it.
fn parted(text: &str) -> (&str, Option<&str>) {
    let Some(colon) = text.find(':') else { return (text, None) };
    match text[..colon].rfind([' ', 'T', 't', ',']) {
        Some(at) => (text[..at].trim_end_matches([' ', ',']), Some(text[at + 1..].trim())),
        None => (text, None),
    }
}

/// A time of day to the minute: `03:12`, `3:12:45`, `3:12 pm`.
fn clock(text: &str) -> Option<NaiveTime> {
    let small = text.to_lowercase();
    let (text, half) = match (small.strip_suffix("am"), small.strip_suffix("pm")) {
        (Some(text), _) => (text.trim(), Some(0)),
        (_, Some(text)) => (text.trim(), Some(12)),
        (None, None) => (small.trim_end_matches('z'), None),
    };
    let mut parts = text.split(':');
    let (hour, minute): (u32, u32) = (parts.next()?.trim().parse().ok()?, parts.next()?.trim().parse().ok()?);
    let second = parts.next().unwrap_or("0").split(['.', '+']).next()?.trim();
    let second: u32 = second.parse().ok()?;
    let hour = match half {
        Some(half) => (1..=12).contains(&hour).then_some(hour % 12 + half)?,
        None => hour,
    };
    NaiveTime::from_hms_opt(hour, minute, second)
}

/// A day in three parts, one of which may be the name of a month.
fn in_three(text: &str, order: Option<DayOrder>) -> Result<NaiveDate, NoDate> {
    if let Some((stroke, [one, two, three])) = numbers(text) {
        if one.len() == 4 {
            return day(one, two, three).ok_or(NoDate::Unknown);
        }
        let (by_day, by_month) = (day(three, two, one), day(three, one, two));
        return match (by_day, by_month) {
            (Some(by_day), _) if stroke == '.' => Ok(by_day),
            (Some(by_day), Some(by_month)) if by_day != by_month => match order {
                Some(DayOrder::DayFirst) => Ok(by_day),
                Some(DayOrder::MonthFirst) => Ok(by_month),
                None => Err(NoDate::TwoWays),
            },
            (one, other) => one.or(other).ok_or(NoDate::Unknown),
        };
    }
    let parts: Vec<&str> = text.split([' ', '-', '/', '.', ',']).filter(|part| !part.is_empty()).collect();
    let [one, two, three] = parts[..] else { return Err(NoDate::Unknown) };
    let named = match (month(one), month(two)) {
        (Some(month), None) => of(three, month, two),
        (None, Some(month)) if one.len() == 4 => of(one, month, three),
        (None, Some(month)) => of(three, month, one),
        (None, None) | (Some(_), Some(_)) => None,
    };
    named.ok_or(NoDate::Unknown)
}

/// Three numbers behind each other, and what stands between them.
fn numbers(text: &str) -> Option<(char, [&str; 3])> {
    ['-', '/', '.'].into_iter().find_map(|stroke| {
        let parts: Vec<&str> = text.split(stroke).map(str::trim).collect();
        let parts: [&str; 3] = parts.try_into().ok()?;
        parts.iter().all(|part| value(part).is_some()).then_some((stroke, parts))
    })
}

fn value(text: &str) -> Option<u32> {
    let digits = !text.is_empty() && text.len() <= 4 && text.bytes().all(|byte| byte.is_ascii_digit());
    digits.then(|| text.parse().ok())?
}

fn month(text: &str) -> Option<u32> {
    let small = text.to_lowercase();
    let letters = small.len() >= 3 && small.bytes().all(|byte| byte.is_ascii_alphabetic());
    let place = MONTHS.iter().position(|month| letters && small.starts_with(month))?;
    u32::try_from(place + 1).ok()
}

fn day(year: &str, month: &str, day: &str) -> Option<NaiveDate> {
    of(year, value(month)?, day)
}

fn of(year: &str, month: u32, day: &str) -> Option<NaiveDate> {
    let year = match (year.len(), value(year)?) {
        (4, year) if year >= 1900 => year,
        (2, year) if year < CENTURY => 2000 + year,
        (2, year) => 1900 + year,
        _ => return None,
    };
    NaiveDate::from_ymd_opt(i32::try_from(year).ok()?, month, value(day)?)
}
