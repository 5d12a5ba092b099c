//! The heads and the words of the tables for a spreadsheet.

use yeanling_core::book::LambingEase;
use yeanling_core::units::System;

/// The screen of tables.
pub const SCREEN: &str = "Import & export";
/// What it is for.
pub const ABOUT: &str = "Your own tables in, tables for a spreadsheet, a list on paper";
/// Says why the sample flock stays out.
pub const NOT_OF_SAMPLE: &str = "The sample flock stays out of tables.";
/// Heads the list on paper.
pub const PAPER: &str = "On paper";
/// Says what is on it.
pub const PAPER_SUB: &str = "All ewes, a line each: born, due, scan, score, lambs.";
/// Prints it.
pub const PRINT_EWES: &str = "Print the ewes";
/// The heads of the list on paper.
pub const PAPER_HEADS: [&str; 8] = ["Tag", "Born", "Breed", "Due", "Scan", "Score", "Lambs", "Notes"];
/// Heads the way out.
pub const TITLE: &str = "To a spreadsheet";
/// Explains it.
pub const SUB: &str =
    "One row per animal, weight, feed or medicine, as CSV. This is not a backup: for that, share the book.";
/// One row an animal.
pub const ANIMALS: &str = "Animals";
/// One row a weight.
pub const WEIGHTS: &str = "Weights";
/// One row a feed by hand.
pub const FEEDS: &str = "Feeds";
/// One row a medicine.
pub const MEDICINES: &str = "Medicines";
/// Nobody knows.
pub const NOT_KNOWN: &str = "not known";
/// The heads of the medicines.
pub const HEADS_OF_MEDICINES: [&str; 13] = [
    "id",
    "name",
    "given",
    "medicine",
    "amount",
    "how",
    "against",
    "batch",
    "by",
    "meat withdrawal (days)",
    "meat free from",
    "milk withdrawal (days)",
    "milk free from",
];
/// Says that it was handed to the phone.
pub const GIVEN: &str = "Handed to your phone.";
/// Says that there is nothing to write.
pub const NOTHING: &str = "None in the book yet.";
/// A ewe.
pub const EWE: &str = "ewe";
/// A lamb.
pub const LAMB: &str = "lamb";
/// It is so.
pub const YES: &str = "yes";
/// It is not so.
pub const NO: &str = "no";

/// Returns the heads of the animals.
pub const fn animals(system: System) -> [&'static str; 23] {
    let (birth, last) = match system {
        System::Metric => ("birth weight (kg)", "last weight (kg)"),
        System::Us => ("birth weight (lb)", "last weight (lb)"),
    };
    [
        "id",
        "kind",
        "name",
        "dam",
        "born",
        "came",
        "breed",
        "sex",
        "born alive",
        "born as one of",
        "birth ease (1-6)",
        birth,
        last,
        "last weighed",
        "weaned",
        "died",
        "cause",
        "reared by",
        "left",
        "how",
        "to",
        "post-mortem",
        "note",
    ]
}

/// Returns the heads of the weights.
pub const fn weights(system: System) -> [&'static str; 6] {
    let weight = match system {
        System::Metric => "weight (kg)",
        System::Us => "weight (lb)",
    };
    ["id", "name", "dam", "weighed", "age (days)", weight]
}

/// Returns the heads of the feeds.
pub const fn feeds(system: System) -> [&'static str; 6] {
    let volume = match system {
        System::Metric => "volume (ml)",
        System::Us => "volume (fl oz)",
    };
    ["id", "name", "fed", volume, "milk", "by"]
}

/// Returns the grade of a birth on its printed scale.
pub const fn ease(ease: LambingEase) -> u8 {
    match ease {
        LambingEase::Alone => 1,
        LambingEase::SlightByHand => 2,
        LambingEase::HardByHand => 3,
        LambingEase::Vet => 4,
        LambingEase::Surgery => 5,
        LambingEase::PlannedSurgery => 6,
    }
}

/// Returns the name of a file: "yeanling-animals-2026-02-25.csv".
pub fn file(what: &str, day: &str) -> String {
    format!("yeanling-{}-{day}.csv", what.to_lowercase())
}

/// Returns what stands above the list on paper: "Quarry Bank · 24 ewes · 12 Mar 2026".
pub fn paper_head(farm: &str, ewes: usize, day: &str) -> String {
    let ewes = super::animals::ewes(ewes);
    let parts = [farm.trim(), &ewes, day].into_iter().filter(|part| !part.is_empty());
    parts.collect::<Vec<_>>().join(" · ")
}

/// Returns that a ewe has lambed, for the column in which others are due: "lambed 24 Feb".
pub fn lambed(on: &str) -> String {
    format!("lambed {on}")
}

/// Returns how many of a litter live: "1 of 2".
pub fn alive(alive: usize, of: usize) -> String {
    if alive == of { of.to_string() } else { format!("{alive} of {of}") }
}
