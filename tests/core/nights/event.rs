//! What a step of a night is as a fact.

use yeanling_core::book::{
    Animal, Care, Event, EweId, Illness, LambId, LambingEase, Life, Milk, VetSaid, VigorScale, Way,
};
use yeanling_core::terms::EweStage;
use yeanling_core::units::{Mass, Moment, Temperature, TimeDelta, Volume};

use super::step::{OfEwe, OfLamb, Said};

fn vet_said(animal: Animal, said: Said, now: Moment) -> Event {
    let in_minutes = |minutes| now + TimeDelta::minutes(minutes);
    let said = match said {
        Said::Coming => VetSaid::Coming,
        Said::Nobody => VetSaid::NobodyReached,
        Said::Advised(minutes) => VetSaid::Advised { what: None, look_again: in_minutes(minutes) },
        Said::Saw(minutes) => VetSaid::Saw { plan: None, look_again: in_minutes(minutes) },
    };
    Event::Care(Care::VetSaid { animal, said })
}

pub(super) fn of_ewe(ewe: EweId, fact: OfEwe, now: Moment) -> Event {
    let animal = Animal::Ewe(ewe);
    match fact {
        OfEwe::Sign(sign) => Event::SignSeen { ewe, sign },
        OfEwe::Bag => Event::WaterBagSeen { ewe },
        OfEwe::Straining => Event::StrainingSeen { ewe },
        OfEwe::Shows(part) => Event::PartShowing { ewe, part },
        OfEwe::Check(found) => Event::HandChecked { ewe, found },
        OfEwe::Help => Event::HelpBegun { ewe },
        OfEwe::PutRight => Event::Care(Care::PutRight { ewe }),
        OfEwe::VetCalled => Event::VetCalled { animal },
        OfEwe::Said(said) => vet_said(animal, said, now),
        OfEwe::Looked => Event::LookedAt { animal },
        OfEwe::NotLambing => Event::NotLambing { ewe },
        OfEwe::Afterbirth => Event::AfterbirthPassed { ewe },
        OfEwe::Awaited(seen) => Event::Care(Care::AfterbirthAwaited { ewe, seen }),
        OfEwe::Scanned(lambs) => Event::Scanned { ewe, lambs, days: None },
        OfEwe::Born { alive } => Event::LambBorn { dam: Some(ewe), beside: None, sex: None, alive },
        OfEwe::NotRight(sign, [standing, eating, nothing_out]) => Event::Illness(Illness::EweSeen {
            ewe,
            stage: EweStage::Unknown,
            standing,
            eating,
            nothing_out,
            signs: vec![sign],
            onset: None,
        }),
        OfEwe::Changed(change) => Event::Illness(Illness::Changed { animal, change }),
        OfEwe::Udder(left, right) => Event::Illness(Illness::UdderChecked { ewe, left, right }),
        OfEwe::Settled => Event::Care(Care::Settled { ewe }),
        OfEwe::Died(cause) => Event::Died { animal, cause },
    }
}

pub(super) fn of_lamb(lamb: LambId, fact: OfLamb, now: Moment, ewes: &[EweId; 2]) -> Event {
    let animal = Animal::Lamb(lamb);
    match fact {
        OfLamb::HardBirth => Event::BirthEase { lamb, ease: LambingEase::HardByHand },
        OfLamb::FoundBorn => Event::Care(Care::FoundBorn { lamb }),
        OfLamb::Stood => Event::Stood { lamb },
        OfLamb::Sucked => Event::Sucked { lamb },
        OfLamb::Dipped => Event::NavelDipped { lamb },
        OfLamb::Weighed(grams) => {
            Event::Weighed { lamb, mass: Mass::from_kilograms(f64::from(grams) / 1000.0) }
        }
        OfLamb::Fed(milliliters, tube) => Event::Fed {
            lamb,
            volume: Volume::from_milliliters(f64::from(milliliters)),
            milk: Milk::EweColostrum,
            way: if tube { Way::Tube } else { Way::Bottle },
        },
        OfLamb::Vigor(score) => Event::VigorScored { lamb, scale: VigorScale::FourGrade, score },
        OfLamb::Belly(belly) => Event::BellyFelt { lamb, belly },
        OfLamb::Temperature(tenths) => {
            Event::TemperatureTaken { lamb, temperature: Temperature::from_celsius(f64::from(tenths) / 10.0) }
        }
        OfLamb::Swallow(able) => Event::SwallowTried { lamb, able },
        OfLamb::Mouth(mouth, suck) => Event::Care(Care::MouthFelt { lamb, mouth, suck }),
        OfLamb::Warmed => Event::Warmed { lamb },
        OfLamb::Glucose(by) => Event::Care(Care::GlucoseGiven { lamb, by }),
        OfLamb::VetCalled => Event::VetCalled { animal },
        OfLamb::Said(said) => vet_said(animal, said, now),
        OfLamb::Looked => Event::LookedAt { animal },
        OfLamb::AllBorn => Event::AllBorn { lamb },
        OfLamb::FosteredTo(ewe) => Event::Life(Life::Fostered { lamb, dam: ewes[ewe] }),
        OfLamb::DamIs(ewe) => Event::DamGiven { lamb, dam: ewes[ewe] },
        OfLamb::Accepted(accepts) => Event::Accepted { lamb, accepts },
        OfLamb::Weaned => Event::Weaned { lamb },
        OfLamb::NotRight(sign, [head_up, swallows, warm]) => {
            Event::Illness(Illness::LambSeen { lamb, head_up, swallows, warm, signs: vec![sign] })
        }
        OfLamb::Changed(change) => Event::Illness(Illness::Changed { animal, change }),
        OfLamb::MilkAllowed => Event::Illness(Illness::MilkAllowed { lamb }),
        OfLamb::Died(cause) => Event::Died { animal, cause },
    }
}
