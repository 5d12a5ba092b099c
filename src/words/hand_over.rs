//! Sending the book and taking one in.

use yeanling_core::book::{FileError, MOST_BYTES};

/// The screen's name.
pub(crate) const TITLE: &str = "Hand over";
/// What the screen is for.
pub(crate) const SUB: &str = "Two phones, one book: send it as a file, take the other one in.";
/// Heads the way out.
pub(crate) const SEND: &str = "Send this book";
/// Shares the file.
pub(crate) const SHARE: &str = "Share the book";
/// Saves the file.
pub(crate) const SAVE: &str = "Save as a file";
/// Heads the way in.
pub(crate) const TAKE: &str = "Take a book in";
/// Picks a file.
pub(crate) const OPEN: &str = "Open a book file";
/// Explains the way in.
pub(crate) const TAKE_SUB: &str = "You see what it would add before anything changes.";
/// Heads the preview.
pub(crate) const PREVIEW: &str = "This file would add";
/// Takes it in.
pub(crate) const MERGE: &str = "Add to my book";
/// Leaves it.
pub(crate) const LEAVE: &str = "Leave it";
/// Says that nothing is new in it.
pub(crate) const NOTHING_NEW: &str = "Everything in this file is in your book already.";
/// Heads the keeping.
pub(crate) const KEPT: &str = "How it is kept";
/// Offers lines that could not be read.
pub(crate) const SAVE_BROKEN: &str = "Save the unread lines";
/// Joins two records.
pub(crate) const SAME: &str = "Same ewe";
/// Keeps two records apart.
pub(crate) const NOT_SAME: &str = "Two ewes";

/// Returns how many of something: "1 ewe", "3 ewes".
pub(crate) fn count(count: usize, one: &str, many: &str) -> String {
    format!("{count} {}", if count == 1 { one } else { many })
}

/// Returns what became of it once it was taken in.
pub(crate) fn taken_in(entries: usize) -> String {
    format!("Done. {} added.", count(entries, "entry", "entries"))
}

/// Returns what a clash is.
pub(crate) fn clashes(clashes: usize) -> String {
    format!(
        "{} in it carry an id of yours with other content: the file is damaged or was changed by hand. Yours stay \
         as they are, theirs are set aside.",
        count(clashes, "entry", "entries")
    )
}

/// Returns the question when both books have a ewe of one tag.
pub(crate) fn same_tag(tag: &str) -> String {
    format!("There are two records of a ewe *{tag}*. Are they the same ewe?")
}

/// Returns what is wrong with a file, and what to do. Nothing has changed.
pub(crate) fn file_error(error: &FileError) -> String {
    let (wrong, todo) = match error {
        FileError::Empty => ("The file is empty.".to_owned(), SEND_AGAIN),
        FileError::TooLarge { bytes, most } => (
            format!(
                "The file has {}, more than the {} that a book can have.",
                megabytes(*bytes),
                megabytes(*most)
            ),
            "Pick a book file, usually far smaller.",
        ),
        FileError::NotText => ("The file is no text, so it is no book.".to_owned(), PICK),
        FileError::CutShort { line } => {
            (format!("The file is cut short: it stops in line {line}."), SEND_AGAIN)
        }
        FileError::NotJson { line, column } => (
            format!("The file is no book: line {line}, character {column} is not what a book has there."),
            PICK,
        ),
        FileError::OtherFormat { given: Some(given) } => {
            (format!("The file says it is “{given}”, not a book of Yeanling."), PICK)
        }
        FileError::OtherFormat { given: None } => {
            ("The file does not say that it is a book of Yeanling.".to_owned(), PICK)
        }
        FileError::NewerVersion { given } => (
            format!(
                "The file is of version {given}; this Yeanling reads up to version {}.",
                yeanling_core::book::VERSION
            ),
            "Open Yeanling once with a network so that it can update, then try again.",
        ),
        FileError::Part { part } => {
            (format!("The part “{part}” of the file is missing or wrong."), SEND_AGAIN)
        }
        FileError::Count { said, found } => {
            (format!("The file says it has {said} entries and has {found}: it is damaged."), SEND_AGAIN)
        }
        FileError::Digest => (
            "The entries are not the ones this file was written with: it is damaged or was changed."
                .to_owned(),
            SEND_AGAIN,
        ),
        FileError::Entry { number, .. } => {
            (format!("Entry {number} of the file cannot be read."), SEND_AGAIN)
        }
        FileError::Repeated { number } => {
            (format!("Entry {number} of the file comes twice with other content."), SEND_AGAIN)
        }
    };
    format!("{wrong} Nothing was changed. {todo}")
}

const SEND_AGAIN: &str = "Ask for the file to be sent again.";
const PICK: &str = "Pick a file that was sent from Hand over, its name ends in .json.txt or .json.";

/// Returns what is wrong with a file that is too large to be read at all.
pub(crate) fn too_large(bytes: f64) -> String {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a file's size is whole and positive"
    )]
    file_error(&FileError::TooLarge { bytes: bytes as usize, most: MOST_BYTES })
}

fn megabytes(bytes: usize) -> String {
    let tenths = bytes / 100_000;
    format!("{}.{} MB", tenths / 10, tenths % 10)
}
