//! What was noted, line by line, each with its time.

use super::Said;
use super::live;
use crate::signals::prelude::*;

/// Holds noted things as a list; each child is a `Noted`.
#[component]
pub fn Timeline(
    /// The noted things, in the order shown.
    children: Children,
) -> impl IntoView {
    view! { <ol class="timeline" role="list">{children()}</ol> }
}

/// Shows one noted thing with its time and small actions at its end.
#[component]
pub fn Noted(
    /// When, as in "02:05" or "Mar 3".
    #[prop(into)]
    time: Signal<String>,
    /// What; `*…*` is bold.
    #[prop(into)]
    text: Signal<String>,
    /// A few soft words under it.
    #[prop(optional, into)]
    note: Signal<String>,
    /// Whether it was struck out.
    #[prop(optional, into)]
    struck: Signal<bool>,
    /// Small actions, such as a `SmallButton`.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let words = move || {
        if struck.get() {
            view! { <s><Said text=text /></s> }.into_any()
        } else {
            view! { <Said text=text /> }.into_any()
        }
    };
    view! {
        <li class="noted">
            <span class="noted-time">{live(move || time.get().into_any())}</span>
            <span class="noted-text">
                {live(words)}
                {live(move || {
                    let note = note.get();
                    (!note.is_empty()).then(|| view! { <small>{note}</small> }.into_any()).into_any()
                })}
            </span>
            {children.map(|children| view! { <span class="noted-actions">{children()}</span> }.into_any())}
        </li>
    }
}
