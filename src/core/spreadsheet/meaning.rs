//! What a table and each of its columns hold, told by their heads: a person can put any of it right.

use super::Sheet;
use super::codes::{Code, CodeOf};
use super::dates::date;
use super::heads::HEADS;
use crate::units::System;

/// What one row of a table is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TableKind {
    /// A ewe a row; where a column tells the kind, rams and lambs too.
    Ewes,
    /// A ram a row.
    Rams,
    /// A lamb a row.
    Lambs,
    /// A litter a row.
    Litters,
    /// An animal a row, with one weight or several.
    Weights,
}

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Meaning {
    /// Nothing that is taken.
    Nothing,
    /// The id that the app gave the animal.
    Id,
    /// Whether it is a ewe, a ram or a lamb.
    Kind,
    /// Its tag.
    Tag,
    /// Another name.
    Name,
    /// Its sex.
    Sex,
    /// When it was born, or the litter.
    Born,
    /// Its breed.
    Breed,
    /// Its dam, by her tag.
    Dam,
    /// Its sire, by his tag.
    Sire,
    /// Of how many it was born.
    BornAs,
    /// Of how many it was reared.
    RearedAs,
    /// Whether it was born alive.
    BornAlive,
    /// How its birth went, from 1 to 6.
    Ease,
    /// How many were born in all.
    Count,
    /// How many of them were born dead.
    DeadCount,
    /// What it weighed at birth.
    BirthWeight,
    /// What it weighed at weaning.
    WeaningWeight,
    /// What it weighed at another time.
    Weight,
    /// When it was weighed.
    WeighedOn,
    /// When it was weaned.
    WeanedOn,
    /// What became of it.
    Status,
    /// When it died.
    DiedOn,
    /// Of what it died.
    Cause,
    /// When it left.
    LeftOn,
    /// To whom.
    LeftTo,
    /// When it came.
    Came,
    /// A note.
    Remark,
}

/// A column of a table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Column {
    /// What it holds.
    pub meaning: Meaning,
    /// Of which lamb of a litter, from 1; 0 for the row as a whole.
    pub slot: u8,
    /// The unit that its head tells.
    pub unit: Option<System>,
    /// At how many days of age it was weighed, where its head tells.
    pub age: Option<u16>,
    /// On which day it was weighed, where its head tells, as it stands there.
    pub day: Option<String>,
}

impl TableKind {
    /// All kinds, in the order in which they are offered.
    pub const ALL: [Self; 5] = [Self::Ewes, Self::Rams, Self::Lambs, Self::Litters, Self::Weights];

    /// Returns what a column of such a table can hold, in the order in which it is offered.
    #[must_use]
    pub const fn meanings(self) -> &'static [Meaning] {
        use Meaning as M;
        match self {
            Self::Ewes | Self::Rams => &[
                M::Nothing,
                M::Tag,
                M::Name,
                M::Kind,
                M::Sex,
                M::Born,
                M::Breed,
                M::Dam,
                M::Sire,
                M::BornAs,
                M::Came,
                M::Weight,
                M::WeighedOn,
                M::Status,
                M::DiedOn,
                M::Cause,
                M::LeftOn,
                M::LeftTo,
                M::Remark,
                M::Id,
            ],
            Self::Lambs => &[
                M::Nothing,
                M::Tag,
                M::Name,
                M::Kind,
                M::Sex,
                M::Born,
                M::Dam,
                M::Sire,
                M::BornAs,
                M::RearedAs,
                M::BornAlive,
                M::Ease,
                M::BirthWeight,
                M::WeaningWeight,
                M::WeanedOn,
                M::Weight,
                M::WeighedOn,
                M::Status,
                M::DiedOn,
                M::Cause,
                M::LeftOn,
                M::LeftTo,
                M::Remark,
                M::Breed,
                M::Id,
            ],
            Self::Litters => &[
                M::Nothing,
                M::Dam,
                M::Born,
                M::Count,
                M::DeadCount,
                M::Sire,
                M::Ease,
                M::Tag,
                M::Sex,
                M::BornAlive,
                M::BirthWeight,
                M::Remark,
            ],
            Self::Weights => &[
                M::Nothing,
                M::Tag,
                M::WeighedOn,
                M::Weight,
                M::BirthWeight,
                M::WeaningWeight,
                M::WeanedOn,
                M::Id,
            ],
        }
    }
}

impl Meaning {
    /// Says whether it is a weight.
    #[must_use]
    pub const fn is_weight(self) -> bool {
        matches!(self, Self::BirthWeight | Self::WeaningWeight | Self::Weight)
    }

