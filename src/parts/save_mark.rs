//! Whether what was noted is safe, also for those who listen: a change of its words is read out.

use super::live;
use crate::signals::prelude::*;

/// How far the keeping is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SaveState {
    /// Being written.
    Saving,
    /// Safe on this device.
    Saved,
    /// Could not be written.
    NotSaved,
}

/// Shows a small sign and the words for it, such as "✓ saved 03:12".
#[component]
pub fn SaveMark(
    /// How far the keeping is.
    #[prop(into)]
    state: Signal<SaveState>,
    /// The words: "saving…", "saved 03:12", "not saved".
    #[prop(into)]
    text: Signal<String>,
) -> impl IntoView {
    let key = move || match state.get() {
        SaveState::Saving => "saving",
        SaveState::Saved => "saved",
        SaveState::NotSaved => "not-saved",
    };
    let sign = move || match state.get() {
        SaveState::Saving => "M3 8h.1M8 8h.1M13 8h.1",
        SaveState::Saved => "M2.5 8.5l4 4l7-9",
        SaveState::NotSaved => "M8 2v7.5M8 13.5v.1",
    };
    view! {
        <span class="save-mark" data-state=key>
            <svg class="icon" viewBox="0 0 16 16" aria-hidden="true">
                <path d=sign />
            </svg>
            <span role="status">{live(move || text.get().into_any())}</span>
        </span>
    }
}
