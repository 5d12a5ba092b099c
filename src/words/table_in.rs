//! A farm's tables on their way in: what they are taken for, what they bring, and what has to be put right.

use yeanling_core::book::{Animal, DayOrder, Departure, EntryId, Event, Life, Past};
use yeanling_core::bring::{NoRow, RowTrouble};
use yeanling_core::flock::Flock;
use yeanling_core::spreadsheet::{
    Code, CodeOf, Dated, MOST_ROWS, Meaning, NoDate, SheetError, TableKind, date as read_date,
};
use yeanling_core::units::System;

use super::animals::{self, ewes};
use super::common::{long_date, mass, typed};
use super::noted;

/// Heads the way in.
pub const TITLE: &str = "From a spreadsheet or a list";
/// Explains it.
pub const SUB: &str = "Ewes, rams, lambs, litters or weights, one row each, saved as CSV. Nothing changes before you have seen it.";
/// Opens a file.
pub const OPEN: &str = "Open a table";
/// Reads it.
pub const READING: &str = "Reading…";
/// Asks what a row is.
pub const KIND: &str = "What is one row?";
/// Heads the columns.
pub const COLUMNS: &str = "Columns";
/// Says that they can be changed.
pub const COLUMNS_SUB: &str = "Tap Change where a column is read wrong.";
/// Changes what a column holds.
pub const CHANGE: &str = "Change";
/// Closes the choice again.
pub const CLOSE: &str = "Close";
/// Asks what a column holds.
pub const HOLDS: &str = "What does it hold?";
/// Heads what has to be answered.
pub const QUESTIONS: &str = "Please answer";
/// Asks how dates are to be read.
pub const ORDER: &str = "What comes first in a date?";
/// Asks for the unit.
pub const UNIT: &str = "The weights without a unit are in";
/// Asks what becomes of parents that are not here.
pub const ADD_PARENTS: &str = "Add them";
/// Leaves their rows out.
pub const LEAVE_PARENTS: &str = "Leave those rows out";
/// Heads the first rows.
pub const FIRST: &str = "The first rows, as they would be noted";
/// Heads the rows that bring nothing.
pub const LEFT_OUT: &str = "Rows that bring nothing";
/// Leaves it.
pub const LEAVE: &str = "Cancel";
/// Takes it back.
pub const TAKE_BACK: &str = "Take this import back";
/// Says that the table was read as the last of its kind was.
pub const REMEMBERED: &str = "Read as the last table with these columns.";
/// Says that nothing can be added.
pub const NOTHING: &str = "Nothing in this table can be added yet.";
/// What is remarked where nobody knows the day.
pub const DAY_NOT_KNOWN: &str = "Day not known: from a table";

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

/// Returns what a row is.
pub const fn kind(kind: TableKind) -> &'static str {
    match kind {
        TableKind::Ewes => "A ewe",
        TableKind::Rams => "A ram",
        TableKind::Lambs => "A lamb",
        TableKind::Litters => "A litter",
        TableKind::Weights => "Weights",
    }
}

/// Returns what a column holds.
pub const fn meaning(meaning: Meaning) -> &'static str {
    match meaning {
        Meaning::Nothing => "Leave out",
        Meaning::Id => "Yeanling’s id",
        Meaning::Kind => "Ewe, ram or lamb",
        Meaning::Tag => "Tag",
        Meaning::Name => "Other name",
        Meaning::Sex => "Sex",
        Meaning::Born => "Born",
        Meaning::Breed => "Breed",
        Meaning::Dam => "Dam",
        Meaning::Sire => "Sire",
        Meaning::BornAs => "Born as",
        Meaning::RearedAs => "Reared as",
        Meaning::BornAlive => "Born alive",
        Meaning::Ease => "Birth ease (1-6)",
        Meaning::Count => "Lambs born",
        Meaning::DeadCount => "Born dead",
        Meaning::BirthWeight => "Birth weight",
        Meaning::WeaningWeight => "Weaning weight",
        Meaning::Weight => "Weight",
        Meaning::WeighedOn => "Weighed on",
        Meaning::WeanedOn => "Weaned on",
        Meaning::Status => "Alive, dead, sold",
        Meaning::DiedOn => "Died on",
        Meaning::Cause => "Cause of death",
        Meaning::LeftOn => "Left on",
        Meaning::LeftTo => "Sold to",
        Meaning::Came => "Came on",
        Meaning::Remark => "Note",
    }
}

