//! How many births to expect each night, with their spread: by group and summed, exact and without a simulation.
//!
//! A ewe's chance on a night is `Σ_k share_k · [F(t+1; a_k, b_k) − F(t; a_k, b_k)]`; ewes lamb independently of each
//! other, so that births of a night are a Poisson-binomial count. The share that holds is the same for all of them, and as
//! far as it is not known it moves all nights and the whole together.
//!
//! A spread of births or pens is worked out as far as it is asked for, the 95th or 99th of a hundred, and no further;
//! `births_on` gives the whole.

use std::sync::Arc;

use super::bounds::{DAYS_OF_FORECAST, EWES, Refused, SHARE};
pub use super::chances::Counts;
use super::chances::{Alike, MOST_EACH};
use super::conception::Belief;
use super::cycles::{Conception, cycles};
use super::days::{between, float, later, whole};
use super::gestation::{Gestation, lambed_by, reach_days};
use super::litters::Litters;
use super::mating::Mating;
use super::run::shortest_run;
use crate::reckon::cited::{ours, seen};
use crate::source::Source;
use crate::units::NaiveDate;

/// Most births are told as the fewest nights in a row that hold this share of them (ours).
pub const MOST: f64 = 0.5;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    ours("Matings lie evenly over each cycle, gestation is Normal, ewes lamb independently of each other"),
    ours(
        "The spread of a night is the convolution of all ewes, moved by what is not known of the share that holds as by a Gamma of the same variance; shown are the mean and the middle 90%",
    ),
    ours(
        "The spread of the whole is that convolution for each share that may hold, weighed by how likely it is",
    ),
    ours("Most lambings: the fewest nights in a row that hold half of them"),
    seen(
        "New Zealand Society of Animal Production",
        "Ewes long without a ram: first heats peak about days 18 and 24 after he comes; 43 to 59% have a short cycle between",
        Some(1982),
        "Proceedings, volume 42",
    ),
    seen(
        "Watson and Radford",
        "Ewes kept from rams came in heat from the 18th to the 26th day",
        Some(1960),
        "",
    ),
];

/// What must be said with every forecast.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caution {
    /// After a long time without a ram, matings bunch about days 18 and 24: the nights are then not evenly busy.
    MayBunch,
    /// The day a ram came out is not known: three cycles stand for it.
    RamOutAssumed,
}

/// A group of ewes put to a ram, alike in all that is known of them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Group {
    /// How many ewes.
    pub ewes: u32,
    /// When the ram was with them.
    pub mating: Mating,
    /// The share that holds in each cycle.
    pub conception: Conception,
    /// How long they carry.
    pub gestation: Gestation,
    /// How many lambs they have.
    pub litters: Litters,
}

/// How a ewe's chances move with the share that holds.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Sway {
    /// By how much the chance of each night moves with one spread of the share.
    pub(super) nights: Vec<f64>,
    /// The chance to lamb at all for each share that may hold.
    pub(super) at_all: Vec<f64>,
    /// What is believed of the share.
    pub(super) belief: Belief,
}

/// Ewes that share their chances by night.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    ewes: u32,
    first: NaiveDate,
    nights: Vec<f64>,
    litters: Litters,
    sway: Option<Arc<Sway>>,
}

impl Curve {
    /// Returns ewes that each lamb with these chances, from the night of `first` on; what they leave of 1 never lambs.
    ///
    /// # Errors
    /// There are no ewes or more than `EWES`; a chance, or all together, are outside 0 to 1.
    pub fn new(ewes: u32, first: NaiveDate, nights: Vec<f64>, litters: Litters) -> Result<Self, Refused> {
        EWES.check(f64::from(ewes))?;
        for chance in &nights {
            SHARE.check(*chance)?;
        }
        let sum: f64 = nights.iter().sum();
        SHARE.check(if sum > 1.0 { (sum - 1e-9).max(1.0) } else { sum })?;
        Ok(Self { ewes, first, nights, litters, sway: None })
    }

    /// Returns the same, whose chances move so with the share that holds.
    pub(super) fn swaying(self, sway: Option<Arc<Sway>>) -> Self {
        Self { sway, ..self }
    }

