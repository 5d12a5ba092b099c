//! How long a duty may be put off: to its red limit, and once that is past for a quarter of an hour at a time. A danger
//! waits for nothing.
//!
//! A duty can be put off to its red limit, and once late for a quarter of an hour at a time; a danger never, and what
//! was put off before a duty began is another's.

use super::{Duty, State, duties};
use crate::book::{Animal, DutyKind};
use crate::flock::{Flock, PutOff};
use crate::units::{Moment, TimeDelta};

/// What is late may wait so long more, so that two hands can finish what they hold (ours).
const WHEN_LATE: TimeDelta = TimeDelta::minutes(15);

/// Returns the latest instant to which a duty may be put off; none if nothing of that kind is due or coming, or if the
/// animal is in danger by it.
#[must_use]
pub fn may_wait_until(flock: &Flock, animal: Animal, kind: DutyKind, now: Moment) -> Option<Moment> {
    let animal = flock.canonical(animal);
    let duties = duties(flock, now, &flock.settings);
    let duty = duties.into_iter().find(|duty| duty.subject() == animal && duty.task.kind() == kind)?;
    (duty.state(now) != State::Danger).then(|| most(&duty, now))
}

/// The latest instant to which a duty may be put off at `at`.
fn most(duty: &Duty, at: Moment) -> Moment {
    if at.since(duty.late) >= TimeDelta::zero() { at + WHEN_LATE } else { duty.late }
}

/// Returns until when this duty waits: what was put off before it began is another, and what made it late earlier since
/// then cuts the wait short.
pub(super) fn until(duty: &Duty, put_off: PutOff) -> Option<Moment> {
    (put_off.at >= duty.since).then(|| put_off.until.min(most(duty, put_off.at)))
}
