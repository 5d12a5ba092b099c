//! What may be noted: the one gate that every entry passes before it is written, with the reason when it may not.
//!
//! What comes in a file was let in elsewhere and is kept as it is; this gate is for what someone types here and now.

use crate::book::{Animal, Book, EntryId, Event, LambId, PenId, VigorScale};
use crate::flock::{Feed, Flock, Lamb, Pen};
use crate::practice::{Choice, LimitError, RingDaysError};
use crate::reckon::feeds;
use crate::units::{Length, Mass, Moment, NotInALamb, OutOfBounds, Strength, TimeDelta, Volume};

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
    /// The feed comes so soon after another that both together are too much.
    #[error("{together:?} within an hour of {last}")]
    TooSoon {
        /// When the other was given.
        last: Moment,
        /// Both together.
        together: Volume,
    },
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
    /// No thermometer reads that in a living lamb.
    #[error(transparent)]
    Temperature(#[from] NotInALamb),
    /// No pen is so narrow or so wide.
    #[error(transparent)]
    PenSide(#[from] OutOfBounds<Length>),
    /// A lamb is not ringed in its first 24 hours.
    #[error("not ringed before {from}")]
    TooYoungToRing {
        /// When it is a day old.
        from: Moment,
    },
    /// The pen is not in the book, or was taken down.
    #[error("no such pen")]
    NoSuchPen,
    /// A pen is taken down when it is empty.
    #[error("the pen is in use")]
    PenInUse,
    /// Nothing of that kind is due for the animal.
    #[error("no such duty")]
    NoSuchDuty,
    /// A duty can wait, but not past its red limit.
    #[error("{until} is later than {most}")]
    PutOffTooLong {
        /// Until when it was to wait.
        until: Moment,
        /// Until when it may.
        most: Moment,
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

/// Feeds within so long of each other lie in one stomach (ours).
const ONE_STOMACH: TimeDelta = TimeDelta::hours(1);

/// No ring in the first 24 hours (AHDB).
const RINGED_FROM: TimeDelta = TimeDelta::hours(24);

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
    if let Event::Struck { entry } | Event::Restored { entry } = event {
        return book.entry(*entry).map(|_| ()).ok_or(Refusal::NoSuchEntry);
    }
    let Event::Amended { entry, event, at } = event else { return fact(flock, None, event, at, now) };
    let here = book.entry(*entry).ok_or(Refusal::NoSuchEntry)?;
    if event.corrects().is_some() || here.event.corrects().is_some() {
        return Err(Refusal::NoSuchEntry);
    }
    if *at > now + CLOCK_SLACK {
        return Err(Refusal::InFuture { at: *at, now });
    }
    amendable(flock, *entry, event, *at)?;
    fact(flock, Some(*entry), event, *at, now)
}

/// A birth may not move past what was seen of the lamb.
fn amendable(flock: &Flock, entry: EntryId, event: &Event, at: Moment) -> Result<(), Refusal> {
    if !matches!(event, Event::LambBorn { .. }) {
        return Ok(());
    }
    let id = entry.as_lamb();
    let own = |line: &&crate::flock::Line| {
        line.entry != entry && !line.struck && line.event.animals().any(|animal| animal == Animal::Lamb(id))
    };
    match flock.lines_of(Animal::Lamb(id)).find(own) {
        Some(first) if first.at < at => Err(Refusal::BornAfter { born: at, seen: first.at }),
        Some(_) | None => Ok(()),
    }
}

fn fact(
    flock: &Flock,
    instead_of: Option<EntryId>,
    event: &Event,
    at: Moment,
    now: Moment,
) -> Result<(), Refusal> {
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
        | Event::BellyFelt { lamb, .. }
        | Event::Accepted { lamb, .. }
        | Event::SwallowTried { lamb, .. }
        | Event::Warmed { lamb }
        | Event::Weaned { lamb } => alive(flock, *lamb, at).map(|_| ()),
        Event::TemperatureTaken { lamb, temperature } => {
            alive(flock, *lamb, at)?;
            temperature.in_a_lamb(flock.practice.system)?;
            Ok(())
        }
        Event::SolidsEaten { lamb, mass } => {
            alive(flock, *lamb, at)?;
            Mass::SOLIDS_IN_A_DAY.check(*mass)?;
            Ok(())
        }
        Event::Ringed { lamb, .. } => {
            let from = alive(flock, *lamb, at)?.born + RINGED_FROM;
            if at.since(from) < TimeDelta::zero() { Err(Refusal::TooYoungToRing { from }) } else { Ok(()) }
        }
        Event::SignSeen { ewe, .. }
        | Event::WaterBagSeen { ewe }
        | Event::StrainingSeen { ewe }
        | Event::PartShowing { ewe, .. }
        | Event::HandChecked { ewe, .. }
        | Event::HelpBegun { ewe }
        | Event::NotLambing { ewe }
        | Event::AfterbirthPassed { ewe } => living(flock, Animal::Ewe(*ewe), at),
        Event::VetCalled { animal } | Event::LookedAt { animal } | Event::LetOut { animal } => {
            living(flock, *animal, at)
        }
        Event::PenMade { name, size } => {
            text(name, MOST_TAG)?;
            let sides = size.iter().flat_map(|size| [size.wide, size.deep]);
            sides.map(|side| Length::PEN_SIDE.check(side)).collect::<Result<Vec<_>, _>>()?;
            Ok(())
        }
        Event::PenNamed { pen, name } => {
            pen_here(flock, *pen)?;
            text(name, MOST_TAG)
        }
        Event::PenCleaned { pen } => pen_here(flock, *pen).map(|_| ()),
        Event::PenClosed { pen } => {
            if pen_here(flock, *pen)?.inside.is_empty() {
                Ok(())
            } else {
                Err(Refusal::PenInUse)
            }
        }
        Event::PutInPen { animal, pen } => {
            living(flock, *animal, at)?;
            if pen_here(flock, *pen)?.closed.is_none() { Ok(()) } else { Err(Refusal::NoSuchPen) }
        }
        Event::PutOff { animal, duty, until } if instead_of.is_none() => {
            living(flock, *animal, at)?;
            let most = super::may_wait_until(flock, *animal, *duty, now).ok_or(Refusal::NoSuchDuty)?;
            if *until <= most { Ok(()) } else { Err(Refusal::PutOffTooLong { until: *until, most }) }
        }
        Event::PutOff { animal, .. } => animal_here(flock, *animal),
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
            let near = |feed: &&Feed| at.since(feed.at).abs() < ONE_STOMACH;
            let others = lamb.feeds.iter().filter(|feed| Some(feed.entry) != instead_of).filter(near);
            let (mut together, mut last) = (*volume, None);
            for feed in others {
                together = together + feed.volume;
                last = Some(feed.at);
            }
            match last {
                Some(last) => feeds::check(together, lamb.weight(), at.since(lamb.born), Volume::ZERO)
                    .map_err(|_| Refusal::TooSoon { last, together }),
                None => Ok(()),
            }
        }
        Event::VigorScored { lamb, scale, score } => {
            alive(flock, *lamb, at)?;
            let (least, most) = match scale {
                VigorScale::FourGrade => (1, 4),
                VigorScale::TenPoint => (0, 10),
                VigorScale::EightPoint => (0, 8),
            };
            let given = *score;
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
        Event::Chose(Choice::LaborLimits(limits)) => limits.checked().map(|_| ()).map_err(Refusal::from),
        Event::Chose(Choice::PenStay(stay)) => stay.checked().map(|_| ()).map_err(Refusal::from),
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

fn pen_here(flock: &Flock, pen: PenId) -> Result<&Pen, Refusal> {
    flock.pens.get(&pen).ok_or(Refusal::NoSuchPen)
}

/// An animal that lived at that time; a lamb that was born by then.
fn living(flock: &Flock, animal: Animal, at: Moment) -> Result<(), Refusal> {
    match animal {
        Animal::Lamb(lamb) => alive(flock, lamb, at).map(|_| ()),
        Animal::Ewe(ewe) => {
            let died = flock.ewe(ewe).ok_or(Refusal::NoSuchAnimal)?.died.map(|death| death.at);
            match died {
                Some(died) if at.since(died) > TimeDelta::zero() => Err(Refusal::AfterDeath { at, died }),
                Some(_) | None => Ok(()),
            }
        }
    }
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
