//! The closed lists that facts choose from, in the trade's own words.

use serde::{Deserialize, Serialize};

use super::ids::{EweId, LambId};
use crate::units::Length;

/// The most characters of a tag, a name or a label.
pub const MOST_TAG: usize = 24;
/// The most characters of a breed, of a medicine and of the words about it.
pub const MOST_WORDS: usize = 80;
/// The most characters of a remark.
pub const MOST_REMARK: usize = 1000;

/// An animal that a fact is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Animal {
    /// A ewe.
    Ewe(EweId),
    /// A lamb.
    Lamb(LambId),
}

/// A lamb's sex.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Sex {
    /// A ewe lamb.
    Ewe,
    /// A ram lamb.
    Ram,
}

/// How the birth went, on the six-grade scale of UK recording, each lamb by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ease {
    /// 1: no help.
    Alone,
    /// 2: slight help by hand.
    SlightByHand,
    /// 3: hard pull by hand.
    HardByHand,
    /// 4: the vet helped, without surgery.
    Vet,
    /// 5: the vet helped, with surgery.
    Surgery,
    /// 6: surgery that was planned.
    PlannedSurgery,
}

/// What was in the bottle or the tube.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Milk {
    /// Colostrum of its own dam.
    DamColostrum,
    /// Colostrum of another ewe.
    EweColostrum,
    /// Colostrum of a goat or a cow.
    OtherColostrum,
    /// Colostrum from powder.
    PowderColostrum,
    /// Lamb milk replacer.
    Replacer,
    /// Ewe's, goat's or cow's milk that is no colostrum.
    Milk,
}

/// How it was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Way {
    /// The lamb sucked a bottle.
    Bottle,
    /// By stomach tube.
    Tube,
}

/// Which scale a vigor score is on. Scales run in opposite directions, so the scale is always kept with the score.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum VigorScale {
    /// Four grades at five minutes, 1 the liveliest.
    FourGrade,
    /// Ten points, 10 the liveliest.
    TenPoint,
    /// The ten points without the oximeter's two, 8 the liveliest.
    EightPoint,
}

/// How the flanks in front of the hip feel.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Belly {
    /// Full; they resist the hand.
    Full,
    /// Hollow.
    Hollow,
}

/// What an animal died of, as far as can be told in a barn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Cause {
    /// Starved, or not mothered.
    Starved,
    /// Cold.
    Cold,
    /// A hard birth.
    HardBirth,
    /// Infection.
    Infection,
    /// A predator.
    Predator,
    /// Born with a fault.
    Deformity,
    /// An accident, or lain on.
    Accident,
    /// Not known.
    Unknown,
}

/// A sign that a ewe will lamb within a day or so.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Sign {
    /// Down and up, circling, pawing: this one starts the clock.
    Restless,
    /// Off by herself.
    Apart,
    /// Her udder is very tight; the teats may redden.
    UdderTight,
    /// Swollen and slack under the tail.
    Slack,
    /// A discharge.
    Discharge,
}

/// What shows of the lamb.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Part {
    /// Two fore feet and the nose.
    FeetAndNose,
    /// Two fore feet, soles down.
    ForeFeet,
    /// One foot.
    OneFoot,
    /// The head alone.
    Head,
    /// Two hind feet, soles up.
    HindFeet,
    /// The tail.
    Tail,
}

/// How a lamb lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Lie {
    /// Two fore feet and the nose.
    Normal,
    /// One fore leg back.
    OneLegBack,
    /// Both fore legs back.
    BothLegsBack,
    /// The head turned back.
    HeadBack,
    /// The head tucked down.
    HeadDown,
    /// Feet and nose level, elbows locked at the brim.
    ElbowsLocked,
    /// Hind feet first.
    HindFeetFirst,
    /// Tail first, legs forward.
    TailFirst,
    /// Crosswise.
    Crosswise,
    /// Two lambs tangled.
    TwoTangled,
    /// Too big for the way out.
    TooBig,
    /// Upside down.
    UpsideDown,
    /// Deformed.
    Deformed,
    /// Dead.
    Dead,
}

/// What a clean hand found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Found {
    /// The neck of the womb is tight.
    NeckTight,
    /// The way is open, no lamb in reach yet.
    NothingYet,
    /// No further lamb.
    Empty,
    /// A lamb, lying so.
    Lamb(Lie),
}

/// Where a ring was put.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ring {
    /// On the tail.
    Tail,
    /// On the scrotum.
    Castration,
}

/// How old a ram is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum RamAge {
    /// A ram lamb.
    Lamb,
    /// A yearling.
    Yearling,
    /// A grown ram.
    Mature,
}

/// How large a pen is.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct PenSize {
    /// One side, in meters.
    #[serde(rename = "wide-m")]
    pub wide: Length,
    /// The other side, in meters.
    #[serde(rename = "deep-m")]
    pub deep: Length,
}

/// Which duty was put off. The watch works duties out; the book only knows them by these names.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum DutyKind {
    /// The first dip of the navel.
    DipNavel,
    /// The second dip of the navel.
    DipNavelAgain,
    /// To see it standing.
    GetUp,
    /// First milk.
    FirstMilk,
    /// The next feed by hand.
    Feed,
    /// What the first day is short of.
    DayTotal,
    /// To weigh it.
    Weigh,
    /// To score its vigor.
    ScoreVigor,
    /// To take its temperature again.
    TakeTemperature,
    /// To call the vet.
    CallVet,
    /// A newborn scored as failing.
    Failing,
    /// A belly felt hollow.
    Hollow,
    /// To ring it.
    Ring,
    /// To see whether it can be weaned.
    WeaningCheck,
    /// To look at a ewe.
    Look,
    /// A ewe that has been restless too long.
    LongRestless,
    /// To check with a clean hand.
    HandCheck,
    /// A part showing without progress.
    Progress,
    /// A tight neck of the womb.
    NeckTight,
    /// A lamb that is not put right.
    PutRight,
    /// The next lamb.
    NextLamb,
    /// The afterbirth.
    Afterbirth,
    /// To let a pair out of its pen.
    LetOut,
}

impl std::fmt::Display for DutyKind {
    /// Writes the name by which the book knows it, such as `first-milk`.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.serialize(f)
    }
}
