//! Rams: a season by ram, who sired whom, and who is near kin.

use yeanling_core::book::EweId;
use yeanling_core::flock::Flock;
use yeanling_core::seasons::{KinToRam, OfRam, RamFigure, Sire};
use yeanling_core::units::System;

use super::animals;
use super::common::{mass, typed};
use super::weighing::gain;

/// Heads the season by ram.
pub const BY_RAM: &str = "By ram";
/// In which order they stand.
pub const NO_ORDER: &str =
    "Most ewes first, not best first. A difference is named only where chance is unlikely.";
/// Says that a ram is like the others.
pub const LIKE_OTHERS: &str = "no difference beyond chance";

/// Returns who the sire is: "R1", "R1 or R2", "a ram of Top".
pub fn sire(flock: &Flock, sire: &Sire) -> String {
    match sire {
        Sire::Rams(names) => names.iter().map(|name| typed(name)).collect::<Vec<_>>().join(" or "),
        Sire::OfGroup(group) => {
            let name = flock.groups.get(group).map_or("its group", |group| group.name.as_str());
            format!("a ram of {}", typed(name))
        }
    }
}

/// Returns the line that names the sire of a litter: "Sire: *R1*".
pub fn sired_by(flock: &Flock, of: &Sire) -> String {
    format!("Sire: *{}*", sire(flock, of))
}

/// Returns his ewes: "*24* ewes, *22* lambed, *18* in the first cycle".
pub fn ewes(of: &OfRam) -> String {
    let first =
        of.first_cycle.map(|first| format!(", *{}* in the first cycle", first.ewes)).unwrap_or_default();
    format!(
        "*{}* put to him, *{}* lambed{first}",
        animals::ewes(usize::try_from(of.put).unwrap_or(0)),
        of.lambed
    )
}

/// Returns his lambs: "*38* lambs, *2* of 36 born alive lost. Birth weight *4.1 kg* (36), gain *210 g a day* (30)".
pub fn lambs(of: &OfRam, system: System) -> String {
    let lambs = if of.born == 1 { "lamb" } else { "lambs" };
    let mut text = format!("*{}* {lambs}, *{}* lost of {} born alive", of.born, of.lost, of.born_alive);
    if let Some((weight, of)) = of.birth_weight {
        text += &format!(", birth weight *{}* ({of} weighed)", mass(weight, system));
    }
    if let Some((grams, of)) = of.gain {
        text += &format!(", *{}* ({of} weighed)", gain(grams, system));
    }
    text
}

/// Returns in what he differs from all other rams together: "more lost than of the others".
pub fn apart(of: &OfRam) -> String {
    let one = |(figure, more): &(RamFigure, bool)| match (figure, more) {
        (RamFigure::FirstCycle, true) => "more in the first cycle",
        (RamFigure::FirstCycle, false) => "fewer in the first cycle",
        (RamFigure::BirthWeight, true) => "heavier at birth",
        (RamFigure::BirthWeight, false) => "lighter at birth",
        (RamFigure::Gain, true) => "gain more",
        (RamFigure::Gain, false) => "gain less",
        (RamFigure::Lost, true) => "more lost",
        (RamFigure::Lost, false) => "fewer lost",
    };
    if of.apart.is_empty() {
        return LIKE_OTHERS.to_owned();
    }
    format!("*{}* than the others’", of.apart.iter().map(one).collect::<Vec<_>>().join(", "))
}

/// Warns that ewes are near kin to a ram: "12 is a daughter of R1. Mating near kin can bring weak or malformed lambs."
pub fn near_kin(flock: &Flock, ram: &str, kin: &[(EweId, KinToRam)]) -> String {
    let ram = typed(ram);
    let one = |(ewe, kin): &(EweId, KinToRam)| {
        let ewe = typed(&animals::ewe_of(flock, *ewe));
        match kin {
            KinToRam::Dam => format!("{ewe} is the dam of {ram}."),
            KinToRam::Daughter => format!("{ewe} is a daughter of {ram}."),
            KinToRam::PerhapsDaughter => format!("{ewe} may be a daughter of {ram}."),
        }
    };
    let more = kin.len().saturating_sub(MOST_NAMED);
    let mut lines: Vec<String> = kin.iter().take(MOST_NAMED).map(one).collect();
    if more > 0 {
        lines.push(format!("So are or may be {more} more."));
    }
    format!("*Near kin.* {} Take them out of the group before he goes in.", lines.join(" "))
}

/// So many near kin are named, and the others counted.
const MOST_NAMED: usize = 4;
