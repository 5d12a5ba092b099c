//! The season ahead: which ewes are awaited, which of them tonight, how many births each night may bring, and the pens.
//!
//! What has happened no longer counts as to come. The farm's own figures replace the handbook's once there are enough,
//! and the answer says which were used.

use std::collections::BTreeMap;

use chrono::NaiveDate;

use super::lambing_forecasts::{Alike, Awaited, LambingForecasts};
use super::matings::{Lengths, Mated, SeasonSoFar, count};
use super::witnesses::Story;
use crate::flock::{Flock, Group, Staying};
use crate::reckon::season::conception::{Learned, Likely};
use crate::reckon::season::dates::{Choices, DateTask, Dated, dates};
use crate::reckon::season::forecast::{Curve, Forecast, MIDDLE, Spread, births, forecast};
use crate::reckon::season::gestation::Expected;
use crate::reckon::season::litters::{self, Litters};
use crate::reckon::season::mating::Mating;
use crate::reckon::season::pens::{Wanted, wanted};
use crate::units::{Moment, TimeDelta};

/// Litters of so many years are the flock's own shares (ours): more would be other ewes.
const YEARS: i64 = 4;

/// The season ahead, as it looks now.
#[derive(Clone, Debug, PartialEq)]
pub struct SeasonForecast {
    /// The ewes awaited, those most likely within a day first; those of whom nothing can be told last.
    pub awaited: Vec<Awaited>,
    /// Births and lambs by night from today on; none when nobody is awaited.
    pub forecast: Option<Forecast>,
    /// Bonding pens by night.
    pub pens: Option<Wanted>,
    /// Ewes put to the ram for this season, those that have lambed among them.
    pub put_to_ram: u32,
    /// Those that have lambed.
    pub lambed: u32,
    /// How many will have lambed in the end.
    pub likely: Option<Likely>,
    /// Lambings by night, of ewes whose mating is known.
    pub happened: Vec<(NaiveDate, u32)>,
    /// How long a ewe is taken to carry, and whose figure it is.
    pub gestation: Expected,
    /// How many lambs a lambing brings, and whose figure it is.
    pub litters: litters::LitterShares,
    /// The share that holds in a cycle, and whose figure it is.
    pub conception: Learned,
}

impl SeasonForecast {
    /// Returns how many ewes are awaited and how many lambs they will likely bring: by her scan, else by the mean
    /// litter, each by the chance that she is in lamb at all.
    #[must_use]
    pub fn to_come(&self) -> (u32, f64) {
        let mean = self.litters.litters.mean();
        let lambs = self.awaited.iter().map(|awaited| {
            let in_lamb =
                awaited.lambing_forecast.as_ref().map_or(0.0, |lambing_forecast| lambing_forecast.in_lamb);
            awaited.lambs.map_or(mean, f64::from) * in_lamb
        });
        (count(self.awaited.len()), lambs.sum())
    }
}

/// Returns the season ahead, as known at `now` by the wall clock of `now`, from the [`lambing_forecasts`] of then.
#[must_use]
pub fn season_forecast(flock: &Flock, lambing_forecasts: &LambingForecasts, now: Moment) -> SeasonForecast {
    let own;
    let known = if let Some(known) = &lambing_forecasts.known {
        known
    } else {
        own = SeasonSoFar::of(flock, now);
        &own
    };
    let litters = litters::known(sizes(flock, now));
    let curves = curves(lambing_forecasts, litters.litters);
    let forecast = forecast(&curves).ok();
    let lambed = count(known.stories.iter().filter(|story| story.litter.is_some()).count());
    SeasonForecast {
        pens: wanted(&curves, flock.settings.stay).ok(),
        put_to_ram: count(known.stories.len()),
        lambed,
        likely: likely(flock, known, lambing_forecasts, forecast.as_ref(), lambed),
        forecast,
        happened: happened(&known.matings),
        awaited: lambing_forecasts.awaited.clone(),
        gestation: known.gestation,
        litters,
        conception: known.conception.clone(),
    }
}

