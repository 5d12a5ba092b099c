//! Conditions under each other, each met, not met or not known: told by its word, its shape, and then its ink.

use super::{Mark, RowState, Said, live};
use crate::signals::prelude::*;

/// Shows conditions; `None` is not known.
#[component]
pub fn Checks(
    /// Whether each is met, and what it says, its word first.
    #[prop(into)]
    checks: Signal<Vec<(Option<bool>, String)>>,
) -> impl IntoView {
    let line = |(met, text): (Option<bool>, String)| {
        let (key, state) = match met {
            Some(true) => ("yes", RowState::Done),
            Some(false) => ("no", RowState::Coming),
            None => ("unknown", RowState::Now),
        };
        view! {
            <li class="check" data-met=key>
                <Mark state=Signal::stored(state) silent=true />
                <span><Said text=text /></span>
            </li>
        }
        .into_any()
    };
    view! {
        <ul class="checks" role="list">
            {live(move || checks.get().into_iter().map(line).collect_view().into_any())}
        </ul>
    }
}
