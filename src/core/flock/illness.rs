//! What was seen of an animal that is not right, from the first look until it is well again.
//!
//! What was asked first of a lamb is what a try of head and swallow and a finger in the mouth are: each is told there too,
//! so that every hold on milk knows of it. A half of an udder that is hot or cold, and no milk at two draws, are signs of
//! illness as if someone had said so.

use super::{Ewe, Flock, Lamb, MouthFelt, Reading};
use crate::book::{Animal, Illness, Standing};
use crate::terms::{Change, EweSign, EweStage, Gate, LambSign, Mouth, Onset, Suck, UdderHalf};
use crate::units::{Moment, TimeDelta};

/// A chin that is wet again after wiping counts from this age on; before it may be wet from birth.
const WET_CHIN_FROM: TimeDelta = TimeDelta::hours(6);
/// A lamb whose head is up need not suck yet up to this age: no try of it has failed.
const SUCKS_BY: TimeDelta = TimeDelta::minutes(30);

/// Of two draws without milk so far apart the second is no other look at the first (ours).
const DRAWN_AGAIN: TimeDelta = TimeDelta::minutes(30);
/// And so near to each other that both are of one lambing (ours).
const ONE_LAMBING: TimeDelta = TimeDelta::days(2);

/// What was seen of a ewe that is not right.
#[derive(Clone, Debug, PartialEq)]
pub struct EweIll {
    /// When.
    pub at: Moment,
    /// Where she was in her year, as far as someone said.
    pub stage: EweStage,
    /// Whether she stands.
    pub standing: Gate,
    /// Whether she eats.
    pub eating: Gate,
    /// Whether there is no bleeding and nothing out.
    pub nothing_out: Gate,
    /// What was seen.
    pub signs: Vec<EweSign>,
    /// Over how long.
    pub onset: Option<Onset>,
}

/// What was seen of a lamb that is not right.
#[derive(Clone, Debug, PartialEq)]
pub struct LambIll {
    /// When.
    pub at: Moment,
    /// Whether its head is up.
    pub head_up: Gate,
    /// Whether it swallows and sucks.
    pub swallows: Gate,
    /// Whether it is warm.
    pub warm: Gate,
    /// What was seen.
    pub signs: Vec<LambSign>,
}

impl LambIll {
    /// Says whether it was seen with its head up, not sucking yet, so young that this is no failed try of its swallow.
    #[must_use]
    pub fn sucks_not_yet(&self, lamb: &Lamb) -> bool {
        self.head_up.is_good() && self.swallows.is_bad() && lamb.age(self.at) < SUCKS_BY
    }

    /// Says whether what was seen holds milk back until the vet allows it: a tight belly, or a chin that is wet again after
    /// wiping.
    #[must_use]
    pub fn holds_milk(&self, lamb: &Lamb) -> bool {
        let chin = self.signs.iter().any(|sign| matches!(sign, LambSign::WetChin | LambSign::Rattles));
        self.signs.contains(&LambSign::TightBelly) || chin && lamb.age(self.at) >= WET_CHIN_FROM
    }
}

/// A check of both teats.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UdderSeen {
    /// When.
    pub at: Moment,
    /// The left half.
    pub left: UdderHalf,
    /// The right half.
    pub right: UdderHalf,
}

impl UdderSeen {
    /// Says whether no half gave milk.
    #[must_use]
    pub fn is_dry(&self) -> bool {
        self.left != UdderHalf::Milks && self.right != UdderHalf::Milks
    }

    /// Says whether one half alone gave milk.
    #[must_use]
    pub fn is_one_half(&self) -> bool {
        (self.left == UdderHalf::Milks) != (self.right == UdderHalf::Milks)
    }

