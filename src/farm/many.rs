//! Many facts noted at once, such as many ewes put into a group: all of them or none.

use yeanling_core::book::{Animal, Care, Entry, EntryId, Event, EweId, LambId, Life};
use yeanling_core::flock::fold;
use yeanling_core::spreadsheet::NewEwe;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{self, Refusal};

use super::{Farm, Last};
use crate::browser::{id, now};

/// Entries of one press, each noted a millisecond after the one before.
struct Together {
    farm: Farm,
    now: Moment,
    noted: Moment,
    at: Moment,
    entries: Vec<Entry>,
}

impl Together {
    fn new(farm: Farm, now: Moment, at: Moment) -> Self {
        Self { farm, now, noted: farm.peek(|ground| ground.book.next_noted(now)), at, entries: Vec::new() }
    }

    /// Adds a fact that may be noted in the book as it stands.
    fn add(&mut self, event: Event) -> Result<EntryId, Refusal> {
        self.farm.peek(|ground| watch::allow(&ground.flock, &ground.book, &event, self.at, self.now))?;
        Ok(self.add_checked(event))
    }

    /// Adds a fact that was checked, or follows from the one before.
    fn add_checked(&mut self, event: Event) -> EntryId {
        let noted = self.farm.peek(|ground| ground.book.next_noted_of(&event, self.now));
        self.noted = self.noted.max(noted);
        let (id, device) = (id::new_entry(self.now), self.farm.device);
        self.entries.push(Entry { id, device, noted: self.noted, at: self.at, event });
        self.noted = self.noted + TimeDelta::milliseconds(1);
        id
    }

    /// Takes all of them in, to be undone as one.
    fn take(self) {
        let last = Last::Noted(self.entries.iter().map(|entry| entry.id).collect());
        self.farm.take(self.entries, now::now(), last);
    }
}

impl Farm {
    /// Notes facts that do not hang on each other, as from `at`, in one piece, which can be undone in one piece.
    ///
    /// # Errors
    /// One of them may not be noted: the reason. Nothing has changed then.
    pub fn note_all(self, events: Vec<Event>, at: Moment) -> Result<(), Refusal> {
        let mut together = Together::new(self, now::now(), at);
        for event in events {
            together.add(event)?;
        }
        together.take();
        Ok(())
    }

    /// Notes that a lamb was found already born when its birth was noted, and that it can be so old at the most.
    pub fn found_born(self, lamb: LambId, most: TimeDelta) {
        let of_birth = self.peek(|ground| {
            let line = ground.flock.lines.iter().find(|line| line.entry == lamb.entry())?;
            let found = ground.flock.lamb(lamb)?.found.unwrap_or(line.at);
            Some((line.event.clone(), found))
        });
        let Some((event, found)) = of_birth else { return };
        let amended = Event::Amended { entry: lamb.entry(), event: Box::new(event), at: found - most };
        let mut together = Together::new(self, now::now(), now::now());
        let said = together.add(amended);
        together.at = found;
        let said = said.map(|_| together.add_checked(Event::Care(Care::FoundBorn { lamb })));
        match said {
            Ok(_) => together.take(),
            Err(refusal) => self.refused.set(Some(refusal)),
        }
    }
}
