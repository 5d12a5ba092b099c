//! How tables were read: kept on this phone by their heads, so that the next with the same heads is read so from the start.
//!
//! A line a table: its heads, what a row is, its columns, the order of dates, the unit, what codes mean, parents.

use std::collections::BTreeMap;

use yeanling_core::book::{DayOrder, Departure};
use yeanling_core::bring::Setup;
use yeanling_core::spreadsheet::{Code, CodeOf, Meaning, Sheet, TableKind};
use yeanling_core::units::System;

/// So many tables are remembered, the latest first.
const MOST: usize = 12;

const FIELD: char = '\t';
const PART: char = '\u{1f}';

const KINDS: [(TableKind, &str); 5] = [
    (TableKind::Ewes, "ewes"),
    (TableKind::Rams, "rams"),
    (TableKind::Lambs, "lambs"),
    (TableKind::Litters, "litters"),
    (TableKind::Weights, "weights"),
];

const MEANINGS: [(Meaning, &str); 28] = [
    (Meaning::Nothing, "-"),
    (Meaning::Id, "id"),
    (Meaning::Kind, "kind"),
    (Meaning::Tag, "tag"),
    (Meaning::Name, "name"),
    (Meaning::Sex, "sex"),
    (Meaning::Born, "born"),
    (Meaning::Breed, "breed"),
    (Meaning::Dam, "dam"),
    (Meaning::Sire, "sire"),
    (Meaning::BornAs, "born-as"),
    (Meaning::RearedAs, "reared-as"),
    (Meaning::BornAlive, "born-alive"),
    (Meaning::Ease, "ease"),
    (Meaning::Count, "count"),
    (Meaning::DeadCount, "dead-count"),
    (Meaning::BirthWeight, "birth-weight"),
    (Meaning::WeaningWeight, "weaning-weight"),
    (Meaning::Weight, "weight"),
    (Meaning::WeighedOn, "weighed-on"),
    (Meaning::WeanedOn, "weaned-on"),
    (Meaning::Status, "status"),
    (Meaning::DiedOn, "died-on"),
    (Meaning::Cause, "cause"),
    (Meaning::LeftOn, "left-on"),
    (Meaning::LeftTo, "left-to"),
    (Meaning::Came, "came"),
    (Meaning::Remark, "remark"),
];

const CODES_OF: [(CodeOf, &str); 5] = [
    (CodeOf::Kind, "kind"),
    (CodeOf::Sex, "sex"),
    (CodeOf::Litter, "litter"),
    (CodeOf::Alive, "alive"),
    (CodeOf::Status, "status"),
];

const CODES: [(Code, &str); 18] = [
    (Code::Ewe, "ewe"),
    (Code::Ram, "ram"),
    (Code::Wether, "wether"),
    (Code::Lamb, "lamb"),
    (Code::Of(1), "1"),
    (Code::Of(2), "2"),
    (Code::Of(3), "3"),
    (Code::Of(4), "4"),
    (Code::Of(5), "5"),
    (Code::Of(6), "6"),
    (Code::ByHand, "by-hand"),
    (Code::Alive, "alive"),
    (Code::Dead, "dead"),
    (Code::Gone(Departure::Sold), "sold"),
    (Code::Gone(Departure::Slaughtered), "slaughtered"),
    (Code::Gone(Departure::Given), "given"),
    (Code::Gone(Departure::Missing), "missing"),
    (Code::NotKnown, "not-known"),
];

fn word<T: PartialEq>(all: &[(T, &'static str)], one: &T) -> &'static str {
    all.iter().find(|(other, _)| other == one).map_or("-", |(_, word)| word)
}

fn of_word<T: Copy>(all: &[(T, &'static str)], word: &str) -> Option<T> {
    all.iter().find(|(_, other)| *other == word).map(|(one, _)| *one)
}

/// The heads as one text, without what would part it.
fn heads(sheet: &Sheet) -> String {
    let plain = |head: &String| head.trim().to_lowercase().replace([FIELD, PART, '\n', '\r'], " ");
    sheet.heads.iter().map(plain).collect::<Vec<_>>().join(&PART.to_string())
}

/// Returns how a table with these heads was read last; nothing where none was.
pub(super) fn find(kept: &str, sheet: &Sheet, guessed: &Setup) -> Option<Setup> {
    let heads = heads(sheet);
    let line = kept.lines().find(|line| line.split(FIELD).next() == Some(&heads))?;
    let fields: Vec<&str> = line.split(FIELD).collect();
    let [_, kind, columns, order, unit, codes, parents] = fields[..] else { return None };
    let meanings: Vec<Meaning> =
        columns.split(PART).map(|word| of_word(&MEANINGS, word)).collect::<Option<_>>()?;
    let mut setup = guessed.clone();
    if meanings.len() != setup.columns.len() {
        return None;
    }
    for (column, meaning) in setup.columns.iter_mut().zip(meanings) {
        column.meaning = meaning;
    }
    setup.kind = of_word(&KINDS, kind)?;
    setup.order = match order {
        "day" => Some(DayOrder::DayFirst),
        "month" => Some(DayOrder::MonthFirst),
        _ => None,
    };
    setup.unit = if unit == "lb" { System::Us } else { System::Metric };
    let code = |text: &str| {
        let (of, rest) = text.split_once(' ')?;
        let (code, text) = rest.split_once(' ')?;
        Some(((of_word(&CODES_OF, of)?, text.to_owned()), of_word(&CODES, code)?))
    };
    setup.codes = codes.split(PART).filter_map(code).collect::<BTreeMap<_, _>>();
    setup.add_parents = parents != "leave";
    Some(setup)
}

/// Returns what is remembered with how this table was read: the latest first.
pub(super) fn with(kept: &str, sheet: &Sheet, setup: &Setup) -> String {
    let part = PART.to_string();
    let heads = heads(sheet);
    let columns: Vec<&str> = setup.columns.iter().map(|column| word(&MEANINGS, &column.meaning)).collect();
    let order = match setup.order {
        Some(DayOrder::DayFirst) => "day",
        Some(DayOrder::MonthFirst) => "month",
        None => "-",
    };
    let unit = match setup.unit {
        System::Metric => "kg",
        System::Us => "lb",
    };
    let plain = |text: &str| text.replace([FIELD, PART, '\n', '\r'], " ");
    let code = |((of, text), code): (&(CodeOf, String), &Code)| {
        format!("{} {} {}", word(&CODES_OF, of), word(&CODES, code), plain(text))
    };
    let codes: Vec<String> = setup.codes.iter().map(code).collect();
    let parents = if setup.add_parents { "add" } else { "leave" };
    let fields = [
        heads.as_str(),
        word(&KINDS, &setup.kind),
        &columns.join(&part),
        order,
        unit,
        &codes.join(&part),
        parents,
    ];
    let new = fields.join(&FIELD.to_string());
    let others = kept.lines().filter(|line| line.split(FIELD).next() != Some(&heads));
    std::iter::once(new.as_str()).chain(others).take(MOST).collect::<Vec<_>>().join("\n")
}
