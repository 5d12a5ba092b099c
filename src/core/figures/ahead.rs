//! The season ahead: which ewes are awaited, which of them tonight, how many births each night may bring, and the pens.
//!
//! A ewe's own marks, scan and signs tell more than her group's days; what has happened no longer counts as to come.
//! The farm's own figures replace the handbook's once there are enough, and the answer says which were used.

use std::collections::BTreeMap;

use chrono::{Days, NaiveDate};

use super::Season;
use crate::book::{EweId, GroupId, Sign};
use crate::flock::{Expectation, Flock, Group, MatingWindow};
use crate::reckon::season::conception::{Learned, Likely, Open, Record, learned};
use crate::reckon::season::cycles::{CYCLE_DAYS, cycle_of, cycles};
use crate::reckon::season::dates::{Choices, Dated, dates};
use crate::reckon::season::ewe::{self, Evidence, NoOutlook, Outlook, outlook};
use crate::reckon::season::forecast::{Curve, Forecast, forecast};
use crate::reckon::season::gestation::{self, Expected};
use crate::reckon::season::litters::{self, Litters};
use crate::reckon::season::mating::Mating;
use crate::reckon::season::pens::{Wanted, wanted};
use crate::units::{Moment, TimeDelta};

/// How often crayons are looked at, in days, where nobody says (ours: each day).
const LOOK_DAYS: u8 = 1;

/// Litters of so many years are the flock's own shares (ours): more would be other ewes.
const YEARS: i64 = 4;

/// A ewe of whom a lambing is awaited.
#[derive(Clone, Debug, PartialEq)]
pub struct Awaited {
    /// Who.
    pub ewe: EweId,
    /// In which group she was with the ram last.
    pub group: GroupId,
    /// Lambs that a scan saw.
    pub lambs: Option<u8>,
    /// When she may lamb, or why that cannot be told.
    pub outlook: Result<Outlook, NoOutlook>,
}

/// The season ahead, as it looks now.
#[derive(Clone, Debug, PartialEq)]
pub struct Ahead {
    /// The ewes awaited, those most likely within a day first; those of whom nothing can be told last.
    pub awaited: Vec<Awaited>,
    /// Births and lambs by night from today on; none when nobody is awaited.
    pub forecast: Option<Forecast>,
    /// Bonding pens by night.
    pub pens: Option<Wanted>,
    /// Ewes put to the ram for this season, those that have lambed among them.
    pub put_to_ram: u32,
    /// Those that have lambed.
    pub lambed: u32,
    /// How many will have lambed in the end.
    pub likely: Option<Likely>,
    /// Lambings by night, of ewes whose mating is known.
    pub happened: Vec<(NaiveDate, u32)>,
    /// How long a ewe is taken to carry, and whose figure it is.
    pub gestation: Expected,
    /// How many lambs a lambing brings, and whose figure it is.
    pub litters: litters::Known,
    /// The share that holds in a cycle, and whose figure it is.
    pub conception: Learned,
}

impl Ahead {
    /// Returns how many ewes are awaited and how many lambs they will likely bring: by her scan, else by the mean
    /// litter, each by the chance that she is in lamb at all.
    #[must_use]
    pub fn to_come(&self) -> (u32, f64) {
        let mean = self.litters.litters.mean();
        let lambs = self.awaited.iter().map(|awaited| {
            let in_lamb = awaited.outlook.as_ref().map_or(0.0, |outlook| outlook.in_lamb);
            awaited.lambs.map_or(mean, f64::from) * in_lamb
        });
        (count(self.awaited.len()), lambs.sum())
    }
}

