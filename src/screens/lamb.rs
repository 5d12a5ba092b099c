//! To come.
use leptos::prelude::*;

/// To come.
#[component]
pub(crate) fn LambScreen(id: yeanling_core::book::LambId) -> impl IntoView {
    view! { <p>"LambScreen"</p> }
}
