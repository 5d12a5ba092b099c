//! Whether the screen is wide enough for a list beside an animal.

use leptos::ev::resize;
use leptos::prelude::window_event_listener;

use super::window;

/// From this width on a list stands beside an animal, in CSS pixels (ours); as in `style/layout.css`.
const WIDE: f64 = 900.0;
/// A phone on its side is as wide, and has no height for both.
const HIGH: f64 = 480.0;

/// Says whether two columns have room.
#[must_use]
pub fn is_wide() -> bool {
    let side =
        |value: Result<wasm_bindgen::JsValue, _>| value.ok().and_then(|value| value.as_f64()).unwrap_or(0.0);
    side(window().inner_width()) >= WIDE && side(window().inner_height()) >= HIGH
}

/// Tells whenever the window has another size.
pub fn on_resize(told: impl Fn(bool) + 'static) {
    // It is listened to as long as the page lives.
    _ = window_event_listener(resize, move |_| told(is_wide()));
}
