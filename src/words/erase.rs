//! Erasing this phone's book.

use super::share::count;

/// The screen's name.
pub const TITLE: &str = "Erase this book";
/// What is there, where it is offered.
pub const ABOUT: &str = "Empties this phone, once you have a backup";
/// Says that there is nothing.
pub const NOTHING: &str = "Nothing is noted on this phone.";
/// Says that it was never backed up.
pub const NO_BACKUP: &str = "*It was never backed up.* Back it up first.";
/// The first question.
pub const ERASE: &str = "Erase";
/// The second question.
pub const SURE: &str = "*This cannot be undone.* Everything noted on this phone goes: every animal, every entry. Other phones keep theirs.";
/// Keeps it.
pub const KEEP: &str = "Keep the book";
/// Does it.
pub const ERASE_ALL: &str = "Erase everything";

/// Returns what would go: "12 ewes, 24 lambs and 841 entries are on this phone."
pub fn what(ewes: usize, lambs: usize, entries: usize) -> String {
    format!(
        "{}, {} and {} are on this phone.",
        count(ewes, "ewe", "ewes"),
        count(lambs, "lamb", "lambs"),
        count(entries, "entry", "entries")
    )
}

/// Returns when it was backed up last.
pub fn backed_up(when: &str) -> String {
    format!("Last backup {when}. What was noted since is in no backup.")
}

/// Returns that it did not go.
pub fn not_erased(said: &str) -> String {
    format!("Not erased: the browser says “{said}”. Close other tabs of Yeanling and try again.")
}
