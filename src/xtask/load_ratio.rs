//! What it costs to open a book file, against reading the same bytes as plain JSON.
//!
//! Opening is all that is done before a book is shown: read, checked to its digest, put in order, folded to the flock.
use anyhow::{Result, bail};
use yeanling_core::book::{self, Book};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::units::Moment;

use crate::quickest::ratio;
use crate::sample_book::{book as sample, device};

/// Entries in the file: some five seasons of 500 ewes.
const ENTRIES: usize = 20_000;
/// How often either is done.
const RUNS: usize = 15;

/// Returns the time for the book over the time that serde_json takes for a `Value` of the same bytes.
pub(crate) fn load_ratio() -> Result<f64> {
    let text = file(ENTRIES);
    if opened(&text)?.lines.is_empty() {
        bail!("an empty flock was opened");
    }
    Ok(ratio(RUNS, || opened(&text), || serde_json::from_slice::<serde_json::Value>(text.as_bytes())))
}

/// Returns a book of so many entries as its file.
pub(crate) fn file(entries: usize) -> String {
    book::write(&sample(entries), Moment::from_unix_milliseconds(1_772_000_000_000, 0), device())
}

/// Opens a book file.
pub(crate) fn opened(text: &str) -> Result<Flock> {
    let file = book::read(text.as_bytes())?;
    let book: Book = file.entries.into_iter().collect();
    Ok(fold(&book))
}
