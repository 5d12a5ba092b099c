//! The second copy of the book: local storage, one key an entry. It is read at once, so the first paint need not wait.
//!
//! Browsers write it out seconds late, so it never decides whether an entry is saved. A line that cannot be read is
//! left where it is and reported.

use gloo_storage::{LocalStorage, Storage, errors::StorageError};
use wasm_bindgen::{JsCast, closure::Closure};
use yeanling_core::book::{Entry, EntryId};

use super::window;

const ENTRY: &str = "yeanling/entry/";

/// What a copy held.
#[derive(Clone, Debug, Default)]
pub struct Held {
    /// The entries.
    pub entries: Vec<Entry>,
    /// The lines that could not be read, as they are.
    pub broken: Vec<String>,
}

/// Why local storage did not take an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotTaken {
    /// It is full.
    Full,
    /// It cannot be used.
    Refused,
}

/// Says whether local storage can be used; private windows and settings may refuse it.
#[must_use]
pub fn available() -> bool {
    matches!(window().local_storage(), Ok(Some(_)))
}

/// Returns all entries held here.
#[must_use]
pub fn load() -> Held {
    let mut held = Held::default();
    for (key, line) in lines() {
        match serde_json::from_str::<Entry>(&line) {
            Ok(entry) if key_of(entry.id) == key => held.entries.push(entry),
            Ok(_) | Err(_) => held.broken.push(line),
        }
    }
    held
}

/// Keeps an entry.
///
/// # Errors
/// Local storage is full or refused.
pub fn save(entry: &Entry) -> Result<(), NotTaken> {
    if !available() {
        return Err(NotTaken::Refused);
    }
    LocalStorage::set(key_of(entry.id), entry).map_err(|error| match error {
        StorageError::JsError(error) if error.name == "QuotaExceededError" => NotTaken::Full,
        StorageError::JsError(_) | StorageError::SerdeError(_) | StorageError::KeyNotFound(_) => {
            NotTaken::Refused
        }
    })
}

/// Lets the oldest entries go, at most so many; the caller knows that they are safe elsewhere.
pub fn forget_oldest(most: usize) {
    let mut keys: Vec<String> = lines().into_iter().map(|(key, _)| key).collect();
    keys.sort_unstable();
    keys.into_iter().take(most).for_each(LocalStorage::delete);
}

/// Calls `take` with each entry that another tab keeps.
pub fn on_other_tab(take: impl Fn(Entry) + 'static) {
    let listener = Closure::<dyn Fn(web_sys::StorageEvent)>::new(move |event: web_sys::StorageEvent| {
        let ours = event.key().is_some_and(|key| key.starts_with(ENTRY));
        if let Some(line) = event.new_value().filter(|_| ours)
            && let Ok(entry) = serde_json::from_str(&line)
        {
            take(entry);
        }
    });
    let _ = window().add_event_listener_with_callback("storage", listener.as_ref().unchecked_ref());
    listener.forget();
}

fn key_of(id: EntryId) -> String {
    format!("{ENTRY}{id}")
}

fn lines() -> Vec<(String, String)> {
    if !available() {
        return Vec::new();
    }
    let storage = LocalStorage::raw();
    let keys: Vec<String> =
        (0..LocalStorage::length()).filter_map(|index| storage.key(index).ok().flatten()).collect();
    keys.into_iter()
        .filter(|key| key.starts_with(ENTRY))
        .filter_map(|key| storage.get_item(&key).ok().flatten().map(|line| (key, line)))
        .collect()
}
