//! All that the browser gives: keeping, time, ids, files, the address, sound, the worker. No other room names `web_sys`.

pub mod after_paint;
pub mod badge;
pub mod dom;
pub mod draft;
pub mod files;
pub mod focus;
pub mod id;
pub mod indexed_db;
pub mod local_storage;
pub mod navigation;
pub mod now;
pub mod panic;
pub mod paper;
pub mod persistence;
pub mod press;
mod reach;
pub mod region;
pub mod safety;
pub mod shared;
pub mod sound;
pub mod storage;
pub mod theme;
pub mod wake;
pub mod width;
pub mod worker;

use wasm_bindgen::JsValue;

/// Returns the window; a page always has one.
///
/// # Panics
/// Outside a page, where nothing of this room can run.
#[must_use]
pub fn window() -> web_sys::Window {
    leptos::prelude::window()
}

/// Returns what the browser said of a failure, for people who may have to pass it on.
#[must_use]
pub fn said(error: &JsValue) -> String {
    use wasm_bindgen::JsCast;
    error
        .dyn_ref::<js_sys::Error>()
        .map_or_else(|| format!("{error:?}"), |error| format!("{}: {}", error.name(), error.message()))
}
