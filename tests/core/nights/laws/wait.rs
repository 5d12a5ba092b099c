//! Putting off never passes the red limit, and a danger waits for nothing.

use yeanling_core::flock::Flock;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, State, may_wait_until};

use super::{Kept, Law, broken, judges};
use crate::nights::story::clock;

/// Ours: what is late waits a quarter of an hour at a time.
const WHEN_LATE: TimeDelta = TimeDelta::minutes(15);

/// Nothing lets a danger wait.
pub(in crate::nights) fn a_danger_is_never_put_off(flock: &Flock, now: Moment, duties: &[Duty]) -> Kept {
    for duty in duties.iter().filter(|duty| duty.state(now) == State::Danger) {
        if may_wait_until(flock, duty.subject(), duty.task.kind(), now).is_some() {
            return broken("a danger is never put off", format!("{:?}", duty.task));
        }
    }
    Ok(())
}

pub(in crate::nights) fn putting_off_never_passes_the_red_limit(
    flock: &Flock,
    now: Moment,
    duties: &[Duty],
) -> Kept {
    for duty in duties.iter().filter(|duty| duty.put_off.is_some()) {
        let state = duty.state(now);
        let without = Duty { put_off: None, ..duty.clone() }.state(now);
        let noted = flock.put_off(duty.subject(), duty.task.kind());
        let long = noted.is_none_or(|noted| now.since(noted.at) > WHEN_LATE);
        if without >= State::Late {
            judges(Law::PutOff);
        }
        let passed = state == State::Coming && without >= State::Late && long;
        if passed || without == State::Danger && state != State::Danger {
            let told = format!(
                "{:?}, put off at {:?}, is {state:?} at {} and would be {without:?}",
                duty.task,
                noted.map(|noted| clock(noted.at)),
                clock(now)
            );
            return broken("putting off never passes the red limit", told);
        }
    }
    Ok(())
}
