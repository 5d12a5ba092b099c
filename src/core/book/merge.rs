//! How two books become one: by union, all or nothing, with a preview that changes nothing.
//!
//! `SameAnimal` joins, nothing is deleted; the kept record is read first.

use super::ids::EntryId;
use super::{Added, Book, Entry};

/// What a union did, or would do.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Merged {
    /// The entries that were not here before.
    pub added: Vec<EntryId>,
    /// How many were here already.
    pub known: usize,
    /// The entries whose id was taken by other content: set aside, not applied.
    pub clashes: Vec<Entry>,
}

impl Book {
    /// Takes entries of another book in: a union, so order and repetition do not matter.
    pub fn union(&mut self, entries: impl IntoIterator<Item = Entry>) -> Merged {
        let mut merged = Merged::default();
        for entry in entries {
            let id = entry.id;
            // Only what is here already can clash, and has to be told of whole.
            let known = self.entries.contains_key(&id).then(|| entry.clone());
            match self.add(entry) {
                Added::New => merged.added.push(id),
                Added::Known => merged.known += 1,
                Added::Clash => merged.clashes.extend(known),
            }
        }
        merged
    }

    /// Returns the book as it would be with these entries, and what would change. This book stays as it is.
    #[must_use]
    pub fn with(&self, entries: impl IntoIterator<Item = Entry>) -> (Self, Merged) {
        let mut book = self.clone();
        let merged = book.union(entries);
        (book, merged)
    }
}

impl FromIterator<Entry> for Book {
    fn from_iter<I: IntoIterator<Item = Entry>>(entries: I) -> Self {
        let mut book = Self::default();
        for entry in entries {
            book.add(entry);
        }
        book
    }
}
