//! What may be noted: the one gate that every entry passes before it is written, with the reason when it may not.
//!
//! What comes in a file was let in elsewhere and is kept as it is; this gate is for what someone types here and now.

use crate::book::{Animal, Book, EntryId, Event, LambId};
use crate::flock::{Flock, Lamb};
use crate::practice::{Choice, LimitError, RingDaysError};
use crate::reckon::feeds;
use crate::units::{Mass, Moment, OutOfBounds, Strength, TimeDelta};

/// Why something cannot be noted.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Refusal {
    /// It would happen later than now.
    #[error("{at} is later than now, {now}")]
    InFuture {
        /// When it was said to happen.
        at: Moment,
        /// What time it is.
        now: Moment,
    },
    /// It would happen before the animal was born.
    #[error("{at} is before the birth at {born}")]
    BeforeBirth {
        /// When it was said to happen.
        at: Moment,
        /// When the animal was born.
        born: Moment,
    },
    /// Something was seen of the animal earlier than the birth that is given.
    #[error("a birth at {born} is after something seen at {seen}")]
    BornAfter {
        /// The birth that was given.
        born: Moment,
        /// The first thing seen of it.
        seen: Moment,
    },
    /// It would happen after the animal died.
    #[error("{at} is after the death at {died}")]
    AfterDeath {
        /// When it was said to happen.
        at: Moment,
        /// When the animal died.
        died: Moment,
    },
    /// The animal is not in the book, or its entry was struck.
    #[error("no such animal")]
    NoSuchAnimal,
    /// The entry is not in the book, or is itself a correction of another kind.
    #[error("no such entry")]
    NoSuchEntry,
    /// The weight is no lamb's.
    #[error(transparent)]
    Weight(#[from] OutOfBounds<Mass>),
    /// The feed is too much.
    #[error(transparent)]
    Feed(#[from] feeds::Refusal),
    /// A text is empty.
    #[error("nothing was written")]
    NoText,
    /// A text is too long.
    #[error("{given} characters are more than {most}")]
    LongText {
        /// How many characters were given.
        given: usize,
        /// How many are allowed.
        most: usize,
    },
    /// The score is not on its scale.
    #[error("a score of {given} is not between {least} and {most}")]
    Score {
        /// The score that was given.
        given: u8,
        /// The lowest on the scale.
        least: u8,
        /// The highest on the scale.
        most: u8,
    },
    /// The two records cannot be of one animal.
    #[error("these two cannot be one animal")]
    NotOneAnimal,
    /// A limit of the farm is out of its own bounds.
    #[error(transparent)]
    Limit(#[from] LimitError),
    /// No label asks for so little or so much powder.
    #[error(transparent)]
    PowderRate(#[from] OutOfBounds<Strength>),
    /// The farm's own limit for rings makes no sense.
    #[error(transparent)]
    Rings(#[from] RingDaysError),
}

/// A phone's clock may run ahead of another's by so much before "in the future" is said (ours).
const CLOCK_SLACK: TimeDelta = TimeDelta::minutes(2);

/// The most characters of a tag and of a remark.
const MOST_TAG: usize = 24;
const MOST_REMARK: usize = 1000;

/// What a lamb older than a day may weigh: up to 90 kg (ours; heavier than any lamb goes).
const MOST_LATER: Mass = Mass::from_kilograms(90.0);

/// Says whether a fact may be noted as having happened at `at`.
///
/// # Errors
/// The reason why not.
pub fn allow(flock: &Flock, book: &Book, event: &Event, at: Moment, now: Moment) -> Result<(), Refusal> {
    if at > now + CLOCK_SLACK {
        return Err(Refusal::InFuture { at, now });
    }
    match event {
        Event::Amended { entry, event, at } => {
            let here = book.entry(*entry).ok_or(Refusal::NoSuchEntry)?;
            if event.corrects().is_some() || here.event.corrects().is_some() {
                return Err(Refusal::NoSuchEntry);
            }
            if *at > now + CLOCK_SLACK {
                return Err(Refusal::InFuture { at: *at, now });
            }
            amendable(flock, *entry, event, *at)?;
            fact(flock, Some(*entry), event, *at)
        }
        Event::Struck { entry } | Event::Restored { entry } => {
            book.entry(*entry).map(|_| ()).ok_or(Refusal::NoSuchEntry)
        }
        Event::EweCame { .. }
        | Event::Tagged { .. }
        | Event::LambBorn { .. }
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
        | Event::Unread(_) => fact(flock, None, event, at),
    }
}

/// A birth may not move past what was seen of the lamb.
fn amendable(flock: &Flock, entry: EntryId, event: &Event, at: Moment) -> Result<(), Refusal> {
    if !matches!(event, Event::LambBorn { .. }) {
        return Ok(());
    }
    let id = entry.as_lamb();
    let own = |line: &&crate::flock::Line| {
        line.entry != entry && !line.struck && line.event.animals().contains(&Animal::Lamb(id))
    };
    match flock.lines_of(Animal::Lamb(id)).find(own) {
        Some(first) if first.at < at => Err(Refusal::BornAfter { born: at, seen: first.at }),
        Some(_) | None => Ok(()),
    }
}

fn fact(flock: &Flock, instead_of: Option<EntryId>, event: &Event, at: Moment) -> Result<(), Refusal> {
    match event {
        Event::EweCame { tag } => tag.as_deref().map_or(Ok(()), |tag| text(tag, MOST_TAG)),
        Event::Tagged { animal, tag } => {
            animal_here(flock, *animal)?;
            text(tag, MOST_TAG)
        }
        Event::LambBorn { dam, beside, .. } => {
            dam.map_or(Ok(()), |dam| animal_here(flock, Animal::Ewe(dam)))?;
            beside.map_or(Ok(()), |mate| animal_here(flock, Animal::Lamb(mate)))
        }
        Event::DamGiven { lamb, dam } => {
            animal_here(flock, Animal::Ewe(*dam))?;
            lamb_here(flock, *lamb).map(|_| ())
        }
        Event::BirthEase { lamb, .. } | Event::AllBorn { lamb } => lamb_here(flock, *lamb).map(|_| ()),
        Event::Stood { lamb }
        | Event::Sucked { lamb }
        | Event::NavelDipped { lamb }
        | Event::BellyFelt { lamb, .. } => alive(flock, *lamb, at).map(|_| ()),
        Event::Weighed { lamb, mass } => {
            let lamb = born(flock, *lamb, at)?;
            let mut allowed = Mass::AT_BIRTH;
            if at.since(lamb.born) >= TimeDelta::hours(24) {
                allowed.most = MOST_LATER;
            }
            allowed.check(*mass)?;
            Ok(())
        }
        Event::Fed { lamb, volume, .. } => {
            let lamb = alive(flock, *lamb, at)?;
            let day_before = at - TimeDelta::hours(24);
            let others = lamb.feeds.iter().filter(|feed| Some(feed.entry) != instead_of);
            let given =
                others.filter(|feed| feed.at > day_before && feed.at <= at).map(|feed| feed.volume).sum();
            feeds::check(*volume, lamb.weight(), at.since(lamb.born), given)?;
            Ok(())
        }
        Event::VigorScored { lamb, score, .. } => {
            alive(flock, *lamb, at)?;
            let (given, least, most) = (*score, 1, 4);
            if (least..=most).contains(&given) { Ok(()) } else { Err(Refusal::Score { given, least, most }) }
        }
        Event::Died { animal, .. } => {
            animal_here(flock, *animal)?;
            match animal {
                Animal::Lamb(lamb) => born(flock, *lamb, at).map(|_| ()),
                Animal::Ewe(_) => Ok(()),
            }
        }
        Event::Remarked { animal, text: remark } => {
            animal_here(flock, *animal)?;
            text(remark, MOST_REMARK)
        }
        Event::Chose(Choice::Limits(limits)) => limits.checked().map(|_| ()).map_err(Refusal::from),
        Event::Chose(Choice::FarmName(name)) if name.is_empty() => Ok(()),
        Event::Chose(Choice::FarmName(name)) => text(name, MOST_TAG),
        Event::Chose(Choice::PowderRate(rate)) => {
            Strength::ON_A_LABEL.check(*rate).map(|_| ()).map_err(Refusal::from)
        }
        Event::Chose(Choice::Rings(rings)) => rings.checked().map(|_| ()).map_err(Refusal::from),
        Event::Chose(
            Choice::System(_)
            | Choice::DayRule(_)
            | Choice::Housing(_)
            | Choice::BottleTable(_)
            | Choice::FreezerLife(_)
            | Choice::PowderRule(_)
            | Choice::WeaningRule(_)
            | Choice::BreedMeans(_)
            | Choice::Vigor(_)
            | Choice::ChillLimit(_)
            | Choice::DamsVaccinated(_),
        )
        | Event::Unread(_) => Ok(()),
        Event::SameAnimal { keep, also } => {
            animal_here(flock, *keep)?;
            animal_here(flock, *also)?;
            let alike =
                matches!((keep, also), (Animal::Ewe(_), Animal::Ewe(_)) | (Animal::Lamb(_), Animal::Lamb(_)));
            if alike && flock.one(*keep) != flock.one(*also) { Ok(()) } else { Err(Refusal::NotOneAnimal) }
        }
        Event::Amended { .. } | Event::Struck { .. } | Event::Restored { .. } => Err(Refusal::NoSuchEntry),
    }
}

fn animal_here(flock: &Flock, animal: Animal) -> Result<(), Refusal> {
    let here = match animal {
        Animal::Ewe(ewe) => flock.ewe(ewe).is_some(),
        Animal::Lamb(lamb) => flock.lamb(lamb).is_some(),
    };
    if here { Ok(()) } else { Err(Refusal::NoSuchAnimal) }
}

fn lamb_here(flock: &Flock, lamb: LambId) -> Result<&Lamb, Refusal> {
    flock.lamb(lamb).ok_or(Refusal::NoSuchAnimal)
}

/// The lamb, if it was born by then: by elapsed time, since two phones may tell one instant by different offsets.
fn born(flock: &Flock, lamb: LambId, at: Moment) -> Result<&Lamb, Refusal> {
    let lamb = lamb_here(flock, lamb)?;
    if at.since(lamb.born) < TimeDelta::zero() {
        Err(Refusal::BeforeBirth { at, born: lamb.born })
    } else {
        Ok(lamb)
    }
}

/// The lamb, if it was born and alive by then.
fn alive(flock: &Flock, lamb: LambId, at: Moment) -> Result<&Lamb, Refusal> {
    let lamb = born(flock, lamb, at)?;
    let died = if lamb.born_alive { lamb.died.map(|death| death.at) } else { Some(lamb.born) };
    match died {
        Some(died) if at.since(died) > TimeDelta::zero() => Err(Refusal::AfterDeath { at, died }),
        Some(_) | None => Ok(lamb),
    }
}

fn text(text: &str, most: usize) -> Result<(), Refusal> {
    let given = text.chars().count();
    if text.trim().is_empty() {
        Err(Refusal::NoText)
    } else if given > most {
        Err(Refusal::LongText { given, most })
    } else {
        Ok(())
    }
}
