//! Two charts of the season ahead: lambings each night with their spread over what has happened, and pens in use.

use chrono::{NaiveDate, TimeDelta};
use yeanling_core::reckon::season::forecast::{Forecast, Night};
use yeanling_core::reckon::season::pens::Wanted;
use yeanling_words::season_forecast as words;

use crate::chart::{Chart, ChartLine, ChartStart, LineKind, scale};
use crate::chart_days::Days;

/// When the first lambs of a group are possible.
pub(super) struct Start {
    /// The group's name.
    pub(super) group: String,
    /// The day.
    pub(super) on: NaiveDate,
}

/// Draws the lambings expected each night with their spread, what has happened, where each group starts, and where tonight is.
pub(super) fn births(
    forecast: &Forecast,
    happened: &[(NaiveDate, u32)],
    starts: &[Start],
    today: NaiveDate,
) -> Option<Chart> {
    // Nights on which next to nothing comes would only push the others together.
    let told: Vec<_> = forecast.nights.iter().filter(|night| night.births.mean >= 0.005).collect();
    let first =
        happened.first().map(|(date, _)| *date).into_iter().chain(told.first().map(|night| night.date)).min();
    let last =
        told.last().map(|night| night.date).into_iter().chain(happened.last().map(|(date, _)| *date)).max();
    let (first, last) = (first?, last?);
    // A group that starts after all of it is another season's.
    let starts: Vec<&Start> = starts.iter().filter(|start| start.on <= last).collect();
    let first = starts.iter().map(|start| start.on).chain([first]).min()?;
    let across = Days::new(first, last);
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
        unit: words::LAMBINGS.to_owned(),
        starts: starts.into_iter().map(|start| begins(across, start)).collect(),
        across: across.ticks(),
        up,
        now: (today >= first && today <= last).then(|| across.middle(today)),
        ..Chart::default()
    })
}

fn begins(across: Days, start: &Start) -> ChartStart {
    ChartStart { at: across.at(start.on), name: words::starts(&start.group, start.on) }
}

/// Draws the pens taken each night on the mean, and how many are enough 95 times in 100.
pub(super) fn pens(wanted: &Wanted) -> Option<Chart> {
    let told: Vec<_> = wanted.nights.iter().filter(|night| night.mean >= 0.01).collect();
    let (first, last) = (told.first()?, told.last()?);
    let across = Days::new(first.date, last.date);
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
        unit: words::PENS_UNIT.to_owned(),
        across: across.ticks(),
        up,
        ..Chart::default()
    })
}
