//! The season ahead: which ewes are awaited, which of them tonight, how many births each night may bring, and the pens.
//!
//! A ewe's own marks, scan and signs tell more than her group's days; what has happened no longer counts as to come.
//! The farm's own figures replace the handbook's once there are enough, and the answer says which were used.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use chrono::{Days, NaiveDate};

use super::Season;
use crate::arrange::Arrange;
use crate::book::{EweId, GroupId, Sign};
use crate::flock::{Expectation, Flock, Group, MatingWindow};
use crate::practice::BreedType;
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
    pub outlook: Result<Arc<Outlook>, NoOutlook>,
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

/// When each ewe may lamb, as it looks now: what the season ahead is worked out from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Outlooks {
    /// The ewes awaited, those most likely within a day first; those of whom nothing can be told last.
    pub awaited: Vec<Awaited>,
    alike: Vec<Alike>,
    known: Option<Known>,
}

impl Outlooks {
    /// Returns what is awaited of one ewe; nothing when no lambing of hers is.
    #[must_use]
    pub fn of(&self, ewe: EweId) -> Option<&Awaited> {
        self.awaited.iter().find(|awaited| awaited.ewe == ewe)
    }
}

/// Returns the season ahead, as known at `now` by the wall clock of `now`, from the [`outlooks`] of then.
#[must_use]
pub fn ahead(flock: &Flock, outlooks: &Outlooks, now: Moment) -> Ahead {
    let own;
    let known = if let Some(known) = &outlooks.known {
        known
    } else {
        own = Known::of(flock, now);
        &own
    };
    let litters = litters::known(sizes(flock, now));
    let curves: Vec<Curve> = outlooks
        .alike
        .iter()
        .filter_map(|Alike { lambs, outlook, ewes, .. }| {
            let litters = lambs.and_then(Litters::of_scanned).unwrap_or(litters.litters);
            outlook.curve(*ewes, litters).ok()
        })
        .collect();
    let lambed = count(known.matings.iter().filter(|mating| mating.litter.is_some()).count());
    let ewes: BTreeSet<EweId> = known.matings.iter().map(|mating| mating.window.ewe).collect();
    Ahead {
        forecast: forecast(&curves).ok(),
        pens: wanted(&curves, flock.practice.stay).ok(),
        put_to_ram: count(ewes.len()),
        lambed,
        likely: likely(known, lambed),
        happened: happened(&known.matings),
        awaited: outlooks.awaited.clone(),
        gestation: known.gestation,
        litters,
        conception: known.conception,
    }
}

/// What is worked out once for all ewes.
#[derive(Clone, Debug, PartialEq)]
struct Known {
    /// The matings of this season.
    matings: Vec<Mated>,
    lengths: Lengths,
    gestation: Expected,
    conception: Learned,
}

/// A mating, and when the litter began that it can have brought.
#[derive(Clone, Debug, PartialEq)]
struct Mated {
    window: MatingWindow,
    litter: Option<Moment>,
    cycles: Cycles,
}

/// The cycles of a mating, and how many of them can no longer bring a lamb.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Cycles {
    all: u8,
    passed: u8,
}

impl Known {
    fn of(flock: &Flock, now: Moment) -> Self {
        let lengths = Lengths::of(flock);
        let gestation = lengths.carried(None);
        // Most ewes of a group were with the ram for the same days, and what follows from these is worked out once.
        let mut of_days: BTreeMap<(Moment, Option<Moment>), Option<Cycles>> = BTreeMap::new();
        let mated = |window: MatingWindow| {
            let days = (window.ram_in, window.ram_out);
            let counts = of_days.entry(days).or_insert_with(|| {
                let cycles = all_cycles(&window);
                let passed = || passed(&window, cycles, gestation, now);
                is_of_now(&window, now).then(|| Cycles { all: cycles, passed: passed() })
            });
            let litter = flock.litter_of_window(&window).map(|litter| litter.began);
            Some(Mated { window, litter, cycles: (*counts)? })
        };
        let windows = flock.groups.values().flat_map(Group::windows);
        let matings: Vec<Mated> = windows.filter_map(mated).collect();
        let conception = learned(record(&matings, gestation));
        Self { matings, lengths, gestation, conception }
    }
}

/// Ewes of whom the same is known.
#[derive(Clone, Debug, PartialEq)]
struct Alike {
    evidence: Evidence,
    /// Lambs that a scan saw.
    lambs: Option<u8>,
    outlook: Arc<Outlook>,
    ewes: u32,
}

