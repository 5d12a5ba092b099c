//! What stands around every page: the offer to undo, what was refused, and the bar of screens at the foot.

use yeanling_pages::{Action, Button, Request, Screen};
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
    [undo_bar(around.undo).into(), refusal(around.refused).into(), tab_bar(screen).into()]
}

/// Its status region is always there, so that a change of its text is read out. It comes up above the place under the thumb,
/// never in it, so that a second tap on the big button cannot land on "Undo".
fn undo_bar(text: Option<&str>) -> Element {
    let said = el("p", "").has("role", "status").with(text.unwrap_or_default());
    let undo = text.map(|_| button(&Button::new("", label::UNDO, Action::Phone(Request::Undo))).into());
    el("div", "undo-bar").key("undo").has("data-shown", text.is_some().to_string()).with(said).all(undo)
}

/// It takes no room, so nothing moves for it.
fn refusal(text: Option<&str>) -> Element {
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
