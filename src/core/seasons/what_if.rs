//! A season before it happens: from the month in which lambing is to begin, or the day before which all are to be born, back
//! to the ram, and on to the nights, the pens and the feed.
//!
//! The first lambs are possible on the first day to watch after ram in, the last on the last day to watch after ram out
//! (`Mating::window`). What the flock has shown of itself counts: how long it carries, how it holds, its litters.

use chrono::{Datelike, NaiveDate, NaiveTime, TimeDelta};

use super::ewe_weight;
use super::matings::SeasonSoFar;
use super::season_forecast::sizes;
use super::witnesses::witnesses;
use crate::flock::Flock;
use crate::reckon::season::bounds::Refused;
use crate::reckon::season::breeding::{BreedingSeason, season_of};
use crate::reckon::season::budget::{Budget, by_body_weight};
use crate::reckon::season::conception::learned_in;
use crate::reckon::season::ewe::{Evidence, NoForecast, lambing_forecast};
use crate::reckon::season::feed_groups::{DAYS_BEFORE_FIRST, Feed, FeedGroup, FeedingCard, USUAL_FEED, card};
use crate::reckon::season::forecast::{Forecast, forecast};
use crate::reckon::season::gestation::Gestation;
use crate::reckon::season::litters;
use crate::reckon::season::mating::{Mating, WrongDates};
use crate::reckon::season::pens::{Wanted, wanted};
use crate::units::{Mass, Moment};

/// The ram is in for two cycles or for three.
pub const RAM_DAYS: [u16; 2] = [34, 51];

/// What hay a breeder allows a ewe in a day, waste included, as a share of her weight: that of the hay budget.
pub const HAY_SHARE: f64 = 0.04;

/// Someone is up on a night on which a ewe lambs at least so often (ours: one night in ten).
pub const UP_FROM: f64 = 0.1;

/// Ewes are scanned so many days after the ram is out (ours): the youngest lambs are then six weeks.
pub const SCAN_AFTER: i64 = 42;

/// What a season is to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wish {
    /// The first lambs come on this day, and none before it.
    LambsFrom(NaiveDate),
    /// All are born before this day.
    AllBornBefore(NaiveDate),
}

/// A season that might be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plan {
    /// What it is to be.
    pub wish: Wish,
    /// How many ewes go to the ram.
    pub ewes: u32,
    /// For how many days the ram is in, the first and the last both counted.
    pub ram_days: u16,
    /// For how many days they are housed and fed hay.
    pub housing_days: u16,
    /// What a bale of hay weighs.
    pub bale: Mass,
    /// What a bag of grain weighs.
    pub bag: Mass,
}

/// What it comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct WhatIf {
    /// The day the ram goes in.
    pub ram_in: NaiveDate,
    /// The day he comes out.
    pub ram_out: NaiveDate,
    /// The first day on which a lamb is possible.
    pub first: NaiveDate,
    /// The last day: all but two in a hundred are born by then.
    pub last: NaiveDate,
    /// Births by night.
    pub forecast: Forecast,
    /// Pens by night.
    pub pens: Wanted,
    /// Nights on which someone is up: those with a lambing at least one time in ten.
    pub nights_up: u32,
    /// Hay over the housing.
    pub hay: Budget,
    /// Grain from six weeks before the first lamb to the last, all fed as twins; none where the table has no row.
    pub grain: Option<FeedingCard>,
    /// Whether the ewes are in season then.
    pub season: BreedingSeason,
    /// Whether the housing is shorter than the lambing.
    pub housed_too_short: bool,
}

/// Why there is no such season.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NoWhatIf {
    /// The ram would have had to go in on a day that has passed.
    #[error("the ram would have had to go in on {ram_in}; the earliest is {earliest}")]
    Passed {
        /// That day.
        ram_in: NaiveDate,
        /// The earliest day that can be wished for, of the same kind.
        earliest: NaiveDate,
    },
    /// It lies further ahead than can be planned.
    #[error("the ram would go in on {ram_in}, after {most}")]
    TooFar {
        /// When he would go in.
        ram_in: NaiveDate,
        /// The last day.
        most: NaiveDate,
    },
    /// A figure outside what it may be.
    #[error(transparent)]
    Refused(#[from] Refused),
}

/// A plan lies ahead at most so many days, as `Planning::Planned` does.
const MOST_AHEAD: i64 = 730;

fn later(date: NaiveDate, days: i64) -> NaiveDate {
    date.checked_add_signed(TimeDelta::days(days)).unwrap_or(date)
}

