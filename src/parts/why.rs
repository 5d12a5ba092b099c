//! The answer to "why?": how a figure came about, and who says so.

use super::live;
use super::{Caution, Said, Sheet, label};
use crate::signals::prelude::*;

/// The reasons of a figure, in words.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WhyText {
    /// The figure itself, such as "195 ml now".
    pub heading: String,
    /// The working, line by line, such as "3.9 kg × 50 ml = *195 ml*"; `*…*` is bold.
    pub working: Vec<String>,
    /// The rule's name.
    pub rule: String,
    /// Who says so.
    pub sources: Vec<String>,
    /// What other sources would say.
    pub others: Vec<String>,
    /// What to beware of.
    pub caution: Vec<String>,
}

/// Shows a small underlined "why?" that opens the reasons of a figure.
#[component]
pub fn WhyButton(
    /// The reasons.
    #[prop(into)]
    why: Signal<WhyText>,
    /// What it says instead of "why?".
    #[prop(default = label::WHY.into(), into)]
    text: Signal<String>,
) -> impl IntoView {
    let open = RwSignal::new(false);
    view! {
        <button
            type="button"
            class="small-button"
            aria-haspopup="dialog"
            aria-label=move || format!("{} {}", text.get(), why.get().heading)
            on:click=move |_| open.set(true)
        >
            <span>{live(move || text.get().into_any())}</span>
        </button>
        {live(move || open.get().then(|| view! { <WhySheet why=why on_close=move || open.set(false) /> }).into_any())}
    }
}

/// Shows the reasons of a figure on a sheet.
#[component]
pub fn WhySheet(
    /// The reasons.
    #[prop(into)]
    why: Signal<WhyText>,
    /// Called once it is closed.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    view! {
        <Sheet title=Signal::derive(move || why.get().heading) on_close=on_close>
            <div class="why">{live(move || reasons(why.get()).into_any())}</div>
        </Sheet>
    }
}

/// Returns the parts of the answer that have something to say.
fn reasons(why: WhyText) -> impl IntoView {
    let rule = if why.rule.is_empty() { Vec::new() } else { vec![why.rule] };
    let caution = why.caution;
    view! {
        {lines(label::WORKING, "working", why.working)}
        {lines(label::RULE, "rule", rule)}
        {(!caution.is_empty()).then(|| view! { <Caution lines=caution /> })}
        {lines(label::OTHERS, "others", why.others)}
        {lines(label::SOURCES, "sources", why.sources)}
    }
}

/// Returns a headed list of lines, or nothing for none.
fn lines(heading: &'static str, kind: &'static str, lines: Vec<String>) -> Option<AnyView> {
    (!lines.is_empty()).then(|| {
        view! {
            <h3>{heading}</h3>
            <ul class="why-lines" role="list" data-kind=kind>
                {lines.into_iter().map(|line| view! { <li><Said text=line /></li> }.into_any()).collect_view()}
            </ul>
        }
        .into_any()
    })
}
