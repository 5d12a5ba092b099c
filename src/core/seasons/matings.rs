//! The matings of a flock's season: who was put to the ram, which births came of it, and what these tell of all ewes.

use std::collections::{BTreeMap, BTreeSet};

use chrono::{Days, NaiveDate};

use super::Season;
use super::witnesses::{Story, stories, witnesses};
use crate::book::EweId;
use crate::flock::{EARLIEST_BIRTH, Ewe, Flock, Group, MatingWindow, UNSEEN_DAYS, days};
use crate::reckon::season::breeding::{BreedingSeason, season_of};
use crate::reckon::season::conception::{Learned, learned_in};
use crate::reckon::season::gestation::{self, Expected};
use crate::reckon::season::mating::{Mating, STAYS_DAYS};
use crate::settings::BreedType;
use crate::sort_small::{Gather, SortSmall};
use crate::units::{Moment, TimeDelta};

/// A season is still told so long after its last day (ours).
const A_MONTH: TimeDelta = TimeDelta::days(30);

/// What is worked out once for all ewes.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct SeasonSoFar {
    /// The matings of this season.
    pub(super) matings: Vec<Mated>,
    /// The same, those together that can have brought one litter.
    pub(super) stories: Vec<Story>,
    pub(super) lengths: Lengths,
    pub(super) gestation: Expected,
    pub(super) conception: Learned,
}

/// A mating, and when the litter began that it can have brought.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Mated {
    pub(super) window: MatingWindow,
    pub(super) litter: Option<Moment>,
}

impl SeasonSoFar {
    pub(super) fn of(flock: &Flock, now: Moment) -> Self {
        let lengths = Lengths::of(flock);
        let gestation = lengths.carried(None);
        // Most ewes of a group were with the ram for the same days, and what follows from these is worked out once.
        let mut of_days: BTreeMap<(Moment, Option<Moment>, bool), bool> = BTreeMap::new();
        let mated = |window: MatingWindow| {
            let days = (window.ram_in, window.ram_out, window.stays);
            if !*of_days.entry(days).or_insert_with(|| is_of_now(&window, now)) {
                return None;
            }
            let litter = flock.litter_of_window(&window).map(|litter| litter.began);
            Some(Mated { window: flock.left_of(window)?, litter })
        };
        let windows = flock.groups.values().flat_map(Group::windows);
        let matings = of_this_season(flock, windows.filter_map(mated).collect(), now);
        let stories = stories(&matings);
        let latitude = flock.settings.latitude;
        let is_outside = |mated: &&Mated| {
            season_of(mated.window.ram_in.local().date(), latitude) == BreedingSeason::Outside
        };
        // One share is believed of all ewes: that of the greater part of them.
        let outside = matings.iter().filter(is_outside).count() * 2 > matings.len();
        let season = if outside { BreedingSeason::Outside } else { BreedingSeason::Within };
        let conception = learned_in(season, &witnesses(flock, &stories, gestation.gestation, now));
        Self { matings, stories, lengths, gestation, conception }
    }
}

