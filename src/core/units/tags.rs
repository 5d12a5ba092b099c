//! A list of ear tags as people type or paste it: `101–140, 7, 9 12`, each tag once, and what could not be read said.
//!
//! A range keeps what stands before its number and the zeros in it: `A008–A012` is A008 to A012. Of tags that have a dash of
//! their own it is written with "to" or with a dash between both: `Y-01 to Y-08`, `Y-01–Y-08`.
//!
//! A letter among the digits of one end of a range is a slip ("3O1-330"): it is left out and told, not made 330 ewes.

/// The most tags of one list, and of one range.
pub const MOST_TAGS: usize = 2000;

/// Why a bit of a list gave no tag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unread {
    /// A range whose end comes before its beginning, such as 140–101.
    Backwards,
    /// A range, or a list, of more than `MOST_TAGS`.
    TooMany,
    /// A range whose ends do not belong together, such as A1–B9, or one without an end.
    NoRange,
}

/// What a list of tags came to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TagList {
    /// The tags, in the order in which they stand, each once.
    pub tags: Vec<String>,
    /// Tags that stand more than once, in the order in which they come again, each once.
    pub repeated: Vec<String>,
    /// Bits that gave no tag, as typed, and why.
    pub unread: Vec<(String, Unread)>,
}

/// What joins the ends of a range that was written with "to", inside one bit.
const TO: char = '\u{0}';

/// Returns the tags of a list: numbers and names with commas, semicolons, spaces or lines between, and ranges.
///
/// Nothing is guessed: what cannot be read is handed back as it stands.
///
/// ```
/// use yeanling_core::units::{Unread, parse_tags};
/// let list = parse_tags("101–103, 7, 9 7\n140-138");
/// assert_eq!(list.tags, ["101", "102", "103", "7", "9"]);
/// assert_eq!(list.repeated, ["7"]);
/// assert_eq!(list.unread, [("140-138".to_owned(), Unread::Backwards)]);
/// ```
#[must_use]
pub fn parse_tags(text: &str) -> TagList {
    let mut list = TagList::default();
    let mut seen = std::collections::BTreeSet::new();
    for bit in bits(text) {
        let tags = tags_of(&bit);
        let bit = bit.replace(TO, " to ");
        match tags {
            Ok(tags) if list.tags.len() + tags.len() > MOST_TAGS => list.unread.push((bit, Unread::TooMany)),
            Ok(tags) => {
                for tag in tags {
                    if seen.insert(tag.clone()) {
                        list.tags.push(tag);
                    } else if !list.repeated.contains(&tag) {
                        list.repeated.push(tag);
                    }
                }
            }
            Err(why) => list.unread.push((bit, why)),
        }
    }
    list
}

fn is_dash(c: char) -> bool {
    matches!(c, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}

/// Cuts a text into bits; a dash with spaces around it joins what stands beside it, and so does "to".
fn bits(text: &str) -> Vec<String> {
    let mut bits: Vec<String> = Vec::new();
    for part in text.split([',', ';', '\n', '\r', '\t']) {
        let mut joins = false;
        let first = bits.len();
        let mut words = part
            .split_whitespace()
            .map(|word| word.replace(TO, ""))
            .filter(|word| !word.is_empty())
            .peekable();
        while let Some(word) = words.next() {
            if word.eq_ignore_ascii_case("to") && bits.len() > first && words.peek().is_some() {
                bits.iter_mut().last().into_iter().for_each(|last| last.push(TO));
                joins = true;
                continue;
            }
            let is_joined = joins || (word.starts_with(is_dash) && bits.len() > first);
            joins = word.ends_with(is_dash);
            match bits.last_mut().filter(|_| is_joined) {
                Some(last) => last.push_str(&word),
                None => bits.push(word),
            }
        }
    }
    bits
}

/// Returns the tags of one bit.
fn tags_of(bit: &str) -> Result<Vec<String>, Unread> {
    let Some((from, to)) = ends(bit) else { return Ok(vec![bit.to_owned()]) };
    let (before, first) = split_number(from);
    let (before_last, last) = split_number(to);
    if first.is_empty() || last.is_empty() {
        // A name with a dash in it, such as UK-17, is a tag; a range without an end is none.
        let is_name = !from.is_empty() && first.is_empty() && !to.is_empty() && !bit.contains(TO);
        let is_name = is_name && !to.contains(is_dash);
        return if is_name { Ok(vec![bit.to_owned()]) } else { Err(Unread::NoRange) };
    }
    if !before_last.is_empty() && before_last != before {
        return Err(Unread::NoRange);
    }
    // A letter among the digits of one end alone is a slip, such as O for 0.
    let has = |is: fn(char) -> bool| before.contains(is);
    if before_last.is_empty() && has(|c| c.is_ascii_digit()) && has(char::is_alphabetic) {
        return Err(Unread::NoRange);
    }
    let number = |digits: &str| digits.parse::<u64>().map_err(|_| Unread::TooMany);
    let (start, end) = (number(first)?, number(last)?);
    if end < start {
        return Err(Unread::Backwards);
    }
    let many = usize::try_from(end - start).map_err(|_| Unread::TooMany)?;
    if many >= MOST_TAGS {
        return Err(Unread::TooMany);
    }
    let width = if first.starts_with('0') { first.len() } else { 0 };
    Ok((start..=end).map(|number| format!("{before}{number:0width$}")).collect())
}

/// Returns both ends of a range: beside "to", else beside the dash in the middle, else beside the first.
fn ends(bit: &str) -> Option<(&str, &str)> {
    if let Some(ends) = bit.split_once(TO) {
        return Some(ends);
    }
    let dashes: Vec<(usize, &str)> = bit.match_indices(is_dash).collect();
    let middle = if dashes.len() % 2 == 1 { dashes.len() / 2 } else { 0 };
    let (at, dash) = dashes.get(middle)?;
    Some((&bit[..*at], &bit[at + dash.len()..]))
}

/// Splits `A012` into what stands before its number and the number.
fn split_number(text: &str) -> (&str, &str) {
    let digits = text.chars().rev().take_while(char::is_ascii_digit).count();
    text.split_at(text.len() - digits)
}

/// Returns the tag after this one, with what stands before its number and the zeros in it; nothing of one without a number.
///
/// ```
/// use yeanling_core::units::next_tag;
/// assert_eq!(next_tag("Y-09"), Some("Y-10".to_owned()));
/// assert_eq!(next_tag("blue"), None);
/// ```
#[must_use]
pub fn next_tag(tag: &str) -> Option<String> {
    let (before, digits) = split_number(tag.trim());
    let next = digits.parse::<u64>().ok()?.checked_add(1)?;
    let width = if digits.starts_with('0') { digits.len() } else { 0 };
    Some(format!("{before}{next:0width$}"))
}
