//! The name of the screen: one large line and what is said under it.

use super::live;
use crate::signals::prelude::*;

/// Shows the screen's `h1` and, as children, the line under it.
///
/// Whoever moves the focus to the heading (`#title`), so that a change of screen is announced, lets it take the focus:
/// an attribute here would be taken off and put back with each screen, and cost a layout of the one that goes.
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
            <h1 id="title">{live(move || text.get().into_any())}</h1>
            {children.map(|children| view! { <p class="title-sub">{children()}</p> }.into_any())}
        </div>
    }
}
