//! The safety box: what can hurt, and whom to ask.

use super::live;
use super::{Said, label};
use crate::signals::prelude::*;

/// Shows cautions under a triangle and the word, never folded away.
#[component]
pub fn Caution(
    /// The cautions, a line each; `*…*` is bold.
    #[prop(into)]
    lines: Signal<Vec<String>>,
) -> impl IntoView {
    view! {
        <div class="caution" role="note" aria-label=label::CAUTION>
            <p class="caution-head">
                <svg class="caution-mark" viewBox="0 0 16 16" aria-hidden="true">
                    <path d="M8 1.5L15.5 14.5H.5z" />
                </svg>
                {label::CAUTION}
            </p>
            {live(move || lines.get().into_iter().map(|line| view! { <p><Said text=line /></p> }.into_any()).collect_view().into_any())}
        </div>
    }
}
