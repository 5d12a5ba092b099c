//! A lamb in danger: cold, not swallowing, or failing. First on the Watch until good news about that very sign, whatever
//! else was noted; the vet's visit with a plan turns it amber until something is worse.
//!
//! A call to the vet for a lamb is late as soon as it is asked for, and stands before all else that is late. A lamb
//! that must not have milk is not offered "Sucked", and no volume stands beside it on the Watch.

use super::hold::{Hold, holds};
use super::warmth::{ColdSpell, cold_spell};
use super::{Completion, Duty, LambTask, at_once};
use crate::book::{Animal, Event};
use crate::flock::Lamb;
use crate::reckon::cold_lamb::YOUNG_TO;
use crate::reckon::illness::lamb::SUCKS_BY;
use crate::units::{Moment, Temperature, TimeDelta};
use crate::watch::vet::{self, Called};

/// A lamb scored failing is read and tried within so long; then it is the vet's (ours).
const CHECKED_WITHIN: TimeDelta = TimeDelta::minutes(10);
/// A lamb that was seen no worse for so long has come through what it was in (ours); milk is still held.
pub(super) const GONE: TimeDelta = TimeDelta::days(7);

/// What a lamb's danger is, and what comes next.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LambDanger {
    /// What it read last, if it is cold; the outer level says whether it is, the inner one whether a thermometer said it.
    pub cold: Option<Option<Temperature>>,
    /// Whether it did not hold its head up and swallow.
    pub no_swallow: bool,
    /// Whether it was scored failing.
    pub failing: bool,
    /// The next step.
    pub step: LambStep,
}

/// The next step for a lamb in danger.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LambStep {
    /// Up to five hours old and cold: dry and warm it now, swallowing or not.
    WarmNow,
    /// Older or of unknown age and cold: shelter, the vet, glucose first.
    GlucoseFirst,
    /// It had its glucose: warm it now.
    GlucoseGiven,
    /// Warm enough, and does not swallow: nothing by mouth.
    NothingByMouth,
    /// Failing and not yet read and tried: airway, breath, dry, warm; then temperature and swallow.
    CheckNow,
}

pub(super) fn duty(lamb: &Lamb, now: Moment) -> Option<Duty> {
    let (mut cold, mut no_swallow, mut failing) = (None, None, None);
    for hold in holds(lamb) {
        match hold {
            Hold::NoSwallow { since } => no_swallow = Some(since),
            Hold::Cold { since, read } => cold = Some((since, read)),
            Hold::Failing { since } => failing = Some(since),
            // What belly, chin or mouth hold back is told by its illness.
            Hold::NotTried { .. } | Hold::Belly { .. } | Hold::Mouth { .. } => {}
        }
    }
    let spell = cold_spell(lamb).filter(ColdSpell::goes_on);
    let signs = [cold.map(|(since, _)| since), no_swallow, failing];
    let since = signs.into_iter().flatten().min()?;
    let newest = signs.into_iter().flatten().chain(spell.as_ref().map(ColdSpell::worsened)).max()?;
    let latest = spell.as_ref().map_or(newest, |spell| newest.max(spell.looked()));
    let latest =
        lamb.swallow.last().filter(|_| no_swallow.is_some()).map_or(latest, |(at, _)| latest.max(*at));
    if now.since(latest) > GONE {
        return None;
    }
    let danger = LambDanger {
        cold: cold.map(|(_, read)| read),
        no_swallow: no_swallow.is_some(),
        failing: failing.is_some(),
        step: step(lamb, spell.as_ref(), no_swallow.is_some()),
    };
    let called = vet::called(&lamb.vet, since, lamb.looked.last().copied());
    let open = called.as_ref().is_none_or(Called::nobody_reached);
    let call = wants_the_vet(lamb, spell.as_ref(), &danger, failing, now) && open;
    let completion = if call {
        Completion::Note(Event::VetCalled { animal: Animal::Lamb(lamb.id) })
    } else {
        Completion::Open
    };
    let mut duty = at_once(lamb, LambTask::Danger(danger), since, TimeDelta::zero(), completion);
    duty.danger = Some(since);
    // Seen by the vet, who left a plan: amber until the look that was asked for, unless it is worse since then.
    if let Some(saw) = called.as_ref().filter(|called| called.vet_saw() && called.at >= newest) {
        duty.danger = None;
        duty.late = saw.look_again;
    }
    duty.vet = called;
    Some(duty)
}

fn step(lamb: &Lamb, spell: Option<&ColdSpell>, no_swallow: bool) -> LambStep {
    match spell {
        Some(spell) if spell.age(lamb) <= YOUNG_TO => LambStep::WarmNow,
        Some(spell) if spell.glucose(lamb).is_some() => LambStep::GlucoseGiven,
        Some(_) => LambStep::GlucoseFirst,
        None if no_swallow => LambStep::NothingByMouth,
        None => LambStep::CheckNow,
    }
}

/// Says whether it is so young that it need not suck yet, was seen with its head up, and never failed a try.
fn sucks_not_yet(lamb: &Lamb, now: Moment) -> bool {
    let young = lamb.age(now) < SUCKS_BY && lamb.swallow.is_empty();
    young && lamb.ill.last().is_some_and(|look| look.sucks_not_yet(lamb))
}

/// Says whether the vet is to be called now: not for a young cold lamb that swallows and gains, nor for a failing one
/// that was not yet read and tried.
fn wants_the_vet(
    lamb: &Lamb,
    spell: Option<&ColdSpell>,
    danger: &LambDanger,
    failing: Option<Moment>,
    now: Moment,
) -> bool {
    let cold = spell.is_some_and(|spell| {
        spell.age(lamb) > YOUNG_TO
            || spell.stalls().is_some()
            || lamb.swallows_since(spell.looked()) != Some(true) && !sucks_not_yet(lamb, now)
    });
    let unchecked = failing.is_some_and(|since| {
        let read = lamb.temperatures.iter().any(|reading| reading.at >= since);
        read || now.since(since) >= CHECKED_WITHIN
    });
    danger.no_swallow || cold || unchecked
}
