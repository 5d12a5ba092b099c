//! A lamb as the book has it.
//!
//! A lamb that was found has two ages: its birth stands at the oldest it can be, `found` at the youngest; each rule
//! takes the safer one (`age`, `least_age`).

use super::{LambIll, Left, Reared, Vital};
use crate::book::{
    Belly, Castration, Cause, EntryId, EweId, GlucoseBy, LambId, LambingEase, Milk, Mouth, Ring, Sex, Suck,
    VetSaid, VigorScale, Way,
};
use crate::terms::{Change, Spread};
use crate::units::{Mass, Moment, Temperature, TimeDelta, Volume};

/// A lamb. Everything seen of it is in the order in which it happened.
#[derive(Clone, Debug, PartialEq)]
pub struct Lamb {
    /// Its id.
    pub id: LambId,
    /// When it was born.
    pub born: Moment,
    /// When it was found, if nobody saw its birth; it was born between `born` and then.
    pub found: Option<Moment>,
    /// Whether it was born alive.
    pub born_alive: bool,
    /// Its dam, if known.
    pub dam: Option<EweId>,
    /// Its sire, where it was said.
    pub sire: Option<EweId>,
    /// Of how many it was born, where more were said than are here.
    pub born_as: Option<u8>,
    /// Whether it is said to be castrated, nobody knows when or how.
    pub wether: bool,
    /// How it was reared, where it was said.
    pub reared_as: Option<Reared>,
    /// Its sex, if seen.
    pub sex: Option<Sex>,
    /// The first lamb of its litter, which names the litter.
    pub litter: LambId,
    /// Its place in the litter, from 0.
    pub order: usize,
    /// What it is called by, if it has a tag of its own.
    pub tag: Option<String>,
    /// Tags it wore before and marks that were put on it, oldest first.
    pub worn: Vec<String>,
    /// The ewes it was given to be reared by, and when.
    pub fostered: Vec<(Moment, EweId)>,
    /// How its birth went.
    pub ease: Option<LambingEase>,
    /// Its weights.
    pub weights: Vec<Weight>,
    /// When it was seen standing.
    pub stood: Vec<Moment>,
    /// When it was seen to suck.
    pub sucked: Vec<Moment>,
    /// When its navel was dipped.
    pub navel: Vec<Moment>,
    /// What it was fed by hand.
    pub feeds: Vec<Feed>,
    /// Its vigor scores.
    pub vigor: Vec<Scored>,
    /// How its belly felt.
    pub belly: Vec<Felt>,
    /// Its temperatures.
    pub temperatures: Vec<Reading>,
    /// Whether it held its head up and swallowed when tried.
    pub swallow: Vec<(Moment, bool)>,
    /// When its warming began.
    pub warmed: Vec<Moment>,
    /// What it ate of solid feed, a day an entry.
    pub solids: Vec<Weight>,
    /// When it was ringed, and where.
    pub rings: Vec<(Moment, Ring)>,
    /// When it was castrated otherwise than by a ring, and how.
    pub castrated: Vec<(Moment, Castration)>,
    /// Whether its dam accepted it, each time it was noted.
    pub accepted: Vec<(Moment, bool)>,
    /// Each call to the vet for it, and what came of it.
    pub vet: Vec<VetCall>,
    /// When it was given glucose, and by whom.
    pub glucose: Vec<(Moment, GlucoseBy)>,
    /// What a finger in its mouth felt.
    pub mouth: Vec<MouthFelt>,
    /// When it was looked at and all was well.
    pub looked: Vec<Moment>,
    /// When it was weaned.
    pub weaned: Option<Moment>,
    /// Its death, if it has died after birth.
    pub died: Option<Death>,
    /// How it left the flock alive, if it did.
    pub left: Option<Left>,
    /// The ewe that she became, if she was kept.
    pub kept: Option<EweId>,
    /// What was seen of it that is not right.
    pub ill: Vec<LambIll>,
    /// When something that goes round was seen to, told of it.
    pub spread_seen_to: Vec<(Moment, Spread)>,
    /// How it was when it was looked at again.
    pub changed: Vec<(Moment, Change)>,
    /// Pulses and breaths that were counted.
    pub vitals: Vec<Vital>,
    /// How long a fold of its skin stood, in seconds.
    pub tents: Vec<(Moment, u8)>,
    /// When the vet allowed it milk again.
    pub milk_allowed: Vec<Moment>,
}

/// A weight and when it was taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weight {
    /// When.
    pub at: Moment,
    /// How heavy.
    pub mass: Mass,
}

/// A feed by hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Feed {
    /// The entry that noted it.
    pub entry: EntryId,
    /// When.
    pub at: Moment,
    /// How much.
    pub volume: Volume,
    /// What.
    pub milk: Milk,
    /// By bottle or tube.
    pub way: Way,
}

/// A temperature and when it was taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// When.
    pub at: Moment,
    /// How warm.
    pub temperature: Temperature,
}

/// A vigor score on its scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Scored {
    /// When.
    pub at: Moment,
    /// On which scale.
    pub scale: VigorScale,
    /// The score on that scale.
    pub score: u8,
}

