//! What was given against what is wanted, as a slim bar with its words.

use super::Said;
use crate::signals::prelude::*;

/// Shows a share as a bar; more than the whole fills it and stops there.
#[component]
pub fn Progress(
    /// The share given, 0 to 1.
    #[prop(into)]
    share: Signal<f64>,
    /// The same in words, such as "*195* of 390 ml by 07:48".
    #[prop(into)]
    text: Signal<String>,
) -> impl IntoView {
    let width = move || format!("{:.2}%", share.get().clamp(0.0, 1.0) * 100.0);
    view! {
        <div class="progress" data-full=move || (share.get() >= 1.0).to_string()>
            <p class="progress-text">
                <Said text=text />
            </p>
            <svg class="progress-bar" aria-hidden="true">
                <rect class="progress-given" width=width height="100%" />
            </svg>
        </div>
    }
}
