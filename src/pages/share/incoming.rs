//! A book file that was read whole, and what taking it in would add. Nothing changes.

use yeanling_core::book::{self, Book, BookFile, Event, FileError};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::units::Moment;

use super::twice::tags_twice;

/// What taking a book file in would add to this phone's own book.
#[derive(Clone, Debug, PartialEq)]
pub struct Incoming {
    /// The file.
    pub file: BookFile,
    /// How many entries are new in it.
    pub entries: usize,
    /// How many carry an id that was taken by other content: set aside, not applied.
    pub clashes: usize,
    /// How many of its entries a newer version wrote.
    pub unread: usize,
    /// How many ewes would come.
    pub ewes: usize,
    /// How many lambs would come.
    pub lambs: usize,
    /// The tags that two living ewes would wear then, and do not now.
    pub twice: Vec<String>,
    /// What is new in it and lies ahead of this phone's clock, if anything does.
    pub ahead: Option<Ahead>,
}

/// What in a file lies ahead of this phone's clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ahead {
    /// How many entries.
    pub entries: usize,
    /// The furthest of them.
    pub latest: Moment,
}

impl Incoming {
    /// Reads a file beside this phone's own book and the flock it makes.
    ///
    /// # Errors
    /// The file is no whole book.
    pub fn read(bytes: &[u8], own: &Book, flock: &Flock, now: Moment) -> Result<Self, FileError> {
        let file = book::read(bytes)?;
        let (book, merged) = own.with(file.entries.iter().cloned());
        let would_be = fold(&book);
        let added = merged.added.iter().filter_map(|id| book.entry(*id));
        let ahead: Vec<Moment> = added.filter_map(|entry| entry.ahead_of(now)).collect();
        let latest = ahead.iter().max().copied();
        let known = tags_twice(flock);
        let unread = file.entries.iter().filter(|entry| matches!(entry.event, Event::Unread(_))).count();
        Ok(Self {
            entries: merged.added.len(),
            clashes: merged.clashes.len(),
            unread,
            ewes: would_be.ewes.len().saturating_sub(flock.ewes.len()),
            lambs: would_be.lambs.len().saturating_sub(flock.lambs.len()),
            twice: tags_twice(&would_be).into_iter().filter(|tag| !known.contains(tag)).collect(),
            ahead: latest.map(|latest| Ahead { entries: ahead.len(), latest }),
            file,
        })
    }
}
