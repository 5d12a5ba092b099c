//! When one ewe will lamb: her group's days, narrowed by crayon marks, by a scan, and by the signs she shows.
//!
//! `P(night | not lambed yet) ∝ Σ w·[F(t+1; a, b) − F(t; a, b)] × sign`: what lies before now has no weight, and what she
//! has left of the whole is one again. A mark is one service and holds as any other; a ewe that came back was marked
//! again two times in three. One mark in twenty is none, and an earlier one or the group stands for it.
//!
//! A sign multiplies the hours after it, a tight udder by 20 for half a day, and fades evenly from then on; of several
//! only the strongest counts, since they come together. Only the mean of gestation is learned: marks are read late and would widen the spread.

use std::sync::Arc;

use super::bounds::Refused;
pub use super::common::Common;
use super::common::edges;
use super::conception::Belief;
use super::days::{between, counted, float, later, whole};
use super::forecast::{Curve, Sway};
use super::gestation::{Gestation, lambed_by};
use super::litters::Litters;
use super::mating::Mating;
use super::matings::matings;
use super::run::shortest_run;
use crate::reckon::cited::{common, ours};
use crate::sort_small::SortSmall;
use crate::source::Source;
use crate::terms::Sign;
use crate::units::{NaiveDate, NaiveDateTime};

/// How often a mark is no service at all (ours: one in twenty).
pub const MARK_WRONG: f64 = 0.05;

/// How often a ewe that comes back to the ram is seen to be marked again (ours: two times in three).
pub const RETURN_SEEN: f64 = 2.0 / 3.0;

/// The days told of her hold this share of the ewes like her that lamb (ours).
pub const RUN_HOLDS: f64 = 0.8;

/// So few lamb after the last day (ours): those that came back twice lie within.
const LEFT_OUT: f64 = 0.001;

/// The spread of the age that a scan gives, in days (ours).
pub const SCAN_SPREAD_DAYS: f64 = 3.0;

/// A scan sooner than so many days after ram in counts no lambs (ours; 40 and more is usual, memory).
pub const SCAN_FROM_DAY: i64 = 30;

/// Where the figures were printed.
pub const SOURCES: &[Source] = &[
    common(
        "In the last day: the udder very tight, slack under the tail, off by herself, down and up, discharge",
    ),
    ours(
        "A crayon mark is a service and holds as any other; a ewe that did not comes back, and is marked again two times in three; one mark in twenty is no service",
    ),
    ours("The age at a scan is right to 3 d either way, two times in three"),
    ours("A sign multiplies the chance of the hours after it; of several only the strongest counts"),
    ours("The days told are the fewest that hold 8 in 10; the last day leaves out one in a thousand"),
];

/// By how much a sign multiplies the chance of the hours that follow it, until so many hours after it.
pub type Steps = &'static [(u16, f64)];

/// Returns how often a sign is seen so many hours before lambing, against days before (ours).
///
/// A tight udder is taken to be 20 times as common in the last day as in the days before, 6 times in the day before
/// that: it outweighs any date. Restless is 40 times as common in the last 12 hours.
#[must_use]
pub const fn steps(sign: Sign) -> Steps {
    match sign {
        Sign::Slack => &[(48, 3.0)],
        Sign::Apart => &[(24, 8.0)],
        Sign::Discharge => &[(24, 12.0)],
        Sign::UdderTight => &[(24, 20.0), (48, 6.0), (72, 2.0)],
        Sign::Restless => &[(12, 40.0), (24, 10.0)],
    }
}

/// Returns the factor for lambing so many days after a sign: each step's own in its middle, evenly from one to the next
/// (in logarithms), and none half a step after the last. So no hour brings a jump.
fn factor(sign: Sign, days: f64) -> f64 {
    let hours = days * 24.0;
    let (mut from, mut middle_before, mut before) = (0.0, f64::NEG_INFINITY, 1.0);
    for (until, factor) in steps(sign) {
        let until = f64::from(*until);
        let middle = f64::midpoint(from, until);
        if hours <= middle {
            return between_steps(hours, (middle_before, before), (middle, *factor));
        }
        (from, middle_before, before) = (until, middle, *factor);
    }
    between_steps(hours, (middle_before, before), (fades(sign), 1.0))
}

