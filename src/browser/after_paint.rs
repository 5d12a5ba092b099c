//! What can wait until the screen shows what is there already.

use std::time::Duration;

use leptos::prelude::{document, request_animation_frame, set_timeout};

/// Does `act` once the next frame is on the screen; at once when the page is out of sight, where no frame is drawn.
pub fn after_paint(act: impl FnOnce() + 'static) {
    if document().hidden() {
        set_timeout(act, Duration::ZERO);
        return;
    }
    // The second frame is begun when the first is drawn.
    request_animation_frame(move || request_animation_frame(act));
}
