//! How the lambs of a season grew to an age: gains, weights made alike by age, dam, sex and litter, and what each class
//! gained.
//!
//! Each figure is of one age and uses the weight nearest to it, so lambs of two ages are never set side by side, and what
//! was weighed later changes nothing of what was said before. Lambs reared by hand were fed otherwise than those at a ewe:
//! they are told, and never set beside them.

use std::collections::BTreeMap;

use super::Season;
use crate::book::{LambId, Sex};
use crate::flock::{Flock, Lamb, Reared, Weight};
use crate::reckon::adjusted_weight::{Adjusted, DamAge, Kind, NotAdjusted, ToAge, Weighed, adjust_to};
use crate::reckon::gain::gain;
use crate::reckon::growth::{FLAG_PERCENT, TARGET_AT, expected};
use crate::sort_small::SortSmall;
use crate::units::{Mass, Moment, TimeDelta};

/// A weight younger than this tells nothing of growth (ours).
const GROWN_FROM: TimeDelta = TimeDelta::days(14);
/// A weight of its first day is a birth weight.
const BIRTH: TimeDelta = TimeDelta::days(1);
/// Under this share of the mean of its like a lamb lags (ours, after the flag of the eight-week target).
const LAGS_PERCENT: f64 = FLAG_PERCENT;
/// So many lambs at least make a mean that another is held against (ours).
const LEAST_ALIKE: usize = 4;

/// How one lamb grew.
#[derive(Clone, Debug, PartialEq)]
pub struct Grown {
    /// Which.
    pub lamb: LambId,
    /// When it was weighed.
    pub at: Moment,
    /// How heavy it was.
    pub mass: Mass,
    /// How old it was then.
    pub age: TimeDelta,
    /// What it gained since birth, in grams a day; none without a birth weight.
    pub since_birth: Option<f64>,
    /// What it gained since the weight before, in grams a day; none without one.
    pub since_last: Option<f64>,
    /// Of how many it was born.
    pub born: u8,
    /// How it was reared.
    pub reared: Option<Reared>,
    /// The class of its dam's age, if that is known.
    pub dam_age: Option<DamAge>,
    /// Whether it was weighed within the span of the age that is asked for; if not, its last weight as a lamb is told.
    pub in_span: bool,
    /// Its weight made alike, or why there is none.
    pub adjusted: Result<Adjusted, NoAdjusted>,
    /// Whether it lags behind: under 85% of the way to the eight-week target, or of its like's mean adjusted weight.
    pub lags: bool,
}

/// Why a lamb has no adjusted weight.
#[derive(Clone, Debug, PartialEq)]
pub enum NoAdjusted {
    /// It was not weighed at birth.
    NoBirthWeight,
    /// It was reared by hand.
    ByHand,
    /// Nobody is known to rear it.
    RearerUnknown,
    /// The table has nothing for it.
    Table(NotAdjusted),
}

/// What a class of lambs gained.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassGain {
    /// How many lambs.
    pub lambs: u32,
    /// The mean gain since birth, in grams a day.
    pub grams_a_day: f64,
}

/// Returns the ages to which lambs of a season were weighed, the youngest first, each with how many were.
#[must_use]
pub fn ages_weighed(flock: &Flock, season: &Season, now: Moment) -> Vec<(ToAge, usize)> {
    let lambs: Vec<&Lamb> = season.lambs.iter().filter_map(|id| flock.lambs.get(id)).collect();
    let weighed = |to: ToAge| lambs.iter().filter(|lamb| nearest(lamb, to, now).is_some()).count();
    ToAge::ALL.into_iter().map(|to| (to, weighed(to))).filter(|(_, lambs)| *lambs > 0).collect()
}

