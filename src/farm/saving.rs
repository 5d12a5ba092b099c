//! How the book is kept: the two copies joined at the start, each entry saved, and what went wrong said.

pub use yeanling_pages::phone::Saving;

use std::collections::BTreeSet;
use std::pin::Pin;
use std::task::{Context, Poll, Waker};
use std::time::Duration;

use leptos::prelude::*;
use leptos::task::spawn_local;
use yeanling_core::book::{Book, Entry, EntryId};
use yeanling_core::sort_small::{Gather, SortSmall};

use super::Farm;
use crate::browser::persistence::Kept;
use crate::browser::{local_storage, now, press};

/// How long the disk may take before the book is said to be less safe than it should be.
const PATIENCE: Duration = Duration::from_secs(5);

/// What is on its way to the disk.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct PendingWrites {
    /// How many entries.
    entries: usize,
    /// How often the disk has answered, so that its silence is told from many quick answers.
    answers: usize,
}

/// Entries that are in both copies as far as they will be, and what says so.
pub(super) struct Keeping {
    count: usize,
    saving: Pin<Box<dyn Future<Output = Kept>>>,
}

impl Farm {
    /// Says whether what was noted is on the disk.
    #[must_use]
    pub fn saving(self) -> Saving {
        self.saving.get()
    }

    /// Returns the lines of either copy that could not be read.
    #[must_use]
    pub fn broken(self) -> Vec<String> {
        self.broken.with(|broken| broken.iter().map(|broken| broken.line.clone()).collect())
    }

    /// Returns how many of them stand for an entry that neither copy has whole.
    #[must_use]
    pub fn lost_lines(self) -> usize {
        let whole = |key: &str| {
            let id = key.parse::<EntryId>().ok();
            id.is_some_and(|id| self.real.with(|records| records.book.entry(id).is_some()))
        };
        self.broken.with(|broken| broken.iter().filter(|broken| !whole(&broken.key)).count())
    }

    pub(super) fn join_base(self) {
        let keeper = self.keeper.get_value();
        let here = self.book();
        self.warn_of_silence();
        spawn_local(async move {
            let opened = keeper.open(&here).await;
            self.pending_writes.update_value(|pending_writes| pending_writes.answers += 1);
            match opened {
                Ok(held) => {
                    let known: BTreeSet<EntryId> = held.entries.iter().map(|entry| entry.id).gathered();
                    let news: Vec<Entry> =
                        held.entries.into_iter().filter(|entry| here.entry(entry.id).is_none()).collect();
                    if !news.is_empty() {
                        press::ground_moves();
                        self.real.update(|records| records.take(news));
                    }
                    self.broken.update(|broken| {
                        broken.extend(held.broken);
                        broken.sort_small();
                        broken.dedup();
                    });
                    self.saving.set(Saving::Saved(None));
                    // What was noted while the database opened waits in local storage; saving twice does no harm.
                    let all = self.book();
                    let waiting: Vec<Entry> = all
                        .entries()
                        .filter(|entry| here.entry(entry.id).is_none() && !known.contains(&entry.id))
                        .cloned()
                        .collect();
                    if !waiting.is_empty() {
                        let keeping = self.begin_keeping(waiting);
                        self.go_on_keeping(keeping);
                    }
                }
                Err(error) => self.saving.set(poorly(Some(error.0))),
            }
        });
    }

    /// Erases both copies of this phone's own book, and all else that is kept here.
    ///
    /// # Errors
    /// The browser failed; what it said. Local storage then has what it had.
    pub(super) async fn erase(self) -> Result<(), String> {
        self.keeper.get_value().erase().await.map_err(|error| error.0)
    }

    /// Puts entries into both copies: on return local storage has them and the transaction of IndexedDB is open. Nothing
    /// is drawn yet, so that whatever breaks there loses nothing.
    pub(super) fn begin_keeping(self, entries: Vec<Entry>) -> Keeping {
        let keeper = self.keeper.get_value();
        let count = entries.len();
        let mut saving: Pin<Box<dyn Future<Output = Kept>>> =
            Box::pin(async move { keeper.save(entries, || self.book()).await });
        // A future does nothing until it is first asked; whoever waits for it then asks again.
        let first = saving.as_mut().poll(&mut Context::from_waker(Waker::noop()));
        let saving = match first {
            Poll::Ready(kept) => Box::pin(std::future::ready(kept)),
            Poll::Pending => saving,
        };
        Keeping { count, saving }
    }

    /// Follows entries until they are kept, and says how that goes.
    pub(super) fn go_on_keeping(self, Keeping { count, saving }: Keeping) {
        self.pending_writes.update_value(|pending_writes| pending_writes.entries += count);
        self.saving.set(Saving::Under(self.pending_writes.get_value().entries));
        self.warn_of_silence();
        spawn_local(async move {
            let kept = saving.await;
            let waits = matches!(kept, Kept::Waiting);
            self.pending_writes.update_value(|pending_writes| {
                pending_writes.entries -= count;
                pending_writes.answers += usize::from(!waits);
            });
            let left = self.pending_writes.get_value().entries;
            self.saving.set(match kept {
                Kept::Waiting => Saving::Opening,
                Kept::LocalOnly(said) => Saving::Poorly { memory_only: false, said: Some(said) },
                Kept::MemoryOnly(said) => Saving::Poorly { memory_only: true, said: Some(said) },
                Kept::Safe if left > 0 => Saving::Under(left),
                Kept::Safe => {
                    self.ask_in_time();
                    Saving::Saved(Some(now::now()))
                }
            });
        });
    }

    /// Says that the book is kept poorly if the disk has not answered once after a while.
    fn warn_of_silence(self) {
        let answers = self.pending_writes.get_value().answers;
        let warn = move || {
            let waits = matches!(untrack(|| self.saving()), Saving::Opening | Saving::Under(_));
            if waits && self.pending_writes.get_value().answers == answers {
                self.saving.set(poorly(None));
            }
        };
        set_timeout(warn, PATIENCE);
    }

    fn book(self) -> Book {
        self.real.with_untracked(|records| records.book.clone())
    }
}

/// The book without IndexedDB: in local storage, or in memory where that is refused too.
fn poorly(said: Option<String>) -> Saving {
    Saving::Poorly { memory_only: !local_storage::available(), said }
}