/// Returns when each ewe that is awaited may lamb, as known at `now` by the wall clock of `now`.
#[must_use]
pub fn outlooks(flock: &Flock, now: Moment) -> Outlooks {
    let expectations = flock.expectations(now);
    if expectations.is_empty() {
        // Where no ram is noted, the rest of the flock's years need not be looked through.
        return Outlooks::default();
    }
    let known = Known::of(flock, now);
    let mut awaited: Vec<Awaited> = Vec::new();
    let mut alike: Vec<Alike> = Vec::new();
    // By what tells most ewes apart, so that only few are held against each other.
    let mut places: BTreeMap<(NaiveDate, Vec<NaiveDate>, Option<u8>), Vec<usize>> = BTreeMap::new();
    for expectation in expectations {
        let Some(group) = expectation.windows.last().map(|window| window.group) else { continue };
        let lambs = expectation.scan.map(|scan| scan.lambs).filter(|lambs| *lambs > 0);
        let outlook = evidence(flock, &expectation, &known).and_then(|evidence| {
            let places = places.entry((evidence.mating.ram_in(), evidence.marks.clone(), lambs)).or_default();
            let same = places.iter().copied().find(|place| alike[*place].evidence == evidence);
            if let Some(place) = same {
                alike[place].ewes += 1;
                return Ok(Arc::clone(&alike[place].outlook));
            }
            let outlook = Arc::new(outlook(&evidence, now.local())?);
            places.push(alike.len());
            alike.push(Alike { evidence, lambs, outlook: Arc::clone(&outlook), ewes: 1 });
            Ok(outlook)
        });
        awaited.push(Awaited { ewe: expectation.ewe, group, lambs, outlook });
    }
    let chance = |one: &Awaited| one.outlook.as_ref().map_or(-1.0, |outlook| outlook.within_24h);
    awaited.arrange_by(|one, other| chance(other).total_cmp(&chance(one)).then(one.ewe.cmp(&other.ewe)));
    Outlooks { awaited, alike, known: Some(known) }
}

/// Returns when one ewe may lamb, or why that cannot be told; nothing when no lambing of hers is awaited. For one ewe
/// this is quicker than the [`outlooks`] of all.
#[must_use]
pub fn awaited(flock: &Flock, ewe: EweId, now: Moment) -> Option<Result<Outlook, NoOutlook>> {
    let expectation = flock.expectation(ewe, now)?;
    let evidence = evidence(flock, &expectation, &Known::of(flock, now));
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
    let ewes: BTreeSet<EweId> = windows.map(|window| window.ewe).collect();
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
    let window = mating.window(Lengths::of(flock).carried(None).gestation);
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

/// How long this flock's own ewes carried; lengths that cannot be do not count.
#[derive(Clone, Debug, PartialEq)]
struct Lengths {
    breed: BreedType,
    own: Vec<u16>,
}

impl Lengths {
    fn of(flock: &Flock) -> Self {
        let (least, most) = gestation::Impossible::allowed();
        let days = flock.gestations().into_iter().filter_map(|one| u16::try_from(one.days).ok());
        let own = days.filter(|days| (least..=most).contains(days)).collect();
        Self { breed: flock.practice.breed_type, own }
    }

    /// Returns how long a ewe with so many lambs is taken to carry.
    fn carried(&self, lambs: Option<u8>) -> Expected {
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

/// Litters of the last years by size.
fn sizes(flock: &Flock, now: Moment) -> [u32; 4] {
    let mut sizes = [0; 4];
    let since = now - TimeDelta::days(365 * YEARS);
    for litter in flock.litters.values().filter(|litter| litter.began >= since && !litter.goes_on(now)) {
        sizes[litter.lambs.len().clamp(1, 4) - 1] += 1;
    }
    sizes
}

fn evidence(flock: &Flock, expectation: &Expectation, known: &Known) -> Result<Evidence, NoOutlook> {
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
        conception: known.conception.conception,
        gestation: known
            .lengths
            .carried(expectation.scan.map(|scan| scan.lambs).filter(|lambs| *lambs > 0))
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
fn record(matings: &[Mated], gestation: Expected) -> Record {
    matings.iter().fold(Record::default(), |record, Mated { window, litter, cycles }| {
        let since = |at: Moment| days(window.ram_in, at);
        match litter {
            Some(began) => record.lambed(cycle_of(since(*began), gestation.gestation)),
            None => record.not_lambed(cycles.passed),
        }
    })
}

/// How many cycles of a mating can no longer bring a lamb.
fn passed(window: &MatingWindow, cycles: u8, gestation: Expected, now: Moment) -> u8 {
    let (_, far) = gestation.gestation.watch_days();
    let since = days(window.ram_in, now) - far;
    u8::try_from((since / i64::from(CYCLE_DAYS)).clamp(0, i64::from(cycles))).unwrap_or(u8::MAX)
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

fn likely(known: &Known, lambed: u32) -> Option<Likely> {
    let mut open: BTreeMap<u8, u32> = BTreeMap::new();
    for Mated { cycles, .. } in known.matings.iter().filter(|mating| mating.litter.is_none()) {
        *open.entry(cycles.all.saturating_sub(cycles.passed)).or_default() += 1;
    }
    let open: Vec<Open> = open.into_iter().map(|(cycles_left, ewes)| Open { ewes, cycles_left }).collect();
    known.conception.likely(lambed, &open).ok()
}

/// Lambings of this season by night.
fn happened(matings: &[Mated]) -> Vec<(NaiveDate, u32)> {
    let mut nights: BTreeMap<NaiveDate, u32> = BTreeMap::new();
    for began in matings.iter().filter_map(|mating| mating.litter) {
        *nights.entry(began.local().date()).or_default() += 1;
    }
    nights.into_iter().collect()
}
