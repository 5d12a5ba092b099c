//! The tables of the book for a spreadsheet.

use std::collections::BTreeMap;

use yeanling_core::book::{Animal, BirthDay, Event, EweId, Life};
use yeanling_core::flock::{Ewe, Flock, Lamb, Left, Treated};
use yeanling_core::reckon::withholding::Usable;
use yeanling_core::sort_small::SortSmall;
use yeanling_core::spreadsheet::Cell;
use yeanling_core::units::{Mass, System, Volume};
use yeanling_core::watch::{Product, usable_after};
use yeanling_words::{animals, flock, life, noted, spreadsheet as words};

use super::Table;
use crate::view::View;

/// The heads and the rows of a table.
type Rows = (Vec<&'static str>, Vec<Vec<Cell>>);

/// Returns a table of the book: its heads and its rows.
pub(super) fn rows(table: Table, view: &View) -> Rows {
    match table {
        Table::Animals => all_animals(view),
        Table::Weights => all_weights(view),
        Table::Feeds => all_feeds(view),
        Table::Medicines => all_medicines(view),
    }
}

fn text(text: impl Into<String>) -> Cell {
    Cell::Text(text.into())
}

fn mass(mass: Mass, system: System) -> f64 {
    match system {
        System::Metric => mass.as_kilograms(),
        System::Us => mass.as_pounds(),
    }
}

fn volume(volume: Volume, system: System) -> Cell {
    match system {
        System::Metric => Cell::Number(volume.as_milliliters(), 0),
        System::Us => Cell::Number(volume.as_fluid_ounces(), 1),
    }
}

/// A ewe by her tag alone; nothing of one without.
fn tag(flock: &Flock, ewe: EweId) -> Cell {
    Cell::text(flock.ewe(ewe).and_then(|ewe| ewe.tag.clone()))
}

fn dam(flock: &Flock, lamb: &Lamb) -> Cell {
    lamb.dam.map_or(Cell::Nothing, |dam| tag(flock, dam))
}

/// Returns by what an animal stands in a table: 9 before 10, those without a tag last.
pub(super) fn by_tag(tag: Option<&str>) -> (bool, usize, String) {
    let tag = tag.unwrap_or_default().to_lowercase();
    (tag.is_empty(), tag.chars().count(), tag)
}

/// Ewes by their tags.
fn ewes(flock: &Flock) -> Vec<&Ewe> {
    let mut ewes: Vec<&Ewe> = flock.ewes.values().collect();
    ewes.sort_small_by_key(|ewe| by_tag(ewe.tag.as_deref()));
    ewes
}

/// Lambs by their names, those of one name in the order of their births.
fn lambs(flock: &Flock) -> Vec<&Lamb> {
    let mut lambs: Vec<&Lamb> = flock.births().filter_map(|(_, id)| flock.lambs.get(&id)).collect();
    lambs.sort_small_by_key(|lamb| by_tag(Some(&animals::lamb(flock, lamb))));
    lambs
}

fn all_animals(view: &View) -> Rows {
    let flock = view.flock;
    let system = flock.settings.system;
    let mut remarks: BTreeMap<Animal, Vec<&str>> = BTreeMap::new();
    let mut found: BTreeMap<Animal, Vec<&str>> = BTreeMap::new();
    for line in &flock.lines {
        if let Event::Remarked { animal, text } = &line.event {
            remarks.entry(flock.canonical(*animal)).or_default().push(text);
        } else if let Event::Life(Life::Examined { animal, finding }) = &line.event {
            found.entry(flock.canonical(*animal)).or_default().push(finding);
        }
    }
    let said = |words: &BTreeMap<Animal, Vec<&str>>, animal| {
        Cell::text(words.get(&animal).map(|words| words.join("; ")))
    };
    let with = |mut row: Vec<Cell>, animal| {
        row.extend([said(&found, animal), said(&remarks, animal)]);
        row
    };
    let ewes = ewes(flock).into_iter().map(|one| with(ewe(one), Animal::Ewe(one.id)));
    let lambs = lambs(flock).into_iter().map(|one| with(lamb(flock, one, system), Animal::Lamb(one.id)));
    (words::animals(system).to_vec(), ewes.chain(lambs).collect())
}

fn ewe(ewe: &Ewe) -> Vec<Cell> {
    let born = match ewe.born {
        Some(BirthDay::Day(day)) => Cell::Day(day),
        Some(BirthDay::Year(year)) => Cell::Number(f64::from(year), 0),
        None => Cell::Nothing,
    };
    let mut row =
        vec![text(ewe.id.to_string()), text(words::EWE), Cell::text(ewe.tag.clone()), Cell::Nothing];
    row.extend([born, Cell::At(ewe.came), Cell::text(ewe.breed.clone())]);
    row.resize(15, Cell::Nothing);
    row.push(Cell::at(ewe.died.as_ref().map(|death| death.at)));
    row.push(Cell::text(ewe.died.as_ref().map(|death| noted::cause(death.cause).to_owned())));
    row.push(Cell::Nothing);
    row.extend(left(ewe.left.as_ref()));
    row
}

fn lamb(flock: &Flock, lamb: &Lamb, system: System) -> Vec<Cell> {
    let alive = if lamb.born_alive { words::YES } else { words::NO };
    let litter = flock.litter_of(lamb.id).map_or(1, |litter| litter.lambs.len());
    let last = lamb.weights.last();
    let died = lamb.died.as_ref();
    vec![
        text(lamb.id.to_string()),
        text(words::LAMB),
        text(animals::lamb(flock, lamb)),
        dam(flock, lamb),
        Cell::At(lamb.born),
        Cell::Nothing,
        Cell::Nothing,
        Cell::text(lamb.sex.map(|sex| animals::sex(Some(sex)).to_owned())),
        text(alive),
        text(litter.to_string()),
        Cell::text(lamb.ease.map(|ease| words::ease(ease).to_string())),
        Cell::number(lamb.birth_weight().map(|birth| mass(birth, system)), 2),
        Cell::number(last.map(|last| mass(last.mass, system)), 2),
        Cell::at(last.map(|last| last.at)),
        Cell::at(lamb.weaned),
        Cell::at(died.map(|death| death.at)),
        Cell::text(died.map(|death| noted::cause(death.cause).to_owned())),
        flock.rearer(lamb).map_or(Cell::Nothing, |ewe| tag(flock, ewe)),
    ]
    .into_iter()
    .chain(left(lamb.left.as_ref()))
    .collect()
}

/// When an animal left, how, and to whom.
fn left(left: Option<&Left>) -> [Cell; 3] {
    [
        Cell::at(left.map(|left| left.at)),
        Cell::text(left.map(|left| flock::gone(left.how).to_owned())),
        Cell::text(left.and_then(|left| left.to.clone())),
    ]
}

fn all_medicines(view: &View) -> Rows {
    let flock = view.flock;
    let days = |days: Option<u16>| Cell::number(days.map(f64::from), 0);
    let usable = |treated: &Treated, product: Product| match usable_after(treated, product) {
        Usable::From(at) => Cell::At((view.here)(at)),
        Usable::FromDay(day) => Cell::Day(day),
        Usable::Unknown => text(words::NOT_KNOWN),
    };
    let row = |treated: &Treated| {
        let Treated { animal, at, treatment, .. } = treated;
        let id = match animal {
            Animal::Ewe(id) => id.to_string(),
            Animal::Lamb(id) => id.to_string(),
        };
        vec![
            text(id),
            match animal {
                Animal::Ewe(id) => tag(flock, *id),
                Animal::Lamb(id) => text(animals::lamb_of(flock, *id)),
            },
            if treatment.day_only { Cell::Day(at.local().date()) } else { Cell::At(*at) },
            text(treatment.product.clone()),
            Cell::text(treatment.amount.clone()),
            Cell::text(treatment.route.map(|way| life::route(way).to_owned())),
            Cell::text(treatment.reason.clone()),
            Cell::text(treatment.batch.clone()),
            Cell::text(treatment.by.clone()),
            days(treatment.meat_days),
            usable(treated, Product::Meat),
            days(treatment.milk_days),
            usable(treated, Product::Milk),
        ]
    };
    (words::HEADS_OF_MEDICINES.to_vec(), flock.treatments().into_iter().rev().map(row).collect())
}

fn all_weights(view: &View) -> Rows {
    let flock = view.flock;
    let system = flock.settings.system;
    let rows = lambs(flock).into_iter().flat_map(|lamb| {
        lamb.weights.iter().map(move |weight| {
            vec![
                text(lamb.id.to_string()),
                text(animals::lamb(flock, lamb)),
                dam(flock, lamb),
                Cell::At(weight.at),
                Cell::Number(weight.at.since(lamb.born).as_seconds_f64() / 86_400.0, 1),
                Cell::Number(mass(weight.mass, system), 2),
            ]
        })
    });
    (words::weights(system).to_vec(), rows.collect())
}

fn all_feeds(view: &View) -> Rows {
    let flock = view.flock;
    let system = flock.settings.system;
    let rows = lambs(flock).into_iter().flat_map(|lamb| {
        lamb.feeds.iter().map(move |feed| {
            vec![
                text(lamb.id.to_string()),
                text(animals::lamb(flock, lamb)),
                Cell::At(feed.at),
                volume(feed.volume, system),
                text(noted::milk(feed.milk)),
                text(noted::way(feed.way)),
            ]
        })
    });
    (words::feeds(system).to_vec(), rows.collect())
}
