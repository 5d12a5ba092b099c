//! One more entry told to a flock that stands: what most taps are, a plain fact about an animal of which nothing later is
//! known.
//!
//! A fold of a large book takes longer than a tap may. What this gives is what the fold would give, or it is not done.

use super::fold::{apply, create};
use super::how::{ReadAs, how};
use super::{Flock, index, litter};
use crate::book::{Animal, Entry, Event, EweId, LambId, Standing};
use crate::units::Moment;

impl Flock {
    /// Takes one more entry in, if it changes nothing that was and nothing that it is about happened after it, and says
    /// whether it did. If not, the flock is as it was, and has to be folded anew from the book that holds the entry.
    pub fn apply(&mut self, entry: &Entry) -> bool {
        let how = how(&entry.event);
        let place = self.place_of(entry);
        if how.changes_what_was() || self.is_awaited(entry) || !self.is_told_alone(entry) {
            return false;
        }
        if place < self.lines.len() && !self.is_last_of_its_own(entry, how, place) {
            return false;
        }
        let Entry { event, at, .. } = entry;
        let line = Standing { entry, event, at: *at, amended: false, struck: false };
        create(self, &line);
        apply(self, &line);
        if let Event::Chose(choice) = event {
            self.settings.choose(choice);
            self.chosen = Some((entry.noted, entry.id));
        }
        if let Event::LambBorn { .. } = event {
            litter::add(self, entry.id.as_lamb());
            let born = (*at, entry.id.as_lamb());
            self.by_birth.insert(self.by_birth.partition_point(|other| *other < born), born);
        }
        if let Event::AllBorn { lamb } = event {
            litter::all_born(self, *lamb, *at);
        }
        for animal in index::line(self, &line, place) {
            match animal {
                Animal::Ewe(ewe) => index::labor(self, ewe),
                Animal::Lamb(lamb) => index::index(self, lamb),
            }
        }
        true
    }

    /// Returns where its line belongs: behind all that happened before, mostly at the end.
    fn place_of(&self, entry: &Entry) -> usize {
        let new = (entry.at, entry.noted, entry.id);
        self.lines.partition_point(|line| (line.at, line.noted, line.entry) < new)
    }

    /// Says whether something noted later has to do with it: a correction that came before it, or a choice that stands.
    fn is_awaited(&self, entry: &Entry) -> bool {
        let outdone = self.chosen.is_some_and(|chosen| chosen > (entry.noted, entry.id));
        self.awaited.contains(&entry.id) || (how(&entry.event) == ReadAs::Chooses && outdone)
    }

    /// Says whether no line from `place` on is about what this one is about, so that it may be told after them.
    fn is_last_of_its_own(&self, entry: &Entry, how: ReadAs, place: usize) -> bool {
        let before = |lines: Option<&Vec<usize>>| {
            lines.and_then(|lines| lines.last()).is_none_or(|last| *last < place)
        };
        let animals = |animal: Animal| before(self.of.get(&self.canonical(animal)));
        match how {
            ReadAs::Comes
            | ReadAs::Joins
            | ReadAs::Keeps
            | ReadAs::Corrects
            | ReadAs::Regroups
            | ReadAs::TellsInTurn => {
                return false;
            }
            ReadAs::EndsLitter => {
                let litter = entry.event.animals().find_map(|animal| match animal {
                    Animal::Lamb(lamb) => self.litter_of(lamb),
                    Animal::Ewe(_) => None,
                });
                let mates = litter.map_or(&[][..], |litter| &litter.lambs);
                if !mates.iter().all(|mate| animals(Animal::Lamb(*mate))) {
                    return false;
                }
            }
            ReadAs::ComesAlone | ReadAs::Chooses | ReadAs::Tells => {}
        }
        entry.event.animals().all(animals)
            && entry.event.pen().is_none_or(|pen| before(self.of_pen.get(&pen)))
            && entry.event.group().is_none_or(|group| before(self.of_group.get(&group)))
            && (!entry.event.is_of_the_stores() || before(Some(&self.of_stores)))
    }

    /// Says whether what it brings in, or gives a tag, hangs on nothing else that was noted.
    fn is_told_alone(&self, entry: &Entry) -> bool {
        let unheard = |animal: Animal| {
            let joined = self.same.iter().any(|(also, keep)| *also == animal || *keep == animal);
            !joined && !self.of.contains_key(&animal)
        };
        if let Event::EweCame { .. } = entry.event {
            return unheard(Animal::Ewe(entry.id.as_ewe()));
        }
        if let Event::LambBorn { dam, .. } = entry.event {
            let lamb = entry.id.as_lamb();
            let last = dam.is_none_or(|dam| self.is_last_birth(dam, (entry.at, lamb)));
            let awaited = self.beside.iter().any(|(_, mate)| *mate == lamb);
            return last && !awaited && unheard(Animal::Lamb(lamb));
        }
        if let Event::Tagged { animal, .. } = entry.event {
            // Who was born here and kept carries the tag of both its records.
            return match animal {
                Animal::Ewe(ewe) => self.ewe(ewe).is_none_or(|ewe| ewe.was.is_none()),
                Animal::Lamb(lamb) => self.lamb(lamb).is_none_or(|lamb| lamb.kept.is_none()),
            };
        }
        true
    }

    /// Says whether a birth comes after all that a ewe is known to have had.
    fn is_last_birth(&self, dam: EweId, birth: (Moment, LambId)) -> bool {
        let mut litters = self.litters_by(dam);
        litters.all(|litter| litter.lambs.last().is_none_or(|last| (litter.latest, *last) < birth))
    }
}
