//! What is: ewes, lambs, litters, groups and stores, worked out from the book and from nothing else.

mod apply;
mod booster;
mod ewe;
mod expectation;
mod fold;
mod group;
mod how;
mod illness;
mod index;
mod labor;
mod lamb;
mod life;
mod line;
mod litter;
mod past;
mod pen;
mod plan;
mod right_dam;
mod stores;

use std::collections::{BTreeMap, BTreeSet, HashMap};

pub use booster::IN_COLOSTRUM_AFTER;
pub use ewe::{ConditionScore, Ewe, Scan};
pub(crate) use expectation::days;
pub use expectation::{EARLIEST_BIRTH, Expectation, Gestation, LATEST_BIRTH, Odd, OddBirth, UNSEEN_DAYS};
pub use fold::{fold, fold_in};
pub use group::{CrayonMark, Group, GroupStay, MatingWindow, Ram, Staying};
pub use illness::{EweIll, LambIll, UdderSeen, Vital};
pub use labor::{Labor, SIGNS_FOR, Saw, Seen};
pub use lamb::{Death, Feed, Felt, Lamb, MouthFelt, Reading, Scored, VetCall, WEANED_BY, Weight};
pub use life::{Gone, Left, Reared, Treated};
pub use line::Line;
pub use litter::{BirthMean, Counted, LITTER_APART, Litter};
pub use pen::{Pen, Stay};
pub use plan::Plan;
pub use right_dam::GoesAlong;
pub use stores::{Batch, StoreChange, StoreMove, Stores, Taken};

use crate::book::{Animal, DutyKind, EntryId, EweId, GroupId, LambId, PenId, PlannedJob};
use crate::settings::{FarmSettings, VetAgreed};
use crate::sort_small::{Gather, SortSmall};
use crate::units::Moment;

/// A duty that was put off.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PutOff {
    /// When that was done.
    pub at: Moment,
    /// Until when.
    pub until: Moment,
}

/// The flock as the book has it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Flock {
    /// The ewes.
    pub ewes: BTreeMap<EweId, Ewe>,
    /// The rams, parted from the ewes; each is a grown animal as a ewe is.
    pub rams: BTreeMap<EweId, Ewe>,
    /// The lambs.
    pub lambs: BTreeMap<LambId, Lamb>,
    /// The litters, each under its first lamb.
    pub litters: BTreeMap<LambId, Litter>,
    /// The pens, those taken down too.
    pub pens: BTreeMap<PenId, Pen>,
    /// The groups, those broken up too.
    pub groups: BTreeMap<GroupId, Group>,
    /// What lies in the stores and in the freezer.
    pub stores: Stores,
    /// Ewes that live and whose labor goes on or is near.
    pub at_work: BTreeSet<EweId>,
    /// Lambs on the bottle.
    pub on_bottle: BTreeSet<LambId>,
    /// Living lambs of which anything was ever noted that may hold milk back, or whose belly felt hollow.
    pub in_care: BTreeSet<LambId>,
    /// Ewes that live and of which something was seen that is not right, until they are well again.
    pub ill: BTreeSet<EweId>,
    /// When anything was noted of an animal that may go round in the flock, the earliest first.
    pub not_right: BTreeSet<(Moment, Animal)>,
    /// What the farm has chosen.
    pub settings: FarmSettings,
    /// When each thing was agreed with the vet last.
    pub vet_agreed: BTreeMap<VetAgreed, Moment>,
    /// Everything noted, as it stands, in the order in which it happened.
    pub lines: Vec<Line>,
    /// Entries this version cannot read.
    pub unread: Vec<EntryId>,
    same: BTreeMap<Animal, Animal>,
    of: HashMap<Animal, Vec<usize>>,
    of_pen: BTreeMap<PenId, Vec<usize>>,
    of_group: BTreeMap<GroupId, Vec<usize>>,
    of_stores: Vec<usize>,
    place: BTreeMap<Animal, (PenId, Moment)>,
    let_out: BTreeMap<Animal, Moment>,
    put_off: BTreeMap<(Animal, DutyKind), PutOff>,
    calls: Vec<(Moment, Animal)>,
    plans: BTreeMap<(Option<GroupId>, PlannedJob), Plan>,
    rams_meant: BTreeMap<GroupId, Vec<String>>,
    by_birth: Vec<(Moment, LambId)>,
    beside: Vec<(LambId, LambId)>,
    of_dam: BTreeMap<EweId, Vec<LambId>>,
    fostered: BTreeMap<EweId, Vec<LambId>>,
    treated: BTreeMap<Animal, Vec<Treated>>,
    gone: BTreeMap<Animal, Gone>,
    /// The choice of the farm that was noted last.
    chosen: Option<(Moment, EntryId)>,
    /// Entries that are not here, to which there are corrections.
    awaited: BTreeSet<EntryId>,
}

impl Flock {
    /// Returns the ewe, also under an id that was found to be hers.
    #[must_use]
    pub fn ewe(&self, id: EweId) -> Option<&Ewe> {
        match self.canonical(Animal::Ewe(id)) {
            Animal::Ewe(id) => self.ewes.get(&id),
            Animal::Lamb(_) => None,
        }
    }

    /// Returns the lamb, also under an id that was found to be its own.
    #[must_use]
    pub fn lamb(&self, id: LambId) -> Option<&Lamb> {
        match self.canonical(Animal::Lamb(id)) {
            Animal::Lamb(id) => self.lambs.get(&id),
            Animal::Ewe(_) => None,
        }
    }

