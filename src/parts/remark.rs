//! A soft line beside what matters: a verdict, a place, an honest word about the alarm.

use super::Said;
use crate::signals::prelude::*;

/// Shows a soft line; children such as a `WhyButton` follow it.
#[component]
pub fn Remark(
    /// The line; `*…*` is bold and in full ink.
    #[prop(into)]
    text: Signal<String>,
    /// What follows it.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    view! {
        <p class="remark">
            <Said text=text />
            " "
            {children.map(|children| children())}
        </p>
    }
}
