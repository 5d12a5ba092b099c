//! The bar of screens at the foot of the page.

use super::label;
use crate::signals::prelude::*;

/// One way in the bar.
#[derive(Clone, Debug)]
pub struct Tab {
    /// The address, such as `#/flock`.
    pub href: String,
    /// The screen's name.
    pub label: String,
    /// Whether this is where we are.
    pub current: Signal<bool>,
}

/// Shows the main screens as links, the present one marked.
#[component]
pub fn TabBar(
    /// The ways, at most five.
    items: Vec<Tab>,
) -> impl IntoView {
    view! {
        <nav class="tab-bar" aria-label=label::SCREENS>
            {items
                .into_iter()
                .map(|tab| {
                    view! {
                        <a
                            class="tab"
                            href=tab.href
                            aria-current=move || tab.current.get().then_some("page")
                        >
                            <span>{tab.label}</span>
                        </a>
                    }
                    .into_any()
                })
                .collect_view()}
        </nav>
    }
}
