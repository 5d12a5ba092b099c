//! A book that outgrows one file, as several: each whole and readable by itself, all of them together the book.
//!
//! What is written must be readable: a file never has more bytes than [`read`](super::read) takes, whatever the book.

use chrono::Datelike;

use super::file::{MOST_BYTES, document};
use super::{Book, DeviceId, Entry};
use crate::sort_small::SortSmall;
use crate::units::Moment;

/// The most bytes of a file that is written, as long as it has more than one entry: the book is split beyond.
pub const MOST_WRITTEN: usize = 30_000_000;

/// From so many bytes on, the person is told that the book nears the size at which it is split.
pub const SPEAK_FROM: usize = 20_000_000;

const _: () = assert!(SPEAK_FROM < MOST_WRITTEN && MOST_WRITTEN < MOST_BYTES);

/// One file of a book, as it is written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    /// The sheep years it holds, the first and the last, each by the year in which it ends; none for an empty book.
    pub years: Option<(i32, i32)>,
    /// The document.
    pub text: String,
}

/// Returns the book as files, one as long as it fits, each of which [`read`](super::read) takes.
///
/// The same book, `made` and `device` always give the same bytes.
#[must_use]
pub fn split(book: &Book, made: Moment, device: DeviceId) -> Vec<Written> {
    split_within(MOST_WRITTEN, book, made, device)
}

/// Returns the book as files of at most so many bytes each, or of a single entry; cut between seasons where one fits.
#[must_use]
pub fn split_within(most: usize, book: &Book, made: Moment, device: DeviceId) -> Vec<Written> {
    let mut lines: Vec<Line<'_>> = book.entries().map(Line::of).collect();
    let around = document(std::iter::empty::<&str>(), made, device).len() + DIGITS;
    let room = most.saturating_sub(around);
    if size(&lines) <= room {
        return vec![file(&lines, made, device)];
    }
    lines.sort_small_by_key(|line| (line.year, line.entry.noted, line.entry.id));
    let mut parts: Vec<Vec<Line<'_>>> = Vec::new();
    for season in lines.chunk_by(|one, other| one.year == other.year) {
        for piece in pieces(season, room) {
            match parts
                .last_mut()
                .filter(|last| size(last) + size(piece) <= room && piece.len() == season.len())
            {
                Some(last) => last.extend(piece.iter().cloned()),
                None => parts.push(piece.to_vec()),
            }
        }
    }
    for part in &mut parts {
        part.sort_small_by_key(|line| line.entry.id);
    }
    parts.iter().map(|part| file(part, made, device)).collect()
}

/// How many digits the count of entries may have.
const DIGITS: usize = 20;

/// An entry as it is written.
#[derive(Clone)]
struct Line<'a> {
    entry: &'a Entry,
    /// The sheep year in which it was noted, by the year in which that ends.
    year: i32,
    text: String,
}

impl<'a> Line<'a> {
    fn of(entry: &'a Entry) -> Self {
        let day = entry.noted.local().date();
        // From July to June: lambs of the north come in its later half, those of the south in its earlier (ours).
        let year = day.year() + i32::from(day.month() >= 7);
        Self { entry, year, text: serde_json::to_string(entry).unwrap_or_default() }
    }

    /// Its bytes with the comma and the end of line before it.
    const fn size(&self) -> usize {
        self.text.len() + 2
    }
}

fn size(lines: &[Line<'_>]) -> usize {
    lines.iter().map(Line::size).sum()
}

/// Cuts lines so that each piece fits, or is one line.
fn pieces<'l, 'a>(lines: &'l [Line<'a>], room: usize) -> Vec<&'l [Line<'a>]> {
    let (mut pieces, mut from, mut bytes) = (Vec::new(), 0, 0);
    for (index, line) in lines.iter().enumerate() {
        if index > from && bytes + line.size() > room {
            pieces.push(&lines[from..index]);
            (from, bytes) = (index, 0);
        }
        bytes += line.size();
    }
    pieces.push(&lines[from..]);
    pieces
}

fn file(lines: &[Line<'_>], made: Moment, device: DeviceId) -> Written {
    let years = lines.iter().map(|line| line.year);
    let years = years.clone().min().zip(years.max());
    let text = document(lines.iter().map(|line| line.text.as_str()), made, device);
    Written { years, text }
}
