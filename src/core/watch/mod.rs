//! What is due: every rule reads the flock and now, and says what to do, from when, and until when it may wait.
//!
//! The work follows what is live: newborns, ewes at work, pens in use and bottle lambs, never the whole flock;
//! lambs of ring age only where the farm rings.

mod allow;
mod duty;
mod labor;
mod newborn;
mod pen;
mod put_off;
mod round;
mod withheld;

use std::collections::BTreeSet;

pub use allow::{EweRefusal, GroupRefusal, KEPT_FROM, LifeRefusal, Refusal, StoreRefusal, allow};
pub use duty::{Discharge, Duty, State, Task};
pub use labor::needs;
pub use newborn::{Hold, hold_milk, may_be_weaned, next_milk};
pub use pen::{Readiness, WhyNot, readiness};
pub use put_off::may_wait_until;
pub use round::{Round, round};
pub use withheld::{Product, Withheld, usable_after, withheld};

use crate::arrange::Arrange;
use crate::book::LambId;
use crate::flock::{Flock, Lamb};
use crate::practice::Practice;
use crate::units::{Moment, TimeDelta};

/// Lambs and litters younger than this are looked at with every beat of the clock (ours: no rule of a newborn or of
/// an afterbirth reaches further).
const FRESH: TimeDelta = TimeDelta::hours(73);

/// Returns everything that is due or coming, the most urgent first.
///
/// Late comes before now, now before coming; among the late and the present a call to the vet comes first, then what a
/// life hangs on, then what was due first; among what is coming, what comes first.
#[must_use]
pub fn duties(flock: &Flock, now: Moment, practice: &Practice) -> Vec<Duty> {
    let mut duties = Vec::new();
    for lamb in live(flock, now).into_iter().filter_map(|id| flock.lambs.get(&id)) {
        duties.extend(newborn::duties(lamb, now, practice));
    }
    for lamb in ringable(flock, now, practice) {
        duties.extend(newborn::ring::duty(lamb, now, practice.rings));
    }
    for ewe in flock.at_work.iter().filter_map(|id| flock.ewes.get(id)) {
        if let Some(labor) = &ewe.labor {
            duties.extend(labor::before_birth(ewe, labor, now, practice.labor));
        }
    }
    let fresh: BTreeSet<LambId> = fresh(flock, now).map(|lamb| lamb.litter).collect();
    for litter in fresh.iter().filter_map(|id| flock.litters.get(id)) {
        duties.extend(labor::after_birth(flock, litter, now, practice.labor));
    }
    for stay in flock.pens.values().flat_map(|pen| &pen.inside) {
        duties.extend(pen::duty(flock, stay, now));
    }
    duties.retain(|duty| duty.from <= now);
    for duty in &mut duties {
        duty.put_off = flock.put_off(duty.subject, duty.task.kind());
    }
    duties.arrange_by_key(|duty| {
        let state = duty.state(now);
        let weight = if state == State::Coming { 0 } else { duty.task.weight() };
        let call = state > State::Coming && duty.task == Task::CallVet;
        (
            std::cmp::Reverse((state, call)),
            weight,
            duty.comes(),
            duty.subject,
            duty.task.weight(),
            duty.task.kind(),
        )
    });
    duties
}

fn fresh(flock: &Flock, now: Moment) -> impl Iterator<Item = &Lamb> {
    flock.born_after(now - FRESH)
}

/// The living lambs young enough for a ring or to be told that it is too late; none where the farm uses no rings.
fn ringable<'a>(flock: &'a Flock, now: Moment, practice: &Practice) -> impl Iterator<Item = &'a Lamb> {
    let reach = newborn::ring::reach(practice.rings);
    let young = reach.map(|reach| flock.born_after(now - reach));
    young.into_iter().flatten().filter(|lamb| lamb.lives())
}

/// The living lambs that a rule may have something to say about.
fn live(flock: &Flock, now: Moment) -> BTreeSet<LambId> {
    let fresh = fresh(flock, now).filter(|lamb| lamb.lives()).map(|lamb| lamb.id);
    fresh.chain(flock.on_bottle.iter().copied()).chain(flock.with_temperature.iter().copied()).collect()
}