    /// Returns by how much the chance of each night moves with one spread of the share that holds; none where that is
    /// known.
    pub(super) fn sways(&self) -> &[f64] {
        self.sway.as_ref().map_or(&[], |sway| &sway.nights)
    }

    /// Returns how many ewes.
    #[must_use]
    pub const fn ewes(&self) -> u32 {
        self.ewes
    }

    /// Returns the first night.
    #[must_use]
    pub const fn first(&self) -> NaiveDate {
        self.first
    }

    /// Returns each ewe's chance on each night.
    #[must_use]
    pub fn nights(&self) -> &[f64] {
        &self.nights
    }

    /// Returns the litters they have.
    #[must_use]
    pub const fn litters(&self) -> Litters {
        self.litters
    }

    /// Returns each ewe's chance to lamb at all.
    #[must_use]
    pub fn lambs_at_all(&self) -> f64 {
        self.nights.iter().sum::<f64>().min(1.0)
    }

    /// Returns each ewe's chance on the night of a date.
    #[must_use]
    pub fn on(&self, date: NaiveDate) -> f64 {
        self.at(&self.nights, date)
    }

    fn at(&self, nights: &[f64], date: NaiveDate) -> f64 {
        let place = usize::try_from(between(self.first, date)).ok();
        place.and_then(|place| nights.get(place)).copied().unwrap_or(0.0)
    }

    fn births_on(&self, date: NaiveDate) -> Alike {
        Alike::one_or_none(self.ewes, self.on(date)).swaying(self.at(self.sways(), date))
    }
}

/// Returns the chance of a ewe of a group to have lambed so many days after ram in: `Σ_k share_k · F(t; a_k, b_k)`.
///
/// ```
/// use chrono::NaiveDate;
/// use yeanling_core::reckon::season::cycles::Conception;
/// use yeanling_core::reckon::season::forecast::{Group, lambed};
/// use yeanling_core::reckon::season::gestation::Gestation;
/// use yeanling_core::reckon::season::litters::Litters;
/// use yeanling_core::reckon::season::mating::Mating;
/// let group = Group {
///     ewes: 60,
///     mating: Mating::new(NaiveDate::from_ymd_opt(2026, 10, 1).unwrap(), None).unwrap(),
///     conception: Conception::from_share(0.75).unwrap(),
///     gestation: Gestation::from_days(147.0, 2.0).unwrap(),
///     litters: Litters::default(),
/// };
/// assert!((60.0 * lambed(&group, 150.0) - 8.10).abs() < 0.005);
/// ```
#[must_use]
pub fn lambed(group: &Group, day: f64) -> f64 {
    let all = cycles(group.mating, group.conception);
    all.iter().map(|one| one.share * lambed_by(day, one.from_day, one.to_day, group.gestation)).sum()
}

/// Returns the chances by night of a group.
///
/// # Errors
/// The ewes are outside `EWES`, 1 to 3,000.
pub fn curve(group: &Group) -> Result<Curve, Refused> {
    EWES.check(f64::from(group.ewes))?;
    let (near, far) = reach_days(group.gestation);
    let (first, last) = (whole(near.floor()), group.mating.days() + whole(far.ceil()));
    let all = cycles(group.mating, group.conception);
    let mut nights = vec![0.0; usize::try_from(last - first).unwrap_or(0)];
    for one in &all {
        // Outside of what its days can bring, a cycle adds nothing.
        let from = whole((one.from_day + near).floor());
        let until = whole((one.to_day + far).ceil()).min(last);
        let by = |day: i64| lambed_by(float(day), one.from_day, one.to_day, group.gestation);
        let mut before = 0.0;
        for day in from..until {
            let after = by(day + 1);
            if let Some(night) = usize::try_from(day - first).ok().and_then(|place| nights.get_mut(place)) {
                *night += one.share * (after - before).max(0.0);
            }
            before = after;
        }
    }
    let first = later(group.mating.ram_in(), first);
    Ok(Curve { ewes: group.ewes, first, nights, litters: group.litters, sway: None })
}

