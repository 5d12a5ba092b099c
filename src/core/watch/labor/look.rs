//! A restless ewe is looked at every hour; one that the vet was called for, at the time that this asks for.
//!
//! A look that was asked for is done by nothing but a look, or by good news: a sign that she goes on does not stand for it.

use super::{Completion, Duty, EweTask, advanced_well, counted, hand_well, minutes};
use crate::book::{Animal, Event};
use crate::flock::{Ewe, Labor};
use crate::settings::LaborLimits;
use crate::units::{Moment, TimeDelta};
use crate::watch::vet;

/// A look is late so long after its time (ours).
const HALF_HOUR: TimeDelta = TimeDelta::minutes(30);
/// A call to the vet asks for looks so long, where nothing else of her is open (ours).
const CALLED_FOR: TimeDelta = TimeDelta::hours(24);

pub(super) fn restless(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let restless = labor.restless?;
    let looked_at = labor.looked.max(hand_well(labor)).max(advanced_well(labor));
    let from = looked_at.map_or(restless, |looked| looked.max(restless));
    // Once she goes on she has clocks of her own, and the hourly looks end with the one that was asked for by then.
    if labor.further().is_some_and(|further| from >= further) {
        return None;
    }
    let due = minutes(limits.look_minutes);
    Some(counted(ewe, EweTask::Look, from, due, due + HALF_HOUR, looked(ewe)))
}

/// Returns the look that the last call to the vet asks for: again and again while something of her is open, else once. A
/// birth since then ends what she was called for.
pub(super) fn for_the_vet(ewe: &Ewe, birth: Option<Moment>, busy: bool, now: Moment) -> Option<Duty> {
    let last = ewe.vet.last().filter(|call| now.since(call.at) < CALLED_FOR)?;
    let looked_at = ewe.last_look();
    let open = busy && birth.is_none_or(|birth| last.at >= birth);
    if !open && looked_at.is_some_and(|looked| looked > last.at) {
        return None;
    }
    let called = vet::called(&ewe.vet, last.at - CALLED_FOR, looked_at)?;
    let wait = called.look_again.since(called.at);
    Some(counted(ewe, EweTask::Look, called.at, wait, wait + vet::LOOK_LATE, looked(ewe)))
}

const fn looked(ewe: &Ewe) -> Completion {
    Completion::Note(Event::LookedAt { animal: Animal::Ewe(ewe.id) })
}
