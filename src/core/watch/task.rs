//! What is to be done, and for which animal: a ewe's tasks and a lamb's are two lists.
//!
//! A task holds the animal that it is for, so that a lamb can never be asked for an afterbirth, and who reads a ewe's
//! tasks meets no lamb's.

use std::mem::discriminant;

use super::newborn::{BeforeMilk, LambDanger};
use crate::book::{Animal, DutyKind, EweId, LambId, Part, Presentation};
use crate::reckon::illness::{ewe, lamb};
use crate::units::Volume;

/// What is to be done, and for which animal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Task {
    /// For this ewe.
    Ewe(EweId, EweTask),
    /// For this lamb.
    Lamb(LambId, LambTask),
}

/// What is to be done for a ewe at lambing, and until she leaves her pen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EweTask {
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
    CervixClosed,
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
    /// Draw both teats and feel both halves.
    Udder {
        /// Whether a half gave no milk and is drawn again.
        again: bool,
    },
    /// See her standing, eating and drinking, with feed and water before her.
    Settled,
    /// Let the pair out of its pen.
    LetOut,
    /// Call the vet: she is not right.
    Ill {
        /// Whether now, or today.
        now: bool,
        /// What she may have, the first of all.
        row: Option<ewe::Row>,
    },
    /// Look again: she is not right.
    IllLook {
        /// Whether something that is always asked first was not checked yet.
        check: bool,
        /// What she may have, the first of all.
        row: Option<ewe::Row>,
    },
}

/// What is to be done for a lamb.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LambTask {
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
        /// What comes first, if anything does.
        before: Option<BeforeMilk>,
    },
    /// Give the next feed by hand.
    Feed {
        /// How much; nothing while its weight is not known, or anything but the scale comes first.
        volume: Option<Volume>,
        /// What comes first, if anything does.
        before: Option<BeforeMilk>,
    },
    /// Make up what its first day is short of.
    DayTotal {
        /// What it was given by hand.
        given: Volume,
        /// What it wants in 24 hours.
        target: Volume,
        /// What comes first, if anything does.
        before: Option<BeforeMilk>,
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
    /// It is in danger: the sign and the next step.
    Danger(LambDanger),
    /// Feed it: its belly felt hollow.
    Hollow {
        /// What comes first, if anything does.
        before: Option<BeforeMilk>,
    },
    /// Feed it from elsewhere: the ewe that rears it has no milk.
    DamDry {
        /// What comes first, if anything does.
        before: Option<BeforeMilk>,
    },
    /// Weigh it again: one half of the udder that rears it gives milk.
    WeighAgain,
    /// Look at it after a hard birth.
    HardBirth,
    /// Look at a lamb that the vet was called for.
    Look,
    /// Put a ring on it, or be told that it is too late for one.
    Ring {
        /// Whether it is for the tail.
        tail: bool,
        /// Whether it is for castration.
        castration: bool,
        /// Whether the farm's limit has passed: a matter for the vet.
        too_late: bool,
    },
    /// See whether it can be weaned from the bottle.
    WeaningCheck {
        /// Whether the farm's rule says yes on what is known.
        ready: bool,
    },
    /// Call the vet: it is not right.
    Ill {
        /// Whether now, or today.
        now: bool,
        /// What it may have, the first of all.
        row: Option<lamb::Row>,
    },
    /// Look again: it is not right.
    IllLook {
        /// Whether something that is always asked first was not checked yet.
        check: bool,
        /// What it may have, the first of all.
        row: Option<lamb::Row>,
    },
}

/// What is wrong with a lamb that is being born.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// A hand found that it lies so.
    Lies(Presentation),
    /// This alone shows of it.
    Shows(Part),
    /// Nobody said; she is being helped.
    Helped,
}

impl Task {
    /// Returns the animal it is for.
    #[must_use]
    pub const fn subject(self) -> Animal {
        match self {
            Self::Ewe(ewe, _) => Animal::Ewe(ewe),
            Self::Lamb(lamb, _) => Animal::Lamb(lamb),
        }
    }

    /// Returns its rank among duties of one state; what a life hangs on is 0.
    #[must_use]
    pub const fn weight(self) -> u8 {
        match self {
            Self::Ewe(_, task) => task.weight(),
            Self::Lamb(_, task) => task.weight(),
        }
    }

    /// Returns the name under which the book knows it.
    #[must_use]
    pub const fn kind(self) -> DutyKind {
        match self {
            Self::Ewe(_, task) => task.kind(),
            Self::Lamb(_, task) => task.kind(),
        }
    }

