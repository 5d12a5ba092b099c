//! What animals are called, and the few words that tell one from another.

use yeanling_core::book::{Animal, EweId, LambId, Sex};
use yeanling_core::flock::{Ewe, Flock, Lamb};
use yeanling_core::units::System;

use super::common::{clock, mass};

/// Returns a ewe's name for a heading or a row, "Ewe 14", or a ram's, "Ram R7".
pub fn ewe(ewe: &Ewe) -> String {
    let what = if ewe.is_ram { "Ram" } else { "Ewe" };
    ewe.tag.as_deref().map_or_else(|| format!("{what} without a tag"), |tag| format!("{what} {tag}"))
}

/// Returns how many ewes: "1 ewe", "3 ewes".
pub fn ewes(count: usize) -> String {
    if count == 1 { "1 ewe".to_owned() } else { format!("{count} ewes") }
}

/// Returns the tag in what was typed of a grown animal: "31" of "ewe 31" or "ram 31", as it is called on screen.
pub fn tag_of(typed: &str) -> &str {
    let typed = typed.trim();
    after("ewe ", typed).or_else(|| after("ram ", typed)).unwrap_or(typed)
}

/// Says whether what was typed is about a ram: "ram R7".
pub fn is_of_ram(typed: &str) -> bool {
    after("ram ", typed.trim()).is_some()
}

fn after<'a>(word: &str, typed: &'a str) -> Option<&'a str> {
    let (before, tag) = typed.split_at_checked(word.len())?;
    before.eq_ignore_ascii_case(word).then(|| tag.trim_start())
}

/// Returns the name of the ewe of this id, or of the ram.
pub fn ewe_of(flock: &Flock, id: EweId) -> String {
    flock.grown(id).map_or_else(|| "Ewe not in the book".to_owned(), ewe)
}

/// Returns a lamb's name: its own tag, or its dam's with a letter, "14a"; without a dam, when it was born.
pub fn lamb(flock: &Flock, lamb: &Lamb) -> String {
    if let Some(tag) = &lamb.tag {
        return tag.clone();
    }
    match lamb.dam.and_then(|dam| flock.ewe(dam)).map(|dam| dam.tag.as_deref().unwrap_or("ewe ")) {
        Some(dam) => format!("{dam}{}", letter(lamb.order)),
        None => format!("Lamb of {}{}", clock(lamb.born), letter_in_litter(flock, lamb)),
    }
}

fn letter_in_litter(flock: &Flock, lamb: &Lamb) -> String {
    let alone = flock.litter_of(lamb.id).is_none_or(|litter| litter.lambs.len() < 2);
    if alone { String::new() } else { format!(" {}", letter(lamb.order)) }
}

fn letter(order: usize) -> char {
    u8::try_from(order).ok().filter(|order| *order < 26).map_or('z', |order| char::from(b'a' + order))
}

/// Returns the name of the lamb of this id.
pub fn lamb_of(flock: &Flock, id: LambId) -> String {
    flock.lamb(id).map_or_else(|| "Lamb not in the book".to_owned(), |found| lamb(flock, found))
}

/// Returns the name of any animal.
pub fn animal(flock: &Flock, animal: Animal) -> String {
    match animal {
        Animal::Ewe(id) => ewe_of(flock, id),
        Animal::Lamb(id) => lamb_of(flock, id),
    }
}

/// Returns "ewe lamb", "ram lamb" or "lamb".
pub const fn sex(sex: Option<Sex>) -> &'static str {
    match sex {
        Some(Sex::Ewe) => "ewe lamb",
        Some(Sex::Ram) => "ram lamb",
        None => "lamb",
    }
}

/// Returns "single", "twin", "triplet", or the number.
pub fn litter(size: usize) -> String {
    match size {
        0 | 1 => "single".to_owned(),
        2 => "twin".to_owned(),
        3 => "triplet".to_owned(),
        4 => "quadruplet".to_owned(),
        more => format!("one of {more}"),
    }
}

/// Returns "wether", or its sex.
pub fn kind(lamb: &Lamb) -> &'static str {
    if lamb.is_wether() { "wether" } else { sex(lamb.sex) }
}

/// Returns a few soft words about a lamb: "ewe lamb · 3.9 kg".
pub fn lamb_kind(lamb: &Lamb, system: System) -> String {
    let weight = lamb.weight().map(|weight| format!(" · {}", mass(weight, system))).unwrap_or_default();
    let state = if !lamb.born_alive {
        " · born dead".to_owned()
    } else if lamb.died.is_some() {
        " · died".to_owned()
    } else {
        lamb.left.as_ref().map(|left| format!(" · {}", super::flock::gone(left.how))).unwrap_or_default()
    };
    format!("{}{weight}{state}", kind(lamb))
}

#[cfg(test)]
mod tests {
    use super::tag_of;

    #[test]
    fn the_word_before_a_tag_is_no_part_of_it() {
        for (typed, tag) in [
            ("ewe 31", "31"),
            (" Ewe  31 ", "31"),
            ("31", "31"),
            ("ewe", "ewe"),
            ("Ram R7", "R7"),
            ("Ewelina", "Ewelina"),
            ("új 7", "új 7"),
            ("", ""),
        ] {
            assert_eq!(tag_of(typed), tag, "{typed:?}");
        }
    }
}
