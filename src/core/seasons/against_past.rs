//! What was lost, and what ailed, in a season, against the flock's own past seasons: at the same age, of the same cause.
//!
//! Of each age only lambs count that have passed through it: a season that goes on is not held against whole ones. What is
//! told to stand out lies beyond chance: the two intervals of 95 in 100 do not meet. Under 30 on either side nothing is.

use std::collections::BTreeMap;

use super::{Season, seasons};
use crate::book::Cause;
use crate::flock::{Flock, Lamb, WEANED_BY};
use crate::reckon::body_temperature::warm_enough_to_feed;
use crate::reckon::cold_lamb::YOUNG_TO;
use crate::reckon::illness::{Ailment, ewe, lamb};
use crate::reckon::losses::Span;
use crate::reckon::survival::{LEAST_LAMBS, wilson};
use crate::sort_small::SortSmall;
use crate::units::{Moment, TimeDelta};

/// What ails a ewe so long before the first birth belongs to the season (ours: her last six weeks, and two more).
const BEFORE: TimeDelta = TimeDelta::days(56);
/// And so long after the last one (ours).
const AFTER: TimeDelta = TimeDelta::days(120);

/// So many of so many.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Rate {
    /// How many.
    pub count: u32,
    /// Of how many.
    pub of: u32,
}

/// The same thing in a season and in those before it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Against {
    /// In the season.
    pub season: Rate,
    /// In all seasons before it together.
    pub past: Rate,
}

impl Against {
    /// Says whether there are enough on both sides to compare.
    #[must_use]
    pub fn can_be_compared(self) -> bool {
        let enough = |rate: Rate| usize::try_from(rate.of).is_ok_and(|of| of >= LEAST_LAMBS);
        enough(self.season) && enough(self.past)
    }

    /// Says whether it is more than before beyond chance, or less; nothing where it is neither, or too few to tell.
    #[must_use]
    pub fn more(self) -> Option<bool> {
        let rate = |rate: Rate| wilson(rate.count, rate.of);
        let (season, past) = rate(self.season).zip(rate(self.past)).filter(|_| self.can_be_compared())?;
        match (season.from > past.to, season.to < past.from) {
            (true, _) => Some(true),
            (_, true) => Some(false),
            (false, false) => None,
        }
    }
}

/// What was lost at one age.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LostAt {
    /// The age.
    pub span: Span,
    /// How many, of those that passed through it.
    pub all: Against,
    /// Of what, the most in this season first; nothing for those born dead.
    pub causes: Vec<(Cause, Against)>,
}

/// What ailed animals.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ailed {
    /// What it most likely was.
    pub ailment: Ailment,
    /// How many animals: of lambs born alive, or of ewes that lambed.
    pub all: Against,
    /// At which ages lambs were first seen with it this season, and how many.
    pub ages: Vec<(Span, u32)>,
}

/// A season against those before it.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AgainstPast {
    /// How many seasons there were before it.
    pub seasons: usize,
    /// Lambs born in it, and in those before.
    pub born: (u32, u32),
    /// What was lost, the earliest age first; ages without a loss in either are not told.
    pub losses: Vec<LostAt>,
    /// What ailed, what ailed most this season first.
    pub ailments: Vec<Ailed>,
}

/// Returns a season against the flock's seasons before it, as known at `now`.
#[must_use]
pub fn against_past(flock: &Flock, season: &Season, now: Moment) -> AgainstPast {
    let all = seasons(flock);
    let past: Vec<&Season> = all.iter().filter(|other| other.last < season.first).collect();
    let lambs_of = |season: &Season| -> Vec<&Lamb> {
        season.lambs.iter().filter_map(|id| flock.lambs.get(id)).collect()
    };
    let here = lambs_of(season);
    let before: Vec<&Lamb> = past.iter().flat_map(|season| lambs_of(season)).collect();
    let mut ailments = ailed_lambs(&here, &before);
    ailments.extend(ailed_ewes(flock, season, &past));
    ailments.sort_small_by_key(|one| (std::cmp::Reverse(one.all.season.count), one.ailment));
    AgainstPast {
        seasons: past.len(),
        born: (number(here.iter()), number(before.iter())),
        losses: Span::ALL.into_iter().filter_map(|span| lost_at(span, &here, &before, now)).collect(),
        ailments,
    }
}

fn number<T>(of: impl Iterator<Item = T>) -> u32 {
    of.fold(0, |count, _| count + 1)
}

/// The span in which a lamb was lost before it was weaned, if it was.
fn lost(lamb: &Lamb) -> Option<Span> {
    if lamb.born_alive { lamb.lost().map(Span::of) } else { Some(Span::AtBirth) }
}

/// Says whether it can be told of a lamb whether it was lost in a span: it came into it, and through it or was lost in it.
fn tells(lamb: &Lamb, span: Span, now: Moment) -> bool {
    if let Some(lost) = lost(lamb) {
        return lost >= span;
    }
    let through = match span {
        Span::AtBirth => return true,
        Span::FirstDay => TimeDelta::hours(24),
        Span::SecondDay => TimeDelta::hours(48),
        Span::FirstWeek => TimeDelta::days(7),
        Span::FourWeeks => TimeDelta::days(28),
        Span::ToWeaning => WEANED_BY,
    };
    lamb.weaned.is_some() || lamb.age(now) >= through
}