impl Scored {
    /// Says whether it is the worst grade, or in the lowest band of points.
    #[must_use]
    pub const fn is_failing(&self) -> bool {
        match self.scale {
            VigorScale::FourGrade => self.score >= 4,
            VigorScale::TenPoint | VigorScale::EightPoint => self.score <= 3,
        }
    }
}

/// How a belly felt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Felt {
    /// When.
    pub at: Moment,
    /// Full or hollow.
    pub belly: Belly,
}

/// What a finger in the mouth felt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MouthFelt {
    /// When.
    pub at: Moment,
    /// How warm.
    pub mouth: Mouth,
    /// How it sucked.
    pub suck: Suck,
}

/// A call to the vet, or what came of one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct VetCall {
    /// When.
    pub at: Moment,
    /// What came of it; nothing while only the call was noted.
    pub said: Option<VetSaid>,
}

/// A death.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Death {
    /// When.
    pub at: Moment,
    /// Of what.
    pub cause: Cause,
}

/// A lamb of which nobody noted that it was weaned counts as weaned at this age (ours: the oldest to which weights are
/// adjusted).
pub const WEANED_BY: TimeDelta = TimeDelta::days(120);

/// How long a weight tells what a growing lamb weighs (ours).
const RECENT: TimeDelta = TimeDelta::days(4);
/// A try of head and swallow so long before a reading still belongs to it (ours).
const WITH_THE_READING: TimeDelta = TimeDelta::minutes(10);

impl Lamb {
    pub(super) fn new(id: LambId, born: Moment, born_alive: bool) -> Self {
        Self {
            id,
            born,
            found: None,
            born_alive,
            dam: None,
            sire: None,
            born_as: None,
            wether: false,
            reared_as: None,
            sex: None,
            litter: id,
            order: 0,
            tag: None,
            worn: Vec::new(),
            fostered: Vec::new(),
            ease: None,
            weights: Vec::new(),
            stood: Vec::new(),
            sucked: Vec::new(),
            navel: Vec::new(),
            feeds: Vec::new(),
            vigor: Vec::new(),
            belly: Vec::new(),
            temperatures: Vec::new(),
            swallow: Vec::new(),
            warmed: Vec::new(),
            solids: Vec::new(),
            rings: Vec::new(),
            castrated: Vec::new(),
            accepted: Vec::new(),
            vet: Vec::new(),
            glucose: Vec::new(),
            mouth: Vec::new(),
            looked: Vec::new(),
            weaned: None,
            died: None,
            left: None,
            kept: None,
            ill: Vec::new(),
            spread_seen_to: Vec::new(),
            changed: Vec::new(),
            vitals: Vec::new(),
            tents: Vec::new(),
            milk_allowed: Vec::new(),
        }
    }

    /// Says whether it lives here as a lamb: born alive, not dead, not gone, and not kept as a ewe since.
    #[must_use]
    pub const fn lives(&self) -> bool {
        self.is_alive() && self.left.is_none() && self.kept.is_none()
    }

    /// Says whether it was born alive and is not known to be dead: also one that was sold, or was kept as a ewe since.
    #[must_use]
    pub const fn is_alive(&self) -> bool {
        self.born_alive && self.died.is_none()
    }

    /// Returns the ewe it was fostered to last, if that is not its own dam.
    #[must_use]
    pub fn foster_dam(&self) -> Option<EweId> {
        self.fostered.last().map(|(_, ewe)| *ewe).filter(|ewe| Some(*ewe) != self.dam)
    }

    /// Says whether it is a castrated ram lamb.
    #[must_use]
    pub fn is_wether(&self) -> bool {
        self.wether
            || !self.castrated.is_empty()
            || self.rings.iter().any(|(_, ring)| *ring == Ring::Castration)
    }

    /// Says whether anything was ever noted of it that may hold milk back (a reading, a finger in its mouth, a try of
    /// head and swallow, a score of failing, a sign of illness), or its belly felt hollow when it was felt last.
    #[must_use]
    pub fn was_in_care(&self) -> bool {
        let tried = !self.temperatures.is_empty() || !self.mouth.is_empty() || !self.swallow.is_empty();
        let hollow = self.belly.last().is_some_and(|felt| felt.belly == Belly::Hollow);
        tried || hollow || !self.ill.is_empty() || self.vigor.iter().any(Scored::is_failing)
    }

    /// Returns how old it is, at the most where nobody saw its birth; negative before its birth.
    #[must_use]
    pub fn age(&self, now: Moment) -> TimeDelta {
        now.since(self.born)
    }

    /// Returns how old it is at the least: from when it was found, where nobody saw its birth.
    #[must_use]
    pub fn least_age(&self, now: Moment) -> TimeDelta {
        now.since(self.found.map_or(self.born, |found| found.max(self.born)))
    }

    /// Returns its birth weight: the first weight taken within 24 hours of birth.
    #[must_use]
    pub fn birth_weight(&self) -> Option<Mass> {
        let first = self.weights.first()?;
        (first.at.since(self.born) < TimeDelta::hours(24)).then_some(first.mass)
    }

