//! What a full-season forecast costs for a large flock against a small one.
//!
//! Both are worked out in this run and of this build, so the ratio holds whatever the machine. The cost is meant to grow
//! with the groups, and hardly with the ewes in them.
use std::hint::black_box;
use std::time::{Duration, Instant};

use anyhow::{Context, Result};
use yeanling_core::reckon::season::cycles::Conception;
use yeanling_core::reckon::season::forecast::{Forecast, Group, curve, forecast, lambs_on};
use yeanling_core::reckon::season::gestation::Gestation;
use yeanling_core::reckon::season::litters::Litters;
use yeanling_core::reckon::season::mating::Mating;
use yeanling_core::units::{NaiveDate, TimeDelta};

/// Ewes in each group.
const EWES: u32 = 50;
/// How often each season is worked out; the quickest time counts, since everything else is the machine's doing.
const RUNS: usize = 40;

/// Returns the time for 1,000 ewes in 20 groups over the time for 100 in 2.
pub(crate) fn forecast_ratio() -> Result<f64> {
    let (large, small) = (groups(20)?, groups(2)?);
    let (mut best_large, mut best_small) = (Duration::MAX, Duration::MAX);
    for _ in 0..RUNS {
        best_large = best_large.min(time(&large)?);
        best_small = best_small.min(time(&small)?);
    }
    Ok(best_large.as_secs_f64() / best_small.as_secs_f64())
}

fn time(groups: &[Group]) -> Result<Duration> {
    let start = Instant::now();
    black_box(season(black_box(groups))?);
    Ok(start.elapsed())
}

/// Works a season out from its groups: their chances by night, then births and lambs of every night with their spread.
fn season(groups: &[Group]) -> Result<Forecast> {
    let curves = groups.iter().map(curve).collect::<Result<Vec<_>, _>>()?;
    let season = forecast(&curves)?;
    for night in &season.nights {
        black_box(lambs_on(&curves, night.date));
    }
    Ok(season)
}

/// So many groups, each with its ram from another day on, over the same 20 days in either flock.
fn groups(number: u32) -> Result<Vec<Group>> {
    let first = NaiveDate::from_ymd_opt(2026, 10, 1).context("a date")?;
    let mut groups = Vec::new();
    for group in 0..number {
        let ram_in = first + TimeDelta::days(i64::from(group * 19 / (number - 1)));
        groups.push(Group {
            ewes: EWES,
            mating: Mating::new(ram_in, Some(ram_in + TimeDelta::days(50)))?,
            conception: Conception::default(),
            gestation: Gestation::default(),
            litters: Litters::default(),
        });
    }
    Ok(groups)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_flocks_lamb_over_the_same_nights() {
        let of = |number| season(&groups(number).expect("groups")).expect("a forecast");
        let (large, small) = (of(20), of(2));
        assert_eq!((large.ewes, small.ewes), (1000, 100));
        assert_eq!(large.nights.len(), small.nights.len());
    }
}
