//! When each ewe may lamb: by her marks, her scan and her signs, which tell more than her group's days.

use std::collections::BTreeMap;
use std::sync::Arc;

use chrono::NaiveDate;

use super::matings::{Mated, SeasonSoFar, counted};
use crate::book::{EweId, GroupId};
use crate::flock::{EARLIEST_BIRTH, Expectation, Flock, days};
use crate::reckon::season::ewe::{
    self, Common, Evidence, LambingForecast, NoForecast, lambing_forecast, lambing_forecast_among,
};
use crate::sort_small::SortSmall;
use crate::units::Moment;

/// How often crayons are looked at, in days, where nobody says (ours: each day).
const LOOK_DAYS: u8 = 1;

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
    pub lambing_forecast: Result<Arc<LambingForecast>, NoForecast>,
}

/// When each ewe may lamb, as it looks now: what the season ahead is worked out from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LambingForecasts {
    /// The ewes awaited, those most likely within a day first; those of whom nothing can be told last.
    pub awaited: Vec<Awaited>,
    pub(super) alike: Vec<Alike>,
    pub(super) known: Option<SeasonSoFar>,
}

impl LambingForecasts {
    /// Returns what is awaited of one ewe; nothing when no lambing of hers is.
    #[must_use]
    pub fn of(&self, ewe: EweId) -> Option<&Awaited> {
        self.awaited.iter().find(|awaited| awaited.ewe == ewe)
    }

    /// The matings of this season.
    pub(super) fn matings(&self) -> &[Mated] {
        self.known.as_ref().map_or(&[], |known| &known.matings)
    }
}

/// Ewes of whom the same is known.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Alike {
    pub(super) evidence: Evidence,
    /// Lambs that a scan saw.
    pub(super) lambs: Option<u8>,
    pub(super) lambing_forecast: Arc<LambingForecast>,
    /// Whether a scan found them empty: only what it could not see yet is left of them.
    pub(super) empty: bool,
    pub(super) ewes: u32,
}

/// Returns when each ewe that is awaited may lamb, as known at `now` by the wall clock of `now`.
#[must_use]
pub fn lambing_forecasts(flock: &Flock, now: Moment) -> LambingForecasts {
    let expectations = flock.expectations(now);
    if flock.groups.is_empty() {
        // Where no ram is noted, the rest of the flock's years need not be looked through.
        return LambingForecasts::default();
    }
    let known = SeasonSoFar::of(flock, now);
    let mut awaited: Vec<Awaited> = Vec::new();
    let mut alike: Vec<Alike> = Vec::new();
    let mut commons: Vec<Common> = Vec::new();
    // By what tells most ewes apart, so that only few are held against each other.
    let mut places: BTreeMap<(NaiveDate, Vec<NaiveDate>, Option<u8>), Vec<usize>> = BTreeMap::new();
    for expectation in expectations {
        let Some(group) = expectation.windows.last().map(|window| window.group) else { continue };
        let lambs = expectation.scan.map(|scan| scan.lambs).filter(|lambs| *lambs > 0);
        let empty = expectation.scan.is_some_and(|scan| scan.lambs == 0);
        let mut counted = |evidence: Evidence| {
            let places = places.entry((evidence.mating.ram_in(), evidence.marks.clone(), lambs)).or_default();
            let is_same = |one: &Alike| one.empty == empty && one.evidence == evidence;
            let same = places.iter().copied().find(|place| is_same(&alike[*place]));
            if let Some(place) = same {
                alike[place].ewes += 1;
                return Ok(Arc::clone(&alike[place].lambing_forecast));
            }
            let place = commons.iter().rposition(|common| common.is_of(&evidence)).unwrap_or_else(|| {
                commons.push(Common::of(&evidence, now.local()));
                commons.len() - 1
            });
            let lambing_forecast = Arc::new(lambing_forecast_among(&evidence, &commons[place])?);
            places.push(alike.len());
            let forecast = Arc::clone(&lambing_forecast);
            alike.push(Alike { evidence, lambs, lambing_forecast: forecast, empty, ewes: 1 });
            Ok(lambing_forecast)
        };
        let evidence = evidence(flock, &expectation, &known, now.local().date());
        let lambing_forecast = evidence.clone().and_then(&mut counted);
        if let (Ok(evidence), Err(reason)) = (evidence, &lambing_forecast)
            && let Some(rest) = without(evidence, *reason)
        {
            // Nothing is told of her, but she is one of those that can lamb.
            counted(rest).ok();
        }
        awaited.push(Awaited { ewe: expectation.ewe, group, lambs, lambing_forecast });
    }
    let chance = |one: &Awaited| {
        one.lambing_forecast.as_ref().map_or(-1.0, |lambing_forecast| lambing_forecast.within_24h)
    };
    awaited.sort_small_by(|one, other| chance(other).total_cmp(&chance(one)).then(one.ewe.cmp(&other.ewe)));
    LambingForecasts { awaited, alike, known: Some(known) }
}

