//! What a fact is about: its animals, its pen, its group, the stores, or the entry that it corrects.

use super::animal::Animal;
use super::event::Event;
use super::ids::{EntryId, EweId, GroupId, LambId, PenId};
use super::milked_from::MilkedFrom;

/// What a fact is about.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
struct About {
    animals: [Option<Animal>; 2],
    pen: Option<PenId>,
    group: Option<GroupId>,
    stores: bool,
    corrects: Option<EntryId>,
}

impl About {
    const NOTHING: Self =
        Self { animals: [None, None], pen: None, group: None, stores: false, corrects: None };

    const fn animal(animal: Animal) -> Self {
        Self { animals: [Some(animal), None], ..Self::NOTHING }
    }

    const fn two(first: Animal, second: Animal) -> Self {
        Self { animals: [Some(first), Some(second)], ..Self::NOTHING }
    }

    const fn ewe(ewe: EweId) -> Self {
        Self::animal(Animal::Ewe(ewe))
    }

    const fn lamb(lamb: LambId) -> Self {
        Self::animal(Animal::Lamb(lamb))
    }

    const fn pen(pen: PenId) -> Self {
        Self { pen: Some(pen), ..Self::NOTHING }
    }

    const fn group(group: GroupId) -> Self {
        Self { group: Some(group), ..Self::NOTHING }
    }

    const STORES: Self = Self { stores: true, ..Self::NOTHING };

    const fn entry(entry: EntryId) -> Self {
        Self { corrects: Some(entry), ..Self::NOTHING }
    }
}

impl Event {
    /// Returns the animals that the fact is about, two at most; none for the farm's choices, pens, groups as a whole,
    /// most of the stores, corrections and what cannot be read.
    pub fn animals(&self) -> impl Iterator<Item = Animal> + use<> {
        self.about().animals.into_iter().flatten()
    }

    /// Returns the pen that the fact is about, if it is about one.
    #[must_use]
    pub const fn pen(&self) -> Option<PenId> {
        self.about().pen
    }

    /// Returns the group that the fact is about, if it is about one.
    #[must_use]
    pub const fn group(&self) -> Option<GroupId> {
        self.about().group
    }

    /// Says whether the fact is about what lies in the stores or the freezer.
    #[must_use]
    pub const fn is_of_the_stores(&self) -> bool {
        self.about().stores
    }

    /// Returns the entry that this fact corrects, if it is a correction.
    #[must_use]
    pub const fn corrects(&self) -> Option<EntryId> {
        self.about().corrects
    }

    /// The one list of facts: the compiler asks here for each new one.
    const fn about(&self) -> About {
        match self {
            Self::Tagged { animal, .. }
            | Self::Died { animal, .. }
            | Self::Remarked { animal, .. }
            | Self::VetCalled { animal }
            | Self::LookedAt { animal }
            | Self::LetOut { animal }
            | Self::PutOff { animal, .. } => About::animal(*animal),
            Self::PutInPen { animal, pen } => About { pen: Some(*pen), ..About::animal(*animal) },
            Self::SignSeen { ewe, .. }
            | Self::WaterBagSeen { ewe }
            | Self::StrainingSeen { ewe }
            | Self::PartShowing { ewe, .. }
            | Self::HandChecked { ewe, .. }
            | Self::HelpBegun { ewe }
            | Self::NotLambing { ewe }
            | Self::AfterbirthPassed { ewe }
            | Self::CrayonMark { ewe, .. }
            | Self::Scanned { ewe, .. }
            | Self::Conditioned { ewe, .. }
            | Self::EweWeighed { ewe, .. }
            | Self::LambBorn { dam: Some(ewe), .. } => About::ewe(*ewe),
            Self::DamGiven { lamb, dam } => About::two(Animal::Lamb(*lamb), Animal::Ewe(*dam)),
            Self::BirthEase { lamb, .. }
            | Self::Stood { lamb }
            | Self::Sucked { lamb }
            | Self::NavelDipped { lamb }
            | Self::Weighed { lamb, .. }
            | Self::Fed { lamb, .. }
            | Self::VigorScored { lamb, .. }
            | Self::BellyFelt { lamb, .. }
            | Self::Accepted { lamb, .. }
            | Self::TemperatureTaken { lamb, .. }
            | Self::SwallowTried { lamb, .. }
            | Self::Warmed { lamb }
            | Self::SolidsEaten { lamb, .. }
            | Self::Weaned { lamb }
            | Self::Ringed { lamb, .. }
            | Self::AllBorn { lamb } => About::lamb(*lamb),
            Self::Life(life) => About { animals: life.animals(), ..About::NOTHING },
            Self::Care(care) => About::animal(care.animal()),
            Self::Illness(illness) => About::animal(illness.animal()),
            Self::Past(past) => About { animals: past.animals(), ..About::NOTHING },
            Self::Planning(planning) => About { group: planning.group(), ..About::NOTHING },
            Self::SameAnimal { keep, also } => About::two(*keep, *also),
            Self::PenNamed { pen, .. } | Self::PenCleaned { pen } | Self::PenClosed { pen } => {
                About::pen(*pen)
            }
            Self::JoinedGroup { ewe, group } | Self::LeftGroup { ewe, group } => {
                About { group: Some(*group), ..About::ewe(*ewe) }
            }
            Self::GroupNamed { group, .. }
            | Self::GroupParted { group }
            | Self::RamIn { group, .. }
            | Self::RamOut { group }
            | Self::CrayonChanged { group, .. }
            | Self::FeedSet { group, .. }
            | Self::BoosterGiven { group } => About::group(*group),
            Self::ColostrumFrozen { from: MilkedFrom::Ewe(ewe), .. } => {
                About { stores: true, ..About::ewe(*ewe) }
            }
            Self::StoreIn { .. }
            | Self::StoreUsed { .. }
            | Self::StoreThrown { .. }
            | Self::StoreCounted { .. }
            | Self::ColostrumFrozen { .. }
            | Self::ColostrumThawed { .. }
            | Self::ColostrumThrown { .. } => About::STORES,
            Self::Amended { entry, .. } | Self::Deleted { entry } | Self::Restored { entry } => {
                About::entry(*entry)
            }
            Self::EweCame { .. }
            | Self::LambBorn { dam: None, .. }
            | Self::PenMade { .. }
            | Self::GroupFormed { .. }
            | Self::Chose(_)
            | Self::Unread(_) => About::NOTHING,
        }
    }
}
