//! To come.
use leptos::prelude::*;

/// To come.
#[component]
pub(crate) fn More() -> impl IntoView {
    view! { <p>"More"</p> }
}
