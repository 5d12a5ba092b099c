//! A few things set apart on a sheet of paper, with the one thing to do about them at the side.

use crate::signals::prelude::*;

/// Sets a few things apart; `lead` and `action` stand side by side above the rest.
#[component]
pub fn Card(
    /// What stands first, beside the action, such as a `Figure`.
    #[prop(optional, into)]
    lead: Option<ViewFnOnce>,
    /// The button beside it.
    #[prop(optional, into)]
    action: Option<ViewFnOnce>,
    /// What stands below, such as `Facts`.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let top = (lead.is_some() || action.is_some()).then(|| {
        view! {
            <div class="card-top">
                <div class="card-lead">{lead.map(ViewFnOnce::run)}</div>
                {action.map(|action| view! { <div class="card-action">{action.run()}</div> }.into_any())}
            </div>
        }
    });
    view! { <div class="card">{top} {children.map(|children| children())}</div> }
}
