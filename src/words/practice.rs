//! The farm's choices.

use yeanling_core::practice::{BottleTable, DayRule, Housing, Limit};
use yeanling_core::units::System;

/// The screen's name.
pub(crate) const TITLE: &str = "Practice";
/// What the screen is for.
pub(crate) const SUB: &str = "How this farm does it. Kept in the book, so every phone agrees.";
/// Heads the look of this phone.
pub(crate) const LOOK: &str = "Look of this phone";
/// Heads the farm's name.
pub(crate) const FARM: &str = "Farm";
/// Labels the farm's name.
pub(crate) const FARM_NAME: &str = "Farm name";
/// Heads the units.
pub(crate) const UNITS: &str = "Units";
/// Heads the first-milk rule.
pub(crate) const FIRST_MILK: &str = "First milk in 24 hours";
/// Heads the housing.
pub(crate) const NEWBORNS: &str = "Newborns live";
/// Heads the bottle table.
pub(crate) const BOTTLE: &str = "Bottle lambs";
/// Heads the limits.
pub(crate) const LIMITS: &str = "When the watch speaks up";
/// Explains the limits.
pub(crate) const LIMITS_SUB: &str = "Minutes after birth; for the navel, after the first dip.";
/// Saves the limits.
pub(crate) const SAVE_LIMITS: &str = "Save limits";
/// Saves the name.
pub(crate) const SAVE_NAME: &str = "Save name";
/// Says that it was saved.
pub(crate) const SAVED: &str = "Noted in the book.";

/// Returns the units' name.
pub(crate) const fn system(system: System) -> &'static str {
    match system {
        System::Metric => "kg, ml, °C",
        System::Us => "lb, fl oz, °F",
    }
}

/// Returns a colostrum rule's name and a few words about it.
pub(crate) const fn day_rule(rule: DayRule) -> (&'static str, &'static str) {
    match rule {
        DayRule::Ahdb200 => ("AHDB, 200 ml/kg", "our default: a levy board’s plain figure"),
        DayRule::Ruma210 => ("RUMA, 210 ml/kg", "the lower end of its 210–290"),
        DayRule::TenPercent => ("10 % of body weight", "the popular floor, half the guidance"),
    }
}

/// Returns where newborns live.
pub(crate) const fn housing(housing: Housing) -> &'static str {
    match housing {
        Housing::Housed => "under a roof",
        Housing::Outdoors => "outdoors",
    }
}

/// Returns a bottle table's name and a few words about it.
pub(crate) const fn bottle_table(table: BottleTable) -> (&'static str, &'static str) {
    match table {
        BottleTable::VetSupplier => ("Vet supplier’s table", "our default: steps by week, in ml"),
        BottleTable::UsHandbook => ("US handbook’s table", "smaller feeds, in fl oz"),
    }
}

/// Returns what a limit is about.
pub(crate) const fn limit(limit: Limit) -> &'static str {
    match limit {
        Limit::Up => "Up on its feet",
        Limit::Help => "Help it to suck",
        Limit::Red => "Late for first milk",
        Limit::LastCall => "Last call for first milk",
        Limit::NavelAgain => "Dip the navel again",
        Limit::Look => "Look at a restless ewe every",
        Limit::Restless => "Restless, no waters: examine or vet",
        Limit::HandCheck => "Waters, nothing shows: clean hand",
        Limit::StepIn => "Waters, nothing shows: step in",
        Limit::Progress => "Feet or nose: further within",
        Limit::Neck => "Tight neck: try for, then vet",
        Limit::PutRight => "Lying wrong: try for, then vet",
        Limit::NextLamb => "Look for the next lamb",
        Limit::NextCheck => "Check for the next lamb",
        Limit::AfterbirthAsk => "Ask for the afterbirth",
        Limit::AfterbirthLate => "Afterbirth late",
        Limit::AfterbirthVet => "Afterbirth: call the vet",
        Limit::StaySingle => "A single stays",
        Limit::StayTwins => "Twins stay",
        Limit::StayMore => "Triplets and more stay",
    }
}

/// Heads how this phone looks: as the phone has it.
pub(crate) const LOOK_PHONE: &str = "As the phone";
/// Ink on paper.
pub(crate) const LOOK_DAY: &str = "Day";
/// Dim amber on black.
pub(crate) const LOOK_NIGHT: &str = "Night";
/// Explains the look.
pub(crate) const LOOK_SUB: &str = "This phone alone. Night is dim amber on black, kind to eyes and ewes.";
/// Explains the farm's name.
pub(crate) const FARM_NAME_SUB: &str = "Stands above the Watch and names the files you send.";
/// The unit of the limits.
pub(crate) const MINUTES: &str = "min";
/// Says that nothing was changed.
pub(crate) const UNCHANGED: &str = "Nothing was changed.";

/// The unit of the stays.
pub(crate) const HOURS: &str = "h";
/// Heads the limits around lambing.
pub(crate) const LABOR: &str = "Around lambing";
/// Explains them.
pub(crate) const LABOR_SUB: &str = "From waters, from what shows, from a hand, from the last lamb. Stricter is fine; ask your vet before looser.";
/// Heads the stays in the pens.
pub(crate) const STAY: &str = "Bonding pens";
/// Explains them.
pub(crate) const STAY_SUB: &str =
    "Until the stay is over nobody is told to go out, and not while a lamb is unfed, cold or turned away.";
/// Saves the stays.
pub(crate) const SAVE_STAY: &str = "Save the stays";

/// Returns the limit that holds until the farm sets its own.
pub(crate) fn usual(figure: u16) -> String {
    format!("{figure} unless you choose otherwise")
}

/// Returns what is wrong with a limit that is no whole number.
pub(crate) fn not_whole(given: &str, usual: u16) -> String {
    if given.is_empty() {
        format!("Nothing is typed. Type a whole number, such as {usual}.")
    } else {
        format!("“{given}” is not a whole number. Type it like {usual}.")
    }
}
