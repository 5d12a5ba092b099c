//! The book from phone to phone: written as a file, previewed, taken in. A preview changes nothing.

use chrono::{Datelike, Timelike};
use yeanling_core::book::{self, Entry, FileError, MOST_BYTES};
use yeanling_core::flock::fold;
use yeanling_core::units::{Moment, TimeDelta};

use super::{Farm, Preview};
use crate::browser::files::{self, FileTrouble};
use crate::browser::{now, press, shared};

/// The media type of a book file: the only one that every share sheet passes.
pub(super) const PLAIN: &str = "text/plain";

/// The media type of a calendar file.
const CALENDAR: &str = "text/calendar";

/// The media type of a table.
const TABLE: &str = "text/csv";

/// How long a book with new births in it may stay on one phone before it is said: a lost phone is a lost book.
const STAYS_FOR: TimeDelta = TimeDelta::days(3);

impl Farm {
    /// Returns how many births are on this phone alone, once the book has not left it for three days; else none.
    ///
    /// It follows the sending and not the book: all births are looked at, which is too much for every tap.
    #[must_use]
    pub fn unsent_births(self, now: Moment) -> Option<usize> {
        if self.is_made_up() {
            return None;
        }
        let sent = self.sent();
        self.peek(|ground| {
            let born = ground.flock.lambs.keys().filter_map(|lamb| ground.book.entry(lamb.entry()));
            // What another phone noted came here in a file, and so is not on this phone alone.
            let own = born.filter(|entry| entry.device == self.device);
            unsent(own.map(|entry| entry.noted), sent, now)
        })
    }

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
        press::ground_moves();
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

/// Returns how many of the births, given as when they were noted, came after the book was last sent, if that is long
/// ago; for a book never sent, if the first birth is.
fn unsent(births: impl Iterator<Item = Moment>, sent: Option<Moment>, now: Moment) -> Option<usize> {
    let new: Vec<Moment> = births.filter(|noted| sent.is_none_or(|sent| *noted > sent)).collect();
    let since = sent.or_else(|| new.iter().min().copied())?;
    (!new.is_empty() && now.since(since) >= STAYS_FOR).then_some(new.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(days: i64) -> Moment {
        Moment::from_unix_milliseconds(days * 86_400_000, 0)
    }

    #[track_caller]
    fn check(births: &[i64], sent: Option<i64>, now: i64, expected: Option<usize>) {
        assert_eq!(unsent(births.iter().map(|days| day(*days)), sent.map(day), day(now)), expected);
    }

    #[test]
    fn a_book_with_new_births_is_missed_elsewhere_after_three_days() {
        check(&[], None, 90, None);
        check(&[10, 12], None, 12, None);
        check(&[10, 12], None, 13, Some(2));
        check(&[10, 12], Some(13), 90, None);
        check(&[10, 14, 15], Some(13), 15, None);
        check(&[10, 14, 15], Some(13), 16, Some(2));
    }
}
