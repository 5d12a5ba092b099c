//! Times and dates as people read them: every one that stands on a screen is formed here.
//!
//! How a farm writes them, and which of two units it reads first, is one [`Way`] for all of its sentences. It is not handed from sentence to sentence: whoever puts a
//! page together says it once, with [`in_way`], and what is said inside is said so.

use std::cell::Cell;

use chrono::{Datelike, NaiveDate, NaiveDateTime, NaiveTime, Timelike};
use yeanling_core::units::{Moment, System};

/// How times and dates are written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Way {
    /// How many hours the clock counts to.
    pub hours: Hours,
    /// What of a date comes first.
    pub dates: Dates,
    /// Which of two units comes first.
    pub system: System,
}

/// How many hours a clock counts to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Hours {
    /// Twelve, twice a day: "6:41 am".
    Twelve,
    /// Twenty-four: "06:41".
    #[default]
    TwentyFour,
}

/// What of a date comes first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Dates {
    /// The day: "14 Mar 2026".
    #[default]
    DayFirst,
    /// The month: "Mar 14, 2026".
    MonthFirst,
}

thread_local! {
    static WAY: Cell<Way> = const { Cell::new(Way {
        hours: Hours::TwentyFour,
        dates: Dates::DayFirst,
        system: System::Metric,
    }) };
}

/// Says what `say` says in this way, and goes on as before.
pub fn in_way<T>(way: Way, say: impl FnOnce() -> T) -> T {
    /// Gives the way back, also when what is said breaks.
    struct Before(Way);
    impl Drop for Before {
        fn drop(&mut self) {
            WAY.set(self.0);
        }
    }
    let _before = Before(WAY.replace(way));
    say()
}

/// Returns the units that come first where a quantity is told in both.
pub fn system() -> System {
    WAY.get().system
}

/// Returns what the clock on the wall showed: "03:12", "3:12 am".
pub fn clock(moment: Moment) -> String {
    time_of_day(moment.local().time())
}

/// Returns a time of any day: "03:12", "3:12 am".
pub fn time_of_day(time: NaiveTime) -> String {
    match WAY.get().hours {
        Hours::TwentyFour => format!("{:02}:{:02}", time.hour(), time.minute()),
        Hours::Twelve => {
            let (after_noon, hour) = time.hour12();
            // It is one word: no line ends before "am".
            format!("{hour}:{:02}\u{a0}{}", time.minute(), if after_noon { "pm" } else { "am" })
        }
    }
}

/// Returns the same where there is room for the figures alone, as on a strip of time whose whole is told beside it: "03:12",
/// "3:12".
pub fn clock_figures(moment: Moment) -> String {
    clock(moment).split('\u{a0}').next().unwrap_or_default().to_owned()
}

/// Returns when something was or will be, as briefly as it is clear from now: "03:12", "yesterday 23:40",
/// "tomorrow 06:00", "12 Mar 03:12", "12 Mar 2025 03:12".
pub fn day_and_clock(moment: Moment, now: Moment) -> String {
    let (day, today) = (moment.local().date(), now.local().date());
    let clock = clock(moment);
    if day == today {
        clock
    } else if Some(day) == today.pred_opt() {
        format!("yesterday {clock}")
    } else if Some(day) == today.succ_opt() {
        format!("tomorrow {clock}")
    } else if day.year() == today.year() {
        format!("{} {clock}", short_date(day))
    } else {
        format!("{} {clock}", long_date(day))
    }
}

/// Returns a date: "12 Mar 2026", "Mar 12, 2026".
pub fn date(moment: Moment) -> String {
    long_date(moment.local().date())
}

/// Returns a day: "12 Mar 2026", "Mar 12, 2026".
pub fn long_date(day: NaiveDate) -> String {
    match WAY.get().dates {
        Dates::DayFirst => format!("{} {}", short_date(day), day.year()),
        Dates::MonthFirst => format!("{}, {}", short_date(day), day.year()),
    }
}

/// Returns a day without its year: "25 Feb", "Feb 25".
pub fn short_date(day: NaiveDate) -> String {
    let (month, day) = (month(day), day.day());
    match WAY.get().dates {
        Dates::DayFirst => format!("{day} {month}"),
        Dates::MonthFirst => format!("{month} {day}"),
    }
}

/// Returns the month of a day: "Apr".
pub fn month(day: NaiveDate) -> &'static str {
    const MONTHS: [&str; 12] =
        ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
    usize::try_from(day.month0()).ok().and_then(|month| MONTHS.get(month)).copied().unwrap_or_default()
}

/// Returns a day and a time as a date-and-time field holds them, whatever the way: "2026-02-25T03:12".
pub fn field_time(moment: Moment) -> String {
    let local = moment.local();
    let (day, hour, minute) = (local.date(), local.hour(), local.minute());
    format!("{:04}-{:02}-{:02}T{hour:02}:{minute:02}", day.year(), day.month(), day.day())
}

