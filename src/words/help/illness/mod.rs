//! What Help adds to the rows of the tables of illness: when to call, what was published, where sources differ, and the words
//! by which people look for them. What it may be and what to do stands once, with the answers.

mod ewe;
mod lamb;

use yeanling_core::reckon::illness::Ailment;
use yeanling_core::reckon::illness::ewe::{BREATHS, FEVER_FROM, NORMAL as TEMPERATURE, PULSE};
use yeanling_core::units::System;

use crate::common::temperature_both;

/// Names the page of the ewe.
pub const EWE: &str = "A ewe that is not right";
/// Names the page of the lamb.
pub const LAMB: &str = "A lamb that is not right";
/// Says whose it is.
pub const A_EWE: &str = "A ewe";
/// Says whose it is.
pub const A_LAMB: &str = "A lamb";
/// Heads what is seen.
pub const LOOKS: &str = "What it looks like";
/// Heads what separates the causes.
pub const TELLS: &str = "What tells them apart";
/// Heads what it may be.
pub const MAY_BE: &str = "What it may be, in this order";
/// Heads what to do.
pub const UNTIL: &str = "Until your vet is there";
/// Heads what was published.
pub const PUBLISHED: &str = "Published";
/// Heads where sources differ.
pub const DIFFER: &str = "Where sources differ";
/// Heads the sources.
pub const SOURCES: &str = "Sources";
/// Heads every row.
pub const EVERY: &str = "By what you see";
/// Heads a ewe that cannot get up.
pub const DOWN: &str = "Down and cannot get up";
/// A ewe that is down.
pub const DOWN_CALL: &str = "Call your vet now, whatever the cause.";
/// Heads a lamb that does not swallow.
pub const FIRST: &str = "First: head up, swallows, warm?";
/// What comes first with every lamb.
pub const FIRST_STEPS: [&str; 3] = [
    "Head down, or no suck or swallow: call your vet now. Nothing by mouth.",
    "Cold mouth, or under 37 °C (98.6 °F): go to A cold lamb. No milk.",
    "Tight belly, or a chin that is wet again after wiping: no milk.",
];
/// Heads what is normal.
pub const NORMAL: &str = "What is normal";

/// Returns what is normal in a ewe.
pub fn normal(system: System) -> Vec<String> {
    let ((least, most), (slow, quick), (few, many)) = (TEMPERATURE, PULSE, BREATHS);
    let warm = |read| temperature_both(read, system);
    vec![
        format!("*Temperature* {} to {}. From {} on it is fever.", warm(least), warm(most), warm(FEVER_FROM)),
        format!("*Pulse* {slow} to {quick} beats a minute at rest."),
        format!("*Breaths* {few} to {many} a minute at rest, near 60 in heat."),
        "*Gums* pressed white are pink again in under 2 seconds.".to_owned(),
        "*Rumen* (left flank): it turns at least once a minute.".to_owned(),
    ]
}

/// What Help adds to a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct More {
    /// When to call the vet: first what it is at the mildest, then what makes it worse.
    pub call: &'static str,
    /// What it looks like beside the signs; empty where they say it all.
    pub also: &'static str,
    /// What was published of how it goes, each with who says so.
    pub published: &'static [&'static str],
    /// Where sources differ, and whom we take.
    pub differ: &'static [&'static str],
    /// Other words by which people look for it, in small letters.
    pub found_by: &'static str,
}

impl More {
    const NONE: Self = Self { call: "", also: "", published: &[], differ: &[], found_by: "" };
}

/// Returns what Help adds to a row.
#[must_use]
pub const fn more(ailment: Ailment) -> More {
    match ailment {
        Ailment::Ewe(row) => ewe::more(row),
        Ailment::Lamb(row) => lamb::more(row),
    }
}
