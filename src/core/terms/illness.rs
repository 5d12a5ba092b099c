//! The words of illness: what is asked first, what is seen of a ewe and of a lamb, how an udder half milks, how it goes on.
//!
//! A few signs are good news. They are named, never guessed: what was not pressed is not noted and lowers nothing.

use serde::{Deserialize, Serialize};

/// What is answered to a question that is always asked first: whether the animal is well in that.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Gate {
    /// It is as it should be.
    Good,
    /// It is not.
    Bad,
    /// Not looked at yet: it is looked at now.
    #[default]
    NotChecked,
    /// It cannot be looked at: taken as bad.
    CannotCheck,
}

impl Gate {
    /// Says whether it was seen to be as it should.
    #[must_use]
    pub const fn is_good(self) -> bool {
        matches!(self, Self::Good)
    }

    /// Says whether it is bad, or cannot be looked at, which counts as bad.
    #[must_use]
    pub const fn is_bad(self) -> bool {
        matches!(self, Self::Bad | Self::CannotCheck)
    }
}

/// Where a ewe is in her year, as far as an illness asks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum EweStage {
    /// In the last six weeks before lambing.
    LateInLamb,
    /// In labor.
    Labor,
    /// Up to three days after lambing.
    AfterLambing,
    /// From the fourth day after lambing to weaning.
    Milking,
    /// None of these.
    Other,
    /// Not known: every row that it may be in is shown.
    #[default]
    Unknown,
}

/// Over how long a ewe fell ill.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Onset {
    /// Within hours.
    Hours,
    /// Over days.
    Days,
}

/// What is seen of a ewe that is not right.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum EweSign {
    /// On her back.
    OnBack,
    /// Wobbly.
    Wobbly,
    /// Cud or rumen water at her nose.
    CudAtNose,
    /// Off by herself.
    KeepsApart,
    /// Dull.
    Dull,
    /// Blind: walks into things.
    Blind,
    /// Presses her head against something.
    PressesHead,
    /// Her muzzle trembles.
    MuzzleTremor,
    /// Her breath smells sweet.
    SweetBreath,
    /// One ear and one lip droop, food in the cheek.
    FaceOneSided,
    /// Drools.
    Drools,
    /// Walks in circles.
    Circles,
    /// Her head is drawn back.
    StarGazing,
    /// Fits.
    Fits,
    /// Stiff.
    Stiff,
    /// Twitches.
    Twitches,
    /// Something round, smooth and red under the tail.
    SmoothOut,
    /// It does not go back, swells, or she strains or passes no urine.
    StrainsWithIt,
    /// A raw, knobbed mass, or nobody is sure what it is.
    RawOut,
    /// Bowel, or a tear.
    BowelOut,
    /// The cervix is tight after the bag, or after half an hour of straining.
    CervixTight,
    /// Thin wet strings or afterbirth hang from her.
    AfterbirthHangs,
    /// A foul discharge.
    FoulDischarge,
    /// Blood runs, or clots.
    Bleeds,
    /// Her udder is cold or blue.
    UdderCold,
    /// Her udder is hot and hard, mostly one side.
    UdderHot,
    /// Both halves firm, not hot, no milk.
    UdderFirm,
    /// No milk in either half, drawn twice.
    NoMilk,
    /// Lame.
    Lame,
    /// No weight on the leg.
    NoWeightOnLeg,
    /// Coughs.
    Coughs,
    /// Breathes fast.
    FastBreath,
    /// Breathes with her mouth open.
    MouthOpen,
    /// The left flank is a drum.
    LeftFlankDrum,
    /// Got at grain.
    GotAtGrain,
    /// Scours.
    Scours,
    /// Yellow gums, or dark urine.
    YellowOrDarkUrine,
    /// Pale eyelids.
    PaleEyelids,
    /// A swelling under the jaw.
    SwollenJaw,
    /// She aborted.
    Aborted,
    /// Many lame at once, blisters, swollen faces, or lambs dying.
    ManyIll,
    /// A second meal was refused.
    SecondMealRefused,
    /// Good news: bright.
    Bright,
    /// Good news: she sees, and follows a hand.
    Sees,
    /// Good news: what was out went back by itself.
    WentBack,
}

impl EweSign {
    /// Every sign, from head to tail as it is asked; good news last.
    pub const ALL: [Self; 45] = [
        Self::OnBack,
        Self::Wobbly,
        Self::CudAtNose,
        Self::KeepsApart,
        Self::Dull,
        Self::Blind,
        Self::PressesHead,
        Self::MuzzleTremor,
        Self::SweetBreath,
        Self::FaceOneSided,
        Self::Drools,
        Self::Circles,
        Self::StarGazing,
        Self::Fits,
        Self::Stiff,
        Self::Twitches,
        Self::SmoothOut,
        Self::StrainsWithIt,
        Self::RawOut,
        Self::BowelOut,
        Self::CervixTight,
        Self::AfterbirthHangs,
        Self::FoulDischarge,
        Self::Bleeds,
        Self::UdderCold,
        Self::UdderHot,
        Self::UdderFirm,
        Self::NoMilk,
        Self::Lame,
        Self::NoWeightOnLeg,
        Self::Coughs,
        Self::FastBreath,
        Self::MouthOpen,
        Self::LeftFlankDrum,
        Self::GotAtGrain,
        Self::Scours,
        Self::YellowOrDarkUrine,
        Self::PaleEyelids,
        Self::SwollenJaw,
        Self::Aborted,
        Self::ManyIll,
        Self::SecondMealRefused,
        Self::Bright,
        Self::Sees,
        Self::WentBack,
    ];

