//! Vigor: scored at five minutes, before any feed by tube; after the first hour it tells nothing more.
//!
//! A lamb of the worst grade, or of the lowest band of points, is in danger: see there.

use super::{Completion, Duty, LambTask, at_ages};
use crate::flock::Lamb;
use crate::reckon::vigor;
use crate::units::{Moment, TimeDelta};

pub(super) fn duty(lamb: &Lamb, now: Moment) -> Option<Duty> {
    if !lamb.vigor.is_empty() || !vigor::worth_scoring(lamb.age(now)) {
        return None;
    }
    let hour = TimeDelta::hours(1);
    Some(at_ages(lamb, LambTask::ScoreVigor, TimeDelta::minutes(5), hour, Completion::Open))
}
