//! Ewes from a spreadsheet: what a table would bring, and why a row brings none.

use yeanling_core::book::{BirthDay, DayOrder, NoBirthDay};
use yeanling_core::spreadsheet::{Column, MOST_ROWS, NoRow, RowTrouble, SheetError};

use super::animals::ewes;
use super::common::long_date;
use super::life;

/// Heads the way in.
pub const TITLE: &str = "Ewes from a spreadsheet";
/// Explains it.
pub const SUB: &str = "A CSV file with one row a ewe: tag, birth, breed, note. You see what it would add before anything changes.";
/// Opens a file.
pub const OPEN: &str = "Open a table";
/// Reads it.
pub const READING: &str = "Reading…";
/// Heads the choice of columns.
pub const COLUMNS: &str = "Columns";
/// No column.
pub const NO_COLUMN: &str = "none";
/// Names a column without a head by its letter, the first from 1: "column C".
pub fn letter(place: usize) -> String {
    let mut letters = String::new();
    let mut rest = place;
    while rest > 0 {
        let letter = u8::try_from((rest - 1) % 26).unwrap_or(0);
        letters.insert(0, char::from(b'A' + letter));
        rest = (rest - 1) / 26;
    }
    format!("column {letters}")
}

/// Says that a column of tags is needed.
pub const NO_TAGS: &str = "Choose the column with the tags.";
/// Asks how dates are to be read.
pub const ORDER: &str = "What comes first in a date?";

/// Returns a date as it would be read: "12/03/2021 is 12 Mar 2021".
pub fn would_be(text: &str, order: DayOrder) -> String {
    match BirthDay::parse_in(text, Some(order)) {
        Ok(BirthDay::Day(day)) => format!("{text} is {}", long_date(day)),
        Ok(BirthDay::Year(year)) => year.to_string(),
        Err(_) => text.to_owned(),
    }
}

/// Names what comes first.
pub const fn order(order: DayOrder) -> &'static str {
    match order {
        DayOrder::DayFirst => "The day",
        DayOrder::MonthFirst => "The month",
    }
}

/// Leaves it.
pub const LEAVE: &str = "Cancel";
/// Heads the rows that bring none.
pub const LEFT_OUT: &str = "Rows left out";

/// Returns what a column holds.
pub const fn column(column: Column) -> &'static str {
    match column {
        Column::Tag => "Tag",
        Column::Born => "Birth",
        Column::Breed => "Breed",
        Column::Remark => "Note",
    }
}

/// Returns what the table would add: "24 ewes: 14, 21, 22 and 21 more".
pub fn would_add(tags: &[&str]) -> String {
    let first: Vec<&str> = tags.iter().take(5).copied().collect();
    let rest = tags.len() - first.len();
    let more = if rest > 0 { format!(" and {rest} more") } else { String::new() };
    format!("*{}*: {}{more}", ewes(tags.len()), first.join(", "))
}

/// Adds them.
pub fn add(count: usize) -> String {
    format!("Add {}", ewes(count))
}

/// Says that they were added.
pub fn added(count: usize) -> String {
    format!("{} added.", ewes(count))
}

/// Returns why a row brings no ewe: "Line 5, ewe 14: …"
pub fn left_out(row: &NoRow) -> String {
    let why = match &row.why {
        RowTrouble::NoTag => "no tag.".to_owned(),
        RowTrouble::LongTag { given, most } => {
            format!("a tag of {given} characters; at most {most} fit.")
        }
        RowTrouble::Here(tag) => format!("tag {tag} is on another live animal."),
        RowTrouble::Again(tag) => format!("{tag} is in an earlier row too."),
        RowTrouble::Born(NoBirthDay::TwoWays(text)) => {
            format!("“{text}” can be read day first or month first. Choose above.")
        }
        RowTrouble::Born(error) => life::no_birth_day(error),
        RowTrouble::Long { given, most } => {
            format!("a text of {given} characters; at most {most} fit.")
        }
    };
    // The heads are the first line.
    match (&row.why, &row.tag) {
        (RowTrouble::Born(_) | RowTrouble::Long { .. }, Some(tag)) => {
            format!("Line {}, ewe {tag}: {why}", row.row + 1)
        }
        _ => format!("Line {}: {why}", row.row + 1),
    }
}

/// Returns why a ewe may not be noted, so that nothing was.
pub fn refused(tag: &str, why: &str) -> String {
    format!("Nothing was added. {tag}: {why}")
}

/// Returns how many more rows are left out than are told.
pub fn and_more(count: usize) -> String {
    format!("and {count} more")
}

/// Returns why a table cannot be read.
pub fn no_sheet(error: SheetError) -> String {
    match error {
        SheetError::Empty => {
            "This file has no rows. The first line names the columns, then one row a ewe.".to_owned()
        }
        SheetError::TooLarge { .. } => "This file is over 4 MB. A list of ewes is far smaller.".to_owned(),
        SheetError::TooManyRows { given } => {
            format!("{given} rows are too many. At most {MOST_ROWS} at once: split the file.")
        }
        SheetError::NoText => {
            "This is not a CSV file. In your spreadsheet, save the table as CSV and open that.".to_owned()
        }
        SheetError::OpenQuote { line } => format!("The quote that starts in line {line} does not end."),
    }
}

#[cfg(test)]
mod tests {
    use super::letter;

    #[test]
    fn a_column_without_a_head_is_named_as_spreadsheets_name_it() {
        let named = [1, 26, 27, 53, 703].map(letter);
        assert_eq!(named, ["column A", "column Z", "column AA", "column BA", "column AAA"]);
    }
}
