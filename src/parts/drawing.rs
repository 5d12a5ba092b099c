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

/// Shows a drawing as a button: what it is, and a word on what it means.
#[component]
pub fn DrawnButton(
    /// The file and the symbol.
    #[prop(into)]
    href: String,
    /// What it is.
    #[prop(into)]
    label: String,
    /// What it means, in a word.
    #[prop(into)]
    note: String,
    /// Called at every press.
    #[prop(into)]
    on_press: Callback<()>,
) -> impl IntoView {
    view! {
        <button type="button" class="button drawn" on:click=move |_| on_press.run(())>
            <Drawing href=href />
            <span>{label}</span>
            <small>{note}</small>
        </button>
    }
}