    /// Returns what of it ails her: a half that is cold or blue, hard or hot, and no milk when it was drawn before, too.
    fn ails(&self, before: &[Self]) -> Vec<EweSign> {
        let half = |half: UdderHalf| self.left == half || self.right == half;
        let again = before.iter().rev().take_while(|seen| seen.is_dry()).any(|seen| {
            let apart = self.at.since(seen.at);
            apart >= DRAWN_AGAIN && apart < ONE_LAMBING
        });
        let all = [
            (half(UdderHalf::ColdOrBlue), EweSign::UdderCold),
            (half(UdderHalf::HardOrHot), EweSign::UdderHot),
            (self.is_dry() && again, EweSign::NoMilk),
        ];
        all.into_iter().filter_map(|(is, sign)| is.then_some(sign)).collect()
    }
}

/// Something counted over a minute.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Vital {
    /// When.
    pub at: Moment,
    /// Whether breaths were counted, and not the pulse.
    pub breaths: bool,
    /// How many.
    pub per_minute: u16,
}

/// Returns when it was last said to be well again.
fn well(changed: &[(Moment, Change)]) -> Option<Moment> {
    changed.iter().rev().find(|(_, change)| *change == Change::Well).map(|(at, _)| *at)
}

/// An abortion is one of this season for so long (ours).
const ABORTED: TimeDelta = TimeDelta::days(60);

impl Ewe {
    /// Returns when she was last seen to have aborted, if that was this season.
    #[must_use]
    pub fn aborted(&self, now: Moment) -> Option<Moment> {
        let aborted = |look: &&EweIll| {
            look.signs.contains(&EweSign::Aborted) && look.at <= now && now.since(look.at) < ABORTED
        };
        self.ill.iter().rev().find(aborted).map(|look| look.at)
    }

    /// Returns when anything was noted of her that may go round.
    pub(super) fn not_right(&self) -> impl Iterator<Item = Moment> {
        self.ill.iter().map(|look| look.at).chain(self.spread_seen_to.iter().map(|(at, _)| *at))
    }

    /// Returns what was seen of her that is not right since she was last well, oldest first.
    #[must_use]
    pub fn illness(&self) -> &[EweIll] {
        let well = well(&self.changed);
        let first = self.ill.iter().position(|ill| well.is_none_or(|well| ill.at > well));
        first.map_or(&[], |first| &self.ill[first..])
    }

    pub(super) fn is_ill(&self) -> bool {
        self.lives() && !self.illness().is_empty()
    }
}

impl Lamb {
    /// Returns when anything was noted of it that may go round, its death with it.
    pub(super) fn not_right(&self) -> impl Iterator<Item = Moment> {
        let died = self.died.as_ref().map(|death| death.at);
        self.ill.iter().map(|look| look.at).chain(self.spread_seen_to.iter().map(|(at, _)| *at)).chain(died)
    }

    /// Returns what was seen of it that is not right since it was last well, oldest first.
    #[must_use]
    pub fn illness(&self) -> &[LambIll] {
        let well = well(&self.changed);
        let first = self.ill.iter().position(|ill| well.is_none_or(|well| ill.at > well));
        first.map_or(&[], |first| &self.ill[first..])
    }

    /// Returns since when its belly or its chin holds milk back, if either does: until the vet allows it, and for nothing
    /// less.
    #[must_use]
    pub fn belly_or_chin(&self) -> Option<Moment> {
        self.belly_or_chin_by(None)
    }

    /// Returns the same as it stood at that time.
    #[must_use]
    pub fn belly_or_chin_at(&self, then: Moment) -> Option<Moment> {
        self.belly_or_chin_by(Some(then))
    }

    fn belly_or_chin_by(&self, then: Option<Moment>) -> Option<Moment> {
        let by = |at: &Moment| then.is_none_or(|then| *at <= then);
        let allowed = self.milk_allowed.iter().rev().find(|at| by(at));
        let since = |ill: &&LambIll| by(&ill.at) && allowed.is_none_or(|allowed| ill.at > *allowed);
        let mut seen = self.ill.iter().filter(since);
        seen.find(|ill| ill.holds_milk(self)).map(|ill| ill.at)
    }
}

