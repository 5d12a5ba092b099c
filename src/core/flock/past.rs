//! What was known before the book began: rams, parents, and how an animal was born and reared.
//!
//! A ram stands in a list of his own, so that nothing that goes over the ewes has to leave him out.

use super::{Ewe, Flock, Lamb, Litter, Reared};
use crate::book::{Animal, EweId, Past};

impl Flock {
    /// Returns the ram, also under an id that was found to be his.
    #[must_use]
    pub fn ram(&self, id: EweId) -> Option<&Ewe> {
        match self.canonical(Animal::Ewe(id)) {
            Animal::Ewe(id) => self.rams.get(&id),
            Animal::Lamb(_) => None,
        }
    }

    /// Returns a grown animal, ewe or ram.
    #[must_use]
    pub fn grown(&self, id: EweId) -> Option<&Ewe> {
        self.ewe(id).or_else(|| self.ram(id))
    }

    /// Returns the ram that wears this tag or name, or wore it; one that lives before others.
    #[must_use]
    pub fn ram_called(&self, name: &str) -> Option<&Ewe> {
        let name = name.trim().to_lowercase();
        let is =
            |ram: &&Ewe| ram.tag.iter().chain(&ram.worn).any(|other| other.trim().to_lowercase() == name);
        let mut called = self.rams.values().filter(is);
        let first = called.clone().find(|ram| ram.lives());
        first.or_else(|| called.next())
    }

    /// Returns of how many a lamb was born: those of its litter that are here, or more where that was said.
    #[must_use]
    pub fn born_as(&self, lamb: &Lamb) -> u8 {
        let of = self.litter_of(lamb.id).map_or(1, |litter| self.born_in(litter));
        u8::try_from(of).unwrap_or(u8::MAX)
    }

    /// Returns how many a litter had: those that are here, or more where that was said of one of them.
    #[must_use]
    pub fn born_in(&self, litter: &Litter) -> usize {
        let said = litter.lambs.iter().filter_map(|id| self.lambs.get(id)?.born_as).max().unwrap_or(0);
        litter.lambs.len().max(said.into())
    }

    /// Returns the lambs that are said to be of this ram, oldest first.
    #[must_use]
    pub fn sired_by(&self, ram: EweId) -> Vec<&Lamb> {
        let his = |lamb: &&Lamb| {
            lamb.sire.is_some_and(|sire| self.canonical(Animal::Ewe(sire)) == Animal::Ewe(ram))
        };
        self.by_birth.iter().filter_map(|(_, id)| self.lambs.get(id)).filter(his).collect()
    }
}

/// Tells what is known from before.
pub(super) fn apply(flock: &mut Flock, past: &Past) {
    match past {
        Past::IsRam { animal } => flock.on_ewe(*animal, |ram| ram.is_ram = true),
        Past::Sired { animal, ram } => {
            let Some(sire) = one(flock, *ram) else { return };
            match flock.canonical(*animal) {
                Animal::Ewe(ewe) => flock.on_ewe(ewe, |ewe| ewe.sire = Some(sire)),
                Animal::Lamb(lamb) => flock.on_lamb(lamb, |lamb| lamb.sire = Some(sire)),
            }
        }
        Past::DamOf { animal, dam } => {
            let Some(dam) = one(flock, *dam) else { return };
            flock.on_ewe(*animal, |ewe| ewe.dam = Some(dam));
        }
        Past::BornAs { animal, of } => match flock.canonical(*animal) {
            Animal::Ewe(ewe) => flock.on_ewe(ewe, |ewe| ewe.born_as = Some(*of)),
            Animal::Lamb(lamb) => flock.on_lamb(lamb, |lamb| lamb.born_as = Some(*of)),
        },
        Past::RearedAs { lamb, of } => {
            let reared = of.map_or(Reared::ByHand, Reared::ByEwe);
            flock.on_lamb(*lamb, |lamb| lamb.reared_as = Some(reared));
        }
        Past::IsWether { lamb } => flock.on_lamb(*lamb, |lamb| lamb.wether = true),
        Past::Called { animal, name } => match flock.canonical(*animal) {
            Animal::Ewe(ewe) => flock.on_ewe(ewe, |ewe| ewe.worn.push(name.clone())),
            Animal::Lamb(lamb) => flock.on_lamb(lamb, |lamb| lamb.worn.push(name.clone())),
        },
    }
}

fn one(flock: &Flock, id: EweId) -> Option<EweId> {
    match flock.canonical(Animal::Ewe(id)) {
        Animal::Ewe(id) => Some(id),
        Animal::Lamb(_) => None,
    }
}

/// Parts the rams from the ewes, once all is told of both.
pub(super) fn part_rams(flock: &mut Flock) {
    let rams: Vec<EweId> = flock.ewes.values().filter(|ewe| ewe.is_ram).map(|ewe| ewe.id).collect();
    for id in rams {
        if let Some(ram) = flock.ewes.remove(&id) {
            flock.rams.insert(id, ram);
        }
    }
}
