//! A button that stays down: something that was seen, or not.

use super::live;
use crate::signals::prelude::*;

/// Shows what was seen as a pressed button with a tick, and what was not as an empty one.
#[component]
pub fn Toggle(
    /// What was seen.
    #[prop(into)]
    label: Signal<String>,
    /// Whether it was seen.
    #[prop(into)]
    pressed: Signal<bool>,
    /// A few small words under it once it was, such as when; they have their room from the start, so nothing moves for
    /// them.
    #[prop(optional, into)]
    note: Option<Signal<String>>,
    /// Called at every press; the caller decides what `pressed` becomes.
    #[prop(into)]
    on_press: Callback<()>,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="button toggle"
            aria-pressed=move || pressed.get().to_string()
            on:click=move |_| on_press.run(())
        >
            <svg class="icon toggle-tick" viewBox="0 0 16 16" aria-hidden="true">
                <path d="M2.5 8.5l4 4l7-9" />
            </svg>
            <span>{live(move || label.get().into_any())}</span>
            {note.map(|note| view! {
                <small class="toggle-note">{live(move || note.get().into_any())}</small>
            }.into_any())}
        </button>
    }
}
