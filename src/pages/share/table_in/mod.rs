//! A farm's table on its way in: read whole and shown before anything changes, put right column by column, then added in
//! one piece or left.
//!
//! What it would bring is worked out once for each change, by the same gate that every press passes, and not for each page.

mod asks;
mod columns;
mod remembered;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use yeanling_core::book::{Animal, EntryId, Event};
use yeanling_core::bring::{Brought, Known, Setup, bring, order_in};
use yeanling_core::flock::Flock;
use yeanling_core::spreadsheet::{
    Code, CodeOf, Column, Meaning, NoDate, Sheet, TableKind, as_of, column_of, date, decode, guess,
    read as read_table,
};
use yeanling_core::units::System;
use yeanling_core::{book::DayOrder, watch};
use yeanling_words::{animals, rejections, table_in as words};

use super::{Does as Only, Reading, TABLE, aloud, pick};
use crate::block::{Item, LineLook, List, ListLook, Notice, NoticeKind};
use crate::draft::{Draft, Noting};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Does, Effect, Kind, Request, Text};

/// How many rows that bring nothing are told one by one.
const TOLD: usize = 20;
/// How many rows are shown as they would be noted.
const SHOWN: usize = 5;

/// What is put right of a table.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// What a row is.
    Kind(TableKind),
    /// A column lies open to be changed, or is closed.
    Open(Option<usize>),
    /// What a column holds.
    Column(usize, Meaning),
    /// What stands first in a date.
    Order(DayOrder),
    /// The unit of weights that tell none.
    Unit(System),
    /// What a code means.
    Code(CodeOf, String, Code),
    /// Whether parents that are not here are added.
    Parents(bool),
}

/// A table that was read, how it is read, and what it would bring.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Import {
    sheet: Arc<Sheet>,
    setup: Setup,
    /// Whether it is read as the last table with these columns was.
    remembered: bool,
    /// Which column lies open.
    open: Option<usize>,
    /// What it would bring.
    brought: Arc<Brought>,
    /// The lines of which the gate refuses something.
    without: BTreeSet<usize>,
    /// The first rows, as they would be noted.
    shown: Vec<String>,
    /// Why rows bring nothing, line by line.
    left_out: Vec<(usize, String)>,
    /// A date that can be read both ways, where nothing in the table tells which: it stays asked once it was.
    asked_date: Option<String>,
}

/// What came of the last table.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Came {
    counts: [usize; 4],
    entries: Vec<EntryId>,
}

/// Reads a table, or says in words why it is none.
pub(super) fn read(bytes: &[u8], view: &View) -> Result<Arc<Import>, String> {
    let sheet = decode(bytes).and_then(|text| read_table(&text)).map_err(words::no_sheet)?;
    let (kind, columns) = guess(&sheet);
    let guessed =
        Setup { kind, columns, order: None, unit: view.system(), codes: BTreeMap::new(), add_parents: true };
    let last = remembered::find(&view.phone.tables, &sheet, &guessed);
    let remembered = last.is_some();
    Ok(Arc::new(Import::of(Arc::new(sheet), last.unwrap_or(guessed), remembered, None, view)))
}

impl Import {
    fn of(sheet: Arc<Sheet>, setup: Setup, remembered: bool, open: Option<usize>, view: &View) -> Self {
        let names = names(view.flock);
        let asked_date = two_ways(&sheet, &setup);
        let (mut without, mut refused) = (BTreeSet::new(), Vec::new());
        // What hangs on a row that is refused may be refused with it.
        for _ in 0..8 {
            let mut count = 0_u128;
            let brought = bring(&sheet, &setup, &known(view, &names), &without, &mut || {
                count += 1;
                EntryId::from_uuid(uuid::Uuid::from_u128(u128::MAX - count))
            });
            let facts = brought.facts.iter().map(|fact| (fact.id, &fact.event, fact.at));
            let (flock, wrong) = watch::validate_together(view.book, facts, view.device, view.now);
            if !wrong.is_empty() {
                for (place, rejection) in wrong {
                    let line = brought.facts[place].line;
                    if without.insert(line) {
                        let why = rejections::rejection(&rejection, view.now, view.system());
                        refused.push((line, words::line(line, whose(&sheet, &setup, line).as_deref(), &why)));
                    }
                }
                continue;
            }
            let mut left_out = refused;
            left_out.extend(brought.left_out.iter().map(|row| (row.line, words::left_out(row))));
            left_out.sort();
            let shown = shown(&brought, &flock, view.system());
            let brought = Arc::new(brought);
            return Self { sheet, setup, remembered, open, brought, without, shown, left_out, asked_date };
        }
        refused.sort();
        Self {
            sheet,
            setup,
            remembered,
            open,
            brought: Arc::default(),
            without,
            shown: Vec::new(),
            left_out: refused,
            asked_date,
        }
    }
}

