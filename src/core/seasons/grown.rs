//! How the lambs of a season grew: gains, weights made alike by age, dam, sex and litter, and what each class gained.
//!
//! Lambs reared by hand were fed otherwise than those at a ewe: they are told, and never set beside them.

use std::collections::BTreeMap;

use super::Season;
use crate::book::{LambId, Sex};
use crate::flock::{Flock, Lamb, Reared};
use crate::reckon::adjusted_weight::{Adjusted, DamAge, Kind, NotAdjusted, Weighed, adjust};
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
    /// When it was weighed last.
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

/// Returns how the lambs of a season grew, as known at `now`: those with an adjusted weight first, the heaviest first,
/// then the others by their gain. The work follows the lambs of the season.
#[must_use]
pub fn grown(flock: &Flock, season: &Season, now: Moment) -> Vec<Grown> {
    let lambs = season.lambs.iter().filter_map(|id| flock.lambs.get(id));
    let mut grown: Vec<Grown> = lambs.filter_map(|lamb| one(flock, lamb, now)).collect();
    // Of those adjusted to the same age the mean, so that like is held against like.
    let mut like: BTreeMap<u16, (f64, usize)> = BTreeMap::new();
    for adjusted in grown.iter().filter_map(|one| one.adjusted.as_ref().ok()) {
        let (sum, count) = like.entry(adjusted.at.days()).or_default();
        *sum += adjusted.mass.as_kilograms();
        *count += 1;
    }
    for one in &mut grown {
        if let Ok(adjusted) = &one.adjusted
            && let Some((sum, count)) =
                like.get(&adjusted.at.days()).filter(|(_, count)| *count >= LEAST_ALIKE)
        {
            let mean = sum / f64::from(u32::try_from(*count).unwrap_or(u32::MAX));
            one.lags |= adjusted.mass.as_kilograms() < mean * LAGS_PERCENT / 100.0;
        }
    }
    let rank = |one: &Grown| {
        let adjusted =
            one.adjusted.as_ref().map_or(f64::NEG_INFINITY, |adjusted| adjusted.mass.as_kilograms());
        (adjusted, one.since_birth.unwrap_or(f64::NEG_INFINITY))
    };
    grown.sort_small_by(|a, b| {
        let ((a1, a2), (b1, b2)) = (rank(a), rank(b));
        b1.total_cmp(&a1).then(b2.total_cmp(&a2)).then(a.lamb.cmp(&b.lamb))
    });
    grown
}

fn one(flock: &Flock, lamb: &Lamb, now: Moment) -> Option<Grown> {
    let known: Vec<_> = lamb.weights.iter().filter(|weight| weight.at <= now).collect();
    let (last, before) = known.split_last()?;
    let age = last.at.since(lamb.born);
    if age < GROWN_FROM {
        return None;
    }
    let birth = lamb.birth_weight();
    let rate = |from: (Moment, Mass)| gain(from, (last.at, last.mass)).map(|gain| gain.grams_a_day);
    let born =
        flock.litter_of(lamb.id).map_or(1, |litter| u8::try_from(litter.lambs.len()).unwrap_or(u8::MAX));
    let reared = flock.reared(lamb, last.at);
    let dam_age = lamb.dam.and_then(|dam| flock.ewe_years(dam, lamb.born)).map(DamAge::of_years);
    let line = birth.filter(|_| age <= TARGET_AT).and_then(|birth| expected(birth, age).ok().flatten());
    Some(Grown {
        lamb: lamb.id,
        at: last.at,
        mass: last.mass,
        age,
        since_birth: birth.and_then(|birth| rate((lamb.born, birth))),
        // The weight before may be that of its birth, which is told already.
        since_last: before
            .last()
            .filter(|before| before.at.since(lamb.born) >= BIRTH)
            .and_then(|weight| rate((weight.at, weight.mass))),
        born,
        reared,
        dam_age,
        adjusted: adjusted(lamb, last.mass, age, (born, reared), dam_age),
        lags: line.is_some_and(|line| last.mass < line.flag),
    })
}

fn adjusted(
    lamb: &Lamb,
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
    adjust(&Weighed { birth, weight, age, dam, kind, born, reared }).map_err(NoAdjusted::Table)
}

/// Returns the mean gain since birth by how many a lamb was born and reared with, the smallest first; lambs reared by
/// hand under a `None`.
#[must_use]
pub fn by_litter(grown: &[Grown]) -> Vec<((u8, Option<u8>), ClassGain)> {
    classes(grown, |one| match one.reared? {
        Reared::ByEwe(count) => Some((one.born.min(3), Some(count.min(3)))),
        Reared::ByHand => Some((one.born.min(3), None)),
    })
}

/// Returns the mean gain since birth by the age of the dam, the youngest first; dams of unknown age are left out, and
/// lambs reared by hand too.
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
    for one in grown {
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