/// Between which chances the middle 90% lies.
pub(crate) const MIDDLE: (f64, f64) = (0.05, 0.95);

/// A number to expect, and its middle 90%.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Spread {
    /// The mean.
    pub mean: f64,
    /// One in twenty times it is fewer.
    pub low: u32,
    /// One in twenty times it is more.
    pub high: u32,
}

impl Spread {
    fn of(counts: &Counts, mean: f64) -> Self {
        Self { mean, low: counts.at_most(MIDDLE.0), high: counts.at_most(MIDDLE.1) }
    }
}

/// One night of a forecast.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Night {
    /// Its date, from midnight to midnight.
    pub date: NaiveDate,
    /// Ewes that lamb.
    pub births: Spread,
    /// Lambs that come, on the mean; [`lambs_on`] has their spread.
    pub lambs: f64,
    /// The chance that no ewe lambs.
    pub none: f64,
}

/// A season of nights.
#[derive(Clone, Debug, PartialEq)]
pub struct Forecast {
    /// Every night on which anything can come, in order.
    pub nights: Vec<Night>,
    /// Ewes it was made for.
    pub ewes: u32,
    /// Ewes that lamb in all.
    pub births: Spread,
    /// Lambs in all, on the mean; four and more in a litter count as four.
    pub lambs: f64,
    /// The first and the last of the fewest nights in a row that hold half of all births.
    pub most: (NaiveDate, NaiveDate),
    /// The busiest night, and how many ewes it expects.
    pub busiest: (NaiveDate, f64),
}

/// Returns births with their spread, and lambs, by night for groups and single ewes together.
///
/// Where the share that holds is known, exact to 1e-9: each night is the convolution of all ewes. Nights on which fewer
/// than one ewe in a thousand million lambs are left off at both ends. All curves rest on one belief of the share.
///
/// # Errors
/// There are no ewes, or more than `EWES` together; the nights are more than `DAYS_OF_FORECAST`, 800.
pub fn forecast(curves: &[Curve]) -> Result<Forecast, Refused> {
    let ewes = curves.iter().fold(0_u32, |sum, curve| sum.saturating_add(curve.ewes));
    EWES.check(f64::from(ewes))?;
    let (first, length) = span(curves)?;
    let places: Vec<_> = curves.iter().map(|curve| (between(first, curve.first), curve)).collect();
    let mut nights = Vec::with_capacity(length);
    for day in 0..i64::try_from(length).unwrap_or(0) {
        let tonight = places.iter().filter_map(|(start, curve)| {
            let place = usize::try_from(day - start).ok()?;
            let chance = *curve.nights.get(place)?;
            (chance > 0.0).then(|| (*curve, chance, curve.sways().get(place).copied().unwrap_or(0.0)))
        });
        nights.push(night(later(first, day), &tonight.collect::<Vec<_>>()));
    }
    let lambs = nights.iter().map(|night| night.lambs).sum();
    let births = Spread::of(&births(curves), nights.iter().map(|night| night.births.mean).sum());
    let means: Vec<f64> = nights.iter().map(|night| night.births.mean).collect();
    let date = |place: usize| nights.get(place).map_or(first, |night| night.date);
    let (from, to) = shortest_run(&means, MOST);
    let busiest = nights.iter().map(|night| (night.date, night.births.mean));
    // Of several as busy the first.
    let busiest = busiest.rev().max_by(|one, other| one.1.total_cmp(&other.1)).unwrap_or((first, 0.0));
    let most = (date(from), date(to));
    Ok(Forecast { nights, ewes, births, lambs, most, busiest })
}

/// Returns the first night of all curves, and how many nights there are.
pub(super) fn span(curves: &[Curve]) -> Result<(NaiveDate, usize), Refused> {
    let first = curves.iter().map(|curve| curve.first).min().unwrap_or_default();
    let end = |curve: &Curve| between(first, curve.first) + i64::try_from(curve.nights.len()).unwrap_or(0);
    let days = curves.iter().map(end).max().unwrap_or(0);
    DAYS_OF_FORECAST.check(float(days))?;
    Ok((first, usize::try_from(days).unwrap_or(0)))
}

