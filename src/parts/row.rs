//! A duty as a row: whose it is, what to do, how it stands, and the one press that does it.

use super::live;
use super::{Mark, RowState, Said};
use crate::signals::prelude::*;

/// Holds rows under each other as a list.
#[component]
pub fn Rows(
    /// The rows, each one a `Row`.
    children: Children,
) -> impl IntoView {
    view! { <ul class="rows" role="list">{children()}</ul> }
}

/// Shows one duty, or one animal, as a list item.
#[component]
pub fn Row(
    /// Whose it is: a tag or a name, however long.
    #[prop(into)]
    name: Signal<String>,
    /// A few soft words beside the name.
    #[prop(optional, into)]
    kind: Signal<String>,
    /// What to do or how it is; `*…*` is bold.
    #[prop(optional, into)]
    text: Signal<String>,
    /// How it stands, in words; `*…*` is bold.
    #[prop(optional, into)]
    says: Signal<String>,
    /// How it stands; drawn as a shape, an edge and a tint.
    #[prop(into)]
    state: Signal<RowState>,
    /// Where the words of the row lead.
    #[prop(optional, into)]
    href: Option<Signal<String>>,
    /// The button at the side.
    #[prop(optional, into)]
    action: Option<ViewFnOnce>,
    /// What stands below over the whole width, such as a `Ribbon`.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let words = view! {
        <span class="row-head">
            <b class="row-name">{live(move || name.get().into_any())}</b>
            {when(kind, move || view! { <span class="row-kind"><Said text=kind /></span> }.into_any())}
        </span>
        {when(text, move || view! { <span class="row-text"><Said text=text /></span> }.into_any())}
        {when(says, move || view! {
            <span class="row-says">
                <Mark state=state />
                <span><Said text=says /></span>
            </span>
        }.into_any())}
    };
    let words = match href {
        Some(href) => view! { <a class="row-words" href=href>{words}</a> }.into_any(),
        None => view! { <div class="row-words">{words}</div> }.into_any(),
    };
    let body = children.is_some().to_string();
    view! {
        <li class="row" data-state=move || state.get().key() data-body=body>
            <div class="row-top">
                {words} {action.map(|action| view! { <div class="row-action">{action.run()}</div> }.into_any())}
            </div>
            {children.map(|children| view! { <div class="row-body">{children()}</div> }.into_any())}
        </li>
    }
}

/// Returns a view while there is a text to it; the view stays when the text becomes another.
fn when(text: Signal<String>, view: impl Fn() -> AnyView + Send + 'static) -> AnyView {
    let some = Memo::new(move |_| text.with(|text| !text.is_empty()));
    live(move || some.get().then(&view).into_any())
}
