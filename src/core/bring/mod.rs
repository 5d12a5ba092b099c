//! From the rows of a table to facts: what each row brings, and why another brings nothing.
//!
//! A row brings all that it tells or nothing. What a table tells of a day alone is noted at noon. Whoever is named as dam or
//! sire and is not here comes in too, where that is wanted.

mod grown;
mod lamb;
mod litter;
mod row;
mod weight;

use std::collections::{BTreeMap, BTreeSet};

use chrono::{NaiveDateTime, NaiveTime};

use crate::book::{Animal, BirthDay, DayOrder, EntryId, Event, EweId, LambId, Life, Past};
use crate::flock::Flock;
use crate::spreadsheet::{Code, CodeOf, Column, Dated, Meaning, NoDate, Sheet, TableKind, date, order_of};
use crate::units::{Moment, System};
use row::Row;

/// How a table is read, as it was guessed and put right.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Setup {
    /// What a row is.
    pub kind: TableKind,
    /// What each column holds.
    pub columns: Vec<Column>,
    /// What stands first in dates that can be read both ways; nothing until it is known.
    pub order: Option<DayOrder>,
    /// The unit of weights of which neither head nor cell tells it.
    pub unit: System,
    /// What codes mean that are not commonly known, in small letters.
    pub codes: BTreeMap<(CodeOf, String), Code>,
    /// Whether dams and sires that are not in the book come in; if not, their rows are left out.
    pub add_parents: bool,
}

/// What is known of the animals that are here.
#[derive(Debug)]
pub struct Known<'a> {
    /// The flock.
    pub flock: &'a Flock,
    /// All animals by tag and by name, in small letters.
    pub names: &'a BTreeMap<String, Vec<Animal>>,
    /// Now.
    pub now: Moment,
    /// The instant at which the wall clock shows this.
    pub at_local: fn(NaiveDateTime) -> Moment,
    /// What is remarked where a row tells a death or a sale and no day.
    pub day_not_known: &'a str,
}

/// A fact that a row brings.
#[derive(Clone, Debug, PartialEq)]
pub struct Fact {
    /// The line of the row.
    pub line: usize,
    /// The entry that it will be.
    pub id: EntryId,
    /// What.
    pub event: Event,
    /// When it happened.
    pub at: Moment,
}

/// Why a row brings nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RowTrouble {
    /// It does not say of whom it is.
    NoTag,
    /// An animal of this tag lives here already.
    Here(String),
    /// An earlier row has the same animal.
    Again(String),
    /// A date cannot be read.
    Date {
        /// Of which column.
        of: Meaning,
        /// What stands there.
        text: String,
        /// Why.
        why: NoDate,
    },
    /// It needs a day, and tells a year or nothing.
    NoDay(Meaning),
    /// A date lies ahead.
    Ahead(String),
    /// A number or a weight cannot be read.
    Number {
        /// Of which column.
        of: Meaning,
        /// What stands there.
        text: String,
    },
    /// What a code means has to be said.
    Code(CodeOf, String),
    /// This animal is not in the book.
    Unknown(String),
    /// More than one animal is called so.
    Many(String),
    /// It says nothing that could be noted.
    Nothing,
}

/// A row that brings nothing.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoRow {
    /// Its line in the file, from 1.
    pub line: usize,
    /// Of whom it is, as it stands there.
    pub whose: Option<String>,
    /// Why.
    pub why: RowTrouble,
}

/// What a table brings.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Brought {
    /// The facts, in the order of their rows.
    pub facts: Vec<Fact>,
    /// The rows that bring nothing.
    pub left_out: Vec<NoRow>,
    /// How many rows tell only of animals that this book has by their id.
    pub known: usize,
    /// Codes of which it has to be said what they mean, each with how often it stands there.
    pub codes: BTreeMap<(CodeOf, String), usize>,
    /// Whether a weight stands there of which nothing tells the unit.
    pub unit_open: bool,
    /// Dams and sires that are named and not here.
    pub parents: Vec<String>,
    /// Tags that are kept as another name, since another animal wears them.
    pub as_names: Vec<String>,
}

impl Brought {
    /// Returns how many ewes, rams and lambs come, and how many weights.
    #[must_use]
    pub fn counts(&self) -> [usize; 4] {
        let count = |is: &dyn Fn(&Event) -> bool| self.facts.iter().filter(|fact| is(&fact.event)).count();
        let rams = count(&|event| matches!(event, Event::Past(Past::IsRam { .. })));
        let came = count(&|event| matches!(event, Event::EweCame { .. }));
        let lambs = count(&|event| matches!(event, Event::LambBorn { .. }));
        let weights = count(&|event| matches!(event, Event::Weighed { .. } | Event::EweWeighed { .. }));
        [came - rams.min(came), rams, lambs, weights]
    }
}

