//! A ewe's plain record over all her seasons, and the marks by which the farm looks at her again.

use super::{Season, matings, seasons};
use crate::book::{EweId, LambingEase};
use crate::flock::{Ewe, Flock, Lamb};
use crate::reckon::adjusted_weight::ToAge;
use crate::settings::CullRules;
use crate::sort_small::SortSmall;
use crate::units::{Condition, Mass, Moment, TimeDelta};

/// A lamb that lived so long counts as reared though nobody noted its weaning (ours: six weeks).
pub const REARED_AT: TimeDelta = TimeDelta::days(42);

/// What is known of a ewe's years.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Record {
    /// Her lambings.
    pub litters: u32,
    /// Lambs born to her, dead or alive.
    pub born: u32,
    /// Those born dead.
    pub born_dead: u32,
    /// Those born alive that died before they were weaned.
    pub lost: u32,
    /// Lambs that she reared: weaned or six weeks old at her, fostered ones too.
    pub reared: u32,
    /// Births at which she was pulled hard, or the vet had to help.
    pub hard_births: u32,
    /// Lambs of hers that she turned away.
    pub turned_away: u32,
    /// Seasons in which she was put to the ram and did not lamb.
    pub barren: u32,
    /// What the lambs that she reared weighed in all, each nearest to its weaning, or to 90 days, and at six weeks or later.
    pub kilograms: Option<Mass>,
    /// How many of the reared those are.
    pub weighed: u32,
    /// Her whole years, if it is known when she was born.
    pub years: Option<u16>,
}

/// A reason to look at a ewe again, with how often it came.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum KeepMark {
    /// Hard births.
    HardBirths(u32),
    /// Lambs lost, those born dead among them.
    Lost(u32),
    /// Lambs turned away.
    TurnedAway(u32),
    /// Seasons without lambs.
    Barren(u32),
    /// Her years.
    Years(u16),
    /// Seasons in which a half of her udder was dry, hard or cold.
    Udder(u32),
    /// Times lame.
    Lame(u32),
    /// Seasons with a prolapse.
    Prolapse(u32),
    /// Seasons in which she lambed late in her group.
    Late(u32),
    /// Her last score, which is under the farm's.
    Thin(Condition),
    /// What she weaned in a season, which is light beside the flock's mean.
    Light(Mass),
}

/// Returns a ewe's record as known at `now`; none when she is not in the book.
#[must_use]
pub fn record(flock: &Flock, ewe: EweId, now: Moment) -> Option<Record> {
    let all = seasons(flock);
    record_in(flock, flock.ewe(ewe)?, &all, now)
}

pub(super) fn record_in(flock: &Flock, ewe: &Ewe, all: &[Season], now: Moment) -> Option<Record> {
    let litters = flock.litters_of(ewe.id);
    let lambs: Vec<&Lamb> =
        litters.iter().flat_map(|litter| &litter.lambs).filter_map(|id| flock.lambs.get(id)).collect();
    let count = |is: &dyn Fn(&Lamb) -> bool| {
        u32::try_from(lambs.iter().filter(|lamb| is(lamb)).count()).unwrap_or(u32::MAX)
    };
    let at_her = flock.reared_by(ewe.id);
    let reared: Vec<&&Lamb> = at_her.iter().filter(|lamb| was_reared(lamb, now)).collect();
    let weights: Vec<Mass> = reared.iter().filter_map(|lamb| grown_weight(lamb)).collect();
    let lambed_in =
        |season: &Season| litters.iter().any(|litter| (season.first..=season.last).contains(&litter.began));
    let windows = flock.windows_of(ewe.id);
    // Put to the ram for it, and no such mating can bring a lamb any more.
    let without_lamb = |season: &&Season| {
        let mut of_season = windows.iter().filter(|window| matings::is_for(flock, window, season)).peekable();
        of_season.peek().is_some() && !of_season.any(|window| matings::may_still_lamb(flock, window, now))
    };
    let passed = all.iter().filter(|season| season.last < now && !lambed_in(season));
    let barren = passed.filter(without_lamb).count();
    let total = |masses: &[Mass]| masses.iter().copied().sum();
    Some(Record {
        litters: u32::try_from(litters.len()).unwrap_or(u32::MAX),
        born: u32::try_from(lambs.len()).unwrap_or(u32::MAX),
        born_dead: count(&|lamb| !lamb.born_alive),
        lost: count(&|lamb| lamb.lost().is_some()),
        reared: u32::try_from(reared.len()).unwrap_or(u32::MAX),
        hard_births: count(&|lamb| lamb.ease.is_some_and(is_hard)),
        turned_away: count(&|lamb| lamb.accepted.iter().any(|(_, accepts)| !accepts)),
        barren: u32::try_from(barren).unwrap_or(u32::MAX),
        weighed: u32::try_from(weights.len()).unwrap_or(u32::MAX),
        kilograms: (!weights.is_empty()).then(|| total(&weights)),
        years: flock.ewe_years(ewe.id, now),
    })
}

