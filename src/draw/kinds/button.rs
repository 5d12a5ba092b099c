//! Buttons, and links that look like one. Every target is at least `--target` high, also the small underlined ones.

use yeanling_pages::{Action, Button, Size, State, Stays, Weight};

use super::mark;
use crate::node::{Element, On, el};

/// Returns a button or, where it only leads to a screen, a link.
pub(crate) fn button(button: &Button) -> Element {
    match button.stays {
        Stays::Button => {}
        Stays::Tick => {
            return kept(button, "true").with(mark(State::Done, false)).with(button.label.as_str());
        }
        Stays::Room => return kept(button, "gone").with(button.label.as_str()),
    }
    let to = match &button.does {
        Action::Go(to) => Some(to.hash()),
        Action::Call(number) => Some(format!("tel:{number}")),
        _ => None,
    };
    let small = button.size == Size::Small;
    let class = if small { "small-button" } else { "button" };
    let one = el(if to.is_some() { "a" } else { "button" }, class).key(button.key.clone());
    let size = match button.size {
        Size::Plain | Size::Small => None,
        Size::Action => Some("action").filter(|_| to.is_none()),
        Size::Big => Some("big"),
    };
    let weight = (!small).then_some(match button.weight {
        Weight::Filled => "filled",
        Weight::Outline => "outline",
        Weight::Quiet => "quiet",
    });
    let name = Some(button.name.as_str()).filter(|name| !name.is_empty() && to.is_none());
    let asks = matches!(&button.does, Action::Ask(_)).then_some("dialog");
    let one = one.has_some("data-size", size).has_some("data-weight", weight).has_some("aria-label", name);
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
    if small { one.with(el("span", "").with(button.label.as_str())) } else { one.with(button.label.as_str()) }
}

/// What stands in the place of a button, in its size; there is nothing to press. A tick stands in the corner, so that the
/// words stay where they are.
fn kept(button: &Button, done: &'static str) -> Element {
    let class = if button.size == Size::Small { "small-button" } else { "button" };
    let size = (button.size == Size::Action).then_some("action");
    el("span", class).key(button.key.clone()).has_some("data-size", size).has("data-done", done)
}