/// Returns what a column is read as: "Tag", "Sex of lamb 2", "Weight at 60 days", "Weight (lb)".
pub fn read_as(column: &yeanling_core::spreadsheet::Column) -> String {
    let mut said = meaning(column.meaning).to_owned();
    if column.slot > 0 {
        said = format!("{said} of lamb {}", column.slot);
    }
    if let Some(age) = column.age {
        said = format!("{said} at {age} days");
    }
    if let Some(day) = &column.day {
        said = format!("{said} on {day}");
    }
    match column.unit {
        Some(unit) if column.meaning.is_weight() => format!("{said} ({})", unit_short(unit)),
        Some(_) | None => said,
    }
}

/// Returns a column with what it is read as: "DOB: Born".
pub fn column(head: &str, read_as: &str) -> String {
    format!("*{}*: {read_as}", typed(head))
}

/// Returns the first cells of a column: "14, 15, 16".
pub fn cells(cells: &[&str]) -> String {
    cells.join(", ")
}

const fn unit_short(unit: System) -> &'static str {
    match unit {
        System::Metric => "kg",
        System::Us => "lb",
    }
}

/// Names a unit.
pub const fn unit(unit: System) -> &'static str {
    match unit {
        System::Metric => "Kilograms",
        System::Us => "Pounds",
    }
}

/// Returns a date as it would be read: "12/03/2021 is 12 Mar 2021".
pub fn would_be(text: &str, order: DayOrder) -> String {
    match read_date(text, Some(order)) {
        Ok(Dated::Day(day)) => format!("{text} is {}", long_date(day)),
        Ok(Dated::At(at)) => format!("{text} is {}", long_date(at.date())),
        Ok(Dated::Year(_)) | Err(_) => text.to_owned(),
    }
}

/// Names what comes first.
pub const fn order(order: DayOrder) -> &'static str {
    match order {
        DayOrder::DayFirst => "The day",
        DayOrder::MonthFirst => "The month",
    }
}

/// Asks what a code means: "“X” (3 rows), sex".
pub fn code(of: CodeOf, text: &str, rows: usize) -> String {
    let what = match of {
        CodeOf::Kind => "kind of animal",
        CodeOf::Sex => "sex",
        CodeOf::Litter => "born or reared as",
        CodeOf::Alive => "born alive",
        CodeOf::Status => "what became of it",
    };
    let rows = if rows == 1 { "1 row".to_owned() } else { format!("{rows} rows") };
    format!("“{text}” ({what}, {rows}) means")
}

/// Returns what a code can mean.
pub fn means(of: CodeOf, code: Code) -> String {
    match code {
        Code::Ewe => "Ewe".to_owned(),
        Code::Ram => "Ram".to_owned(),
        Code::Wether => "Wether".to_owned(),
        Code::Lamb => "Lamb".to_owned(),
        Code::Of(lambs) => animals::litter(lambs.into()),
        Code::ByHand => "by hand".to_owned(),
        Code::Alive if of == CodeOf::Status => "Here".to_owned(),
        Code::Alive => "Alive".to_owned(),
        Code::Dead => "Dead".to_owned(),
        Code::Gone(how) => match how {
            Departure::Sold | Departure::SoldWithWarning => "Sold".to_owned(),
            Departure::Slaughtered => "Slaughtered".to_owned(),
            Departure::Given => "Given away".to_owned(),
            Departure::Missing => "Missing".to_owned(),
        },
        Code::NotKnown => "Not known".to_owned(),
    }
}

/// Says which parents are not in the book: "Not in your book: 12, 31 and 4 more."
pub fn parents(names: &[String]) -> String {
    format!("Dams or sires not in your book: {}.", named(names))
}

/// Says which tags are kept as names.
pub fn as_names(names: &[String]) -> String {
    format!("Worn by another animal too, so kept as another name: {}.", named(names))
}

fn named(names: &[String]) -> String {
    let first: Vec<&str> = names.iter().take(5).map(String::as_str).collect();
    let rest = names.len() - first.len();
    let more = if rest > 0 { format!(" and {rest} more") } else { String::new() };
    format!("{}{more}", typed(&first.join(", ")))
}

/// Returns what comes: "12 ewes, 1 ram, 40 lambs, 80 weights".
pub fn counts([ewe, ram, lamb, weight]: [usize; 4]) -> String {
    let part = |count: usize, one: &str, many: &str| {
        (count > 0).then(|| format!("{count} {}", if count == 1 { one } else { many }))
    };
    let ewes = (ewe > 0).then(|| ewes(ewe));
    let parts =
        [ewes, part(ram, "ram", "rams"), part(lamb, "lamb", "lambs"), part(weight, "weight", "weights")];
    let parts: Vec<String> = parts.into_iter().flatten().collect();
    if parts.is_empty() { "what it tells".to_owned() } else { parts.join(", ") }
}