/// Returns what stands first in the dates of a table, by all its columns that hold dates.
#[must_use]
pub fn order_in(sheet: &Sheet, columns: &[Column]) -> Option<DayOrder> {
    let dates = columns.iter().enumerate().filter(|(_, column)| column.meaning.is_date());
    let places: Vec<usize> = dates.map(|(place, _)| place).collect();
    let cells = sheet.rows.iter().flat_map(|row| places.iter().filter_map(|place| row.get(*place)));
    let heads = columns.iter().filter_map(|column| column.day.as_ref());
    order_of(cells.chain(heads).map(String::as_str))
}

/// Returns what the rows of a table bring, without those of these lines. Each entry is named by `new_id`, or by the id
/// that the row tells.
#[must_use]
pub fn bring(
    sheet: &Sheet,
    setup: &Setup,
    known: &Known,
    without: &BTreeSet<usize>,
    new_id: &mut dyn FnMut() -> EntryId,
) -> Brought {
    let order = setup.order.or_else(|| order_in(sheet, &setup.columns));
    let mut table = Table::new(known, setup, order, new_id);
    let rows = || sheet.lines.iter().copied().zip(&sheet.rows).filter(|(line, _)| !without.contains(line));
    for (line, cells) in rows() {
        table.announce(line, &Row::new(cells, setup));
    }
    for (line, cells) in rows() {
        let row = Row::new(cells, setup);
        table.line = line;
        let told = match setup.kind {
            TableKind::Ewes | TableKind::Rams | TableKind::Lambs => table.animal(&row),
            TableKind::Litters => table.litter(&row),
            TableKind::Weights => table.weights(&row),
        };
        table.end_row(told, row.whose());
    }
    table.brought
}

/// A table on its way in.
struct Table<'a> {
    known: &'a Known<'a>,
    setup: &'a Setup,
    order: Option<DayOrder>,
    new_id: &'a mut dyn FnMut() -> EntryId,
    brought: Brought,
    /// Grown animals that have a row of their own, each with the entry that it will be, by tag.
    announced: BTreeMap<String, (usize, EntryId, bool)>,
    /// Who has come, by tag or name.
    here: BTreeMap<String, Vec<Comer>>,
    /// What the row brings that is being read.
    facts: Vec<Fact>,
    comers: Vec<(String, Comer)>,
    line: usize,
}

/// An animal that came with the table.
#[derive(Clone, Copy, Debug)]
struct Comer {
    animal: Animal,
    is_ram: bool,
    born: Option<Moment>,
}

fn small(text: &str) -> String {
    text.trim().to_lowercase()
}

impl<'a> Table<'a> {
    fn new(
        known: &'a Known<'a>,
        setup: &'a Setup,
        order: Option<DayOrder>,
        new_id: &'a mut dyn FnMut() -> EntryId,
    ) -> Self {
        Self {
            known,
            setup,
            order,
            new_id,
            brought: Brought::default(),
            announced: BTreeMap::new(),
            here: BTreeMap::new(),
            facts: Vec::new(),
            comers: Vec::new(),
            line: 0,
        }
    }

    /// Keeps what a row brought, or that it brings nothing.
    fn end_row(&mut self, told: Result<(), RowTrouble>, whose: Option<String>) {
        let (facts, comers) = (std::mem::take(&mut self.facts), std::mem::take(&mut self.comers));
        match told {
            Ok(()) => {
                self.brought.facts.extend(facts);
                for (name, comer) in comers {
                    self.here.entry(name).or_default().push(comer);
                }
            }
            Err(why) => self.brought.left_out.push(NoRow { line: self.line, whose, why }),
        }
    }

    fn note(&mut self, event: Event, at: Moment) -> EntryId {
        let id = (self.new_id)();
        self.note_as(id, event, at);
        id
    }

    fn note_as(&mut self, id: EntryId, event: Event, at: Moment) {
        self.facts.push(Fact { line: self.line, id, event, at });
    }

    fn comes(&mut self, name: &str, animal: Animal, is_ram: bool, born: Option<Moment>) {
        self.comers.push((small(name), Comer { animal, is_ram, born }));
    }

