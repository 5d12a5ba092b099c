//! From the book to the flock: one pass that brings the animals in, one that tells what was seen of them.
//!
//! The result depends on the set of entries alone, never on the order in which they arrived.

use std::collections::BTreeMap;

use super::how::{ReadAs, how};
use super::{
    ConditionScore, Death, Ewe, Feed, Felt, Flock, Group, Lamb, MouthFelt, Pen, PutOff, Reading, Saw, Scored,
    Seen, VetCall, Weight, group, illness, index, life, litter, past, pen, plan, stores,
};
use crate::book::{Animal, Book, Care, Corrected, Event, EweId, Standing, corrected};
use crate::settings::Choice;
use crate::sort_small::{Gather, SortSmall};
use crate::units::{Moment, System};

/// Returns the flock that this book makes.
#[must_use]
pub fn fold(book: &Book) -> Flock {
    fold_in(book, System::default())
}

/// Returns the flock that this book makes where people read and type in these units until the farm has chosen.
#[must_use]
pub fn fold_in(book: &Book, units: System) -> Flock {
    let Corrected { standing, awaited } = corrected(book);
    let sorted = Sorted::of(&standing);
    let mut flock = Flock { same: same_animals(&sorted.joins), ..Flock::default() };
    flock.settings.system = units;
    // The record that stays is read first, so that what it says holds; the other only fills in what it left open.
    let (stays, joined): (Vec<_>, Vec<_>) = sorted.comers.into_iter().partition(|line| is_own(&flock, line));
    for line in stays.into_iter().chain(joined) {
        create(&mut flock, line);
    }
    life::keep_ewes(&mut flock, &sorted.kept);
    for line in standing.iter().filter(|line| !line.struck) {
        apply(&mut flock, line);
    }
    life::carry_tags(&mut flock);
    past::part_rams(&mut flock);
    choose(&mut flock, sorted.choices);
    litter::make(&mut flock);
    for line in sorted.all_born {
        if let Event::AllBorn { lamb } = line.event {
            litter::all_born(&mut flock, *lamb, line.at);
        }
    }
    group::members(&mut flock);
    index::lines(&mut flock, &standing);
    index::labors(&mut flock);
    index::indices(&mut flock);
    flock.awaited = awaited;
    flock
}

/// The few lines that are read apart from all others, in the order in which they happened, found in one pass: a large
/// book is far from the processor, and each pass over it fetches it anew.
#[derive(Default)]
struct Sorted<'a> {
    /// What brings an animal, a pen, a group or colostrum in.
    comers: Vec<&'a Standing<'a>>,
    joins: Vec<&'a Standing<'a>>,
    choices: Vec<&'a Standing<'a>>,
    all_born: Vec<&'a Standing<'a>>,
    kept: Vec<&'a Standing<'a>>,
}

impl<'a> Sorted<'a> {
    fn of(standing: &'a [Standing<'a>]) -> Self {
        let mut sorted = Self::default();
        for line in standing.iter().filter(|line| !line.struck) {
            match how(line.event) {
                ReadAs::ComesAlone | ReadAs::Comes => sorted.comers.push(line),
                ReadAs::Joins => sorted.joins.push(line),
                ReadAs::Chooses => sorted.choices.push(line),
                ReadAs::EndsLitter => sorted.all_born.push(line),
                ReadAs::Keeps => sorted.kept.push(line),
                ReadAs::Corrects | ReadAs::Tells | ReadAs::TellsInTurn | ReadAs::Regroups => {}
            }
        }
        sorted
    }
}

