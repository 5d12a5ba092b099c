//! Which ewe to keep: each ewe's years side by side, what the farm minds of her, this season beside the last.
//!
//! The record of each is [`super::record`]'s; what only a table of all needs is added here, in one walk through the flock.
//! How grave a mark is, is ours: what comes back and costs a ewe or her milk first, what costs a lamb next.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet};

use super::record::{KeepMark, REARED_AT, Record, marks, record_in};
use super::year::at_weaning;
use super::{Grown, Season, grown, matings, seasons, usual_age};
use crate::book::{Cause, EweId, GroupId, LambId, LambingEase};
use crate::flock::{Ewe, Flock, Group, Lamb, MatingWindow};
use crate::reckon::season::cycles::SETTLED_DAYS;
use crate::settings::{CullRules, CullSigns};
use crate::sort_small::SortSmall;
use crate::terms::{EweSign, UdderHalf};
use crate::units::{Condition, Mass, Moment, TimeDelta};

/// Lame again so soon is the same lameness (ours).
const LAME_AGAIN: TimeDelta = TimeDelta::days(14);
/// What is seen of an udder or a prolapse so near together is of one season (ours).
const ONE_SEASON: TimeDelta = TimeDelta::days(120);

/// A ewe's year in one season.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SeasonOf {
    /// By which year it is called.
    pub year: i32,
    /// Lambs born to her in it; none when she did not lamb.
    pub born: u32,
    /// Of them alive at birth.
    pub born_alive: u32,
    /// Lambs that she reared, or has reared so far: those alive at her.
    pub at_her: u32,
    /// What those that she weaned or has at six weeks weighed, and how many were weighed.
    pub weaned: Option<(Mass, u32)>,
    /// The mean gain of her lambs since birth, in grams a day, and over how many.
    pub gain: Option<(f64, u32)>,
    /// Whether she was put to the ram for it and did not lamb; none when she was not, or may still lamb.
    pub missed: bool,
}

/// A ewe as the table shows her.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept {
    /// Who.
    pub ewe: EweId,
    /// Her years.
    pub record: Record,
    /// What the farm minds of her, the gravest first.
    pub marks: Vec<KeepMark>,
    /// What she lost and of what, the most frequent first; none for those born dead.
    pub lost_of: Vec<(Option<Cause>, u32)>,
    /// Lambs at her that live and are too young to count as reared.
    pub growing: u32,
    /// Seasons in which she lambed or was put to the ram.
    pub seasons: u32,
    /// Births with any help.
    pub helped: u32,
    /// What she weaned in a season on the mean, and over how many lambs that were weighed.
    pub weaned_a_season: Option<(Mass, u32)>,
    /// Seasons in which a half of her udder was dry, hard or cold.
    pub udder: u32,
    /// Times that she was lame.
    pub lame: u32,
    /// Seasons with a prolapse.
    pub prolapse: u32,
    /// Seasons in which she lambed late in her group.
    pub late: u32,
    /// Her last score.
    pub condition: Option<Condition>,
    /// The latest season of the flock, and the one before.
    pub latest: [Option<SeasonOf>; 2],
    /// Whether a mating of hers was ever noted.
    pub put_to_ram: bool,
    /// Since when she is in the book.
    pub since: Moment,
}

/// Returns how grave a mark is (ours): 3 comes back and costs her or her milk, 2 costs lambs or a season, 1 the rest.
#[must_use]
pub const fn gravity(mark: KeepMark) -> u8 {
    match mark {
        KeepMark::Udder(_) | KeepMark::Prolapse(_) => 3,
        KeepMark::HardBirths(_)
        | KeepMark::Lost(_)
        | KeepMark::TurnedAway(_)
        | KeepMark::Barren(_)
        | KeepMark::Lame(_) => 2,
        KeepMark::Years(_) | KeepMark::Late(_) | KeepMark::Thin(_) | KeepMark::Light(_) => 1,
    }
}

