//! To come.
use leptos::prelude::*;

/// To come.
#[component]
pub(crate) fn Help() -> impl IntoView {
    view! { <p>"Help"</p> }
}
