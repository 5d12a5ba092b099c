//! What is answered in a decision aid without a record: this phone's alone, so that a reload loses nothing.

use gloo_storage::{LocalStorage, Storage};
use leptos::prelude::window;
use wasm_bindgen::{JsCast, closure::Closure};

use super::local;

const COLD_LAMB: &str = "yeanling/cold-lamb";

/// Returns what was answered about a cold lamb; empty when nothing was.
#[must_use]
pub fn cold_lamb() -> String {
    if local::available() { LocalStorage::get(COLD_LAMB).unwrap_or_default() } else { String::new() }
}

/// Keeps what was answered about a cold lamb.
pub fn keep_cold_lamb(text: &str) {
    if local::available() {
        // What cannot be kept is still on the screen; only a reload asks again.
        let _ = LocalStorage::set(COLD_LAMB, text);
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
