//! The frame of a screen: the page, the place under the thumb, and even columns of buttons.
//!
//! What stands under the thumb sticks above the tab bar but keeps its own room at the end of the page, so that
//! no row can end up behind it.

use crate::signals::prelude::*;

/// Holds the whole app: one `Page`, the `UndoBar` and the `TabBar`.
#[component]
pub fn Frame(
    /// The page, then the bars.
    children: Children,
) -> impl IntoView {
    view! { <div class="frame">{children()}</div> }
}

/// Holds one screen.
#[component]
pub fn Page(
    /// The one or two big buttons under the thumb.
    #[prop(optional, into)]
    thumb: Option<ViewFnOnce>,
    /// What the screen shows.
    children: Children,
) -> impl IntoView {
    view! {
        <main class="page">
            <div class="page-body">{children()}</div>
            {thumb.map(|thumb| view! { <div class="thumb">{thumb.run()}</div> }.into_any())}
        </main>
    }
}

/// Lays buttons out in even columns that fold when there is no room.
#[component]
pub fn Buttons(
    /// How many columns there may be at most: 2 or 3.
    #[prop(default = 3)]
    columns: u8,
    /// The buttons.
    children: Children,
) -> impl IntoView {
    view! { <div class="buttons" data-columns=columns.to_string()>{children()}</div> }
}
