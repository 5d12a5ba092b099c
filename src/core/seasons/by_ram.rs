//! A season by ram: ewes, first cycle, lambs, birth weights, gains and losses, each with how many it is of.
//!
//! Rams are in no order of merit: each is held against all others together, and only what chance seldom brings is said
//! to differ.

use std::collections::BTreeMap;

use chrono::NaiveDate;

use super::matings::{count, windows_for};
use super::sires::{Sire, said_of};
use super::{Grown, Season};
use crate::book::{EweId, LambId};
use crate::flock::{Flock, Lamb, MatingWindow, Reared};
use crate::reckon::fisher::{SELDOM, Sample, chance};
use crate::reckon::season::cycles::{Settled, settled};
use crate::sort_small::SortSmall;
use crate::units::{Mass, Moment};

/// What a ram is held against others by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RamFigure {
    /// Ewes that settled in the first cycle.
    FirstCycle,
    /// Weights at birth.
    BirthWeight,
    /// Gains to the age that is asked for.
    Gain,
    /// Lambs lost.
    Lost,
}

/// A ram's season in numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct OfRam {
    /// Who.
    pub sire: Sire,
    /// Ewes put to him.
    pub put: u32,
    /// Those that lambed.
    pub lambed: u32,
    /// How many settled in the first cycle; none until that can be told.
    pub first_cycle: Option<Settled>,
    /// Lambs born, dead or alive.
    pub born: u32,
    /// Lambs born alive.
    pub born_alive: u32,
    /// Those of them that were lost.
    pub lost: u32,
    /// The mean birth weight, and of how many.
    pub birth_weight: Option<(Mass, u32)>,
    /// The mean gain since birth in grams a day of those reared at a ewe, and of how many.
    pub gain: Option<(f64, u32)>,
    /// In what he differs from all others by more than chance seldom brings, and whether he has more.
    pub apart: Vec<(RamFigure, bool)>,
}

/// What is gathered of one ram.
#[derive(Default)]
struct Gathered {
    put: u32,
    lambed: Vec<NaiveDate>,
    lambs: Vec<LambId>,
}

/// Returns a season by ram, those with the most ewes first; `grown` is how its lambs grew to the age that is asked for.
#[must_use]
pub fn by_ram(flock: &Flock, season: &Season, grown: &[Grown], now: Moment) -> Vec<OfRam> {
    let mut of_ewe: BTreeMap<EweId, Vec<MatingWindow>> = BTreeMap::new();
    for window in windows_for(flock, season) {
        of_ewe.entry(window.ewe).or_default().push(window);
    }
    let mut litters: BTreeMap<EweId, LambId> = BTreeMap::new();
    for lamb in season.lambs.iter().filter_map(|id| flock.lambs.get(id)) {
        if let Some(dam) = lamb.dam {
            litters.entry(dam).or_insert(lamb.litter);
        }
    }
    // A ewe of whom no group is noted was put to the ram that is said to be the sire.
    for dam in litters.keys() {
        of_ewe.entry(*dam).or_default();
    }
    let mut rams: BTreeMap<_, (Sire, Gathered)> = BTreeMap::new();
    for (ewe, windows) in &of_ewe {
        let litter = litters.get(ewe).and_then(|id| flock.litters.get(id));
        let brought = |window: &&MatingWindow| {
            litter.is_none_or(|litter| flock.litter_of_window(window).is_some_and(|one| one.id == litter.id))
        };
        let said = litter.and_then(|litter| said_of(flock, litter));
        let Some(sire) = said.or_else(|| Sire::of_windows(flock, windows.iter().filter(brought))) else {
            continue;
        };
        let (_, gathered) = rams.entry(sire.key()).or_insert_with(|| (sire, Gathered::default()));
        gathered.put += 1;
        if let Some(litter) = litter {
            gathered.lambed.push(litter.began.local().date());
            gathered.lambs.extend(&litter.lambs);
        }
    }
    let gains: BTreeMap<LambId, f64> = grown
        .iter()
        .filter(|one| one.in_span && matches!(one.reared, Some(Reared::ByEwe(_))))
        .filter_map(|one| Some((one.lamb, one.since_birth?)))
        .collect();
    let mut all: Vec<(OfRam, [Vec<f64>; 2])> =
        rams.into_values().map(|(sire, gathered)| of_ram(flock, sire, &gathered, &gains, now)).collect();
    apart(&mut all);
    let mut all: Vec<OfRam> = all.into_iter().map(|(of, _)| of).collect();
    all.sort_small_by(|one, other| other.put.cmp(&one.put).then_with(|| one.sire.cmp(&other.sire)));
    all
}

