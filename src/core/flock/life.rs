//! What was noted of animals' lives: who rears whom, what they were treated with, and who left.
//!
//! Whose lamb it was born and who rears it are two things: births count for the dam, weights made alike for both.

use chrono::Datelike;

use super::{Ewe, Flock, Lamb, Litter};
use crate::book::{Animal, BirthDay, Departure, EntryId, Event, EweId, LambId, Life, Standing, Treatment};
use crate::sort_small::SortSmall;
use crate::terms::CullReason;
use crate::units::{Moment, Price, TimeDelta};

/// How an animal left the flock, and when.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Left {
    /// When.
    pub at: Moment,
    /// How.
    pub how: Departure,
    /// To whom or where, if said.
    pub to: Option<String>,
}

/// What is known of an animal that is here no more, beside how it left.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Gone {
    /// What it was sold for, in the farm's own money.
    pub price: Option<Price>,
    /// Why it was culled.
    pub culled: Option<CullReason>,
}

/// A treatment that was given.
#[derive(Clone, Debug, PartialEq)]
pub struct Treated {
    /// The entry that noted it.
    pub entry: EntryId,
    /// Which animal.
    pub animal: Animal,
    /// When.
    pub at: Moment,
    /// What.
    pub treatment: Treatment,
    /// Whether it was the booster before lambing.
    pub booster: bool,
}

/// With whom a lamb is reared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reared {
    /// By a ewe, so many at her, itself included.
    ByEwe(u8),
    /// By hand.
    ByHand,
}

/// A lamb that still lives from the hand at this age is reared by hand (ours).
const BY_HAND_FROM: TimeDelta = TimeDelta::days(3);
/// Lambs born so far apart at most are reared together (ours).
const TOGETHER: TimeDelta = TimeDelta::days(60);

impl Flock {
    /// Returns what an animal was treated with, oldest first; a ewe's years as a lamb included.
    #[must_use]
    pub fn treated(&self, animal: Animal) -> Vec<&Treated> {
        let own = |animal: Animal| self.treated.get(&animal).map_or(&[][..], Vec::as_slice);
        let animal = self.canonical(animal);
        let was = match animal {
            Animal::Ewe(ewe) => self.ewes.get(&ewe).and_then(|ewe| ewe.was).map(Animal::Lamb),
            Animal::Lamb(_) => None,
        };
        was.map_or(&[][..], own).iter().chain(own(animal)).collect()
    }

    /// Returns what is known of an animal that left or died, beside how.
    #[must_use]
    pub fn gone(&self, animal: Animal) -> Gone {
        self.gone.get(&self.canonical(animal)).copied().unwrap_or_default()
    }

    /// Returns every treatment, the latest first.
    #[must_use]
    pub fn treatments(&self) -> Vec<&Treated> {
        let mut all: Vec<&Treated> = self.treated.values().flatten().collect();
        all.sort_small_by_key(|treated| std::cmp::Reverse((treated.at, treated.entry)));
        all
    }

    /// Returns the ewe that rears a lamb, or reared it last: the one it was fostered to, else its dam.
    #[must_use]
    pub fn rearer(&self, lamb: &Lamb) -> Option<EweId> {
        lamb.fostered.last().map(|(_, dam)| *dam).or(lamb.dam)
    }

    /// Returns the living lambs that a ewe rears: those of her latest litter that are not with another, and those
    /// fostered to her since.
    #[must_use]
    pub fn lambs_at_foot(&self, ewe: EweId) -> Vec<&Lamb> {
        let Some(ewe) = self.ewe(ewe) else { return Vec::new() };
        let latest = self.litters_of(ewe.id).first().copied();
        let own = latest.map_or(&[][..], |litter| litter.lambs.as_slice());
        let hers = |lamb: &&Lamb| lamb.lives() && self.rearer(lamb) == Some(ewe.id);
        let fostered = self.fostered.get(&ewe.id).map_or(&[][..], Vec::as_slice);
        let of_now = |lamb: &&Lamb| {
            let near = |began: Moment| lamb.born.since(began).abs() <= TOGETHER;
            lamb.dam != Some(ewe.id) && latest.is_none_or(|litter| near(litter.began))
        };
        let others = fostered.iter().filter_map(|id| self.lambs.get(id)).filter(of_now);
        own.iter().filter_map(|id| self.lambs.get(id)).chain(others).filter(hers).collect()
    }

