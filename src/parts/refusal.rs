//! What was refused, said where the finger is: above the thumb's buttons, or at the head of the sheet that lies open.
//!
//! It stays until it was read, something was noted, or the screen is left. On a page it takes no
//! room, so nothing moves for it; a sheet stands on the foot of the screen and grows upward.

use super::{label, live};
use crate::signals::prelude::*;

/// What is refused just now, for the page and for every sheet.
#[derive(Clone, Copy, Debug)]
pub struct Refused {
    text: Signal<Option<String>>,
    on_read: Callback<()>,
    sheets: RwSignal<usize>,
}

impl Refused {
    /// Lets the page and the sheets find what is refused, and how it is let go once it was read.
    pub fn provide(text: Signal<Option<String>>, on_read: Callback<()>) {
        provide_context(Self { text, on_read, sheets: RwSignal::new(0) });
    }

    /// Tells that a sheet lies open, for as long as the caller is in the view: the page under it is out of reach.
    pub(super) fn on_a_sheet() {
        if let Some(refused) = use_context::<Self>() {
            // What was refused before it was opened is not about it.
            if refused.text.with_untracked(Option::is_some) {
                refused.on_read.run(());
            }
            refused.sheets.update(|sheets| *sheets += 1);
            on_cleanup(move || refused.sheets.update(|sheets| *sheets = sheets.saturating_sub(1)));
        }
    }

    fn view(self, shown: impl Fn() -> bool + Send + Sync + 'static) -> AnyView {
        live(move || {
            let text = self.text.get().filter(|_| shown());
            text.map(|text| {
                view! {
                    <div class="refusal-text" role="alert">
                        <p>{text}</p>
                        <button
                            type="button"
                            class="button"
                            data-weight="outline"
                            on:click=move |_| self.on_read.run(())
                        >
                            {label::READ}
                        </button>
                    </div>
                }
            })
            .into_any()
        })
    }
}

/// Says above the bars of the page what was refused, unless a sheet lies over it.
#[component]
pub fn Refusal() -> impl IntoView {
    let refused = use_context::<Refused>();
    view! {
        <div class="refusal">
            {refused.map(|refused| refused.view(move || refused.sheets.get() == 0))}
        </div>
    }
}

/// Says at the head of a sheet what was refused.
#[component]
pub(super) fn RefusalOnSheet() -> impl IntoView {
    Refused::on_a_sheet();
    let refused = use_context::<Refused>();
    view! {
        <div class="refusal" data-on="sheet">
            {refused.map(|refused| refused.view(|| true))}
        </div>
    }
}
