//! When milk waits: a lamb under 37 °C, one that did not hold its head up and swallow, or one scored failing and not yet
//! read, is offered none with one tap.

use super::vigor::is_failing;
use crate::flock::Lamb;
use crate::reckon::body_temperature::warm_enough_to_feed;
use crate::units::Temperature;

/// Why milk waits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hold {
    /// It did not hold its head up and swallow when it was last tried, and was not seen to suck since.
    NoSwallow,
    /// It read under 37 °C, and has not read warmer since.
    Cold(Temperature),
    /// It was scored failing, and since then nothing said that it is better: no reading, no try of head and swallow, no
    /// feed, nor was it seen to suck, up, or better at a look.
    Failing,
}

/// Returns why the lamb must not be given milk yet, by what was noted last; nothing when nothing speaks against it.
///
/// The worst of several comes first. None goes by with time: only what was seen of it since ends it.
#[must_use]
pub fn hold_milk(lamb: &Lamb) -> Option<Hold> {
    let sucked = lamb.sucked.last();
    let choked = lamb.swallow.last().filter(|(at, able)| !able && sucked.is_none_or(|sucked| sucked < at));
    if choked.is_some() {
        return Some(Hold::NoSwallow);
    }
    let last = lamb.temperatures.last();
    if let Some(cold) = last.filter(|reading| !warm_enough_to_feed(reading.temperature)) {
        return Some(Hold::Cold(cold.temperature));
    }
    let scored = lamb.vigor.last().filter(|scored| is_failing(scored))?;
    let tried = lamb.swallow.last().map(|(at, _)| at);
    let fed = lamb.feeds.last().map(|feed| &feed.at);
    let read = last.map(|reading| &reading.at);
    let since = [read, tried, fed, sucked, lamb.stood.last(), lamb.looked.last()];
    (!since.into_iter().flatten().any(|at| *at >= scored.at)).then_some(Hold::Failing)
}
