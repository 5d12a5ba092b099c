//! Many facts noted at once, such as many ewes put into a group: all of them or none.

use yeanling_core::book::{Animal, Entry, EntryId, Event, EweId, GroupId, Life};
use yeanling_core::flock::fold;
use yeanling_core::spreadsheet::NewEwe;
use yeanling_core::units::Moment;
use yeanling_core::watch::{self, Refusal};

use super::Farm;
use crate::browser::{id, now};

impl Farm {
    /// Puts ewes of the book and ewes new to it into a group, as from `at`, in one piece.
    ///
    /// # Errors
    /// One of them cannot join: which, and why. Nothing has changed then.
    pub fn join_group(
        self,
        group: GroupId,
        known: &[EweId],
        fresh: &[String],
        at: Moment,
    ) -> Result<(), (Option<EweId>, Refusal)> {
        let now = now::now();
        let mut noted = self.peek(|ground| ground.book.next_noted(now));
        let mut entries: Vec<Entry> = Vec::new();
        let mut add = |event: Event| -> EntryId {
            let entry = Entry { id: id::new_entry(now), device: self.device, noted, at, event };
            noted = noted + yeanling_core::units::TimeDelta::milliseconds(1);
            let id = entry.id;
            entries.push(entry);
            id
        };
        for ewe in known {
            let event = Event::JoinedGroup { ewe: *ewe, group };
            self.peek(|ground| watch::allow(&ground.flock, &ground.book, &event, at, now))
                .map_err(|refusal| (Some(*ewe), refusal))?;
            add(event);
        }
        for tag in fresh {
            let event = Event::EweCame { tag: Some(tag.clone()) };
            self.peek(|ground| watch::allow(&ground.flock, &ground.book, &event, at, now))
                .map_err(|refusal| (None, refusal))?;
            let ewe = add(event).as_ewe();
            add(Event::JoinedGroup { ewe, group });
        }
        self.take_all(entries);
        Ok(())
    }

    /// Notes facts that do not hang on each other, as from `at`, in one piece; one alone can be undone like any other.
    ///
    /// # Errors
    /// One of them may not be noted: the reason. Nothing has changed then.
    pub fn note_all(self, events: Vec<Event>, at: Moment) -> Result<(), Refusal> {
        let now = now::now();
        let mut noted = self.peek(|ground| ground.book.next_noted(now));
        let mut entries: Vec<Entry> = Vec::new();
        for event in events {
            self.peek(|ground| watch::allow(&ground.flock, &ground.book, &event, at, now))?;
            entries.push(Entry { id: id::new_entry(now), device: self.device, noted, at, event });
            noted = noted + yeanling_core::units::TimeDelta::milliseconds(1);
        }
        let only = if let [one] = entries.as_slice() { Some(one.id) } else { None };
        self.take_all(entries);
        self.last.set(only);
        Ok(())
    }

    /// Takes ewes of a table in, each with what is known of her, in one piece.
    ///
    /// # Errors
    /// One of them may not be noted: her tag and the reason. Nothing has changed then.
    pub fn take_ewes(self, ewes: &[NewEwe]) -> Result<(), (String, Refusal)> {
        let now = now::now();
        let mut noted = self.peek(|ground| ground.book.next_noted(now));
        let mut entry = |event: Event| {
            let entry = Entry { id: id::new_entry(now), device: self.device, noted, at: now, event };
            noted = noted + yeanling_core::units::TimeDelta::milliseconds(1);
            entry
        };
        let came: Vec<Entry> =
            ewes.iter().map(|ewe| entry(Event::EweCame { tag: Some(ewe.tag.clone()) })).collect();
        // What is said of a ewe can only be checked where she is: in a book that has them all.
        let mut book = self.peek(|ground| ground.book.clone());
        let before = self.peek(|ground| ground.flock.clone());
        for (one, ewe) in came.iter().zip(ewes) {
            watch::allow(&before, &book, &one.event, now, now)
                .map_err(|refusal| (ewe.tag.clone(), refusal))?;
        }
        book.union(came.iter().cloned());
        let flock = fold(&book);
        let mut told: Vec<Entry> = Vec::new();
        for (one, new) in came.iter().zip(ewes) {
            let ewe = one.id.as_ewe();
            let described = (new.born.is_some() || new.breed.is_some())
                .then(|| Event::Life(Life::Described { ewe, born: new.born, breed: new.breed.clone() }));
            let remarked = new.remark.clone().map(|text| Event::Remarked { animal: Animal::Ewe(ewe), text });
            for event in described.into_iter().chain(remarked) {
                watch::allow(&flock, &book, &event, now, now)
                    .map_err(|refusal| (new.tag.clone(), refusal))?;
                told.push(entry(event));
            }
        }
        self.take_all(came.into_iter().chain(told).collect());
        self.last.set(None);
        Ok(())
    }

    /// Takes entries that were checked, in one piece.
    fn take_all(self, entries: Vec<Entry>) {
        if self.looks_round() {
            self.made_up.update(|ground| {
                if let Some(ground) = ground {
                    ground.take(entries);
                }
            });
            return;
        }
        self.real.update(|ground| ground.take(entries.clone()));
        self.keep(entries);
        self.clock.set(now::now());
    }
}
