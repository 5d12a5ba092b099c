//! Several facts of one press: each may be noted where those before it were.
//!
//! A table brings thousands. They are judged together, each by what the book says with all of them, as a fact is that is
//! amended: to fold the book anew for each would take the square of their number.

use std::collections::BTreeMap;

use super::here::text;
use super::{CLOCK_SLACK, LifeRejection, Rejection, fact, validate};
use crate::book::{Animal, Book, DeviceId, Entry, EntryId, Event, MOST_TAG};
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
    let facts: Vec<_> = facts.into_iter().collect();
    if facts.len() > MANY {
        let (_, refused) = validate_together(book, facts, device, now);
        return refused.into_iter().next().map_or(Ok(()), Err);
    }
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

/// More facts than this are judged together (ours).
const MANY: usize = 200;

/// Returns the flock that a book would make with these facts, and each fact that may not be noted with the reason why: each
/// is judged by the flock that has all of them.
#[must_use]
pub fn validate_together<'a>(
    book: &Book,
    facts: impl IntoIterator<Item = (EntryId, &'a Event, Moment)>,
    device: DeviceId,
    now: Moment,
) -> (Flock, Vec<(usize, Rejection)>) {
    let facts: Vec<_> = facts.into_iter().collect();
    let mut together = book.clone();
    for (id, event, at) in &facts {
        let noted = together.next_noted(now);
        together.add(Entry { id: *id, device, noted, at: *at, event: (*event).clone() });
    }
    let flock = fold(&together);
    let worn = worn(&flock);
    let judged = facts.iter().enumerate().filter_map(|(place, (id, event, at))| {
        let judged = together_with(&flock, &together, &worn, (*id, event, *at), now);
        judged.err().map(|rejection| (place, rejection))
    });
    let refused = judged.collect();
    (flock, refused)
}

/// Who wears each tag and lives, in small letters.
fn worn(flock: &Flock) -> BTreeMap<String, Vec<Animal>> {
    let mut worn: BTreeMap<String, Vec<Animal>> = BTreeMap::new();
    let grown = flock.ewes.values().chain(flock.rams.values()).filter(|grown| grown.lives());
    let lambs = flock.lambs.values().filter(|lamb| lamb.lives());
    let tags = grown.map(|grown| (&grown.tag, Animal::Ewe(grown.id)));
    for (tag, animal) in tags.chain(lambs.map(|lamb| (&lamb.tag, Animal::Lamb(lamb.id)))) {
        if let Some(tag) = tag {
            worn.entry(tag.trim().to_ascii_lowercase()).or_default().push(animal);
        }
    }
    worn
}

fn together_with(
    flock: &Flock,
    book: &Book,
    worn: &BTreeMap<String, Vec<Animal>>,
    (id, event, at): (EntryId, &Event, Moment),
    now: Moment,
) -> Result<(), Rejection> {
    if at > now + CLOCK_SLACK {
        return Err(Rejection::InFuture { at, now });
    }
    if event.corrects().is_some() {
        return validate(flock, book, event, at, now);
    }
    // To look for a tag among all animals, for each of them, would again be the square of their number.
    let (tag, own) = if let Event::EweCame { tag: Some(tag) } = event {
        (tag, Animal::Ewe(id.as_ewe()))
    } else if let Event::Tagged { animal, tag } = event {
        super::here::animal_here(flock, *animal)?;
        (tag, *animal)
    } else {
        return fact(flock, Some(id), event, at, now);
    };
    text(tag, MOST_TAG)?;
    let own = flock.canonical(own);
    let others = worn.get(&tag.trim().to_ascii_lowercase()).into_iter().flatten();
    match others.copied().find(|other| *other != own) {
        Some(by) => Err(LifeRejection::TagWorn { tag: tag.trim().to_owned(), by }.into()),
        None => Ok(()),
    }
}
