//! The number pad for wet gloves, and the read-out beside it.

use yeanling_pages::Action;
use yeanling_pages::block::{Keypad, Readout};
use yeanling_words::label;

use crate::node::{Element, Node, el};

/// What a key does to what stands there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Press {
    Digit(char),
    Point,
    Backspace,
}

/// A key of the keyboard presses the key of its name (`data-key`).
pub(super) fn keypad(it: &Keypad) -> Element {
    let key = |press: Press, name: &'static str| {
        // To take a digit back is to go on with what stands there.
        let stood = if it.anew && press != Press::Backspace { "" } else { &it.value };
        let after = typed(stood, press, it.point, it.most);
        el("button", "key")
            .key(name)
            .has("type", "button")
            .has("data-key", name)
            .press(&Action::Type(it.types.clone(), after))
    };
    let digit = |name: &'static str| -> Node {
        let digit = name.chars().next().unwrap_or('0');
        key(Press::Digit(digit), name).with(name).into()
    };
    let point = if it.point {
        key(Press::Point, ".").has("aria-label", label::POINT).with(".")
    } else {
        el("span", "key-none")
    };
    let arrow = el("svg", "icon").has("viewBox", "0 0 24 16").has("aria-hidden", "true");
    let arrow = arrow.with(el("path", "").has("d", "M8 1.5h13.5v13H8L1.5 8zM11.5 5l6 6M17.5 5l-6 6"));
    let back = key(Press::Backspace, "Backspace").has("aria-label", label::BACKSPACE).with(arrow);
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

/// Returns what stands there after a key: at most one point and `most` signs; a nought in front gives way.
fn typed(before: &str, press: Press, with_point: bool, most: usize) -> String {
    let mut after = before.to_owned();
    match press {
        Press::Backspace => {
            after.pop();
        }
        Press::Point if !with_point || before.contains('.') || before.len() >= most => {}
        Press::Point if before.is_empty() => after.push_str("0."),
        Press::Point => after.push('.'),
        Press::Digit(digit) if before == "0" => after = digit.to_string(),
        Press::Digit(_) if before.len() >= most => {}
        Press::Digit(digit) => after.push(digit),
    }
    after
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(keys: &str, expected: &str) {
        let typed = keys.chars().fold(String::new(), |before, key| {
            let press = match key {
                '<' => Press::Backspace,
                '.' => Press::Point,
                digit => Press::Digit(digit),
            };
            typed(&before, press, true, 5)
        });
        assert_eq!(typed, expected);
    }

    #[test]
    fn digits_and_one_point_make_a_number() {
        check("4.2", "4.2");
        check("4.2.5", "4.25");
    }

    #[test]
    fn a_point_first_means_nought_point() {
        check(".5", "0.5");
    }

    #[test]
    fn a_nought_in_front_gives_way() {
        check("04", "4");
    }

    #[test]
    fn backspace_takes_back_one_sign_and_stops_at_nothing() {
        check("4.<<<<7", "7");
    }

    #[test]
    fn no_more_signs_than_allowed() {
        check("1234567", "12345");
    }
}
