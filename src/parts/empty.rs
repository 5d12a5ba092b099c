//! An empty screen that says what to do first.

use super::Said;
use crate::signals::prelude::*;

/// Shows what to do first, and the button that does it.
#[component]
pub fn Empty(
    /// What to do first; `*…*` is bold.
    #[prop(into)]
    text: Signal<String>,
    /// The button or link that does it.
    #[prop(optional, into)]
    action: Option<ViewFnOnce>,
) -> impl IntoView {
    view! {
        <div class="empty">
            <p>
                <Said text=text />
            </p>
            {action.map(ViewFnOnce::run)}
        </div>
    }
}
