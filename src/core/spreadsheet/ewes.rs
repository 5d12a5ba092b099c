//! From a table to ewes: which column holds what, and what each row would bring, before anything is noted.
//!
//! A date without a year, or with the month first, is not guessed: 3/4/2022 is asked back.

use std::collections::BTreeSet;

use super::Sheet;
use crate::book::{BirthDay, DayOrder, MOST_REMARK, MOST_TAG, MOST_WORDS, NoBirthDay};

/// What a column can hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Column {
    /// The ear tag.
    Tag,
    /// The year or the day of birth.
    Born,
    /// The breed.
    Breed,
    /// Anything else worth keeping.
    Remark,
}

/// Names under which spreadsheets keep these, in small letters.
const NAMES: [(Column, &[&str]); 4] = [
    (Column::Tag, &["tag", "ear tag", "eartag", "id", "number", "no", "name", "ewe", "animal"]),
    (
        Column::Born,
        &["born", "birth", "date of birth", "birth date", "birthdate", "dob", "year", "born or came"],
    ),
    (Column::Breed, &["breed", "race"]),
    (Column::Remark, &["remark", "remarks", "note", "notes", "comment", "comments"]),
];

/// A ewe as a row has her.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NewEwe {
    /// In which row she stands, from 1, the heads not counted.
    pub row: usize,
    /// Her tag.
    pub tag: String,
    /// When she was born, if it says.
    pub born: Option<BirthDay>,
    /// Her breed, if it says.
    pub breed: Option<String>,
    /// What else it says.
    pub remark: Option<String>,
}

/// Why a row brings no ewe.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RowTrouble {
    /// It has no tag.
    NoTag,
    /// Her tag is longer than the book takes, in characters.
    LongTag {
        /// How many characters.
        given: usize,
        /// How many are allowed.
        most: usize,
    },
    /// A ewe of this tag lives here already.
    Here(String),
    /// An earlier row has the same tag.
    Again(String),
    /// Her birth cannot be read.
    Born(NoBirthDay),
    /// A text is longer than the book takes.
    Long {
        /// How many characters.
        given: usize,
        /// How many are allowed.
        most: usize,
    },
}

/// A row that brings no ewe.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoRow {
    /// Which row, from 1, the heads not counted.
    pub row: usize,
    /// The tag that stands in it.
    pub tag: Option<String>,
    /// Why.
    pub why: RowTrouble,
}

/// What a table would bring.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Preview {
    /// The ewes, in the order of their rows.
    pub ewes: Vec<NewEwe>,
    /// The rows that bring none.
    pub left_out: Vec<NoRow>,
}

impl Preview {
    /// Returns the first date that can be read with the day or the month first.
    #[must_use]
    pub fn two_ways(&self) -> Option<&str> {
        self.left_out.iter().find_map(|row| {
            if let RowTrouble::Born(NoBirthDay::TwoWays(text)) = &row.why {
                Some(text.as_str())
            } else {
                None
            }
        })
    }
}

/// Returns which column holds what, by the names at their heads: tag, birth, breed, remark; each at most once.
#[must_use]
pub fn columns(sheet: &Sheet) -> [(Column, Option<usize>); 4] {
    let heads: Vec<String> = sheet.heads.iter().map(|head| plain(head)).collect();
    NAMES.map(|(column, names)| {
        (column, names.iter().find_map(|name| heads.iter().position(|head| head == name)))
    })
}

fn plain(head: &str) -> String {
    let letters = head.to_lowercase().replace(['_', '-', '.', ':'], " ");
    letters.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Returns the ewes that a table would bring, and the rows that bring none and why.
///
/// `here` are the tags that living animals wear, in small letters. Without an `order`, a date that can be read both ways
/// is not guessed at. Formula cells are read as the text they are.
#[must_use]
pub fn preview(
    sheet: &Sheet,
    columns: &[(Column, Option<usize>)],
    here: &BTreeSet<String>,
    order: Option<DayOrder>,
) -> Preview {
    let place =
        |column: Column| columns.iter().find(|(other, _)| *other == column).and_then(|(_, place)| *place);
    let mut seen = BTreeSet::new();
    let mut preview = Preview::default();
    for (number, cells) in (1..).zip(&sheet.rows) {
        let cell = |column: Column| {
            let text = place(column).and_then(|place| cells.get(place)).map_or("", |cell| cell.trim());
            // An apostrophe in front is a spreadsheet's way to keep text from being a formula.
            let text = text.strip_prefix('\'').unwrap_or(text);
            (!text.is_empty()).then(|| text.to_owned())
        };
        let cells = [Column::Tag, Column::Born, Column::Breed, Column::Remark].map(cell);
        let tag = cells[0].clone();
        match ewe(number, cells, here, &mut seen, order) {
            Ok(ewe) => preview.ewes.push(ewe),
            Err(why) => preview.left_out.push(NoRow { row: number, tag, why }),
        }
    }
    preview
}

fn ewe(
    row: usize,
    [tag, born, breed, remark]: [Option<String>; 4],
    here: &BTreeSet<String>,
    seen: &mut BTreeSet<String>,
    order: Option<DayOrder>,
) -> Result<NewEwe, RowTrouble> {
    let tag = tag.ok_or(RowTrouble::NoTag)?;
    let given = tag.chars().count();
    if given > MOST_TAG {
        return Err(RowTrouble::LongTag { given, most: MOST_TAG });
    }
    let small = tag.to_lowercase();
    if here.contains(&small) {
        return Err(RowTrouble::Here(tag));
    }
    if seen.contains(&small) {
        return Err(RowTrouble::Again(tag));
    }
    let born = born.map(|text| BirthDay::parse_in(&text, order)).transpose().map_err(RowTrouble::Born)?;
    for (text, most) in [(&breed, MOST_WORDS), (&remark, MOST_REMARK)] {
        let given = text.as_ref().map_or(0, |text| text.chars().count());
        if given > most {
            return Err(RowTrouble::Long { given, most });
        }
    }
    seen.insert(small);
    Ok(NewEwe { row, tag, born, breed, remark })
}
