//! The small line above the title: the way back or the place, and how safe the book is.

use super::live;
use crate::signals::prelude::*;

/// Where the way back leads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Back {
    /// The address, such as `#/watch`.
    pub href: String,
    /// The screen's name.
    pub label: String,
}

/// Shows the way back (or the place) on one side and a few words or a `SaveMark` on the other.
#[component]
pub fn TopBar(
    /// The way back; without it the place stands there.
    #[prop(optional, into)]
    back: Option<Back>,
    /// The place, when there is no way back.
    #[prop(optional, into)]
    place: Signal<String>,
    /// The words at the far side.
    #[prop(optional, into)]
    aside: Signal<String>,
    /// Anything else at the far side, such as a `SaveMark`.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let start = match back {
        Some(back) => view! {
            <a class="top-bar-back" href=back.href>
                <svg class="icon" viewBox="0 0 16 16" aria-hidden="true">
                    <path d="M10.5 2.5L5 8l5.5 5.5" />
                </svg>
                {back.label}
            </a>
        }
        .into_any(),
        None => {
            view! { <span class="top-bar-place">{live(move || place.get().into_any())}</span> }.into_any()
        }
    };
    view! {
        <div class="top-bar">
            {start} <span class="top-bar-aside">{live(move || aside.get().into_any())} {children.map(|children| children())}</span>
        </div>
    }
}