/// Returns the day and the time that a date-and-time field holds; browsers add seconds or leave them out.
pub fn read_field_time(typed: &str) -> Option<NaiveDateTime> {
    let (day, time) = typed.trim().split_once('T')?;
    let mut parts = day.split('-');
    let year = parts.next()?.parse().ok()?;
    let (month, day) = (parts.next()?.parse().ok()?, parts.next()?.parse().ok()?);
    let day = NaiveDate::from_ymd_opt(year, month, day).filter(|_| parts.next().is_none())?;
    Some(day.and_time(read_field_clock(time)?))
}

/// Returns the day that a date field holds: "2026-02-25".
pub fn read_field_day(typed: &str) -> Option<NaiveDate> {
    read_field_time(&format!("{}T00:00", typed.trim())).map(|at| at.date())
}

/// Returns the time that a time field holds; browsers add seconds or leave them out.
pub fn read_field_clock(typed: &str) -> Option<NaiveTime> {
    let mut parts = typed.trim().split(':');
    let (hour, minute) = (parts.next()?.parse().ok()?, parts.next()?.parse().ok()?);
    let second: f64 = parts.next().map_or(Some(0.0), |second| second.parse().ok())?;
    // A second's fraction is nothing a shepherd has typed.
    let second = (0..60).rev().find(|whole| f64::from(*whole) <= second)?;
    NaiveTime::from_hms_opt(hour, minute, second).filter(|_| parts.next().is_none())
}

#[cfg(test)]
mod tests {
    use super::*;

    const AMERICAN: Way = Way { hours: Hours::Twelve, dates: Dates::MonthFirst, system: System::Us };

    fn moment(text: &str) -> Moment {
        text.parse().expect("a moment")
    }

    #[track_caller]
    fn check(got: String, expected: &str) {
        assert_eq!(got.replace('\u{a0}', " "), expected);
    }

    #[test]
    fn a_field_of_day_and_time_is_read_as_it_is_written() {
        let moment = moment("2026-02-25T03:12:40.000-05:00");
        for way in [Way::default(), AMERICAN] {
            assert_eq!(in_way(way, || field_time(moment)), "2026-02-25T03:12");
        }
        let read = |typed| read_field_time(typed).map(|local| local.to_string());
        assert_eq!(read("2026-02-25T03:12"), Some("2026-02-25 03:12:00".to_owned()));
        assert_eq!(read("2026-02-25T03:12:59.5"), Some("2026-02-25 03:12:59".to_owned()));
        for typed in [
            "",
            "T",
            "2026-02-30T03:12",
            "2026-02-25",
            "2026-02-25T24:00",
            "25.2.2026T03:12",
            "2026-02-25T03",
        ] {
            assert_eq!(read(typed), None, "{typed}");
        }
    }

    #[test]
    fn a_moment_is_told_as_briefly_as_it_is_clear() {
        let now = moment("2026-03-14T03:12:45+01:00");
        let told = |text| day_and_clock(moment(text), now);
        check(clock(now), "03:12");
        check(date(now), "14 Mar 2026");
        check(told("2026-03-14T23:59:00+01:00"), "23:59");
        check(told("2026-03-13T23:40:00+01:00"), "yesterday 23:40");
        check(told("2026-03-15T06:00:00+01:00"), "tomorrow 06:00");
        check(told("2026-03-12T03:12:00+01:00"), "12 Mar 03:12");
        check(told("2025-03-12T03:12:00+01:00"), "12 Mar 2025 03:12");
    }

    #[test]
    fn the_same_is_told_in_the_american_way() {
        let now = moment("2026-03-14T03:12:45+01:00");
        let told = |text| in_way(AMERICAN, || day_and_clock(moment(text), now));
        check(in_way(AMERICAN, || clock(now)), "3:12 am");
        check(in_way(AMERICAN, || clock_figures(now)), "3:12");
        check(in_way(AMERICAN, || date(now)), "Mar 14, 2026");
        check(told("2026-03-14T23:59:00+01:00"), "11:59 pm");
        check(told("2026-03-13T12:40:00+01:00"), "yesterday 12:40 pm");
        check(told("2026-03-15T00:00:00+01:00"), "tomorrow 12:00 am");
        check(told("2026-03-12T13:12:00+01:00"), "Mar 12 1:12 pm");
        check(told("2025-03-12T03:12:00+01:00"), "Mar 12, 2025 3:12 am");
    }

    #[test]
    fn a_way_ends_where_it_was_said_also_when_that_breaks() {
        let now = moment("2026-03-14T15:12:45+01:00");
        let broke = std::panic::catch_unwind(|| in_way(AMERICAN, || panic!("it breaks")));
        assert!(broke.is_err());
        check(clock(now), "15:12");
        let inside = in_way(AMERICAN, || (in_way(Way::default(), || clock(now)), clock(now)));
        assert_eq!(inside, ("15:12".to_owned(), "3:12\u{a0}pm".to_owned()));
    }

    #[test]
    fn a_moment_keeps_the_wall_clock_it_was_lived_at() {
        check(clock(moment("2026-02-25T03:12:00-05:00")), "03:12");
    }
}
