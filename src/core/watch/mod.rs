//! What is due: every rule reads the flock and now, and says what to do, from when, and until when it may wait.
//!
//! The work follows what is live: newborns, ewes at work, pens in use and bottle lambs, never the whole flock;
//! lambs of ring age only where the farm rings.

mod duty;
mod illness;
mod labor;
mod newborn;
mod pen;
mod put_off;
mod round;
mod spread;
mod task;
mod validate;
mod vet;
mod withdrawal;

use std::collections::{BTreeMap, BTreeSet};

pub use duty::{Completion, Duty, State, may_be_well};
pub use illness::{Course, ewe_case, ewe_illness, lamb_case, lamb_illness, stage_of};
pub use labor::udder::DrawFrom;
pub use newborn::{
    BeforeMilk, ColdSpell, Hold, LambDanger, LambStep, age_of_cold, before_milk, cold_spell, dams_milk,
    hold_milk, holds, may_be_tubed, may_be_weaned, next_milk,
};
pub use pen::{Readiness, WhyNot, readiness};
pub use put_off::may_wait_until;
pub use round::{Round, round};
pub use spread::{Spreading, spreading};
pub use task::{EweTask, LambTask, Task, Trouble};
pub use validate::{
    EweRejection, GroupRejection, KEPT_FROM, LifeRejection, Rejection, StoreRejection, validate,
    validate_all, validate_together,
};
pub use vet::Called;
pub use withdrawal::{Product, Withdrawal, usable_after, withdrawal};

use validate::may_be_fed;

use crate::book::{Animal, EweId, LambId};
use crate::flock::{Ewe, Flock, LITTER_APART, Lamb, Litter};
use crate::settings::FarmSettings;
use crate::sort_small::{Gather, SortSmall};
use crate::units::{Moment, TimeDelta};

/// Lambs and litters younger than this are looked at with every beat of the clock (ours: no rule of a newborn or of
/// an afterbirth reaches further).
const FRESH: TimeDelta = TimeDelta::hours(73);

/// A litter that was scanned with more is asked about for so long: what comes later is another litter.
const ANOTHER_LAMB: TimeDelta = LITTER_APART;

/// After a call to the vet its animal is looked at by the rules for so long at least (ours).
const CALLED_FOR: TimeDelta = TimeDelta::hours(24);

/// Returns everything that is due or coming, the most urgent first.
///
/// Danger comes before late, late before now, now before coming; among the late and the present a call to the vet comes first, then what a
/// life hangs on, then what was due first; among what is coming, what comes first.
#[must_use]
pub fn duties(flock: &Flock, now: Moment, settings: &FarmSettings) -> Vec<Duty> {
    let mut duties = Vec::new();
    for lamb in live(flock, now).into_iter().filter_map(|id| flock.lambs.get(&id)) {
        let mut of_it = newborn::duties(flock, lamb, now, settings);
        newborn::dam_dry::put(&mut of_it, flock, lamb, now, settings);
        duties.extend(of_it);
        duties.extend(newborn::one_half::duty(flock, lamb, now));
        duties.extend(illness::of_lamb(lamb, now));
    }
    for lamb in ringable(flock, now, settings) {
        duties.extend(newborn::ring::duty(lamb, now, settings.rings));
    }
    for (ewe, litter) in ewes(flock, now) {
        duties.extend(labor::duties(flock, ewe, litter, now, settings.labor));
    }
    for ewe in flock.ill.iter().filter_map(|id| flock.ewes.get(id)) {
        duties.extend(illness::of_ewe(flock, ewe, now));
    }
    for stay in flock.pens.values().flat_map(|pen| &pen.inside) {
        duties.extend(pen::duty(flock, stay, now));
    }
    duties.retain(|duty| duty.from <= now);
    for duty in &mut duties {
        let put_off = flock.put_off(duty.subject(), duty.task.kind());
        duty.put_off = put_off.and_then(|put_off| put_off::until(duty, put_off));
    }
    duties.sort_small_by_key(|duty| {
        let state = duty.state(now);
        let weight = if state == State::Coming { 0 } else { duty.task.weight() };
        let call = state > State::Coming && matches!(duty.task, Task::Lamb(_, LambTask::CallVet));
        (
            std::cmp::Reverse((state, call)),
            weight,
            duty.comes(),
            duty.subject(),
            duty.task.weight(),
            duty.task.kind(),
        )
    });
    duties
}

/// The ewes that a rule may have something to say about, each with her fresh litter if she has one: ewes at work, dams of
/// newborns, and those the vet was called for.
fn ewes(flock: &Flock, now: Moment) -> impl Iterator<Item = (&Ewe, Option<&Litter>)> {
    let litters: BTreeSet<LambId> = flock.born_after(now - ANOTHER_LAMB).map(|lamb| lamb.litter).gathered();
    let mut latest: BTreeMap<EweId, Option<&Litter>> =
        flock.at_work.iter().map(|ewe| (*ewe, None)).gathered();
    for animal in flock.called_for_after(now - CALLED_FOR) {
        if let Animal::Ewe(ewe) = animal {
            latest.entry(ewe).or_default();
        }
    }
    for litter in litters.iter().filter_map(|id| flock.litters.get(id)) {
        let Some(ewe) = litter.dam.and_then(|dam| flock.ewe(dam)) else { continue };
        let known = latest.entry(ewe.id).or_default();
        if known.is_none_or(|known| known.latest < litter.latest) {
            *known = Some(litter);
        }
    }
    latest.into_iter().filter_map(|(ewe, litter)| Some((flock.ewes.get(&ewe)?, litter)))
}

fn fresh(flock: &Flock, now: Moment) -> impl Iterator<Item = &Lamb> {
    flock.born_after(now - FRESH)
}

/// The living lambs young enough for a ring or to be told that it is too late; none where the farm uses no rings.
fn ringable<'a>(flock: &'a Flock, now: Moment, settings: &FarmSettings) -> impl Iterator<Item = &'a Lamb> {
    let reach = newborn::ring::reach(settings.rings);
    let young = reach.map(|reach| flock.born_after(now - reach));
    young.into_iter().flatten().filter(|lamb| lamb.lives())
}

/// The living lambs that a rule may have something to say about.
fn live(flock: &Flock, now: Moment) -> BTreeSet<LambId> {
    let fresh = fresh(flock, now).filter(|lamb| lamb.lives()).map(|lamb| lamb.id);
    let called = flock.called_for_after(now - CALLED_FOR).into_iter().filter_map(|animal| match animal {
        Animal::Lamb(lamb) => Some(lamb),
        Animal::Ewe(_) => None,
    });
    let called = called.filter(|lamb| flock.lambs.get(lamb).is_some_and(Lamb::lives));
    let kept = flock.on_bottle.iter().chain(&flock.in_care).copied();
    fresh.chain(called).chain(kept).gathered()
}
