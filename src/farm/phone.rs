//! What is this phone's alone and stays out of the book: its look, its files, how well it keeps, when it last sent.

use leptos::prelude::*;
use leptos::task::spawn_local;
use yeanling_core::book::{LambId, MOST_BYTES};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_pages::phone::HalfTyped;

use super::Farm;
use crate::browser::draft;
use crate::browser::files::{self, FileTrouble};
use crate::browser::now;
use crate::browser::paper;
use crate::browser::storage::{self, Promised};
use crate::browser::theme::{self, Look};

/// How long a browser that would not promise is left alone.
const ASK_EVERY: TimeDelta = TimeDelta::days(7);

impl Farm {
    /// Returns how this phone looks.
    #[must_use]
    pub fn look(self) -> Look {
        self.look.get()
    }

    /// Chooses how this phone looks.
    pub fn choose_look(self, look: Look) {
        theme::choose(look);
        self.look.set(look);
    }

    /// Returns what was answered about a cold lamb without a record; empty when nothing was.
    #[must_use]
    pub fn cold_lamb(self) -> String {
        self.cold_lamb.get()
    }

    /// Returns how tables were read, by their heads.
    #[must_use]
    pub fn tables(self) -> String {
        self.tables.get()
    }

    /// Keeps how tables were read.
    pub fn keep_tables(self, text: &str) {
        draft::keep_tables(text);
        self.tables.set(text.to_owned());
    }

    /// Keeps what was answered about a cold lamb without a record.
    pub fn keep_cold_lamb(self, text: &str) {
        draft::keep_cold_lamb(text);
        self.cold_lamb.set(text.to_owned());
    }

    /// Keeps the digits of a lamb's birth weight that are not noted yet, or lets them go.
    pub fn keep_digits(self, lamb: LambId, digits: Option<HalfTyped>) {
        self.half_typed.update(|all| match digits {
            Some(digits) => _ = all.insert(lamb, digits),
            None => _ = all.remove(&lamb),
        });
        draft::keep_half_typed(&self.half_typed.with_untracked(HalfTyped::write));
    }

    /// Asks the browser to print the page.
    pub fn print(self) {
        paper::print();
    }

    /// Says whether this phone has a share sheet for files.
    #[must_use]
    pub fn can_share(self) -> bool {
        files::can_share()
    }

    /// Saves a text as a file among the phone's downloads.
    ///
    /// # Errors
    /// The browser failed.
    pub fn save_file(self, name: &str, text: &str) -> Result<(), FileTrouble> {
        files::save(name, text, super::share::PLAIN)
    }

    /// Reads the file picked in the field of this key; nothing picked is `Ok(None)`.
    ///
    /// # Errors
    /// It is larger than a book may be, or cannot be read.
    pub async fn read_picked(self, key: &str) -> Result<Option<Vec<u8>>, FileTrouble> {
        files::read_picked(&format!("field-{key}"), MOST_BYTES).await
    }

    /// Returns up to when what was noted lies elsewhere too: the book was shared then, or someone said that it is safe.
    #[must_use]
    pub fn sent(self) -> Option<Moment> {
        self.sent.get()
    }

    /// Keeps that what was noted up to `at` lies elsewhere too.
    pub fn keep_sent(self, at: Moment) {
        storage::keep_sent(at);
        self.sent.set(Some(at));
    }

    /// Returns up to when the book was saved as a file on this phone, as long as that is more than lies elsewhere: such a
    /// file is lost with the phone.
    #[must_use]
    pub fn saved_here(self) -> Option<Moment> {
        let sent = self.sent.get();
        self.saved_here.get().filter(|saved| sent.is_none_or(|sent| *saved > sent))
    }

    /// Keeps that what was noted up to `at` was saved as a file on this phone.
    pub fn keep_saved_here(self, at: Moment) {
        storage::keep_saved_here(at);
        self.saved_here.set(Some(at));
    }

    /// Says what the browser promises about keeping the book.
    pub async fn promised(self) -> Promised {
        storage::promised().await
    }

    /// Asks the browser to keep the book for good, and says what it answered.
    pub async fn ask_for_good(self) -> Promised {
        storage::ask_for_good().await
    }

    /// Asks the browser to keep the book for good once a lamb is in it, and then every week until it agrees.
    ///
    /// By then the book is worth it, and the browser has seen the app in use, which is what some go by.
    pub(super) fn ask_in_time(self) {
        let now = now::now();
        let lambs = self.real.with_untracked(|records| !records.flock.lambs.is_empty());
        let lately = storage::asked_at().is_some_and(|asked| now.since(asked) < ASK_EVERY && asked <= now);
        if lambs && !lately {
            storage::keep_asked(now);
            spawn_local(async {
                if storage::promised().await == Promised::UntilRoomIsShort {
                    storage::ask_for_good().await;
                }
            });
        }
    }

    /// Returns about how many bytes the app and the book take on this phone, and how many the browser allows.
    pub async fn room(self) -> Option<(f64, f64)> {
        storage::room().await
    }
}
