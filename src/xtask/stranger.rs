//! How long a file of 20 MB from a stranger can hold up a phone's reader, whatever is in it.
use std::fmt::Write as _;
use std::time::Duration;

use anyhow::{Result, ensure};
use uuid::Uuid;
use yeanling_core::book::{self, Animal, Book, Entry, EntryId, Event};
use yeanling_core::units::Moment;

use crate::load_ratio::{file, opened};
use crate::quickest::quickest;
use crate::sample_book::device;

/// The size of each file.
const BYTES: usize = 20_000_000;

/// Returns the longest that any of these files takes until it is refused or opened.
pub(crate) fn stranger() -> Result<Duration> {
    let mut longest = Duration::ZERO;
    for text in files() {
        ensure!(text.len() > BYTES * 9 / 10 && text.len() < BYTES * 11 / 10, "{} bytes", text.len());
        longest = longest.max(quickest(2, || opened(&text)));
    }
    Ok(longest)
}

/// Files of that size: a whole book, one of records joined in one long chain, one of a single fact, and what is no book.
fn files() -> Vec<String> {
    let mut headed = String::from("{\"format\":\"yeanling-book\",\"version\":1,\"entries\":[");
    while headed.len() < BYTES {
        let _ = write!(headed, "{{}},");
    }
    vec![
        file(BYTES / 265),
        chained(true),
        chained(false),
        "[".repeat(BYTES),
        "{\"a\":".repeat(BYTES / 5),
        format!("\"{}\"", "\\u202e".repeat(BYTES / 6)),
        headed + "{}]}",
    ]
}

/// A file of records each of which is said to be the next one, upward or downward: hard on a careless fold.
fn chained(up: bool) -> String {
    let moment = Moment::from_unix_milliseconds(1_772_000_000_000, 0);
    let id = |number: u128| EntryId::from_uuid(Uuid::from_u128(number));
    let ewe = |number: u128| Animal::Ewe(id(number).as_ewe());
    let entry = |number: u128| {
        let next = if up { number + 1 } else { number - 1 };
        let event = Event::SameAnimal { keep: ewe(next), also: ewe(number) };
        Entry { id: id(number), device: device(), noted: moment, at: moment, event }
    };
    let book: Book = (1..=BYTES as u128 / 315).map(entry).collect();
    book::write(&book, moment, device())
}
