//! When a ewe can lamb at all: by the time she was with a ram, until she has lambed or was scanned empty.
//!
//! A season is nothing that is noted: it is what is left of a ewe's mating windows after her last lambing.

use super::{CrayonMark, Ewe, Flock, Litter, MatingWindow, Scan};
use crate::book::EweId;
use crate::sort_small::SortSmall;
use crate::units::{Moment, TimeDelta};

/// A ewe lambs no earlier than so many days after mating (Sheep 201, as quoted; seen). The day of mating
/// is day 0.
pub const EARLIEST_BIRTH: i64 = 138;

/// A ewe lambs no later than so many days after mating (Sheep 201, as quoted; seen).
pub const LATEST_BIRTH: i64 = 159;

/// A scan sees nothing of a lamb younger than so many days (ours; scanners count from about day 40 on: memory).
pub const UNSEEN_DAYS: i64 = 30;

/// A mark of the last night with the ram is seen within so many days (ours).
const SEEN_AFTER: i64 = 1;

/// A mating so long before a birth says nothing about it: another went unnoted (ours).
const ANOTHER_YEAR: i64 = 300;

/// Births further apart than so many days are of two litters (ours; as a litter is told from the next).
const ANOTHER_LITTER: TimeDelta = TimeDelta::days(7);

/// What is known of when a ewe will lamb.
#[derive(Clone, Debug, PartialEq)]
pub struct Expectation {
    /// Who.
    pub ewe: EweId,
    /// When she can have been mated, oldest first; at least one.
    pub windows: Vec<MatingWindow>,
    /// The crayon marks that she got in that time, oldest first.
    pub marks: Vec<CrayonMark>,
    /// Her last scan since the first of these windows began.
    pub scan: Option<Scan>,
}

/// A lambing that no known mating explains: another ram, another date, or lost early?
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OddBirth {
    /// Whether it comes too early or too late for the mating.
    pub how: Odd,
    /// The mating that comes nearest.
    pub window: MatingWindow,
    /// How many days lie between: since the ram came in when too early, since he went out when too late.
    pub days: i64,
}

/// How a birth does not fit a mating.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Odd {
    /// Fewer than 138 days after the ram came in.
    Early,
    /// More than 159 days after the ram went out.
    Late,
}

/// A gestation of this flock's own, from the last crayon mark that can have been the mating.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gestation {
    /// Whose.
    pub ewe: EweId,
    /// When the litter's first lamb was born.
    pub born: Moment,
    /// How many lambs there were.
    pub lambs: usize,
    /// How many days it took.
    pub days: i64,
}

impl Expectation {
    /// Returns when a ram was first with her.
    #[must_use]
    pub fn ram_in(&self) -> Option<Moment> {
        self.windows.first().map(|window| window.ram_in)
    }

    /// Returns when the last ram went out; nothing while one is with her.
    #[must_use]
    pub fn ram_out(&self) -> Option<Moment> {
        self.windows.last().and_then(|window| window.ram_out)
    }
}

impl Flock {
    /// Returns what is known of when a ewe will lamb; nothing when she is dead, was with no ram since she last lambed,
    /// was scanned empty after the ram was out, or has passed the last day on which she could.
    #[must_use]
    pub fn expectation(&self, ewe: EweId, now: Moment) -> Option<Expectation> {
        self.expectation_of(self.ewe(ewe)?, now)
    }

    fn expectation_of(&self, ewe: &Ewe, now: Moment) -> Option<Expectation> {
        if !ewe.lives() || ewe.stays.is_empty() {
            return None;
        }
        let born = self.litters_by(ewe.id).map(|litter| litter.began).max();
        let mut windows = left_after(self.windows_in(&ewe.stays), born);
        windows.retain(|window| window.ram_out.is_none_or(|out| days(out, now) <= LATEST_BIRTH));
        let first = windows.first()?.ram_in;
        let scan = ewe.scans.last().filter(|scan| scan.at >= first).copied();
        if let Some(Scan { at, lambs: 0, .. }) = scan {
            windows = windows.into_iter().filter_map(|window| unseen(window, at)).collect();
        }
        if windows.is_empty() {
            return None;
        }
        let in_time = |mark: &&CrayonMark| windows.iter().any(|window| can_be_of(window, mark));
        let marks = ewe.marks.iter().filter(in_time).cloned().collect();
        Some(Expectation { ewe: ewe.id, windows, marks, scan })
    }

    /// Returns what is known of every ewe of whom a lambing is expected, by id.
    #[must_use]
    pub fn expectations(&self, now: Moment) -> Vec<Expectation> {
        self.ewes.values().filter_map(|ewe| self.expectation_of(ewe, now)).collect()
    }

    /// Returns the first litter of a ewe that began after `from`.
    #[must_use]
    pub fn lambed_since(&self, ewe: EweId, from: Moment) -> Option<&Litter> {
        self.litters_of(ewe).into_iter().rev().find(|litter| litter.began > from)
    }

    /// Returns how many lambs a scan saw of the litter that a ewe is having at `at`: her last scan of the days before, as
    /// many as she can carry. None when there was no scan, or it saw none.
    #[must_use]
    pub fn scanned_for(&self, ewe: EweId, at: Moment) -> Option<u8> {
        let scan = self.ewe(ewe)?.scans.last()?;
        let of_now = (0..=LATEST_BIRTH).contains(&days(scan.at, at));
        let born_since = self
            .litters_of(ewe)
            .iter()
            .any(|litter| litter.began > scan.at && litter.began + ANOTHER_LITTER < at);
        (of_now && !born_since && scan.lambs > 0).then_some(scan.lambs)
    }

