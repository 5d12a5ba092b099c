//! When a ewe may lamb: her first, likely and last day on a ribbon, the chance of tonight, and why.

use chrono::{NaiveDate, TimeDelta};
use yeanling_core::book::EweId;
use yeanling_core::reckon::season::ewe::LambingForecast;
use yeanling_core::seasons::awaited;
use yeanling_words::common::short_date;
use yeanling_words::season_forecast as words;

use crate::Reason;
use crate::block::Kind;
use crate::page::{Blocks, why};
use crate::ribbon::{Ribbon, RibbonKind, Stretch, Tick};
use crate::view::View;

/// Returns when she may lamb; nothing when no lambing of hers is awaited.
pub(super) fn blocks(view: &View, id: EweId) -> Blocks {
    let told = match awaited(view.flock, id, view.now) {
        None => Blocks::new(),
        Some(Err(why)) => Blocks::new().text(words::no_outlook(&why)),
        Some(Ok(lambing_forecast)) => {
            let (within, days) = (words::within(&lambing_forecast), words::days(&lambing_forecast));
            let ribbon = ribbon(&lambing_forecast);
            let mark = words::to_mark(&lambing_forecast);
            let why = why(words::HERS, Reason::LambingForecast(lambing_forecast));
            let blocks =
                Blocks::new().remark(within, [why]).add("due-ribbon", Kind::Ribbon(ribbon)).text(days);
            blocks.text(mark)
        }
    };
    Blocks::new().section("due", words::HERS, told)
}

/// From today to her last day: plain up to the first, full over the days that hold eight in ten.
fn ribbon(lambing_forecast: &LambingForecast) -> Ribbon {
    let days = |date: NaiveDate| {
        f64::from(i32::try_from(date.signed_duration_since(lambing_forecast.today).num_days()).unwrap_or(0))
    };
    let whole = days(lambing_forecast.last) + 1.0;
    let at = |date: NaiveDate| (days(date) / whole).clamp(0.0, 1.0);
    let (first, likely, last) = (at(lambing_forecast.first), at(lambing_forecast.likely), 1.0);
    let stretch = |from: f64, to: f64, kind| Stretch { from, to: to.max(from), kind, label: String::new() };
    let (from, to) = lambing_forecast.run;
    let (from, to) = (at(from).max(first), at(to + TimeDelta::days(1)));
    Ribbon {
        label: words::days(lambing_forecast),
        stretches: vec![
            stretch(0.0, first, RibbonKind::Plain),
            stretch(first, from, RibbonKind::Fair),
            stretch(from, to, RibbonKind::Best),
            stretch(to, last, RibbonKind::Fair),
        ],
        ticks: vec![
            Tick::new(first, short_date(lambing_forecast.first)).rank(2),
            Tick::new(likely, short_date(lambing_forecast.likely)).rank(1),
            Tick::new(last, short_date(lambing_forecast.last)).rank(0),
        ],
        now: Some(0.0),
        pins: Vec::new(),
    }
}
