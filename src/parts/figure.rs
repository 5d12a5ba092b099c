//! One figure, large, with its unit and the same in other units.

use super::live;
use crate::signals::prelude::*;

/// How large a figure stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum FigureSize {
    /// On a card.
    #[default]
    Card,
    /// At the head of a section.
    Head,
    /// Across a barn.
    Barn,
}

impl FigureSize {
    const fn key(self) -> &'static str {
        match self {
            Self::Card => "card",
            Self::Head => "head",
            Self::Barn => "barn",
        }
    }
}

/// Shows a figure; value and unit never part at a line's end.
#[component]
pub fn Figure(
    /// The number, such as "195" or "22 h 36".
    #[prop(into)]
    value: Signal<String>,
    /// Its unit, set smaller beside it.
    #[prop(optional, into)]
    unit: Signal<String>,
    /// The same in other units, or what it means.
    #[prop(optional, into)]
    also: Signal<String>,
    /// How large.
    #[prop(optional)]
    size: FigureSize,
    /// What stands at the far side, such as a verdict.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    view! {
        <div class="figure" data-size=size.key()>
            <p class="figure-line">
                <span class="figure-number">
                    <b>{live(move || value.get().into_any())}</b>
                    {live(move || {
                        let unit = unit.get();
                        (!unit.is_empty()).then(|| view! { <span class="figure-unit">" " {unit}</span> }.into_any()).into_any()
                    })}
                </span>
                " "
                <span class="figure-also">{live(move || also.get().into_any())}</span>
            </p>
            {children.map(|children| view! { <div class="figure-side">{children()}</div> }.into_any())}
        </div>
    }
}