    /// Returns the litter that can be of a mating window: the first from 138 days after the ram came in to 159 days
    /// after he went out.
    #[must_use]
    pub fn litter_of_window(&self, window: &MatingWindow) -> Option<&Litter> {
        self.litters_of_window(*window).min_by_key(|litter| litter.began)
    }

    /// Returns all litters that can be of it: of a ram that stayed on, a later one too.
    pub(crate) fn litters_of_window(&self, window: MatingWindow) -> impl Iterator<Item = &Litter> {
        self.litters_by(window.ewe).filter(move |litter| fits(&window, litter.began))
    }

    /// Returns what is left of a mating window once she lambed in it from a mating that nobody noted: the days after, or
    /// nothing when he was out by then.
    pub(crate) fn left_of(&self, window: MatingWindow) -> Option<MatingWindow> {
        let unnoted = |began: &Moment| *began > window.ram_in && days(window.ram_in, *began) < EARLIEST_BIRTH;
        let litters = self.litters_by(window.ewe).map(|litter| litter.began);
        match litters.filter(unnoted).max() {
            None => Some(window),
            born => left_after(vec![window], born).pop(),
        }
    }

    /// Returns what does not fit when a ewe lambs at `born`, going by every mating that is known and was not used up
    /// by an earlier litter; nothing when one fits, or none is known.
    #[must_use]
    pub fn odd_birth(&self, ewe: EweId, born: Moment) -> Option<OddBirth> {
        let litters = self.litters_of(ewe);
        let before =
            litters.into_iter().map(|litter| litter.began).find(|began| *began + ANOTHER_LITTER < born);
        let mut windows = self.windows_after(ewe, before);
        windows.retain(|window| window.ram_in < born);
        if windows.iter().any(|window| fits(window, born)) {
            return None;
        }
        let odd = |window: MatingWindow| match window.ram_out.map(|out| days(out, born)) {
            Some(days) if days > LATEST_BIRTH => OddBirth { how: Odd::Late, window, days },
            Some(_) | None => OddBirth { how: Odd::Early, window, days: days(window.ram_in, born) },
        };
        let off_by = |odd: &OddBirth| match odd.how {
            Odd::Early => EARLIEST_BIRTH - odd.days,
            Odd::Late => odd.days - LATEST_BIRTH,
        };
        let nearest = windows.into_iter().map(odd).min_by_key(off_by)?;
        (nearest.days <= ANOTHER_YEAR).then_some(nearest)
    }

    /// Returns how long this flock's ewes carried, where a mark can have been the mating, by ewe.
    ///
    /// Of several marks the last counts: a ewe that is marked again did not hold before.
    #[must_use]
    pub fn gestations(&self) -> Vec<Gestation> {
        let of = |litter: &Litter| {
            let ewe = self.ewe(litter.dam?)?;
            let took = |mark: &CrayonMark| days(mark.at, litter.began);
            let took =
                ewe.marks.iter().map(took).filter(|days| (EARLIEST_BIRTH..=LATEST_BIRTH).contains(days));
            let days = took.min()?;
            Some(Gestation { ewe: ewe.id, born: litter.began, lambs: litter.lambs.len(), days })
        };
        let mut all: Vec<Gestation> = self.litters.values().filter_map(of).collect();
        all.sort_small_by_key(|gestation| (gestation.ewe, gestation.born));
        all
    }

    /// What a lambing leaves of a ewe's mating windows.
    pub(crate) fn windows_after(&self, ewe: EweId, born: Option<Moment>) -> Vec<MatingWindow> {
        left_after(self.windows_of(ewe), born)
    }
}

/// What a lambing leaves of these mating windows.
///
/// A lambing that can be of a window ends it, also while the ram is still in; one that comes too early for it was of
/// another mating or was lost, and leaves what came after.
fn left_after(windows: Vec<MatingWindow>, born: Option<Moment>) -> Vec<MatingWindow> {
    let Some(born) = born else { return windows };
    let left = |window: MatingWindow| {
        let ended =
            days(window.ram_in, born) >= EARLIEST_BIRTH || window.ram_out.is_some_and(|out| out <= born);
        let ram_in = window.ram_in.max(born);
        (window.ram_in >= born || !ended).then_some(MatingWindow { ram_in, ..window })
    };
    windows.into_iter().filter_map(left).collect()
}

/// Returns how many days lie between, by the dates that the clocks showed: the day of mating is day 0.
pub(crate) fn days(from: Moment, to: Moment) -> i64 {
    to.local().date().signed_duration_since(from.local().date()).num_days()
}

fn fits(window: &MatingWindow, born: Moment) -> bool {
    days(window.ram_in, born) >= EARLIEST_BIRTH
        && window.ram_out.is_none_or(|out| days(out, born) <= LATEST_BIRTH)
}

/// What an empty scan leaves of a mating window: a lamb too young to be seen.
fn unseen(window: MatingWindow, scanned: Moment) -> Option<MatingWindow> {
    let from = scanned - TimeDelta::days(UNSEEN_DAYS);
    let ram_in = window.ram_in.max(from);
    window.ram_out.is_none_or(|out| out > ram_in).then_some(MatingWindow { ram_in, ..window })
}

fn can_be_of(window: &MatingWindow, mark: &CrayonMark) -> bool {
    days(window.ram_in, mark.at) >= 0 && window.ram_out.is_none_or(|out| days(out, mark.at) <= SEEN_AFTER)
}
