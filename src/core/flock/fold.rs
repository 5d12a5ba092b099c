//! From the book to the flock: one pass that brings the animals in, one that tells what was seen of them.
//!
//! The result depends on the set of entries alone, never on the order in which they arrived.

use std::collections::BTreeMap;

use super::{Death, Ewe, Feed, Felt, Flock, Lamb, Line, Litter, Scored, Weight, litter};
use crate::book::{Animal, Book, Event, EweId, LambId, Standing, standing};
use crate::units::Moment;

/// Returns the flock that this book makes.
#[must_use]
pub fn fold(book: &Book) -> Flock {
    let standing = standing(book);
    let mut flock = Flock { same: same_animals(&standing), ..Flock::default() };
    let mut beside = BTreeMap::new();
    for line in standing.iter().filter(|line| !line.struck) {
        bring_in(&mut flock, &mut beside, line);
    }
    for line in standing.iter().filter(|line| !line.struck) {
        tell(&mut flock, line);
    }
    make_litters(&mut flock, &beside);
    for line in standing.iter().filter(|line| !line.struck) {
        if let Event::AllBorn { lamb } = line.event {
            let id = flock.lamb(*lamb).map(|lamb| lamb.litter);
            if let Some(litter) = id.and_then(|id| flock.litters.get_mut(&id)) {
                litter.all_born = Some(line.at);
            }
        }
    }
    keep_lines(&mut flock, &standing);
    flock
}

