//! Vigor: scored at five minutes, before any feed by tube; after the first hour it tells nothing more.
//!
//! A lamb of the worst grade, or of the lowest band of points, is seen to until something says that it is better.

use super::{Discharge, Duty, Task, at_ages, at_once};
use crate::book::{Animal, Event, VigorScale};
use crate::flock::{Lamb, Scored};
use crate::reckon::vigor;
use crate::units::{Moment, TimeDelta};

pub(super) fn duty(lamb: &Lamb, now: Moment) -> Option<Duty> {
    if !lamb.vigor.is_empty() || !vigor::worth_scoring(lamb.age(now)) {
        return None;
    }
    let hour = TimeDelta::hours(1);
    Some(at_ages(lamb, Task::ScoreVigor, TimeDelta::minutes(5), hour, Discharge::Open))
}

/// Late so long after the score (ours).
const FAILING_LATE: TimeDelta = TimeDelta::minutes(10);
/// A score this old says nothing of now (ours).
const FAILING_GONE: TimeDelta = TimeDelta::hours(24);

pub(super) fn failing(lamb: &Lamb, now: Moment) -> Option<Duty> {
    let scored = lamb.vigor.last().filter(|scored| is_failing(scored))?;
    let better = |moments: &[Moment]| moments.iter().any(|at| *at > scored.at);
    let warm = lamb.temperatures.iter().any(|reading| reading.at > scored.at);
    let seen = better(&lamb.sucked) || better(&lamb.stood) || better(&lamb.looked) || better(&lamb.vet);
    if seen || warm || now.since(scored.at) > FAILING_GONE {
        return None;
    }
    let looked = Discharge::Note(Event::LookedAt { animal: Animal::Lamb(lamb.id) });
    Some(at_once(lamb, Task::Failing, scored.at, FAILING_LATE, looked))
}

pub(super) const fn is_failing(scored: &Scored) -> bool {
    match scored.scale {
        VigorScale::FourGrade => scored.score >= 4,
        VigorScale::TenPoint | VigorScale::EightPoint => scored.score <= 3,
    }
}
