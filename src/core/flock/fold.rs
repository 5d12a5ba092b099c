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
    let mut beside = Vec::new();
    // The record that stays is read first, so that what it says holds; the other only fills in what it left open.
    let (stays, joined): (Vec<_>, Vec<_>) =
        standing.iter().filter(|line| !line.struck).partition(|line| is_own(&flock, line));
    for line in stays.into_iter().chain(joined) {
        bring_in(&mut flock, &mut beside, line);
    }
    for line in standing.iter().filter(|line| !line.struck) {
        tell(&mut flock, line);
    }
    choose(&mut flock, &standing);
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
    for line in standing.iter().filter(|line| !line.struck) {
        if let Event::SameAnimal { keep, also } = line.event {
            let (keep, also) = (top(&parent, *keep), top(&parent, *also));
            let alike =
                matches!((keep, also), (Animal::Ewe(_), Animal::Ewe(_)) | (Animal::Lamb(_), Animal::Lamb(_)));
            if alike && keep != also {
                parent.insert(also, keep);
            }
        }
    }
    parent.keys().map(|animal| (*animal, top(&parent, *animal))).collect()
}

/// Says whether the animal that this line may bring in is read under its own id.
fn is_own(flock: &Flock, line: &Standing<'_>) -> bool {
    let id = line.entry.id;
    [Animal::Ewe(id.as_ewe()), Animal::Lamb(id.as_lamb())].into_iter().all(|own| flock.one(own) == own)
}

/// Takes the farm's choices over in the order in which they were noted: a choice is made when it is written, and a
/// phone whose clock was wrong must not hold on to an old one.
fn choose(flock: &mut Flock, standing: &[Standing<'_>]) {
    let mut lines: Vec<_> = standing.iter().filter(|line| !line.struck).collect();
    lines.sort_unstable_by_key(|line| (line.entry.noted, line.entry.id));
    for line in lines {
        if let Event::Chose(choice) = line.event {
            flock.practice.choose(choice);
        }
    }
}

fn bring_in(flock: &mut Flock, beside: &mut Vec<(LambId, LambId)>, line: &Standing<'_>) {
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
            if let Some(mate) = mate
                && let Animal::Lamb(mate) = flock.one(Animal::Lamb(*mate))
            {
                beside.push((id, mate));
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
        Event::Unread(_) => flock.unread.push(line.entry.id),
        Event::EweCame { .. }
        | Event::LambBorn { .. }
        | Event::AllBorn { .. }
        | Event::Remarked { .. }
        | Event::Chose(_)
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

/// Returns, for each lamb noted beside another or named so, one lamb that stands for all that hang together.
///
/// Which of two was noted beside the other does not matter, since a birth may be moved before that of its mate.
fn mates(beside: &[(LambId, LambId)]) -> BTreeMap<LambId, LambId> {
    let mut up: BTreeMap<LambId, LambId> = BTreeMap::new();
    for (one, other) in beside {
        let (one, other) = (top(&up, *one), top(&up, *other));
        if one != other {
            up.insert(one.max(other), one.min(other));
        }
    }
    let named = beside.iter().flat_map(|(one, other)| [*one, *other]);
    named.map(|lamb| (lamb, top(&up, lamb))).collect()
}

/// Follows a chain to its end.
fn top<T: Copy + Ord>(up: &BTreeMap<T, T>, mut from: T) -> T {
    while let Some(next) = up.get(&from) {
        from = *next;
    }
    from
}

/// Groups lambs, in the order of their birth, by the mate they were noted beside, else by dam and time.
fn make_litters(flock: &mut Flock, beside: &[(LambId, LambId)]) {
    let mates = mates(beside);
    let mut order: Vec<(Moment, LambId)> = flock.lambs.values().map(|lamb| (lamb.born, lamb.id)).collect();
    order.sort_unstable();
    let mut litters: BTreeMap<LambId, Litter> = BTreeMap::new();
    let mut of_mates: BTreeMap<LambId, LambId> = BTreeMap::new();
    let mut last: BTreeMap<EweId, LambId> = BTreeMap::new();
    for (born, id) in order {
        let dam = flock.lambs.get(&id).and_then(|lamb| lamb.dam);
        let mate = mates.get(&id).and_then(|of| of_mates.get(of).copied());
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
        if let Some(of) = mates.get(&id) {
            of_mates.insert(*of, key);
        }
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
