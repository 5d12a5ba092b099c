//! What is agreed with the vet before the first lamb, once a season: asked until it is done, and as long as a lambing is
//! awaited.
//!
//! When that is, the ram says; where none was noted, a scan that told how old the lambs are; else the season of the year
//! before, on the same days; while lambs are born, now. Where nothing says when, a ewe may lamb any day: it is asked at once,
//! and what was ever agreed is not asked again.
//!
//! The vet trains, prescribes glucose and agrees its amounts; two numbers for the night; what the law allows when an animal
//! must be killed. When to ask is ours.

use chrono::{Days, Months, NaiveDate};

use super::lambing_forecasts::LambingForecasts;
use super::{Season, seasons};
use crate::flock::{EARLIEST_BIRTH, Ewe, Flock, LATEST_BIRTH};
use crate::reckon::season::shopping::{KIT, Rate};
use crate::settings::VetAgreed;
use crate::units::{Moment, TimeDelta};

/// It is asked from six weeks before the first day on which a ewe may lamb (ours).
const AHEAD: Days = Days::new(42);
/// What was agreed so long ago was for another season (ours: half a year).
const A_SEASON: TimeDelta = TimeDelta::days(182);

/// Lambs born so lately say that lambing goes on (ours).
const GOES_ON: TimeDelta = TimeDelta::days(21);
/// So long past its last day of the year before a season may still come (ours).
const PAST: Days = Days::new(30);

/// One thing to agree with the vet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ToAgree {
    /// What is said to be agreed.
    Agreed(VetAgreed),
    /// Two numbers for the night.
    NightNumbers,
}

impl ToAgree {
    /// All of it, in the order in which it is asked.
    pub const ALL: [Self; 4] = [
        Self::Agreed(VetAgreed::Trained),
        Self::Agreed(VetAgreed::Glucose),
        Self::NightNumbers,
        Self::Agreed(VetAgreed::Killing),
    ];
}

/// What is still to be agreed with the vet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BeforeSeason {
    /// The first day on which a ewe may lamb, as it looks now; nothing where it may be any day.
    pub first: Option<NaiveDate>,
    /// What is still open, in its order.
    pub open: Vec<ToAgree>,
}

/// The kit is asked for so many weeks before the first day on which a ewe may lamb (ours): to order, to buy, to look again.
const KIT_WEEKS: [u64; 3] = [8, 4, 1];
/// And for so many days from then on (ours).
const KIT_ASKED_FOR: TimeDelta = TimeDelta::days(10);

/// That the kit is to be counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct KitAsked {
    /// The first day on which a ewe may lamb, as it looks now.
    pub first: NaiveDate,
    /// Since when it is asked.
    pub since: NaiveDate,
}

/// Returns that the kit is to be counted: eight weeks, four weeks and one week before the first lamb, for ten days each, until
/// more than half of it was counted or bought since.
#[must_use]
pub fn kit_asked(flock: &Flock, forecasts: &LambingForecasts, now: Moment) -> Option<KitAsked> {
    let today = now.local().date();
    let When::From(first) = when(flock, forecasts, now)? else { return None };
    if today >= first {
        return None;
    }
    let starts = KIT_WEEKS.into_iter().filter_map(|weeks| first.checked_sub_days(Days::new(weeks * 7)));
    let since = starts.filter(|start| *start <= today).max()?;
    if today.signed_duration_since(since) > KIT_ASKED_FOR {
        return None;
    }
    let is_done = |rate: &&Rate| {
        let moves = flock.stores.moves.get(&rate.item).into_iter().flatten();
        moves.into_iter().any(|change| change.at.local().date() >= since)
    };
    (KIT.iter().filter(is_done).count() * 2 <= KIT.len()).then_some(KitAsked { first, since })
}

/// Returns when something was agreed for the season of these days, if it was.
#[must_use]
pub fn agreed(flock: &Flock, what: VetAgreed, now: Moment) -> Option<Moment> {
    flock.vet_agreed.get(&what).copied().filter(|at| now.since(*at) < A_SEASON)
}

