//! How long a duty may be put off: to its red limit, and once that is past for a quarter of an hour at a time.

use super::duties;
use crate::book::{Animal, DutyKind};
use crate::flock::Flock;
use crate::units::{Moment, TimeDelta};

/// What is late may wait so long more, so that two hands can finish what they hold (ours).
const WHEN_LATE: TimeDelta = TimeDelta::minutes(15);

/// Returns the latest instant to which a duty may be put off; none if nothing of that kind is due or coming.
#[must_use]
pub fn may_wait_until(flock: &Flock, animal: Animal, kind: DutyKind, now: Moment) -> Option<Moment> {
    let animal = flock.one(animal);
    let duties = duties(flock, now, &flock.practice);
    let duty = duties.into_iter().find(|duty| duty.subject == animal && duty.task.kind() == kind)?;
    Some(if now.since(duty.late) >= TimeDelta::zero() { now + WHEN_LATE } else { duty.late })
}