    /// Says whether a phone on the nail rings for it: a score, a weight, a ring or a pen waits for the next round, and stands
    /// on the clock until then (ours).
    #[must_use]
    pub const fn rings(self) -> bool {
        self.weight() < LambTask::ScoreVigor.weight()
    }

    /// Says whether both ask the same of the same animal, whatever volume or step either names.
    #[must_use]
    pub fn asks_the_same(self, other: Self) -> bool {
        match (self, other) {
            (Self::Ewe(one, task), Self::Ewe(two, asks)) => {
                one == two && discriminant(&task) == discriminant(&asks)
            }
            (Self::Lamb(one, task), Self::Lamb(two, asks)) => {
                one == two && discriminant(&task) == discriminant(&asks)
            }
            (Self::Ewe(..), Self::Lamb(..)) | (Self::Lamb(..), Self::Ewe(..)) => false,
        }
    }
}

impl EweTask {
    /// Returns its rank among duties of one state; what a life hangs on is 0.
    #[must_use]
    pub const fn weight(self) -> u8 {
        match self {
            Self::LongRestless
            | Self::HandCheck { .. }
            | Self::Progress
            | Self::CervixClosed
            | Self::PutRight { .. }
            | Self::Ill { .. } => 0,
            Self::NextLamb { .. } | Self::Look | Self::IllLook { .. } => 1,
            Self::Udder { .. } => 2,
            Self::Afterbirth { .. } | Self::Settled => 3,
            Self::LetOut => 5,
        }
    }

    /// Returns the name under which the book knows it.
    #[must_use]
    pub const fn kind(self) -> DutyKind {
        match self {
            Self::Look => DutyKind::Look,
            Self::LongRestless => DutyKind::LongRestless,
            Self::HandCheck { .. } => DutyKind::HandCheck,
            Self::Progress => DutyKind::Progress,
            Self::CervixClosed => DutyKind::CervixClosed,
            Self::PutRight { .. } => DutyKind::PutRight,
            Self::NextLamb { .. } => DutyKind::NextLamb,
            Self::Afterbirth { .. } => DutyKind::Afterbirth,
            Self::Udder { .. } => DutyKind::Udder,
            Self::Settled => DutyKind::Settled,
            Self::LetOut => DutyKind::LetOut,
            Self::Ill { .. } => DutyKind::Illness,
            Self::IllLook { .. } => DutyKind::IllnessLook,
        }
    }
}

impl LambTask {
    /// Returns its rank among duties of one state; what a life hangs on is 0.
    #[must_use]
    pub const fn weight(self) -> u8 {
        match self {
            Self::FirstMilk { .. }
            | Self::Feed { .. }
            | Self::TakeTemperature
            | Self::CallVet
            | Self::Danger(_)
            | Self::Hollow { .. }
            | Self::DamDry { .. }
            | Self::Ill { .. }
            | Self::Weigh { for_feeds: true } => 0,
            Self::DayTotal { .. } | Self::GetUp | Self::Look | Self::HardBirth | Self::IllLook { .. } => 1,
            Self::DipNavel => 2,
            Self::DipNavelAgain => 3,
            Self::ScoreVigor => 4,
            Self::Weigh { for_feeds: false }
            | Self::WeighAgain
            | Self::Ring { .. }
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
            Self::DamDry { .. } => DutyKind::DamDry,
            Self::WeighAgain => DutyKind::WeighAgain,
            Self::HardBirth => DutyKind::HardBirth,
            Self::Look => DutyKind::Look,
            Self::Ring { .. } => DutyKind::Ring,
            Self::WeaningCheck { .. } => DutyKind::WeaningCheck,
            Self::Ill { .. } => DutyKind::Illness,
            Self::IllLook { .. } => DutyKind::IllnessLook,
        }
    }

    /// Returns what comes before it, if it is milk and anything does.
    #[must_use]
    pub const fn before_milk(self) -> Option<BeforeMilk> {
        match self {
            Self::FirstMilk { before, .. }
            | Self::Feed { before, .. }
            | Self::DayTotal { before, .. }
            | Self::Hollow { before }
            | Self::DamDry { before } => before,
            Self::DipNavel
            | Self::DipNavelAgain
            | Self::GetUp
            | Self::Weigh { .. }
            | Self::ScoreVigor
            | Self::TakeTemperature
            | Self::CallVet
            | Self::Danger(_)
            | Self::WeighAgain
            | Self::HardBirth
            | Self::Look
            | Self::Ring { .. }
            | Self::WeaningCheck { .. }
            | Self::Ill { .. }
            | Self::IllLook { .. } => None,
        }
    }
}
