//! What is answered in a decision aid without a record, and digits on the keys that are not noted yet: this phone's alone, so
//! that a reload loses nothing.

use gloo_storage::{LocalStorage, Storage};
use leptos::prelude::window;
use wasm_bindgen::{JsCast, closure::Closure};

use super::local_storage;

const COLD_LAMB: &str = "yeanling/cold-lamb";

const TABLES: &str = "yeanling/tables";

const HALF_TYPED: &str = "yeanling/half-typed";

/// Returns the digits that were not noted; empty when none are.
#[must_use]
pub fn half_typed() -> String {
    if local_storage::available() { LocalStorage::get(HALF_TYPED).unwrap_or_default() } else { String::new() }
}

/// Keeps digits that are not noted yet.
pub fn keep_half_typed(text: &str) {
    if !local_storage::available() {
        return;
    }
    if text.is_empty() {
        LocalStorage::delete(HALF_TYPED);
    } else {
        // What cannot be kept is still on the screen, and is noted when the keys rest.
        let _ = LocalStorage::set(HALF_TYPED, text);
    }
}

/// Returns what was answered about a cold lamb; empty when nothing was.
#[must_use]
pub fn cold_lamb() -> String {
    if local_storage::available() { LocalStorage::get(COLD_LAMB).unwrap_or_default() } else { String::new() }
}

/// Keeps what was answered about a cold lamb.
pub fn keep_cold_lamb(text: &str) {
    if local_storage::available() {
        // What cannot be kept is still on the screen; only a reload asks again.
        let _ = LocalStorage::set(COLD_LAMB, text);
    }
}

/// Returns how tables were read; empty where none was.
#[must_use]
pub fn tables() -> String {
    if local_storage::available() { LocalStorage::get(TABLES).unwrap_or_default() } else { String::new() }
}

/// Keeps how tables were read.
pub fn keep_tables(text: &str) {
    if local_storage::available() {
        // What cannot be kept is only asked again.
        let _ = LocalStorage::set(TABLES, text);
    }
}

/// Passes on what another tab has kept.
pub fn on_other_tab(take: impl Fn(String) + 'static) {
    let listener = Closure::<dyn Fn(web_sys::StorageEvent)>::new(move |event: web_sys::StorageEvent| {
        if event.key().as_deref() == Some(COLD_LAMB) {
            take(cold_lamb());
        }
    });
    let _ = window().add_event_listener_with_callback("storage", listener.as_ref().unchecked_ref());
    listener.forget();
}