/// Says whether a thing needs no more to be asked.
#[must_use]
pub fn is_agreed(flock: &Flock, what: ToAgree, now: Moment) -> bool {
    match what {
        ToAgree::Agreed(what) => agreed(flock, what, now).is_some(),
        ToAgree::NightNumbers => flock.settings.vet_phones.has_two_for_the_night(),
    }
}

/// Returns what is still to be agreed with the vet; nothing when no lambing is near, and nothing once all is.
#[must_use]
pub fn before_season(flock: &Flock, forecasts: &LambingForecasts, now: Moment) -> Option<BeforeSeason> {
    let today = now.local().date();
    let first = match when(flock, forecasts, now)? {
        When::From(first) if first.checked_sub_days(AHEAD).is_some_and(|from| from > today) => return None,
        When::From(first) => Some(first),
        When::AnyDay => None,
    };
    let ever = |what: ToAgree| match what {
        ToAgree::Agreed(what) => first.is_none() && flock.vet_agreed.contains_key(&what),
        ToAgree::NightNumbers => false,
    };
    let is_open = |what: &ToAgree| !is_agreed(flock, *what, now) && !ever(*what);
    let open: Vec<ToAgree> = ToAgree::ALL.into_iter().filter(is_open).collect();
    (!open.is_empty()).then_some(BeforeSeason { first, open })
}

/// When a ewe may lamb.
enum When {
    /// From this day on.
    From(NaiveDate),
    /// Nothing says when.
    AnyDay,
}

/// Returns when the next ewe may lamb; nothing where none may in the year that can be seen.
fn when(flock: &Flock, forecasts: &LambingForecasts, now: Moment) -> Option<When> {
    let known = forecasts.awaited.iter().filter_map(|one| one.lambing_forecast.as_ref().ok());
    if let Some(first) = known.map(|forecast| forecast.first).min() {
        return Some(When::From(first));
    }
    let ewes: Vec<&Ewe> = flock.ewes.values().filter(|ewe| may_lamb(ewe, now)).collect();
    if ewes.is_empty() {
        return None;
    }
    if let Some(first) = ewes.iter().filter_map(|ewe| by_scan(ewe, now)).min() {
        return Some(When::From(first));
    }
    let all = seasons(flock);
    if all.is_empty() {
        return Some(When::AnyDay);
    }
    all.iter().filter_map(|season| again(season, now)).min().map(When::From)
}

/// Says whether a ewe may be in lamb: not where a scan of these months saw none.
fn may_lamb(ewe: &Ewe, now: Moment) -> bool {
    let empty = ewe.scans.last().is_some_and(|scan| scan.lambs == 0 && now.since(scan.at) < A_SEASON);
    ewe.lives() && !empty
}

/// The first day on which a ewe may lamb by a scan that told how old her lambs are, until they should be born.
fn by_scan(ewe: &Ewe, now: Moment) -> Option<NaiveDate> {
    let scan = ewe.scans.last().filter(|scan| scan.lambs > 0)?;
    let mated = scan.at - TimeDelta::days(i64::from(scan.days?));
    let here = now.since(mated) <= TimeDelta::days(LATEST_BIRTH);
    here.then(|| (mated + TimeDelta::days(EARLIEST_BIRTH)).local().date())
}

/// The first day of a season as it comes again a year later, until a month past its last; now while it goes on. A season of
/// more than two years ago says nothing.
fn again(season: &Season, now: Moment) -> Option<NaiveDate> {
    let today = now.local().date();
    if now.since(season.last) < GOES_ON {
        return Some(today);
    }
    let (first, last) = (season.first.local().date(), season.last.local().date());
    [12, 24].into_iter().find_map(|months| {
        let end = last.checked_add_months(Months::new(months))?.checked_add_days(PAST)?;
        first.checked_add_months(Months::new(months)).filter(|_| today <= end)
    })
}