    /// Returns how a lamb was reared as known at `at`: how many lambs its ewe had at her, those that died before
    /// not counted. None while nobody is known to rear it.
    #[must_use]
    pub fn reared(&self, lamb: &Lamb, at: Moment) -> Option<Reared> {
        if lamb.reared_as.is_some() {
            return lamb.reared_as;
        }
        let fed_late =
            |lamb: &Lamb| lamb.feeds.last().is_some_and(|feed| feed.at.since(lamb.born) >= BY_HAND_FROM);
        if lamb.hand_fed() && fed_late(lamb) {
            return Some(Reared::ByHand);
        }
        let ewe = self.rearer(lamb)?;
        let there = |other: &&Lamb| {
            let lived = other.born_alive && other.died.is_none_or(|death| death.at >= at);
            let together = other.born.since(lamb.born).abs() <= TOGETHER;
            lived && together && !(other.hand_fed() && fed_late(other))
        };
        let count = self.reared_near(ewe, Some(lamb.born)).into_iter().filter(there).count();
        Some(Reared::ByEwe(u8::try_from(count.max(1)).unwrap_or(u8::MAX)))
    }

    /// Returns every lamb that a ewe rears or reared last: her own that went to no other, and those fostered to her.
    #[must_use]
    pub fn reared_by(&self, ewe: EweId) -> Vec<&Lamb> {
        self.reared_near(ewe, None)
    }

    /// The same, without looking at her litters that are too far from a birth for their lambs to be reared together.
    fn reared_near(&self, ewe: EweId, born: Option<Moment>) -> Vec<&Lamb> {
        let Some(ewe) = self.ewe(ewe) else { return Vec::new() };
        let near = |litter: &&Litter| {
            born.is_none_or(|born| litter.began - TOGETHER <= born && born <= litter.latest + TOGETHER)
        };
        let own = self.of_dam.get(&ewe.id).into_iter().flatten().filter_map(|id| self.litters.get(id));
        let own = own.filter(near).flat_map(|litter| &litter.lambs);
        let mut ids: Vec<LambId> =
            own.chain(self.fostered.get(&ewe.id).into_iter().flatten()).copied().collect();
        ids.sort_small();
        ids.dedup();
        let lambs = ids.iter().filter_map(|id| self.lambs.get(id));
        lambs.filter(|lamb| self.rearer(lamb) == Some(ewe.id)).collect()
    }

    /// Returns how many whole years old a ewe was at `at`, if it is known when she was born; with the year alone it is
    /// the difference of the years.
    #[must_use]
    pub fn ewe_years(&self, ewe: EweId, at: Moment) -> Option<u16> {
        let day = at.local().date();
        match self.ewe_born(ewe)? {
            BirthDay::Day(born) => day.years_since(born).and_then(|years| u16::try_from(years).ok()),
            BirthDay::Year(year) => u16::try_from(day.year()).ok().and_then(|now| now.checked_sub(year)),
        }
    }

    /// Returns when a ewe was born, if it is known: as described, or on the day she was born here as a lamb.
    #[must_use]
    pub fn ewe_born(&self, ewe: EweId) -> Option<BirthDay> {
        let ewe = self.grown(ewe)?;
        let here =
            ewe.was.and_then(|lamb| self.lamb(lamb)).map(|lamb| BirthDay::Day(lamb.born.local().date()));
        ewe.born.or(here)
    }
}

