//! A part of a screen under a heading with a rule line.

use super::live;
use crate::signals::prelude::*;

/// Groups what belongs together under an `h2` with a line that runs to the edge.
#[component]
pub fn Section(
    /// The heading.
    #[prop(into)]
    title: Signal<String>,
    /// Which state the section gathers, so that its heading takes that ink.
    #[prop(optional)]
    state: Option<super::RowState>,
    /// What stands at the line's far end, such as a small link.
    #[prop(optional, into)]
    aside: Option<ViewFnOnce>,
    /// What the section holds.
    children: Children,
) -> impl IntoView {
    let id = super::fresh_id("section");
    let named_by = id.clone();
    view! {
        <section class="section" aria-labelledby=named_by data-state=state.map(super::RowState::key)>
            <div class="section-head">
                <h2 id=id>{live(move || title.get().into_any())}</h2>
                {aside.map(ViewFnOnce::run)}
            </div>
            {children()}
        </section>
    }
}
