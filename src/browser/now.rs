//! The clock on the phone: the instant, and the offset of the wall clock at that instant.

use yeanling_core::units::Moment;

/// Returns now, as this phone has it.
#[must_use]
pub fn now() -> Moment {
    let date = js_sys::Date::new_0();
    Moment::from_unix_milliseconds(whole(date.get_time()), offset(&date))
}

/// Returns the instant at which this phone's wall clock shows, or would show, so many milliseconds of local time.
///
/// Daylight saving is the phone's: the offset is the one that holds there and then.
#[must_use]
pub fn at_local(local: chrono::NaiveDateTime) -> Moment {
    use chrono::{Datelike as _, Timelike as _};
    let number = |value: u32| i32::try_from(value).unwrap_or_default();
    let year = u32::try_from(local.year()).unwrap_or(1900);
    let date = js_sys::Date::new_with_year_month_day_hr_min_sec(
        year,
        number(local.month0()),
        number(local.day()),
        number(local.hour()),
        number(local.minute()),
        number(local.second()),
    );
    Moment::from_unix_milliseconds(whole(date.get_time()), offset(&date))
}

/// Returns the same instant as this phone's wall clock shows it there and then, whatever daylight saving does between.
#[must_use]
pub fn here(moment: Moment) -> Moment {
    #[expect(clippy::cast_precision_loss, reason = "milliseconds of a date are far below 2^53")]
    let date = js_sys::Date::new(&(moment.as_unix_milliseconds() as f64).into());
    Moment::from_unix_milliseconds(moment.as_unix_milliseconds(), offset(&date))
}

#[expect(clippy::cast_possible_truncation, reason = "milliseconds of a date are whole and far below 2^53")]
const fn whole(milliseconds: f64) -> i64 {
    milliseconds as i64
}

/// Minutes east of UTC; the browser counts them west.
#[expect(clippy::cast_possible_truncation, reason = "an offset is whole minutes, at most a day")]
fn offset(date: &js_sys::Date) -> i16 {
    -(date.get_timezone_offset() as i16)
}
