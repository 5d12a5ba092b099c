//! One figure under its name, in the farm's units with the other beside it, which can be asked why.

use crate::parts::live;
use crate::signals::prelude::*;
use yeanling_core::units::{System, Volume};

use crate::parts::{Figure, FigureSize, WhyButton, WhyText};
use crate::pieces::why_text;
use crate::words::common::volume;
use crate::words::why::Why;

/// A figure ready to be shown: its number, its unit, and the same in other units.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Shown {
    number: String,
    unit: String,
    also: String,
}

impl Shown {
    /// Returns a figure of a text such as "195 ml" or "22 h 36 min", with what stands beside it.
    ///
    /// The unit is what follows the first gap, when it is a unit alone.
    pub(super) fn new(figure: &str, also: impl Into<String>) -> Self {
        let (number, unit) = match figure.split_once(' ') {
            Some((number, unit)) if !unit.contains(|c: char| c.is_ascii_digit()) => (number, unit),
            Some(_) | None => (figure, ""),
        };
        Self { number: number.to_owned(), unit: unit.to_owned(), also: also.into() }
    }

    /// Returns a volume in the farm's units, the other system's beside it.
    pub(super) fn volume(milk: Volume, system: System) -> Self {
        Self::new(&volume(milk, system), volume(milk, other(system)))
    }
}

/// Returns the system that the farm does not read.
pub(super) const fn other(system: System) -> System {
    match system {
        System::Metric => System::Us,
        System::Us => System::Metric,
    }
}

/// Returns the reasons of one of several figures that share them, headed by the figure's own name.
pub(super) fn reasons(heading: &str, why: Why) -> WhyText {
    WhyText { heading: heading.to_owned(), ..why_text(why) }
}

/// Shows a figure under its name.
#[component]
pub(super) fn Answer(
    /// What the figure is.
    #[prop(into)]
    label: Signal<String>,
    /// The figure.
    #[prop(into)]
    shown: Signal<Shown>,
    /// How it came about.
    #[prop(into)]
    why: Signal<WhyText>,
    /// How large.
    #[prop(optional)]
    size: FigureSize,
) -> impl IntoView {
    view! {
        <div class="answer">
            <p class="answer-label">{live(move || label.get().into_any())}</p>
            <Figure
                value=Signal::derive(move || shown.get().number)
                unit=Signal::derive(move || shown.get().unit)
                also=Signal::derive(move || shown.get().also)
                size=size
            >
                <WhyButton why=why />
            </Figure>
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(figure: &str, number: &str, unit: &str) {
        let shown = Shown::new(figure, "");
        assert_eq!((shown.number.as_str(), shown.unit.as_str()), (number, unit));
    }

    #[test]
    fn a_figure_is_parted_from_its_unit_but_a_span_stays_whole() {
        check("195 ml", "195", "ml");
        check("6.6 fl oz", "6.6", "fl oz");
        check("22 h 36 min", "22 h 36 min", "");
        check("Closed", "Closed", "");
    }
}
