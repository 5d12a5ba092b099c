//! Ewes whose days have passed without a lamb: to be looked at, since none of them is awaited any more.
//!
//! A ewe past her last day is told of for a month (`overdue`), on the Watch and the season: none of the forecast's
//! nights has her any more.

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;

use super::lambing_forecasts::LambingForecasts;
use super::matings::{is_out, reach};
use crate::book::EweId;
use crate::flock::{Flock, MatingWindow};
use crate::reckon::season::ewe::NoForecast;
use crate::sort_small::SortSmall;
use crate::units::Moment;

/// A ewe that should have lambed by now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Overdue {
    /// Who.
    pub ewe: EweId,
    /// The last day on which she could have lambed.
    pub last: NaiveDate,
    /// Lambs that a scan saw.
    pub lambs: Option<u8>,
}

/// Returns the living ewes whose last day has passed by at most a month, that have not lambed since the ram came to them
/// and were not scanned empty: those with lambs by a scan first, then the longest overdue.
#[must_use]
pub fn overdue(flock: &Flock, lambing_forecasts: &LambingForecasts, now: Moment) -> Vec<Overdue> {
    let today = now.local().date();
    let mut passed: BTreeMap<EweId, NaiveDate> = BTreeMap::new();
    let mut awaited: BTreeSet<EweId> = BTreeSet::new();
    for one in &lambing_forecasts.awaited {
        match &one.lambing_forecast {
            Err(NoForecast::Passed { last }) => _ = passed.insert(one.ewe, *last),
            Ok(_) | Err(_) => _ = awaited.insert(one.ewe),
        }
    }
    let mut latest: BTreeMap<EweId, &MatingWindow> = BTreeMap::new();
    // In a large flock most are still awaited, and nothing more is asked of them.
    for mating in lambing_forecasts.matings().iter().filter(|mating| !awaited.contains(&mating.window.ewe)) {
        let kept = latest.entry(mating.window.ewe).or_insert(&mating.window);
        if mating.window.ram_in > kept.ram_in {
            *kept = &mating.window;
        }
    }
    let told = |(ewe, window): (EweId, &MatingWindow)| {
        let lambed = flock.litters_of(ewe).first().is_some_and(|litter| litter.began > window.ram_in);
        if lambed || is_out(flock, window) {
            return None;
        }
        let last = passed.get(&ewe).copied().unwrap_or_else(|| reach(window).1);
        let scan = flock.ewe(ewe)?.scans.last().filter(|scan| scan.at >= window.ram_in);
        let lambs = scan.map(|scan| scan.lambs).filter(|lambs| *lambs > 0);
        (last < today).then_some(Overdue { ewe, last, lambs })
    };
    let mut overdue: Vec<Overdue> = latest.into_iter().filter_map(told).collect();
    overdue.sort_small_by_key(|one| (one.lambs.is_none(), one.last, one.ewe));
    overdue
}
