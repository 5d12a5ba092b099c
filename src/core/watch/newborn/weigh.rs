//! Weighing: the volumes hang on it, so within two hours; a weight after a day is no birth weight.

use super::{Discharge, Duty, Task, at_ages};
use crate::flock::Lamb;
use crate::units::{Moment, TimeDelta};

/// Due at half an hour, when it is dry and has been with its dam; late at six (ours).
const DUE: TimeDelta = TimeDelta::minutes(30);
const LATE: TimeDelta = TimeDelta::hours(6);

pub(super) fn duty(lamb: &Lamb, now: Moment) -> Option<Duty> {
    if lamb.birth_weight().is_some() || lamb.age(now) >= TimeDelta::hours(24) {
        return None;
    }
    Some(at_ages(lamb, Task::Weigh, DUE, LATE, Discharge::Open))
}