/// The first date that can be read with the day or the month first, where no other tells which stands first.
fn two_ways(sheet: &Sheet, setup: &Setup) -> Option<String> {
    if order_in(sheet, &setup.columns).is_some() {
        return None;
    }
    let places = setup.columns.iter().enumerate().filter(|(_, column)| column.meaning.is_date());
    let places: Vec<usize> = places.map(|(place, _)| place).collect();
    let cells = sheet.rows.iter().flat_map(|row| places.iter().filter_map(|place| row.get(*place)));
    let heads = setup.columns.iter().filter_map(|column| column.day.as_ref());
    cells.chain(heads).find(|text| date(text, None) == Err(NoDate::TwoWays)).cloned()
}

/// The tag that stands in a line.
fn whose(sheet: &Sheet, setup: &Setup, line: usize) -> Option<String> {
    let by = if setup.kind == TableKind::Litters { Meaning::Dam } else { Meaning::Tag };
    let column = setup.columns.iter().position(|column| column.meaning == by)?;
    let row = sheet.lines.iter().position(|other| *other == line)?;
    sheet.rows.get(row)?.get(column).filter(|cell| !cell.is_empty()).cloned()
}

fn known<'a>(view: &'a View, names: &'a BTreeMap<String, Vec<Animal>>) -> Known<'a> {
    Known {
        flock: view.flock,
        names,
        now: view.now,
        at_local: view.at_local,
        day_not_known: words::DAY_NOT_KNOWN,
    }
}

/// Returns all animals by tag and name, in small letters.
fn names(flock: &Flock) -> BTreeMap<String, Vec<Animal>> {
    let mut names: BTreeMap<String, Vec<Animal>> = BTreeMap::new();
    let mut add = |name: &str, animal: Animal| {
        let of_name = names.entry(name.trim().to_lowercase()).or_default();
        if !of_name.contains(&animal) {
            of_name.push(animal);
        }
    };
    for grown in flock.ewes.values().chain(flock.rams.values()) {
        grown.tag.iter().chain(&grown.worn).for_each(|name| add(name, Animal::Ewe(grown.id)));
    }
    for lamb in flock.lambs.values() {
        let own = animals::lamb(flock, lamb);
        lamb.worn.iter().chain([&own]).for_each(|name| add(name, Animal::Lamb(lamb.id)));
    }
    names
}

/// The first rows, as they would be noted.
fn shown(brought: &Brought, flock: &Flock, system: System) -> Vec<String> {
    let mut rows: Vec<String> = Vec::new();
    let mut facts = brought.facts.iter().peekable();
    while let Some(first) = facts.peek().map(|fact| fact.line) {
        if rows.len() == SHOWN {
            break;
        }
        let mut said = Vec::new();
        let mut day = None;
        while let Some(fact) = facts.next_if(|fact| fact.line == first) {
            let on = fact.at.local().date();
            let other = (day != Some(on)).then_some(on);
            day = Some(on);
            said.push(words::fact(fact.id, &fact.event, flock, system, other));
        }
        rows.push(words::row(first, &said));
    }
    rows
}

/// Returns the part that takes a table in, and what it would bring.
pub(super) fn blocks(view: &View, draft: &Draft) -> Blocks {
    let ask = Blocks::new().text(words::SUB).add(TABLE, pick(TABLE, words::OPEN));
    let blocks = Blocks::new().section("table-in", words::TITLE, ask);
    match &draft.share.table {
        Reading::Nothing => blocks,
        Reading::Going => blocks.add("", aloud(LineLook::Plain, words::READING)),
        Reading::Read(import) => blocks.then(would_bring(import, draft)),
        Reading::Wrong(wrong) => blocks.notice("table-wrong", NoticeKind::Bad, Text::typed(wrong), []),
        Reading::Done(_) => {
            // What was taken back again was not added.
            let came = &draft.share.came;
            let stands = came.entries.first().is_some_and(|entry| is_here(view.flock, *entry));
            if !stands {
                return blocks;
            }
            let back = Button::new("take-back", words::TAKE_BACK, does(Only::TakeTableBack));
            blocks.add("", aloud(LineLook::Plain, words::added(came.counts))).button(back)
        }
    }
}

fn is_here(flock: &Flock, entry: EntryId) -> bool {
    flock.lines.iter().any(|line| line.entry == entry && !line.struck)
}

fn does(does: Only) -> Action {
    Action::Does(Does::Share(does))
}

