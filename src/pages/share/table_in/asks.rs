//! What a table leaves open: what a row is, which way dates go, the unit, what codes mean, and parents that are not here.

use yeanling_core::book::DayOrder;
use yeanling_core::spreadsheet::{CodeOf, TableKind};
use yeanling_core::units::System;
use yeanling_words::table_in as words;

use super::{Change, Import, does};
use crate::block::{Choice, Choices};
use crate::page::Blocks;
use crate::share::Does as Only;

/// So many codes at most are asked at once: more are no codes, but a column of something else.
const MOST_CODES: usize = 12;

fn choice(name: impl Into<String>, change: Change) -> Choice {
    Choice::new(name, does(Only::Table(change)))
}

/// Returns what a row is.
pub(super) fn kind(import: &Import) -> Choices {
    let options = TableKind::ALL.map(|kind| choice(words::kind(kind), Change::Kind(kind)));
    let chosen = TableKind::ALL.iter().position(|kind| *kind == import.setup.kind);
    Choices::new(words::KIND, options.into(), chosen).snug()
}

/// Returns all that has to be answered; nothing where nothing has.
pub(super) fn blocks(import: &Import) -> Blocks {
    let mut blocks = Blocks::new();
    if let Some(text) = &import.asked_date {
        blocks = blocks.choices("table-order", order(text, import.setup.order));
    }
    if import.brought.unit_open {
        blocks = blocks.choices("table-unit", unit(import.setup.unit));
    }
    for (at, ((of, text), rows)) in import.brought.codes.iter().take(MOST_CODES).enumerate() {
        blocks = blocks.choices(format!("table-code-{at}"), code(import, *of, text, *rows));
    }
    if !import.brought.parents.is_empty() {
        blocks = blocks.choices("table-parents", parents(import));
    }
    blocks
}

fn order(text: &str, order: Option<DayOrder>) -> Choices {
    let orders = [DayOrder::DayFirst, DayOrder::MonthFirst];
    let option = |order: DayOrder| {
        choice(words::order(order), Change::Order(order)).note(words::would_be(text, order))
    };
    let chosen = orders.iter().position(|one| Some(*one) == order);
    Choices::new(words::ORDER, orders.map(option).into(), chosen).labelled().stacked()
}

fn unit(unit: System) -> Choices {
    let units = [System::Metric, System::Us];
    let chosen = units.iter().position(|one| *one == unit);
    Choices::new(words::UNIT, units.map(|unit| choice(words::unit(unit), Change::Unit(unit))).into(), chosen)
        .labelled()
}

fn code(import: &Import, of: CodeOf, text: &str, rows: usize) -> Choices {
    let meanings = of.meanings();
    let said = import.setup.codes.get(&(of, text.to_owned()));
    let chosen = meanings.iter().position(|code| Some(code) == said);
    let option = |code: &yeanling_core::spreadsheet::Code| {
        choice(words::means(of, *code), Change::Code(of, text.to_owned(), *code))
    };
    Choices::new(words::code(of, text, rows), meanings.iter().map(option).collect(), chosen).labelled().snug()
}

fn parents(import: &Import) -> Choices {
    let options = vec![
        choice(words::ADD_PARENTS, Change::Parents(true)),
        choice(words::LEAVE_PARENTS, Change::Parents(false)),
    ];
    let chosen = usize::from(!import.setup.add_parents);
    Choices::new(words::parents(&import.brought.parents), options, Some(chosen)).labelled().stacked()
}
