//! Buttons, and links that look like one. Every target is at least `--target` high, also the small underlined ones.

use yeanling_pages::{Action, Button, Meaning, Size, State, Stays, Weight};

use super::mark;
use crate::node::{Element, On, el};

/// Returns a button or, where it only leads to a screen, a link.
pub(crate) fn button(button: &Button) -> Element {
    match button.stays {
        Stays::Button => {}
        Stays::Tick => {
            return words(kept(button, "true").with(mark(State::Done, false)), button);
        }
        Stays::Room => return words(kept(button, "gone"), button),
    }
    let to = match &button.does {
        Action::Go(to) => Some(to.hash()),
        Action::Call(number) => Some(format!("tel:{number}")),
        _ => None,
    };
    let one = el(if to.is_some() { "a" } else { "button" }, class(button)).key(button.key.clone());
    let size = size(button, to.is_some());
    let name = Some(button.name.as_str()).filter(|name| !name.is_empty() && to.is_none());
    let asks = matches!(&button.does, Action::Ask(_)).then_some("dialog");
    let one = one
        .has("data-means", means(&button.does))
        .has_some("data-size", size)
        .has_some("data-weight", weight(button))
        .has_some("aria-label", name);
    let one = match to {
        Some(href) => one.has("href", href),
        None => {
            let on =
                On { press: Some(button.does.clone()), once: button.size == Size::Action, ..On::default() };
            one.has("type", "button")
                .has_some("aria-haspopup", asks)
                .has_some("disabled", button.off.then_some(""))
                .on(on)
        }
    };
    words(one, button)
}

fn size(button: &Button, leads: bool) -> Option<&'static str> {
    match button.size {
        Size::Plain | Size::Small => None,
        Size::Action => Some("action").filter(|_| !leads),
        Size::Big => Some("big"),
    }
}

fn weight(button: &Button) -> Option<&'static str> {
    (!is_small(button)).then_some(match button.weight {
        Weight::Filled => "filled",
        Weight::Outline => "outline",
        Weight::Quiet => "quiet",
    })
}

/// Returns the value of `data-means`: the shape that says what a press means.
pub(crate) const fn means(does: &Action) -> &'static str {
    match does.meaning() {
        Meaning::Saves => "saves",
        Meaning::Opens => "opens",
        Meaning::Explains => "explains",
        Meaning::Here => "here",
    }
}

/// What explains is underlined words, however large the button is.
const fn is_small(button: &Button) -> bool {
    matches!(button.size, Size::Small) || matches!(button.does.meaning(), Meaning::Explains)
}

const fn class(button: &Button) -> &'static str {
    if is_small(button) { "small-button" } else { "button" }
}

/// What a button says, and the chevron of one that opens.
fn words(one: Element, button: &Button) -> Element {
    let chevron = (button.does.meaning() == Meaning::Opens).then(|| chevron().into());
    if is_small(button) {
        one.with(el("span", "").with(button.label.as_str()).all(chevron))
    } else {
        one.with(button.label.as_str()).all(chevron)
    }
}

/// What opens says so at its end.
pub(super) fn chevron() -> Element {
    let line = el("path", "").has("d", "M1.5 2.5L6.5 8l-5 5.5");
    el("svg", "chevron").has("viewBox", "0 0 8 16").has("aria-hidden", "true").with(line)
}

/// What stands in the place of a button, in its size and weight; there is nothing to press. A tick stands in the corner, so that the
/// words stay where they are.
fn kept(button: &Button, done: &'static str) -> Element {
    let leads = matches!(&button.does, Action::Go(_) | Action::Call(_));
    el("span", class(button))
        .key(button.key.clone())
        .has("data-means", means(&button.does))
        .has_some("data-size", size(button, leads))
        .has_some("data-weight", weight(button))
        .has("data-done", done)
}