/// Returns the age to set a season's lambs side by side at, unless someone asks for another: the oldest to which at least
/// half as many weights are nearest as to any; 60 days while there is none.
#[must_use]
pub fn usual_age(flock: &Flock, season: &Season, now: Moment) -> ToAge {
    let mut lambs = [0_usize; ToAge::ALL.len()];
    for lamb in season.lambs.iter().filter_map(|id| flock.lambs.get(id)) {
        let ages =
            lamb.weights.iter().filter(|weight| weight.at <= now).map(|weight| weight.at.since(lamb.born));
        let ages: Vec<ToAge> = ages.filter_map(ToAge::of).collect();
        for (place, to) in ToAge::ALL.iter().enumerate() {
            lambs[place] += usize::from(ages.contains(to));
        }
    }
    let most = lambs.iter().copied().max().unwrap_or_default();
    let enough = ToAge::ALL.into_iter().zip(lambs).rev().find(|(_, lambs)| *lambs > 0 && lambs * 2 >= most);
    enough.map_or(ToAge::Day60, |(to, _)| to)
}

/// Returns how the lambs of a season grew to an age, as known at `now`: those that lag first, then the lightest first by
/// their adjusted weight; then those without one by their gain, and last those not weighed near that age. The work follows
/// the lambs of the season.
#[must_use]
pub fn grown(flock: &Flock, season: &Season, to: ToAge, now: Moment) -> Vec<Grown> {
    let lambs = season.lambs.iter().filter_map(|id| flock.lambs.get(id));
    let mut grown: Vec<Grown> = lambs.filter_map(|lamb| one(flock, lamb, to, now)).collect();
    // All are adjusted to one age, so that like is held against like.
    let alike = grown.iter().filter_map(|one| one.adjusted.as_ref().ok()).map(|one| one.mass.as_kilograms());
    let (sum, count) = alike.fold((0.0, 0_usize), |(sum, count), mass| (sum + mass, count + 1));
    if count >= LEAST_ALIKE {
        let least = sum / f64::from(u32::try_from(count).unwrap_or(u32::MAX)) * LAGS_PERCENT / 100.0;
        for one in &mut grown {
            one.lags |= one.adjusted.as_ref().is_ok_and(|adjusted| adjusted.mass.as_kilograms() < least);
        }
    }
    let rank = |one: &Grown| {
        let adjusted = one.adjusted.as_ref().map_or(f64::INFINITY, |adjusted| adjusted.mass.as_kilograms());
        (!one.lags, !one.in_span, adjusted, one.since_birth.unwrap_or(f64::INFINITY))
    };
    grown.sort_small_by(|a, b| {
        let (one, other) = (rank(a), rank(b));
        let flags = (one.0, one.1).cmp(&(other.0, other.1));
        flags.then(one.2.total_cmp(&other.2)).then(one.3.total_cmp(&other.3)).then(a.lamb.cmp(&b.lamb))
    });
    grown
}

/// The weight nearest to an age within its span, as known at `now`; of two as near the earlier.
fn nearest(lamb: &Lamb, to: ToAge, now: Moment) -> Option<Weight> {
    let age = |weight: &&Weight| weight.at.since(lamb.born);
    let known = lamb.weights.iter().filter(|weight| weight.at <= now && to.holds(age(weight)));
    known.min_by_key(|weight| (age(weight) - TimeDelta::days(to.days().into())).abs()).copied()
}

/// Its last weight as a lamb, as known at `now`: within the span of the oldest age. What is weighed later is a grown
/// animal's, and tells nothing of the season.
fn last_as_lamb(lamb: &Lamb, now: Moment) -> Option<Weight> {
    let oldest = TimeDelta::days(i64::from(ToAge::Day120.days() + ToAge::Day120.span_days()));
    let told = |age: TimeDelta| age >= GROWN_FROM && age <= oldest;
    lamb.weights.iter().rev().find(|weight| weight.at <= now && told(weight.at.since(lamb.born))).copied()
}