/// Brings in a ewe that was a lamb here; once the lambs are in.
pub(super) fn keep_ewes(flock: &mut Flock, kept: &[&Standing<'_>]) {
    for line in kept {
        let Event::Life(Life::KeptAsEwe { lamb }) = line.event else { continue };
        let Animal::Lamb(lamb) = flock.canonical(Animal::Lamb(*lamb)) else { continue };
        let Animal::Ewe(id) = flock.canonical(Animal::Ewe(line.entry.id.as_ewe())) else { continue };
        let Some(was) = flock.lambs.get_mut(&lamb) else { continue };
        was.kept.get_or_insert(id);
        let ewe = flock.ewes.entry(id).or_insert_with(|| Ewe::new(id, line.at));
        ewe.was = ewe.was.or(Some(lamb));
    }
}

/// Gives a ewe that was a lamb here the tag she wore, unless she was given another since.
pub(super) fn carry_tags(flock: &mut Flock) {
    for ewe in flock.ewes.values_mut() {
        if let Some(lamb) = ewe.was.and_then(|was| flock.lambs.get(&was)) {
            ewe.tag = ewe.tag.take().or_else(|| lamb.tag.clone());
        }
    }
}

/// Tells that an animal was treated.
fn treat(flock: &mut Flock, line: &Standing<'_>, animal: Animal, treatment: &Treatment, booster: bool) {
    let animal = flock.canonical(animal);
    let treatment = treatment.clone();
    let treated = Treated { entry: line.entry.id, animal, at: line.at, treatment, booster };
    flock.treated.entry(animal).or_default().push(treated);
}

/// Tells what happened in an animal's life.
pub(super) fn apply(flock: &mut Flock, line: &Standing<'_>, life: &Life) {
    let at = line.at;
    match life {
        Life::Fostered { lamb, dam } => {
            let (Animal::Lamb(lamb), Animal::Ewe(dam)) =
                (flock.canonical(Animal::Lamb(*lamb)), flock.canonical(Animal::Ewe(*dam)))
            else {
                return;
            };
            if let Some(lamb) = flock.lambs.get_mut(&lamb) {
                lamb.fostered.push((at, dam));
                // It may come to her again, after it was with another.
                let hers = flock.fostered.entry(dam).or_default();
                if !hers.contains(&lamb.id) {
                    hers.push(lamb.id);
                }
            }
        }
        Life::Marked { animal, mark } => match flock.canonical(*animal) {
            Animal::Ewe(ewe) => flock.on_ewe(ewe, |ewe| ewe.worn.push(mark.clone())),
            Animal::Lamb(lamb) => flock.on_lamb(lamb, |lamb| lamb.worn.push(mark.clone())),
        },
        // The one is told by its own rule, the other stands among the lines alone.
        Life::KeptAsEwe { .. } | Life::Examined { .. } => {}
        Life::Described { ewe, born, breed } => flock.on_ewe(*ewe, |ewe| {
            ewe.born = born.or(ewe.born);
            ewe.breed = breed.clone().or_else(|| ewe.breed.take());
        }),
        Life::Castrated { lamb, way } => flock.on_lamb(*lamb, |lamb| lamb.castrated.push((at, *way))),
        Life::Treated { animal, treatment } => treat(flock, line, *animal, treatment, false),
        Life::Boosted { ewe, treatment } => treat(flock, line, Animal::Ewe(*ewe), treatment, true),
        Life::SoldFor { animal, price } => {
            let animal = flock.canonical(*animal);
            flock.gone.entry(animal).or_default().price = Some(*price);
        }
        Life::Culled { animal, why } => {
            let animal = flock.canonical(*animal);
            flock.gone.entry(animal).or_default().culled = Some(*why);
        }
        Life::Went { animal, how, to } => {
            let left = Left { at, how: *how, to: to.clone() };
            match flock.canonical(*animal) {
                Animal::Ewe(ewe) => flock.on_ewe(ewe, |ewe| _ = ewe.left.get_or_insert(left)),
                Animal::Lamb(lamb) => flock.on_lamb(lamb, |lamb| _ = lamb.left.get_or_insert(left)),
            }
            super::pen::leave(flock, *animal, line);
        }
    }
}