/// Returns the hours after which a sign says nothing any more.
fn fades(sign: Sign) -> f64 {
    let steps = steps(sign);
    let end = |place: usize| steps.get(place).map_or(0.0, |(hours, _)| f64::from(*hours));
    let last = steps.len() - 1;
    end(last) + (end(last) - last.checked_sub(1).map_or(0.0, end)) / 2.0
}

fn between_steps(hours: f64, (from, one): (f64, f64), (to, other): (f64, f64)) -> f64 {
    if from == f64::NEG_INFINITY || hours >= to {
        return other;
    }
    let part = (hours - from) / (to - from);
    (one.ln() * (1.0 - part) + other.ln() * part).exp()
}

/// A sign's factor is read off every so many hours.
const SIGN_STRIP_HOURS: u16 = 2;

/// What a scan said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Scan {
    /// When.
    pub on: NaiveDate,
    /// How many lambs; none of it if only the age was told.
    pub lambs: Option<u8>,
    /// How old the lambs were, in days, if that was told.
    pub age_days: Option<u16>,
}

/// What is known of one ewe.
#[derive(Clone, Debug, PartialEq)]
pub struct Evidence {
    /// When the ram was with her group.
    pub mating: Mating,
    /// What is believed of the share of her group that holds in a cycle.
    pub conception: Belief,
    /// How long she carries.
    pub gestation: Gestation,
    /// The days on which a fresh crayon mark was seen on her.
    pub marks: Vec<NaiveDate>,
    /// How often crayons are looked at, in days: a mark is at most so old. 1 is each day.
    pub look_days: u8,
    /// Her scan.
    pub scan: Option<Scan>,
    /// The signs that were seen on her, and when; those after now do not count.
    pub signs: Vec<(Sign, NaiveDateTime)>,
}

/// On what an answer rests, the weightiest first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ground {
    /// A sign, and by how much it multiplies the next hours.
    Sign {
        /// Which.
        sign: Sign,
        /// By how much, now.
        factor: f64,
    },
    /// The age of the lambs at a scan.
    AgeAtScan {
        /// When the scan was.
        on: NaiveDate,
        /// How old they were.
        age_days: u16,
    },
    /// A crayon mark: the last one.
    Mark {
        /// When it was seen.
        on: NaiveDate,
    },
    /// The days of the ram with her group.
    Group {
        /// Ram in.
        ram_in: NaiveDate,
        /// Ram out.
        ram_out: NaiveDate,
    },
}

/// When one ewe will lamb, as it looks now.
#[derive(Clone, Debug, PartialEq)]
pub struct LambingForecast {
    /// The date of the first night of `nights`: today.
    pub today: NaiveDate,
    /// The chance of each night from today on; of today only what is left of it. What they leave of 1 never lambs.
    pub nights: Vec<f64>,
    /// The chance that she lambs at all.
    pub in_lamb: f64,
    /// The chance that she lambs within 12 h.
    pub within_12h: f64,
    /// The chance that she lambs within 24 h.
    pub within_24h: f64,
    /// The chance that she is in lamb to her last mark; none without a mark.
    pub to_mark: Option<f64>,
    /// If she lambs: the middle day.
    pub likely: NaiveDate,
    /// If she lambs: the fewest days in a row that hold [`RUN_HOLDS`], eight in ten.
    pub run: (NaiveDate, NaiveDate),
    /// If she lambs: the day before which one in a hundred does.
    pub first: NaiveDate,
    /// If she lambs: the day after which one in a thousand does; those that came back twice lie before it.
    pub last: NaiveDate,
    /// The share that holds at a service, as it is believed.
    pub holds: f64,
    /// On what it rests, the weightiest first.
    pub grounds: Vec<Ground>,
    /// How long she is taken to carry.
    pub gestation: Gestation,
    /// How her chances move with the share that holds; none where that is known.
    sway: Option<Arc<Sway>>,
}

