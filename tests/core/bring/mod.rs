//! From a farm's tables to facts: what each row brings, how a table is taken, and why a row brings nothing.

mod lambs;
mod litters;
mod others;

use std::collections::{BTreeMap, BTreeSet};

use uuid::Uuid;
use yeanling_core::book::{Animal, Book, DeviceId, Entry, EntryId};
use yeanling_core::bring::{Brought, Known, RowTrouble, Setup, bring};
use yeanling_core::flock::{Ewe, Flock, Lamb, fold};
use yeanling_core::spreadsheet::{Sheet, TableKind, guess, read};
use yeanling_core::units::{Moment, System};
use yeanling_core::watch::validate_together;

/// A farm that opens a table.
struct Farm {
    book: Book,
    now: Moment,
    count: u128,
}

impl Farm {
    fn new() -> Self {
        let now = "2026-03-01T08:00:00.000-05:00".parse().expect("a moment");
        Self { book: Book::default(), now, count: 0 }
    }

    fn flock(&self) -> Flock {
        fold(&self.book)
    }

    /// What a table would bring as it is guessed, with what is put right of it.
    fn would(&mut self, text: &str, put_right: impl FnOnce(&Sheet, &mut Setup)) -> Brought {
        let sheet = read(text).expect("a table");
        let (kind, columns) = guess(&sheet);
        let codes = BTreeMap::new();
        let mut setup = Setup { kind, columns, order: None, unit: System::Metric, codes, add_parents: true };
        put_right(&sheet, &mut setup);
        let flock = self.flock();
        let mut names: BTreeMap<String, Vec<Animal>> = BTreeMap::new();
        for grown in flock.ewes.values().chain(flock.rams.values()) {
            if let Some(name) = &grown.tag {
                names.entry(name.to_lowercase()).or_default().push(Animal::Ewe(grown.id));
            }
        }
        for lamb in flock.lambs.values() {
            for name in lamb.tag.iter().chain(&lamb.worn) {
                names.entry(name.to_lowercase()).or_default().push(Animal::Lamb(lamb.id));
            }
        }
        let known = Known {
            flock: &flock,
            names: &names,
            now: self.now,
            at_local: |local| Moment::from_local(local, -300),
            day_not_known: "Day not known",
        };
        let count = &mut self.count;
        bring(&sheet, &setup, &known, &BTreeSet::new(), &mut || {
            *count += 1;
            EntryId::from_uuid(Uuid::from_u128((0x0003_0000_0000_7000_8000 << 48) + *count))
        })
    }

    /// Takes a table in as it is guessed; every fact must pass the gate.
    #[track_caller]
    fn takes(&mut self, text: &str) -> Brought {
        self.takes_so(text, |_, _| {})
    }

    #[track_caller]
    fn takes_so(&mut self, text: &str, put_right: impl FnOnce(&Sheet, &mut Setup)) -> Brought {
        let brought = self.would(text, put_right);
        let device = DeviceId::from_uuid(Uuid::from_u128(1));
        let facts = brought.facts.iter().map(|fact| (fact.id, &fact.event, fact.at));
        let (_, refused) = validate_together(&self.book, facts, device, self.now);
        let refused: Vec<_> =
            refused.iter().map(|(place, why)| (&brought.facts[*place], why.to_string())).collect();
        assert!(refused.is_empty(), "{refused:#?}");
        for fact in &brought.facts {
            let noted = self.book.next_noted(self.now);
            let event = fact.event.clone();
            self.book.add(Entry { id: fact.id, device, noted, at: fact.at, event });
        }
        brought
    }
}

#[track_caller]
fn ewe<'a>(flock: &'a Flock, tag: &str) -> &'a Ewe {
    let is = |ewe: &&Ewe| ewe.tag.as_deref() == Some(tag);
    flock.ewes.values().find(is).unwrap_or_else(|| panic!("no ewe {tag}"))
}

#[track_caller]
fn lamb<'a>(flock: &'a Flock, tag: &str) -> &'a Lamb {
    let is = |lamb: &&Lamb| lamb.tag.as_deref() == Some(tag);
    flock.lambs.values().find(is).unwrap_or_else(|| panic!("no lamb {tag}"))
}

/// The local day of a moment.
fn day(at: Moment) -> String {
    at.local().date().to_string()
}

/// The lines that bring nothing, and why.
fn left_out(brought: &Brought) -> Vec<(usize, RowTrouble)> {
    brought.left_out.iter().map(|row| (row.line, row.why.clone())).collect()
}

#[track_caller]
fn is_taken_for(text: &str, kind: TableKind) {
    assert_eq!(guess(&read(text).expect("a table")).0, kind, "{text:?}");
}
