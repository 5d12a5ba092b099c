//! A line of text with its figures in bold: what stands between two asterisks is bold, as in `Feed *190 ml*`.
//!
//! An asterisk without a partner is printed as it is, so that typed remarks pass through unharmed.

use super::live;
use crate::signals::prelude::*;

/// Shows a line of text with the parts between asterisks in bold.
#[component]
pub fn Said(
    /// The line, as in `Feed *190 ml* · due *03:15*`.
    #[prop(into)]
    text: Signal<String>,
) -> impl IntoView {
    live(move || {
        pieces(&tied(&text.get()))
            .into_iter()
            .map(
                |(bold, piece)| {
                    if bold { view! { <b>{piece}</b> }.into_any() } else { view! { {piece} }.into_any() }
                },
            )
            .collect_view()
            .into_any()
    })
}

/// Units that stay on one line with the number before them.
const UNITS: [&str; 9] = ["kg", "lb", "g", "ml", "l", "fl", "oz", "h", "min"];

/// Returns the text with each number tied to its unit, so that "3.9 kg" never parts at a line's end.
pub(super) fn tied(text: &str) -> String {
    let mut tied = String::with_capacity(text.len());
    for (place, word) in text.split(' ').enumerate() {
        let unit = UNITS.contains(&word.trim_end_matches(|c: char| !c.is_alphanumeric()));
        let after_number = tied.ends_with(|c: char| c.is_ascii_digit()) || tied.ends_with("fl");
        if place > 0 {
            tied.push(if unit && after_number { '\u{a0}' } else { ' ' });
        }
        tied.push_str(word);
    }
    tied
}

/// Returns the pieces of a line in order, each with whether it is bold.
fn pieces(text: &str) -> Vec<(bool, String)> {
    let mut pieces = Vec::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once('*') {
        let Some((inside, behind)) = after.split_once('*') else { break };
        if !before.is_empty() {
            pieces.push((false, before.to_owned()));
        }
        if !inside.is_empty() {
            pieces.push((true, inside.to_owned()));
        }
        rest = behind;
    }
    if !rest.is_empty() {
        pieces.push((false, rest.to_owned()));
    }
    pieces
}

#[cfg(test)]
mod tests {
    use super::{pieces, tied};

    #[test]
    fn a_number_stays_with_its_unit() {
        assert_eq!(tied("Feed *190 ml* now"), "Feed *190\u{a0}ml* now");
        assert_eq!(tied("6.6 fl oz, 1 h 24 min old"), "6.6\u{a0}fl\u{a0}oz, 1\u{a0}h 24\u{a0}min old");
        assert_eq!(tied("twin · 3.9 kg"), "twin · 3.9\u{a0}kg");
        assert_eq!(tied("a  kg of 5 lambs"), "a  kg of 5 lambs");
    }

    #[track_caller]
    fn check(text: &str, expected: &[(bool, &str)]) {
        let found = pieces(text);
        let found: Vec<(bool, &str)> = found.iter().map(|(bold, piece)| (*bold, piece.as_str())).collect();
        assert_eq!(found, expected);
    }

    #[test]
    fn text_between_asterisks_is_bold() {
        check("Feed *190 ml* now", &[(false, "Feed "), (true, "190 ml"), (false, " now")]);
    }

    #[test]
    fn a_lone_asterisk_is_printed() {
        check("5 * 3", &[(false, "5 * 3")]);
        check("*a* and *", &[(true, "a"), (false, " and *")]);
    }

    #[test]
    fn an_empty_line_has_no_pieces() {
        check("", &[]);
    }
}
