//! What is answered in a decision aid without a record: this phone's alone, so that a reload loses nothing.

use gloo_storage::{LocalStorage, Storage};

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
