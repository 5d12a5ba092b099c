//! When lambs are lost: by the spans of age in which causes differ.

use super::cited::{common, ours};
use crate::source::Source;
use crate::units::TimeDelta;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    common(
        "Losses are counted at birth, by the first and second day, the first week, the first four, and to weaning",
    ),
    ours("A span holds its beginning and not its end"),
];

/// A span of age.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Span {
    /// Born dead.
    AtBirth,
    /// Under 24 hours.
    FirstDay,
    /// 24 to under 48 hours.
    SecondDay,
    /// Two to under seven days.
    FirstWeek,
    /// Seven to under 28 days.
    FourWeeks,
    /// From 28 days to weaning.
    ToWeaning,
}

impl Span {
    /// Every span, the earliest first.
    pub const ALL: [Self; 6] =
        [Self::AtBirth, Self::FirstDay, Self::SecondDay, Self::FirstWeek, Self::FourWeeks, Self::ToWeaning];

    /// Returns the span of a lamb born alive that died at this age; a negative age counts as the first day.
    ///
    /// ```
    /// use yeanling_core::reckon::losses::Span;
    /// use yeanling_core::units::TimeDelta;
    /// assert_eq!(Span::of(TimeDelta::hours(24)), Span::SecondDay);
    /// ```
    #[must_use]
    pub fn of(age: TimeDelta) -> Self {
        match age.num_hours() {
            ..24 => Self::FirstDay,
            24..48 => Self::SecondDay,
            48..168 => Self::FirstWeek,
            168..672 => Self::FourWeeks,
            672.. => Self::ToWeaning,
        }
    }
}
