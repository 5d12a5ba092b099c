//! A card for paper: lists under headings; boxes to tick for what is to do.

use crate::signals::prelude::*;

/// One list of a card.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct CardList {
    /// What it is about.
    pub heading: String,
    /// Its lines.
    pub lines: Vec<String>,
    /// Whether each line has a box to tick.
    pub boxes: bool,
}

/// Shows a card that is seen on paper alone.
#[component]
pub fn PaperCard(
    /// A few words at its head, under the title of the page.
    #[prop(into)]
    sub: Signal<String>,
    /// Its lists; empty ones are left out.
    #[prop(into)]
    lists: Signal<Vec<CardList>>,
) -> impl IntoView {
    let list = |list: CardList| {
        let lines: Vec<AnyView> =
            list.lines.into_iter().map(|line| view! { <li>{line}</li> }.into_any()).collect();
        let class = if list.boxes { "pen-card-boxes" } else { "" };
        view! { <h3>{list.heading}</h3> <ul class=class>{lines}</ul> }.into_any()
    };
    let lists = move || {
        lists.get().into_iter().filter(|list| !list.lines.is_empty()).map(list).collect::<Vec<AnyView>>()
    };
    view! {
        <div class="on-paper pen-card">
            <p>{super::live(move || sub.get().into_any())}</p>
            {super::live(move || lists().into_any())}
        </div>
    }
}
