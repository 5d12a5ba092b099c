//! Whether something of the time before the book may be noted: no ewe with lambs becomes a ram, nobody is its own parent,
//! and none is older than its parents.

use chrono::Datelike;

use super::here::{animal_here, ewe_here, grown_here, lamb_here, text};
use super::{LifeRejection, Rejection};
use crate::book::{Animal, BirthDay, EweId, MOST_TAG, Past, Sex};
use crate::flock::Flock;

pub(super) fn past(flock: &Flock, past: &Past) -> Result<(), Rejection> {
    match past {
        Past::IsRam { animal } => {
            let ewe = grown_here(flock, *animal)?;
            let mated = !ewe.stays.is_empty() && !ewe.is_ram;
            if ewe.was.is_some() || mated || !flock.litters_of(ewe.id).is_empty() {
                Err(LifeRejection::SheIsAEwe.into())
            } else {
                Ok(())
            }
        }
        Past::Sired { animal, ram } => {
            animal_here(flock, *animal)?;
            let ram = flock.ram(*ram).ok_or(LifeRejection::NotARam)?;
            parent(flock, *animal, ram.id)
        }
        Past::DamOf { animal, dam } => {
            let own = grown_here(flock, *animal)?.id;
            parent(flock, Animal::Ewe(own), ewe_here(flock, *dam)?.id)
        }
        Past::BornAs { animal, of } => {
            animal_here(flock, *animal)?;
            some_of(*of)
        }
        Past::RearedAs { lamb, of } => {
            lamb_here(flock, *lamb)?;
            of.map_or(Ok(()), some_of)
        }
        Past::IsWether { lamb } => {
            let ewe_lamb = lamb_here(flock, *lamb)?.sex == Some(Sex::Ewe);
            if ewe_lamb { Err(LifeRejection::WrongSex.into()) } else { Ok(()) }
        }
        Past::Called { animal, name } => {
            animal_here(flock, *animal)?;
            text(name, MOST_TAG)
        }
    }
}

/// A parent is another animal, and born before.
fn parent(flock: &Flock, animal: Animal, parent: EweId) -> Result<(), Rejection> {
    if flock.canonical(animal) == Animal::Ewe(parent) {
        return Err(LifeRejection::OwnParent.into());
    }
    let own = match animal {
        Animal::Ewe(ewe) => flock.ewe_born(ewe).map(BirthDay::year),
        Animal::Lamb(lamb) => flock.lamb(lamb).map(|lamb| lamb.born.local().year()),
    };
    match (own, flock.ewe_born(parent).map(BirthDay::year)) {
        (Some(own), Some(parents)) if parents >= own => {
            Err(LifeRejection::ParentYounger { parent: parents, own }.into())
        }
        _ => Ok(()),
    }
}

fn some_of(given: u8) -> Result<(), Rejection> {
    let most = Past::MOST_OF;
    if (1..=most).contains(&given) { Ok(()) } else { Err(LifeRejection::LitterOf { given, most }.into()) }
}