impl Kept {
    /// Returns by what she is ranked: how many marks, then how grave they are together.
    #[must_use]
    pub fn rank(&self) -> (usize, u32) {
        (self.marks.len(), self.marks.iter().map(|mark| u32::from(gravity(*mark))).sum())
    }

    /// Says whether she is old enough to have lambed, and no lambing of hers is noted (ours: from two years).
    #[must_use]
    pub fn no_lambing_noted(&self) -> bool {
        self.record.litters == 0 && self.record.years.is_some_and(|years| years >= 2)
    }
}

/// Returns the living ewes, those with the most and the gravest marks first, then by what they weaned, the least first.
#[must_use]
pub fn keeping(flock: &Flock, now: Moment) -> Vec<Kept> {
    let all = seasons(flock);
    let gains: Vec<BTreeMap<LambId, f64>> =
        all.iter().take(2).map(|season| gains(flock, season, now)).collect();
    let firsts = first_lambings(flock);
    let living = flock.ewes.values().filter(|ewe| ewe.lives());
    let mut kept: Vec<Kept> = living.filter_map(|ewe| one(flock, ewe, &all, &gains, &firsts, now)).collect();
    let mean = mean_weaned(&kept);
    let settings = &flock.settings;
    for one in &mut kept {
        one.marks = marks(&one.record, &settings.cull_rules);
        one.marks.extend(signs(one, &settings.cull_signs, mean));
        one.marks.sort_small_by_key(|mark| Reverse(gravity(*mark)));
    }
    let weaned = |one: &Kept| one.weaned_a_season.map_or(f64::INFINITY, |(mass, _)| mass.as_kilograms());
    kept.sort_small_by(|one, other| {
        let ranked = other.rank().cmp(&one.rank());
        ranked.then(weaned(one).total_cmp(&weaned(other))).then(one.ewe.cmp(&other.ewe))
    });
    kept
}

/// Says whether the farm minds anything.
#[must_use]
pub fn minds_anything(rules: &CullRules, signs: &CullSigns) -> bool {
    *rules != CullRules::default() || *signs != CullSigns::default()
}

fn one(
    flock: &Flock,
    ewe: &Ewe,
    all: &[Season],
    gains: &[BTreeMap<LambId, f64>],
    firsts: &Firsts,
    now: Moment,
) -> Option<Kept> {
    let record = record_in(flock, ewe, all, now)?;
    let litters = flock.litters_of(ewe.id);
    let lambs: Vec<&Lamb> =
        litters.iter().flat_map(|litter| &litter.lambs).filter_map(|id| flock.lambs.get(id)).collect();
    let seasons = record.litters + record.barren;
    let weaned = record.kilograms.filter(|_| seasons > 0);
    let windows = flock.windows_of(ewe.id);
    let late: BTreeSet<LambId> =
        windows.iter().filter_map(|window| late_litter(flock, window, firsts)).collect();
    Some(Kept {
        ewe: ewe.id,
        marks: Vec::new(),
        lost_of: lost_of(&lambs),
        growing: count(
            flock.reared_by(ewe.id).iter().filter(|lamb| lamb.lives() && lamb.age(now) < REARED_AT),
        ),
        seasons,
        helped: count(lambs.iter().filter(|lamb| lamb.ease.is_some_and(|ease| ease != LambingEase::Alone))),
        weaned_a_season: weaned.map(|mass| (per(mass, seasons), record.weighed)),
        udder: in_seasons(udder_ill(ewe)),
        lame: apart(lame(ewe), LAME_AGAIN),
        prolapse: in_seasons(prolapsed(ewe)),
        late: count(late.iter()),
        condition: ewe.condition().map(|scored| scored.score),
        latest: [0, 1]
            .map(|place| Some(season_of(flock, ewe, all.get(place)?, gains.get(place)?, &windows, now))),
        put_to_ram: !windows.is_empty(),
        since: ewe.came,
        record,
    })
}

