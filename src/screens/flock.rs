//! To come.
use leptos::prelude::*;

/// To come.
#[component]
pub(crate) fn Flock() -> impl IntoView {
    view! { <p>"Flock"</p> }
}
