//! The bar that says what was just noted and takes it back.
//!
//! Its status region is always there, so that a change of its text is read out. It comes up above the place
//! under the thumb, never in it, so that a second tap on the big button cannot land on "Undo".

use super::label;
use super::live;
use crate::signals::prelude::*;

/// Shows what was just noted with an "Undo"; stays out of sight while there is nothing to say.
#[component]
pub fn UndoBar(
    /// What was just noted.
    #[prop(into)]
    text: Signal<Option<String>>,
    /// Called when it is to be taken back; without it the bar only tells.
    #[prop(optional, into)]
    on_undo: Option<Callback<()>>,
) -> impl IntoView {
    let button = move || {
        on_undo.filter(|_| text.with(Option::is_some)).map(|on_undo| {
            view! {
                <button type="button" class="button" data-weight="outline" on:click=move |_| on_undo.run(())>
                    {label::UNDO}
                </button>
            }
        })
    };
    view! {
        <div class="undo-bar" data-shown=move || text.with(Option::is_some).to_string()>
            <p role="status">{live(move || text.get().unwrap_or_default().into_any())}</p>
            {live(move || button().into_any())}
        </div>
    }
}