const fn is_hard(ease: LambingEase) -> bool {
    match ease {
        LambingEase::HardByHand | LambingEase::Vet | LambingEase::Surgery => true,
        LambingEase::Alone | LambingEase::SlightByHand | LambingEase::PlannedSurgery => false,
    }
}

/// Weaned, or alive at six weeks, and not lost since.
fn was_reared(lamb: &Lamb, now: Moment) -> bool {
    if lamb.lost().is_some() {
        return false;
    }
    let died = lamb.died.map(|death| death.at);
    let until = died.unwrap_or(now).min(lamb.left.as_ref().map_or(now, |left| left.at));
    lamb.born_alive && (lamb.weaned.is_some() || until.since(lamb.born) >= REARED_AT)
}

/// Its weight nearest to when it was weaned, else nearest to the age at which most are; a later one changes nothing.
fn grown_weight(lamb: &Lamb) -> Option<Mass> {
    let at = lamb.weaned.unwrap_or(lamb.born + TimeDelta::days(ToAge::Day90.days().into()));
    let old = lamb.weights.iter().filter(|weight| weight.at.since(lamb.born) >= REARED_AT);
    old.min_by_key(|weight| weight.at.since(at).abs()).map(|weight| weight.mass)
}

/// Returns the marks of the farm that a record meets, in the farm's order; none where the farm set none.
#[must_use]
pub fn marks(record: &Record, keep: &CullRules) -> Vec<KeepMark> {
    let met =
        |count: u32, from: Option<u8>| from.is_some_and(|from| count >= u32::from(from)).then_some(count);
    let lost = record.lost + record.born_dead;
    let years = record.years.filter(|years| keep.years.is_some_and(|from| *years >= u16::from(from)));
    [
        met(record.hard_births, keep.hard_births).map(KeepMark::HardBirths),
        met(lost, keep.lost).map(KeepMark::Lost),
        met(record.turned_away, keep.turned_away).map(KeepMark::TurnedAway),
        met(record.barren, keep.barren).map(KeepMark::Barren),
        years.map(KeepMark::Years),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Returns the living ewes that meet a mark of the farm, those with the most marks first.
#[must_use]
pub fn marked(flock: &Flock, now: Moment) -> Vec<(EweId, Record, Vec<KeepMark>)> {
    let keep = &flock.settings.cull_rules;
    if *keep == CullRules::default() {
        return Vec::new();
    }
    let all = seasons(flock);
    let mut marked: Vec<_> = flock
        .ewes
        .values()
        .filter(|ewe| ewe.lives())
        .filter_map(|ewe| {
            let record = record_in(flock, ewe, &all, now)?;
            let marks = marks(&record, keep);
            (!marks.is_empty()).then_some((ewe.id, record, marks))
        })
        .collect();
    marked.sort_small_by_key(|(ewe, _, marks)| (std::cmp::Reverse(marks.len()), *ewe));
    marked
}