fn one(flock: &Flock, lamb: &Lamb, to: ToAge, now: Moment) -> Option<Grown> {
    let near = nearest(lamb, to, now);
    let weight = near.or_else(|| last_as_lamb(lamb, now))?;
    let age = weight.at.since(lamb.born);
    let birth = lamb.birth_weight();
    let rate = |from: (Moment, Mass)| gain(from, (weight.at, weight.mass)).map(|gain| gain.grams_a_day);
    let born = flock.born_as(lamb);
    let reared = flock.reared(lamb, weight.at);
    let dam_age = lamb.dam.and_then(|dam| flock.ewe_years(dam, lamb.born)).map(DamAge::of_years);
    let line = birth.filter(|_| age <= TARGET_AT).and_then(|birth| expected(birth, age).ok().flatten());
    // The weight before may be that of its birth, which is told already.
    let before = lamb.weights.iter().rev().find(|before| before.at < weight.at);
    let before = before.filter(|before| before.at.since(lamb.born) >= BIRTH);
    Some(Grown {
        lamb: lamb.id,
        at: weight.at,
        mass: weight.mass,
        age,
        since_birth: birth.and_then(|birth| rate((lamb.born, birth))),
        since_last: before.and_then(|before| rate((before.at, before.mass))),
        born,
        reared,
        dam_age,
        in_span: near.is_some(),
        adjusted: adjusted(lamb, to, weight.mass, age, (born, reared), dam_age),
        lags: line.is_some_and(|line| weight.mass < line.flag),
    })
}

fn adjusted(
    lamb: &Lamb,
    to: ToAge,
    weight: Mass,
    age: TimeDelta,
    (born, reared): (u8, Option<Reared>),
    dam_age: Option<DamAge>,
) -> Result<Adjusted, NoAdjusted> {
    let birth = lamb.birth_weight().ok_or(NoAdjusted::NoBirthWeight)?;
    let reared = match reared {
        Some(Reared::ByEwe(count)) => count,
        Some(Reared::ByHand) => return Err(NoAdjusted::ByHand),
        None => return Err(NoAdjusted::RearerUnknown),
    };
    // A sex not seen and a dam of unknown age have no factor: they are reckoned as the class whose factor is one.
    let kind = match lamb.sex {
        Some(Sex::Ram) if lamb.is_wether() => Kind::Wether,
        Some(Sex::Ram) => Kind::Ram,
        Some(Sex::Ewe) | None => Kind::Ewe,
    };
    let dam = dam_age.unwrap_or(DamAge::ThreeToSix);
    adjust_to(to, &Weighed { birth, weight, age, dam, kind, born, reared }).map_err(NoAdjusted::Table)
}

/// Returns the mean gain from birth to the age that was asked for, by how many a lamb was born and reared with, the
/// smallest first; lambs reared by hand under a `None`, those not weighed near that age left out.
#[must_use]
pub fn by_litter(grown: &[Grown]) -> Vec<((u8, Option<u8>), ClassGain)> {
    classes(grown, |one| match one.reared? {
        Reared::ByEwe(count) => Some((one.born.min(3), Some(count.min(3)))),
        Reared::ByHand => Some((one.born.min(3), None)),
    })
}

/// Returns the same by the age of the dam, the youngest first; dams of unknown age are left out, and lambs reared by hand
/// too.
#[must_use]
pub fn by_dam_age(grown: &[Grown]) -> Vec<(DamAge, ClassGain)> {
    let order = |age: DamAge| match age {
        DamAge::One => 0_u8,
        DamAge::Two => 1,
        DamAge::ThreeToSix => 2,
        DamAge::OverSix => 3,
    };
    let at_ewe = |one: &Grown| !matches!(one.reared, Some(Reared::ByHand) | None);
    let named = classes(grown, |one| one.dam_age.filter(|_| at_ewe(one)).map(order));
    let age = |order: u8| {
        [DamAge::One, DamAge::Two, DamAge::ThreeToSix, DamAge::OverSix].into_iter().nth(order.into())
    };
    named.into_iter().filter_map(|(order, gained)| Some((age(order)?, gained))).collect()
}

fn classes<K: Ord>(grown: &[Grown], class: impl Fn(&Grown) -> Option<K>) -> Vec<(K, ClassGain)> {
    let mut sums: BTreeMap<K, (f64, u32)> = BTreeMap::new();
    for one in grown.iter().filter(|one| one.in_span) {
        if let (Some(class), Some(gain)) = (class(one), one.since_birth) {
            let (sum, count) = sums.entry(class).or_default();
            *sum += gain;
            *count += 1;
        }
    }
    let mean = |(class, (sum, lambs)): (K, (f64, u32))| {
        (class, ClassGain { lambs, grams_a_day: sum / f64::from(lambs) })
    };
    sums.into_iter().map(mean).collect()
}