/// Returns the button that adds it: "Add 40 lambs, 80 weights".
pub fn add(counts_of: [usize; 4], left_out: usize) -> String {
    let without = match left_out {
        0 => String::new(),
        1 => ", without 1 row".to_owned(),
        rows => format!(", without {rows} rows"),
    };
    format!("Add {}{without}", counts(counts_of))
}

/// Says that it was added.
pub fn added(counts_of: [usize; 4]) -> String {
    format!("{} added.", counts(counts_of))
}

/// Says how many rows this book has already.
pub fn known(rows: usize) -> String {
    if rows == 1 {
        "1 row is in your book already.".to_owned()
    } else {
        format!("{rows} rows are in your book already.")
    }
}

/// Returns a row as it would be noted: "Line 3: Ewe lamb born 14 Mar 2022 · tag 201".
pub fn row(line: usize, facts: &[String]) -> String {
    format!("Line {line}: {}", facts.join(" · "))
}

/// Returns a fact of a row in a few words, with its day if that is another than the one before it.
pub fn fact(
    id: EntryId,
    event: &Event,
    flock: &Flock,
    system: System,
    day: Option<chrono::NaiveDate>,
) -> String {
    let said = if let Event::EweCame { .. } = event {
        format!("*{}* (new)", typed(&animals::ewe_of(flock, id.as_ewe())))
    } else if let Event::Tagged { tag, .. } = event {
        format!("tag *{}*", typed(tag))
    } else if let Event::LambBorn { dam: Some(dam), .. } = event {
        format!("{} of {}", noted::line(event, flock, system), typed(&animals::ewe_of(flock, *dam)))
    } else if let Event::Past(Past::Sired { ram, .. }) = event {
        format!("sire {}", typed(&animals::ewe_of(flock, *ram)))
    } else if let Event::Past(Past::DamOf { dam, .. }) = event {
        format!("dam {}", typed(&animals::ewe_of(flock, *dam)))
    } else if let Event::Weighed { mass: weight, .. } | Event::EweWeighed { mass: weight, .. } = event {
        let whose = event.animals().next().map(|animal| match animal {
            Animal::Ewe(_) | Animal::Lamb(_) => animals::animal(flock, animal),
        });
        format!("{} {}", typed(&whose.unwrap_or_default()), mass(*weight, system))
    } else if let Event::Life(Life::KeptAsEwe { .. }) = event {
        "kept as a ewe".to_owned()
    } else {
        noted::line(event, flock, system)
    };
    match day {
        Some(day) => format!("{said}, {}", long_date(day)),
        None => said,
    }
}

/// Returns why a row brings nothing: "Line 5, 14: …"
pub fn left_out(row: &NoRow) -> String {
    let why = match &row.why {
        RowTrouble::NoTag => "it does not say which animal.".to_owned(),
        RowTrouble::Here(tag) => format!("tag {tag} is on another live animal."),
        RowTrouble::Again(tag) => format!("{tag} is in an earlier row too."),
        RowTrouble::Date { text, why: NoDate::TwoWays, .. } => {
            format!("“{text}” can be read day first or month first. Choose above.")
        }
        RowTrouble::Date { of, text, why: NoDate::Unknown } => {
            format!("“{text}” under “{}” is not a date.", meaning(*of))
        }
        RowTrouble::NoDay(of) => format!("“{}” needs a day.", meaning(*of)),
        RowTrouble::Ahead(text) => format!("{text} has not come yet."),
        RowTrouble::Number { of, text } if of.is_weight() => {
            format!("“{text}” under “{}” is not a weight.", meaning(*of))
        }
        RowTrouble::Number { of, text } => {
            format!("“{text}” under “{}” is not a number that fits.", meaning(*of))
        }
        RowTrouble::Code(_, text) => format!("“{text}” is not known. Say above what it means."),
        RowTrouble::Unknown(name) => format!("{name} is not in your book."),
        RowTrouble::Many(name) => format!("more than one animal is called {name}."),
        RowTrouble::Nothing => "it tells nothing that can be noted.".to_owned(),
    };
    line(row.line, row.whose.as_deref(), &why)
}

/// Returns why a row may not be noted: "Line 5, 14: 41 kg is out of range…"
pub fn line(line: usize, whose: Option<&str>, why: &str) -> String {
    match whose {
        Some(whose) => format!("Line {line}, {whose}: {why}"),
        None => format!("Line {line}: {why}"),
    }
}

/// Returns how many more rows are left out than are told.
pub fn and_more(count: usize) -> String {
    format!("and {count} more")
}

/// Returns why a table cannot be read.
pub fn no_sheet(error: SheetError) -> String {
    match error {
        SheetError::Empty => {
            "This file has no rows. One line names the columns, then one row an animal.".to_owned()
        }
        SheetError::TooLarge { .. } => {
            "This file is over 8 MB. A table of a flock is far smaller.".to_owned()
        }
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