/// Why there is no outlook.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NoForecast {
    /// She was scanned empty.
    #[error("scanned empty on {on}")]
    ScannedEmpty {
        /// When.
        on: NaiveDate,
    },
    /// The scan came before a scan can count.
    #[error("a scan {day} days after ram in is before day {least}", least = SCAN_FROM_DAY)]
    ScanTooEarly {
        /// Days after ram in.
        day: i64,
    },
    /// The age at the scan fits none of her matings.
    #[error("lambs of {age_days} days on {on} fit no mating in her group")]
    ScanDoesNotFit {
        /// When the scan was.
        on: NaiveDate,
        /// The age it gave.
        age_days: u16,
    },
    /// A scan found her in lamb, though no ewe of her group is taken to hold.
    #[error("in lamb on {on}, though none of her group is taken to hold")]
    InLambWithoutMating {
        /// When the scan was.
        on: NaiveDate,
    },
    /// A mark from a day on which the ram was not there.
    #[error("the mark of {mark} is not from the ram's days, {ram_in} to {ram_out}")]
    MarkWithoutRam {
        /// The mark.
        mark: NaiveDate,
        /// Ram in.
        ram_in: NaiveDate,
        /// Ram out.
        ram_out: NaiveDate,
    },
    /// All her days have passed: empty, another date, or she lambed unseen.
    #[error("her last day, {last}, has passed")]
    Passed {
        /// The last day on which she could have lambed.
        last: NaiveDate,
    },
    /// A figure outside what it may be.
    #[error(transparent)]
    Refused(#[from] Refused),
}

/// Less than this is left of her days: they have passed.
pub(super) const PASSED: f64 = 1e-6;

/// Returns when one ewe will lamb, as it looks at this time on the wall clock of her farm.
///
/// # Errors
/// She was scanned empty or too early, the scan's age or a mark fits none of her matings, a figure is outside what it
/// may be, or all her days have passed.
///
/// ```
/// use chrono::{NaiveDate, NaiveTime};
/// use yeanling_core::reckon::season::cycles::Conception;
/// use yeanling_core::reckon::season::ewe::{Evidence, lambing_forecast};
/// use yeanling_core::terms::Sign;
/// use yeanling_core::reckon::season::gestation::Gestation;
/// use yeanling_core::reckon::season::mating::Mating;
/// let date = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap();
/// let now = date(2027, 2, 24).and_time(NaiveTime::MIN);
/// let dated = Evidence {
///     mating: Mating::new(date(2026, 10, 1), None).unwrap(),
///     conception: Conception::default().into(),
///     gestation: Gestation::default(),
///     marks: vec![date(2026, 10, 1)],
///     look_days: 1,
///     scan: None,
///     signs: Vec::new(),
/// };
/// let tight = Evidence { signs: vec![(Sign::UdderTight, now)], ..dated.clone() };
/// let (calm, near) = (lambing_forecast(&dated, now).unwrap(), lambing_forecast(&tight, now).unwrap());
/// assert!(calm.within_24h < 0.2);
/// assert!(near.within_24h > 2.0 * calm.within_24h);
/// ```
pub fn lambing_forecast(evidence: &Evidence, now: NaiveDateTime) -> Result<LambingForecast, NoForecast> {
    lambing_forecast_among(evidence, &Common::of(evidence, now))
}

