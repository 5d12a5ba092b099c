//! The matings of a flock's season: who was put to the ram, which births came of it, and what these tell of all ewes.

use std::collections::{BTreeMap, BTreeSet};

use chrono::{Days, NaiveDate};

use super::Season;
use super::witnesses::{Story, stories, witnesses};
use crate::book::EweId;
use crate::flock::{Flock, Group, MatingWindow, UNSEEN_DAYS};
use crate::reckon::season::breeding::{BreedingSeason, season_of};
use crate::reckon::season::conception::{Learned, learned_in};
use crate::reckon::season::gestation::{self, Expected};
use crate::reckon::season::mating::Mating;
use crate::settings::BreedType;
use crate::sort_small::Gather;
use crate::units::{Moment, TimeDelta};

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
        let mut of_days: BTreeMap<(Moment, Option<Moment>), bool> = BTreeMap::new();
        let mated = |window: MatingWindow| {
            let days = (window.ram_in, window.ram_out);
            let counts = *of_days.entry(days).or_insert_with(|| is_of_now(&window, now));
            counts.then(|| {
                let litter = flock.litter_of_window(&window).map(|litter| litter.began);
                Mated { window, litter }
            })
        };
        let windows = flock.groups.values().flat_map(Group::windows);
        let matings: Vec<Mated> = windows.filter_map(mated).collect();
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
pub(super) fn windows_for<'a>(flock: &'a Flock, season: &Season) -> impl Iterator<Item = MatingWindow> + 'a {
    let days = days_of(season);
    let groups = flock.groups.values().filter(move |group| may_reach(group, days));
    groups.flat_map(Group::windows).filter(move |window| is_for(window, days))
}

/// The days of a season's births, the first and the last.
pub(super) fn days_of(season: &Season) -> (NaiveDate, NaiveDate) {
    (season.first.local().date(), season.last.local().date())
}

/// Says whether a mating can have brought births of these days.
pub(super) fn is_for(window: &MatingWindow, (began, ended): (NaiveDate, NaiveDate)) -> bool {
    let (first, last) = reach(window);
    first <= ended && last >= began
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

/// The first and the last day with the ram, as counted.
fn with_ram(window: &MatingWindow) -> (NaiveDate, NaiveDate) {
    let day = |at: Moment| at.local().date();
    let mating = Mating::new(day(window.ram_in), window.ram_out.map(day));
    mating.map_or((day(window.ram_in), day(window.ram_in)), |mating| (mating.ram_in(), mating.ram_out()))
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