/// Returns when one ewe may lamb, or why that cannot be told; nothing when no lambing of hers is awaited. For one ewe
/// this is quicker than the [`lambing_forecasts`] of all.
#[must_use]
pub fn awaited(flock: &Flock, ewe: EweId, now: Moment) -> Option<Result<LambingForecast, NoForecast>> {
    let expectation = flock.expectation(ewe, now)?;
    let evidence = evidence(flock, &expectation, &SeasonSoFar::of(flock, now), now.local().date());
    Some(evidence.and_then(|evidence| lambing_forecast(&evidence, now.local())))
}

fn evidence(
    flock: &Flock,
    expectation: &Expectation,
    known: &SeasonSoFar,
    today: NaiveDate,
) -> Result<Evidence, NoForecast> {
    let day = |at: Moment| at.local().date();
    let (Some(first), Some(last)) = (expectation.windows.first(), expectation.windows.last()) else {
        return Err(NoForecast::Passed { last: NaiveDate::default() });
    };
    // A mating that the lambs of the one before it could have met is another season's.
    let another = days(first.ram_in, last.ram_in) >= EARLIEST_BIRTH;
    let ram_in = if another { last.ram_in } else { first.ram_in };
    let mating =
        counted(ram_in, last.ram_out, last.stays, today).ok_or(NoForecast::Passed { last: day(ram_in) })?;
    let marks = expectation.marks.iter().map(|mark| day(mark.at));
    let signs = flock
        .ewe(expectation.ewe)
        .and_then(|ewe| ewe.labor.as_ref())
        .map_or_else(Vec::new, |labor| labor.signs.iter().map(|(at, sign)| (*sign, at.local())).collect());
    let scan = expectation.scan.map(|scan| ewe::Scan {
        on: day(scan.at),
        lambs: Some(scan.lambs),
        age_days: scan.days,
    });
    Ok(Evidence {
        mating,
        conception: known.conception.belief.clone(),
        gestation: known
            .lengths
            .carried(expectation.scan.map(|scan| scan.lambs).filter(|lambs| *lambs > 0))
            .gestation,
        marks: marks.filter(|mark| *mark >= mating.ram_in()).collect(),
        look_days: LOOK_DAYS,
        scan,
        signs,
    })
}

/// Returns what is left to reckon with of a ewe for the flock's count, where something noted of her fits nothing; none
/// when she lambs no more.
fn without(evidence: Evidence, reason: NoForecast) -> Option<Evidence> {
    match reason {
        // Her windows begin where the scan saw no further.
        NoForecast::ScannedEmpty { .. }
        | NoForecast::ScanTooEarly { .. }
        | NoForecast::InLambWithoutMating { .. } => Some(Evidence { scan: None, ..evidence }),
        NoForecast::ScanDoesNotFit { .. } => {
            let scan = evidence.scan.map(|scan| ewe::Scan { age_days: None, ..scan });
            Some(Evidence { scan, ..evidence })
        }
        NoForecast::MarkWithoutRam { .. } => Some(Evidence { marks: Vec::new(), ..evidence }),
        NoForecast::Passed { .. } | NoForecast::Refused(_) => None,
    }
}