/// Returns the spread of births to come in all.
#[must_use]
pub fn births(curves: &[Curve]) -> Counts {
    let sure = [(0.0, 1.0)];
    let sway = curves.iter().find_map(|curve| curve.sway.as_ref());
    let each = sway.map_or(&sure[..], |sway| sway.belief.each());
    let all: usize = curves.iter().map(|curve| usize::try_from(curve.ewes).unwrap_or(0)).sum();
    let mut spread = vec![0.0; all + 1];
    for (place, (_, weight)) in each.iter().enumerate() {
        let at_all = |curve: &Curve| {
            let at_all = curve.sway.as_ref().and_then(|sway| sway.at_all.get(place)).copied();
            (curve.ewes, at_all.unwrap_or_else(|| curve.lambs_at_all()))
        };
        let (likely, unlikely): (Vec<_>, Vec<_>) =
            curves.iter().map(at_all).partition(|(_, at_all)| *at_all > 0.5);
        // Whatever is rare is quick to count: of the likely ones those that stay empty, of the others those that lamb.
        let empty = likely.iter().map(|(ewes, at_all)| (*ewes, 1.0 - at_all));
        let empty: Vec<_> = empty.filter(|(_, empty)| *empty > 1e-15).collect();
        let most: usize = likely.iter().map(|(ewes, _)| usize::try_from(*ewes).unwrap_or(0)).sum();
        let (empty, lambing) = (Counts::of_unlike(&empty), Counts::of_unlike(&unlikely));
        for (none, one) in empty.chances().iter().enumerate().take(most + 1) {
            for (more, other) in lambing.chances().iter().enumerate() {
                if let Some(chance) = spread.get_mut(most - none + more) {
                    *chance += weight * one * other;
                }
            }
        }
    }
    Counts::from_chances(spread)
}

fn night(date: NaiveDate, tonight: &[(&Curve, f64, f64)]) -> Night {
    let births: Vec<_> = tonight
        .iter()
        .map(|(curve, chance, sway)| Alike::one_or_none(curve.ewes, *chance).swaying(*sway))
        .collect();
    let births = Counts::as_far_as(&births, MIDDLE.1);
    let mean = |each: &dyn Fn(&Curve) -> f64| -> f64 {
        tonight.iter().map(|(curve, chance, _)| f64::from(curve.ewes) * chance * each(curve)).sum()
    };
    Night {
        date,
        births: Spread::of(&births, mean(&|_| 1.0)),
        lambs: mean(&|curve| curve.litters.mean()),
        none: births.chance_of(0),
    }
}

fn lambs_each(curve: &Curve, date: NaiveDate) -> Alike {
    let chance = curve.on(date);
    let mut each = [0.0; MOST_EACH + 1];
    each[0] = 1.0 - chance;
    for (lambs, share) in each.iter_mut().skip(1).zip(curve.litters.as_shares()) {
        *lambs = chance * share;
    }
    let sway = curve.litters.mean() * curve.at(curve.sways(), date);
    Alike { ewes: curve.ewes, each, sway }
}

/// Returns what must be said with a forecast of these groups.
#[must_use]
pub fn cautions(groups: &[Group]) -> Vec<Caution> {
    let mut cautions = vec![Caution::MayBunch];
    if groups.iter().any(|group| group.mating.is_open()) {
        cautions.push(Caution::RamOutAssumed);
    }
    cautions
}

/// Returns the spread of births on one night; none come outside of the curves.
#[must_use]
pub fn births_on(curves: &[Curve], date: NaiveDate) -> Counts {
    Counts::of(&curves.iter().map(|curve| curve.births_on(date)).collect::<Vec<_>>())
}

/// Returns the spread of lambs on one night.
#[must_use]
pub fn lambs_on(curves: &[Curve], date: NaiveDate) -> Counts {
    Counts::of(&curves.iter().map(|curve| lambs_each(curve, date)).collect::<Vec<_>>())
}