/// Returns which animal each joined record is read as; a join that would close a circle is passed over.
fn same_animals(joins: &[&Standing<'_>]) -> BTreeMap<Animal, Animal> {
    let mut parent: BTreeMap<Animal, Animal> = BTreeMap::new();
    for line in joins {
        if let Event::SameAnimal { keep, also } = line.event {
            let (keep, also) = (top(&mut parent, *keep), top(&mut parent, *also));
            let alike =
                matches!((keep, also), (Animal::Ewe(_), Animal::Ewe(_)) | (Animal::Lamb(_), Animal::Lamb(_)));
            if alike && keep != also {
                parent.insert(also, keep);
            }
        }
    }
    let joined: Vec<Animal> = parent.keys().copied().collect();
    joined.into_iter().map(|animal| (animal, top(&mut parent, animal))).gathered()
}

/// Says whether the animal that this line may bring in is read under its own id.
fn is_own(flock: &Flock, line: &Standing<'_>) -> bool {
    let id = line.entry.id;
    [Animal::Ewe(id.as_ewe()), Animal::Lamb(id.as_lamb())].into_iter().all(|own| flock.canonical(own) == own)
}

/// Takes the farm's choices over in the order in which they were noted: a choice is made when it is written, and a
/// phone whose clock was wrong must not hold on to an old one.
fn choose(flock: &mut Flock, mut lines: Vec<&Standing<'_>>) {
    lines.sort_small_by_key(|line| (line.entry.noted, line.entry.id));
    for line in lines {
        if let Event::Chose(choice) = line.event {
            flock.settings.choose(choice);
            flock.chosen = Some((line.entry.noted, line.entry.id));
        }
    }
}

pub(super) fn create(flock: &mut Flock, line: &Standing<'_>) {
    match line.event {
        Event::EweCame { tag } => {
            let Animal::Ewe(id) = flock.canonical(Animal::Ewe(line.entry.id.as_ewe())) else { return };
            let ewe = flock.ewes.entry(id).or_insert_with(|| Ewe::new(id, line.at));
            ewe.tag = ewe.tag.take().or_else(|| tag.clone());
        }
        Event::LambBorn { dam, beside: mate, sex, alive } => {
            let Animal::Lamb(id) = flock.canonical(Animal::Lamb(line.entry.id.as_lamb())) else { return };
            let dam = dam.and_then(|dam| one_ewe(flock, dam));
            let lamb = flock.lambs.entry(id).or_insert_with(|| Lamb::new(id, line.at, *alive));
            lamb.dam = lamb.dam.or(dam);
            lamb.sex = lamb.sex.or(*sex);
            if let Some(mate) = mate
                && let Animal::Lamb(mate) = flock.canonical(Animal::Lamb(*mate))
            {
                flock.beside.push((id, mate));
            }
        }
        Event::PenMade { name, size } => {
            let id = line.entry.id.as_pen();
            flock.pens.insert(id, Pen::new(id, line.at, name.clone(), *size));
        }
        Event::GroupFormed { name } => {
            let id = line.entry.id.as_group();
            flock.groups.insert(id, Group::new(id, line.at, name.clone()));
        }
        Event::ColostrumFrozen { .. } => stores::create(flock, line),
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
        | Event::SignSeen { .. }
        | Event::WaterBagSeen { .. }
        | Event::StrainingSeen { .. }
        | Event::PartShowing { .. }
        | Event::HandChecked { .. }
        | Event::HelpBegun { .. }
        | Event::VetCalled { .. }
        | Event::LookedAt { .. }
        | Event::NotLambing { .. }
        | Event::AfterbirthPassed { .. }
        | Event::Accepted { .. }
        | Event::TemperatureTaken { .. }
        | Event::SwallowTried { .. }
        | Event::Warmed { .. }
        | Event::SolidsEaten { .. }
        | Event::Weaned { .. }
        | Event::Ringed { .. }
        | Event::PenNamed { .. }
        | Event::PenCleaned { .. }
        | Event::PenClosed { .. }
        | Event::PutInPen { .. }
        | Event::LetOut { .. }
        | Event::PutOff { .. }
        | Event::GroupNamed { .. }
        | Event::GroupParted { .. }
        | Event::JoinedGroup { .. }
        | Event::LeftGroup { .. }
        | Event::RamIn { .. }
        | Event::RamOut { .. }
        | Event::CrayonChanged { .. }
        | Event::CrayonMark { .. }
        | Event::Scanned { .. }
        | Event::Conditioned { .. }
        | Event::EweWeighed { .. }
        | Event::FeedSet { .. }
        | Event::BoosterGiven { .. }
        | Event::StoreIn { .. }
        | Event::StoreUsed { .. }
        | Event::StoreThrown { .. }
        | Event::StoreCounted { .. }
        | Event::ColostrumThawed { .. }
        | Event::ColostrumThrown { .. }
        | Event::AllBorn { .. }
        | Event::Died { .. }
        | Event::Remarked { .. }
        | Event::Life(_)
        | Event::Care(_)
        | Event::Illness(_)
        | Event::Planning(_)
        | Event::Past(_)
        | Event::Chose(_)
        | Event::SameAnimal { .. }
        | Event::Amended { .. }
        | Event::Deleted { .. }
        | Event::Restored { .. }
        | Event::Unread(_) => {}
    }
}

fn one_ewe(flock: &Flock, ewe: EweId) -> Option<EweId> {
    match flock.canonical(Animal::Ewe(ewe)) {
        Animal::Ewe(ewe) => Some(ewe),
        Animal::Lamb(_) => None,
    }
}

/// Tells what was seen. A fact about an animal that is not here (its birth was struck, or is on another phone) waits.
pub(super) fn apply(flock: &mut Flock, line: &Standing<'_>) {
    let at = line.at;
    match line.event {
        Event::Tagged { animal, tag } => match flock.canonical(*animal) {
            Animal::Ewe(id) => {
                if let Some(ewe) = flock.grown_mut(id) {
                    ewe.worn.extend(ewe.tag.replace(tag.clone()));
                }
            }
            Animal::Lamb(id) => {
                if let Some(lamb) = flock.lambs.get_mut(&id) {
                    lamb.worn.extend(lamb.tag.replace(tag.clone()));
                }
            }
        },
        Event::DamGiven { lamb, dam } => {
            let dam = one_ewe(flock, *dam);
            flock.on_lamb(*lamb, |lamb| lamb.dam = dam.or(lamb.dam));
        }
        Event::BirthEase { lamb, ease } => flock.on_lamb(*lamb, |lamb| lamb.ease = Some(*ease)),
        Event::Stood { lamb } => flock.on_lamb(*lamb, |lamb| lamb.stood.push(at)),
        Event::Sucked { lamb } => flock.on_lamb(*lamb, |lamb| lamb.sucked.push(at)),
        Event::NavelDipped { lamb } => flock.on_lamb(*lamb, |lamb| lamb.navel.push(at)),
        Event::Weighed { lamb, mass } => {
            flock.on_lamb(*lamb, |lamb| lamb.weights.push(Weight { at, mass: *mass }));
        }
        Event::Fed { lamb, volume, milk, way } => flock.on_lamb(*lamb, |lamb| {
            lamb.feeds.push(Feed { entry: line.entry.id, at, volume: *volume, milk: *milk, way: *way });
        }),
        Event::VigorScored { lamb, scale, score } => {
            flock.on_lamb(*lamb, |lamb| lamb.vigor.push(Scored { at, scale: *scale, score: *score }));
        }
        Event::BellyFelt { lamb, belly } => flock.on_lamb(*lamb, |lamb| {
            lamb.belly.push(Felt { at, belly: *belly });
        }),
        Event::Accepted { lamb, accepts } => flock.on_lamb(*lamb, |lamb| lamb.accepted.push((at, *accepts))),
        Event::TemperatureTaken { lamb, temperature } => flock.on_lamb(*lamb, |lamb| {
            lamb.temperatures.push(Reading { at, temperature: *temperature });
        }),
        Event::SwallowTried { lamb, able } => flock.on_lamb(*lamb, |lamb| lamb.swallow.push((at, *able))),
        Event::Warmed { lamb } => flock.on_lamb(*lamb, |lamb| lamb.warmed.push(at)),
        Event::SolidsEaten { lamb, mass } => {
            flock.on_lamb(*lamb, |lamb| lamb.solids.push(Weight { at, mass: *mass }));
        }
        Event::Weaned { lamb } => flock.on_lamb(*lamb, |lamb| _ = lamb.weaned.get_or_insert(at)),
        Event::Ringed { lamb, ring } => flock.on_lamb(*lamb, |lamb| lamb.rings.push((at, *ring))),
        Event::SignSeen { ewe, sign } => see(flock, *ewe, line, Saw::Sign(*sign)),
        Event::WaterBagSeen { ewe } => see(flock, *ewe, line, Saw::WaterBag),
        Event::StrainingSeen { ewe } => see(flock, *ewe, line, Saw::Straining),
        Event::PartShowing { ewe, part } => see(flock, *ewe, line, Saw::Part(*part)),
        Event::HandChecked { ewe, found } => see(flock, *ewe, line, Saw::Check(*found)),
        Event::HelpBegun { ewe } => see(flock, *ewe, line, Saw::Help),
        Event::NotLambing { ewe } => see(flock, *ewe, line, Saw::NotLambing),
        Event::AfterbirthPassed { ewe } => see(flock, *ewe, line, Saw::Afterbirth),
        Event::VetCalled { animal } => match called(flock, *animal, at) {
            Animal::Ewe(ewe) => {
                flock.on_ewe(ewe, |ewe| ewe.vet.push(VetCall { at, said: None }));
                see(flock, ewe, line, Saw::Vet);
            }
            Animal::Lamb(lamb) => flock.on_lamb(lamb, |lamb| lamb.vet.push(VetCall { at, said: None })),
        },
        Event::LookedAt { animal } => match animal {
            Animal::Ewe(ewe) => see(flock, *ewe, line, Saw::Look),
            Animal::Lamb(lamb) => flock.on_lamb(*lamb, |lamb| lamb.looked.push(at)),
        },
        Event::PenNamed { .. }
        | Event::PenCleaned { .. }
        | Event::PenClosed { .. }
        | Event::PutInPen { .. }
        | Event::LetOut { .. } => pen::apply(flock, line),
        Event::GroupNamed { .. }
        | Event::GroupParted { .. }
        | Event::JoinedGroup { .. }
        | Event::LeftGroup { .. }
        | Event::RamIn { .. }
        | Event::RamOut { .. }
        | Event::CrayonChanged { .. }
        | Event::FeedSet { .. }
        | Event::BoosterGiven { .. } => group::apply(flock, line),
        Event::CrayonMark { .. } | Event::Scanned { .. } => group::seen(flock, line),
        Event::Conditioned { ewe, score } => {
            flock.on_ewe(*ewe, |ewe| ewe.scores.push(ConditionScore { at, score: *score }));
        }
        Event::EweWeighed { ewe, mass } => {
            flock.on_ewe(*ewe, |ewe| ewe.weights.push(Weight { at, mass: *mass }));
        }
        Event::StoreIn { .. }
        | Event::StoreUsed { .. }
        | Event::StoreThrown { .. }
        | Event::StoreCounted { .. }
        | Event::ColostrumThawed { .. }
        | Event::ColostrumThrown { .. } => stores::apply(flock, line),
        Event::PutOff { animal, duty, until } => {
            let animal = flock.canonical(*animal);
            flock.put_off.insert((animal, *duty), PutOff { at, until: *until });
        }
        Event::Chose(Choice::VetAgreed(what)) => {
            let agreed = flock.vet_agreed.entry(*what).or_insert(at);
            *agreed = at.max(*agreed);
        }
        Event::Life(fact) => life::apply(flock, line, fact),
        Event::Care(care) => tell_care(flock, line, care),
        Event::Illness(fact) => illness::apply(flock, line, fact),
        Event::Planning(fact) => plan::apply(flock, line, fact),
        Event::Past(fact) => past::apply(flock, fact),
        Event::Died { animal, cause } => die(flock, *animal, Death { at, cause: *cause }),
        Event::Unread(_) => flock.unread.push(line.entry.id),
        Event::EweCame { .. }
        | Event::LambBorn { .. }
        | Event::PenMade { .. }
        | Event::GroupFormed { .. }
        | Event::ColostrumFrozen { .. }
        | Event::AllBorn { .. }
        | Event::Remarked { .. }
        | Event::Chose(_)
        | Event::SameAnimal { .. }
        | Event::Amended { .. }
        | Event::Deleted { .. }
        | Event::Restored { .. } => {}
    }
}

/// Tells what was done for an animal in trouble.
fn tell_care(flock: &mut Flock, line: &Standing<'_>, care: &Care) {
    let at = line.at;
    match care {
        Care::VetSaid { animal, said } => match called(flock, *animal, at) {
            Animal::Ewe(ewe) => {
                flock.on_ewe(ewe, |ewe| ewe.vet.push(VetCall { at, said: Some(said.clone()) }));
            }
            Animal::Lamb(lamb) => {
                flock.on_lamb(lamb, |lamb| lamb.vet.push(VetCall { at, said: Some(said.clone()) }));
            }
        },
        Care::GlucoseGiven { lamb, by } => flock.on_lamb(*lamb, |lamb| lamb.glucose.push((at, *by))),
        Care::MouthFelt { lamb, mouth, suck } => flock.on_lamb(*lamb, |lamb| {
            lamb.mouth.push(MouthFelt { at, mouth: *mouth, suck: *suck });
        }),
        Care::AfterbirthAwaited { ewe, seen } => see(flock, *ewe, line, Saw::Awaited(*seen)),
        Care::PutRight { ewe } => see(flock, *ewe, line, Saw::PutRight),
        Care::Settled { ewe } => flock.on_ewe(*ewe, |ewe| ewe.settled.push(at)),
        Care::FoundBorn { lamb } => flock.on_lamb(*lamb, |lamb| lamb.found = Some(at)),
    }
}

fn see(flock: &mut Flock, ewe: EweId, line: &Standing<'_>, what: Saw) {
    flock.on_ewe(ewe, |ewe| ewe.seen.push(Seen { entry: line.entry.id, at: line.at, what }));
}

/// Keeps that the vet was called for an animal, and returns which animal that is.
fn called(flock: &mut Flock, animal: Animal, at: Moment) -> Animal {
    let animal = flock.canonical(animal);
    flock.calls.push((at, animal));
    animal
}

fn die(flock: &mut Flock, animal: Animal, death: Death) {
    let died = match flock.canonical(animal) {
        Animal::Ewe(id) => flock.grown_mut(id).map(|ewe| &mut ewe.died),
        Animal::Lamb(id) => flock.lambs.get_mut(&id).map(|lamb| &mut lamb.died),
    };
    if let Some(died) = died {
        died.get_or_insert(death);
    }
}

/// Follows a chain to its end, and ties all on the way to that, so that a file of one long chain costs no more than any.
pub(super) fn top<T: Copy + Ord>(up: &mut BTreeMap<T, T>, from: T) -> T {
    let mut end = from;
    while let Some(next) = up.get(&end) {
        end = *next;
    }
    let mut here = from;
    while let Some(next) = up.get_mut(&here).filter(|next| **next != end) {
        here = std::mem::replace(next, end);
    }
    end
}
