//! What a press means, told by the shape of its button: filled saves now, outlined with a chevron opens, underlined explains,
//! a plain outline changes only what stands here.
//!
//! It follows from the action alone, in this one place; `tests/pages/meaning.rs` presses every button and compares.

use crate::action::{Action, Request};
use crate::{Does, Sheet, calculators, cold_lamb, lambing, medicines, share, sheets};

/// What a press means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Meaning {
    /// It does something now that outlives the page: most often it notes a fact.
    Saves,
    /// It leads to another page, a sheet, or another part of this page; nothing is saved by it.
    Opens,
    /// It tells why, or what something is.
    Explains,
    /// It changes only what stands here, or closes it: nothing is saved, nothing opens.
    Here,
}

impl Action {
    /// Returns what a press means.
    #[must_use]
    pub const fn meaning(&self) -> Meaning {
        match self {
            Self::Note(_) | Self::Answer(_) | Self::Save => Meaning::Saves,
            Self::Ask(Sheet::Why(_)) => Meaning::Explains,
            Self::Ask(_) | Self::Go(_) | Self::Show(_) | Self::Call(_) => Meaning::Opens,
            Self::Does(does) => does.meaning(),
            Self::Phone(request) => request.meaning(),
            Self::Nothing | Self::Close | Self::Read | Self::Type(..) | Self::Choose(..) | Self::Heard(_) => {
                Meaning::Here
            }
        }
    }
}

impl Request {
    const fn meaning(&self) -> Meaning {
        match self {
            Self::Undo
            | Self::TakeUpdate
            | Self::ChooseLook(_)
            | Self::Arm
            | Self::Disarm
            | Self::Answer
            | Self::SaveBook(_)
            | Self::SafeElsewhere(_)
            | Self::GiveTable(..)
            | Self::GiveCalendar(..)
            | Self::AskForGood
            | Self::SavedHere(_)
            | Self::SaveUnreadLines
            | Self::TakeIn(_)
            | Self::EraseBook
            | Self::KeepColdLamb(_)
            | Self::KeepTables(_)
            | Self::KeepDigits(..) => Meaning::Saves,
            // The phone's own sheet comes up, and asks.
            Self::Print | Self::ShareBook | Self::ReadFile(_) => Meaning::Opens,
            Self::LookRound | Self::StopLookingRound => Meaning::Opens,
            Self::LetMissedGo | Self::LookAtRoom | Self::ReadHandedIn(_) => Meaning::Here,
        }
    }
}

impl Does {
    const fn meaning(&self) -> Meaning {
        match self {
            Self::ToCalendar(_)
            | Self::Pens(_)
            | Self::ScoreEwes(_)
            | Self::Weighing(_)
            | Self::NewEwe(_)
            | Self::Lamb(_)
            | Self::FoundBorn(..)
            | Self::FarmSettings(_)
            | Self::Illness(_)
            | Self::AddFound
            | Self::AddRam
            | Self::AddMany
            | Self::Setup(_)
            | Self::WhatIf(_)
            | Self::TagLamb(_)
            | Self::ShareKit
            | Self::PlanHappened(..) => Meaning::Saves,
            Self::ColdLamb(does) => match does {
                cold_lamb::Does::Read(_)
                | cold_lamb::Does::Rested(..)
                | cold_lamb::Does::Age(_)
                | cold_lamb::Does::Able(_)
                | cold_lamb::Does::Warmed
                | cold_lamb::Does::Glucose(_)
                | cold_lamb::Does::VetCalled
                | cold_lamb::Does::StartOver => Meaning::Saves,
            },
            Self::Lambing(does) => match does {
                lambing::Does::Lambs(_)
                | lambing::Does::Choose(_)
                | lambing::Does::Next
                | lambing::Does::AskIfAll
                | lambing::Does::OneMore => Meaning::Opens,
                lambing::Does::Born(..)
                | lambing::Does::AllBorn
                | lambing::Does::End
                | lambing::Does::Rested(..)
                | lambing::Does::Old(..)
                | lambing::Does::Meant(..)
                | lambing::Does::Weighs(..) => Meaning::Saves,
            },
            Self::Medicines(medicines::Does::Treat(_)) => Meaning::Opens,
            Self::Treat(sheets::TreatDoes::Fill(_)) | Self::Figures(calculators::Does::Meant(_)) => {
                Meaning::Here
            }
            Self::Share(does) => match does {
                share::Does::Read(_) => Meaning::Opens,
                share::Does::LeaveBook
                | share::Does::LeaveTable
                | share::Does::Table(_)
                | share::Does::Apart(..) => Meaning::Here,
                share::Does::TakeIn
                | share::Does::AddTable
                | share::Does::TakeTableBack
                | share::Does::Give(_) => Meaning::Saves,
            },
        }
    }
}
