//! The number pad for wet gloves, and the read-out beside it.

use yeanling_pages::KeyPress;
use yeanling_pages::block::{Keypad, Readout};
use yeanling_words::label;

use crate::node::{Element, Node, el};

/// A key of the keyboard presses the key of its name (`data-key`).
pub(super) fn keypad(it: &Keypad) -> Element {
    let key = |press: KeyPress, name: &'static str| {
        el("button", "key").key(name).has("type", "button").has("data-key", name).press(&it.presses(press))
    };
    let digit = |name: &'static str| -> Node {
        let digit = name.chars().next().unwrap_or('0');
        key(KeyPress::Digit(digit), name).with(name).into()
    };
    let point = if it.point {
        key(KeyPress::Point, ".").has("aria-label", label::POINT).with(".")
    } else {
        el("span", "key-none")
    };
    let arrow = el("svg", "icon").has("viewBox", "0 0 24 16").has("aria-hidden", "true");
    let arrow = arrow.with(el("path", "").has("d", "M8 1.5h13.5v13H8L1.5 8zM11.5 5l6 6M17.5 5l-6 6"));
    let back = key(KeyPress::Backspace, "Backspace").has("aria-label", label::BACKSPACE).with(arrow);
    let keys = el("div", "keys")
        .has("role", "group")
        .has("aria-label", label::KEYPAD)
        .all(["1", "2", "3", "4", "5", "6", "7", "8", "9"].map(digit))
        .with(point)
        .with(digit("0"))
        .with(back);
    let side = (!it.inside.is_empty()).then(|| el("div", "keypad-side").blocks(&it.inside).into());
    el("div", "keypad").with(keys).all(side)
}

pub(super) fn readout(it: &Readout) -> Element {
    let value = if it.value.is_empty() { "–" } else { &it.value };
    el("div", "readout")
        .with(el("span", "readout-label").with(it.label.as_str()))
        .with(el("output", "readout-value").has("aria-live", "polite").with(value))
}
