//! How well the browser keeps what is ours: for good or until it wants the room, and how much room it takes.
//!
//! Also when the book last left this phone, or was saved on it, which is this phone's alone and stays out of the book.

pub use yeanling_pages::phone::Promised;

use gloo_storage::{LocalStorage, Storage};
use js_sys::{Promise, Reflect};
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use web_sys::StorageManager;
use yeanling_core::units::Moment;

use super::{local_storage, reach, window};

const SENT: &str = "yeanling/sent";
const SAVED_HERE: &str = "yeanling/saved-here";
const ASKED: &str = "yeanling/asked";

/// Says what the browser promises now.
pub async fn promised() -> Promised {
    asked(|storage| storage.persisted()).await
}

/// Asks the browser to keep everything for good, and says what it answered. Only ever after a tap: some browsers ask
/// the person.
pub async fn ask_for_good() -> Promised {
    asked(|storage| storage.persist()).await
}

async fn asked(ask: impl FnOnce(&StorageManager) -> Result<Promise, JsValue>) -> Promised {
    let Some(storage) = storage() else { return Promised::Unknown };
    let Ok(promise) = ask(&storage) else { return Promised::Unknown };
    match JsFuture::from(promise).await.ok().and_then(|answer| answer.as_bool()) {
        Some(true) => Promised::ForGood,
        Some(false) => Promised::UntilRoomIsShort,
        None => Promised::Unknown,
    }
}

/// Returns about how many bytes are kept here, the app itself among them, and how many the browser allows; none where
/// it does not tell.
pub async fn room() -> Option<(f64, f64)> {
    let promise = storage()?.estimate().ok()?;
    let estimate = JsFuture::from(promise).await.ok()?;
    let bytes = |name| reach::get(&estimate, name).and_then(|bytes| bytes.as_f64());
    Some((bytes("usage")?, bytes("quota")?))
}

/// Returns the browser's storage; an address without https has none.
fn storage() -> Option<StorageManager> {
    let navigator = window().navigator();
    let there = Reflect::get(&navigator, &JsValue::from_str("storage")).ok()?;
    (!there.is_undefined()).then(|| navigator.storage())
}

/// Returns up to when what was noted lies elsewhere too: the book was shared then, or someone said so.
#[must_use]
pub fn sent() -> Option<Moment> {
    if local_storage::available() { LocalStorage::get(SENT).ok() } else { None }
}

/// Keeps up to when the book lies elsewhere.
pub fn keep_sent(at: Moment) {
    if local_storage::available() {
        // A phone that cannot keep it says "not yet" next time, which errs on the safe side.
        let _ = LocalStorage::set(SENT, at);
    }
}

/// Returns up to when the book was saved as a file among this phone's own downloads.
#[must_use]
pub fn saved_here() -> Option<Moment> {
    if local_storage::available() { LocalStorage::get(SAVED_HERE).ok() } else { None }
}

/// Keeps that the book was saved as a file on this phone.
pub fn keep_saved_here(at: Moment) {
    if local_storage::available() {
        // A phone that cannot keep it does not ask in a later visit whether that file is safe: sharing it says so too.
        let _ = LocalStorage::set(SAVED_HERE, at);
    }
}

/// Returns when the browser was last asked to keep everything for good without a tap on the button for it.
#[must_use]
pub fn asked_at() -> Option<Moment> {
    if local_storage::available() { LocalStorage::get(ASKED).ok() } else { None }
}

/// Keeps that it was asked.
pub fn keep_asked(at: Moment) {
    if local_storage::available() {
        // A phone that cannot keep it asks again in the next visit: no harm.
        let _ = LocalStorage::set(ASKED, at);
    }
}