    /// Who came with this table under this name.
    fn came(&self, name: &str) -> impl Iterator<Item = Comer> + '_ {
        let name = small(name);
        let before = self.here.get(&name).map_or(&[][..], Vec::as_slice).iter().copied();
        before.chain(self.comers.iter().filter(move |(other, _)| *other == name).map(|(_, comer)| *comer))
    }

    fn known_as(&self, name: &str) -> &[Animal] {
        self.known.names.get(&small(name)).map_or(&[], Vec::as_slice)
    }

    /// The day or instant in the cell of a column; nothing where it says nothing.
    fn when(&self, row: &Row, of: Meaning) -> Result<Option<Moment>, RowTrouble> {
        match row.text(of) {
            Some(text) => self.instant(of, text).map(Some),
            None => Ok(None),
        }
    }

    fn instant(&self, of: Meaning, text: &str) -> Result<Moment, RowTrouble> {
        match self.dated(of, text)? {
            Dated::Year(_) => Err(RowTrouble::NoDay(of)),
            Dated::Day(day) => self.on_day(day.and_time(NOON), text),
            Dated::At(at) => self.on_day(at, text),
        }
    }

    fn dated(&self, of: Meaning, text: &str) -> Result<Dated, RowTrouble> {
        date(text, self.order).map_err(|why| RowTrouble::Date { of, text: text.to_owned(), why })
    }

    /// Noon of today may lie ahead: it is now then.
    fn on_day(&self, local: NaiveDateTime, text: &str) -> Result<Moment, RowTrouble> {
        let (at, now) = ((self.known.at_local)(local), self.known.now);
        if at <= now {
            Ok(at)
        } else if local.date() == now.local().date() {
            Ok(now)
        } else {
            Err(RowTrouble::Ahead(text.to_owned()))
        }
    }

    /// What a code in the cell of a column means; nothing where it says nothing.
    fn code(&mut self, row: &Row, meaning: Meaning, of: CodeOf) -> Result<Option<Code>, RowTrouble> {
        let Some(text) = row.text(meaning) else { return Ok(None) };
        self.coded(of, text)
    }

    fn coded(&mut self, of: CodeOf, text: &str) -> Result<Option<Code>, RowTrouble> {
        let key = (of, small(text));
        let said = self.setup.codes.get(&key).copied();
        // What was said to a code stays asked, so that it can be changed.
        let common = of.known(text);
        if common.is_none() {
            *self.brought.codes.entry(key).or_default() += 1;
        }
        match said.or(common) {
            Some(Code::NotKnown) => Ok(None),
            Some(code) => Ok(Some(code)),
            None => Err(RowTrouble::Code(of, text.to_owned())),
        }
    }

    /// A grown animal that is named as a parent: one that is here, or has a row, or comes in by being named.
    fn parent(&mut self, name: &str, is_ram: bool) -> Result<EweId, RowTrouble> {
        let came = self.came(name).find_map(|comer| match comer.animal {
            Animal::Ewe(id) if comer.is_ram == is_ram => Some(id),
            Animal::Ewe(_) | Animal::Lamb(_) => None,
        });
        if let Some(id) = came {
            return Ok(id);
        }
        if let Some((_, id, _)) = self.announced.get(&small(name)).filter(|(.., ram)| *ram == is_ram) {
            return Ok(id.as_ewe());
        }
        let flock = self.known.flock;
        let of_kind = self.known_as(name).iter().filter_map(|animal| match animal {
            Animal::Ewe(id) if is_ram => flock.ram(*id),
            Animal::Ewe(id) => flock.ewe(*id),
            Animal::Lamb(_) => None,
        });
        let mut of_kind: Vec<_> = of_kind.collect();
        of_kind.sort_by_key(|grown| !grown.lives());
        if let Some(grown) = of_kind.first() {
            return Ok(grown.id);
        }
        let named = name.trim().to_owned();
        if !self.brought.parents.contains(&named) {
            self.brought.parents.push(named.clone());
        }
        if !self.setup.add_parents {
            return Err(RowTrouble::Unknown(named));
        }
        let came = self.note(Event::EweCame { tag: Some(named) }, self.known.now).as_ewe();
        if is_ram {
            self.note(Event::Past(Past::IsRam { animal: came }), self.known.now);
        }
        self.comes(name, Animal::Ewe(came), is_ram, None);
        Ok(came)
    }

    /// Notes who an animal's parents are; a lamb's dam stands with its birth.
    fn sired(&mut self, row: &Row, animal: Animal, at: Moment) -> Result<(), RowTrouble> {
        if let Some(name) = row.text(Meaning::Sire) {
            let ram = self.parent(name, true)?;
            self.note(Event::Past(Past::Sired { animal, ram }), at);
        }
        Ok(())
    }

    /// Notes of how many an animal was born, where the row tells.
    fn born_as(&mut self, row: &Row, animal: Animal, at: Moment) -> Result<(), RowTrouble> {
        if let Some(Code::Of(of)) = self.code(row, Meaning::BornAs, CodeOf::Litter)? {
            self.note(Event::Past(Past::BornAs { animal, of }), at);
        }
        Ok(())
    }

    fn lamb_known(&self, id: LambId) -> bool {
        self.known.flock.lamb(id).is_some()
    }
}

/// What is told of a day alone is noted at noon.
const NOON: NaiveTime = NaiveTime::MIN.overflowing_add_signed(chrono::TimeDelta::hours(12)).0;

/// When an animal was born, as a life tells it.
fn described(ewe: EweId, born: Option<BirthDay>, breed: Option<String>) -> Event {
    Event::Life(Life::Described { ewe, born, breed })
}
