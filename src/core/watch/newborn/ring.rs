//! Rings, where the farm uses them: from a day old, before the farm's limit; after it a ring is told as too late.
//!
//! One duty a lamb: what may still go on comes first, and what came too late is told when nothing else is open.
//!
//! Two rings are one duty: what is open first, what came too late when nothing else is.

use super::{Completion, Duty, LambTask, Task};
use crate::book::{Animal, Event, Ring, Sex};
use crate::flock::Lamb;
use crate::reckon::marking::{RINGS_FROM, RingState, Window, ring, ring_state};
use crate::settings::Rings;
use crate::units::{Moment, TimeDelta};

/// For so long after the limit a missed ring is told (ours).
const TOLD: TimeDelta = TimeDelta::days(7);

/// Returns the age to which rings have something to say; none where the farm uses none.
pub(in crate::watch) fn reach(rings: Rings) -> Option<TimeDelta> {
    Ring::ALL.into_iter().filter_map(|kind| ring(rings, kind)).map(|window| window.before + TOLD).max()
}

pub(in crate::watch) fn duty(lamb: &Lamb, now: Moment, rings: Rings) -> Option<Duty> {
    let age = lamb.age(now);
    let wanted = Ring::ALL.into_iter().filter(|kind| fits(lamb, *kind) && !done(lamb, *kind));
    let windows: Vec<Window> = wanted.filter_map(|kind| ring(rings, kind)).collect();
    let of = |past: bool| -> Vec<Window> {
        let stands = |window: &&Window| match ring_state(window, age) {
            RingState::TooYoung(_) => false,
            RingState::Open(_) => !past,
            RingState::Past => past,
        };
        windows.iter().filter(stands).copied().collect()
    };
    let open = of(false);
    if let Some(first) = open.iter().map(|window| window.before).min() {
        let completion = match open.as_slice() {
            [window] => Completion::Note(Event::Ringed { lamb: lamb.id, ring: window.ring }),
            [] | [_, _, ..] => Completion::Open,
        };
        return Some(made(lamb, &open, first, false, completion));
    }
    let past = of(true);
    let last = past.iter().map(|window| window.before).max()?;
    let limit = lamb.born + last;
    if age >= last + TOLD || lamb.vet.iter().any(|called| called.at >= limit) {
        return None;
    }
    let call = Completion::Note(Event::VetCalled { animal: Animal::Lamb(lamb.id) });
    Some(made(lamb, &past, last, true, call))
}

fn made(lamb: &Lamb, windows: &[Window], before: TimeDelta, too_late: bool, completion: Completion) -> Duty {
    let has = |kind: Ring| windows.iter().any(|window| window.ring == kind);
    let task = LambTask::Ring { tail: has(Ring::Tail), castration: has(Ring::Castration), too_late };
    let due = lamb.found.unwrap_or(lamb.born) + RINGS_FROM;
    Duty {
        task: Task::Lamb(lamb.id, task),
        since: lamb.born,
        from: due,
        due,
        late: lamb.born + before,
        danger: None,
        vet: None,
        completion,
        put_off: None,
    }
}

/// Whether this ring is for this lamb: a tail any lamb has, and only a ram lamb known as one is castrated.
const fn fits(lamb: &Lamb, kind: Ring) -> bool {
    match kind {
        Ring::Tail => true,
        Ring::Castration => matches!(lamb.sex, Some(Sex::Ram)),
    }
}

fn done(lamb: &Lamb, kind: Ring) -> bool {
    lamb.rings.iter().any(|(_, ring)| *ring == kind)
}
