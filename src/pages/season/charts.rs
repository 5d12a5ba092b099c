//! Two charts of the season ahead: births a night with their spread over what has happened, and pens in use.

use chrono::{NaiveDate, TimeDelta};
use yeanling_core::reckon::season::forecast::{Forecast, Night};
use yeanling_core::reckon::season::pens::Wanted;
use yeanling_words::common::{number, short_date};
use yeanling_words::season_forecast as words;

use crate::chart::{Bar, Chart, ChartLine, LineKind};

/// The days that a chart spans.
#[derive(Clone, Copy)]
struct Across {
    first: NaiveDate,
    days: f64,
}

impl Across {
    fn new(first: NaiveDate, last: NaiveDate) -> Self {
        let days = last.signed_duration_since(first).num_days().max(0) + 1;
        Self { first, days: f64::from(i32::try_from(days).unwrap_or(i32::MAX)) }
    }

    /// Returns where a day begins.
    fn at(self, date: NaiveDate) -> f64 {
        let days = date.signed_duration_since(self.first).num_days();
        f64::from(i32::try_from(days).unwrap_or(0)) / self.days
    }

    /// Returns where the middle of a day is.
    fn middle(self, date: NaiveDate) -> f64 {
        self.at(date) + 0.5 / self.days
    }

    fn bar(self, date: NaiveDate, head: f64) -> Bar {
        Bar { from: self.at(date), to: self.at(date) + 1.0 / self.days, head }
    }

    /// Returns the dates at both ends and in the middle.
    fn ticks(self, last: NaiveDate) -> Vec<(f64, String)> {
        let days = last.signed_duration_since(self.first).num_days();
        let middle = self.first + TimeDelta::days(days / 2);
        let mut ticks = vec![(0.0, short_date(self.first))];
        if days > 8 {
            ticks.push((self.middle(middle), short_date(middle)));
        }
        if days > 0 {
            ticks.push((1.0, short_date(last)));
        }
        ticks
    }
}

/// Returns labels at the side up to `most`, and the number at the head.
fn scale(most: f64) -> (Vec<(f64, String)>, f64) {
    let step =
        [0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0].into_iter().find(|step| most <= step * 4.0).unwrap_or(100.0);
    let steps = (most / step).ceil().max(1.0);
    let top = steps * step;
    let mut up = Vec::new();
    let mut figure = 0.0;
    while figure <= top + step / 2.0 {
        up.push((figure / top, number(figure, 1)));
        figure += step;
    }
    (up, top)
}

/// Draws the births expected each night with their spread, what has happened, and where tonight is.
pub(super) fn births(forecast: &Forecast, happened: &[(NaiveDate, u32)], today: NaiveDate) -> Option<Chart> {
    // Nights on which next to nothing comes would only push the others together.
    let told: Vec<_> = forecast.nights.iter().filter(|night| night.births.mean >= 0.005).collect();
    let first =
        happened.first().map(|(date, _)| *date).into_iter().chain(told.first().map(|night| night.date)).min();
    let last =
        told.last().map(|night| night.date).into_iter().chain(happened.last().map(|(date, _)| *date)).max();
    let (first, last) = (first?, last?);
    let across = Across::new(first, last);
    let most = told
        .iter()
        .map(|night| f64::from(night.births.high).max(night.births.mean))
        .chain(happened.iter().map(|(_, ewes)| f64::from(*ewes)))
        .fold(1.0, f64::max);
    let (up, top) = scale(most);
    let edge = |date: NaiveDate, night: &Night| {
        let (low, high) = (f64::from(night.births.low) / top, f64::from(night.births.high) / top);
        (across.at(date), low, high)
    };
    // In steps, as nights are.
    let band =
        told.iter().flat_map(|night| [edge(night.date, night), edge(night.date + TimeDelta::days(1), night)]);
    let was: Vec<(f64, f64)> =
        happened.iter().map(|(date, ewes)| (across.middle(*date), f64::from(*ewes) / top)).collect();
    let lines = if was.is_empty() {
        Vec::new()
    } else {
        vec![ChartLine { name: words::HAPPENED.to_owned(), kind: LineKind::Dots, places: was, steps: false }]
    };
    Some(Chart {
        label: words::nights_label(forecast),
        bars: told.iter().map(|night| across.bar(night.date, night.births.mean / top)).collect(),
        bars_name: words::EXPECTED.to_owned(),
        band: band.collect(),
        band_name: words::SPREAD.to_owned(),
        lines,
        across: across.ticks(last),
        up,
        now: (today >= first && today <= last).then(|| across.middle(today)),
        ..Chart::default()
    })
}

/// Draws the pens taken each night on the mean, and how many are enough 95 times in 100.
pub(super) fn pens(wanted: &Wanted) -> Option<Chart> {
    let told: Vec<_> = wanted.nights.iter().filter(|night| night.mean >= 0.01).collect();
    let (first, last) = (told.first()?, told.last()?);
    let across = Across::new(first.date, last.date);
    let most = told.iter().map(|night| f64::from(night.enough[1])).fold(1.0, f64::max);
    let (up, top) = scale(most);
    let enough =
        told.iter().map(|night| (across.middle(night.date), f64::from(night.enough[1]) / top)).collect();
    Some(Chart {
        label: words::pens_label(wanted.enough, wanted.busiest),
        bars: told.iter().map(|night| across.bar(night.date, night.mean / top)).collect(),
        bars_name: words::PENS_EXPECTED.to_owned(),
        lines: vec![ChartLine {
            name: words::PENS_ENOUGH.to_owned(),
            kind: LineKind::Wanted,
            places: enough,
            steps: true,
        }],
        across: across.ticks(last.date),
        up,
        ..Chart::default()
    })
}
