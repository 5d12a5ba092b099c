//! A small line drawing out of a sheet of drawings, in the ink of the text around it.

use crate::signals::prelude::*;

/// Draws one symbol, 3 wide to 2 high; the words beside it say what it is, so it is not read out.
#[component]
pub fn Drawing(
    /// The file and the symbol, such as `lies.svg#normal`.
    #[prop(into)]
    href: String,
) -> impl IntoView {
    view! {
        <svg class="drawing" viewBox="0 0 120 80" aria-hidden="true">
            <use href=href></use>
        </svg>
    }
}
