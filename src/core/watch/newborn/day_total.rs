//! The first day's total: a lamb that lives from the hand has what it wants before the window closes.

use super::{Completion, Duty, LambTask, at_ages, before_milk, target};
use crate::flock::Lamb;
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta};

/// Looked at from 20 hours, so that there is time for a feed before the window closes at 24 (ours).
const DUE: TimeDelta = TimeDelta::hours(20);
const LATE: TimeDelta = TimeDelta::hours(24);
/// Told for two hours past the close; then no milk can make it up, and the bottle's own hours go on (ours).
const GONE: TimeDelta = TimeDelta::hours(26);

/// A shortfall smaller than this is no shortfall (ours: half the smallest feed printed in the bottle tables).
const SLACK_MILLILITERS: f64 = 30.0;

pub(super) fn duty(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    if !lamb.hand_fed() || !lamb.sucked.is_empty() || lamb.least_age(now) > GONE {
        return None;
    }
    let target = target(lamb, settings)?.by_24h;
    let given = lamb.given_first_day(now);
    if given.as_milliliters() + SLACK_MILLILITERS >= target.as_milliliters() {
        return None;
    }
    let before = before_milk(lamb, now, settings);
    Some(at_ages(lamb, LambTask::DayTotal { given, target, before }, DUE, LATE, Completion::Open))
}