/// Returns the chances by night of the ewes awaited, with these litters where no scan counted: what their forecast is
/// made of.
#[must_use]
pub fn curves(lambing_forecasts: &LambingForecasts, litters: Litters) -> Vec<Curve> {
    curves_of(lambing_forecasts, litters, |_| true)
}

/// The same, of the ewes of whom this is so.
fn curves_of(
    lambing_forecasts: &LambingForecasts,
    litters: Litters,
    is: impl Fn(&Alike) -> bool,
) -> Vec<Curve> {
    let curve = |Alike { lambs, lambing_forecast, ewes, .. }: &Alike| {
        lambing_forecast.curve(*ewes, lambs.and_then(Litters::of_scanned).unwrap_or(litters)).ok()
    };
    lambing_forecasts.alike.iter().filter(|alike| is(alike)).filter_map(curve).collect()
}

/// Returns the dates of a group's season; nothing while no ram was put in.
#[must_use]
pub fn group_dates(flock: &Flock, group: &Group) -> Vec<Dated> {
    let Some((ram_in, ram_out)) = group.ram_times().last().copied() else { return Vec::new() };
    let day = |at: Moment| at.local().date();
    let staying = group.staying().unwrap_or_default();
    let until = match staying {
        Staying::Until(until) => ram_out.or(Some(until)),
        Staying::Unsaid | Staying::UntilLambed => ram_out,
    };
    let Ok(mating) = Mating::new(day(ram_in), until.map(day)) else { return Vec::new() };
    let window = mating.window(Lengths::of(flock).carried(None).gestation);
    let mut dates = dates(mating, window, &Choices::default()).unwrap_or_default();
    if staying == Staying::UntilLambed {
        // He has no day out, and so there is no last lamb to go by.
        dates
            .retain(|one| !matches!(one.what, DateTask::RamOut | DateTask::WatchUntil | DateTask::FeedUntil));
    }
    dates
}

/// Litters of the last years by size.
pub(super) fn sizes(flock: &Flock, now: Moment) -> [u32; 4] {
    let mut sizes = [0; 4];
    let since = now - TimeDelta::days(365 * YEARS);
    for litter in flock.litters.values().filter(|litter| litter.began >= since && !litter.goes_on(now)) {
        sizes[litter.lambs.len().clamp(1, 4) - 1] += 1;
    }
    sizes
}

/// Those that have lambed are certain, those still awaited come to the births of the forecast; who was scanned empty or
/// is no longer here was put to the ram all the same. Who was scanned empty is told apart, and is not among the likely.
fn likely(
    flock: &Flock,
    known: &SeasonSoFar,
    lambing_forecasts: &LambingForecasts,
    forecast: Option<&Forecast>,
    lambed: u32,
) -> Option<Likely> {
    let put = count(known.stories.len());
    let births = if lambing_forecasts.alike.iter().any(|alike| alike.empty) {
        let counts = births(&curves_of(lambing_forecasts, Litters::default(), |alike| !alike.empty));
        Spread { mean: counts.mean(), low: counts.at_most(MIDDLE.0), high: counts.at_most(MIDDLE.1) }
    } else {
        forecast.map(|forecast| forecast.births).unwrap_or_default()
    };
    let (mean, low, high) = (f64::from(lambed) + births.mean, lambed + births.low, lambed + births.high);
    let is_empty = |story: &&Story| story.litter.is_none() && story.scanned_empty(flock);
    let empty = count(known.stories.iter().filter(is_empty).count());
    (put > 0).then_some(Likely { put, mean, low, high, empty, whose: known.conception.whose })
}

/// Lambings of this season by night.
fn happened(matings: &[Mated]) -> Vec<(NaiveDate, u32)> {
    let mut nights: BTreeMap<NaiveDate, u32> = BTreeMap::new();
    for began in matings.iter().filter_map(|mating| mating.litter) {
        *nights.entry(began.local().date()).or_default() += 1;
    }
    nights.into_iter().collect()
}
