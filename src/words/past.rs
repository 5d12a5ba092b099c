//! What a farm knows from before its book: rams, parents, how an animal was born and reared, other names.

use yeanling_core::book::Past;
use yeanling_core::flock::Flock;

use super::animals;
use super::common::typed;

/// Says that a grown animal is a ram.
pub const IS_RAM: &str = "This is a ram";
/// Heads the rams.
pub const RAMS: &str = "Rams";
/// Says that he is dead.
pub const DEAD: &str = "He is dead. His record stays.";
/// Heads what can be noted of him.
pub const NOTE: &str = "Note about him";
/// Heads the lambs of a ram.
pub const OFFSPRING: &str = "Lambs by him";
/// Says where lambs by a ram come from.
pub const NO_OFFSPRING: &str =
    "None noted yet. Lambs of his groups show under each ewe and in the season summary.";
/// Heads the groups that he was in with.
pub const HIS_GROUPS: &str = "Groups he was in with";
/// Leads to a dam.
pub const DAM: &str = "Dam";
/// Leads to a sire.
pub const SIRE: &str = "Sire";
/// Heads an animal's parents.
pub const PARENTS: &str = "Parents";

/// Returns the way to a lamb's sire: "Sire: Ram R7".
pub fn sire(name: &str) -> String {
    format!("Sire: {name}")
}

/// Returns the button that adds a ram: "Add ram R7".
pub fn add(tag: &str) -> String {
    format!("Add ram {tag}")
}

/// Returns how many of his lambs are listed: "And 40 more."
pub fn more_lambs(lambs: usize) -> String {
    format!("And {lambs} more.")
}

/// Returns how many lambs a ram has: "12 lambs".
pub fn lambs(count: usize) -> String {
    if count == 1 { "1 lamb".to_owned() } else { format!("{count} lambs") }
}

/// Returns what was noted, as a line of a timeline.
pub fn line(past: &Past, flock: &Flock) -> String {
    match past {
        Past::IsRam { .. } => "Is a ram".to_owned(),
        Past::Sired { animal, ram } => {
            let (animal, ram) = (animals::animal(flock, *animal), animals::ewe_of(flock, *ram));
            format!("Sire of {}: *{}*", typed(&animal), typed(&ram))
        }
        Past::DamOf { animal, dam } => {
            let (animal, dam) = (animals::ewe_of(flock, *animal), animals::ewe_of(flock, *dam));
            format!("Dam of {}: *{}*", typed(&animal), typed(&dam))
        }
        Past::BornAs { of, .. } => format!("Born as a {}", litter(*of)),
        Past::RearedAs { of: Some(of), .. } => format!("Reared as a {}", litter(*of)),
        Past::RearedAs { of: None, .. } => "Reared by hand".to_owned(),
        Past::IsWether { .. } => "Is a wether".to_owned(),
        Past::Called { name, .. } => format!("Also called *{}*", typed(name)),
    }
}

fn litter(of: u8) -> String {
    animals::litter(of.into())
}