/// Returns which animal each joined record is read as; a join that would close a circle is passed over.
fn same_animals(standing: &[Standing<'_>]) -> BTreeMap<Animal, Animal> {
    let mut parent: BTreeMap<Animal, Animal> = BTreeMap::new();
    let root = |parent: &BTreeMap<Animal, Animal>, mut animal: Animal| {
        while let Some(up) = parent.get(&animal) {
            animal = *up;
        }
        animal
    };
    for line in standing.iter().filter(|line| !line.struck) {
        if let Event::SameAnimal { keep, also } = line.event {
            let (keep, also) = (root(&parent, *keep), root(&parent, *also));
            let alike =
                matches!((keep, also), (Animal::Ewe(_), Animal::Ewe(_)) | (Animal::Lamb(_), Animal::Lamb(_)));
            if alike && keep != also {
                parent.insert(also, keep);
            }
        }
    }
    parent.keys().map(|animal| (*animal, root(&parent, *animal))).collect()
}

fn bring_in(flock: &mut Flock, beside: &mut BTreeMap<LambId, LambId>, line: &Standing<'_>) {
    match line.event {
        Event::EweCame { tag } => {
            let Animal::Ewe(id) = flock.one(Animal::Ewe(line.entry.id.as_ewe())) else { return };
            let ewe = flock.ewes.entry(id).or_insert(Ewe { id, came: line.at, tag: None, died: None });
            ewe.tag = ewe.tag.take().or_else(|| tag.clone());
        }
        Event::LambBorn { dam, beside: mate, sex, alive } => {
            let Animal::Lamb(id) = flock.one(Animal::Lamb(line.entry.id.as_lamb())) else { return };
            let dam = dam.and_then(|dam| one_ewe(flock, dam));
            let lamb = flock.lambs.entry(id).or_insert_with(|| Lamb::new(id, line.at, *alive));
            lamb.dam = lamb.dam.or(dam);
            lamb.sex = lamb.sex.or(*sex);
            if let Some(mate) = mate {
                beside.insert(id, *mate);
            }
        }
        Event::Tagged { .. }
        | Event::DamGiven { .. }
        | Event::BirthEase { .. }
        | Event::Stood { .. }
        | Event::Sucked { .. }
        | Event::NavelDipped { .. }
        | Event::Weighed { .. }
        | Event::Fed { .. }
        | Event::VigorScored { .. }
        | Event::BellyFelt { .. }
        | Event::AllBorn { .. }
        | Event::Died { .. }
        | Event::Remarked { .. }
        | Event::Chose(_)
        | Event::SameAnimal { .. }
        | Event::Amended { .. }
        | Event::Struck { .. }
        | Event::Restored { .. }
        | Event::Unread(_) => {}
    }
}

fn one_ewe(flock: &Flock, ewe: EweId) -> Option<EweId> {
    match flock.one(Animal::Ewe(ewe)) {
        Animal::Ewe(ewe) => Some(ewe),
        Animal::Lamb(_) => None,
    }
}

/// Tells what was seen. A fact about an animal that is not here (its birth was struck, or is on another phone) waits.
fn tell(flock: &mut Flock, line: &Standing<'_>) {
    let at = line.at;
    match line.event {
        Event::Tagged { animal, tag } => match flock.one(*animal) {
            Animal::Ewe(id) => {
                if let Some(ewe) = flock.ewes.get_mut(&id) {
                    ewe.tag = Some(tag.clone());
                }
            }
            Animal::Lamb(id) => {
                if let Some(lamb) = flock.lambs.get_mut(&id) {
                    lamb.tag = Some(tag.clone());
                }
            }
        },
        Event::DamGiven { lamb, dam } => {
            let dam = one_ewe(flock, *dam);
            on(flock, *lamb, |lamb| lamb.dam = dam.or(lamb.dam));
        }
        Event::BirthEase { lamb, ease } => on(flock, *lamb, |lamb| lamb.ease = Some(*ease)),
        Event::Stood { lamb } => on(flock, *lamb, |lamb| lamb.stood.push(at)),
        Event::Sucked { lamb } => on(flock, *lamb, |lamb| lamb.sucked.push(at)),
        Event::NavelDipped { lamb } => on(flock, *lamb, |lamb| lamb.navel.push(at)),
        Event::Weighed { lamb, mass } => {
            on(flock, *lamb, |lamb| lamb.weights.push(Weight { at, mass: *mass }));
        }
        Event::Fed { lamb, volume, milk, way } => on(flock, *lamb, |lamb| {
            lamb.feeds.push(Feed { entry: line.entry.id, at, volume: *volume, milk: *milk, way: *way });
        }),
        Event::VigorScored { lamb, scale, score } => {
            on(flock, *lamb, |lamb| lamb.vigor.push(Scored { at, scale: *scale, score: *score }));
        }
        Event::BellyFelt { lamb, belly } => on(flock, *lamb, |lamb| {
            lamb.belly.push(Felt { at, belly: *belly });
        }),
        Event::Died { animal, cause } => die(flock, *animal, Death { at, cause: *cause }),
        Event::Chose(choice) => flock.practice.choose(choice),
        Event::Unread(_) => flock.unread.push(line.entry.id),
        Event::EweCame { .. }
        | Event::LambBorn { .. }
        | Event::AllBorn { .. }
        | Event::Remarked { .. }
        | Event::SameAnimal { .. }
        | Event::Amended { .. }
        | Event::Struck { .. }
        | Event::Restored { .. } => {}
    }
}

fn on(flock: &mut Flock, lamb: LambId, change: impl FnOnce(&mut Lamb)) {
    if let Animal::Lamb(id) = flock.one(Animal::Lamb(lamb))
        && let Some(lamb) = flock.lambs.get_mut(&id)
    {
        change(lamb);
    }
}

fn die(flock: &mut Flock, animal: Animal, death: Death) {
    let died = match flock.one(animal) {
        Animal::Ewe(id) => flock.ewes.get_mut(&id).map(|ewe| &mut ewe.died),
        Animal::Lamb(id) => flock.lambs.get_mut(&id).map(|lamb| &mut lamb.died),
    };
    if let Some(died) = died {
        died.get_or_insert(death);
    }
}

/// Groups lambs, in the order of their birth, by the mate they were noted beside, else by dam and time.
fn make_litters(flock: &mut Flock, beside: &BTreeMap<LambId, LambId>) {
    let mut order: Vec<(Moment, LambId)> = flock.lambs.values().map(|lamb| (lamb.born, lamb.id)).collect();
    order.sort_unstable();
    let mut litters: BTreeMap<LambId, Litter> = BTreeMap::new();
    let mut of: BTreeMap<LambId, LambId> = BTreeMap::new();
    let mut last: BTreeMap<EweId, LambId> = BTreeMap::new();
    for (born, id) in order {
        let dam = flock.lambs.get(&id).and_then(|lamb| lamb.dam);
        let mate = beside.get(&id).and_then(|mate| match flock.one(Animal::Lamb(*mate)) {
            Animal::Lamb(mate) => of.get(&mate).copied(),
            Animal::Ewe(_) => None,
        });
        let by_dam = dam.and_then(|dam| last.get(&dam).copied());
        let near =
            |litter: &LambId| litters.get(litter).is_some_and(|l| born.since(l.latest) <= litter::APART);
        let of_another = |litter: &LambId| {
            litters.get(litter).is_some_and(|l| l.dam.is_some() && dam.is_some() && l.dam != dam)
        };
        let found = mate.filter(|litter| !of_another(litter)).or(by_dam).filter(near);
        let key = found.unwrap_or(id);
        let litter = litters.entry(key).or_insert(Litter {
            id: key,
            dam,
            lambs: Vec::new(),
            began: born,
            latest: born,
            all_born: None,
        });
        litter.lambs.push(id);
        litter.latest = born;
        litter.dam = litter.dam.or(dam);
        of.insert(id, key);
        if let Some(dam) = litter.dam {
            last.insert(dam, key);
        }
    }
    for litter in litters.values() {
        for (order, id) in litter.lambs.iter().enumerate() {
            if let Some(lamb) = flock.lambs.get_mut(id) {
                lamb.litter = litter.id;
                lamb.order = order;
                lamb.dam = lamb.dam.or(litter.dam);
            }
        }
    }
    flock.litters = litters;
}

/// Keeps every line, and for each animal which lines are about it; a lamb's birth is a line of the lamb and its dam.
fn keep_lines(flock: &mut Flock, standing: &[Standing<'_>]) {
    for (index, line) in standing.iter().enumerate() {
        let mut animals = line.event.animals();
        if let Event::EweCame { .. } = line.event {
            animals.push(Animal::Ewe(line.entry.id.as_ewe()));
        }
        if let Event::LambBorn { .. } = line.event {
            animals.push(Animal::Lamb(line.entry.id.as_lamb()));
            let dam = flock.lamb(line.entry.id.as_lamb()).and_then(|lamb| lamb.dam);
            animals.extend(dam.map(Animal::Ewe));
        }
        let mut animals: Vec<Animal> = animals.into_iter().map(|animal| flock.one(animal)).collect();
        animals.sort_unstable();
        animals.dedup();
        for animal in animals {
            flock.of.entry(animal).or_default().push(index);
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
