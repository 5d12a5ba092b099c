//! To come.
use leptos::prelude::*;

/// To come.
#[component]
pub(crate) fn Figures() -> impl IntoView {
    view! { <p>"Figures"</p> }
}
