//! The book as one JSON document, to hand from phone to phone.
//!
//! Reading checks everything before anything is used: size, form, version, count, digest, each entry. The digest is
//! taken over the entries without white space, so a file may be laid out by another tool and still be whole. It tells
//! of damage, not of malice.
//!
//! The digest tells of damage, not of malice.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::fmt::Write as _;

use serde::Deserialize;
use serde_json::value::RawValue;
use sha2::{Digest, Sha256};

use super::entry::pieces;
use super::{Book, DeviceId, Entry, EntryId};
use crate::sanitize::told;
use crate::units::Moment;

/// What the field `format` says.
pub const FORMAT: &str = "yeanling-book";

/// The version of the form that is written here, and the latest that can be read.
pub const VERSION: u64 = 1;

/// The most bytes a book file may have: 40 million, some 150,000 entries.
pub const MOST_BYTES: usize = 40_000_000;

/// The most bytes of one entry: with what stands around it, it must fit a file when it is written again.
pub const MOST_ENTRY: usize = MOST_BYTES - 10_000;

/// A book file that was read and found whole.
#[derive(Clone, Debug, PartialEq)]
pub struct BookFile {
    /// When it was written.
    pub made: Moment,
    /// The phone that wrote it.
    pub device: DeviceId,
    /// What was noted.
    pub entries: Vec<Entry>,
}

/// Why a file is no book that can be taken in.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum FileError {
    /// There is nothing in it.
    #[error("the file is empty")]
    Empty,
    /// It is larger than any book.
    #[error("the file has {bytes} bytes, at most {most} are read")]
    TooLarge {
        /// How many bytes it has.
        bytes: usize,
        /// How many are allowed.
        most: usize,
    },
    /// It is no text.
    #[error("the file is not UTF-8 text")]
    NotText,
    /// It starts well and then stops.
    #[error("the file is cut short at line {line}")]
    CutShort {
        /// The line where it stops.
        line: usize,
    },
    /// It is no JSON.
    #[error("the file is not JSON: line {line}, column {column}")]
    NotJson {
        /// The line of the first fault.
        line: usize,
        /// The column of the first fault.
        column: usize,
    },
    /// It is JSON, but does not say that it is a book.
    #[error("the file is not a book: {given:?}")]
    OtherFormat {
        /// What it says it is, if it says anything.
        given: Option<String>,
    },
    /// A later version wrote it.
    #[error("the file is of version {given}, known is up to {VERSION}")]
    NewerVersion {
        /// Its version.
        given: u64,
    },
    /// A part of the document is missing or of another kind.
    #[error("the part {part:?} is missing or wrong")]
    Part {
        /// Which part.
        part: &'static str,
    },
    /// The number of entries is not what it says.
    #[error("the file says {said} entries and has {found}")]
    Count {
        /// How many it says.
        said: u64,
        /// How many it has.
        found: usize,
    },
    /// The entries are not those it was written with.
    #[error("the digest does not match the entries")]
    Digest,
    /// An entry cannot be read.
    #[error("entry {number}: {why}")]
    Entry {
        /// Which, counted from 1.
        number: usize,
        /// What is wrong, for a developer.
        why: String,
    },
    /// Two entries of one id differ.
    #[error("entry {number} repeats an id with other content")]
    Repeated {
        /// Which, counted from 1.
        number: usize,
    },
}

#[derive(Deserialize)]
struct Parts<'a> {
    #[serde(borrow)]
    format: Option<&'a RawValue>,
    #[serde(borrow)]
    version: Option<&'a RawValue>,
    #[serde(borrow)]
    made: Option<&'a RawValue>,
    #[serde(borrow)]
    device: Option<&'a RawValue>,
    #[serde(borrow)]
    count: Option<&'a RawValue>,
    #[serde(borrow)]
    digest: Option<&'a RawValue>,
    #[serde(borrow)]
    entries: Option<&'a RawValue>,
}

/// Returns the book as one document, however large: an entry a line, by id. What goes to another phone is
/// [`split`](super::split), so that it can be read there.
///
/// The same book, `made` and `device` always give the same bytes.
#[must_use]
pub fn write(book: &Book, made: Moment, device: DeviceId) -> String {
    let lines = book.entries().map(|entry| serde_json::to_string(entry).unwrap_or_default());
    document(lines, made, device)
}

/// Returns a document of entries, each given as it is written.
pub(super) fn document<T: AsRef<str>>(
    all: impl Iterator<Item = T>,
    made: Moment,
    device: DeviceId,
) -> String {
    let (mut lines, mut count) = (String::new(), 0);
    for line in all {
        let _ = write!(lines, "{}{}", if count == 0 { "\n" } else { ",\n" }, line.as_ref());
        count += 1;
    }
    let entries = format!("[{lines}\n]");
    let digest = digest(&entries);
    format!(
        "{{\"format\":\"{FORMAT}\",\"version\":{VERSION},\"made\":\"{made}\",\"device\":\"{device}\",\
         \"count\":{count},\"digest\":\"{digest}\",\"entries\":{entries}}}\n"
    )
}

