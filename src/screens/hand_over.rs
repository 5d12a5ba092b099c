//! To come.
use leptos::prelude::*;

/// To come.
#[component]
pub(crate) fn HandOver() -> impl IntoView {
    view! { <p>"HandOver"</p> }
}
