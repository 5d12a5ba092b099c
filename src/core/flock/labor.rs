//! A ewe's labor as it stands: what was seen since her last birth, and since it was last said that she is not lambing.

use crate::book::{Awaited, EntryId, Found, Part, Sign};
use crate::units::{Moment, TimeDelta};

/// One thing seen of a ewe around lambing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Seen {
    /// The entry that noted it.
    pub entry: EntryId,
    /// When.
    pub at: Moment,
    /// What.
    pub what: Saw,
}

/// What can be seen, found or done around lambing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Saw {
    /// A sign.
    Sign(Sign),
    /// The water bag, or waters.
    WaterBag,
    /// Hard straining.
    Straining,
    /// A part of the lamb.
    Part(Part),
    /// What a clean hand found.
    Check(Found),
    /// A lamb being put right, or pulled.
    Help,
    /// It was put right.
    PutRight,
    /// The vet was called.
    Vet,
    /// She was looked at, and all was well.
    Look,
    /// She is not lambing now.
    NotLambing,
    /// The afterbirth passed.
    Afterbirth,
    /// The afterbirth was looked for and has not passed.
    Awaited(Awaited),
}

/// Signs older than this say nothing of tonight (ours: signs of the last day, and one more for a slow one).
pub const SIGNS_FOR: TimeDelta = TimeDelta::hours(48);

/// A labor that goes on. Each single instant is the first of its kind, but for the last look.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Labor {
    /// Signs seen, oldest first.
    pub signs: Vec<(Moment, Sign)>,
    /// Since when she is restless.
    pub restless: Option<Moment>,
    /// When her waters were seen.
    pub waters: Option<Moment>,
    /// Since when she strains.
    pub straining: Option<Moment>,
    /// What showed, oldest first.
    pub parts: Vec<(Moment, Part)>,
    /// The clean hand checks and what each found, oldest first.
    pub checks: Vec<(Moment, Found)>,
    /// When someone began to help her, oldest first.
    pub help: Vec<Moment>,
    /// When a lamb was put right, oldest first.
    pub put_right: Vec<Moment>,
    /// When she was last looked at and all was well.
    pub looked: Option<Moment>,
}

impl Labor {
    /// Returns the labor made of what was seen after `after`, if anything was that belongs to one.
    pub(super) fn since(seen: &[Seen], after: Option<Moment>) -> Option<Self> {
        let mut labor = Self::default();
        for seen in seen.iter().filter(|seen| after.is_none_or(|after| seen.at > after)) {
            labor.take(seen);
        }
        (labor.runs() || !labor.signs.is_empty()).then_some(labor)
    }

    fn take(&mut self, seen: &Seen) {
        let at = seen.at;
        match seen.what {
            Saw::Sign(sign) => {
                self.signs.push((at, sign));
                if sign == Sign::Restless {
                    self.restless.get_or_insert(at);
                }
            }
            Saw::WaterBag => _ = self.waters.get_or_insert(at),
            Saw::Straining => _ = self.straining.get_or_insert(at),
            Saw::Part(part) => self.parts.push((at, part)),
            Saw::Help => self.help.push(at),
            Saw::PutRight => self.put_right.push(at),
            Saw::Look => self.looked = Some(at),
            // What shows, or what a hand found, does not come to nothing by being said not to be.
            Saw::NotLambing if self.is_sure() => {}
            // Either way nothing more is awaited; what comes later begins anew.
            Saw::NotLambing | Saw::Check(Found::Empty) => {
                *self = Self::default();
            }
            Saw::Check(found) => self.checks.push((at, found)),
            Saw::Vet | Saw::Afterbirth | Saw::Awaited(_) => {}
        }
    }

    /// Says whether a lamb shows, was found or is being helped, or the neck of the womb was found tight: more than signs.
    #[must_use]
    pub fn is_sure(&self) -> bool {
        let found = |(_, found): &(Moment, Found)| matches!(found, Found::Lamb(_) | Found::CervixClosed);
        !self.parts.is_empty() || !self.help.is_empty() || self.checks.iter().any(found)
    }

    /// Says whether a clock runs: more than signs that she is near.
    #[must_use]
    pub const fn runs(&self) -> bool {
        self.restless.is_some()
            || self.waters.is_some()
            || self.straining.is_some()
            || !self.parts.is_empty()
            || !self.help.is_empty()
            || !self.put_right.is_empty()
            || !self.checks.is_empty()
    }

    /// Returns the last clean hand check and what it found.
    #[must_use]
    pub fn check(&self) -> Option<(Moment, Found)> {
        self.checks.last().copied()
    }

    /// Returns when more was first seen, found or done than that she is restless.
    #[must_use]
    pub fn further(&self) -> Option<Moment> {
        let parts = self.parts.first().map(|(at, _)| *at);
        let check = self.checks.first().map(|(at, _)| *at);
        let helped = self.help.iter().chain(&self.put_right).copied().min();
        [self.waters, self.straining, parts, helped, check].into_iter().flatten().min()
    }

    /// Returns since when it presses: the first of waters and hard straining.
    #[must_use]
    pub fn pressing(&self) -> Option<Moment> {
        self.waters.into_iter().chain(self.straining).min()
    }

    /// Returns when it began, as far as was seen.
    #[must_use]
    pub fn began(&self) -> Option<Moment> {
        self.restless.into_iter().chain(self.further()).min()
    }
}
