//! A belly that felt hollow: the lamb is read, and fed when nothing holds milk back, whatever was seen before; until a
//! whole feed, a suck, or a full belly. A part of a feed is its part.

use super::{Completion, Duty, LambTask, at_once, before_milk, feed, looked_at_since};
use crate::book::Belly;
use crate::flock::{Felt, Lamb};
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta, Volume};

/// Late so long after it was felt (ours).
const LATE_AFTER: TimeDelta = TimeDelta::hours(1);
/// A reading so long before it still belongs to it (ours).
const READ_BEFORE: TimeDelta = TimeDelta::hours(1);

pub(super) fn duty(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    let (since, _) = hollow(lamb, settings)?;
    let task = LambTask::Hollow { before: before_milk(lamb, now, settings) };
    Some(at_once(lamb, task, since, LATE_AFTER, Completion::Open))
}

/// Says whether a thermometer, or a finger in the mouth, comes first: its belly is hollow, and no reading belongs to that.
pub(super) fn reads_first(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> bool {
    let unread =
        |felt: Moment| !looked_at_since(lamb, felt - READ_BEFORE) && now.since(felt) < READ_BEFORE * 24;
    hollow(lamb, settings).is_some_and(|(_, felt)| unread(felt))
}

/// Since when its belly is hollow, if it is, and when it was felt so last.
fn hollow(lamb: &Lamb, settings: &FarmSettings) -> Option<(Moment, Moment)> {
    // A belly that is tight, or over which the chin is wet, feels full and is not fed.
    let counts = |felt: &&Felt| felt.belly == Belly::Full && lamb.belly_or_chin_at(felt.at).is_none();
    let felt = lamb.belly.iter().rev().find(|felt| felt.belly == Belly::Hollow || counts(felt));
    let felt = felt.filter(|felt| felt.belly == Belly::Hollow)?;
    if lamb.weaned.is_some() {
        return None;
    }
    // Hollow once more is no later than hollow at first.
    let full = lamb.belly.iter().rev().find(counts).map(|felt| felt.at);
    let hollow = lamb.belly.iter().map(|felt| felt.at).filter(|at| full.is_none_or(|full| *at > full));
    let since = hollow.into_iter().find(|at| {
        let sucked = lamb.sucked.last().is_some_and(|sucked| sucked >= at);
        !sucked && !had_a_feed(lamb, *at, settings)
    })?;
    Some((since, felt.at))
}

/// Says whether it was given a whole feed since; any feed counts as one while nobody knows how much that is.
fn had_a_feed(lamb: &Lamb, since: Moment, settings: &FarmSettings) -> bool {
    let given: Volume = lamb.feeds.iter().filter(|fed| fed.at >= since).map(|fed| fed.volume).sum();
    let one = feed::one_feed(lamb, since, settings);
    lamb.feeds.iter().any(|fed| fed.at >= since)
        && one.is_none_or(|one| given.as_milliliters() >= one.as_milliliters() * feed::WHOLE)
}
