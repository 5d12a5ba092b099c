//! How the flock reads each fact: one list, at which the compiler asks for each new one.
//!
//! What is read here as something that it is not would be lost or misread in silence, so the list leaves nothing out.

use crate::book::{Care, Event, Life, Past, Planning};

/// How a fact is read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum ReadAs {
    /// It brings in an animal that hangs on no other.
    ComesAlone,
    /// It brings in an animal beside another, a pen, a group or colostrum; what was noted of it before is read anew.
    Comes,
    /// It joins two records.
    Joins,
    /// It brings in a ewe that was a lamb here.
    Keeps,
    /// It corrects an entry.
    Corrects,
    /// It is a choice of the farm: read by when it was noted.
    Chooses,
    /// It says that a litter is whole.
    EndsLitter,
    /// It is told of its own animals, pen, group or stores, and of nothing else.
    Tells,
    /// It is told of what other animals come to and go from too, so only ever after all that came before.
    TellsInTurn,
    /// It changes how others are read.
    Regroups,
}

impl ReadAs {
    /// Says whether what was known may read otherwise with it, so that the book is folded anew.
    pub(super) const fn changes_what_was(self) -> bool {
        match self {
            Self::Comes | Self::Joins | Self::Keeps | Self::Corrects | Self::Regroups => true,
            Self::ComesAlone | Self::Chooses | Self::EndsLitter | Self::Tells | Self::TellsInTurn => false,
        }
    }
}

/// Returns how a fact is read.
pub(super) const fn how(event: &Event) -> ReadAs {
    match event {
        Event::EweCame { .. } | Event::LambBorn { beside: None, .. } => ReadAs::ComesAlone,
        Event::LambBorn { beside: Some(_), .. }
        | Event::PenMade { .. }
        | Event::GroupFormed { .. }
        | Event::ColostrumFrozen { .. } => ReadAs::Comes,
        Event::SameAnimal { .. } => ReadAs::Joins,
        Event::Amended { .. } | Event::Deleted { .. } | Event::Restored { .. } => ReadAs::Corrects,
        Event::Chose(_) => ReadAs::Chooses,
        Event::AllBorn { .. } => ReadAs::EndsLitter,
        Event::DamGiven { .. }
        | Event::GroupParted { .. }
        | Event::JoinedGroup { .. }
        | Event::LeftGroup { .. } => ReadAs::Regroups,
        // Calls to the vet stand in one list of all animals.
        Event::VetCalled { .. } | Event::Care(Care::VetSaid { .. }) => ReadAs::TellsInTurn,
        Event::PutInPen { .. } | Event::LetOut { .. } | Event::Unread(_) => ReadAs::TellsInTurn,
        Event::Tagged { .. }
        | Event::BirthEase { .. }
        | Event::Stood { .. }
        | Event::Care(
            Care::GlucoseGiven { .. }
            | Care::MouthFelt { .. }
            | Care::AfterbirthAwaited { .. }
            | Care::PutRight { .. }
            | Care::Settled { .. }
            | Care::FoundBorn { .. },
        )
        | Event::Sucked { .. }
        | Event::NavelDipped { .. }
        | Event::Weighed { .. }
        | Event::Fed { .. }
        | Event::VigorScored { .. }
        | Event::BellyFelt { .. }
        | Event::SignSeen { .. }
        | Event::WaterBagSeen { .. }
        | Event::StrainingSeen { .. }
        | Event::PartShowing { .. }
        | Event::HandChecked { .. }
        | Event::HelpBegun { .. }
        | Event::LookedAt { .. }
        | Event::NotLambing { .. }
        | Event::AfterbirthPassed { .. }
        | Event::Accepted { .. }
        | Event::TemperatureTaken { .. }
        | Event::SwallowTried { .. }
        | Event::Warmed { .. }
        | Event::SolidsEaten { .. }
        | Event::Weaned { .. }
        | Event::Ringed { .. }
        | Event::PenNamed { .. }
        | Event::PenCleaned { .. }
        | Event::PenClosed { .. }
        | Event::PutOff { .. }
        | Event::GroupNamed { .. }
        | Event::RamIn { .. }
        | Event::RamOut { .. }
        | Event::CrayonChanged { .. }
        | Event::CrayonMark { .. }
        | Event::Scanned { .. }
        | Event::Conditioned { .. }
        | Event::EweWeighed { .. }
        | Event::FeedSet { .. }
        | Event::BoosterGiven { .. }
        | Event::StoreIn { .. }
        | Event::StoreUsed { .. }
        | Event::StoreThrown { .. }
        | Event::StoreCounted { .. }
        | Event::ColostrumThawed { .. }
        | Event::ColostrumThrown { .. }
        | Event::Died { .. }
        | Event::Remarked { .. } => ReadAs::Tells,
        // Each is told of its own animal alone.
        Event::Illness(_) => ReadAs::Tells,
        // Who is a ram changes who is a ewe.
        Event::Past(Past::IsRam { .. }) => ReadAs::Regroups,
        Event::Past(
            Past::Sired { .. }
            | Past::DamOf { .. }
            | Past::BornAs { .. }
            | Past::RearedAs { .. }
            | Past::IsWether { .. }
            | Past::Called { .. },
        ) => ReadAs::Tells,
        Event::Life(life) => how_life(life),
        Event::Planning(
            Planning::RamStays { .. } | Planning::FeedPutOff { .. } | Planning::RamsMeant { .. },
        ) => ReadAs::Tells,
        // What is planned for the whole flock has no lines of its own.
        Event::Planning(Planning::Planned { .. } | Planning::Happened { .. }) => ReadAs::TellsInTurn,
    }
}

const fn how_life(life: &Life) -> ReadAs {
    match life {
        Life::KeptAsEwe { .. } => ReadAs::Keeps,
        Life::Fostered { .. } | Life::Went { .. } => ReadAs::TellsInTurn,
        Life::Marked { .. }
        | Life::Described { .. }
        | Life::Castrated { .. }
        | Life::Treated { .. }
        | Life::Boosted { .. }
        | Life::SoldFor { .. }
        | Life::Culled { .. }
        | Life::Examined { .. } => ReadAs::Tells,
    }
}
