//! The number pad for wet gloves, and the read-out above it.

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
    // The smaller unit follows it, as a scale shows both.
    let larger = it.larger.map(|unit| {
        let name = label::larger(unit);
        let key = key(KeyPress::Larger, "l").has("aria-label", name);
        key.with(el("span", "key-unit").with(unit)).into()
    });
    let keys = el("div", "keys")
        .has("role", "group")
        .has("aria-label", label::KEYPAD)
        .has_some("data-last", it.larger.map(|_| "4"))
        .all(["1", "2", "3", "4", "5", "6", "7", "8", "9"].map(digit))
        .all(larger)
        .with(point)
        .with(digit("0"))
        .with(back);
    let part = |class: &'static str, blocks: &[std::sync::Arc<yeanling_pages::Block>]| {
        (!blocks.is_empty()).then(|| el("div", class).blocks(blocks).into())
    };
    el("div", "keypad").all(part("keypad-top", &it.inside)).with(keys).all(part("keypad-below", &it.below))
}

pub(super) fn readout(it: &Readout) -> Element {
    let figure = |(number, unit): &(String, String)| -> [Node; 2] {
        [
            el("span", "readout-number").with(number.as_str()).into(),
            el("span", "readout-unit").with(unit.as_str()).into(),
        ]
    };
    let value = el("output", "readout-value").has("aria-live", "polite");
    let value = if it.value.is_empty() {
        value.with(el("span", "readout-number").with("–"))
    } else {
        value.all(it.figures.iter().flat_map(figure))
    };
    let also = (!it.also.is_empty()).then(|| el("span", "readout-also").with(it.also.as_str()).into());
    el("div", "readout").with(el("span", "readout-label").with(it.label.as_str())).with(value).all(also)
}