    /// Says whether it is good news, which alone may lower an urgency.
    #[must_use]
    pub const fn is_good_news(self) -> bool {
        matches!(self, Self::Bright | Self::Sees | Self::WentBack)
    }

    /// Returns the sign that good news takes back, where it takes one back.
    #[must_use]
    pub fn ends(self) -> Option<Self> {
        const ENDS: [(EweSign, EweSign); 2] =
            [(EweSign::Bright, EweSign::Dull), (EweSign::Sees, EweSign::Blind)];
        ENDS.into_iter().find(|(good, _)| *good == self).map(|(_, bad)| bad)
    }
}

/// What is seen of a lamb that is not right.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LambSign {
    /// Not breathing.
    NotBreathing,
    /// Dull.
    Dull,
    /// Hunched.
    Hunched,
    /// Its flanks are hollow.
    HollowBelly,
    /// Its chin is wet again after wiping.
    WetChin,
    /// Its belly is tight.
    TightBelly,
    /// It rattles when it is shaken.
    Rattles,
    /// No dung.
    NoDung,
    /// No anus.
    NoAnus,
    /// A watery scour.
    WateryScour,
    /// Blood in the dung.
    BloodInDung,
    /// Dark dung, and straining.
    DarkStraining,
    /// Eyes slightly sunken.
    EyesSunken,
    /// Eyes deep, with a gap to the lid.
    EyesDeep,
    /// It cannot stand.
    CannotStand,
    /// A hot or swollen joint.
    HotJoint,
    /// It limps.
    Limps,
    /// A leg dangles.
    LegDangles,
    /// The break is open, or in the thigh.
    OpenOrThigh,
    /// The navel is thick and wet.
    ThickNavel,
    /// Bowel through the navel.
    BowelAtNavel,
    /// A wet eye, the lid turned in.
    LidIn,
    /// A cloudy eye.
    CloudyEye,
    /// Coughs.
    CoughsOften,
    /// Breathes fast.
    BreathesFast,
    /// Breathes with its mouth open.
    BreathesByMouth,
    /// Stiff, and bright.
    StiffLegs,
    /// Wobbly behind.
    WobblyBehind,
    /// Shaking and hairy at birth.
    ShakingHairy,
    /// Rigid, the jaw shut.
    RigidJawShut,
    /// Fits, or the head drawn back.
    FitsHeadBack,
    /// Scabs on the lips.
    ScabsOnLips,
    /// Milk from the nose, or a cough after feeding.
    MilkFromNose,
    /// Trodden on, bitten, maggots, or burned by a lamp.
    Wound,
    /// The wound is deep.
    DeepWound,
    /// More lambs die, or blisters on several.
    MoreDying,
    /// Good news: bright.
    Lively,
    /// Good news: the eye is clear.
    EyeClear,
    /// Good news: the chin stays dry after wiping. It takes back a chin that may have been wet from birth, and no other.
    ChinDry,
}

impl LambSign {
    /// Every sign, as it is asked; good news last.
    pub const ALL: [Self; 39] = [
        Self::NotBreathing,
        Self::Dull,
        Self::Hunched,
        Self::HollowBelly,
        Self::WetChin,
        Self::TightBelly,
        Self::Rattles,
        Self::NoDung,
        Self::NoAnus,
        Self::WateryScour,
        Self::BloodInDung,
        Self::DarkStraining,
        Self::EyesSunken,
        Self::EyesDeep,
        Self::CannotStand,
        Self::HotJoint,
        Self::Limps,
        Self::LegDangles,
        Self::OpenOrThigh,
        Self::ThickNavel,
        Self::BowelAtNavel,
        Self::LidIn,
        Self::CloudyEye,
        Self::CoughsOften,
        Self::BreathesFast,
        Self::BreathesByMouth,
        Self::StiffLegs,
        Self::WobblyBehind,
        Self::ShakingHairy,
        Self::RigidJawShut,
        Self::FitsHeadBack,
        Self::ScabsOnLips,
        Self::MilkFromNose,
        Self::Wound,
        Self::DeepWound,
        Self::MoreDying,
        Self::Lively,
        Self::EyeClear,
        Self::ChinDry,
    ];

    /// Says whether it is good news, which alone may lower an urgency.
    #[must_use]
    pub const fn is_good_news(self) -> bool {
        matches!(self, Self::Lively | Self::EyeClear | Self::ChinDry)
    }

    /// Returns the sign that good news takes back, where it takes one back.
    #[must_use]
    pub fn ends(self) -> Option<Self> {
        const ENDS: [(LambSign, LambSign); 2] =
            [(LambSign::Lively, LambSign::Dull), (LambSign::EyeClear, LambSign::CloudyEye)];
        ENDS.into_iter().find(|(good, _)| *good == self).map(|(_, bad)| bad)
    }
}

/// How one half of an udder was found when its teat was drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum UdderHalf {
    /// Milk came, warm and soft.
    Milks,
    /// No milk came.
    Dry,
    /// Hard or hot.
    HardOrHot,
    /// Cold or blue.
    ColdOrBlue,
}

/// How an animal that was not right is now.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Change {
    /// Better, not yet well.
    Better,
    /// No better.
    Same,
    /// Worse.
    Worse,
    /// Well again: it stands, eats or sucks, is bright, and nothing of it is left.
    Well,
}