    /// Returns the litter that this lamb belongs to.
    #[must_use]
    pub fn litter_of(&self, lamb: LambId) -> Option<&Litter> {
        self.lamb(lamb).and_then(|lamb| self.litters.get(&lamb.litter))
    }

    /// Returns a ewe's litters, the latest first.
    #[must_use]
    pub fn litters_of(&self, ewe: EweId) -> Vec<&Litter> {
        let mut litters: Vec<&Litter> = self.litters_by(ewe).collect();
        litters.sort_small_by_key(|litter| std::cmp::Reverse(litter.began));
        litters
    }

    /// A ewe's litters in no order.
    fn litters_by(&self, ewe: EweId) -> impl Iterator<Item = &Litter> {
        let ids = self.ewe(ewe).and_then(|ewe| self.of_dam.get(&ewe.id));
        ids.into_iter().flatten().filter_map(|id| self.litters.get(id))
    }

    /// Returns the animal that this one was found to be; itself, if nothing was found.
    #[must_use]
    pub fn canonical(&self, animal: Animal) -> Animal {
        self.same.get(&animal).copied().unwrap_or(animal)
    }

    /// Returns what was noted about an animal, as it stands, oldest first; struck lines too.
    pub fn lines_of(&self, animal: Animal) -> impl DoubleEndedIterator<Item = &Line> {
        let indices = self.of.get(&self.canonical(animal)).map_or(&[][..], Vec::as_slice);
        indices.iter().filter_map(|index| self.lines.get(*index))
    }

    /// Returns what was noted about a pen, as it stands, oldest first; struck lines too.
    pub fn lines_of_pen(&self, pen: PenId) -> impl DoubleEndedIterator<Item = &Line> {
        let indices = self.of_pen.get(&pen).map_or(&[][..], Vec::as_slice);
        indices.iter().filter_map(|index| self.lines.get(*index))
    }

    /// Returns what was noted about a group, as it stands, oldest first; struck lines too.
    pub fn lines_of_group(&self, group: GroupId) -> impl DoubleEndedIterator<Item = &Line> {
        let indices = self.of_group.get(&group).map_or(&[][..], Vec::as_slice);
        indices.iter().filter_map(|index| self.lines.get(*index))
    }

    /// Returns what was noted about the stores and the freezer, as it stands, oldest first; struck lines too.
    pub fn lines_of_stores(&self) -> impl DoubleEndedIterator<Item = &Line> {
        self.of_stores.iter().filter_map(|index| self.lines.get(*index))
    }

    /// Returns the lambs born after `from`, oldest first, without looking at any other.
    pub fn born_after(&self, from: Moment) -> impl DoubleEndedIterator<Item = &Lamb> {
        let first = self.by_birth.partition_point(|(born, _)| *born <= from);
        self.by_birth[first..].iter().filter_map(|(_, id)| self.lambs.get(id))
    }

    /// Returns every birth, the first first.
    pub fn births(&self) -> impl DoubleEndedIterator<Item = (Moment, LambId)> {
        self.by_birth.iter().copied()
    }

    /// Returns the pen an animal is in and since when: put there itself, or gone in with its dam.
    #[must_use]
    pub fn pen_of(&self, animal: Animal) -> Option<(PenId, Moment)> {
        let animal = self.canonical(animal);
        if let Some(place) = self.place.get(&animal) {
            return Some(*place);
        }
        let Animal::Lamb(lamb) = animal else { return None };
        let lamb = self.lambs.get(&lamb).filter(|lamb| lamb.lives())?;
        let rearer = self.rearer(lamb)?;
        let (pen, since) = self.place.get(&Animal::Ewe(rearer))?;
        let came = lamb.fostered.last().map_or(lamb.born, |(at, _)| *at);
        let since = (*since).max(came);
        let with_her = self.lambs_at_foot(rearer).iter().any(|other| other.id == lamb.id);
        let out = self.let_out.get(&animal).is_some_and(|out| *out >= since);
        (with_her && !out).then_some((*pen, since))
    }

    /// Returns when a duty was put off last and until when, if it was.
    #[must_use]
    pub fn put_off(&self, animal: Animal, duty: DutyKind) -> Option<PutOff> {
        self.put_off.get(&(self.canonical(animal), duty)).copied()
    }

    /// Returns the animals that the vet was called for after `from`, each once, without looking at any other.
    #[must_use]
    pub fn called_for_after(&self, from: Moment) -> BTreeSet<Animal> {
        let first = self.calls.partition_point(|(at, _)| *at <= from);
        self.calls[first..].iter().map(|(_, animal)| *animal).gathered()
    }

    fn on_lamb(&mut self, lamb: LambId, change: impl FnOnce(&mut Lamb)) {
        if let Animal::Lamb(id) = self.canonical(Animal::Lamb(lamb))
            && let Some(lamb) = self.lambs.get_mut(&id)
        {
            change(lamb);
        }
    }

    fn grown_mut(&mut self, id: EweId) -> Option<&mut Ewe> {
        match self.ewes.get_mut(&id) {
            Some(ewe) => Some(ewe),
            None => self.rams.get_mut(&id),
        }
    }

    /// Changes a ewe, or a ram.
    fn on_ewe(&mut self, ewe: EweId, change: impl FnOnce(&mut Ewe)) {
        if let Animal::Ewe(id) = self.canonical(Animal::Ewe(ewe))
            && let Some(grown) = self.grown_mut(id)
        {
            change(grown);
        }
    }
}
