//! The number pad for wet gloves, and the read-out beside it.

use super::label;
use super::live;
use crate::signals::prelude::*;
use leptos::ev::KeyboardEvent;

/// Shows ten digits, a point and a key that takes back, each a full target; children stand beside it.
///
/// The pad also takes digits, point, comma and backspace from a keyboard while the focus is on it.
#[component]
pub fn Keypad(
    /// The digits typed so far, with `.` as the point whatever the key shows.
    value: RwSignal<String>,
    /// The sign on the point key; without it there is no point.
    #[prop(optional, into)]
    point: Option<char>,
    /// How many characters may be typed.
    #[prop(default = 6)]
    most: usize,
    /// Whether the next key begins a new number, since what stands there is old; the pad clears it with each key.
    #[prop(optional)]
    anew: Option<RwSignal<bool>>,
    /// Called with the new digits after each key.
    #[prop(optional, into)]
    on_change: Option<Callback<(String,)>>,
    /// What stands beside the pad: a `Readout`, units, a verdict.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let press = move |key: Key| {
        let begins = anew.is_some_and(|anew| anew.get_untracked());
        if let Some(anew) = anew.filter(|_| begins) {
            anew.set(false);
        }
        // To take a digit back is to go on with what stands there.
        let before = if begins && key != Key::Backspace { String::new() } else { value.get_untracked() };
        let after = typed(&before, key, point.is_some(), most);
        if after != before {
            value.set(after.clone());
            if let Some(on_change) = on_change {
                on_change.run((after,));
            }
        }
    };
    let on_key = move |event: KeyboardEvent| {
        if let Some(key) = Key::named(&event.key()) {
            event.prevent_default();
            press(key);
        }
    };
    let digit = move |digit: char| {
        view! {
            <button type="button" class="key" on:click=move |_| press(Key::Digit(digit))>
                {digit.to_string()}
            </button>
        }
        .into_any()
    };
    let point_key = match point {
        Some(sign) => view! {
            <button type="button" class="key" aria-label=label::POINT on:click=move |_| press(Key::Point)>
                {sign.to_string()}
            </button>
        }
        .into_any(),
        None => view! { <span class="key-none"></span> }.into_any(),
    };
    view! {
        <div class="keypad">
            <div class="keys" role="group" aria-label=label::KEYPAD on:keydown=on_key>
                {('1'..='9').map(digit).collect_view()}
                {point_key}
                {digit('0')}
                <button
                    type="button"
                    class="key"
                    aria-label=label::BACKSPACE
                    on:click=move |_| press(Key::Backspace)
                >
                    <svg class="icon" viewBox="0 0 24 16" aria-hidden="true">
                        <path d="M8 1.5h13.5v13H8L1.5 8zM11.5 5l6 6M17.5 5l-6 6" />
                    </svg>
                </button>
            </div>
            {children.map(|children| view! { <div class="keypad-side">{children()}</div> }.into_any())}
        </div>
    }
}

/// Shows what is being typed, large.
#[component]
pub fn Readout(
    /// What the number is, such as "weight".
    #[prop(into)]
    label: Signal<String>,
    /// The digits; empty shows a dash.
    #[prop(into)]
    value: Signal<String>,
) -> impl IntoView {
    view! {
        <div class="readout">
            <span class="readout-label">{live(move || label.get().into_any())}</span>
            <output class="readout-value" aria-live="polite">
                {live(move || {
                    let value = value.get();
                    if value.is_empty() { "–".to_owned() } else { value }.into_any()
                })}
            </output>
        </div>
    }
}

/// A key of the pad.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Key {
    Digit(char),
    Point,
    Backspace,
}

impl Key {
    /// Returns the key of a keyboard's key name.
    fn named(name: &str) -> Option<Self> {
        let mut letters = name.chars();
        match (letters.next(), letters.next()) {
            (Some(digit), None) if digit.is_ascii_digit() => Some(Self::Digit(digit)),
            (Some('.' | ','), None) => Some(Self::Point),
            _ => (name == "Backspace").then_some(Self::Backspace),
        }
    }
}

/// Returns the digits after a key: one point at most, no idle zeros in front, never more than `most`.
fn typed(before: &str, key: Key, with_point: bool, most: usize) -> String {
    let mut after = before.to_owned();
    match key {
        Key::Backspace => {
            after.pop();
        }
        Key::Point if !with_point || before.contains('.') || before.len() >= most => {}
        Key::Point if before.is_empty() => after.push_str("0."),
        Key::Point => after.push('.'),
        Key::Digit(digit) if before == "0" => after = digit.to_string(),
        Key::Digit(_) if before.len() >= most => {}
        Key::Digit(digit) => after.push(digit),
    }
    after
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(keys: &str, expected: &str) {
        let typed = keys.chars().fold(String::new(), |before, key| {
            let key = match key {
                '<' => Key::Backspace,
                '.' => Key::Point,
                digit => Key::Digit(digit),
            };
            typed(&before, key, true, 5)
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
