//! One season in numbers: how many were born, lived and were weaned, what was lost when and of what, and on which days.
//!
//! A lamb too young to tell counts neither way in what lived to a day or a week; for survival the dead wait four
//! weeks too.

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;

use super::{Season, matings};
use crate::book::{Cause, EweId, LambId};
use crate::flock::{Flock, Lamb, Weight};
use crate::reckon::flock_figures::{Counts, Figures, Others, figures};
use crate::reckon::losses::Span;
use crate::reckon::survival::Fate;
use crate::sort_small::{Gather, SortSmall};
use crate::units::{Mass, Moment, TimeDelta};

/// So many of the lambs born alive that were old enough to tell.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Alive {
    /// Still alive at that age.
    pub count: u32,
    /// Born alive that long ago.
    pub of: u32,
}

/// What was lost in one span of age, by cause.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Loss {
    /// When.
    pub span: Span,
    /// How many in all.
    pub lambs: u32,
    /// How many of what, the most frequent first; of those born dead, only where it was noted.
    pub causes: Vec<(Cause, u32)>,
}

/// A season in numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct Year {
    /// What was counted.
    pub counts: Counts,
    /// What follows from it.
    pub figures: Figures,
    /// Litters whose dam is not known; each counts as a ewe that lambed.
    pub without_dam: u32,
    /// How many litters there were of one, two, three and more lambs.
    pub litters: [u32; 3],
    /// Alive a day after birth.
    pub at_a_day: Alive,
    /// Alive a week after birth.
    pub at_a_week: Alive,
    /// What was lost, by span, the earliest first; spans without a loss are not told.
    pub losses: Vec<Loss>,
    /// How many were born on which day, by the clock it was lived at; days without a birth are not told.
    pub by_day: Vec<(NaiveDate, u32)>,
    /// Birth weights and whether those lambs lived for four weeks, of lambs old enough to tell.
    pub fates: Vec<Fate>,
    /// The mean birth weight of those weighed, and how many they are.
    pub birth_weight: Option<(Mass, u32)>,
}

/// A lamb that lives so long has outlived most of what kills the light ones (ours).
const OUTLIVED: TimeDelta = TimeDelta::days(28);

/// Returns a season in numbers, as known at `now`.
///
/// The work follows the lambs of the season and the ewes put to the ram for it.
#[must_use]
pub fn year(flock: &Flock, season: &Season, now: Moment) -> Year {
    let put = matings::put_to_ram(flock, season);
    let lambs: Vec<&Lamb> = season.lambs.iter().filter_map(|id| flock.lambs.get(id)).collect();
    let count = |is: &dyn Fn(&Lamb) -> bool| -> u32 { sum(lambs.iter().filter(|lamb| is(lamb))) };
    let litters: BTreeSet<LambId> = lambs.iter().map(|lamb| lamb.litter).gathered();
    let dams: BTreeSet<EweId> = lambs.iter().filter_map(|lamb| lamb.dam).gathered();
    let mut without_dam = 0;
    let mut sizes = [0; 3];
    for litter in litters.iter().filter_map(|id| flock.litters.get(id)) {
        without_dam += u32::from(litter.dam.is_none());
        sizes[flock.born_in(litter).clamp(1, 3) - 1] += 1;
    }
    let weaned: Vec<&&Lamb> = lambs.iter().filter(|lamb| lamb.weaned.is_some()).collect();
    let weighed: Vec<Mass> = weaned.iter().filter_map(|lamb| at_weaning(lamb)).collect();
    let weaned_weighed = sum(weighed.iter());
    let was_put = |dam: Option<EweId>| dam.is_some_and(|dam| put.contains(&dam));
    let of_others = |lamb: &&&&Lamb| !was_put(lamb.dam);
    let others = Others {
        lambed: sum(dams.iter().filter(|dam| !was_put(Some(**dam)))) + without_dam,
        born: count(&|lamb| !was_put(lamb.dam)),
        weaned: sum(weaned.iter().filter(of_others)),
        weaned_mass: weaned.iter().filter(of_others).filter_map(|lamb| at_weaning(lamb)).sum(),
    };
    let counts = Counts {
        put_to_ram: (!put.is_empty()).then(|| matings::count(put.len())),
        others,
        lambed: sum(dams.iter()) + without_dam,
        born_alive: count(&|lamb| lamb.born_alive),
        born_dead: count(&|lamb| !lamb.born_alive),
        died: count(&|lamb| lamb.lost().is_some()),
        weaned: sum(weaned.iter()),
        weaned_mass: (weaned_weighed > 0).then(|| weighed.into_iter().sum()),
        weaned_weighed,
    };
    Year {
        counts,
        figures: figures(&counts),
        without_dam,
        litters: sizes,
        at_a_day: alive(&lambs, TimeDelta::days(1), now),
        at_a_week: alive(&lambs, TimeDelta::days(7), now),
        losses: losses(&lambs),
        by_day: by_day(&lambs),
        fates: fates(&lambs, now),
        birth_weight: birth_weight(&lambs),
    }
}

