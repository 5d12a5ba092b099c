//! Where on an animal a sign is seen, from how it is altogether over head, breath, belly and udder to its legs.

use yeanling_core::terms::{EweSign, LambSign};
use yeanling_words::illness::Place;

/// Returns where a sign of a ewe is seen.
pub(super) const fn of_ewe(sign: EweSign) -> Place {
    match sign {
        EweSign::OnBack
        | EweSign::Wobbly
        | EweSign::KeepsApart
        | EweSign::Dull
        | EweSign::Circles
        | EweSign::Fits
        | EweSign::Stiff
        | EweSign::Twitches
        | EweSign::SecondMealRefused
        | EweSign::GotAtGrain
        | EweSign::Bright => Place::Whole,
        EweSign::Blind
        | EweSign::PressesHead
        | EweSign::MuzzleTremor
        | EweSign::FaceOneSided
        | EweSign::StarGazing
        | EweSign::PaleEyelids
        | EweSign::SwollenJaw
        | EweSign::Sees => Place::Head,
        EweSign::CudAtNose
        | EweSign::SweetBreath
        | EweSign::Drools
        | EweSign::Coughs
        | EweSign::FastBreath
        | EweSign::MouthOpen => Place::Breath,
        EweSign::LeftFlankDrum | EweSign::Scours | EweSign::YellowOrDarkUrine => Place::Belly,
        EweSign::SmoothOut
        | EweSign::StrainsWithIt
        | EweSign::RawOut
        | EweSign::BowelOut
        | EweSign::CervixTight
        | EweSign::AfterbirthHangs
        | EweSign::FoulDischarge
        | EweSign::Bleeds
        | EweSign::Aborted
        | EweSign::WentBack => Place::Behind,
        EweSign::UdderCold | EweSign::UdderHot | EweSign::UdderFirm | EweSign::NoMilk => Place::Udder,
        EweSign::Lame | EweSign::NoWeightOnLeg => Place::Legs,
        EweSign::ManyIll => Place::Flock,
    }
}

/// Returns where a sign of a lamb is seen.
pub(super) const fn of_lamb(sign: LambSign) -> Place {
    match sign {
        LambSign::Dull
        | LambSign::Hunched
        | LambSign::CannotStand
        | LambSign::ShakingHairy
        | LambSign::FitsHeadBack
        | LambSign::Wound
        | LambSign::DeepWound
        | LambSign::Lively => Place::Whole,
        LambSign::EyesSunken
        | LambSign::EyesDeep
        | LambSign::LidIn
        | LambSign::CloudyEye
        | LambSign::RigidJawShut
        | LambSign::EyeClear => Place::Head,
        LambSign::NotBreathing
        | LambSign::WetChin
        | LambSign::CoughsOften
        | LambSign::BreathesFast
        | LambSign::BreathesByMouth
        | LambSign::ScabsOnLips
        | LambSign::MilkFromNose
        | LambSign::ChinDry => Place::Breath,
        LambSign::HollowBelly
        | LambSign::TightBelly
        | LambSign::Rattles
        | LambSign::NoDung
        | LambSign::NoAnus
        | LambSign::WateryScour
        | LambSign::BloodInDung
        | LambSign::DarkStraining
        | LambSign::ThickNavel
        | LambSign::BowelAtNavel => Place::Belly,
        LambSign::HotJoint
        | LambSign::Limps
        | LambSign::LegDangles
        | LambSign::OpenOrThigh
        | LambSign::StiffLegs
        | LambSign::WobblyBehind => Place::Legs,
        LambSign::MoreDying => Place::Flock,
    }
}
