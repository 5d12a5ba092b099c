//! Restless for hours: a hand or the vet must find out why. Neither a look nor waters stop this clock; a hand that found
//! all well begins it anew, and a lamb that comes as it should ends it.

use super::{Completion, Duty, EweTask, advanced_well, counted, hand_well, minutes};
use crate::flock::{Ewe, Labor};
use crate::settings::LaborLimits;

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let restless = labor.restless.filter(|_| advanced_well(labor).is_none())?;
    let from = hand_well(labor).map_or(restless, |well| well.max(restless));
    let limit = minutes(limits.restless_minutes);
    Some(counted(ewe, EweTask::LongRestless, from, limit, limit, Completion::Open))
}
