//! One row of a table, by what its columns hold.

use super::{RowTrouble, Setup};
use crate::spreadsheet::{Column, Meaning, TableKind, says_nothing};
use crate::units::{Mass, System};

/// A row.
pub(super) struct Row<'a> {
    cells: &'a [String],
    setup: &'a Setup,
}

/// When a weight was taken, as far as its column tells.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Taken<'a> {
    /// On this day, as it stands there.
    On(&'a str),
    /// At so many days of age.
    AtAge(u16),
    /// Nothing tells.
    Unsaid,
}

impl<'a> Row<'a> {
    pub(super) fn new(cells: &'a [String], setup: &'a Setup) -> Self {
        Self { cells, setup }
    }

    /// What stands in the first column of this meaning, if it says anything.
    pub(super) fn text(&self, meaning: Meaning) -> Option<&'a str> {
        self.of_slot(meaning, 0)
    }

    /// The same of one lamb of a litter.
    pub(super) fn of_slot(&self, meaning: Meaning, slot: u8) -> Option<&'a str> {
        self.all(meaning).filter(|(column, _)| column.slot == slot).find_map(|(_, text)| text)
    }

    /// All columns of this meaning, each with what stands there.
    pub(super) fn all(
        &self,
        meaning: Meaning,
    ) -> impl Iterator<Item = (&'a Column, Option<&'a str>)> + use<'a> {
        let (columns, cells) = (&self.setup.columns, self.cells);
        let of = columns.iter().enumerate().filter(move |(_, column)| column.meaning == meaning);
        of.map(move |(place, column)| (column, cells.get(place).and_then(|cell| said(cell))))
    }

    /// Of whom the row is, as it stands there.
    pub(super) fn whose(&self) -> Option<String> {
        let by = match self.setup.kind {
            TableKind::Litters => Meaning::Dam,
            TableKind::Ewes | TableKind::Rams | TableKind::Lambs | TableKind::Weights => Meaning::Tag,
        };
        self.text(by).map(str::to_owned)
    }

    /// Each weight of this meaning that stands in the row, with when it was taken: on the day of its head, or of the
    /// nearest column of days behind it, else before it.
    pub(super) fn weights(&self, meaning: Meaning, slot: u8) -> Vec<(&'a Column, &'a str, Taken<'a>)> {
        let columns = &self.setup.columns;
        let told = |place: usize| self.cells.get(place).and_then(|cell| said(cell));
        let is = |place: &usize| columns[*place].meaning == meaning && columns[*place].slot == slot;
        let days = || (0..columns.len()).filter(|place| columns[*place].meaning == Meaning::WeighedOn);
        let one = |place: usize| {
            let column = &columns[place];
            let text = told(place)?;
            let day = days().find(|day| *day > place).or_else(|| days().rfind(|day| *day < place));
            let taken = match (&column.day, column.age, day.and_then(told)) {
                (Some(day), ..) => Taken::On(day),
                (None, Some(age), _) => Taken::AtAge(age),
                (None, None, Some(day)) => Taken::On(day),
                (None, None, None) => Taken::Unsaid,
            };
            Some((column, text, taken))
        };
        (0..columns.len()).filter(is).filter_map(one).collect()
    }
}

/// What a cell says: nothing of an empty one, or one that says that nothing is known. An apostrophe in front is a
/// spreadsheet's way to keep text from being a formula.
fn said(cell: &str) -> Option<&str> {
    let text = cell.trim();
    let text = text.strip_prefix('\'').unwrap_or(text);
    (!says_nothing(text)).then_some(text)
}

/// Reads a weight, in the unit that it, its head or the table tells; says whether the table had to.
pub(super) fn mass(column: &Column, text: &str, setup: &Setup) -> Result<(Mass, bool), RowTrouble> {
    let wrong = || RowTrouble::Number { of: column.meaning, text: text.to_owned() };
    let unit = column.unit.unwrap_or(setup.unit);
    let mass = Mass::parse(text, unit).map_err(|_| wrong())?;
    let other = match unit {
        System::Metric => System::Us,
        System::Us => System::Metric,
    };
    let said_there = Mass::parse(text, other).is_ok_and(|by_other| by_other == mass);
    Ok((mass, column.unit.is_none() && !said_there))
}

/// Reads a whole number.
pub(super) fn whole(of: Meaning, text: &str) -> Result<u8, RowTrouble> {
    let text = text.trim_end_matches(".0");
    text.parse().map_err(|_| RowTrouble::Number { of, text: text.to_owned() })
}
