//! One ewe at work.

use yeanling_core::flock::Saw;
use yeanling_core::units::{Moment, System};

use super::common::{clock, day_and_clock};

/// The screen's name before a ewe is picked.
pub const WHO: &str = "Who is lambing?";
/// Labels the search.
pub const FIND: &str = "Her tag";
/// For a ewe nobody knows.
pub const UNKNOWN: &str = "Dam unknown";
/// Heads ewes at work.
pub const AT_WORK: &str = "Lambing or close";
/// Heads ewes that are at work or lambed about then.
pub const LIKELIEST: &str = "Likeliest";
/// Heads all ewes.
pub const EWES: &str = "Ewes";
/// Heads those that have lambed this season.
pub const HAVE_LAMBED: &str = "Lambed already";
/// Says what to do in an empty book.
pub const NO_EWES: &str =
    "Type her tag, then add her. Or go on without: *dam unknown* can be given a dam later.";
/// Says that no ewe has this tag.
pub const NONE_FOUND: &str = "No ewe is called that.";
/// Says that the ewe who is called so is the one that is not offered.
pub const HER_ALREADY: &str = "It is her already.";
/// Says that not all ewes are shown.
pub fn and_more(ewes: usize) -> String {
    format!("And {ewes} more: type a digit of the tag.")
}
/// Before the first lamb.
pub const FIRST: &str = "A lamb is here";
/// Before another lamb.
pub const ANOTHER: &str = "Another lamb is here";
/// A ewe lamb.
pub const EWE_LAMB: &str = "Ewe lamb";
/// A ram lamb.
pub const RAM_LAMB: &str = "Ram lamb";
/// Born, not looked at.
pub const NOT_SEEN: &str = "Sex not seen";
/// Born dead.
pub const BORN_DEAD: &str = "Born dead";
/// Labels the choice of what a lamb is that was born: no second lamb is noted by it.
pub fn sex_of(lamb: &str) -> String {
    format!("{lamb} is a")
}

/// Labels help.
pub const HELP: &str = "Help at birth";
/// Labels the weight.
pub const WEIGHT: &str = "Weight";
/// Says that a weight is typed and not noted.
pub const WEIGHT_FIRST: &str = "The weight is not noted yet. Answer the question, or clear it.";
/// Offers what was meant by digits that are too much: "4.2 kg?", "8 lb 4 oz?".
pub fn meant(weight: &str, system: System) -> String {
    let unit = match system {
        System::Metric => "kg",
        System::Us if weight.contains("lb") => "oz",
        System::Us => "lb",
    };
    format!("{weight} {unit}?")
}
/// Names a lamb whose weight is typed and not noted: "9a · weight?".
pub fn weight_waits(lamb: &str) -> String {
    format!("{lamb} · weight?")
}
/// Labels the units.
pub const UNITS: &str = "Unit of weight";
/// Heads what was seen.
pub const SEEN: &str = "Seen so far";
/// The navel was dipped.
pub const NAVEL: &str = "Navel dipped";
/// It is up.
pub const UP: &str = "Up";
/// It sucked.
pub const SUCKED: &str = "Nursed";
/// Another lamb comes.
pub const NEXT: &str = "Next lamb";
/// All are born.
pub const ALL_BORN: &str = "All lambs born";
/// Gives the dam.
pub const GIVE_DAM: &str = "Give its dam";
/// Heads the choice of a dam.
pub const WHICH_DAM: &str = "Which ewe is the dam?";
/// Leads to the lamb's own screen.
pub const MORE: &str = "More about this lamb";
/// Names the tabs of the litter.
pub const LITTER: &str = "Lambs of this litter";

/// Asks whether that was all, when a scan saw more.
pub const ALL_ASK: &str = "Is that all?";
/// It is.
pub const ALL_YES: &str = "Yes, all are born";
/// It is not.
pub const ALL_NO: &str = "No, one is still to come";

/// Returns why it is asked: "The scan saw *3*, and *1* is noted."
pub fn scan_saw_more(scanned: u8, born: usize) -> String {
    let noted = if born == 1 { "*1* is noted".to_owned() } else { format!("*{born}* are noted") };
    format!("The scan saw *{scanned}*, and {noted}. If you are not sure, check inside (clean, gloved hand).")
}

/// Returns what the scan saw, beside the time: "scanned *2*".
pub fn scanned(lambs: u8) -> String {
    format!("scanned *{lambs}*")
}

/// Returns what stands under the heading of a lambing: "first lamb 03:12 · scanned *2*".
pub fn under(first_lamb: Option<Moment>, of_scan: Option<u8>) -> String {
    let first_lamb = first_lamb.map(|at| began(&clock(at)));
    first_lamb.into_iter().chain(of_scan.map(scanned)).collect::<Vec<_>>().join(" · ")
}

/// Returns who is at work, and what was seen of her last: "Ewe 14 · water bag 03:12".
pub fn at_work(name: &str, saw: Saw, at: Moment, now: Moment) -> String {
    format!("{name} · {} {}", super::labor::saw(saw), day_and_clock(at, now))
}

/// Returns the heading for a ewe at work.
pub fn title(ewe: &str) -> String {
    format!("{ewe} lambing")
}

/// Returns the button that adds a ewe.
pub fn add(tag: &str) -> String {
    format!("Add ewe {tag}")
}

/// Returns when the first lamb came.
pub fn began(clock: &str) -> String {
    format!("first lamb {clock}")
}

/// Returns the verdict on a weight, the one if another lamb comes, and that it is by the figures of wool breeds where the farm
/// keeps hair sheep: "light for a single, good for a twin (figures of wool breeds)"; with what the flock's own weigh, once that
/// is known: "light for a twin (figures of wool breeds; yours average 3.2 kg)".
pub fn judged(now: String, if_more: Option<String>, hair: bool, own: Option<&str>) -> String {
    let by = match own {
        Some(own) => format!(" (figures of wool breeds; yours average {own})"),
        None if hair => " (figures of wool breeds)".to_owned(),
        None => String::new(),
    };
    let verdicts: Vec<String> = std::iter::once(now).chain(if_more).collect();
    format!("{}{by}", verdicts.join(", "))
}

/// Returns the verdict on a weight.
pub fn verdict(verdict: &str, litter: &str) -> String {
    format!("{verdict} for a {litter}")
}
