//! Who sired whom, as far as the groups tell: the rams that were with a ewe on days that fit her litter.
//!
//! A ram is known by what he is called in his groups; several together, or one without a name, are told as such and never
//! as one of them.

use std::collections::BTreeSet;

use crate::book::{Animal, EweId, GroupId, LambId, Sex};
use crate::flock::{Flock, Lamb, Litter, MatingWindow};
use crate::sort_small::{Gather, SortSmall};

/// Who can have sired a litter.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sire {
    /// This ram, or one of these, by what they are called.
    Rams(Vec<String>),
    /// A ram of this group; not all of its rams have a name.
    OfGroup(GroupId),
}

/// How a ewe is kin to a ram.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KinToRam {
    /// She is his dam.
    Dam,
    /// She is his daughter.
    Daughter,
    /// She is a daughter of his, or of another ram that was in with him.
    PerhapsDaughter,
}

/// Says whether two names are of one ram.
fn same(one: &str, other: &str) -> bool {
    one.trim().to_lowercase() == other.trim().to_lowercase()
}

impl Sire {
    fn of_window(flock: &Flock, window: &MatingWindow) -> Option<Self> {
        let group = flock.groups.get(&window.group)?;
        let with_her = group.rams.iter().filter(|ram| {
            let before = window.ram_out.is_none_or(|out| ram.came < out);
            before && ram.out.is_none_or(|out| out > window.ram_in)
        });
        let mut named: Vec<String> = Vec::new();
        for ram in with_her {
            let Some(label) = ram.label.as_deref().map(str::trim).filter(|label| !label.is_empty()) else {
                return Some(Self::OfGroup(group.id));
            };
            if !named.iter().any(|known| same(known, label)) {
                named.push(label.to_owned());
            }
        }
        named.sort_small();
        (!named.is_empty()).then_some(Self::Rams(named))
    }

    /// Returns who can have been the ram in these times; none where that is nobody's guess.
    pub(super) fn of_windows<'a>(
        flock: &Flock,
        windows: impl Iterator<Item = &'a MatingWindow>,
    ) -> Option<Self> {
        let mut found: Option<Self> = None;
        for sire in windows.filter_map(|window| Self::of_window(flock, window)) {
            found = match (found, sire) {
                (None, sire) => Some(sire),
                (Some(Self::Rams(mut all)), Self::Rams(more)) => {
                    for name in more {
                        if !all.iter().any(|known| same(known, &name)) {
                            all.push(name);
                        }
                    }
                    all.sort_small();
                    Some(Self::Rams(all))
                }
                (Some(Self::OfGroup(one)), Self::OfGroup(other)) if one == other => Some(Self::OfGroup(one)),
                (Some(_), _) => return None,
            };
        }
        found
    }

    /// Returns by what one sire is told from another, however it is written.
    pub(super) fn key(&self) -> (Option<GroupId>, Vec<String>) {
        match self {
            Self::Rams(names) => (None, names.iter().map(|name| name.to_lowercase()).collect()),
            Self::OfGroup(group) => (Some(*group), Vec::new()),
        }
    }
}

/// Returns the ram that is said to have sired a lamb of this litter, by what he is called.
pub(super) fn said_of(flock: &Flock, litter: &Litter) -> Option<Sire> {
    let mut named: Vec<String> = Vec::new();
    for lamb in litter.lambs.iter().filter_map(|id| flock.lambs.get(id)) {
        let tag = lamb.sire.and_then(|sire| flock.ram(sire)).and_then(|ram| ram.tag.clone());
        named.extend(tag.filter(|tag| !named.iter().any(|known| same(known, tag))));
    }
    named.sort_small();
    (!named.is_empty()).then_some(Sire::Rams(named))
}

/// Returns who can have sired a litter: as it was said of its lambs, else by the groups; none while no ram is known to have
/// been with its dam on days that fit.
#[must_use]
pub fn sire_of(flock: &Flock, litter: &Litter) -> Option<Sire> {
    if let Some(said) = said_of(flock, litter) {
        return Some(said);
    }
    let windows = flock.windows_of(litter.dam?);
    let brought = |window: &&MatingWindow| {
        flock.litter_of_window(window).is_some_and(|of_window| of_window.id == litter.id)
    };
    Sire::of_windows(flock, windows.iter().filter(brought))
}

/// Returns the lambs that are ram lambs and called so, or ever were.
fn called<'a>(flock: &'a Flock, ram: &'a str) -> impl Iterator<Item = &'a Lamb> {
    let is = move |lamb: &&Lamb| {
        lamb.sex == Some(Sex::Ram) && lamb.tag.iter().chain(&lamb.worn).any(|name| same(name, ram))
    };
    flock.lambs.values().filter(is)
}

/// Returns which of these ewes are near kin to a ram of this name: his dam, his daughters.
#[must_use]
pub fn near_kin(flock: &Flock, ram: &str, ewes: impl Iterator<Item = EweId>) -> Vec<(EweId, KinToRam)> {
    let dams: BTreeSet<EweId> = called(flock, ram).filter_map(|lamb| lamb.dam).gathered();
    let here = flock.ram_called(ram);
    let kin = |ewe: EweId| {
        let ewe = flock.ewe(ewe)?;
        let his_dam = here
            .and_then(|ram| ram.dam)
            .is_some_and(|dam| flock.canonical(Animal::Ewe(dam)) == Animal::Ewe(ewe.id));
        let her_sire = ewe.sire.and_then(|sire| flock.ram(sire));
        if her_sire.is_some() && her_sire.map(|sire| sire.id) == here.map(|ram| ram.id) {
            return Some((ewe.id, KinToRam::Daughter));
        }
        if his_dam || dams.contains(&ewe.id) {
            return Some((ewe.id, KinToRam::Dam));
        }
        let litter = flock.litter_of(ewe.was?)?;
        let Some(Sire::Rams(names)) = sire_of(flock, litter) else { return None };
        let his = names.iter().any(|name| same(name, ram));
        his.then_some((ewe.id, if names.len() == 1 { KinToRam::Daughter } else { KinToRam::PerhapsDaughter }))
    };
    ewes.filter_map(kin).collect()
}

/// Returns the lambs of a litter that were kept, each with the ewe that she became.
#[must_use]
pub fn kept_of(flock: &Flock, litter: &Litter) -> Vec<(LambId, EweId)> {
    let kept = |id: &LambId| Some((*id, flock.lamb(*id)?.kept?));
    let here = |(_, ewe): &(LambId, EweId)| {
        flock.ewe(*ewe).is_some() && flock.canonical(Animal::Ewe(*ewe)) == Animal::Ewe(*ewe)
    };
    litter.lambs.iter().filter_map(kept).filter(here).collect()
}
