//! When: an instant and the local offset at which it was lived, so that 03:12 stays 03:12 for whoever reads it later.

use std::fmt;

use chrono::{DateTime, FixedOffset, NaiveDateTime, SecondsFormat, TimeDelta};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

/// An instant, to the millisecond, with the offset from UTC that the clock on the wall had.
///
/// Order is by instant first. JSON form is RFC 3339 with milliseconds and a numeric offset.
///
/// ```
/// use yeanling_core::units::Moment;
/// let moment: Moment = "2026-02-25T03:12:00.000-05:00".parse().unwrap();
/// assert_eq!(moment.to_string(), "2026-02-25T03:12:00.000-05:00");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Moment {
    utc_milliseconds: i64,
    offset_minutes: i16,
}

/// What is wrong with an instant.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{given:?} is not a date and time such as 2026-02-25T03:12:00.000+01:00")]
pub struct MomentError {
    /// What was given.
    pub given: String,
}

/// The first and the last instant that can be kept: 1900-01-01 and 9999-12-31, both UTC.
const EARLIEST: i64 = -2_208_988_800_000;
const LATEST: i64 = 253_402_214_400_000;

impl Moment {
    /// Returns the instant so many milliseconds after 1970-01-01 UTC, lived at an offset of so many minutes east.
    ///
    /// An instant before 1900 or after 9999 becomes the nearest that can be kept; an offset over 18 h likewise.
    #[must_use]
    pub fn from_unix_milliseconds(milliseconds: i64, offset_minutes: i16) -> Self {
        Self {
            utc_milliseconds: milliseconds.clamp(EARLIEST, LATEST),
            offset_minutes: offset_minutes.clamp(-18 * 60, 18 * 60),
        }
    }

    /// Returns the instant at which a wall clock at this offset shows `local`.
    #[must_use]
    pub fn from_local(local: NaiveDateTime, offset_minutes: i16) -> Self {
        let utc = local.and_utc().timestamp_millis() - i64::from(offset_minutes) * 60_000;
        Self::from_unix_milliseconds(utc, offset_minutes)
    }

    /// Returns milliseconds since 1970-01-01 UTC.
    #[must_use]
    pub const fn as_unix_milliseconds(self) -> i64 {
        self.utc_milliseconds
    }

    /// Returns the beginning of its minute, as a clock without seconds shows it.
    ///
    /// ```
    /// use yeanling_core::units::Moment;
    /// let moment: Moment = "2026-02-25T03:12:59.999-05:00".parse().unwrap();
    /// assert_eq!(moment.minute().to_string(), "2026-02-25T03:12:00.000-05:00");
    /// ```
    #[must_use]
    pub const fn minute(self) -> Self {
        let milliseconds = self.utc_milliseconds - self.utc_milliseconds.rem_euclid(60_000);
        Self { utc_milliseconds: milliseconds, ..self }
    }

    /// Returns the offset from UTC in minutes, east positive.
    #[must_use]
    pub const fn offset_minutes(self) -> i16 {
        self.offset_minutes
    }

    /// Returns what the clock on the wall showed.
    #[must_use]
    pub fn local(self) -> NaiveDateTime {
        let shown = self.utc_milliseconds + i64::from(self.offset_minutes) * 60_000;
        DateTime::from_timestamp_millis(shown).unwrap_or_default().naive_utc()
    }

    /// Returns the time that has passed since `earlier`; negative if it lies ahead.
    #[must_use]
    pub fn since(self, earlier: Self) -> TimeDelta {
        TimeDelta::milliseconds(self.utc_milliseconds - earlier.utc_milliseconds)
    }

    fn to_chrono(self) -> DateTime<FixedOffset> {
        let offset = FixedOffset::east_opt(i32::from(self.offset_minutes) * 60);
        let utc = DateTime::from_timestamp_millis(self.utc_milliseconds).unwrap_or_default();
        utc.with_timezone(&offset.unwrap_or_else(|| chrono::Offset::fix(&chrono::Utc)))
    }
}

impl std::ops::Add<TimeDelta> for Moment {
    type Output = Self;

    fn add(self, span: TimeDelta) -> Self {
        let milliseconds = self.utc_milliseconds.saturating_add(span.num_milliseconds());
        Self::from_unix_milliseconds(milliseconds, self.offset_minutes)
    }
}

impl std::ops::Sub<TimeDelta> for Moment {
    type Output = Self;

    fn sub(self, span: TimeDelta) -> Self {
        self + -span
    }
}

impl fmt::Display for Moment {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.to_chrono().to_rfc3339_opts(SecondsFormat::Millis, false))
    }
}

impl std::str::FromStr for Moment {
    type Err = MomentError;

    fn from_str(text: &str) -> Result<Self, MomentError> {
        let wrong = || MomentError { given: text.chars().take(60).collect() };
        let read = DateTime::parse_from_rfc3339(text).map_err(|_| wrong())?;
        let seconds = read.offset().local_minus_utc();
        let milliseconds = read.timestamp_millis();
        if seconds % 60 != 0 || !(EARLIEST..=LATEST).contains(&milliseconds) {
            return Err(wrong());
        }
        let offset = i16::try_from(seconds / 60).map_err(|_| wrong())?;
        if offset.abs() > 18 * 60 {
            return Err(wrong());
        }
        Ok(Self { utc_milliseconds: milliseconds, offset_minutes: offset })
    }
}

impl Serialize for Moment {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Moment {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = std::borrow::Cow::<str>::deserialize(deserializer)?;
        text.parse().map_err(de::Error::custom)
    }
}