/// Returns what a table would bring, with what can be put right and both answers.
fn would_bring(import: &Import, draft: &Draft) -> Blocks {
    let Import { brought, .. } = import;
    let mut blocks = Blocks::new().choices("table-kind", asks::kind(import));
    if import.remembered {
        blocks = blocks.small(words::REMEMBERED);
    }
    let mut blocks = Blocks::new()
        .section("table-rows", words::KIND, blocks)
        .section("table-columns", words::COLUMNS, columns::blocks(import))
        .section("table-asks", words::QUESTIONS, asks::blocks(import));
    if !import.shown.is_empty() {
        let items = import.shown.iter().map(|row| Item::new(row.clone()));
        let rows = Blocks::new().list(ListLook::Plain, items);
        blocks = blocks.section("table-first", words::FIRST, rows);
    }
    if !brought.as_names.is_empty() {
        blocks = blocks.remark(words::as_names(&brought.as_names), []);
    }
    if brought.known > 0 {
        blocks = blocks.remark(words::known(brought.known), []);
    }
    blocks = blocks.then(left_out(import));
    let wrong = draft.fields.error(TABLE);
    if !wrong.is_empty() {
        blocks = blocks.notice("table-refused", NoticeKind::Bad, Text::typed(wrong), []);
    }
    let some = !brought.facts.is_empty();
    if !some {
        blocks = blocks.text(words::NOTHING);
    }
    let label = words::add(brought.counts(), import.left_out.len());
    let add = some.then(|| Button::new("add", label, does(Only::AddTable)).filled());
    let leave = Button::new("leave", words::LEAVE, does(Only::LeaveTable));
    blocks.buttons(1, add.into_iter().chain([leave]))
}

fn left_out(import: &Import) -> Blocks {
    if import.left_out.is_empty() {
        return Blocks::new();
    }
    let more = import.left_out.len().saturating_sub(TOLD);
    let lines = import.left_out.iter().take(TOLD).map(|(_, said)| Text::typed(said));
    let more = (more > 0).then(|| Text::from(words::and_more(more)));
    let items = lines.chain(more).map(Item::new).collect();
    let list = Kind::List(List { look: ListLook::Plain, items });
    let inside = Blocks::new().text(words::LEFT_OUT).add("", list).into();
    let notice = Notice { kind: NoticeKind::Warn, inside, buttons: Vec::new() };
    Blocks::new().add("left-out", Kind::Notice(notice))
}

/// Puts something of the table right.
pub(super) fn change(change: &Change, view: &View, draft: &mut Draft) {
    let Reading::Read(import) = &draft.share.table else { return };
    let mut setup = import.setup.clone();
    let mut open = import.open;
    match change {
        Change::Open(column) => {
            let import = Import { open: *column, ..(**import).clone() };
            draft.share.table = Reading::Read(Arc::new(import));
            return;
        }
        Change::Kind(kind) => {
            let columns: Vec<Column> = import.sheet.heads.iter().map(|head| column_of(head)).collect();
            setup.columns = as_of(&import.sheet, *kind, columns);
            setup.kind = *kind;
        }
        Change::Column(place, meaning) => {
            if let Some(column) = setup.columns.get_mut(*place) {
                column.meaning = *meaning;
            }
            open = None;
        }
        Change::Order(order) => setup.order = Some(*order),
        Change::Unit(unit) => setup.unit = *unit,
        Change::Code(of, text, code) => _ = setup.codes.insert((*of, text.clone()), *code),
        Change::Parents(add) => setup.add_parents = *add,
    }
    let import = Import::of(Arc::clone(&import.sheet), setup, false, open, view);
    draft.share.table = Reading::Read(Arc::new(import));
}

/// Adds what the table brings: all of it that was shown, or nothing.
pub(super) fn add(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Reading::Read(import) = &draft.share.table else { return Vec::new() };
    let import = Arc::clone(import);
    let names = names(view.flock);
    let brought =
        bring(&import.sheet, &import.setup, &known(view, &names), &import.without, &mut || (view.new_id)());
    let counts = brought.counts();
    let lines: Vec<usize> = brought.facts.iter().map(|fact| fact.line).collect();
    let notings: Vec<Noting> = brought
        .facts
        .into_iter()
        .map(|fact| Noting { id: fact.id, event: fact.event, at: fact.at })
        .collect();
    if let Err((place, rejection)) = view.allow_each(&notings) {
        let why = rejections::rejection(&rejection, view.now, view.system());
        let line = lines.get(place).copied().unwrap_or_default();
        return draft.say_wrong(TABLE, words::line(line, None, &why));
    }
    draft.share.came = Came { counts, entries: notings.iter().map(|noting| noting.id).collect() };
    draft.share.table = Reading::Done(notings.len());
    draft.fields.forget(TABLE);
    let keep = remembered::with(&view.phone.tables, &import.sheet, &import.setup);
    vec![Effect::Note(notings), Effect::Phone(Request::KeepTables(keep))]
}

/// Takes back all that came with the last table.
pub(super) fn take_back(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let entries = std::mem::take(&mut draft.share.came).entries;
    draft.share.table = Reading::Nothing;
    let notings: Vec<Noting> =
        entries.into_iter().map(|entry| view.noting(Event::Deleted { entry })).collect();
    if notings.is_empty() { Vec::new() } else { draft.note(view, notings) }
}
