//! Whether a feed by hand may be noted: not too much at once, in a day, or for one stomach.
//!
//! Two feeds within an hour lie in one stomach: together they keep the guard of one.

use super::Rejection;
use super::here::alive;
use crate::book::{EntryId, LambId};
use crate::flock::{Feed, Flock, Lamb};
use crate::reckon::feeds;
use crate::units::{Moment, TimeDelta, Volume};

/// Feeds within so long of each other lie in one stomach (ours).
const ONE_STOMACH: TimeDelta = TimeDelta::hours(1);

pub(super) fn fed(
    flock: &Flock,
    instead_of: Option<EntryId>,
    lamb: LambId,
    volume: Volume,
    at: Moment,
) -> Result<(), Rejection> {
    may_be_fed(alive(flock, lamb, at)?, instead_of, volume, at)
}

/// Says whether a lamb may be fed so much at `at`; the feed of the entry that it stands for does not count.
///
/// # Errors
/// It is too much at once, in a day, or together with what lies in its stomach.
pub(in crate::watch) fn may_be_fed(
    lamb: &Lamb,
    instead_of: Option<EntryId>,
    volume: Volume,
    at: Moment,
) -> Result<(), Rejection> {
    let weight = lamb.last_weight(at).or_else(|| lamb.weights.first().copied()).map(|weight| weight.mass);
    let day_before = at - TimeDelta::hours(24);
    let others = || lamb.feeds.iter().filter(|feed| Some(feed.entry) != instead_of);
    let given = others().filter(|feed| feed.at > day_before && feed.at <= at).map(|feed| feed.volume).sum();
    feeds::check(volume, weight, at.since(lamb.born), given)?;
    let near = |feed: &&Feed| at.since(feed.at).abs() < ONE_STOMACH;
    let (mut together, mut last) = (volume, None);
    for feed in others().filter(near) {
        together = together + feed.volume;
        last = Some(feed.at);
    }
    match last {
        Some(last) => feeds::check(together, weight, at.since(lamb.born), Volume::ZERO)
            .map_err(|_| Rejection::TooSoon { last, together }),
        None => Ok(()),
    }
}
