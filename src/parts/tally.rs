//! How many stand so: a count with its word, in the ink and with the shape of its state.

use super::live;
use super::{Mark, RowState};
use crate::signals::prelude::*;

/// Shows a count such as "2 late" with the shape of its state.
#[component]
pub fn Tally(
    /// The state that is counted.
    #[prop(into)]
    state: Signal<RowState>,
    /// The count and its word.
    #[prop(into)]
    text: Signal<String>,
    /// Whether it only keeps its room, unseen and unread.
    #[prop(optional)]
    empty: bool,
) -> impl IntoView {
    view! {
        <b class="tally" data-state=move || state.get().key() data-empty=empty.then_some("true")>
            <Mark state=state silent=true />
            {live(move || text.get().into_any())}
        </b>
        " "
    }
}
