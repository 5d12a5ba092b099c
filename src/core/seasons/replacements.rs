//! Which ewe lambs to keep: each by her dam's record, how she was born and how she grew, and whose daughter she is.
//!
//! A ram is a name of his time with a group. Who was the only one with her dam then is her sire; of several nobody knows.

use std::collections::{BTreeMap, BTreeSet};

use super::keeping::Kept;
use super::{Grown, grown, seasons, usual_age};
use crate::book::{Animal, EweId, LambId, Sex};
use crate::flock::{Flock, Group, Lamb};
use crate::sort_small::SortSmall;
use crate::units::{Moment, TimeDelta};

/// A ewe lamb is chosen from until she is so old (ours: eighteen months).
const UNTIL: TimeDelta = TimeDelta::days(548);

/// How near of kin a ram is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kin {
    /// He is her sire.
    Sire,
    /// He may be: he was one of several rams with her dam.
    MaybeSire,
    /// He was born to her dam.
    Brother,
}

/// A ewe lamb that may be kept.
#[derive(Clone, Debug, PartialEq)]
pub struct Replacement {
    /// As a lamb.
    pub lamb: LambId,
    /// As she is known now: a lamb, or a ewe that has not lambed.
    pub animal: Animal,
    /// Her dam.
    pub dam: Option<EweId>,
    /// Lambs in her litter.
    pub born: u8,
    /// How she grew, if she was weighed.
    pub grown: Option<Grown>,
    /// The rams that are with a group now, or were last, of whom she is close kin, each by name.
    pub kin: Vec<(String, Kin)>,
}

/// Returns the ewe lambs that may be kept: those of dams without a mark first, then those that grew best.
#[must_use]
pub fn replacements(flock: &Flock, kept: &[Kept], now: Moment) -> Vec<Replacement> {
    let rams = rams_in_use(flock);
    let mut growths: BTreeMap<LambId, Grown> = BTreeMap::new();
    for season in seasons(flock).iter().filter(|season| now.since(season.last) < UNTIL) {
        let to = usual_age(flock, season, now);
        growths.extend(grown(flock, season, to, now).into_iter().map(|one| (one.lamb, one)));
    }
    let of = |lamb: &Lamb| -> Option<Replacement> {
        let young = lamb.sex == Some(Sex::Ewe) && lamb.born_alive && now.since(lamb.born) < UNTIL;
        let animal = match lamb.kept {
            Some(ewe) => {
                let lives =
                    flock.ewe(ewe).is_some_and(|ewe| ewe.lives() && flock.litters_of(ewe.id).is_empty());
                lives.then_some(Animal::Ewe(ewe))
            }
            None => lamb.lives().then_some(Animal::Lamb(lamb.id)),
        };
        let born = flock.born_as(lamb);
        let kin = kin(flock, lamb, &rams);
        let grown = growths.get(&lamb.id).cloned();
        Some(Replacement {
            lamb: lamb.id,
            animal: animal.filter(|_| young)?,
            dam: lamb.dam,
            born,
            grown,
            kin,
        })
    };
    let mut all: Vec<Replacement> = flock.lambs.values().filter_map(of).collect();
    let marks: BTreeMap<EweId, usize> = kept.iter().map(|one| (one.ewe, one.marks.len())).collect();
    let rank = |one: &Replacement| {
        let dam = one.dam.and_then(|dam| marks.get(&dam)).copied().unwrap_or(0);
        let adjusted = one.grown.as_ref().and_then(|grown| grown.adjusted.as_ref().ok());
        let adjusted = adjusted.map_or(f64::NEG_INFINITY, |adjusted| adjusted.mass.as_kilograms());
        let gain = one.grown.as_ref().and_then(|grown| grown.since_birth).unwrap_or(f64::NEG_INFINITY);
        (dam, adjusted, gain)
    };
    all.sort_small_by(|one, other| {
        let ((dam, adjusted, gain), (other_dam, other_adjusted, other_gain)) = (rank(one), rank(other));
        let grew = other_adjusted.total_cmp(&adjusted).then(other_gain.total_cmp(&gain));
        dam.cmp(&other_dam).then(grew).then(one.lamb.cmp(&other.lamb))
    });
    all
}

/// The rams that are with a group now, or were last with one that stands, by name.
fn rams_in_use(flock: &Flock) -> BTreeSet<String> {
    let standing = flock.groups.values().filter(|group| group.parted.is_none());
    let last = |group: &Group| -> Vec<String> {
        let out = group.rams.last().map(|ram| ram.out);
        let rams = group.rams.iter().filter(|ram| Some(ram.out) == out);
        rams.filter_map(|ram| ram.label.clone()).collect()
    };
    standing.flat_map(last).collect()
}

fn kin(flock: &Flock, lamb: &Lamb, rams: &BTreeSet<String>) -> Vec<(String, Kin)> {
    let sires = sires(flock, lamb);
    let sire = |name: &String| match (sires.contains(name), sires.len()) {
        (false, _) => None,
        (true, 1) => Some(Kin::Sire),
        (true, _) => Some(Kin::MaybeSire),
    };
    let brother = |name: &String| {
        let his = |one: &&Lamb| one.sex == Some(Sex::Ram) && one.dam.is_some() && one.dam == lamb.dam;
        let called = |one: &&Lamb| one.tag.as_ref() == Some(name) || one.worn.contains(name);
        flock.lambs.values().filter(his).any(|one| called(&one)).then_some(Kin::Brother)
    };
    let near = |name: &String| Some((name.clone(), sire(name).or_else(|| brother(name))?));
    rams.iter().filter_map(near).collect()
}

/// The rams that were with her dam when she was begotten, by name.
fn sires(flock: &Flock, lamb: &Lamb) -> BTreeSet<String> {
    // What was said of it stands before what its dam's groups tell.
    if let Some(sire) = lamb.sire.and_then(|sire| flock.ram(sire)) {
        return sire.tag.iter().chain(&sire.worn).cloned().collect();
    }
    let Some(dam) = lamb.dam else { return BTreeSet::new() };
    let windows = flock.windows_of(dam);
    let hers = windows
        .iter()
        .filter(|window| flock.litter_of_window(window).is_some_and(|litter| litter.id == lamb.litter));
    let mut sires = BTreeSet::new();
    for window in hers {
        let Some(group) = flock.groups.get(&window.group) else { continue };
        let there = group.rams.iter().filter(|ram| {
            window.ram_out.is_none_or(|out| ram.came < out) && ram.out.is_none_or(|out| out > window.ram_in)
        });
        sires.extend(there.filter_map(|ram| ram.label.clone()));
    }
    sires
}
