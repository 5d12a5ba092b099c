//! One thing that someone should do for one animal.

use crate::book::{Animal, Event};
use crate::units::{Moment, TimeDelta, Volume};

/// A thing to do, and the three instants that give it its urgency.
#[derive(Clone, Debug, PartialEq)]
pub struct Duty {
    /// For which animal.
    pub subject: Animal,
    /// What.
    pub task: Task,
    /// When it comes into sight.
    pub from: Moment,
    /// When it should be done.
    pub due: Moment,
    /// From when it is late.
    pub late: Moment,
    /// What discharges it.
    pub discharge: Discharge,
}

/// What is to be done.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Task {
    /// Dip the navel for the first time.
    DipNavel,
    /// Dip the navel once more.
    DipNavelAgain,
    /// See it standing.
    GetUp,
    /// See it suck, or give it its first milk.
    FirstMilk {
        /// Whether the last call has come.
        last_call: bool,
    },
    /// Give the next feed by hand.
    Feed {
        /// How much; nothing while its weight is not known.
        volume: Option<Volume>,
    },
    /// Make up what its first day is short of.
    DayTotal {
        /// What it was given by hand.
        given: Volume,
        /// What it wants in 24 hours.
        want: Volume,
    },
    /// Weigh it.
    Weigh,
    /// Score its vigor.
    ScoreVigor,
}

/// What discharges a duty.
#[derive(Clone, Debug, PartialEq)]
pub enum Discharge {
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
}

impl Duty {
    /// Returns how urgent it is at this instant.
    #[must_use]
    pub fn state(&self, now: Moment) -> State {
        // By elapsed time, since the same instant may be told by another offset.
        if now.since(self.late) >= TimeDelta::zero() {
            State::Late
        } else if now.since(self.due) >= TimeDelta::zero() {
            State::Now
        } else {
            State::Coming
        }
    }
}

impl Task {
    /// Returns its rank among duties of one state; what a life hangs on is 0.
    #[must_use]
    pub const fn weight(self) -> u8 {
        match self {
            Self::FirstMilk { .. } | Self::Feed { .. } => 0,
            Self::DayTotal { .. } | Self::GetUp => 1,
            Self::DipNavel => 2,
            Self::DipNavelAgain => 3,
            Self::ScoreVigor => 4,
            Self::Weigh => 5,
        }
    }
}
