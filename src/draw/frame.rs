//! What stands around every page: what was just noted, read out; what was refused; and the bar of screens at the foot.

use yeanling_pages::{Action, Button, Screen};
use yeanling_words::label;

use crate::kinds::button;
use crate::node::{Element, Node, el};

/// What is said around a page.
#[derive(Clone, Copy, Debug, Default)]
pub struct Frame<'a> {
    /// What was just noted and can be undone.
    pub undo: Option<&'a str>,
    /// What was refused, unless a sheet lies open, which says it itself.
    pub refused: Option<&'a str>,
}

/// Returns what stands around a page.
#[must_use]
pub fn frame(screen: Screen, around: Frame<'_>) -> [Node; 3] {
    [noted(around.undo).into(), rejection(around.refused).into(), tab_bar(screen).into()]
}

/// What was just noted, for those who listen: it is always there, so that a change of its text is read out. To the eye it
/// stands in the line above the page's name.
fn noted(text: Option<&str>) -> Element {
    el("p", "noted-now").key("noted-now").has("role", "status").with(text.unwrap_or_default())
}

/// It takes no room, so nothing moves for it.
fn rejection(text: Option<&str>) -> Element {
    el("div", "refusal").key("refusal").all(text.map(|text| refused(text).into()))
}

/// What was refused, said where the finger is; it stays until it was read, something was noted, or the screen is left.
pub(crate) fn refused(text: &str) -> Element {
    let read = button(&Button::new("", label::READ, Action::Read));
    el("div", "refusal-text").has("role", "alert").with(el("p", "").with(text)).with(read)
}

fn tab_bar(screen: Screen) -> Element {
    let tab = |(to, label): (Screen, &'static str)| {
        el("a", "tab")
            .has("href", to.hash())
            .has_some("aria-current", (screen.tab() == Some(to)).then_some("page"))
            .with(el("span", "").with(label))
            .into()
    };
    el("nav", "tab-bar").has("aria-label", label::SCREENS).all(Screen::TABS.map(tab))
}