/// Returns when the ram goes in for a wish.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::gestation::Gestation;
/// use yeanling_core::seasons::{Wish, ram_in_for};
/// let day = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap();
/// // Ram in + 142 is the first day, ram out + 152 the last.
/// assert_eq!(ram_in_for(Wish::LambsFrom(day(2027, 4, 1)), 34, Gestation::default()), day(2026, 11, 10));
/// assert_eq!(ram_in_for(Wish::AllBornBefore(day(2027, 4, 20)), 34, Gestation::default()), day(2026, 10, 16));
/// ```
#[must_use]
pub fn ram_in_for(wish: Wish, ram_days: u16, gestation: Gestation) -> NaiveDate {
    let (first, last) = gestation.watch_days();
    match wish {
        Wish::LambsFrom(day) => later(day, -first),
        Wish::AllBornBefore(day) => later(day, -1 - last - (i64::from(ram_days) - 1)),
    }
}

/// Returns the first day of a month, 1 to 12, of the earliest year in which the ram of such a season has not gone in yet.
#[must_use]
pub fn next_month(flock: &Flock, month: u32, now: Moment) -> NaiveDate {
    let today = now.local().date();
    let gestation = SeasonSoFar::of(flock, now).gestation.gestation;
    let starts = (0..3).filter_map(|years| NaiveDate::from_ymd_opt(today.year() + years, month, 1));
    let mut ahead = starts.filter(|start| ram_in_for(Wish::LambsFrom(*start), 1, gestation) >= today);
    ahead.next().unwrap_or(today)
}

/// Returns what a plan comes to. Nothing of it is noted, and nothing that was noted changes with it.
///
/// # Errors
/// The ram would have had to go in already, or only in more than two years; a figure is outside what it may be.
pub fn what_if(flock: &Flock, plan: &Plan, now: Moment) -> Result<WhatIf, NoWhatIf> {
    let today = now.local().date();
    let known = SeasonSoFar::of(flock, now);
    let gestation = known.gestation.gestation;
    let ram_in = ram_in_for(plan.wish, plan.ram_days, gestation);
    if ram_in < today {
        let wished = match plan.wish {
            Wish::LambsFrom(day) | Wish::AllBornBefore(day) => day,
        };
        let earliest = wished + (today - ram_in);
        return Err(NoWhatIf::Passed { ram_in, earliest });
    }
    let ram_out = later(ram_in, i64::from(plan.ram_days) - 1);
    let most = later(today, MOST_AHEAD);
    if ram_out > most {
        return Err(NoWhatIf::TooFar { ram_in, most });
    }
    let mating = Mating::new(ram_in, Some(ram_out)).map_err(|wrong| match wrong {
        WrongDates::TooLong(refused) => NoWhatIf::Refused(refused),
        WrongDates::OutBeforeIn { .. } => NoWhatIf::TooFar { ram_in, most },
    })?;
    let (first, last) = mating.window(gestation);
    let season = season_of(ram_in, flock.settings.latitude);
    let learned = learned_in(season, &witnesses(flock, &known.stories, gestation, now));
    let evidence = Evidence {
        mating,
        conception: learned.belief,
        gestation,
        marks: Vec::new(),
        look_days: 1,
        scan: None,
        signs: Vec::new(),
    };
    // As it looks on the morning on which he goes in.
    let one = lambing_forecast(&evidence, ram_in.and_time(NaiveTime::MIN)).map_err(|no| match no {
        NoForecast::Refused(refused) => NoWhatIf::Refused(refused),
        // Without marks and scans nothing else stands in the way.
        NoForecast::ScannedEmpty { .. }
        | NoForecast::ScanTooEarly { .. }
        | NoForecast::ScanDoesNotFit { .. }
        | NoForecast::InLambWithoutMating { .. }
        | NoForecast::MarkWithoutRam { .. }
        | NoForecast::Passed { .. } => NoWhatIf::TooFar { ram_in, most },
    })?;
    let curves = [one.curve(plan.ewes, litters::known(sizes(flock, now)).litters)?];
    let forecast = forecast(&curves)?;
    let pens = wanted(&curves, flock.settings.stay)?;
    let up = forecast.nights.iter().filter(|night| 1.0 - night.none >= UP_FROM).count();
    let weight = ewe_weight(flock, now).mass;
    let hay = by_body_weight(plan.ewes, weight, plan.housing_days, HAY_SHARE, plan.bale)?;
    let fed = (last - first).num_days() + DAYS_BEFORE_FIRST;
    let feed = Feed { energy: USUAL_FEED.0, dry_matter: USUAL_FEED.1, bag: plan.bag };
    let grain =
        card(weight, &[(FeedGroup::NotScanned, plan.ewes)], feed, u16::try_from(fed).unwrap_or(u16::MAX))
            .ok();
    Ok(WhatIf {
        ram_in,
        ram_out,
        first,
        last,
        forecast,
        pens,
        nights_up: u32::try_from(up).unwrap_or(u32::MAX),
        hay,
        grain,
        season,
        housed_too_short: i64::from(plan.housing_days) < (last - first).num_days() + 1,
    })
}
