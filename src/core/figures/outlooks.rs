//! When each ewe may lamb: by her marks, her scan and her signs, which tell more than her group's days.

use std::collections::BTreeMap;
use std::sync::Arc;

use chrono::NaiveDate;

use super::matings::{Known, Mated};
use crate::arrange::Arrange;
use crate::book::{EweId, GroupId};
use crate::flock::{Expectation, Flock};
use crate::reckon::season::ewe::{self, Common, Evidence, NoOutlook, Outlook, outlook, outlook_among};
use crate::reckon::season::mating::Mating;
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
    pub outlook: Result<Arc<Outlook>, NoOutlook>,
}

/// When each ewe may lamb, as it looks now: what the season ahead is worked out from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Outlooks {
    /// The ewes awaited, those most likely within a day first; those of whom nothing can be told last.
    pub awaited: Vec<Awaited>,
    pub(super) alike: Vec<Alike>,
    pub(super) known: Option<Known>,
}

impl Outlooks {
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
    pub(super) outlook: Arc<Outlook>,
    pub(super) ewes: u32,
}

/// Returns when each ewe that is awaited may lamb, as known at `now` by the wall clock of `now`.
#[must_use]
pub fn outlooks(flock: &Flock, now: Moment) -> Outlooks {
    let expectations = flock.expectations(now);
    if flock.groups.is_empty() {
        // Where no ram is noted, the rest of the flock's years need not be looked through.
        return Outlooks::default();
    }
    let known = Known::of(flock, now);
    let mut awaited: Vec<Awaited> = Vec::new();
    let mut alike: Vec<Alike> = Vec::new();
    let mut commons: Vec<Common> = Vec::new();
    // By what tells most ewes apart, so that only few are held against each other.
    let mut places: BTreeMap<(NaiveDate, Vec<NaiveDate>, Option<u8>), Vec<usize>> = BTreeMap::new();
    for expectation in expectations {
        let Some(group) = expectation.windows.last().map(|window| window.group) else { continue };
        let lambs = expectation.scan.map(|scan| scan.lambs).filter(|lambs| *lambs > 0);
        let mut counted = |evidence: Evidence| {
            let places = places.entry((evidence.mating.ram_in(), evidence.marks.clone(), lambs)).or_default();
            let same = places.iter().copied().find(|place| alike[*place].evidence == evidence);
            if let Some(place) = same {
                alike[place].ewes += 1;
                return Ok(Arc::clone(&alike[place].outlook));
            }
            let place = commons.iter().rposition(|common| common.is_of(&evidence)).unwrap_or_else(|| {
                commons.push(Common::of(&evidence, now.local()));
                commons.len() - 1
            });
            let outlook = Arc::new(outlook_among(&evidence, &commons[place])?);
            places.push(alike.len());
            alike.push(Alike { evidence, lambs, outlook: Arc::clone(&outlook), ewes: 1 });
            Ok(outlook)
        };
        let evidence = evidence(flock, &expectation, &known);
        let outlook = evidence.clone().and_then(&mut counted);
        if let (Ok(evidence), Err(reason)) = (evidence, &outlook)
            && let Some(rest) = without(evidence, *reason)
        {
            // Nothing is told of her, but she is one of those that can lamb.
            counted(rest).ok();
        }
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

fn evidence(flock: &Flock, expectation: &Expectation, known: &Known) -> Result<Evidence, NoOutlook> {
    let day = |at: Moment| at.local().date();
    let Some(ram_in) = expectation.ram_in() else {
        return Err(NoOutlook::Passed { last: NaiveDate::default() });
    };
    let mating = Mating::new(day(ram_in), expectation.ram_out().map(day))
        .map_err(|_| NoOutlook::Passed { last: day(ram_in) })?;
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
        marks: expectation.marks.iter().map(|mark| day(mark.at)).collect(),
        look_days: LOOK_DAYS,
        scan,
        signs,
    })
}

/// Returns what is left to reckon with of a ewe for the flock's count, where something noted of her fits nothing; none
/// when she lambs no more.
fn without(evidence: Evidence, reason: NoOutlook) -> Option<Evidence> {
    match reason {
        // Her windows begin where the scan saw no further.
        NoOutlook::ScannedEmpty { .. }
        | NoOutlook::ScanTooEarly { .. }
        | NoOutlook::InLambWithoutMating { .. } => Some(Evidence { scan: None, ..evidence }),
        NoOutlook::ScanDoesNotFit { .. } => {
            let scan = evidence.scan.map(|scan| ewe::Scan { age_days: None, ..scan });
            Some(Evidence { scan, ..evidence })
        }
        NoOutlook::MarkWithoutRam { .. } => Some(Evidence { marks: Vec::new(), ..evidence }),
        NoOutlook::Passed { .. } | NoOutlook::Refused(_) => None,
    }
}
