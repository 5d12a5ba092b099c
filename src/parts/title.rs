//! The name of the screen: one large line and what is said under it.

use super::live;
use crate::signals::prelude::*;

/// Shows the screen's `h1` and, as children, the line under it.
///
/// The heading takes focus from code (`#title`), so that a change of screen can be announced.
#[component]
pub fn Title(
    /// The large line.
    #[prop(into)]
    text: Signal<String>,
    /// What stands under it.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    view! {
        <div class="title">
            <h1 id="title" tabindex="-1">{live(move || text.get().into_any())}</h1>
            {children.map(|children| view! { <p class="title-sub">{children()}</p> }.into_any())}
        </div>
    }
}
