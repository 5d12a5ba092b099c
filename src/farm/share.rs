//! The book from phone to phone: written as a file, taken in.

use chrono::{Datelike, Timelike};
use yeanling_core::book::{self, DeviceId, Entry, MOST_BYTES};
use yeanling_core::units::{Moment, TimeDelta};

use yeanling_pages::Incoming;
pub use yeanling_pages::phone::Outgoing;
use yeanling_pages::phone::Unsent;

use super::{Farm, Records};
use crate::browser::files::{self, FileTrouble};
use crate::browser::{now, press, shared};
use leptos::prelude::*;

/// The media type of a book file: the only one that every share sheet passes.
pub(super) const PLAIN: &str = "text/plain";

/// The media type of a calendar file.
const CALENDAR: &str = "text/calendar";

/// The media type of a table.
const TABLE: &str = "text/csv";

/// How long a book with new births in it may stay on one phone before it is said: a lost phone is a lost book.
const STAYS_FOR: TimeDelta = TimeDelta::days(3);

impl Farm {
    /// Takes a book that was read into this phone's own: everything that is new in it, in one piece. Whoever looked round
    /// in the sample flock is back in their own.
    pub fn take_in(self, incoming: &Incoming) {
        let fresh =
            |entry: &Entry| self.real.with_untracked(|records| records.book.entry(entry.id).is_none());
        let all = &incoming.file.entries;
        let entries: Vec<Entry> = all.iter().filter(|entry| fresh(entry)).cloned().collect();
        let keeping = (!entries.is_empty()).then(|| self.begin_keeping(entries));
        press::ground_moves();
        self.stop_looking_round();
        self.real.update(|records| records.take(all.clone()));
        self.clock.set(now::now());
        if let Some(keeping) = keeping {
            self.go_on_keeping(keeping);
        }
    }

    /// Shares files, each with its name, through the phone's share sheet.
    ///
    /// # Errors
    /// The sheet was closed, or the browser cannot.
    pub async fn share(self, all: &[(String, String)]) -> Result<(), FileTrouble> {
        files::share(all, PLAIN).await
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

/// Returns a book as it goes out; none while nothing is noted in it.
pub(super) fn written(records: &Records, device: DeviceId) -> Option<Outgoing> {
    let now = now::now();
    let farm = records.flock.settings.farm_name.chars();
    let name: String = farm.map(|c| if c.is_alphanumeric() { c.to_ascii_lowercase() } else { '-' }).collect();
    let name = if name.is_empty() { "yeanling".to_owned() } else { name };
    let written = book::split(&records.book, now, device);
    let count = written.len();
    let named = written
        .into_iter()
        .enumerate()
        .map(|(index, file)| (file_name(&name, now, index + 1, count, file.years), file.text));
    let up_to = records.book.next_noted(now);
    (!records.book.is_empty()).then(|| Outgoing { files: named.collect(), up_to })
}

/// Returns how many births are on this phone alone, as a memo. To count them is a look at every birth: done with a birth
/// and once an hour, not with every tap.
pub(super) fn unsent_memo(
    real: RwSignal<Records>,
    sample: RwSignal<Option<Records>>,
    clock: RwSignal<Moment>,
    sent: RwSignal<Option<Moment>>,
    device: DeviceId,
) -> Memo<Option<Unsent>> {
    let births = Memo::new(move |_| real.with(|records| records.flock.lambs.len()));
    let hour = Memo::new(move |_| clock.get().as_unix_milliseconds().div_euclid(3_600_000));
    Memo::new(move |_| {
        births.get();
        hour.get();
        let sent = sent.get();
        if sample.with(Option::is_some) {
            return None;
        }
        real.with_untracked(|records| {
            let born = records.flock.lambs.keys().filter_map(|lamb| records.book.entry(lamb.entry()));
            // What another phone noted came here in a file, and so is not on this phone alone.
            let own = born.filter(|entry| entry.device == device);
            unsent(own.map(|entry| entry.noted), sent, now::now())
        })
    })
}

async fn give(name: &str, text: &str, media: &str) -> Result<(), FileTrouble> {
    match files::share(&[(name.to_owned(), text.to_owned())], media).await {
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

/// The name of a file: of several, which it is and which years it holds: "fold-2026-02-25-0312-2-of-3-2024-2025.json.txt".
fn file_name(farm: &str, now: Moment, number: usize, of: usize, years: Option<(i32, i32)>) -> String {
    let stamp = stamp(now);
    if of == 1 {
        return format!("{farm}-{stamp}.json.txt");
    }
    let years = years.map_or_else(String::new, |(first, last)| {
        if first == last { format!("-{first}") } else { format!("-{first}-{last}") }
    });
    format!("{farm}-{stamp}-{number}-of-{of}{years}.json.txt")
}

/// Returns how many of the births and for how long, given as when they were noted, came after the book was last sent, if that is long
/// ago; for a book never sent, if the first birth is.
fn unsent(births: impl Iterator<Item = Moment>, sent: Option<Moment>, now: Moment) -> Option<Unsent> {
    let new: Vec<Moment> = births.filter(|noted| sent.is_none_or(|sent| *noted > sent)).collect();
    let since = sent.or_else(|| new.iter().min().copied())?;
    let age = now.since(since);
    (!new.is_empty() && age >= STAYS_FOR).then_some(Unsent { births: new.len(), days: age.num_days() })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(days: i64) -> Moment {
        Moment::from_unix_milliseconds(days * 86_400_000, 0)
    }

    #[track_caller]
    fn check(births: &[i64], sent: Option<i64>, now: i64, expected: Option<(usize, i64)>) {
        let expected = expected.map(|(births, days)| Unsent { births, days });
        assert_eq!(unsent(births.iter().map(|days| day(*days)), sent.map(day), day(now)), expected);
    }

    #[test]
    fn a_file_of_several_says_which_it_is() {
        let name = |number, of, years| file_name("fold", day(0), number, of, years);
        assert_eq!(name(1, 1, Some((2024, 2026))), "fold-1970-01-01-0000.json.txt");
        assert_eq!(name(1, 2, Some((2024, 2025))), "fold-1970-01-01-0000-1-of-2-2024-2025.json.txt");
        assert_eq!(name(2, 2, Some((2026, 2026))), "fold-1970-01-01-0000-2-of-2-2026.json.txt");
    }

    #[test]
    fn a_book_with_new_births_is_missed_elsewhere_after_three_days() {
        check(&[], None, 90, None);
        check(&[10, 12], None, 12, None);
        check(&[10, 12], None, 13, Some((2, 3)));
        check(&[10, 12], None, 30, Some((2, 20)));
        check(&[10, 12], Some(13), 90, None);
        check(&[10, 14, 15], Some(13), 15, None);
        check(&[10, 14, 15], Some(13), 16, Some((2, 3)));
    }
}
