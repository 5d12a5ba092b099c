//! The book from phone to phone: written as a file, previewed, taken in. A preview changes nothing.

use chrono::{Datelike, Timelike};
use yeanling_core::book::{self, Entry, FileError, MOST_BYTES};
use yeanling_core::flock::fold;
use yeanling_core::units::Moment;

use super::{Farm, Preview};
use crate::browser::files::{self, FileTrouble};
use crate::browser::{now, shared};

/// The media type of a book file: the only one that every share sheet passes.
pub(super) const PLAIN: &str = "text/plain";

/// The media type of a calendar file.
const CALENDAR: &str = "text/calendar";

/// The media type of a table.
const TABLE: &str = "text/csv";

impl Farm {
    /// Returns the book as a file: its name and its text.
    #[must_use]
    pub fn book_file(self) -> (String, String) {
        let now = now::now();
        let farm = self.peek(|ground| ground.flock.practice.farm_name.clone());
        let name: String =
            farm.chars().map(|c| if c.is_alphanumeric() { c.to_ascii_lowercase() } else { '-' }).collect();
        let name = if name.is_empty() { "yeanling".to_owned() } else { name };
        let text = self.peek(|ground| book::write(&ground.book, now, self.device));
        (format!("{name}-{}.json.txt", stamp(now)), text)
    }

    /// Reads a book file and says what taking it in would add. Nothing changes.
    ///
    /// # Errors
    /// The file is no whole book.
    pub fn preview(self, bytes: &[u8]) -> Result<Preview, FileError> {
        let file = book::read(bytes)?;
        let (book, merged) = self.peek(|ground| ground.book.with(file.entries.iter().cloned()));
        let flock = fold(&book);
        let (ewes, lambs) = self.peek(|ground| (ground.flock.ewes.len(), ground.flock.lambs.len()));
        Ok(Preview {
            ewes: flock.ewes.len().saturating_sub(ewes),
            lambs: flock.lambs.len().saturating_sub(lambs),
            file,
            merged,
            flock,
        })
    }

    /// Takes a previewed file in: everything that is new in it, in one piece.
    pub fn take_in(self, preview: Preview) {
        let fresh = |entry: &Entry| self.peek(|ground| ground.book.entry(entry.id).is_none());
        let entries: Vec<Entry> = preview.file.entries.iter().filter(|entry| fresh(entry)).cloned().collect();
        if self.looks_round() {
            self.made_up.update(|ground| {
                if let Some(ground) = ground {
                    ground.take(preview.file.entries);
                }
            });
            return;
        }
        self.real.update(|ground| ground.take(preview.file.entries));
        self.clock.set(now::now());
        if !entries.is_empty() {
            self.keep(entries);
        }
    }

    /// Shares a file through the phone's share sheet.
    ///
    /// # Errors
    /// The sheet was closed, or the browser cannot.
    pub async fn share(self, name: &str, text: &str) -> Result<(), FileTrouble> {
        files::share(name, text, PLAIN).await
    }

    /// Hands a calendar file to the phone, by its share sheet where that takes one, else among its downloads.
    ///
    /// # Errors
    /// The sheet was closed, or the browser failed.
    pub async fn give_calendar(self, name: &str, text: &str) -> Result<(), FileTrouble> {
        give(name, text, CALENDAR).await
    }

    /// Hands a table to the phone, by its share sheet where that takes one, else among its downloads.
    ///
    /// # Errors
    /// The sheet was closed, or the browser failed.
    pub async fn give_table(self, name: &str, text: &str) -> Result<(), FileTrouble> {
        give(name, text, TABLE).await
    }

    /// Returns the file that was shared to the app, or waits for one that is opened with it.
    ///
    /// # Errors
    /// It is larger than a book may be.
    pub async fn handed_in(self) -> Result<Option<Vec<u8>>, FileTrouble> {
        match shared::take(MOST_BYTES).await {
            Ok(None) => shared::opened(MOST_BYTES).await,
            found => found,
        }
    }
}

async fn give(name: &str, text: &str, media: &str) -> Result<(), FileTrouble> {
    match files::share(name, text, media).await {
        Err(FileTrouble::CannotShare) => files::save(name, text, media),
        other => other,
    }
}

/// The day and the time for a file's name: "2026-02-25-0312".
fn stamp(now: Moment) -> String {
    let local = now.local();
    let (hour, minute) = (local.hour(), local.minute());
    format!("{:04}-{:02}-{:02}-{hour:02}{minute:02}", local.year(), local.month(), local.day())
}
