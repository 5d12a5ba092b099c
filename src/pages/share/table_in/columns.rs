//! The columns of a table, each with what it is read as and its first cells; one at a time lies open to be changed.

use yeanling_core::spreadsheet::Column;
use yeanling_words::table_in as words;

use super::{Change, Import, does};
use crate::block::{Choice, Choices, Row};
use crate::page::Blocks;
use crate::share::Does as Only;
use crate::{Button, Text};

/// So many of its cells tell what a column holds.
const CELLS: usize = 3;

pub(super) fn blocks(import: &Import) -> Blocks {
    let columns = || import.setup.columns.iter().enumerate();
    let mut blocks = Blocks::new().small(words::COLUMNS_SUB).rows(
        "column-rows",
        columns().map(|(place, column)| (format!("column-{place}"), row(import, place, column))),
    );
    if let Some((place, column)) = import.open.and_then(|open| columns().nth(open)) {
        blocks = blocks.heading(head(import, place)).choices("column-meaning", holds(import, place, column));
    }
    blocks
}

fn head(import: &Import, place: usize) -> String {
    let head = import.sheet.heads.get(place).map_or("", |head| head.trim());
    // A column without a head is told by its letter, as spreadsheets do.
    if head.is_empty() { words::letter(place + 1) } else { head.to_owned() }
}

fn row(import: &Import, place: usize, column: &Column) -> Row {
    let cells = import.sheet.rows.iter().filter_map(|row| row.get(place)).filter(|cell| !cell.is_empty());
    let mut first: Vec<&str> = Vec::new();
    for cell in cells {
        if first.len() == CELLS {
            break;
        }
        if !first.contains(&cell.as_str()) {
            first.push(cell);
        }
    }
    let name = head(import, place);
    let (label, to) = match import.open == Some(place) {
        true => (words::CLOSE, None),
        false => (words::CHANGE, Some(place)),
    };
    let change =
        Button::new("change", label, does(Only::Table(Change::Open(to)))).action(format!("{label} {name}"));
    Row::new(name).kind(words::read_as(column)).text(Text::typed(&words::cells(&first))).action(Some(change))
}

fn holds(import: &Import, place: usize, column: &Column) -> Choices {
    let meanings = import.setup.kind.meanings();
    let option = |meaning: &yeanling_core::spreadsheet::Meaning| {
        Choice::new(words::meaning(*meaning), does(Only::Table(Change::Column(place, *meaning))))
    };
    let chosen = meanings.iter().position(|meaning| *meaning == column.meaning);
    Choices::new(words::HOLDS, meanings.iter().map(option).collect(), chosen).labelled().snug()
}
