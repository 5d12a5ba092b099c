//! A line of text with its figures in bold: what stands between two asterisks is bold, as in `Feed *190 ml*`.
//!
//! An asterisk without a partner is printed as it is, so that typed remarks pass through unharmed.

use leptos::prelude::*;

/// Shows a line of text with the parts between asterisks in bold.
#[component]
pub fn Said(
    /// The line, as in `Feed *190 ml* · due *03:15*`.
    #[prop(into)]
    text: Signal<String>,
) -> impl IntoView {
    move || {
        pieces(&text.get())
            .into_iter()
            .map(
                |(bold, piece)| {
                    if bold { view! { <b>{piece}</b> }.into_any() } else { view! { {piece} }.into_any() }
                },
            )
            .collect_view()
    }
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
    use super::pieces;

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