/// Returns the same, with what she has in common with others worked out before.
///
/// # Errors
/// As [`lambing_forecast`].
pub fn lambing_forecast_among(evidence: &Evidence, common: &Common) -> Result<LambingForecast, NoForecast> {
    let Common { now, now_day, end, .. } = *common;
    let matings = matings(evidence, now_day)?;
    let (ways, of_marks) = (matings.ways, matings.of_marks);
    let ram_in = evidence.mating.ram_in();
    let today = between(ram_in, now.date());
    // What has come of each way by a day, if all hold in that way.
    let by = |day: f64, come: &mut [f64]| {
        come.fill(0.0);
        for one in &matings.stretches {
            come[one.way] += one.part * lambed_by(day, one.from, one.to, evidence.gestation);
        }
    };
    let (mut before, mut after) = (vec![0.0; ways], vec![0.0; ways]);
    for one in &matings.stretches {
        after[one.way] += one.part;
    }
    let belief = &evidence.conception;
    let (mean, spread) = (belief.mean().as_share(), belief.spread());
    let weights = matings.weights(mean, common.weights.iter().copied());
    let weighed =
        |come: &[f64]| -> f64 { come.iter().zip(&weights).map(|(come, weight)| come * weight).sum() };
    let held = weighed(&after);
    let least = PASSED * if matings.in_lamb { held } else { 1.0 };
    by(now_day, &mut before);
    if held - weighed(&before) < least {
        let mut has_passed = |day: &i64| {
            by(float(*day), &mut after);
            held - weighed(&after) < least
        };
        let over = (0..end).find(|day| has_passed(day)).unwrap_or(end);
        return Err(NoForecast::Passed { last: later(ram_in, over - 1) });
    }

    let signs: Vec<(Sign, f64)> = evidence
        .signs
        .iter()
        .filter(|(_, at)| *at <= now)
        .map(|(sign, at)| (*sign, now_day - now.signed_duration_since(*at).as_seconds_f64() / 86_400.0))
        .collect();
    let (within_12h, within_24h) = (now_day + 0.5, now_day + 1.0);
    // Signs have edges of their own, and the age at a scan weighs the days of a cycle.
    let is_common = signs.is_empty() && evidence.scan.is_none_or(|scan| scan.age_days.is_none());
    let own = (!is_common).then(|| {
        let steps = |(sign, at): &(Sign, f64)| {
            let (at, until) = (*at, fades(*sign));
            let strips = (0..u16::MAX).map(|strip| f64::from(strip * SIGN_STRIP_HOURS));
            strips.take_while(move |hours| *hours <= until).map(move |hours| at + hours / 24.0)
        };
        edges(now_day, end, signs.iter().flat_map(steps))
    });
    let edges = own.as_ref().unwrap_or(&common.edges);
    let marks = || matings.stretches.iter().take_while(|one| one.way < of_marks);

    // What is to come of each way: by night, in the next hours, and in all.
    let length = usize::try_from(end - today).unwrap_or(0).max(2);
    let mut nights = vec![0.0; length * ways];
    let (mut next_12h, mut next_24h, mut all) = (vec![0.0; ways], vec![0.0; ways], vec![0.0; ways]);
    for (number, pair) in edges.windows(2).enumerate() {
        let (from, to) = (pair[0], pair[1]);
        if is_common {
            for one in marks() {
                after[one.way] = one.part * lambed_by(to, one.from, one.to, evidence.gestation);
            }
            for (after, come) in after[of_marks..].iter_mut().zip(common.row(number + 1)) {
                *after = matings.rest * come;
            }
        } else {
            by(to, &mut after);
        }
        let middle = f64::midpoint(from, to);
        let factor = signs.iter().map(|(sign, at)| factor(*sign, middle - at)).fold(1.0, f64::max);
        let place = usize::try_from(whole(middle.floor()) - today).ok().filter(|place| *place < length);
        for way in 0..ways {
            let weight = (after[way] - before[way]).max(0.0) * factor;
            all[way] += weight;
            if middle < within_12h {
                next_12h[way] += weight;
            }
            if middle < within_24h {
                next_24h[way] += weight;
            }
            if let Some(place) = place {
                nights[place * ways + way] += weight;
            }
        }
        std::mem::swap(&mut before, &mut after);
    }

    // For each share that may hold: what is left of the whole, and so what each way is worth.
    let (mut worth, mut moves) = (vec![0.0; ways], vec![0.0; ways]);
    let mut at_all = Vec::with_capacity(belief.each().len());
    for ((held, likely), cycles) in belief.each().iter().zip(common.by_share.chunks(common.cycles.max(1))) {
        let weights = matings.weights(*held, cycles.iter().copied());
        let empty = matings.empty(&weights);
        let to_come: f64 = all.iter().zip(&weights).map(|(all, weight)| all * weight).sum();
        let left = (to_come + empty).max(f64::MIN_POSITIVE);
        at_all.push((to_come / left).clamp(0.0, 1.0));
        let off = if spread > 0.0 { (held - mean) / spread } else { 0.0 };
        for way in 0..ways {
            let share = likely * weights[way] / left;
            worth[way] += share;
            moves[way] += share * off;
        }
    }
    let of = |weights: &[f64], come: &[f64]| -> f64 {
        come.iter().zip(weights).map(|(come, weight)| come * weight).sum()
    };
    let share = |come: &[f64]| of(&worth, come).clamp(0.0, 1.0);
    let sway = (spread > 0.0).then(|| {
        let nights = nights.chunks(ways).map(|night| of(&moves, night)).collect();
        Arc::new(Sway { nights, at_all, belief: belief.clone() })
    });
    let nights: Vec<f64> = nights.chunks(ways).map(share).collect();
    let in_lamb = share(&all);
    let reached = |part: f64| {
        let mut so_far = 0.0;
        let place = nights.iter().position(|night| {
            so_far += night;
            so_far >= part * in_lamb
        });
        later(now.date(), i64::try_from(place.unwrap_or(nights.len() - 1)).unwrap_or(0))
    };
    let (first, likely, last) = (reached(0.01), reached(0.5), reached(1.0 - LEFT_OUT));
    let (from, to) = shortest_run(&nights, RUN_HOLDS);
    let day = |place: usize| later(now.date(), i64::try_from(place).unwrap_or(0));
    Ok(LambingForecast {
        today: now.date(),
        in_lamb,
        within_12h: share(&next_12h),
        within_24h: share(&next_24h),
        to_mark: (of_marks > 0).then(|| (worth[0] * all[0]).clamp(0.0, in_lamb)),
        likely,
        run: (day(from), day(to)),
        first,
        last,
        holds: mean,
        grounds: grounds(evidence, &signs, now_day),
        gestation: evidence.gestation,
        nights,
        sway,
    })
}

