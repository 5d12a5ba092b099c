//! What was noted: entries that never change, in a set that only grows.
//!
//! Two books become one by union, so any number of phones may meet in any order, any number of times.

mod about;
mod animal;
mod care;
mod clock;
mod duty_kind;
mod entry;
mod event;
mod fact;
mod file;
mod ids;
mod illness;
mod lengths;
mod life;
mod merge;
mod milked_from;
mod past;
mod planning;
mod split;
mod standing;
mod unread;

use std::collections::BTreeMap;
use std::collections::btree_map::Entry as Slot;

pub use animal::Animal;
pub use care::{Awaited, Care, GlucoseBy, VetSaid};
pub use clock::{AHEAD, SLACK};
pub use duty_kind::DutyKind;
pub use entry::Entry;
pub use event::Event;
pub use file::{BookFile, FORMAT, FileError, MOST_BYTES, MOST_ENTRY, VERSION, read, write};
pub use ids::{BatchId, DeviceId, EntryId, EweId, GroupId, LambId, PenId};
pub use illness::Illness;
pub use lengths::{MOST_REMARK, MOST_TAG, MOST_WORDS};
pub use life::{BirthDay, Castration, DayOrder, Departure, Life, NoBirthDay, Route, Treatment};
pub use merge::Merged;
pub use milked_from::MilkedFrom;
pub use past::Past;
pub use planning::{PlannedJob, Planning};
pub use split::{MOST_WRITTEN, SPEAK_FROM, Written, split, split_within};
pub use standing::{Corrected, Standing, corrected, standing};
pub use unread::Unread;

pub use crate::terms::{
    Belly, Cause, CullReason, Found, Item, LambingEase, Measure, Milk, Mouth, Part, PenSize, Presentation,
    RamAge, Ring, Sex, Sign, Suck, VigorScale, Way,
};
use crate::units::Moment;

/// Everything that was noted, keyed by entry.
///
/// A book has no order of its own and forgets nothing; what stands after corrections is worked out by [`standing`].
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Book {
    entries: BTreeMap<EntryId, Entry>,
    set_aside: Vec<Entry>,
    latest: Option<Moment>,
}

/// What became of an entry that was added.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Added {
    /// It was not in the book before.
    New,
    /// The same entry was there already.
    Known,
    /// An entry of this id with other content was there already and stays; the newcomer was set aside.
    Clash,
}

impl Book {
    /// Returns the entries, by id.
    pub fn entries(&self) -> impl ExactSizeIterator<Item = &Entry> + Clone {
        self.entries.values()
    }

    /// Returns the entry of this id, if it is in the book.
    #[must_use]
    pub fn entry(&self, id: EntryId) -> Option<&Entry> {
        self.entries.get(&id)
    }

    /// Returns how many entries there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.entries.len()
    }

    /// Says whether nothing was ever noted.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// Returns when the entry noted last was noted.
    #[must_use]
    pub const fn latest(&self) -> Option<Moment> {
        self.latest
    }

    /// Returns the entries that claimed an id already taken by other content: damage or tampering.
    #[must_use]
    pub fn set_aside(&self) -> &[Entry] {
        &self.set_aside
    }

    /// Adds an entry, and says what became of it.
    pub fn add(&mut self, entry: Entry) -> Added {
        match self.entries.entry(entry.id) {
            Slot::Occupied(here) if *here.get() == entry => Added::Known,
            Slot::Occupied(_) => {
                if !self.set_aside.contains(&entry) {
                    self.set_aside.push(entry);
                }
                Added::Clash
            }
            Slot::Vacant(slot) => {
                self.latest = self.latest.max(Some(entry.noted));
                slot.insert(entry);
                Added::New
            }
        }
    }
}
