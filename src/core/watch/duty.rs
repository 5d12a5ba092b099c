//! One thing that someone should do for one animal.
//!
//! Danger is a fourth instant of a duty (`Duty::danger`), so that it cannot be put off and sorts before all. A lamb's
//! goes out of sight after seven days in which nothing worse was noted; the hold stays.

use super::newborn::LambDanger;
use super::vet::Called;
use crate::book::{Animal, DutyKind, Event, Lie, Part};
use crate::units::{Moment, TimeDelta, Volume};

/// A thing to do, and the instants that give it its urgency.
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
    /// From when the animal is in danger, if this is a matter of danger; until good news about this very sign.
    pub danger: Option<Moment>,
    /// The last call to the vet about it, and what came of that.
    pub vet: Option<Called>,
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
        /// Whether milk must wait: something holds it back.
        hold: bool,
        /// Whether it is so late that a thermometer, or a finger in the mouth, comes before milk.
        check: bool,
    },
    /// Give the next feed by hand.
    Feed {
        /// How much; nothing while its weight is not known.
        volume: Option<Volume>,
        /// Whether milk must wait: something holds it back.
        hold: bool,
        /// Whether it is to be weighed first, since the volume goes by an old weight.
        weigh: bool,
    },
    /// Make up what its first day is short of.
    DayTotal {
        /// What it was given by hand.
        given: Volume,
        /// What it wants in 24 hours.
        want: Volume,
        /// Whether milk must wait: something holds it back.
        hold: bool,
    },
    /// Weigh it.
    Weigh {
        /// Whether its feeds go by an old weight, or by none.
        for_feeds: bool,
    },
    /// Score its vigor.
    ScoreVigor,
    /// Take its temperature again.
    TakeTemperature,
    /// Call the vet for it.
    CallVet,
    /// A lamb in danger: the sign and the next step.
    Danger(LambDanger),
    /// Feed a lamb whose belly felt hollow.
    Hollow {
        /// Whether milk must wait: something holds it back.
        hold: bool,
        /// Whether a thermometer, or a finger in the mouth, comes before milk.
        check: bool,
    },
    /// Look at a ewe that is restless, or at an animal that the vet was called for.
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
        /// What was found last.
        trouble: Trouble,
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
        /// Whether it was seen to hang from her.
        hanging: bool,
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

/// What is wrong with a lamb that is being born.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// A hand found that it lies so.
    Lies(Lie),
    /// This alone shows of it.
    Shows(Part),
    /// Nobody said; she is being helped.
    Helped,
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
    /// A life hangs on it, whatever else was done, until good news about this very sign.
    Danger,
}

impl Duty {
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
            | Self::Danger(_)
            | Self::Hollow { .. }
            | Self::Weigh { for_feeds: true } => 0,
            Self::DayTotal { .. } | Self::GetUp | Self::NextLamb { .. } | Self::Look => 1,
            Self::DipNavel => 2,
            Self::DipNavelAgain | Self::Afterbirth { .. } => 3,
            Self::ScoreVigor => 4,
            Self::Weigh { for_feeds: false }
            | Self::Ring { .. }
            | Self::LetOut
            | Self::WeaningCheck { .. } => 5,
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
            Self::Weigh { .. } => DutyKind::Weigh,
            Self::ScoreVigor => DutyKind::ScoreVigor,
            Self::TakeTemperature => DutyKind::TakeTemperature,
            Self::CallVet | Self::Danger(_) => DutyKind::CallVet,
            Self::Hollow { .. } => DutyKind::Hollow,
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