fn lost_at(span: Span, here: &[&Lamb], before: &[&Lamb], now: Moment) -> Option<LostAt> {
    let rate = |lambs: &[&Lamb], is: &dyn Fn(&Lamb) -> bool| Rate {
        count: number(lambs.iter().filter(|lamb| lost(lamb) == Some(span) && is(lamb))),
        of: number(lambs.iter().filter(|lamb| tells(lamb, span, now))),
    };
    let against = |is: &dyn Fn(&Lamb) -> bool| Against { season: rate(here, is), past: rate(before, is) };
    let all = against(&|_| true);
    let in_span = |lamb: &&&Lamb| lost(lamb) == Some(span);
    let mut seen: Vec<Cause> = Vec::new();
    for lamb in here.iter().chain(before).filter(in_span) {
        // Of what a lamb was born dead is told where it was noted.
        if let Some(cause) = lamb.died.as_ref().map(|death| death.cause)
            && !seen.contains(&cause)
        {
            seen.push(cause);
        }
    }
    let of = |cause: Cause| {
        let died = move |lamb: &Lamb| lamb.died.as_ref().is_some_and(|death| death.cause == cause);
        (cause, against(&died))
    };
    let mut causes: Vec<(Cause, Against)> = seen.into_iter().map(of).collect();
    causes.sort_small_by_key(|(_, all)| std::cmp::Reverse((all.season.count, all.past.count)));
    (all.season.count + all.past.count > 0).then_some(LostAt { span, all, causes })
}

/// What a lamb was seen with, each once, with its age at the first look: by the signs of each look and by each cold reading.
fn ailed(lamb: &Lamb) -> Vec<(lamb::Row, TimeDelta)> {
    let looks = lamb.ill.iter().filter_map(|look| {
        let age = lamb.age(look.at);
        let case = lamb::Case {
            age: Some(age),
            head_up: look.head_up,
            swallows: look.swallows,
            warm: look.warm,
            signs: look.signs.clone(),
            on_bottle: lamb.on_bottle(),
            ..lamb::Case::default()
        };
        Some((lamb::decide(&case).rows.first()?.row, age))
    });
    let cold = lamb.temperatures.iter().filter(|read| !warm_enough_to_feed(read.temperature));
    let cold = cold
        .map(|read| lamb.age(read.at))
        .map(|age| (if age <= YOUNG_TO { lamb::Row::ColdYoung } else { lamb::Row::ColdOlder }, age));
    let mut all: Vec<(lamb::Row, TimeDelta)> = Vec::new();
    for (row, age) in looks.chain(cold) {
        match all.iter_mut().find(|(known, _)| *known == row) {
            Some((_, first)) => *first = age.min(*first),
            None => all.push((row, age)),
        }
    }
    all
}

fn ailed_lambs(here: &[&Lamb], before: &[&Lamb]) -> Vec<Ailed> {
    let alive = |lambs: &[&Lamb]| number(lambs.iter().filter(|lamb| lamb.born_alive));
    let of = (alive(here), alive(before));
    let mut found: BTreeMap<lamb::Row, Ailed> = BTreeMap::new();
    for (this, lamb) in here.iter().map(|lamb| (true, lamb)).chain(before.iter().map(|lamb| (false, lamb))) {
        for (row, age) in ailed(lamb) {
            let ailed = found.entry(row).or_insert_with(|| nobody(Ailment::Lamb(row), of));
            add(ailed, this);
            let span = Span::of(age);
            match ailed.ages.iter_mut().filter(|_| this).find(|(known, _)| *known == span) {
                Some((_, count)) => *count += 1,
                None if this => ailed.ages.push((span, 1)),
                None => {}
            }
        }
    }
    let sorted = |mut ailed: Ailed| {
        ailed.ages.sort_small_by_key(|(span, _)| *span);
        ailed
    };
    found.into_values().map(sorted).collect()
}

fn nobody(ailment: Ailment, of: (u32, u32)) -> Ailed {
    let rate = |of| Rate { count: 0, of };
    Ailed { ailment, all: Against { season: rate(of.0), past: rate(of.1) }, ages: Vec::new() }
}

fn add(ailed: &mut Ailed, this: bool) {
    let rate = if this { &mut ailed.all.season } else { &mut ailed.all.past };
    rate.count += 1;
}

/// What ewes were seen with around each season, of the ewes that lambed in it.
fn ailed_ewes(flock: &Flock, season: &Season, past: &[&Season]) -> Vec<Ailed> {
    let dams = |season: &Season| {
        let lambs = season.lambs.iter().filter_map(|id| flock.lambs.get(id));
        let mut dams: Vec<_> = lambs.filter_map(|lamb| lamb.dam).collect();
        dams.sort_small();
        dams.dedup();
        number(dams.iter())
    };
    let of = (dams(season), past.iter().map(|season| dams(season)).sum());
    let mut found: BTreeMap<ewe::Row, Ailed> = BTreeMap::new();
    for ewe in flock.ewes.values() {
        for (this, season) in
            std::iter::once((true, season)).chain(past.iter().map(|season| (false, *season)))
        {
            let near = |at: Moment| at.since(season.first) >= -BEFORE && at.since(season.last) <= AFTER;
            let mut rows: Vec<ewe::Row> = Vec::new();
            for look in ewe.ill.iter().filter(|look| near(look.at)) {
                let case = ewe::Case {
                    stage: look.stage,
                    standing: look.standing,
                    eating: look.eating,
                    nothing_out: look.nothing_out,
                    signs: look.signs.clone(),
                    onset: look.onset,
                    ..ewe::Case::default()
                };
                let row = ewe::decide(&case).rows.first().map(|found| found.row);
                rows.extend(row.filter(|row| !rows.contains(row)));
            }
            for row in rows {
                add(found.entry(row).or_insert_with(|| nobody(Ailment::Ewe(row), of)), this);
            }
        }
    }
    found.into_values().collect()
}
