//! What the flock keeps to be found quickly: its lines, the labors that go on, and who needs a look at all.
//!
//! The watch reads these and not the whole flock, so that its work follows what is live and not what is stored.

use std::collections::BTreeSet;

use super::how::{ReadAs, how};
use super::{Ewe, Flock, Labor, Lamb, Line};
use crate::book::{Animal, Event, EweId, LambId, Standing};
use crate::sort_small::SortSmall;

/// Keeps every line, and for each animal which lines are about it.
pub(super) fn lines(flock: &mut Flock, standing: &[Standing<'_>]) {
    flock.lines.reserve_exact(standing.len());
    flock.of.reserve(flock.ewes.len() + flock.lambs.len());
    let mut animals = Vec::new();
    for line in standing {
        keep_line(flock, line, flock.lines.len(), &mut animals);
    }
}

/// Keeps one line more in its place, and returns which animals it is about; a lamb's birth is a line of the lamb and its
/// dam. No line after that place may be about any of them.
pub(super) fn line(flock: &mut Flock, line: &Standing<'_>, place: usize) -> Vec<Animal> {
    if place < flock.lines.len() {
        move_up(flock, place);
    }
    let mut animals = Vec::new();
    keep_line(flock, line, place, &mut animals);
    animals
}

/// Moves what is known of the lines from a place on by one, so that another line has room there.
fn move_up(flock: &mut Flock, place: usize) {
    let animals = flock.of.values_mut();
    let pens = flock.of_pen.values_mut();
    let groups = flock.of_group.values_mut();
    for indices in animals.chain(pens).chain(groups).chain(std::iter::once(&mut flock.of_stores)) {
        for index in indices.iter_mut().rev().take_while(|index| **index >= place) {
            *index += 1;
        }
    }
}

fn keep_line(flock: &mut Flock, line: &Standing<'_>, index: usize, animals: &mut Vec<Animal>) {
    animals.clear();
    animals.extend(line.event.animals());
    let came = matches!(line.event, Event::EweCame { .. });
    if came || how(line.event) == ReadAs::Keeps {
        animals.push(Animal::Ewe(line.entry.id.as_ewe()));
    }
    if let Event::LambBorn { .. } = line.event {
        animals.push(Animal::Lamb(line.entry.id.as_lamb()));
        let dam = flock.lamb(line.entry.id.as_lamb()).and_then(|lamb| lamb.dam);
        animals.extend(dam.map(Animal::Ewe));
    }
    for animal in animals.iter_mut() {
        *animal = flock.canonical(*animal);
    }
    animals.sort_small();
    animals.dedup();
    for animal in animals.iter() {
        flock.of.entry(*animal).or_default().push(index);
    }
    let made = matches!(line.event, Event::PenMade { .. }).then(|| line.entry.id.as_pen());
    if let Some(pen) = line.event.pen().or(made) {
        flock.of_pen.entry(pen).or_default().push(index);
    }
    let formed = matches!(line.event, Event::GroupFormed { .. }).then(|| line.entry.id.as_group());
    if let Some(group) = line.event.group().or(formed) {
        flock.of_group.entry(group).or_default().push(index);
    }
    if line.event.is_of_the_stores() {
        flock.of_stores.push(index);
    }
    let line = Line {
        entry: line.entry.id,
        device: line.entry.device,
        noted: line.entry.noted,
        at: line.at,
        event: line.event.clone(),
        amended: line.amended,
        struck: line.struck,
    };
    flock.lines.insert(index, line);
}

/// Works out which ewes are in labor, by what was seen since their last birth, and which are ill.
pub(super) fn labors(flock: &mut Flock) {
    flock.ill = flock.ewes.values().filter(|ewe| ewe.is_ill()).map(|ewe| ewe.id).collect();
    for ewe in flock.ewes.values() {
        flock.not_right.extend(ewe.not_right().map(|at| (at, Animal::Ewe(ewe.id))));
    }
    let seen = flock.ewes.values().filter(|ewe| !ewe.seen.is_empty());
    let at_work: Vec<(EweId, Labor)> = seen.filter_map(|ewe| Some((ewe.id, labor_of(flock, ewe)?))).collect();
    for (id, labor) in at_work {
        set_labor(flock, id, Some(labor));
    }
}

/// Works out anew whether a ewe is in labor, and whether she is ill.
pub(super) fn labor(flock: &mut Flock, id: EweId) {
    if let Some(ewe) = flock.ewes.get(&id) {
        flock.not_right.extend(ewe.not_right().map(|at| (at, Animal::Ewe(id))));
    }
    let labor = flock.ewes.get(&id).and_then(|ewe| labor_of(flock, ewe));
    set_labor(flock, id, labor);
    if flock.ewes.get(&id).is_some_and(Ewe::is_ill) {
        flock.ill.insert(id);
    } else {
        flock.ill.remove(&id);
    }
}

fn labor_of(flock: &Flock, ewe: &Ewe) -> Option<Labor> {
    let litters = flock.of_dam.get(&ewe.id).map_or(&[][..], Vec::as_slice);
    let born = litters.iter().filter_map(|id| flock.litters.get(id)).map(|litter| litter.latest).max();
    ewe.lives().then(|| Labor::since(&ewe.seen, born)).flatten()
}

fn set_labor(flock: &mut Flock, id: EweId, labor: Option<Labor>) {
    let Some(ewe) = flock.ewes.get_mut(&id) else { return };
    if labor.is_some() {
        flock.at_work.insert(id);
    } else {
        flock.at_work.remove(&id);
    }
    ewe.labor = labor;
}

/// Sorts out which lambs the watch has to look at.
pub(super) fn indices(flock: &mut Flock) {
    flock.by_birth = flock.lambs.values().map(|lamb| (lamb.born, lamb.id)).collect();
    flock.by_birth.sort_small();
    for lamb in flock.lambs.values() {
        flock.not_right.extend(lamb.not_right().map(|at| (at, Animal::Lamb(lamb.id))));
    }
    let cared = |lamb: &&Lamb| lamb.on_bottle() || lamb.was_in_care();
    let cared: Vec<LambId> = flock.lambs.values().filter(cared).map(|lamb| lamb.id).collect();
    for lamb in cared {
        index(flock, lamb);
    }
}

/// Sorts out anew whether the watch has to look at a lamb.
pub(super) fn index(flock: &mut Flock, id: LambId) {
    let Some(lamb) = flock.lambs.get(&id) else { return };
    flock.not_right.extend(lamb.not_right().map(|at| (at, Animal::Lamb(id))));
    let keep = |among: &mut BTreeSet<LambId>, kept: bool| {
        if kept {
            among.insert(id);
        } else {
            among.remove(&id);
        }
    };
    keep(&mut flock.on_bottle, lamb.on_bottle());
    keep(&mut flock.in_care, lamb.lives() && lamb.was_in_care());
}