fn grounds(evidence: &Evidence, signs: &[(Sign, f64)], now_day: f64) -> Vec<Ground> {
    let mut seen: Vec<(Sign, f64)> =
        signs.iter().map(|(sign, at)| (*sign, factor(*sign, now_day - at))).collect();
    seen.retain(|(_, factor)| *factor > 1.0);
    seen.sort_small_by(|one, other| other.1.total_cmp(&one.1));
    let mut grounds: Vec<Ground> =
        seen.into_iter().map(|(sign, factor)| Ground::Sign { sign, factor }).collect();
    if let Some(Scan { on, age_days: Some(age_days), .. }) = evidence.scan {
        grounds.push(Ground::AgeAtScan { on, age_days });
    }
    if let Some(on) = evidence.marks.iter().max() {
        grounds.push(Ground::Mark { on: *on });
    }
    let (ram_in, ram_out) = (evidence.mating.ram_in(), evidence.mating.ram_out());
    grounds.push(Ground::Group { ram_in, ram_out });
    grounds
}

impl LambingForecast {
    /// Returns the chances by night of so many ewes of whom just this is known, for a forecast of what is left to come.
    ///
    /// # Errors
    /// The ewes are outside `EWES`, 1 to 3,000.
    pub fn curve(&self, ewes: u32, litters: Litters) -> Result<Curve, Refused> {
        Curve::new(ewes, self.today, self.nights.clone(), litters)
            .map(|curve| curve.swaying(self.sway.clone()))
    }

    /// Returns the mean of days from today to lambing, if she lambs; today counts as none.
    #[must_use]
    pub fn mean_days(&self) -> f64 {
        let sum: f64 = self.nights.iter().enumerate().map(|(day, chance)| counted(day) * chance).sum();
        sum / self.in_lamb
    }
}
