//! The facts that can be noted: one enum, one variant a fact, matched everywhere without a catch-all.
//!
//! A fact once written never gains or loses a field: a later version that knows more writes another fact. What this
//! version cannot read is kept whole as [`Unread`].

use serde::{Deserialize, Serialize};

use super::animal::Animal;
use super::care::Care;
use super::duty_kind::DutyKind;
use super::ids::{BatchId, EntryId, EweId, GroupId, LambId, PenId};
use super::illness::Illness;
use super::life::Life;
use super::milked_from::MilkedFrom;
use super::past::Past;
use super::planning::Planning;
use super::unread::Unread;
use crate::settings::Choice;
use crate::terms::{
    Belly, Cause, Found, Item, LambingEase, Milk, Part, PenSize, RamAge, Ring, Sex, Sign, VigorScale, Way,
};
use crate::units::{Amount, Brix, Condition, Mass, Moment, Temperature, Volume};

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
        ease: LambingEase,
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
    /// A group of ewes was formed, to be put to the ram together.
    GroupFormed {
        /// What it is called.
        name: String,
    },
    /// A group was given another name.
    GroupNamed {
        /// Which group.
        group: GroupId,
        /// What it is called from now on.
        name: String,
    },
    /// A group was broken up: its ewes left, its rams are out.
    GroupParted {
        /// Which group.
        group: GroupId,
    },
    /// A ewe joined a group.
    JoinedGroup {
        /// Which ewe.
        ewe: EweId,
        /// Which group.
        group: GroupId,
    },
    /// A ewe left a group.
    LeftGroup {
        /// Which ewe.
        ewe: EweId,
        /// Which group.
        group: GroupId,
    },
    /// A ram was put in with a group, beside any that is in.
    RamIn {
        /// Which group.
        group: GroupId,
        /// What the ram is called by, if anything; a label, not an identity.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        ram: Option<String>,
        /// How old he is, if said: an older ram serves more ewes.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        age: Option<RamAge>,
    },
    /// Every ram was taken out of a group.
    RamOut {
        /// Which group.
        group: GroupId,
    },
    /// The crayon on the rams of a group was changed.
    CrayonChanged {
        /// Which group.
        group: GroupId,
        /// The farm's own short word for the color.
        color: String,
    },
    /// A ewe was seen marked by a ram's crayon.
    CrayonMark {
        /// Which ewe.
        ewe: EweId,
        /// The farm's own short word for the color.
        color: String,
    },
    /// A ewe was scanned for lambs.
    Scanned {
        /// Which ewe.
        ewe: EweId,
        /// How many lambs were seen; none says that she is not in lamb.
        lambs: u8,
        /// How old the lambs were said to be, in days since mating.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        days: Option<u16>,
    },
    /// A ewe's condition was scored with the hand.
    Conditioned {
        /// Which ewe.
        ewe: EweId,
        /// From 1 to 5, in quarters.
        score: Condition,
    },
    /// A ewe was weighed.
    EweWeighed {
        /// Which ewe.
        ewe: EweId,
        /// How heavy, in kilograms.
        #[serde(rename = "kg")]
        mass: Mass,
    },
    /// A group's extra feed was set.
    FeedSet {
        /// Which group.
        group: GroupId,
        /// How much a ewe gets in a day from now on, in kilograms; nothing says that it ended.
        #[serde(rename = "kg")]
        mass: Mass,
    },
    /// The ewes of a group had their booster before lambing.
    BoosterGiven {
        /// Which group.
        group: GroupId,
    },
    /// Something came into the store.
    StoreIn {
        /// What.
        item: Item,
        /// How much, in its own unit.
        amount: Amount,
    },
    /// Something from the store was used.
    StoreUsed {
        /// What.
        item: Item,
        /// How much, in its own unit.
        amount: Amount,
    },
    /// Something from the store was thrown away.
    StoreThrown {
        /// What.
        item: Item,
        /// How much, in its own unit.
        amount: Amount,
    },
    /// What lies in the store was counted.
    StoreCounted {
        /// What.
        item: Item,
        /// How much there is, in its own unit, whatever was noted before.
        amount: Amount,
    },
    /// Colostrum was put in the freezer.
    ColostrumFrozen {
        /// Whom it was milked from.
        from: MilkedFrom,
        /// In how many bags or bottles.
        bags: u8,
        /// How much each of them holds, in milliliters.
        #[serde(rename = "ml")]
        volume: Volume,
        /// What the refractometer read, if anyone looked, in percent.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        brix: Option<Brix>,
        /// What is written on it, if anything.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        label: Option<String>,
    },
    /// Frozen colostrum was thawed to be fed.
    ColostrumThawed {
        /// Which.
        batch: BatchId,
        /// How many bags of it.
        bags: u8,
    },
    /// Frozen colostrum was thrown away.
    ColostrumThrown {
        /// Which.
        batch: BatchId,
        /// How many bags of it.
        bags: u8,
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
    /// Something of an animal's life beyond birth, milk and mating.
    Life(Life),
    /// Something of the care for an animal in trouble.
    Care(Care),
    /// Something of an animal that is not right.
    Illness(Illness),
    /// Something that is meant for the season: nothing of it counts as noted.
    Planning(Planning),
    /// What is known from before the book began.
    Past(Past),
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
    #[serde(rename = "struck")]
    Deleted {
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
