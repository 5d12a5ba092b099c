//! Ewe lambs that may come into heat while a ram stays with the flock: they are named, so that they can be kept apart.

use chrono::{Days, NaiveDate};

use crate::book::LambId;
use crate::flock::{Flock, Staying};
use crate::reckon::season::mating::FIRST_HEAT_DAYS;
use crate::sort_small::SortSmall;
use crate::terms::Sex;
use crate::units::{Moment, TimeDelta};

/// A ewe lamb is named so many days before she may come into heat (ours): time to set up another paddock.
const AHEAD: i64 = 28;

/// One older than this is no lamb any more (ours): who keeps her notes her as a ewe.
const OLDEST: TimeDelta = TimeDelta::days(548);

/// A ewe lamb near her first heat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct YoungEwe {
    /// Who.
    pub lamb: LambId,
    /// The first day on which she may come into heat.
    pub from: NaiveDate,
}

/// Returns the living ewe lambs that may come into heat within four weeks, or have been able to, while a ram stays with
/// any group; the oldest first. None where no ram stays.
#[must_use]
pub fn young_ewes(flock: &Flock, now: Moment) -> Vec<YoungEwe> {
    let stays =
        flock.groups.values().filter(|group| group.parted.is_none()).any(|group| match group.staying() {
            Some(Staying::UntilLambed) => true,
            Some(Staying::Until(until)) => until >= now,
            Some(Staying::Unsaid) | None => false,
        });
    if !stays {
        return Vec::new();
    }
    let today = now.local().date();
    let (first_heat, _) = FIRST_HEAT_DAYS;
    let young = flock
        .born_after(now - OLDEST)
        .filter(|lamb| lamb.lives() && lamb.sex == Some(Sex::Ewe) && lamb.kept.is_none());
    let near = young.filter_map(|lamb| {
        let from = lamb.born.local().date().checked_add_days(Days::new(first_heat))?;
        let named = from.signed_duration_since(today).num_days() <= AHEAD;
        named.then_some(YoungEwe { lamb: lamb.id, from })
    });
    let mut young: Vec<YoungEwe> = near.collect();
    young.sort_small_by_key(|one| (one.from, one.lamb));
    young
}
