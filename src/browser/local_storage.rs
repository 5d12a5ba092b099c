//! The second copy of the book: local storage, one key an entry. It is read at once, so the first paint need not wait.
//!
//! Browsers write it out seconds late, so it never decides whether an entry is saved. A line that cannot be read is
//! left where it is and reported.
//!
//! Local storage is read as two long texts, all names and all lines: thousands of single readings took longer than
//! all else of a start.

use std::cell::RefCell;
use std::rc::Rc;
use std::time::Duration;

use gloo_storage::{LocalStorage, Storage, errors::StorageError};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use yeanling_core::book::{Entry, EntryId};
use yeanling_core::sort_small::SortSmall;

use super::window;

/// What all names of ours begin with.
const OURS: &str = "yeanling/";

/// Under which name other tabs are told that the book was erased.
const ERASED: &str = "yeanling/erased";

const ENTRY: &str = "yeanling/entry/";

/// Where a line that cannot be read goes when the other copy has its entry whole and takes its place.
const ASIDE: &str = "yeanling/unread/";

/// What a copy held.
#[derive(Clone, Debug, Default)]
pub struct Held {
    /// The entries.
    pub entries: Vec<Entry>,
    /// The lines that could not be read, as they are.
    pub broken: Vec<Broken>,
}

/// A line that could not be read.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Broken {
    /// What it stands under: the id of its entry, as long as that is whole.
    pub key: String,
    /// The line.
    pub line: String,
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
    let broken = |key: &str, line: &str| Broken { key: key.to_owned(), line: line.to_owned() };
    each_line(|name, line| {
        if let Some(key) = name.strip_prefix(ENTRY) {
            match read(key, line) {
                Some(entry) => held.entries.push(entry),
                None => held.broken.push(broken(key, line)),
            }
        } else if let Some(key) = name.strip_prefix(ASIDE) {
            held.broken.push(broken(key, line));
        }
    });
    held
}

/// Puts an entry here that only the other copy held; a broken line in its place is first set aside.
///
/// # Errors
/// Local storage is full or refused; everything is as it was.
pub fn backfill(entry: &Entry) -> Result<(), NotTaken> {
    let key = entry.id.to_string();
    if let Some(line) =
        available().then(|| LocalStorage::raw().get_item(&key_of(entry.id)).ok()).flatten().flatten()
        && read(&key, &line).is_none()
        && !set_aside(&Broken { key, line })
    {
        return Err(NotTaken::Full);
    }
    save(entry)
}

/// Keeps a broken line where nothing takes its place, and says whether there was room.
pub fn set_aside(broken: &Broken) -> bool {
    available() && LocalStorage::raw().set_item(&format!("{ASIDE}{}", broken.key), &broken.line).is_ok()
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

/// Returns the ids of the oldest whole entries, at most so many.
#[must_use]
pub fn oldest(most: usize) -> Vec<String> {
    // Ids grow with time. Only what may go is read: all of a full storage would take longer than a tap may.
    if !available() {
        return Vec::new();
    }
    let names: Vec<String> = names().iter().filter_map(|name| name.as_string()).collect();
    let mut kept: Vec<&str> = names.iter().filter_map(|name| name.strip_prefix(ENTRY)).collect();
    kept.sort_small();
    let line = |key: &str| LocalStorage::raw().get_item(&format!("{ENTRY}{key}")).ok().flatten();
    let is_whole = |key: &&str| line(key).is_some_and(|line| read(key, &line).is_some());
    kept.into_iter().filter(is_whole).take(most).map(str::to_owned).collect()
}

/// Lets entries go that the other copy was just seen to hold whole.
pub fn forget<'a>(ids: impl IntoIterator<Item = &'a String>) {
    if available() {
        ids.into_iter().for_each(|id| LocalStorage::delete(format!("{ENTRY}{id}")));
    }
}

/// How long the entries of another tab may gather before they are taken in, so that a whole book comes in few pieces.
const GATHER: Duration = Duration::from_millis(60);

/// Calls `take` with the entries that another tab keeps: what comes in one burst comes together, since each time may
/// cost a fold of the book.
pub fn on_other_tab(take: impl Fn(Vec<Entry>) + 'static) {
    let (come, take) = (Rc::new(RefCell::new(Vec::new())), Rc::new(take));
    let listener = Closure::<dyn Fn(web_sys::StorageEvent)>::new(move |event: web_sys::StorageEvent| {
        let (key, line) = (event.key().unwrap_or_default(), event.new_value().unwrap_or_default());
        let Some(entry) = key.strip_prefix(ENTRY).and_then(|key| read(key, &line)) else { return };
        let first = come.borrow().is_empty();
        come.borrow_mut().push(entry);
        if first {
            let (come, take) = (Rc::clone(&come), Rc::clone(&take));
            leptos::prelude::set_timeout(move || take(come.take()), GATHER);
        }
    });
    let _ = window().add_event_listener_with_callback("storage", listener.as_ref().unchecked_ref());
    listener.forget();
}

/// Lets all that is ours go, and tells other tabs, which would keep what they hold in memory.
pub fn clear() {
    if available() {
        names().iter().filter_map(|name| name.as_string()).for_each(LocalStorage::delete);
        let _ = LocalStorage::raw().set_item(ERASED, "true");
        LocalStorage::delete(ERASED);
    }
}

/// Calls `then` once another tab has erased the book.
pub fn on_erased(then: impl Fn() + 'static) {
    let listener = Closure::<dyn Fn(web_sys::StorageEvent)>::new(move |event: web_sys::StorageEvent| {
        if event.key().as_deref() == Some(ERASED) && event.new_value().is_some() {
            then();
        }
    });
    let _ = window().add_event_listener_with_callback("storage", listener.as_ref().unchecked_ref());
    listener.forget();
}

fn key_of(id: EntryId) -> String {
    format!("{ENTRY}{id}")
}

/// Returns the entry of a line, if it is one and stands under its own id.
pub(super) fn read(key: &str, line: &str) -> Option<Entry> {
    serde_json::from_str::<Entry>(line).ok().filter(|entry| entry.id.to_string() == key)
}

/// Calls `read` with each name of ours and its line.
fn each_line(mut read: impl FnMut(&str, &str)) {
    if !available() {
        return;
    }
    // All come over as two long texts: one by one, thousands of them take longer than all else that a start does.
    let (storage, names) = (LocalStorage::raw(), names());
    let lines: js_sys::Array =
        names.iter().map(|name| js_sys::Reflect::get(&storage, &name).unwrap_or_default()).collect();
    let (all_names, all_lines) = (String::from(names.join("\n")), String::from(lines.join("\n")));
    let count = names.iter().count();
    if all_names.split('\n').count() == count && all_lines.split('\n').count() == count {
        all_names.split('\n').zip(all_lines.split('\n')).for_each(|(name, line)| read(name, line));
        return;
    }
    // One that is broken runs over several lines.
    for (name, line) in names.iter().zip(lines.iter()) {
        if let (Some(name), Some(line)) = (name.as_string(), line.as_string()) {
            read(&name, &line);
        }
    }
}

/// Returns the names of ours in local storage, as the browser has them; it must be available.
fn names() -> js_sys::Array {
    let ours = |name: &JsValue| {
        let name: &js_sys::JsString = name.unchecked_ref();
        name.starts_with(OURS, 0)
    };
    js_sys::Object::keys(LocalStorage::raw().unchecked_ref::<js_sys::Object>()).iter().filter(ours).collect()
}
