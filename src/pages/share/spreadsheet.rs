//! Tables of the book for a spreadsheet, handed to the phone as files; nothing of the sample flock.

use yeanling_core::spreadsheet::write;
use yeanling_words::{share, spreadsheet as words};

use super::{Does as Only, tables};
use crate::draft::Draft;
use crate::page::Blocks;
use crate::phone::FileTrouble;
use crate::view::View;
use crate::{Action, Button, Does, Effect, Request};

/// Under which key the phone tells what became of a table.
pub(super) const KEY: &str = "hand-over-table-out";

/// A table of the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Table {
    /// One row an animal.
    Animals,
    /// One row a weight.
    Weights,
    /// One row a feed by hand.
    Feeds,
    /// One row a medicine.
    Medicines,
}

/// All tables, each with its key and its name.
const TABLES: [(Table, &str, &str); 4] = [
    (Table::Animals, "animals", words::ANIMALS),
    (Table::Weights, "weights", words::WEIGHTS),
    (Table::Feeds, "feeds", words::FEEDS),
    (Table::Medicines, "medicines", words::MEDICINES),
];

/// What became of the last table.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) enum Given {
    /// None was asked for, or the share sheet was closed.
    #[default]
    Nothing,
    /// There is nothing to write in it.
    Empty,
    /// The phone has it.
    Done,
    /// It could not be saved; what the browser said.
    NotSaved(String),
}

/// Returns the part that hands tables over.
pub(super) fn blocks(draft: &Draft) -> Blocks {
    let button = |(table, key, name): (Table, &'static str, &str)| {
        Button::new(key, name, Action::Does(Does::Share(Only::Give(table))))
    };
    let said = match &draft.share.given {
        Given::Nothing => String::new(),
        Given::Empty => words::NOTHING.to_owned(),
        Given::Done => words::GIVEN.to_owned(),
        Given::NotSaved(browser) => share::not_saved(browser),
    };
    let tables = Blocks::new().text(words::SUB).buttons(2, TABLES.map(button)).status(said);
    Blocks::new().section("tables", words::TITLE, tables)
}

/// Writes a table and hands it to the phone.
pub(super) fn give(table: Table, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let (heads, rows) = tables::rows(table, view);
    if rows.is_empty() {
        draft.share.given = Given::Empty;
        return Vec::new();
    }
    let name = TABLES.iter().find(|(one, ..)| *one == table).map_or("", |(.., name)| name);
    let day = view.now.local().date().to_string();
    vec![Effect::Phone(Request::GiveTable(KEY.into(), words::file(name, &day), write(&heads, rows)))]
}

/// The phone has told what became of it.
pub(super) fn given(trouble: Option<&FileTrouble>, draft: &mut Draft) {
    draft.share.given = match trouble {
        None => Given::Done,
        Some(FileTrouble::Failed(browser)) => Given::NotSaved(browser.clone()),
        Some(FileTrouble::Closed | FileTrouble::CannotShare | FileTrouble::TooLarge(_)) => Given::Nothing,
    };
}
