//! The dark clock: what is due, to be read from afar, the time to what comes next, and what rings.

use yeanling_pages::Key;
use yeanling_pages::block::{Group, Kind, Ring, Row};
use yeanling_words::night;

use super::mark;
use crate::node::{Element, Node, el};

/// What is due, a line each.
pub(super) fn due(it: &Group) -> Element {
    let line = |block: &std::sync::Arc<yeanling_pages::Block>| -> Node {
        el("li", "").key(block.key.clone()).blocks([block]).into()
    };
    el("ul", "night-overdue").has("role", "list").all(it.inside.iter().map(line))
}

/// A duty in large words.
pub(super) fn row(it: &Row) -> Element {
    let says = el("span", "night-says").with(mark(it.state, false)).with(el("span", "").said(&it.says));
    let words = match it.to {
        Some(to) => el("a", "night-due").has("href", to.hash()),
        None => el("div", "night-due"),
    };
    words
        .has("data-state", it.state.key())
        .with(el("b", "").with(it.name.as_str()))
        .with(el("span", "").said(&it.text))
        .with(says)
}

/// The time to what comes next; hours and minutes without a unit are long.
pub(super) fn timer(it: &Group) -> Element {
    let long = it.inside.iter().any(|block| matches!(&block.kind, Kind::Figure(it) if it.unit.is_empty()));
    el("div", "")
        .has("role", "timer")
        .has("aria-label", night::TIME_TO_IT)
        .has_some("data-long", long.then_some("true"))
        .blocks(&it.inside)
}

/// Over the whole screen: a tap anywhere answers it.
pub(super) fn ring(key: &Key, it: &Ring) -> Element {
    let long = (it.name.chars().count() > 4).then_some("true");
    let more = (!it.more.is_empty()).then(|| el("span", "").with(it.more.as_str()).into());
    let answer = el("b", "").with(it.answer.label.as_str());
    let up = el("span", "ring-up").with(answer).with(" ").with(el("span", "").with(it.answer.note.as_str()));
    el("button", "ring")
        .key(key.clone())
        .has("type", "button")
        .press(&it.answer.does)
        .with(el("b", "ring-name").has_some("data-long", long).with(it.name.as_str()))
        .with(el("span", "").said(&it.text))
        .all(more)
        .with(up)
}
