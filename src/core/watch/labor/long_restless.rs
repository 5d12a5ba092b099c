//! Restless for hours and no waters: a hand or the vet must find out why. Looking does not stop this clock.

use super::{Discharge, Duty, Task, counted, minutes};
use crate::flock::{Ewe, Labor};
use crate::practice::LaborLimits;

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let further = labor.pressing().is_some()
        || !labor.parts.is_empty()
        || labor.check.is_some()
        || labor.help.is_some()
        || labor.vet.is_some();
    let restless = labor.restless.filter(|_| !further)?;
    let limit = minutes(limits.restless_minutes);
    Some(counted(ewe, Task::LongRestless, restless, limit, limit, Discharge::Open))
}
