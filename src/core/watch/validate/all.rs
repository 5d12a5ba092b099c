//! Several facts of one press: each may be noted where those before it were.

use super::{Rejection, validate};
use crate::book::{Book, DeviceId, Entry, EntryId, Event};
use crate::flock::{Flock, fold};
use crate::units::{Moment, TimeDelta};

/// Says whether facts, each with the entry it will be and when it happened, may be noted one after the other.
///
/// # Errors
/// The place of the first that may not, and the reason why.
pub fn validate_all<'a>(
    flock: &Flock,
    book: &Book,
    facts: impl IntoIterator<Item = (EntryId, &'a Event, Moment)>,
    device: DeviceId,
    now: Moment,
) -> Result<(), (usize, Rejection)> {
    let mut facts = facts.into_iter().enumerate().peekable();
    // Most presses note one fact: no other flock is needed for it.
    let Some((_, (first, event, at))) = facts.next() else { return Ok(()) };
    validate(flock, book, event, at, now).map_err(|rejection| (0, rejection))?;
    if facts.peek().is_none() {
        return Ok(());
    }
    let (mut flock, mut book) = (flock.clone(), book.clone());
    let (mut id, mut event, mut at) = (first, event, at);
    for (place, (next, next_event, next_at)) in facts {
        let noted = book.next_noted(now) + TimeDelta::milliseconds(i64::try_from(place).unwrap_or(i64::MAX));
        let entry = Entry { id, device, noted, at, event: event.clone() };
        let applied = flock.apply(&entry);
        book.add(entry);
        if !applied {
            flock = fold(&book);
        }
        validate(&flock, &book, next_event, next_at, now).map_err(|rejection| (place, rejection))?;
        (id, event, at) = (next, next_event, next_at);
    }
    Ok(())
}
