//! The field that picks a file, and what is said when the phone cannot give it.

use crate::signals::prelude::*;
use leptos::html;

use crate::farm::FileTrouble;
use crate::words::hand_over as words;

/// A button that opens the phone's files; the browser's own field beneath it is not seen.
#[component]
pub(super) fn Pick(
    /// The field's name in the page.
    id: &'static str,
    label: &'static str,
    field: NodeRef<html::Input>,
    #[prop(into)] on_pick: Callback<()>,
) -> impl IntoView {
    view! {
        <div class="pick">
            <input class="pick-input" id=id type="file" node_ref=field on:change=move |_| on_pick.run(()) />
            <label class="button" for=id>
                {label}
            </label>
        </div>
    }
}

/// Returns why a file could not be had, in words; nothing when it was only not chosen.
pub(super) fn why_not(trouble: FileTrouble) -> Option<String> {
    match trouble {
        FileTrouble::Closed | FileTrouble::CannotShare => None,
        FileTrouble::TooLarge(bytes) => Some(words::too_large(bytes)),
        FileTrouble::Failed(browser) => Some(words::not_read(&browser)),
    }
}
