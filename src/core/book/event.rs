//! The facts that can be noted: one enum, one variant a fact, matched everywhere without a catch-all.
//!
//! A fact once written never gains or loses a field: a later version that knows more writes another fact. What this
//! version cannot read is kept whole as [`Unread`].

use serde::{Deserialize, Serialize};

use super::ids::{EntryId, EweId, LambId, PenId};
use super::terms::{
    Animal, Belly, Cause, DutyKind, Ease, Found, Milk, Part, PenSize, Ring, Sex, Sign, VigorScale, Way,
};
use crate::practice::Choice;
use crate::units::{Mass, Moment, Temperature, Volume};

/// A fact of a kind, or in a form, that this version cannot read: kept whole, handed on, never applied.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread {
    json: String,
}

impl Unread {
    pub(super) const fn from_json(json: String) -> Self {
        Self { json }
    }

    /// Returns the fact as it was written: JSON without white space.
    #[must_use]
    pub fn as_json(&self) -> &str {
        &self.json
    }
}

/// A fact.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub enum Event {
    /// A ewe joined the flock.
    EweCame {
        /// What she is called by; a label, not an identity.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tag: Option<String>,
    },
    /// An animal was given another label.
    Tagged {
        /// Which animal.
        animal: Animal,
        /// What it is called by from now on.
        tag: String,
    },
    /// A lamb was born.
    LambBorn {
        /// Its dam, if known.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        dam: Option<EweId>,
        /// A lamb of the same litter, which keeps a litter together while its dam is unknown.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        beside: Option<LambId>,
        /// Its sex, if seen.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        sex: Option<Sex>,
        /// Whether it was born alive.
        alive: bool,
    },
    /// The dam of a lamb became known.
    DamGiven {
        /// Which lamb.
        lamb: LambId,
        /// Its dam.
        dam: EweId,
    },
    /// How a lamb's birth went.
    BirthEase {
        /// Which lamb.
        lamb: LambId,
        /// On the six-grade scale.
        ease: Ease,
    },
    /// A lamb was seen standing.
    Stood {
        /// Which lamb.
        lamb: LambId,
    },
    /// A lamb was seen to suck its dam.
    Sucked {
        /// Which lamb.
        lamb: LambId,
    },
    /// A navel was dipped.
    NavelDipped {
        /// Which lamb.
        lamb: LambId,
    },
    /// A lamb was weighed.
    Weighed {
        /// Which lamb.
        lamb: LambId,
        /// How heavy, in kilograms.
        #[serde(rename = "kg")]
        mass: Mass,
    },
    /// A lamb was fed by hand.
    Fed {
        /// Which lamb.
        lamb: LambId,
        /// How much, in milliliters.
        #[serde(rename = "ml")]
        volume: Volume,
        /// What.
        milk: Milk,
        /// By bottle or tube.
        way: Way,
    },
    /// A lamb's vigor was scored.
    VigorScored {
        /// Which lamb.
        lamb: LambId,
        /// On which scale.
        scale: VigorScale,
        /// The score on that scale.
        score: u8,
    },
    /// A lamb's belly was felt.
    BellyFelt {
        /// Which lamb.
        lamb: LambId,
        /// Full or hollow.
        belly: Belly,
    },
    /// A sign that a ewe will lamb soon was seen.
    SignSeen {
        /// Which ewe.
        ewe: EweId,
        /// Which sign.
        sign: Sign,
    },
    /// A ewe's water bag was seen, or her waters broke.
    WaterBagSeen {
        /// Which ewe.
        ewe: EweId,
    },
    /// A ewe was seen to strain hard.
    StrainingSeen {
        /// Which ewe.
        ewe: EweId,
    },
    /// A part of the lamb was seen.
    PartShowing {
        /// Which ewe.
        ewe: EweId,
        /// Which part.
        part: Part,
    },
    /// A ewe was checked with a clean hand.
    HandChecked {
        /// Which ewe.
        ewe: EweId,
        /// What the hand found.
        found: Found,
    },
    /// Someone began to put a lamb right or to pull.
    HelpBegun {
        /// Which ewe.
        ewe: EweId,
    },
    /// The vet was called for an animal.
    VetCalled {
        /// For which animal.
        animal: Animal,
    },
    /// An animal was looked at, and all was well.
    LookedAt {
        /// Which animal.
        animal: Animal,
    },
    /// The signs came to nothing: she is not lambing now.
    NotLambing {
        /// Which ewe.
        ewe: EweId,
    },
    /// A ewe passed her afterbirth.
    AfterbirthPassed {
        /// Which ewe.
        ewe: EweId,
    },
    /// Whether the dam accepts a lamb as her own.
    Accepted {
        /// Which lamb.
        lamb: LambId,
        /// Whether she does.
        accepts: bool,
    },
    /// A lamb's temperature was taken.
    TemperatureTaken {
        /// Which lamb.
        lamb: LambId,
        /// How warm, in degrees Celsius.
        #[serde(rename = "celsius")]
        temperature: Temperature,
    },
    /// A lamb was tried: whether it holds its head up and swallows.
    SwallowTried {
        /// Which lamb.
        lamb: LambId,
        /// Whether it does both.
        able: bool,
    },
    /// The warming of a lamb began.
    Warmed {
        /// Which lamb.
        lamb: LambId,
    },
    /// What a lamb ate of solid feed in a day.
    SolidsEaten {
        /// Which lamb.
        lamb: LambId,
        /// How much, in kilograms.
        #[serde(rename = "kg")]
        mass: Mass,
    },
    /// A lamb was taken off milk.
    Weaned {
        /// Which lamb.
        lamb: LambId,
    },
    /// A ring was put on a lamb.
    Ringed {
        /// Which lamb.
        lamb: LambId,
        /// Where.
        ring: Ring,
    },
    /// A pen was set up.
    PenMade {
        /// What it is called.
        name: String,
        /// How large it is, if said.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        size: Option<PenSize>,
    },
    /// A pen was given another name.
    PenNamed {
        /// Which pen.
        pen: PenId,
        /// What it is called from now on.
        name: String,
    },
    /// A pen was cleaned and bedded.
    PenCleaned {
        /// Which pen.
        pen: PenId,
    },
    /// A pen was taken down.
    PenClosed {
        /// Which pen.
        pen: PenId,
    },
    /// An animal was put in a pen, out of any other; a ewe's living lambs go with her.
    PutInPen {
        /// Which animal.
        animal: Animal,
        /// Which pen.
        pen: PenId,
    },
    /// An animal was let out of its pen; a ewe's lambs go with her.
    LetOut {
        /// Which animal.
        animal: Animal,
    },
    /// A duty was put off.
    PutOff {
        /// For which animal.
        animal: Animal,
        /// Which duty.
        duty: DutyKind,
        /// Until when.
        until: Moment,
    },
    /// All lambs of a litter are born.
    AllBorn {
        /// Any lamb of the litter.
        lamb: LambId,
    },
    /// An animal died.
    Died {
        /// Which animal.
        animal: Animal,
        /// Of what.
        cause: Cause,
    },
    /// Anything worth remembering about an animal.
    Remarked {
        /// Which animal.
        animal: Animal,
        /// In the shepherd's own words.
        text: String,
    },
    /// The farm made a choice.
    Chose(Choice),
    /// Two records are of one animal.
    SameAnimal {
        /// The record that stays.
        keep: Animal,
        /// The record that is read as the one that stays.
        also: Animal,
    },
    /// An earlier entry should have read so.
    Amended {
        /// Which entry.
        entry: EntryId,
        /// What it should have said.
        event: Box<Self>,
        /// When it should have said it happened.
        at: Moment,
    },
    /// An earlier entry does not count.
    Struck {
        /// Which entry.
        entry: EntryId,
    },
    /// An earlier entry counts after all.
    Restored {
        /// Which entry.
        entry: EntryId,
    },
    /// A fact this version cannot read.
    #[serde(skip)]
    Unread(Unread),
}
