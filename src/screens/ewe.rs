//! To come.
use leptos::prelude::*;

/// To come.
#[component]
pub(crate) fn EweScreen(id: yeanling_core::book::EweId) -> impl IntoView {
    view! { <p>"EweScreen"</p> }
}
