//! Writes a table as comma-separated values, for any spreadsheet.
//!
//! Lines end in CRLF and the text begins with the mark by which spreadsheets know UTF-8. A cell of someone's own words
//! that a spreadsheet would take for a formula is written behind an apostrophe, so that it stays text; what would turn the
//! direction of the line, or is no text at all, is left out.

use chrono::{Datelike, NaiveDate, Timelike};

use crate::sanitize::turns_text;
use crate::units::Moment;

/// One cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    /// Nothing.
    Nothing,
    /// Words, anybody's.
    Text(String),
    /// A number, to so many decimal places; the point is a point. What is no number is written as nothing.
    Number(f64, usize),
    /// A day: `2026-02-25`.
    Day(NaiveDate),
    /// An instant by the clock it was lived at, to the minute: `2026-02-25 03:12`.
    At(Moment),
}

impl Cell {
    /// Returns the cell of words that may be missing.
    #[must_use]
    pub fn text(text: impl Into<Option<String>>) -> Self {
        text.into().map_or(Self::Nothing, Self::Text)
    }

    /// Returns the cell of a number that may be missing.
    #[must_use]
    pub fn number(number: Option<f64>, places: usize) -> Self {
        number.map_or(Self::Nothing, |number| Self::Number(number, places))
    }

    /// Returns the cell of an instant that may be missing.
    #[must_use]
    pub fn at(at: Option<Moment>) -> Self {
        at.map_or(Self::Nothing, Self::At)
    }

    fn written(&self) -> String {
        match self {
            Self::Nothing => String::new(),
            Self::Text(text) => quoted(&defused(text)),
            Self::Number(number, places) if number.is_finite() => format!("{number:.places$}"),
            Self::Number(..) => String::new(),
            Self::Day(day) => date(*day),
            Self::At(at) => {
                let local = at.local();
                format!("{} {:02}:{:02}", date(local.date()), local.hour(), local.minute())
            }
        }
    }
}

fn date(day: NaiveDate) -> String {
    format!("{:04}-{:02}-{:02}", day.year(), day.month(), day.day())
}

/// What a spreadsheet may take for the beginning of a formula; the wide forms where Chinese or Japanese is typed.
const FORMULA: [char; 8] = ['=', '+', '-', '@', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}'];

/// White space that no one begins a text with.
const ODD_START: [char; 3] = ['\t', '\r', '\n'];

fn defused(text: &str) -> String {
    let acts = |c: char| turns_text(c) || (c.is_control() && !ODD_START.contains(&c));
    let text = text.replace(acts, "");
    let seen = text.trim_start_matches(|c: char| c.is_whitespace() || c == '\u{feff}');
    if seen.starts_with(FORMULA) || text.starts_with(ODD_START) { format!("'{text}") } else { text }
}

fn quoted(text: &str) -> String {
    if text.contains([',', '"', '\r', '\n', ';']) || text.trim() != text {
        format!("\"{}\"", text.replace('"', "\"\""))
    } else {
        text.to_owned()
    }
}

/// Returns a table with its heads; every row is as long as the heads, by cells of nothing or by leaving out.
///
/// ```
/// use yeanling_core::spreadsheet::{Cell, write};
/// let text = write(&["tag", "kg"], [vec![Cell::Text("12, white".to_owned()), Cell::Number(4.2, 2)]]);
/// assert_eq!(text, "\u{feff}tag,kg\r\n\"12, white\",4.20\r\n");
/// ```
#[must_use]
pub fn write(heads: &[&str], rows: impl IntoIterator<Item = Vec<Cell>>) -> String {
    let mut text = "\u{feff}".to_owned();
    let mut line = |cells: Vec<String>| {
        text += &cells.join(",");
        text += "\r\n";
    };
    line(heads.iter().map(|head| quoted(head)).collect());
    for mut row in rows {
        row.resize(heads.len(), Cell::Nothing);
        line(row.iter().map(Cell::written).collect());
    }
    text
}
