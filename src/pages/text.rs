//! A line of text: spans, some of them strong. A number and its unit never part.

use yeanling_words::own_unit;

/// A line of text.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Text {
    spans: Vec<Span>,
    room: String,
}

/// A piece of a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Span {
    /// Whether it is set in bold.
    pub strong: bool,
    /// What it says; never empty.
    pub text: String,
}

impl Text {
    /// Returns a line as a person typed it: no sign in it means anything.
    #[must_use]
    pub fn typed(text: &str) -> Self {
        let mut line = Self::default();
        line.push(false, text.to_owned());
        line
    }

    /// Returns a line of the app's own words, in which what stands between two asterisks is strong. An asterisk without a
    /// partner is printed as it is, and so is one inside a word, as in the mark that a person typed.
    #[must_use]
    pub fn said(text: &str) -> Self {
        let text = as_read_here(text);
        let (mut line, mut rest) = (Self::default(), text.as_str());
        while let Some((open, close)) = strong(rest) {
            line.push(false, rest[..open].to_owned());
            line.push(true, rest[open + 1..close].to_owned());
            rest = &rest[close + 1..];
        }
        line.push(false, rest.to_owned());
        line
    }

    /// Returns the same line in bold.
    #[must_use]
    pub fn strong(text: &str) -> Self {
        let mut line = Self::default();
        line.push(true, as_read_here(text));
        line
    }

    /// Returns this line and another behind it.
    #[must_use]
    pub fn then(mut self, other: impl Into<Self>) -> Self {
        self.spans.extend(other.into().spans);
        self
    }

    /// Returns this line in no less room than another took, so that nothing below moves when it takes its place; that one is
    /// neither seen nor read out. Without another it takes its own.
    #[must_use]
    pub fn in_room_of(self, other: &str) -> Self {
        Self { room: tied(other).replace('*', ""), ..self }
    }

    fn push(&mut self, strong: bool, text: String) {
        if !text.is_empty() {
            self.spans.push(Span { strong, text });
        }
    }

    /// Says whether nothing is said, and no room is kept.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.spans.is_empty() && self.room.is_empty()
    }

    /// Returns the line whose room is kept; empty when none is.
    #[must_use]
    pub fn room(&self) -> &str {
        &self.room
    }

    /// Returns each piece in order.
    #[must_use]
    pub fn spans(&self) -> &[Span] {
        &self.spans
    }

    /// Returns the line as it is read out.
    #[must_use]
    pub fn plain(&self) -> String {
        self.spans.iter().map(|span| span.text.as_str()).collect()
    }
}

impl From<String> for Text {
    fn from(text: String) -> Self {
        Self::said(&text)
    }
}

impl From<&str> for Text {
    fn from(text: &str) -> Self {
        Self::said(text)
    }
}

impl From<&String> for Text {
    fn from(text: &String) -> Self {
        Self::said(text)
    }
}

/// Returns the app's own words as this farm reads them: its own unit first, thousands parted, a number with its unit.
fn as_read_here(text: &str) -> String {
    tied(&in_own_units(text))
}

/// Returns the app's own words as this farm reads them: its own unit first, thousands parted.
pub(crate) fn in_own_units(text: &str) -> String {
    let system = own_unit::farms();
    own_unit::parted(&own_unit::first(text, system), system).into_owned()
}

/// Returns where the first strong piece opens and closes: before a word, and behind one.
fn strong(text: &str) -> Option<(usize, usize)> {
    let in_word = |side: Option<char>| side.is_some_and(char::is_alphanumeric);
    let free = |side: Option<char>| side.is_some_and(|side| !side.is_whitespace());
    let signs = || {
        text.match_indices('*')
            .map(|(at, _)| (at, text[..at].chars().next_back(), text[at + 1..].chars().next()))
    };
    let mut opens =
        signs().filter(|(_, before, after)| !in_word(*before) && free(*after) && *after != Some('*'));
    let (open, ..) = opens.next()?;
    let closes = |(_, before, after): &(usize, Option<char>, Option<char>)| {
        free(*before) && !in_word(*after) && *after != Some('*')
    };
    let (close, ..) = signs().filter(|(at, ..)| *at > open + 1).find(closes)?;
    Some((open, close))
}

/// Units that stay on one line with the number before them.
const UNITS: [&str; 9] = ["kg", "lb", "g", "ml", "l", "fl", "oz", "h", "min"];

/// Ties a number to the unit behind it.
fn tied(text: &str) -> String {
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

#[cfg(test)]
mod tests {
    use super::{Text, tied};

    #[test]
    fn a_number_stays_with_its_unit() {
        assert_eq!(tied("Feed *190 ml* now"), "Feed *190\u{a0}ml* now");
        assert_eq!(tied("6.6 fl oz, 1 h 24 min old"), "6.6\u{a0}fl\u{a0}oz, 1\u{a0}h 24\u{a0}min old");
        assert_eq!(tied("twin · 3.9 kg"), "twin · 3.9\u{a0}kg");
        assert_eq!(tied("a  kg of 5 lambs"), "a  kg of 5 lambs");
    }

    #[track_caller]
    fn check(text: &Text, expected: &[(bool, &str)]) {
        let found: Vec<(bool, &str)> = text.spans().iter().map(|span| (span.strong, &*span.text)).collect();
        assert_eq!(found, expected);
    }

    #[test]
    fn text_between_asterisks_is_strong() {
        check(&"Feed *190\u{a0}ml* now".into(), &[(false, "Feed "), (true, "190\u{a0}ml"), (false, " now")]);
        check(&"".into(), &[]);
    }

    #[test]
    fn a_line_that_keeps_the_room_of_another_says_only_its_own() {
        let text = Text::from("Up").in_room_of("*Dipped* · Up 4 kg");
        assert_eq!((text.plain().as_str(), text.room()), ("Up", "Dipped · Up 4\u{a0}kg"));
        assert!(!Text::default().in_room_of("Dipped").is_empty());
        assert_eq!(Text::from("Up").in_room_of(""), Text::from("Up"));
    }

    #[test]
    fn a_lone_asterisk_is_printed_and_what_was_typed_is_left_alone() {
        check(&"5 * 3".into(), &[(false, "5 * 3")]);
        check(&"*a* and *".into(), &[(true, "a"), (false, " and *")]);
        check(&Text::typed("*a* 5 kg"), &[(false, "*a* 5 kg")]);
    }

    #[test]
    fn what_a_person_typed_keeps_its_asterisk_also_in_bold() {
        check(&"Marked *a*b*".into(), &[(false, "Marked "), (true, "a*b")]);
        check(
            &"*7* · fostered to *Ewe a*b*.".into(),
            &[(true, "7"), (false, " · fostered to "), (true, "Ewe a*b"), (false, ".")],
        );
        let said = |text: &str| Text::from(text).plain();
        assert_eq!(said("Marked **blue**"), "Marked *blue*");
        assert_eq!(said("Marked ***"), "Marked ***");
    }
}