    /// Says whether it is a date.
    #[must_use]
    pub const fn is_date(self) -> bool {
        matches!(
            self,
            Self::Born | Self::WeighedOn | Self::WeanedOn | Self::DiedOn | Self::LeftOn | Self::Came
        )
    }

    /// Says whether several columns may hold it.
    const fn may_repeat(self) -> bool {
        matches!(self, Self::Nothing | Self::Weight | Self::WeighedOn | Self::Remark)
    }
}

/// Returns a head in small letters, without strokes and stops.
pub(super) fn plain(head: &str) -> String {
    let letters = head.to_lowercase().replace(['_', '-', '.', ':', '(', ')', '[', ']', '/', ','], " ");
    letters.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Returns what a head tells of its column.
#[must_use]
pub fn column_of(head: &str) -> Column {
    let mut column = Column { meaning: Meaning::Nothing, slot: 0, unit: None, age: None, day: None };
    let whole = plain(head);
    column.meaning = named(&whole);
    if column.meaning != Meaning::Nothing {
        return column;
    }
    let mut words: Vec<String> = Vec::new();
    for word in whole.split(' ') {
        let (unit, rest) = unit_of(word);
        column.unit = column.unit.or(unit);
        words.extend(rest.map(str::to_owned));
    }
    column.meaning = named(&words.join(" "));
    if column.meaning != Meaning::Nothing {
        return column;
    }
    // "60 day weight", "weight 90d".
    let number = |word: &str| word.trim_end_matches(char::is_alphabetic).parse::<u16>().ok();
    let is_weight = words.iter().any(|word| {
        ["weight", "wt", "wgt", "w", "dw"].contains(&word.trim_matches(|c: char| c.is_ascii_digit()))
    });
    if let Some(days) =
        words.iter().find_map(|word| number(word)).filter(|days| is_weight && (8..=400).contains(days))
    {
        let in_days =
            words.iter().any(|word| word.trim_start_matches(|c: char| c.is_ascii_digit()).starts_with('d'));
        if in_days {
            return Column { meaning: Meaning::Weight, age: Some(days), ..column };
        }
    }
    // "weight 12-Jun-2022", or the day alone.
    let behind = ["weight", "wt", "weighed"].iter().find_map(|word| {
        let small = head.to_lowercase();
        small.find(word).map(|at| head[at + word.len()..].trim_matches([' ', '(', ')', ':']).to_owned())
    });
    let told = behind.unwrap_or_else(|| head.trim().to_owned());
    let dated = told.contains(['-', '/', '.', ' ']) || told.len() == 5;
    if dated && date(&told, Some(crate::book::DayOrder::DayFirst)).is_ok() {
        return Column { meaning: Meaning::Weight, day: Some(told), ..column };
    }
    // "lamb 1 sex", "tag 2", "bw1".
    let all = words.join(" ");
    let slot = all.chars().filter(char::is_ascii_digit).collect::<String>();
    if let Some(slot) =
        slot.parse::<u8>().ok().filter(|slot| (1..=6).contains(slot) && slot.to_string().len() == 1)
    {
        let rest = all.replace(|c: char| c.is_ascii_digit(), " ");
        let rest = rest.split_whitespace().filter(|word| *word != "l").collect::<Vec<_>>().join(" ");
        let alone = rest.strip_prefix("lamb ").unwrap_or(&rest);
        let mut meaning = named(alone);
        if meaning == Meaning::Weight {
            meaning = Meaning::BirthWeight;
        }
        if meaning == Meaning::Status {
            meaning = Meaning::BornAlive;
        }
        return Column { meaning, slot, ..column };
    }
    column
}

fn named(head: &str) -> Meaning {
    HEADS.iter().find(|(_, names)| names.contains(&head)).map_or(Meaning::Nothing, |(meaning, _)| *meaning)
}

/// Returns the unit that a word tells, and what is left of it.
fn unit_of(word: &str) -> (Option<System>, Option<&str>) {
    match word {
        "kg" | "kgs" | "kilo" | "kilos" => (Some(System::Metric), None),
        "lb" | "lbs" | "pounds" | "pound" | "#" => (Some(System::Us), None),
        "" => (None, None),
        _ => (None, Some(word)),
    }
}

/// Returns how many of these cells tell as heads what stands under them.
pub(super) fn heads_among(cells: &[String]) -> usize {
    cells.iter().filter(|cell| !cell.trim().is_empty() && column_of(cell).meaning != Meaning::Nothing).count()
}

/// Returns what a table seems to be, and what each of its columns seems to hold.
#[must_use]
pub fn guess(sheet: &Sheet) -> (TableKind, Vec<Column>) {
    let mut columns: Vec<Column> = sheet.heads.iter().map(|head| column_of(head)).collect();
    for (place, column) in columns.iter_mut().enumerate() {
        // "Type" heads kinds of animals in one table and twins in another: what stands under it says which.
        let says = |of: CodeOf| {
            let cells = sheet.rows.iter().filter_map(|row| row.get(place));
            cells.filter(|cell| of.known(cell).is_some_and(|code| code != Code::NotKnown)).count()
        };
        if column.meaning == Meaning::Kind && says(CodeOf::Litter) > says(CodeOf::Kind) {
            column.meaning = Meaning::BornAs;
        }
    }
    let has = |meaning: Meaning| columns.iter().any(|column| column.meaning == meaning);
    let heads: Vec<String> = sheet.heads.iter().map(|head| plain(head)).collect();
    let kind = kind_of(&columns, &heads, &has);
    (kind, as_of(sheet, kind, columns))
}

fn kind_of(columns: &[Column], heads: &[String], has: &impl Fn(Meaning) -> bool) -> TableKind {
    let weights = columns.iter().filter(|column| column.meaning == Meaning::Weight).count();
    if columns.iter().any(|column| column.slot > 0) || (has(Meaning::Count) && !has(Meaning::Kind)) {
        return TableKind::Litters;
    }
    if has(Meaning::Kind) {
        return TableKind::Ewes;
    }
    let of_lamb = [
        Meaning::BirthWeight,
        Meaning::WeaningWeight,
        Meaning::WeanedOn,
        Meaning::RearedAs,
        Meaning::BornAlive,
        Meaning::Ease,
    ];
    let lambs = heads.iter().any(|head| head.starts_with("lamb"));
    let weighed = weights > 0 && !has(Meaning::Born) && !has(Meaning::Sex) && !has(Meaning::Breed);
    if weighed && !has(Meaning::Dam) && !has(Meaning::BornAs) {
        return TableKind::Weights;
    }
    if of_lamb.into_iter().any(has)
        || lambs
        || (has(Meaning::Dam) && (has(Meaning::Sex) || !has(Meaning::Breed)))
    {
        return TableKind::Lambs;
    }
    if heads.iter().any(|head| head.starts_with("ram")) && !heads.iter().any(|head| head.starts_with("ewe")) {
        return TableKind::Rams;
    }
    TableKind::Ewes
}

/// Returns the columns of a table of this kind: what such a table does not hold is left, what is held twice is held once.
#[must_use]
pub fn as_of(sheet: &Sheet, kind: TableKind, columns: Vec<Column>) -> Vec<Column> {
    let heads: Vec<String> = sheet.heads.iter().map(|head| plain(head)).collect();
    let mut columns = columns;
    for (column, head) in columns.iter_mut().zip(&heads) {
        let of_ewe = head == "ewe" || head.starts_with("ewe ");
        // Beside a lamb or a litter the ewe is its dam, and the ram its sire.
        if column.slot == 0 && column.meaning == Meaning::Tag {
            if of_ewe && matches!(kind, TableKind::Lambs | TableKind::Litters) {
                column.meaning = Meaning::Dam;
            } else if (head == "ram" || head.starts_with("ram ")) && !matches!(kind, TableKind::Rams) {
                column.meaning = Meaning::Sire;
            } else if kind == TableKind::Litters {
                column.meaning = Meaning::Dam;
            }
        }
        if column.meaning == Meaning::WeighedOn
            && head == "date"
            && matches!(kind, TableKind::Lambs | TableKind::Litters)
        {
            column.meaning = Meaning::Born;
        }
        if !kind.meanings().contains(&column.meaning) {
            column.meaning = Meaning::Nothing;
        }
    }
    // Where two columns seem to hold the same, a day tells more than a year, and "tag" more than "id".
    for at in 0..columns.len() {
        let Column { meaning, slot, .. } = columns[at];
        let first = columns[..at].iter().position(|other| other.meaning == meaning && other.slot == slot);
        let Some(first) = first.filter(|_| !meaning.may_repeat()) else { continue };
        let better = if meaning == Meaning::Born {
            heads[first].contains("year")
        } else {
            meaning == Meaning::Tag && matches!(heads[first].as_str(), "id" | "no" | "number")
        };
        columns[if better { first } else { at }].meaning = Meaning::Nothing;
    }
    if kind != TableKind::Litters && !columns.iter().any(|column| column.meaning == Meaning::Tag) {
        // A name stands for the tag where there is none.
        if let Some(name) = columns.iter_mut().find(|column| column.meaning == Meaning::Name) {
            name.meaning = Meaning::Tag;
        }
    }
    columns
}
