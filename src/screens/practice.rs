//! To come.
use leptos::prelude::*;

/// To come.
#[component]
pub(crate) fn Practice() -> impl IntoView {
    view! { <p>"Practice"</p> }
}
