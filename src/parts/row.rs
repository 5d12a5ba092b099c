//! A duty as a row: whose it is, what to do, how it stands, and the one press that does it.

use super::live;
use super::{Mark, Room, RowState, Said};
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
    /// Whose size it keeps while it stands in the place of another state; without one it takes that of its own.
    #[prop(optional, into)]
    size: Option<Signal<Option<RowState>>>,
    /// The text whose room is kept under `kind`.
    #[prop(optional, into)]
    kind_room: Option<Signal<String>>,
    /// The text whose room is kept under `text`.
    #[prop(optional, into)]
    text_room: Option<Signal<String>>,
    /// The text whose room is kept under `says`.
    #[prop(optional, into)]
    says_room: Option<Signal<String>>,
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
            {when(kind, kind_room, move || view! {
                <span class="row-kind">{line(kind, kind_room)}</span>
            }.into_any())}
        </span>
        {when(text, text_room, move || view! {
            <span class="row-text">{line(text, text_room)}</span>
        }.into_any())}
        {when(says, says_room, move || view! {
            <span class="row-says">
                <Mark state=state />
                <span>{line(says, says_room)}</span>
            </span>
        }.into_any())}
    };
    let words = match href {
        Some(href) => view! { <a class="row-words" href=href>{words}</a> }.into_any(),
        None => view! { <div class="row-words">{words}</div> }.into_any(),
    };
    let body = children.is_some().to_string();
    view! {
        <li
            class="row"
            data-state=move || state.get().key()
            data-size=size.map(|size| move || size.get().map(RowState::key))
            data-body=body
        >
            <div class="row-top">
                {words} {action.map(|action| view! { <div class="row-action">{action.run()}</div> }.into_any())}
            </div>
            {children.map(|children| view! { <div class="row-body">{children()}</div> }.into_any())}
        </li>
    }
}

/// Returns a view while there is a text to it, or room to keep; the view stays when the text becomes another.
fn when(
    text: Signal<String>,
    room: Option<Signal<String>>,
    view: impl Fn() -> AnyView + Send + 'static,
) -> AnyView {
    let has = |text: Signal<String>| text.with(|text| !text.is_empty());
    let some = Memo::new(move |_| has(text) || room.is_some_and(has));
    live(move || some.get().then(&view).into_any())
}

fn line(text: Signal<String>, room: Option<Signal<String>>) -> AnyView {
    match room {
        Some(room) => view! { <Room text=text room=room /> }.into_any(),
        None => view! { <Said text=text /> }.into_any(),
    }
}
