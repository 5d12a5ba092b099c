//! Which characters of someone's words do something to what stands around them.

/// Says whether a character turns the direction of the text after it: what is read then is not what is written.
///
/// These are the embeddings, overrides and isolates (Unicode UAX #9); the marks of single letters stay.
pub(crate) const fn turns_text(c: char) -> bool {
    matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

/// Returns the first so many characters of a text from a file, without what acts on the line they are shown in.
pub(crate) fn told(text: &str, most: usize) -> String {
    text.chars().filter(|c| !c.is_control() && !turns_text(*c)).take(most).collect()
}