fn season_of(
    flock: &Flock,
    ewe: &Ewe,
    season: &Season,
    gains: &BTreeMap<LambId, f64>,
    windows: &[MatingWindow],
    now: Moment,
) -> SeasonOf {
    let within = |lamb: &&&Lamb| (season.first..=season.last).contains(&lamb.born);
    let own: Vec<&Lamb> = flock
        .litters_of(ewe.id)
        .iter()
        .flat_map(|litter| &litter.lambs)
        .filter_map(|id| flock.lambs.get(id))
        .filter(|lamb| within(&lamb))
        .collect();
    let reared = flock.reared_by(ewe.id);
    let at_her: Vec<&&Lamb> =
        reared.iter().filter(within).filter(|lamb| lamb.died.is_none() && lamb.born_alive).collect();
    let weights: Vec<Mass> = at_her.iter().filter_map(|lamb| at_weaning(lamb)).collect();
    let gained: Vec<f64> = at_her.iter().filter_map(|lamb| gains.get(&lamb.id)).copied().collect();
    // Put to the ram for it, and no such mating can bring a lamb any more: as her record counts it.
    let missed = || {
        let mut of_season = windows.iter().filter(|window| matings::is_for(flock, window, season)).peekable();
        of_season.peek().is_some()
            && season.last < now
            && !of_season.any(|window| matings::may_still_lamb(flock, window, now))
    };
    SeasonOf {
        year: season.year(),
        born: count(own.iter()),
        born_alive: count(own.iter().filter(|lamb| lamb.born_alive)),
        at_her: count(at_her.iter()),
        weaned: (!weights.is_empty()).then(|| (weights.iter().copied().sum(), count(weights.iter()))),
        gain: (!gained.is_empty())
            .then(|| (gained.iter().sum::<f64>() / f64::from(count(gained.iter())), count(gained.iter()))),
        missed: own.is_empty() && missed(),
    }
}

/// What the lambs of a season gained since birth.
fn gains(flock: &Flock, season: &Season, now: Moment) -> BTreeMap<LambId, f64> {
    let gained = |one: Grown| Some((one.lamb, one.since_birth?));
    let to = usual_age(flock, season, now);
    grown(flock, season, to, now).into_iter().filter_map(gained).collect()
}

fn count<T>(of: impl Iterator<Item = T>) -> u32 {
    of.fold(0, |count, _| count + 1)
}

fn per(mass: Mass, of: u32) -> Mass {
    Mass::from_kilograms(mass.as_kilograms() / f64::from(of.max(1)))
}

fn lost_of(lambs: &[&Lamb]) -> Vec<(Option<Cause>, u32)> {
    let mut lost: Vec<(Option<Cause>, u32)> = Vec::new();
    for lamb in lambs {
        let of = match &lamb.died {
            _ if !lamb.born_alive => None,
            Some(death) if lamb.lost().is_some() => Some(death.cause),
            Some(_) | None => continue,
        };
        match lost.iter_mut().find(|(cause, _)| *cause == of) {
            Some((_, count)) => *count += 1,
            None => lost.push((of, 1)),
        }
    }
    lost.sort_small_by_key(|(_, count)| Reverse(*count));
    lost
}

/// When a half of her udder gave no milk, or was hard or cold.
fn udder_ill(ewe: &Ewe) -> Vec<Moment> {
    let bad = |half: UdderHalf| half != UdderHalf::Milks;
    let checked = ewe.udder.iter().filter(|seen| bad(seen.left) || bad(seen.right)).map(|seen| seen.at);
    let ails = [EweSign::UdderCold, EweSign::UdderHot, EweSign::UdderFirm];
    let ill = ewe.ill.iter().filter(|ill| ill.signs.iter().any(|sign| ails.contains(sign)));
    checked.chain(ill.map(|ill| ill.at)).collect()
}

