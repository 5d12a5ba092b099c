//! One more entry told to a flock that stands: what most taps are, a plain fact that comes after all others.
//!
//! A fold of a large book takes longer than a tap may. What this gives is what the fold would give, or it is not done.

use super::fold::{bring_in, tell};
use super::{Flock, keep, litter};
use crate::book::{Animal, Entry, Event, Life, Standing};

impl Flock {
    /// Takes one more entry in, if it was noted and happened after all that is known and changes nothing that was, and
    /// says whether it did. If not, the flock is as it was, and has to be folded anew from the book that holds the entry.
    pub fn learn(&mut self, entry: &Entry) -> bool {
        if !self.is_next(entry) || changes_what_was(&entry.event) || !self.is_told_alone(entry) {
            return false;
        }
        let Entry { event, at, .. } = entry;
        let line = Standing { entry, event, at: *at, amended: false, struck: false };
        bring_in(self, &line);
        tell(self, &line);
        if let Event::Chose(choice) = event {
            self.practice.choose(choice);
        }
        if let Event::LambBorn { .. } = event {
            litter::add(self, entry.id.as_lamb());
            self.by_birth.push((*at, entry.id.as_lamb()));
        }
        if let Event::AllBorn { lamb } = event {
            litter::all_born(self, *lamb, *at);
        }
        for animal in keep::line(self, &line) {
            match animal {
                Animal::Ewe(ewe) => keep::labor(self, ewe),
                Animal::Lamb(lamb) => keep::index(self, lamb),
            }
        }
        self.noted_until = Some(entry.noted);
        true
    }

    /// Says whether it comes after every other, as noted and as it happened, so that no correction waits for it.
    fn is_next(&self, entry: &Entry) -> bool {
        let noted = self.noted_until.is_none_or(|noted| noted < entry.noted);
        noted && self.lines.last().is_none_or(|last| last.at <= entry.at)
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
        if let Event::LambBorn { .. } = entry.event {
            let lamb = entry.id.as_lamb();
            let last = self.by_birth.last().is_none_or(|last| *last < (entry.at, lamb));
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
}

/// Says whether an event is read before or apart from the others, so that what was known may read otherwise with it.
const fn changes_what_was(event: &Event) -> bool {
    matches!(
        event,
        Event::SameAnimal { .. }
            | Event::Amended { .. }
            | Event::Struck { .. }
            | Event::Restored { .. }
            | Event::DamGiven { .. }
            | Event::LambBorn { beside: Some(_), .. }
            | Event::PenMade { .. }
            | Event::GroupFormed { .. }
            | Event::GroupParted { .. }
            | Event::JoinedGroup { .. }
            | Event::LeftGroup { .. }
            | Event::ColostrumFrozen { .. }
            | Event::Life(Life::KeptAsEwe { .. })
    )
}
