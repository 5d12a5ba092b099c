//! When milk waits: a lamb under 37 °C, or one that did not hold its head up and swallow, is offered none with one tap.

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
}

/// Returns why the lamb must not be given milk yet, by what was noted last; nothing when nothing speaks against it.
///
/// The worse of two comes first. Neither goes by with time: only a try, sucking or a reading ends it.
#[must_use]
pub fn hold_milk(lamb: &Lamb) -> Option<Hold> {
    let sucked = lamb.sucked.last();
    let choked = lamb.swallow.last().filter(|(at, able)| !able && sucked.is_none_or(|sucked| sucked < at));
    if choked.is_some() {
        return Some(Hold::NoSwallow);
    }
    let last = lamb.temperatures.last()?.temperature;
    (!warm_enough_to_feed(last)).then_some(Hold::Cold(last))
}