fn prolapsed(ewe: &Ewe) -> Vec<Moment> {
    let out = [EweSign::SmoothOut, EweSign::StrainsWithIt, EweSign::RawOut];
    let ill = ewe.ill.iter().filter(|ill| ill.signs.iter().any(|sign| out.contains(sign)));
    ill.map(|ill| ill.at).collect()
}

fn lame(ewe: &Ewe) -> Vec<Moment> {
    let lame = [EweSign::Lame, EweSign::NoWeightOnLeg];
    let ill = ewe.ill.iter().filter(|ill| ill.signs.iter().any(|sign| lame.contains(sign)));
    ill.map(|ill| ill.at).collect()
}

fn in_seasons(of: Vec<Moment>) -> u32 {
    apart(of, ONE_SEASON)
}

/// Counts those that lie so far after the one counted before.
fn apart(mut of: Vec<Moment>, by: TimeDelta) -> u32 {
    of.sort_small();
    let mut last: Option<Moment> = None;
    let mut times = 0;
    for at in of {
        if last.is_none_or(|last| at.since(last) >= by) {
            times += 1;
            last = Some(at);
        }
    }
    times
}

/// The first lambing to each time of a ram with a group.
type Firsts = BTreeMap<(GroupId, Moment), Moment>;

fn first_lambings(flock: &Flock) -> Firsts {
    let mut firsts = Firsts::new();
    for group in flock.groups.values() {
        for window in group.windows() {
            if let Some(litter) = flock.litter_of_window(&window) {
                let first = firsts.entry(rams_time(group, &window)).or_insert(litter.began);
                *first = litter.began.min(*first);
            }
        }
    }
    firsts
}

/// The time of the ram that a ewe's own days with him are part of.
fn rams_time(group: &Group, window: &MatingWindow) -> (GroupId, Moment) {
    let times = group.ram_times();
    let came = times.iter().rev().map(|(came, _)| *came).find(|came| *came <= window.ram_in);
    (group.id, came.unwrap_or(window.ram_in))
}

/// Returns her litter of this mating if it came later than those that settled in the first cycle: more than 20 days after
/// the first of her group.
fn late_litter(flock: &Flock, window: &MatingWindow, firsts: &Firsts) -> Option<LambId> {
    let first = firsts.get(&rams_time(flock.groups.get(&window.group)?, window))?;
    let days = |began: Moment| (began.local().date() - first.local().date()).num_days();
    flock.litter_of_window(window).filter(|litter| days(litter.began) > SETTLED_DAYS).map(|litter| litter.id)
}

/// So many ewes at least make a mean that one is held against (ours).
const LEAST_ALIKE: usize = 4;

fn mean_weaned(kept: &[Kept]) -> Option<f64> {
    let weaned: Vec<f64> =
        kept.iter().filter_map(|one| one.weaned_a_season).map(|(mass, _)| mass.as_kilograms()).collect();
    let sum: f64 = weaned.iter().sum();
    (weaned.len() >= LEAST_ALIKE).then(|| sum / f64::from(count(weaned.iter())))
}

fn signs(one: &Kept, keep: &CullSigns, mean: Option<f64>) -> Vec<KeepMark> {
    let met =
        |count: u32, from: Option<u8>| from.is_some_and(|from| count >= u32::from(from)).then_some(count);
    let thin =
        keep.thin.and_then(|under| one.condition.filter(|score| *score < Condition::from_quarters(under)));
    let light = keep.light.and_then(|under| {
        let (mass, _) = one.weaned_a_season?;
        let percent = mass.as_kilograms() / mean? * 100.0;
        (percent < f64::from(under)).then_some(KeepMark::Light(mass))
    });
    let counted = [
        met(one.udder, keep.udder).map(KeepMark::Udder),
        met(one.prolapse, keep.prolapse).map(KeepMark::Prolapse),
        met(one.lame, keep.lame).map(KeepMark::Lame),
        met(one.late, keep.late).map(KeepMark::Late),
        thin.map(KeepMark::Thin),
        light,
    ];
    counted.into_iter().flatten().collect()
}