/// Returns the season ahead, as known at `now` by the wall clock of `now`.
#[must_use]
pub fn ahead(flock: &Flock, now: Moment) -> Ahead {
    let gestation = carried(flock, None);
    let litters = litters::known(sizes(flock, now));
    let windows: Vec<MatingWindow> = flock.groups.values().flat_map(Group::windows).collect();
    let this_season: Vec<&MatingWindow> = windows.iter().filter(|window| is_of_now(window, now)).collect();
    let conception = learned(record(flock, &this_season, gestation, now));
    let (awaited, curves) = outlooks(flock, &conception, now);
    let curves: Vec<Curve> = curves
        .into_iter()
        .filter_map(|(_, lambs, outlook, ewes)| {
            let litters = lambs.and_then(Litters::of_scanned).unwrap_or(litters.litters);
            outlook.curve(ewes, litters).ok()
        })
        .collect();
    let lambed = this_season.iter().filter(|window| flock.litter_of_window(window).is_some()).count();
    let ewes: std::collections::BTreeSet<EweId> = this_season.iter().map(|window| window.ewe).collect();
    Ahead {
        forecast: forecast(&curves).ok(),
        pens: wanted(&curves, flock.practice.stay).ok(),
        put_to_ram: count(ewes.len()),
        lambed: count(lambed),
        likely: likely(&conception, count(lambed), &this_season, flock, gestation, now),
        happened: happened(flock, &this_season),
        awaited,
        gestation,
        litters,
        conception,
    }
}

/// What is known alike of some ewes, their scan, when they may lamb, and how many they are.
type Alike = (Evidence, Option<u8>, Outlook, u32);

/// Returns when each ewe that is awaited may lamb, those most likely within a day first, and the same for all of whom
/// the same is known together.
fn outlooks(flock: &Flock, conception: &Learned, now: Moment) -> (Vec<Awaited>, Vec<Alike>) {
    let mut awaited: Vec<Awaited> = Vec::new();
    let mut curves: Vec<Alike> = Vec::new();
    for expectation in flock.expectations(now) {
        let Some(group) = expectation.windows.last().map(|window| window.group) else { continue };
        let lambs = expectation.scan.map(|scan| scan.lambs).filter(|lambs| *lambs > 0);
        let outlook = evidence(flock, &expectation, conception).and_then(|evidence| {
            // Ewes of whom the same is known are reckoned once.
            if let Some((_, _, known, ewes)) =
                curves.iter_mut().find(|(there, scanned, ..)| *there == evidence && *scanned == lambs)
            {
                *ewes += 1;
                return Ok(known.clone());
            }
            let outlook = outlook(&evidence, now.local())?;
            curves.push((evidence, lambs, outlook.clone(), 1));
            Ok(outlook)
        });
        awaited.push(Awaited { ewe: expectation.ewe, group, lambs, outlook });
    }
    let chance = |one: &Awaited| one.outlook.as_ref().map_or(-1.0, |outlook| outlook.within_24h);
    awaited.sort_by(|one, other| chance(other).total_cmp(&chance(one)).then(one.ewe.cmp(&other.ewe)));
    (awaited, curves)
}

/// Returns when each ewe that is awaited may lamb, those most likely within a day first, and nothing else of the season.
#[must_use]
pub fn all_awaited(flock: &Flock, now: Moment) -> Vec<Awaited> {
    let gestation = carried(flock, None);
    let windows: Vec<MatingWindow> = flock.groups.values().flat_map(Group::windows).collect();
    let this_season: Vec<&MatingWindow> = windows.iter().filter(|window| is_of_now(window, now)).collect();
    let conception = learned(record(flock, &this_season, gestation, now));
    outlooks(flock, &conception, now).0
}

/// Returns when one ewe may lamb, or why that cannot be told; nothing when no lambing of hers is awaited.
#[must_use]
pub fn awaited(flock: &Flock, ewe: EweId, now: Moment) -> Option<Result<Outlook, NoOutlook>> {
    let expectation = flock.expectation(ewe, now)?;
    let gestation = carried(flock, None);
    let windows: Vec<MatingWindow> = flock.groups.values().flat_map(Group::windows).collect();
    let this_season: Vec<&MatingWindow> = windows.iter().filter(|window| is_of_now(window, now)).collect();
    let conception = learned(record(flock, &this_season, gestation, now));
    let evidence = evidence(flock, &expectation, &conception);
    Some(evidence.and_then(|evidence| outlook(&evidence, now.local())))
}

