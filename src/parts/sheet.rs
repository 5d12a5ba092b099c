//! A sheet of paper that comes up from the foot of the page and goes away again.
//!
//! It is the browser's own modal dialog: focus moves to its heading and back to where it was, Escape closes it,
//! and the page behind is out of reach. A tap beside the sheet closes it too.

use super::label;
use super::live;
use super::refusal::RefusalOnSheet;
use crate::signals::prelude::*;
use leptos::html;

/// Shows a modal sheet for as long as it is in the view.
#[component]
pub fn Sheet(
    /// The heading.
    #[prop(into)]
    title: Signal<String>,
    /// Whom it is about, above the heading; empty when that is told on it.
    #[prop(optional, into)]
    whose: Signal<String>,
    /// Called once it is closed, however that came; the caller then takes it out of the view.
    #[prop(into)]
    on_close: Callback<()>,
    /// What stands on it.
    children: Children,
) -> impl IntoView {
    let id = super::fresh_id("sheet");
    let whose_id = format!("{id}-whose");
    let named_by = format!("{whose_id} {id}");
    let some = Memo::new(move |_| whose.with(|whose| !whose.is_empty()));
    let dialog = NodeRef::<html::Dialog>::new();
    Effect::new(move |_| {
        if let Some(dialog) = dialog.get()
            && !dialog.open()
            && dialog.show_modal().is_err()
        {
            dialog.set_open(true);
        }
    });
    let close = move || {
        if let Some(dialog) = dialog.get_untracked() {
            dialog.close();
        }
    };
    let on_backdrop = move |event: leptos::ev::MouseEvent| {
        if event.target() == event.current_target() {
            close();
        }
    };
    view! {
        <dialog
            class="sheet"
            node_ref=dialog
            aria-labelledby=named_by
            on:click=on_backdrop
            on:close=move |_| on_close.run(())
        >
            <div class="sheet-paper">
                <RefusalOnSheet />
                {live(move || some.get().then(|| view! {
                    <p class="sheet-whose" id=whose_id.clone()>{live(move || whose.get().into_any())}</p>
                }).into_any())}
                <h2 class="sheet-title" id=id tabindex="-1" autofocus>
                    {live(move || title.get().into_any())}
                </h2>
                <div class="sheet-body">{children()}</div>
                <div class="sheet-foot">
                    <button type="button" class="button" data-weight="outline" on:click=move |_| close()>
                        {label::CLOSE}
                    </button>
                </div>
            </div>
        </dialog>
    }
}
