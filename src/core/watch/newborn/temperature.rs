//! A lamb that read too cold or too warm is read again; where the table says so, the vet is called at once.
//!
//! The table goes by the age at which the cold spell began, else at the reading, and by the try of head and swallow made
//! with it; what is not known takes the safer branch there. Only a normal reading ends it, and after a cold spell two
//! looks more.
//!
//! A fever of up to 40.5 °C in a lamb that is bright and sucks is read again in 30 minutes, out of the heat; twice,
//! or higher, or dull, it is the vet's.

use super::danger::GONE;
use super::warmth::{ColdSpell, age_of_cold, cold_spell};
use super::{Completion, Duty, LambTask, at_once, holds};
use crate::book::{Animal, Event};
use crate::flock::Lamb;
use crate::reckon::body_temperature::{Band, band};
use crate::reckon::cold_lamb::{ColdLambAnswer, Vet, decide};
use crate::units::{Moment, TimeDelta};
use crate::watch::vet::{self, Called};
use crate::watch::{Hold, newborn::hold_milk};

/// A second reading is late so long after its time (ours). A call to the vet is late as soon as the table asks for it.
const LATE_AFTER: TimeDelta = TimeDelta::minutes(20);
/// Two readings of fever so far apart are one that lasts: the farm's half hour, read a little early (ours).
const FEVER_LASTS: TimeDelta = TimeDelta::minutes(25);
/// A lamb that became warm again after a cold spell is looked at within the hour, twice (ours).
const AFTER_A_SPELL: TimeDelta = TimeDelta::hours(1);

/// What the table says of the last reading.
fn answer(lamb: &Lamb, now: Moment) -> Option<(Moment, ColdLambAnswer)> {
    let last = lamb.temperatures.last().filter(|last| now.since(last.at) <= GONE)?;
    let spell = cold_spell(lamb).filter(ColdSpell::goes_on);
    let age = spell.map_or_else(|| age_of_cold(lamb, last.at), |spell| spell.age(lamb));
    let answer = decide(last.temperature, Some(age), lamb.swallows()).ok()?;
    Some((last.at, answer))
}

pub(super) fn again(lamb: &Lamb, now: Moment) -> Option<Duty> {
    let by_table = answer(lamb, now).and_then(|(read, answer)| Some((read, answer.look_again?)));
    let spell = cold_spell(lamb);
    let mouth = spell.as_ref().filter(|spell| spell.goes_on()).and_then(|spell| {
        let unread = spell.looks.last().is_some_and(|(_, read)| read.is_none());
        unread.then(|| (spell.looked(), crate::reckon::warming::LOOK_EVERY))
    });
    let after = spell.as_ref().filter(|spell| spell.wants_a_look()).and_then(|spell| {
        let last = spell.warm.last().filter(|last| now.since(**last) <= GONE)?;
        Some((*last, AFTER_A_SPELL))
    });
    let (read, wait) =
        [by_table, mouth, after].into_iter().flatten().min_by_key(|(read, wait)| *read + *wait)?;
    let mut duty = at_once(lamb, LambTask::TakeTemperature, read, wait + LATE_AFTER, Completion::Open);
    duty.due = read + wait;
    Some(duty)
}

/// The call to the vet that the table asks for, where the lamb is not in danger: that has its own.
pub(super) fn vet(lamb: &Lamb, now: Moment) -> Option<Duty> {
    let (read, answer) = answer(lamb, now)?;
    let in_danger = holds(lamb)
        .iter()
        .any(|hold| !matches!(hold, Hold::NotTried { .. } | Hold::Belly { .. } | Hold::Mouth { .. }));
    let lasts = is_fever(&answer) && still_feverish(lamb, read);
    if answer.vet != Vet::Now && !lasts || in_danger {
        return None;
    }
    // Who has drunk since then was tried.
    let tried_since = hold_milk(lamb).is_none() && answer.head_up_and_swallows.is_none() && drank(lamb, read);
    let called = vet::called(&lamb.vet, read, lamb.looked.last().copied());
    if tried_since && !is_fever(&answer) || called.as_ref().is_some_and(|called| !called.nobody_reached()) {
        return None;
    }
    let call = Completion::Note(Event::VetCalled { animal: Animal::Lamb(lamb.id) });
    let mut duty = at_once(lamb, LambTask::CallVet, read, TimeDelta::zero(), call);
    duty.vet = called.filter(Called::nobody_reached);
    Some(duty)
}

/// Says whether the reading before was a fever too, so long before that it was out of the heat since.
fn still_feverish(lamb: &Lamb, read: Moment) -> bool {
    let before = lamb.temperatures.iter().rev().find(|reading| read.since(reading.at) >= FEVER_LASTS);
    before.is_some_and(|before| band(before.temperature) == Ok(Band::Fever))
}

fn drank(lamb: &Lamb, since: Moment) -> bool {
    lamb.sucked.iter().copied().chain(lamb.feeds.iter().map(|feed| feed.at)).any(|at| at >= since)
}

const fn is_fever(answer: &ColdLambAnswer) -> bool {
    matches!(answer.branch, crate::reckon::cold_lamb::Branch::Fever)
}
