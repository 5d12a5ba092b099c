//! What the flock keeps to be found quickly: its lines, the labors that go on, and who needs a look at all.
//!
//! The watch reads these and not the whole flock, so that its work follows what is live and not what is stored.

use super::{Flock, Labor, Line};
use crate::book::{Animal, Event, Life, Standing};

/// Keeps every line, and for each animal which lines are about it; a lamb's birth is a line of the lamb and its dam.
pub(super) fn lines(flock: &mut Flock, standing: &[Standing<'_>]) {
    flock.lines.reserve_exact(standing.len());
    let mut animals: Vec<Animal> = Vec::new();
    for (index, line) in standing.iter().enumerate() {
        animals.extend(line.event.animals());
        if matches!(line.event, Event::EweCame { .. } | Event::Life(Life::KeptAsEwe { .. })) {
            animals.push(Animal::Ewe(line.entry.id.as_ewe()));
        }
        if let Event::LambBorn { .. } = line.event {
            animals.push(Animal::Lamb(line.entry.id.as_lamb()));
            let dam = flock.lamb(line.entry.id.as_lamb()).and_then(|lamb| lamb.dam);
            animals.extend(dam.map(Animal::Ewe));
        }
        for animal in &mut animals {
            *animal = flock.one(*animal);
        }
        animals.sort_unstable();
        animals.dedup();
        for animal in animals.drain(..) {
            flock.of.entry(animal).or_default().push(index);
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
        flock.lines.push(Line {
            entry: line.entry.id,
            device: line.entry.device,
            noted: line.entry.noted,
            at: line.at,
            event: line.event.clone(),
            amended: line.amended,
            struck: line.struck,
        });
    }
}

/// Works out which ewes are in labor: by what was seen since their last birth.
pub(super) fn labors(flock: &mut Flock) {
    let mut at_work = Vec::new();
    for ewe in flock.ewes.values() {
        if !ewe.lives() || ewe.seen.is_empty() {
            continue;
        }
        let litters = flock.of_dam.get(&ewe.id).map_or(&[][..], Vec::as_slice);
        let born = litters.iter().filter_map(|id| flock.litters.get(id)).map(|litter| litter.latest).max();
        if let Some(labor) = Labor::since(&ewe.seen, born) {
            at_work.push((ewe.id, labor));
        }
    }
    for (id, labor) in at_work {
        if let Some(ewe) = flock.ewes.get_mut(&id) {
            ewe.labor = Some(labor);
            flock.at_work.insert(id);
        }
    }
}

/// Sorts out which lambs the watch has to look at.
pub(super) fn indices(flock: &mut Flock) {
    flock.by_birth = flock.lambs.values().map(|lamb| (lamb.born, lamb.id)).collect();
    flock.by_birth.sort_unstable();
    for lamb in flock.lambs.values() {
        if lamb.on_bottle() {
            flock.on_bottle.insert(lamb.id);
        }
        if lamb.lives() && !lamb.temperatures.is_empty() {
            flock.with_temperature.insert(lamb.id);
        }
    }
}
