//! Keeping the book in two copies that heal each other. Since entries never change, the union is always right.
//!
//! Two copies. Local storage is written out seconds late by every browser; IndexedDB with strict durability is not.
//! The first paint comes from the one, the tick from the other.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::rc::Rc;
use std::time::Duration;

use leptos::task::spawn_local;
use yeanling_core::book::{Book, Entry, EntryId};
use yeanling_core::sort_small::Gather;

use super::indexed_db::{self, Base, BaseError};
use super::local_storage::{self, Held, NotTaken};
use super::safety;

/// How many of the oldest entries leave local storage when it is full.
const MAKE_ROOM: usize = 200;

/// The keeper of both copies.
#[derive(Clone, Debug, Default)]
pub struct Keeper {
    base: Rc<RefCell<State>>,
}

/// How far IndexedDB is.
#[derive(Clone, Debug, Default)]
enum State {
    #[default]
    Opening,
    Open(Rc<Base>),
    /// It failed; it is tried again with the next entry.
    Failed,
}

/// How well an entry is kept.
#[derive(Clone, Debug)]
pub enum Kept {
    /// On the disk, in IndexedDB.
    Safe,
    /// In local storage, and waiting for IndexedDB to open: the caller saves it again then.
    Waiting,
    /// In local storage alone: it may lose the last seconds if the phone dies.
    LocalOnly(String),
    /// In this page's memory alone.
    MemoryOnly(String),
}

impl Keeper {
    /// Opens IndexedDB, reads it, and brings either copy what only the other held.
    ///
    /// # Errors
    /// IndexedDB cannot be used; the book then lives in local storage alone.
    pub async fn open(&self, here: &Book) -> Result<Held, BaseError> {
        let opened = open_and_heal(here).await;
        let (state, held) = match opened {
            Ok((base, held)) => (State::Open(Rc::new(base)), Ok(held)),
            Err(error) => (State::Failed, Err(error)),
        };
        safety::opened(held.is_ok(), local_storage::available());
        *self.base.borrow_mut() = state;
        held
    }

    /// Keeps entries that were just noted or taken in, and says how well. By the time it first waits, they lie in local
    /// storage and in an open transaction of IndexedDB, which the browser completes whatever becomes of the app.
    ///
    /// A connection that was lost, by clearing or to a newer version, is opened anew, and all of `book` is seen to.
    pub async fn save(&self, entries: Vec<Entry>, book: impl FnOnce() -> Book) -> Kept {
        let taken = save_locally(&entries);
        let state = self.base.borrow().clone();
        safety::begins(taken.is_ok(), matches!(state, State::Open(_)));
        let saved = match state {
            State::Opening => return safety::ended(Kept::Waiting),
            State::Failed => false,
            State::Open(base) => base.save(&entries).await.is_ok(),
        };
        // The book may not have these entries yet: they are kept first.
        let whole = || book().with(entries.iter().cloned()).0;
        if !saved && let Err(BaseError(said)) = self.open(&whole()).await {
            return safety::ended(not_in_base(taken, &said));
        }
        if taken == Err(NotTaken::Full)
            && let State::Open(base) = self.base.borrow().clone()
        {
            // Local storage is a convenience: with IndexedDB safe, a second refusal costs only the quick first paint.
            // It need not keep the tick waiting either.
            let make_room = move || spawn_local(make_room(base, entries));
            leptos::prelude::set_timeout(make_room, Duration::ZERO);
        }
        safety::ended(Kept::Safe)
    }
}

impl Keeper {
    /// Erases both copies: IndexedDB first, since it alone decides what is saved, then all of ours in local storage.
    ///
    /// # Errors
    /// IndexedDB did not let go of the entries; local storage then has what it had.
    pub async fn erase(&self) -> Result<(), BaseError> {
        let state = self.base.borrow().clone();
        let erased = match state {
            State::Open(base) => base.clear().await.is_ok(),
            State::Opening | State::Failed => false,
        };
        // A connection that was lost is opened anew.
        if !erased {
            indexed_db::open().await?.clear().await?;
        }
        local_storage::clear();
        Ok(())
    }
}

/// Lets the oldest entries leave local storage for these. Only what IndexedDB gives back whole may go: its line may have
/// broken since, and then the one here is the only good copy.
async fn make_room(base: Rc<Base>, entries: Vec<Entry>) {
    if let Ok(whole) = base.whole(local_storage::oldest(MAKE_ROOM)).await {
        local_storage::forget(&whole);
        let _ = save_locally(&entries);
    }
}

async fn open_and_heal(here: &Book) -> Result<(Base, Held), BaseError> {
    let base = indexed_db::open().await?;
    let held = base.load().await?;
    let known: BTreeSet<EntryId> = held.entries.iter().map(|entry| entry.id).gathered();
    // A broken line gives way to its whole entry only once it lies elsewhere.
    let stays = |entry: &Entry| {
        let key = entry.id.to_string();
        held.broken.iter().any(|broken| broken.key == key && !local_storage::set_aside(broken))
    };
    let missing: Vec<Entry> =
        here.entries().filter(|entry| !known.contains(&entry.id) && !stays(entry)).cloned().collect();
    if !missing.is_empty() {
        base.save(&missing).await?;
    }
    // The newest first: they are the ones the first paint wants, should there not be room for all.
    let newest_first = held.entries.iter().rev().filter(|entry| here.entry(entry.id).is_none());
    for entry in newest_first {
        if local_storage::backfill(entry).is_err() {
            break;
        }
    }
    Ok((base, held))
}

fn save_locally(entries: &[Entry]) -> Result<(), NotTaken> {
    entries.iter().try_for_each(local_storage::save)
}

fn not_in_base(taken: Result<(), NotTaken>, said: &str) -> Kept {
    match taken {
        Ok(()) => Kept::LocalOnly(said.to_owned()),
        Err(NotTaken::Full | NotTaken::Refused) => Kept::MemoryOnly(said.to_owned()),
    }
}