/// Returns how many ewes were put to the ram for a season: those with a mating that can have brought its births.
#[must_use]
pub fn put_to_ram(flock: &Flock, season: &Season) -> Option<u32> {
    let of_season = |window: &MatingWindow| {
        let (first, last) = reach(window);
        first <= season.last.local().date() && last >= season.first.local().date()
    };
    let windows = flock.groups.values().flat_map(Group::windows).filter(of_season);
    let ewes: std::collections::BTreeSet<EweId> = windows.map(|window| window.ewe).collect();
    (!ewes.is_empty()).then(|| count(ewes.len()))
}

/// Says whether a ewe was put to the ram for a season.
pub(super) fn put_to_ram_for(flock: &Flock, ewe: EweId, season: &Season) -> bool {
    let windows = flock.groups.values().flat_map(Group::windows).filter(|window| window.ewe == ewe);
    windows
        .map(|window| reach(&window))
        .any(|(first, last)| first <= season.last.local().date() && last >= season.first.local().date())
}

/// Returns the dates of a group's season; nothing while no ram was put in.
#[must_use]
pub fn group_dates(flock: &Flock, group: &Group) -> Vec<Dated> {
    let Some((ram_in, ram_out)) = group.ram_times().last().copied() else { return Vec::new() };
    let day = |at: Moment| at.local().date();
    let Ok(mating) = Mating::new(day(ram_in), ram_out.map(day)) else { return Vec::new() };
    let window = mating.window(carried(flock, None).gestation);
    dates(mating, window, &Choices::default()).unwrap_or_default()
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

/// The first and the last day on which a mating can bring a lamb.
fn reach(window: &MatingWindow) -> (NaiveDate, NaiveDate) {
    let day = |at: Moment| at.local().date();
    let mating = Mating::new(day(window.ram_in), window.ram_out.map(day));
    let (first, last) =
        mating.map_or((day(window.ram_in), day(window.ram_in)), |mating| (mating.ram_in(), mating.ram_out()));
    let later = |date: NaiveDate, days: u64| date.checked_add_days(Days::new(days)).unwrap_or(date);
    let (least, most) = gestation::Impossible::allowed();
    (later(first, least.into()), later(last, most.into()))
}

/// Says whether a mating is of the season that is ahead or under way: its last day lies at most a month back.
fn is_of_now(window: &MatingWindow, now: Moment) -> bool {
    let today = now.local().date();
    let (_, last) = reach(window);
    last.checked_add_days(Days::new(30)).is_none_or(|end| end >= today)
}

/// How long a ewe of this flock with so many lambs is taken to carry; lengths that cannot be do not count.
fn carried(flock: &Flock, lambs: Option<u8>) -> Expected {
    let breed = flock.practice.breed_type;
    let own: Vec<u16> = flock
        .gestations()
        .iter()
        .filter_map(|one| u16::try_from(one.days).ok())
        .filter(|days| {
            (gestation::Impossible::allowed().0..=gestation::Impossible::allowed().1).contains(days)
        })
        .collect();
    match gestation::expected(breed, lambs, &own) {
        Ok(expected) => expected,
        // Without own lengths nothing can be impossible.
        Err(_) => Expected {
            gestation: gestation::Gestation::default(),
            breed,
            litter: lambs,
            used: gestation::MeanUsed::Handbook { lambings: 0 },
            handbook: gestation::Gestation::default(),
            range_days: (0.0, 0.0),
        },
    }
}

/// Litters of the last years by size.
fn sizes(flock: &Flock, now: Moment) -> [u32; 4] {
    let mut sizes = [0; 4];
    let since = now - TimeDelta::days(365 * YEARS);
    for litter in flock.litters.values().filter(|litter| litter.began >= since && !litter.goes_on(now)) {
        sizes[litter.lambs.len().clamp(1, 4) - 1] += 1;
    }
    sizes
}

fn evidence(flock: &Flock, expectation: &Expectation, conception: &Learned) -> Result<Evidence, NoOutlook> {
    let day = |at: Moment| at.local().date();
    let Some(ram_in) = expectation.ram_in() else {
        return Err(NoOutlook::Passed { last: NaiveDate::default() });
    };
    let mating = Mating::new(day(ram_in), expectation.ram_out().map(day))
        .map_err(|_| NoOutlook::Passed { last: day(ram_in) })?;
    let signs =
        flock.ewe(expectation.ewe).and_then(|ewe| ewe.labor.as_ref()).map_or_else(Vec::new, |labor| {
            labor.signs.iter().map(|(at, sign)| (of_sign(*sign), at.local())).collect()
        });
    let scan = expectation.scan.map(|scan| ewe::Scan {
        on: day(scan.at),
        lambs: Some(scan.lambs),
        age_days: scan.days,
    });
    Ok(Evidence {
        mating,
        conception: conception.conception,
        gestation: carried(flock, expectation.scan.map(|scan| scan.lambs).filter(|lambs| *lambs > 0))
            .gestation,
        marks: expectation.marks.iter().map(|mark| day(mark.at)).collect(),
        look_days: LOOK_DAYS,
        scan,
        signs,
    })
}

const fn of_sign(sign: Sign) -> ewe::Sign {
    match sign {
        Sign::Restless => ewe::Sign::Restless,
        Sign::Apart => ewe::Sign::Apart,
        Sign::UdderTight => ewe::Sign::UdderTight,
        Sign::Slack => ewe::Sign::Slack,
        Sign::Discharge => ewe::Sign::Discharge,
    }
}

/// What the births so far say of how the ewes held: who lambed in which cycle, and whose cycles have passed.
fn record(flock: &Flock, windows: &[&MatingWindow], gestation: Expected, now: Moment) -> Record {
    windows.iter().fold(Record::default(), |record, window| {
        let since = |at: Moment| days(window.ram_in, at);
        match flock.litter_of_window(window) {
            Some(litter) => record.lambed(cycle_of(since(litter.began), gestation.gestation)),
            None => record.not_lambed(passed(window, gestation, now)),
        }
    })
}

/// How many cycles of a mating can no longer bring a lamb.
fn passed(window: &MatingWindow, gestation: Expected, now: Moment) -> u8 {
    let (_, far) = gestation.gestation.watch_days();
    let since = days(window.ram_in, now) - far;
    u8::try_from((since / i64::from(CYCLE_DAYS)).clamp(0, i64::from(all_cycles(window)))).unwrap_or(u8::MAX)
}

fn all_cycles(window: &MatingWindow) -> u8 {
    let day = |at: Moment| at.local().date();
    let mating = Mating::new(day(window.ram_in), window.ram_out.map(day));
    mating.map_or(0, |mating| {
        u8::try_from(cycles(mating, crate::reckon::season::cycles::Conception::default()).len())
            .unwrap_or(u8::MAX)
    })
}

fn days(from: Moment, to: Moment) -> i64 {
    to.local().date().signed_duration_since(from.local().date()).num_days()
}

fn likely(
    conception: &Learned,
    lambed: u32,
    windows: &[&MatingWindow],
    flock: &Flock,
    gestation: Expected,
    now: Moment,
) -> Option<Likely> {
    let mut open: BTreeMap<u8, u32> = BTreeMap::new();
    for window in windows.iter().filter(|window| flock.litter_of_window(window).is_none()) {
        let left = all_cycles(window).saturating_sub(passed(window, gestation, now));
        *open.entry(left).or_default() += 1;
    }
    let open: Vec<Open> = open.into_iter().map(|(cycles_left, ewes)| Open { ewes, cycles_left }).collect();
    conception.likely(lambed, &open).ok()
}

/// Lambings of this season by night.
fn happened(flock: &Flock, windows: &[&MatingWindow]) -> Vec<(NaiveDate, u32)> {
    let mut nights: BTreeMap<NaiveDate, u32> = BTreeMap::new();
    for litter in windows.iter().filter_map(|window| flock.litter_of_window(window)) {
        *nights.entry(litter.began.local().date()).or_default() += 1;
    }
    nights.into_iter().collect()
}
