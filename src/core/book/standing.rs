//! What stands after all corrections: of several to one entry, the latest by (noted, id).
//!
//! Corrections are entries and can be corrected themselves. One counts only if it was noted after what it corrects,
//! so there can be no circle.

use std::collections::{BTreeSet, HashMap};

use super::{Book, Entry, EntryId, Event};
use crate::units::Moment;

/// An entry as it reads after all corrections.
#[derive(Clone, Debug, PartialEq)]
pub struct Standing<'a> {
    /// The entry as it was noted.
    pub entry: &'a Entry,
    /// The fact as it stands.
    pub event: &'a Event,
    /// When it happened, as it stands.
    pub at: Moment,
    /// Whether it was amended.
    pub amended: bool,
    /// Whether it was struck, so that it does not count.
    pub struck: bool,
}

#[derive(Default)]
struct Corrections<'a> {
    /// Set by the latest correction alone.
    struck: Option<bool>,
    /// Set by the latest amendment alone.
    amended: Option<(&'a Event, Moment)>,
}

/// A book after all corrections.
#[derive(Clone, Debug, PartialEq)]
pub struct Corrected<'a> {
    /// Every entry that is no correction, as it stands, by when it happened, then when it was noted, then id.
    pub standing: Vec<Standing<'a>>,
    /// Entries to which there are corrections that found none: they are not here, or were noted later.
    pub awaited: BTreeSet<EntryId>,
}

/// Returns every entry that is no correction, as it stands, by when it happened, then when it was noted, then id.
#[must_use]
pub fn standing(book: &Book) -> Vec<Standing<'_>> {
    corrected(book).standing
}

/// Returns every entry as it stands, and for which entries corrections wait.
#[must_use]
pub fn corrected(book: &Book) -> Corrected<'_> {
    // Ids grow with time, so both orders are nearly there already, which this way of sorting makes use of. It is the
    // standard library's own, whatever it weighs: a large book waits for it.
    let mut latest_last: Vec<&Entry> = book.entries().collect();
    latest_last.sort_by_key(|entry| (entry.noted, entry.id));
    let mut corrections: HashMap<EntryId, Corrections<'_>> = HashMap::new();
    let mut standing = Vec::with_capacity(latest_last.len());
    for entry in latest_last.into_iter().rev() {
        let Corrections { struck, amended } = corrections.remove(&entry.id).unwrap_or_default();
        let struck = struck.unwrap_or(false);
        let (event, at) = amended.unwrap_or((&entry.event, entry.at));
        let Some(target) = event.corrects() else {
            standing.push(Standing { entry, event, at, amended: amended.is_some(), struck });
            continue;
        };
        if struck {
            continue;
        }
        let slot = corrections.entry(target).or_default();
        let strikes = matches!(event, Event::Deleted { .. });
        slot.struck.get_or_insert(strikes);
        if let Event::Amended { event, at, .. } = event {
            slot.amended.get_or_insert((event, *at));
        }
    }
    standing.reverse();
    // By when it was noted and by id they stand already, and what is equal keeps its order.
    standing.sort_by_key(|line| line.at);
    Corrected { standing, awaited: corrections.into_keys().collect() }
}
