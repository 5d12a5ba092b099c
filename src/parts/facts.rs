//! A few small facts side by side.

use super::{Said, live};
use crate::signals::prelude::*;

/// A small fact.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fact {
    /// The fact, such as "*0* of 390 ml"; `*…*` is bold.
    pub value: String,
    /// What belongs to it, such as "by 07:48"; may be empty.
    pub note: String,
}

impl Fact {
    /// Returns a fact with its note.
    pub fn new(value: impl Into<String>, note: impl Into<String>) -> Self {
        Self { value: value.into(), note: note.into() }
    }
}

/// Shows small facts in columns that fold when there is no room.
#[component]
pub fn Facts(
    /// The facts.
    #[prop(into)]
    facts: Signal<Vec<Fact>>,
) -> impl IntoView {
    let items = move || {
        facts
            .get()
            .into_iter()
            .map(|fact| {
                view! {
                    <li class="fact">
                        <span><Said text=fact.value /></span>
                        <small>{fact.note}</small>
                    </li>
                }
                .into_any()
            })
            .collect_view()
    };
    view! { <ul class="facts" role="list">{live(move || items().into_any())}</ul> }
}