/// A ram's figures, and the weights and gains that they are made of.
fn of_ram(
    flock: &Flock,
    sire: Sire,
    gathered: &Gathered,
    gains: &BTreeMap<LambId, f64>,
    now: Moment,
) -> (OfRam, [Vec<f64>; 2]) {
    let lambs: Vec<&Lamb> = gathered.lambs.iter().filter_map(|id| flock.lambs.get(id)).collect();
    let alive = lambs.iter().filter(|lamb| lamb.born_alive);
    let weights: Vec<f64> =
        alive.clone().filter_map(|lamb| lamb.birth_weight()).map(Mass::as_kilograms).collect();
    let gained: Vec<f64> = lambs.iter().filter_map(|lamb| gains.get(&lamb.id)).copied().collect();
    let of = OfRam {
        sire,
        put: gathered.put,
        lambed: count(gathered.lambed.len()),
        first_cycle: settled(&gathered.lambed, gathered.put, now.local().date()),
        born: count(lambs.len()),
        born_alive: count(alive.count()),
        lost: count(lambs.iter().filter(|lamb| lamb.lost().is_some()).count()),
        birth_weight: mean(&weights).map(|(mean, of)| (Mass::from_kilograms(mean), of)),
        gain: mean(&gained),
        apart: Vec::new(),
    };
    (of, [weights, gained])
}

fn mean(all: &[f64]) -> Option<(f64, u32)> {
    let of = count(all.len());
    (of > 0).then(|| (all.iter().sum::<f64>() / f64::from(of), of))
}

/// Holds each ram against all others together.
fn apart(all: &mut [(OfRam, [Vec<f64>; 2])]) {
    let seldom = SELDOM / f64::from(count(all.len()).max(1));
    let medians =
        [0, 1].map(|which| median(all.iter().flat_map(|(_, lists)| &lists[which]).copied().collect()));
    let sample = |(of, lists): &(OfRam, [Vec<f64>; 2]), figure: RamFigure| -> Sample {
        let over = |which: usize| {
            let over = lists[which].iter().filter(|one| **one > medians[which]).count();
            Sample { yes: count(over), no: count(lists[which].len() - over) }
        };
        match figure {
            RamFigure::FirstCycle => of.first_cycle.map_or(Sample::default(), |settled| Sample {
                yes: settled.ewes,
                no: settled.put.saturating_sub(settled.ewes),
            }),
            RamFigure::BirthWeight => over(0),
            RamFigure::Gain => over(1),
            RamFigure::Lost => Sample { yes: of.lost, no: of.born_alive.saturating_sub(of.lost) },
        }
    };
    for figure in [RamFigure::FirstCycle, RamFigure::BirthWeight, RamFigure::Gain, RamFigure::Lost] {
        let samples: Vec<Sample> = all.iter().map(|one| sample(one, figure)).collect();
        let (yes, no) = samples.iter().fold((0, 0), |(yes, no), one| (yes + one.yes, no + one.no));
        for ((of, _), one) in all.iter_mut().zip(samples) {
            let others = Sample { yes: yes - one.yes, no: no - one.no };
            if chance(one, others) <= seldom {
                of.apart.push((figure, one.share() > others.share()));
            }
        }
    }
}

/// The middle of all; nought of none.
fn median(mut all: Vec<f64>) -> f64 {
    all.sort_small_by(f64::total_cmp);
    let middle = all.len() / 2;
    match (all.get(middle.wrapping_sub(usize::from(all.len().is_multiple_of(2)))), all.get(middle)) {
        (Some(one), Some(other)) => f64::midpoint(*one, *other),
        _ => 0.0,
    }
}
