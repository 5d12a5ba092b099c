//! The days under a chart: where each stands, and labels at even steps of whole days or weeks.

use chrono::{NaiveDate, TimeDelta};
use yeanling_words::common::short_date;

use crate::chart::{Bar, ChartTick};

/// Steps between two labels, in days.
const STEPS: [i64; 9] = [1, 2, 3, 4, 7, 14, 28, 56, 112];
/// So many labels have room side by side.
const MOST: i64 = 4;

/// The days that a chart spans, both ends in it.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Days {
    first: NaiveDate,
    days: i64,
}

impl Days {
    /// Returns the days from the first to the last; one where the last comes before it.
    pub(crate) fn new(first: NaiveDate, last: NaiveDate) -> Self {
        Self { first, days: last.signed_duration_since(first).num_days().max(0) + 1 }
    }

    fn share(self, days: i64) -> f64 {
        let float = |days: i64| f64::from(i32::try_from(days).unwrap_or(i32::MAX));
        float(days) / float(self.days)
    }

    /// Returns where a day begins.
    pub(crate) fn at(self, date: NaiveDate) -> f64 {
        self.share(date.signed_duration_since(self.first).num_days())
    }

    /// Returns where the middle of a day is.
    pub(crate) fn middle(self, date: NaiveDate) -> f64 {
        self.at(date) + self.share(1) / 2.0
    }

    /// Returns a bar over a whole day.
    pub(crate) fn bar(self, date: NaiveDate, head: f64) -> Bar {
        Bar { from: self.at(date), to: self.at(date) + self.share(1), head }
    }

    /// Returns the labels, at most four, at even steps from the first day on.
    pub(crate) fn ticks(self) -> Vec<ChartTick> {
        let fits = |step: &i64| (self.days - 1) / step < MOST;
        let step = STEPS.into_iter().find(fits).unwrap_or(self.days);
        let days = (0..MOST).map(|place| place * step).take_while(|day| *day < self.days);
        days.map(|day| self.first + TimeDelta::days(day))
            .map(|date| (self.middle(date), short_date(date)))
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(days: i64, labels: &[&str]) {
        let first = NaiveDate::from_ymd_opt(2027, 2, 25).expect("a day");
        let ticks = Days::new(first, first + TimeDelta::days(days - 1)).ticks();
        let texts: Vec<&str> = ticks.iter().map(|(_, text)| text.as_str()).collect();
        assert_eq!(texts, labels, "{days}");
    }

    #[test]
    fn labels_are_at_even_steps_of_days_or_weeks() {
        check(1, &["25 Feb"]);
        check(4, &["25 Feb", "26 Feb", "27 Feb", "28 Feb"]);
        check(7, &["25 Feb", "27 Feb", "1 Mar", "3 Mar"]);
        check(24, &["25 Feb", "4 Mar", "11 Mar", "18 Mar"]);
        check(60, &["25 Feb", "25 Mar", "22 Apr"]);
    }
}
