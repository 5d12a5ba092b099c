//! What is: ewes, lambs and litters, worked out from the book and from nothing else.

mod ewe;
mod fold;
mod lamb;
mod line;
mod litter;

use std::collections::BTreeMap;

pub use ewe::Ewe;
pub use fold::fold;
pub use lamb::{Death, Feed, Felt, Lamb, Scored, Weight};
pub use line::Line;
pub use litter::Litter;

use crate::book::{Animal, EntryId, EweId, LambId};
use crate::practice::Practice;

/// The flock as the book has it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Flock {
    /// The ewes.
    pub ewes: BTreeMap<EweId, Ewe>,
    /// The lambs.
    pub lambs: BTreeMap<LambId, Lamb>,
    /// The litters, each under its first lamb.
    pub litters: BTreeMap<LambId, Litter>,
    /// What the farm has chosen.
    pub practice: Practice,
    /// Everything noted, as it stands, in the order in which it happened.
    pub lines: Vec<Line>,
    /// Entries this version cannot read.
    pub unread: Vec<EntryId>,
    same: BTreeMap<Animal, Animal>,
    of: BTreeMap<Animal, Vec<usize>>,
}

impl Flock {
    /// Returns the ewe, also under an id that was found to be hers.
    #[must_use]
    pub fn ewe(&self, id: EweId) -> Option<&Ewe> {
        match self.one(Animal::Ewe(id)) {
            Animal::Ewe(id) => self.ewes.get(&id),
            Animal::Lamb(_) => None,
        }
    }

    /// Returns the lamb, also under an id that was found to be its own.
    #[must_use]
    pub fn lamb(&self, id: LambId) -> Option<&Lamb> {
        match self.one(Animal::Lamb(id)) {
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
        let ewe = self.ewe(ewe).map(|ewe| ewe.id);
        let mut litters: Vec<&Litter> =
            self.litters.values().filter(|litter| litter.dam.is_some() && litter.dam == ewe).collect();
        litters.sort_unstable_by_key(|litter| std::cmp::Reverse(litter.began));
        litters
    }

    /// Returns the animal that this one was found to be; itself, if nothing was found.
    #[must_use]
    pub fn one(&self, animal: Animal) -> Animal {
        self.same.get(&animal).copied().unwrap_or(animal)
    }

    /// Returns what was noted about an animal, as it stands, oldest first; struck lines too.
    pub fn lines_of(&self, animal: Animal) -> impl DoubleEndedIterator<Item = &Line> {
        let indices = self.of.get(&self.one(animal)).map_or(&[][..], Vec::as_slice);
        indices.iter().filter_map(|index| self.lines.get(*index))
    }
}