/// Leaves out what is over once a later season has begun: with the first ram that came 138 days after those before him,
/// when their lambs can be there.
///
/// Of the seasons before stays who may still lamb and is not put to the ram anew, and as long as there are such ewes, or
/// lambs came within the last month, those that have lambed with them.
fn of_this_season(flock: &Flock, matings: Vec<Mated>, now: Moment) -> Vec<Mated> {
    let mut came: Vec<Moment> = matings.iter().map(|mated| mated.window.came).collect();
    came.sort_small();
    came.dedup();
    let mut latest = came.first().copied();
    for came in came {
        if latest.is_some_and(|latest| days(latest, came) >= EARLIEST_BIRTH) {
            latest = Some(came);
        }
    }
    let Some(latest) = latest else { return matings };
    let anew: BTreeSet<EweId> =
        matings.iter().filter(|mated| mated.window.came >= latest).map(|mated| mated.window.ewe).gathered();
    let is_new = |mated: &Mated| mated.window.came >= latest;
    let is_open = |mated: &Mated| {
        mated.litter.is_none() && !anew.contains(&mated.window.ewe) && !is_out(flock, &mated.window)
    };
    let goes_on = |mated: &Mated| match mated.litter {
        Some(began) => now.since(began) <= A_MONTH,
        None => !mated.window.stays && is_open(mated),
    };
    // Who is put to a new ram lambs to him, also where her day would still fit the one before.
    let is_of_old = |mated: &Mated| !is_new(mated) && !anew.contains(&mated.window.ewe);
    let lambing = matings.iter().any(|mated| is_of_old(mated) && goes_on(mated));
    // A ram that stays has no last day: his season is over when nobody is left to lamb.
    let awaits = |mated: &Mated| mated.litter.is_none() && !is_out(flock, &mated.window);
    let stays_on = matings.iter().any(|mated| is_new(mated) && (awaits(mated) || goes_on(mated)));
    let is_kept = |mated: &Mated| {
        if is_new(mated) {
            return stays_on || !mated.window.stays;
        }
        is_open(mated) || (lambing && mated.litter.is_some() && !anew.contains(&mated.window.ewe))
    };
    matings.iter().filter(|mated| is_kept(mated)).cloned().collect()
}

/// How long this flock's own ewes carried; lengths that cannot be do not count.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Lengths {
    breed: BreedType,
    own: Vec<u16>,
}

impl Lengths {
    pub(super) fn of(flock: &Flock) -> Self {
        let (least, most) = gestation::Impossible::allowed();
        let days = flock.gestations().into_iter().filter_map(|one| u16::try_from(one.days).ok());
        let own = days.filter(|days| (least..=most).contains(days)).collect();
        Self { breed: flock.settings.breed_type, own }
    }

    /// Returns how long a ewe with so many lambs is taken to carry.
    pub(super) fn carried(&self, lambs: Option<u8>) -> Expected {
        // Without own lengths nothing can be impossible.
        gestation::expected(self.breed, lambs, &self.own).unwrap_or_else(|_| Expected {
            gestation: gestation::Gestation::default(),
            breed: self.breed,
            litter: lambs,
            used: gestation::MeanUsed::Handbook { lambings: 0 },
            handbook: gestation::Gestation::default(),
            range_days: (0.0, 0.0),
        })
    }
}

/// Returns the ewes that were put to the ram for a season: those with a mating that can have brought its births; none
/// where nobody noted it.
#[must_use]
pub fn put_to_ram(flock: &Flock, season: &Season) -> BTreeSet<EweId> {
    windows_for(flock, season).map(|window| window.ewe).gathered()
}

/// The matings that can have brought the births of a season. Groups whose rams were in at another time are passed over
/// whole, so that the work follows the season and not the flock's years.
pub(super) fn windows_for<'a>(
    flock: &'a Flock,
    season: &'a Season,
) -> impl Iterator<Item = MatingWindow> + 'a {
    let days = days_of(season);
    let groups = flock.groups.values().filter(move |group| may_reach(group, days));
    groups.flat_map(Group::windows).filter(move |window| is_for(flock, window, season))
}

/// The days of a season's births, the first and the last.
fn days_of(season: &Season) -> (NaiveDate, NaiveDate) {
    (season.first.local().date(), season.last.local().date())
}

/// Says whether a mating can have brought the births of a season: one that brought her lambs before is used up, unless
/// its ram still is with her or it brought those of the season too, and who left was with him until then.
pub(super) fn is_for(flock: &Flock, window: &MatingWindow, season: &Season) -> bool {
    let (began, ended) = days_of(season);
    let (first, last) = reach(window);
    if first > ended || last < began {
        return false;
    }
    let gone = flock.ewe(window.ewe).and_then(Ewe::gone);
    let gone = gone.map(|gone| reach(&MatingWindow { ram_out: Some(gone), ..*window }).1);
    gone.is_none_or(|last| last >= began) && (window.stays || !is_used_up(flock, window, season))
}

