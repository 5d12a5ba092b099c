//! One thing that someone should do for one animal.
//!
//! Danger is a fourth instant of a duty (`Duty::danger`), so that it cannot be put off and sorts before all. A lamb's
//! goes out of sight after seven days in which nothing worse was noted; the hold stays.

use super::task::{EweTask, LambTask, Task};
use super::vet::Called;
use crate::book::{Animal, Event};
use crate::units::{Moment, TimeDelta};

/// A thing to do, and the instants that give it its urgency.
#[derive(Clone, Debug, PartialEq)]
pub struct Duty {
    /// What, and for which animal.
    pub task: Task,
    /// What it is counted from: a birth, a sign, the last feed.
    pub since: Moment,
    /// When it comes into sight.
    pub from: Moment,
    /// When it should be done.
    pub due: Moment,
    /// From when it is late.
    pub late: Moment,
    /// From when the animal is in danger, if this is a matter of danger; until good news about this very sign.
    pub danger: Option<Moment>,
    /// The last call to the vet about it, and what came of that.
    pub vet: Option<Called>,
    /// What discharges it.
    pub completion: Completion,
    /// Until when it was put off, if it was.
    pub put_off: Option<Moment>,
}

/// What discharges a duty.
#[derive(Clone, Debug, PartialEq)]
pub enum Completion {
    /// Noting this, with one tap.
    Note(Event),
    /// Something that must be read or chosen first.
    Open,
}

/// How urgent a duty is, in rising order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum State {
    /// Not yet.
    Coming,
    /// Now.
    Now,
    /// Over its time.
    Late,
    /// A life hangs on it, whatever else was done, until good news about this very sign.
    Danger,
}

impl Duty {
    /// Returns the animal it is for.
    #[must_use]
    pub const fn subject(&self) -> Animal {
        self.task.subject()
    }

    /// Returns when it comes up next: when it is due, or until when it was put off.
    #[must_use]
    pub fn comes(&self) -> Moment {
        self.waits_until().map_or(self.due, |until| until.max(self.due))
    }

    /// Returns how urgent it is at this instant.
    #[must_use]
    pub fn state(&self, now: Moment) -> State {
        // By elapsed time, since the same instant may be told by another offset.
        let past = |at: Moment| now.since(at) >= TimeDelta::zero();
        if self.danger.is_some_and(past) {
            State::Danger
        } else if self.waits_until().is_some_and(|until| until.since(now) > TimeDelta::zero()) {
            State::Coming
        } else if past(self.late) {
            State::Late
        } else if past(self.due) {
            State::Now
        } else {
            State::Coming
        }
    }

    /// Until when it waits: a danger waits for nothing.
    fn waits_until(&self) -> Option<Moment> {
        let danger =
            |until: &Moment| self.danger.is_none_or(|danger| until.since(danger) < TimeDelta::zero());
        self.put_off.filter(danger)
    }
}

/// Says whether nothing but looks, or the way out of a pen, is due for an animal: only then may all be well with it.
#[must_use]
pub fn may_be_well<'a>(duties: impl IntoIterator<Item = &'a Duty>, animal: Animal, now: Moment) -> bool {
    let mut due =
        duties.into_iter().filter(|duty| duty.subject() == animal && duty.state(now) > State::Coming);
    due.all(|duty| match duty.task {
        Task::Ewe(_, task) => matches!(task, EweTask::Look | EweTask::LetOut),
        Task::Lamb(_, task) => matches!(task, LambTask::Look | LambTask::HardBirth),
    })
}
