//! What was done last in this visit, and what the offer to undo it says.

use std::collections::BTreeSet;

use yeanling_core::book::{Animal, Book, EntryId, Event};
use yeanling_core::flock::{Flock, Line};
use yeanling_core::sort_small::Gather;
use yeanling_core::units::Moment;
use yeanling_words::{animals, frame as words, noted};

/// What was done last in this visit, and can be undone.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Last {
    /// Nothing, or it was let go.
    #[default]
    Nothing,
    /// These were noted with one press; at least one.
    Noted(Vec<EntryId>),
    /// This was taken back.
    TakenBack(EntryId),
    /// This was changed; it read so before.
    Changed {
        /// Which entry.
        entry: EntryId,
        /// What it said.
        event: Box<Event>,
        /// When that was.
        at: Moment,
    },
    /// These entries were undone just now: nothing is offered, but what stands on a screen keeps its place as long as if it
    /// were.
    Undone(Vec<EntryId>),
}

/// Returns what the offer to undo says; nothing when nothing is offered.
#[must_use]
pub fn offer(last: &Last, book: &Book, flock: &Flock) -> Option<String> {
    let entries = match last {
        Last::Nothing | Last::Undone(_) => return None,
        Last::Noted(entries) => entries.clone(),
        Last::TakenBack(entry) | Last::Changed { entry, .. } => vec![*entry],
    };
    // What was corrected is told by the line that it now reads as.
    let corrected = |entry: &EntryId| book.entry(*entry)?.event.corrects();
    let changed = entries.iter().any(|entry| corrected(entry).is_some());
    let entries: BTreeSet<EntryId> =
        entries.iter().map(|entry| corrected(entry).unwrap_or(*entry)).gathered();
    let of_them = |line: &&Line| entries.contains(&line.entry);
    let lines: Vec<&Line> = flock.lines.iter().rev().filter(of_them).take(entries.len()).collect();
    // They stand the latest first.
    let line = *lines.last()?;
    let animals: BTreeSet<_> = lines.iter().flat_map(|line| line.event.animals()).gathered();
    let others = animals.len().saturating_sub(1);
    let noted = noted::line(&line.event, flock, flock.settings.system).replace('*', "");
    // That all are born is said of the litter, which bears its dam's name.
    let dam = if let Event::AllBorn { lamb } = line.event {
        flock.lamb(lamb).and_then(|lamb| lamb.dam).map(Animal::Ewe)
    } else {
        None
    };
    let whose = dam.or_else(|| line.event.animals().next()).map(|animal| animals::animal(flock, animal));
    let said = match whose {
        Some(whose) if !noted.starts_with(&whose) => format!("{whose}: {noted}"),
        Some(_) | None => noted,
    };
    Some(match last {
        Last::TakenBack(_) => words::taken_back(&said),
        Last::Changed { .. } => words::changed(&said),
        Last::Noted(_) if changed => words::changed(&words::and_others(said, others)),
        Last::Nothing | Last::Undone(_) | Last::Noted(_) => words::and_others(said, others),
    })
}
