//! Whether what a fact names is here, and lived at that time.

use super::{GroupRejection, LifeRejection, Rejection};
use crate::book::{Animal, EweId, GroupId, LambId, PenId};
use crate::flock::{Ewe, Flock, Group, Lamb, Left, Pen};
use crate::units::{Moment, TimeDelta};

pub(super) fn animal_here(flock: &Flock, animal: Animal) -> Result<(), Rejection> {
    let here = match animal {
        Animal::Ewe(ewe) => flock.grown(ewe).is_some(),
        Animal::Lamb(lamb) => flock.lamb(lamb).is_some(),
    };
    if here { Ok(()) } else { Err(Rejection::NoSuchAnimal) }
}

pub(super) fn ewe_here(flock: &Flock, ewe: EweId) -> Result<&Ewe, Rejection> {
    flock.ewe(ewe).ok_or(Rejection::NoSuchAnimal)
}

/// A ewe or a ram.
pub(super) fn grown_here(flock: &Flock, id: EweId) -> Result<&Ewe, Rejection> {
    flock.grown(id).ok_or(Rejection::NoSuchAnimal)
}

/// The group, also after it was broken up.
pub(super) fn group_here(flock: &Flock, group: GroupId) -> Result<&Group, Rejection> {
    flock.groups.get(&group).ok_or(Rejection::Group(GroupRejection::NoSuchGroup))
}

pub(super) fn pen_here(flock: &Flock, pen: PenId) -> Result<&Pen, Rejection> {
    flock.pens.get(&pen).ok_or(Rejection::NoSuchPen)
}

/// A ewe or a lamb that lived at that time; a lamb that was born by then.
pub(super) fn living(flock: &Flock, animal: Animal, at: Moment) -> Result<(), Rejection> {
    match animal {
        Animal::Lamb(lamb) => alive(flock, lamb, at).map(|_| ()),
        Animal::Ewe(ewe) => lived(ewe_here(flock, ewe)?, at),
    }
}

/// The same of any animal, rams too.
pub(super) fn any_living(flock: &Flock, animal: Animal, at: Moment) -> Result<(), Rejection> {
    match animal {
        Animal::Lamb(lamb) => alive(flock, lamb, at).map(|_| ()),
        Animal::Ewe(id) => lived(grown_here(flock, id)?, at),
    }
}

fn lived(grown: &Ewe, at: Moment) -> Result<(), Rejection> {
    not_left(grown.left.as_ref(), at)?;
    match grown.died.map(|death| death.at) {
        Some(died) if at.since(died) > TimeDelta::zero() => Err(Rejection::AfterDeath { at, died }),
        Some(_) | None => Ok(()),
    }
}

pub(super) fn lamb_here(flock: &Flock, lamb: LambId) -> Result<&Lamb, Rejection> {
    flock.lamb(lamb).ok_or(Rejection::NoSuchAnimal)
}

/// The lamb, if it was born by then: by elapsed time, since two phones may tell one instant by different offsets.
pub(super) fn born(flock: &Flock, lamb: LambId, at: Moment) -> Result<&Lamb, Rejection> {
    let lamb = lamb_here(flock, lamb)?;
    if at.since(lamb.born) < TimeDelta::zero() {
        Err(Rejection::BeforeBirth { at, born: lamb.born })
    } else {
        Ok(lamb)
    }
}

/// The lamb, if it was born and alive by then.
pub(super) fn alive(flock: &Flock, lamb: LambId, at: Moment) -> Result<&Lamb, Rejection> {
    let lamb = born(flock, lamb, at)?;
    not_left(lamb.left.as_ref(), at)?;
    let died = if lamb.born_alive { lamb.died.map(|death| death.at) } else { Some(lamb.born) };
    match died {
        Some(died) if at.since(died) > TimeDelta::zero() => Err(Rejection::AfterDeath { at, died }),
        Some(_) | None => Ok(lamb),
    }
}

fn not_left(left: Option<&Left>, at: Moment) -> Result<(), Rejection> {
    match left.map(|left| left.at) {
        Some(left) if at.since(left) > TimeDelta::zero() => Err(LifeRejection::AfterLeft { at, left }.into()),
        Some(_) | None => Ok(()),
    }
}

pub(super) fn text(text: &str, most: usize) -> Result<(), Rejection> {
    let given = text.chars().count();
    if text.trim().is_empty() {
        Err(Rejection::NoText)
    } else if given > most {
        Err(Rejection::LongText { given, most })
    } else {
        Ok(())
    }
}
