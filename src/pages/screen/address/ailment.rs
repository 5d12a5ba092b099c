//! The address of each illness, under that of Help.

use yeanling_core::reckon::illness::{Ailment, ewe, lamb};

use super::{address_of, at};

const EWES: [(ewe::Row, &str); 27] = [
    (ewe::Row::MayBeNotifiable, "may-be-notifiable"),
    (ewe::Row::Cast, "cast"),
    (ewe::Row::LowCalcium, "low-calcium"),
    (ewe::Row::Toxemia, "toxemia"),
    (ewe::Row::Listeria, "listeria"),
    (ewe::Row::Brain, "brain"),
    (ewe::Row::LowMagnesium, "low-magnesium"),
    (ewe::Row::VaginaOut, "vagina-out"),
    (ewe::Row::WombOut, "womb-out"),
    (ewe::Row::BowelOut, "bowel-out"),
    (ewe::Row::CervixTight, "cervix-not-open"),
    (ewe::Row::AfterbirthKept, "afterbirth-kept"),
    (ewe::Row::WombInfected, "womb-infected"),
    (ewe::Row::UdderCold, "udder-cold"),
    (ewe::Row::UdderHot, "udder-hot"),
    (ewe::Row::UdderFirm, "udder-firm"),
    (ewe::Row::NoMilk, "no-milk"),
    (ewe::Row::Lame, "lame"),
    (ewe::Row::Chest, "pneumonia"),
    (ewe::Row::Bloat, "bloat"),
    (ewe::Row::Grain, "grain"),
    (ewe::Row::Copper, "copper"),
    (ewe::Row::Aborted, "aborted"),
    (ewe::Row::HurtByBirth, "hurt-by-birth"),
    (ewe::Row::Bleeding, "bleeding"),
    (ewe::Row::Worms, "worms"),
    (ewe::Row::Dull, "dull"),
];

const LAMBS: [(lamb::Row, &str); 29] = [
    (lamb::Row::MayBeNotifiable, "may-be-notifiable"),
    (lamb::Row::NotBreathing, "not-breathing"),
    (lamb::Row::NoSwallow, "no-swallow"),
    (lamb::Row::WateryMouth, "watery-mouth"),
    (lamb::Row::Bloat, "bloat"),
    (lamb::Row::ColdYoung, "cold-young"),
    (lamb::Row::ColdOlder, "cold-older"),
    (lamb::Row::Hot, "hot"),
    (lamb::Row::Dysentery, "dysentery"),
    (lamb::Row::Coccidia, "coccidia"),
    (lamb::Row::Scour, "scour"),
    (lamb::Row::NoDung, "no-dung"),
    (lamb::Row::Joint, "joint"),
    (lamb::Row::Navel, "navel"),
    (lamb::Row::Chest, "pneumonia"),
    (lamb::Row::WhiteMuscle, "white-muscle"),
    (lamb::Row::Wobbly, "wobbly"),
    (lamb::Row::Leg, "leg"),
    (lamb::Row::Tetanus, "tetanus"),
    (lamb::Row::Fits, "fits"),
    (lamb::Row::BowelOut, "bowel-out"),
    (lamb::Row::MilkInLung, "milk-in-lung"),
    (lamb::Row::Hungry, "hungry"),
    (lamb::Row::Eye, "eye"),
    (lamb::Row::Orf, "orf"),
    (lamb::Row::FoundDead, "found-dead"),
    (lamb::Row::HardBirth, "hard-birth"),
    (lamb::Row::Wound, "wound"),
    (lamb::Row::Dull, "dull"),
];

/// Returns the illness of a ewe at an address.
pub(super) fn of_ewe(address: &str) -> Option<Ailment> {
    at(&EWES, address).map(Ailment::Ewe)
}

/// Returns the illness of a lamb at an address.
pub(super) fn of_lamb(address: &str) -> Option<Ailment> {
    at(&LAMBS, address).map(Ailment::Lamb)
}

/// Returns the address of an illness, with the `#`.
pub(super) fn hash(ailment: Ailment) -> String {
    match ailment {
        Ailment::Ewe(row) => format!("#/help/ewe/{}", address_of(&EWES, row)),
        Ailment::Lamb(row) => format!("#/help/lamb/{}", address_of(&LAMBS, row)),
    }
}