/// Whether a mating brought her lambs before a season, and none in it.
fn is_used_up(flock: &Flock, window: &MatingWindow, season: &Season) -> bool {
    let mut before = false;
    let mut within = false;
    for litter in flock.litters_of_window(*window) {
        before |= litter.began < season.first;
        within |= (season.first..=season.last).contains(&litter.began);
    }
    before && !within
}

/// Days by which the dates of two clocks at one instant may differ, and one more.
const CLOCKS: u64 = 2;

/// Says whether a ewe's time with a ram of this group can be for births of these days. A ram that was never taken out
/// reaches as far as the last ewe that came to him.
fn may_reach(group: &Group, (began, ended): (NaiveDate, NaiveDate)) -> bool {
    let (least, most) = gestation::Impossible::allowed();
    let later = |at: Moment, days: u64| {
        let date = at.local().date();
        date.checked_add_days(Days::new(days)).unwrap_or(date)
    };
    let (least, most) = (u64::from(least) - CLOCKS, u64::from(most) + CLOCKS);
    group
        .rams
        .iter()
        .any(|ram| later(ram.came, least) <= ended && ram.out.is_none_or(|out| later(out, most) >= began))
}

/// Says whether a mating can no longer bring a lamb, whatever its days: she is not here, or was scanned empty after the
/// ram was out.
pub(super) fn is_out(flock: &Flock, window: &MatingWindow) -> bool {
    flock.ewe(window.ewe).is_none_or(|ewe| {
        let scan = ewe.scans.last().filter(|scan| scan.at >= window.ram_in && scan.lambs == 0);
        let seen = |at: Moment| (at - TimeDelta::days(UNSEEN_DAYS)).local().date() >= with_ram(window).1;
        !ewe.lives() || scan.is_some_and(|scan| seen(scan.at))
    })
}

/// Says whether a mating can still bring a lamb.
pub(super) fn may_still_lamb(flock: &Flock, window: &MatingWindow, now: Moment) -> bool {
    reach(window).1 >= now.local().date() && !is_out(flock, window)
}

/// The first and the last day on which a mating can bring a lamb.
pub(super) fn reach(window: &MatingWindow) -> (NaiveDate, NaiveDate) {
    let (first, last) = with_ram(window);
    let later = |date: NaiveDate, days: u64| date.checked_add_days(Days::new(days)).unwrap_or(date);
    let (least, most) = gestation::Impossible::allowed();
    (later(first, least.into()), later(last, most.into()))
}

/// The first and the last day with the ram, as counted; one that stays has no last.
fn with_ram(window: &MatingWindow) -> (NaiveDate, NaiveDate) {
    let day = |at: Moment| at.local().date();
    let first = day(window.ram_in);
    match window.ram_out {
        Some(out) => (first, day(out).max(first)),
        None if window.stays => (first, NaiveDate::MAX),
        None => (first, Mating::new(first, None).map_or(first, Mating::ram_out)),
    }
}

/// Returns a ram's time with a ewe that has not lambed, as it counts on a day: nothing where the days cannot be.
pub(super) fn counted(
    ram_in: Moment,
    ram_out: Option<Moment>,
    stays: bool,
    today: NaiveDate,
) -> Option<Mating> {
    let day = |at: Moment| at.local().date();
    let (first, last) = (day(ram_in), ram_out.map(day));
    let is_long = last.is_some_and(|last| last.signed_duration_since(first).num_days() >= STAYS_DAYS);
    if stays || is_long {
        return Some(Mating::staying(first, last, today));
    }
    Mating::new(first, last).ok()
}

/// Says whether a mating is of the season that is ahead or under way: its last day lies at most a month back.
fn is_of_now(window: &MatingWindow, now: Moment) -> bool {
    let today = now.local().date();
    let (_, last) = reach(window);
    last.checked_add_days(Days::new(30)).is_none_or(|end| end >= today)
}

pub(super) fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}