    /// Returns the latest weight.
    #[must_use]
    pub fn weight(&self) -> Option<Mass> {
        self.weights.last().map(|weight| weight.mass)
    }

    /// Returns the last weight that it is known to have had at `now`: what guards its stomach until it is weighed again.
    #[must_use]
    pub fn last_weight(&self, now: Moment) -> Option<Weight> {
        self.weights.iter().rev().find(|weight| weight.at <= now).copied()
    }

    /// Returns its present weight: the latest, if it was taken within the last four days.
    ///
    /// Four days (ours): a lamb that does well puts on a quarter of its birth weight in that time, so an older weight
    /// would ration it to what it was. A weight taken after `now` does not count.
    #[must_use]
    pub fn recent_weight(&self, now: Moment) -> Option<Mass> {
        let latest = self.weights.iter().rev().find(|weight| weight.at <= now)?;
        (now.since(latest.at) <= RECENT).then_some(latest.mass)
    }

    /// Returns whether it held its head up and swallowed when tried at its last reading, or since; nothing when nobody
    /// tried then.
    ///
    /// An older try says nothing: a lamb changes in twenty minutes.
    #[must_use]
    pub fn swallows(&self) -> Option<bool> {
        self.swallows_since(self.temperatures.last()?.at)
    }

    /// Returns whether it held its head up and swallowed when tried with a look at that time, or since; nothing when
    /// nobody tried.
    #[must_use]
    pub fn swallows_since(&self, look: Moment) -> Option<bool> {
        let (at, able) = self.swallow.last()?;
        (*at >= look - WITH_THE_READING).then_some(*able)
    }

    /// Returns what it ate of solid feed on three days running, the oldest first, as far as each was noted.
    ///
    /// The last of the three is the day noted last, if that is today or yesterday by the wall clock; else nothing is
    /// known. Of several notes for one day the last stands (ours).
    #[must_use]
    pub fn solids_of_three_days(&self, now: Moment) -> [Option<Mass>; 3] {
        let day = |at: Moment| at.local().date();
        let known: Vec<&Weight> = self.solids.iter().filter(|eaten| eaten.at <= now).collect();
        let Some(last) = known.last().map(|eaten| day(eaten.at)) else { return [None; 3] };
        if day(now).signed_duration_since(last) > TimeDelta::days(1) {
            return [None; 3];
        }
        let of = |back: i64| {
            let on = last - TimeDelta::days(back);
            known.iter().rev().find(|eaten| day(eaten.at) == on).map(|eaten| eaten.mass)
        };
        [of(2), of(1), of(0)]
    }

    /// Returns what it was given by hand after `from` and up to `until`.
    #[must_use]
    pub fn given(&self, from: Moment, until: Moment) -> Volume {
        self.feeds.iter().filter(|feed| feed.at > from && feed.at <= until).map(|feed| feed.volume).sum()
    }

    /// Returns what it was given by hand in its first 24 hours, up to `until`.
    #[must_use]
    pub fn given_first_day(&self, until: Moment) -> Volume {
        self.given(self.born - TimeDelta::milliseconds(1), until.min(self.born + TimeDelta::hours(24)))
    }

    /// Returns when it first had milk, from its dam or by hand.
    #[must_use]
    pub fn first_milk(&self) -> Option<Moment> {
        let fed = self.feeds.first().map(|feed| feed.at);
        self.sucked.first().copied().into_iter().chain(fed).min()
    }

    /// Says whether it lives from the hand: fed so, and not seen to suck since.
    #[must_use]
    pub fn hand_fed(&self) -> bool {
        let sucked = self.sucked.last();
        self.feeds.last().is_some_and(|feed| sucked.is_none_or(|sucked| feed.at > *sucked))
    }

    /// Returns at what age it was lost: born alive and dead before it was weaned. Where nobody noted that it was weaned, it
    /// counts as weaned at [`WEANED_BY`]. None for one that was born dead, lives, or died later.
    #[must_use]
    pub fn lost(&self) -> Option<TimeDelta> {
        let died = self.died.filter(|_| self.born_alive)?.at;
        let weaned = self.weaned.unwrap_or(self.born + WEANED_BY);
        (died < weaned).then(|| died.since(self.born))
    }

    /// Says whether it lives with a ewe and is not weaned, which one on the bottle is by its own rule.
    #[must_use]
    pub fn to_be_weaned_from_ewe(&self) -> bool {
        self.lives() && self.weaned.is_none() && !self.hand_fed()
    }

    /// Says whether it is on the bottle: it lives, lives from the hand, and is not weaned.
    #[must_use]
    pub fn on_bottle(&self) -> bool {
        self.lives() && self.weaned.is_none() && self.hand_fed()
    }

    /// Says whether the ewe it is with is known to turn it away: what was noted last says so, and it was not given to
    /// another since.
    #[must_use]
    pub fn turned_away(&self) -> bool {
        let fostered = self.fostered.last().map(|(at, _)| *at);
        self.accepted
            .last()
            .is_some_and(|(at, accepts)| !accepts && fostered.is_none_or(|since| *at >= since))
    }
}
