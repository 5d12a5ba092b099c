//! The words of a birth: the signs before it, what shows of a lamb, how it lies, what a hand found, and how it went.

use serde::{Deserialize, Serialize};

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

impl Sign {
    /// Every sign.
    pub const ALL: [Self; 5] = [Self::Restless, Self::Apart, Self::UdderTight, Self::Slack, Self::Discharge];
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
pub enum Presentation {
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
    /// The cervix does not open.
    #[serde(rename = "neck-tight")]
    CervixClosed,
    /// The way is open, no lamb in reach yet.
    NothingYet,
    /// No further lamb.
    Empty,
    /// A lamb, lying so.
    Lamb(Presentation),
}

/// How the birth went, on the six-grade scale of UK recording, each lamb by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LambingEase {
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
