//! One thing that someone should do for one animal.

use crate::book::{Animal, DutyKind, Event, Lie};
use crate::units::{Moment, TimeDelta, Volume};

/// A thing to do, and the three instants that give it its urgency.
#[derive(Clone, Debug, PartialEq)]
pub struct Duty {
    /// For which animal.
    pub subject: Animal,
    /// What.
    pub task: Task,
    /// What it is counted from: a birth, a sign, the last feed.
    pub since: Moment,
    /// When it comes into sight.
    pub from: Moment,
    /// When it should be done.
    pub due: Moment,
    /// From when it is late.
    pub late: Moment,
    /// What discharges it.
    pub discharge: Discharge,
    /// Until when it was put off, if it was.
    pub put_off: Option<Moment>,
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
        /// Whether milk must wait: the lamb is too cold for it, or did not swallow.
        hold: bool,
    },
    /// Give the next feed by hand.
    Feed {
        /// How much; nothing while its weight is not known.
        volume: Option<Volume>,
        /// Whether milk must wait: the lamb is too cold for it, or did not swallow.
        hold: bool,
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
    /// Take its temperature again.
    TakeTemperature,
    /// Call the vet for it.
    CallVet,
    /// See to a newborn that scored as failing: its airway, its breath, dry, warm.
    Failing,
    /// Feed a lamb whose belly felt hollow.
    Hollow,
    /// Look at a ewe that is restless, or that the vet was called for.
    Look,
    /// Examine a ewe that has been restless too long, or call the vet.
    LongRestless,
    /// Check with a clean hand.
    HandCheck {
        /// Whether it is time to step in.
        step_in: bool,
    },
    /// See whether what shows has come further.
    Progress,
    /// Call the vet: the neck of the womb has not opened.
    NeckTight,
    /// Call the vet unless the lamb is put right.
    PutRight {
        /// How it lies, if a hand found out.
        lie: Option<Lie>,
    },
    /// Look for the next lamb.
    NextLamb {
        /// Whether it is time for a clean hand check.
        check: bool,
    },
    /// Ask for the afterbirth.
    Afterbirth {
        /// Whether it is a matter for the vet.
        vet: bool,
    },
    /// Put a ring on it, or be told that it is too late for one.
    Ring {
        /// Whether it is for the tail.
        tail: bool,
        /// Whether it is for castration.
        castration: bool,
        /// Whether the farm's limit has passed: a matter for the vet.
        too_late: bool,
    },
    /// Let the pair out of its pen.
    LetOut,
    /// See whether a bottle lamb can be weaned.
    WeaningCheck {
        /// Whether the farm's rule says yes on what is known.
        ready: bool,
    },
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
    /// Returns when it comes up next: when it is due, or until when it was put off.
    #[must_use]
    pub fn comes(&self) -> Moment {
        self.put_off.map_or(self.due, |until| until.max(self.due))
    }

    /// Returns how urgent it is at this instant.
    #[must_use]
    pub fn state(&self, now: Moment) -> State {
        // By elapsed time, since the same instant may be told by another offset.
        if self.put_off.is_some_and(|until| until.since(now) > TimeDelta::zero()) {
            State::Coming
        } else if now.since(self.late) >= TimeDelta::zero() {
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
            Self::FirstMilk { .. }
            | Self::Feed { .. }
            | Self::LongRestless
            | Self::HandCheck { .. }
            | Self::Progress
            | Self::NeckTight
            | Self::PutRight { .. }
            | Self::TakeTemperature
            | Self::CallVet
            | Self::Failing
            | Self::Hollow => 0,
            Self::DayTotal { .. } | Self::GetUp | Self::NextLamb { .. } | Self::Look => 1,
            Self::DipNavel => 2,
            Self::DipNavelAgain | Self::Afterbirth { .. } => 3,
            Self::ScoreVigor => 4,
            Self::Weigh | Self::Ring { .. } | Self::LetOut | Self::WeaningCheck { .. } => 5,
        }
    }

    /// Returns the name under which the book knows it.
    #[must_use]
    pub const fn kind(self) -> DutyKind {
        match self {
            Self::DipNavel => DutyKind::DipNavel,
            Self::DipNavelAgain => DutyKind::DipNavelAgain,
            Self::GetUp => DutyKind::GetUp,
            Self::FirstMilk { .. } => DutyKind::FirstMilk,
            Self::Feed { .. } => DutyKind::Feed,
            Self::DayTotal { .. } => DutyKind::DayTotal,
            Self::Weigh => DutyKind::Weigh,
            Self::ScoreVigor => DutyKind::ScoreVigor,
            Self::TakeTemperature => DutyKind::TakeTemperature,
            Self::CallVet => DutyKind::CallVet,
            Self::Failing => DutyKind::Failing,
            Self::Hollow => DutyKind::Hollow,
            Self::Ring { .. } => DutyKind::Ring,
            Self::Look => DutyKind::Look,
            Self::LongRestless => DutyKind::LongRestless,
            Self::HandCheck { .. } => DutyKind::HandCheck,
            Self::Progress => DutyKind::Progress,
            Self::NeckTight => DutyKind::NeckTight,
            Self::PutRight { .. } => DutyKind::PutRight,
            Self::NextLamb { .. } => DutyKind::NextLamb,
            Self::Afterbirth { .. } => DutyKind::Afterbirth,
            Self::LetOut => DutyKind::LetOut,
            Self::WeaningCheck { .. } => DutyKind::WeaningCheck,
        }
    }
}
