//! A lamb reared on one half of an udder is weighed again a day after it was weighed last, for its first three days (ours).

use super::{Completion, Duty, LambTask, at_once};
use crate::flock::{Flock, Lamb, UdderSeen};
use crate::reckon::illness::udder::{WEIGH_AGAIN, WEIGHED_UNTIL};
use crate::units::{Moment, TimeDelta};
use crate::watch::labor::udder::last_check;

/// Late so long after its time (ours).
const LATE_AFTER: TimeDelta = TimeDelta::hours(12);

pub(in crate::watch) fn duty(flock: &Flock, lamb: &Lamb, now: Moment) -> Option<Duty> {
    let ewe = flock.rearer(lamb).and_then(|ewe| flock.ewe(ewe)).filter(|ewe| ewe.lives())?;
    last_check(ewe, now).filter(|seen| UdderSeen::is_one_half(seen))?;
    let weighed = lamb.last_weight(now).map_or(lamb.born, |weight| weight.at);
    let due = weighed + WEIGH_AGAIN;
    let over = due.since(lamb.born) > WEIGHED_UNTIL || lamb.age(now) > WEIGHED_UNTIL;
    if over || lamb.on_bottle() || now.since(due) < TimeDelta::zero() {
        return None;
    }
    Some(at_once(lamb, LambTask::WeighAgain, due, LATE_AFTER, Completion::Open))
}