fn sum<T>(of: impl Iterator<Item = T>) -> u32 {
    of.fold(0, |count, _| count + 1)
}

/// Its weight when it was weaned: the nearest taken within a week of it.
pub(super) fn at_weaning(lamb: &Lamb) -> Option<Mass> {
    let weaned = lamb.weaned?;
    let off = |weight: &&Weight| weaned.since(weight.at).abs();
    let near = lamb.weights.iter().filter(|weight| off(weight) <= TimeDelta::days(7));
    near.min_by_key(off).map(|weight| weight.mass)
}

fn alive(lambs: &[&Lamb], age: TimeDelta, now: Moment) -> Alive {
    let old_enough = |lamb: &&&Lamb| lamb.born_alive && lamb.age(now) >= age;
    let lived = |lamb: &&&Lamb| lamb.died.as_ref().is_none_or(|death| death.at.since(lamb.born) >= age);
    Alive {
        count: sum(lambs.iter().filter(old_enough).filter(lived)),
        of: sum(lambs.iter().filter(old_enough)),
    }
}

fn losses(lambs: &[&Lamb]) -> Vec<Loss> {
    let mut by_span: BTreeMap<Span, (u32, Vec<(Cause, u32)>)> = BTreeMap::new();
    for lamb in lambs {
        let span = if lamb.born_alive { lamb.lost().map(Span::of) } else { Some(Span::AtBirth) };
        let Some(span) = span else { continue };
        let (lost, causes) = by_span.entry(span).or_default();
        *lost += 1;
        // Of what a lamb was born dead is seldom noted, and it counts all the same.
        let Some(death) = &lamb.died else { continue };
        match causes.iter_mut().find(|(cause, _)| *cause == death.cause) {
            Some((_, count)) => *count += 1,
            None => causes.push((death.cause, 1)),
        }
    }
    let loss = |(span, (lambs, mut causes)): (Span, (u32, Vec<(Cause, u32)>))| {
        causes.sort_small_by_key(|(_, count)| std::cmp::Reverse(*count));
        Loss { span, lambs, causes }
    };
    by_span.into_iter().map(loss).collect()
}

fn by_day(lambs: &[&Lamb]) -> Vec<(NaiveDate, u32)> {
    let mut days: BTreeMap<NaiveDate, u32> = BTreeMap::new();
    for lamb in lambs {
        *days.entry(lamb.born.local().date()).or_default() += 1;
    }
    days.into_iter().collect()
}

fn fates(lambs: &[&Lamb], now: Moment) -> Vec<Fate> {
    let fate = |lamb: &&Lamb| {
        let birth = lamb.birth_weight()?;
        let died = lamb.died.as_ref().map(|death| death.at.since(lamb.born));
        let lived = lamb.born_alive && died.is_none_or(|age| age >= OUTLIVED);
        // The dead wait as long as the living, or the young would all seem to die.
        (lamb.age(now) >= OUTLIVED).then_some(Fate { birth, lived })
    };
    lambs.iter().filter_map(fate).collect()
}

fn birth_weight(lambs: &[&Lamb]) -> Option<(Mass, u32)> {
    let weighed: Vec<Mass> = lambs.iter().filter_map(|lamb| lamb.birth_weight()).collect();
    let lambs = sum(weighed.iter());
    let total: Mass = weighed.into_iter().sum();
    (lambs > 0).then(|| (Mass::from_kilograms(total.as_kilograms() / f64::from(lambs)), lambs))
}
