//! What is due: every rule reads the flock and now, and says what to do, from when, and until when it may wait.

mod allow;
mod duty;
mod newborn;

pub use allow::{Refusal, allow};
pub use duty::{Discharge, Duty, State, Task};

use crate::flock::Flock;
use crate::practice::Practice;
use crate::units::Moment;

/// Returns everything that is due or coming, the most urgent first.
///
/// Late comes before now, now before coming; among the late and the present what a life hangs on comes first, then
/// what was due first; among what is coming, what comes first.
#[must_use]
pub fn duties(flock: &Flock, now: Moment, practice: &Practice) -> Vec<Duty> {
    let mut duties: Vec<Duty> = flock
        .lambs
        .values()
        .filter(|lamb| lamb.lives())
        .flat_map(|lamb| newborn::duties(lamb, now, practice))
        .filter(|duty| duty.from <= now)
        .collect();
    duties.sort_unstable_by_key(|duty| {
        let state = duty.state(now);
        let weight = if state == State::Coming { 0 } else { duty.task.weight() };
        (std::cmp::Reverse(state), weight, duty.due, duty.subject, duty.task.weight())
    });
    duties
}