pub(super) fn apply(flock: &mut Flock, line: &Standing<'_>, fact: &Illness) {
    let at = line.at;
    match fact {
        Illness::EweSeen { ewe, stage, standing, eating, nothing_out, signs, onset } => {
            let ill = EweIll {
                at,
                stage: *stage,
                standing: *standing,
                eating: *eating,
                nothing_out: *nothing_out,
                signs: signs.clone(),
                onset: *onset,
            };
            flock.on_ewe(*ewe, |ewe| ewe.ill.push(ill));
        }
        Illness::LambSeen { lamb, head_up, swallows, warm, signs } => {
            let ill =
                LambIll { at, head_up: *head_up, swallows: *swallows, warm: *warm, signs: signs.clone() };
            flock.on_lamb(*lamb, |lamb| seen(lamb, ill));
        }
        Illness::Changed { animal, change } => match animal {
            Animal::Ewe(ewe) => flock.on_ewe(*ewe, |ewe| ewe.changed.push((at, *change))),
            Animal::Lamb(lamb) => flock.on_lamb(*lamb, |lamb| lamb.changed.push((at, *change))),
        },
        Illness::EweTemperature { ewe, temperature } => {
            flock.on_ewe(*ewe, |ewe| ewe.temperatures.push(Reading { at, temperature: *temperature }));
        }
        Illness::Pulse { animal, per_minute } => count(flock, *animal, at, false, *per_minute),
        Illness::Breaths { animal, per_minute } => count(flock, *animal, at, true, *per_minute),
        Illness::KetonesRead { ewe, ketones } => flock.on_ewe(*ewe, |ewe| ewe.ketones.push((at, *ketones))),
        Illness::SkinTent { lamb, seconds } => flock.on_lamb(*lamb, |lamb| lamb.tents.push((at, *seconds))),
        Illness::UdderChecked { ewe, left, right } => {
            let checked = UdderSeen { at, left: *left, right: *right };
            flock.on_ewe(*ewe, |ewe| udder(ewe, checked));
        }
        Illness::SpreadSeenTo { animal, spread } => match animal {
            Animal::Ewe(ewe) => flock.on_ewe(*ewe, |ewe| ewe.spread_seen_to.push((at, *spread))),
            Animal::Lamb(lamb) => flock.on_lamb(*lamb, |lamb| lamb.spread_seen_to.push((at, *spread))),
        },
        Illness::MilkAllowed { lamb } => flock.on_lamb(*lamb, |lamb| lamb.milk_allowed.push(at)),
    }
}

/// Keeps a check of an udder, and what of it ails her; what is asked first of an ill ewe is then still to be looked at.
fn udder(ewe: &mut Ewe, checked: UdderSeen) {
    let signs = checked.ails(&ewe.udder);
    ewe.udder.push(checked);
    if !signs.is_empty() {
        let not = Gate::NotChecked;
        ewe.ill.push(EweIll {
            at: checked.at,
            stage: EweStage::AfterLambing,
            standing: not,
            eating: not,
            nothing_out: not,
            signs,
            onset: None,
        });
    }
}

/// Keeps what was seen of a lamb, and what it says of head, swallow and warmth.
fn seen(lamb: &mut Lamb, ill: LambIll) {
    let at = ill.at;
    if (ill.head_up.is_bad() || ill.swallows.is_bad()) && !ill.sucks_not_yet(lamb) {
        lamb.swallow.push((at, false));
    } else if ill.head_up.is_good() && ill.swallows.is_good() {
        lamb.swallow.push((at, true));
    }
    if ill.warm.is_bad() {
        let suck = if ill.swallows.is_good() { Suck::Strong } else { Suck::None };
        lamb.mouth.push(MouthFelt { at, mouth: Mouth::Cold, suck });
    }
    lamb.ill.push(ill);
}

fn count(flock: &mut Flock, animal: Animal, at: Moment, breaths: bool, per_minute: u16) {
    let vital = Vital { at, breaths, per_minute };
    match animal {
        Animal::Ewe(ewe) => flock.on_ewe(ewe, |ewe| ewe.vitals.push(vital)),
        Animal::Lamb(lamb) => flock.on_lamb(lamb, |lamb| lamb.vitals.push(vital)),
    }
}