/// Reads a document, whatever it was called, and returns what was noted in it.
///
/// # Errors
/// The file is not a whole book of a version known here; see [`FileError`].
pub fn read(bytes: &[u8]) -> Result<BookFile, FileError> {
    if bytes.len() > MOST_BYTES {
        return Err(FileError::TooLarge { bytes: bytes.len(), most: MOST_BYTES });
    }
    let text = std::str::from_utf8(bytes).map_err(|error| not_text(bytes, error))?;
    let text = text.trim_start_matches('\u{feff}').trim();
    if text.is_empty() {
        return Err(FileError::Empty);
    }
    let parts = parts(text)?;
    let format: Option<Cow<'_, str>> = value(parts.format);
    if format.as_deref() != Some(FORMAT) {
        return Err(FileError::OtherFormat { given: format.map(|given| told(&given, 60)) });
    }
    let version: u64 = value(parts.version).ok_or(FileError::Part { part: "version" })?;
    if version > VERSION {
        return Err(FileError::NewerVersion { given: version });
    }
    if version == 0 {
        return Err(FileError::Part { part: "version" });
    }
    let made = value(parts.made).ok_or(FileError::Part { part: "made" })?;
    let device = value(parts.device).ok_or(FileError::Part { part: "device" })?;
    let said: u64 = value(parts.count).ok_or(FileError::Part { part: "count" })?;
    let sealed: Cow<'_, str> = value(parts.digest).ok_or(FileError::Part { part: "digest" })?;
    let raw = parts.entries.ok_or(FileError::Part { part: "entries" })?;
    let lines: Vec<&RawValue> = value(Some(raw)).ok_or(FileError::Part { part: "entries" })?;
    if u64::try_from(lines.len()) != Ok(said) {
        return Err(FileError::Count { said, found: lines.len() });
    }
    if digest(raw.get()) != sealed {
        return Err(FileError::Digest);
    }
    Ok(BookFile { made, device, entries: entries(&lines)? })
}

/// Parts the document, going through it once when it is well; what is wrong with it is looked for only when it is not.
fn parts(text: &str) -> Result<Parts<'_>, FileError> {
    if text.starts_with('{')
        && let Ok(parts) = serde_json::from_str(text)
    {
        return Ok(parts);
    }
    let _: &RawValue = serde_json::from_str(text).map_err(|error| not_json(text, &error))?;
    Err(FileError::OtherFormat { given: None })
}

fn entries(lines: &[&RawValue]) -> Result<Vec<Entry>, FileError> {
    let mut entries = Vec::with_capacity(lines.len());
    let mut seen: BTreeMap<EntryId, usize> = BTreeMap::new();
    for (index, line) in lines.iter().enumerate() {
        let number = index + 1;
        if !line.get().starts_with('{') {
            return Err(FileError::Entry { number, why: "not an object".to_owned() });
        }
        if line.get().len() > MOST_ENTRY {
            return Err(FileError::Entry { number, why: "longer than it can be written again".to_owned() });
        }
        let entry: Entry = serde_json::from_str(line.get())
            .map_err(|error| FileError::Entry { number, why: told(&error.to_string(), 200) })?;
        if let Some(earlier) = seen.insert(entry.id, entries.len())
            && entries.get(earlier) != Some(&entry)
        {
            return Err(FileError::Repeated { number });
        }
        entries.push(entry);
    }
    Ok(entries)
}

fn value<'a, T: Deserialize<'a>>(raw: Option<&'a RawValue>) -> Option<T> {
    raw.and_then(|raw| serde_json::from_str(raw.get()).ok())
}

/// A file that stops within a character is cut short; any other fault is no text.
fn not_text(bytes: &[u8], error: std::str::Utf8Error) -> FileError {
    match error.error_len() {
        None => FileError::CutShort { line: 1 + bytes.iter().filter(|byte| **byte == b'\n').count() },
        Some(_) => FileError::NotText,
    }
}

fn not_json(text: &str, error: &serde_json::Error) -> FileError {
    // The JSON reader calls a number that stops at its point, sign or exponent wrong, not short.
    let last = text.rsplit('\n').next().map_or(0, str::len);
    let in_a_number = text.ends_with(['.', '-', '+', 'e', 'E']);
    let at_the_end = error.line() == text.split('\n').count() && error.column() >= last;
    if error.is_eof() || (in_a_number && at_the_end) {
        FileError::CutShort { line: error.line() }
    } else {
        FileError::NotJson { line: error.line(), column: error.column() }
    }
}

/// Returns the digest of entries, whatever white space lies between them.
fn digest(entries: &str) -> String {
    let mut hasher = Sha256::new();
    pieces(entries, |piece| hasher.update(piece));
    let mut text = String::from("sha256-");
    for byte in hasher.finalize() {
        let _ = write!(text, "{byte:02x}");
    }
    text
}
