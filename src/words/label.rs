//! The few words that parts say themselves, in one place so that they can be read and changed together.

/// Asks for the reasons of a figure.
pub const WHY: &str = "why?";
/// Closes a sheet.
pub const CLOSE: &str = "Close";
/// Lets go what was read.
pub const READ: &str = "OK";
/// Takes back what was just noted.
pub const UNDO: &str = "Undo";
/// Heads the safety box.
pub const CAUTION: &str = "Caution";
/// Names the key that takes back one digit.
pub const BACKSPACE: &str = "delete last digit";
/// Names the point key, whichever sign it shows.
pub const POINT: &str = "point";
/// Names the key of the larger of two units: "lb, then the ounces".
pub fn larger(unit: &str) -> String {
    format!("{unit}, then the ounces")
}
/// Names the pad of digits.
pub const KEYPAD: &str = "number pad";
/// Names the list that leads down a page.
pub const CONTENTS: &str = "On this page";
/// Names the bar of screens.
pub const SCREENS: &str = "screens";
/// Heads the rule in the sheet of reasons.
pub const RULE: &str = "Rule";
/// Heads the working in the sheet of reasons.
pub const WORKING: &str = "Working";
/// Heads the sources in the sheet of reasons.
pub const SOURCES: &str = "Where it is from";

/// Folds them, with how many there are: "Where it is from · 3".
pub fn sources(count: usize) -> String {
    format!("{SOURCES} · {count}")
}

/// Heads what other sources say in the sheet of reasons.
pub const OTHERS: &str = "Others say";
/// Says that a life hangs on a duty.
pub const DANGER: &str = "danger";
/// Says that a duty's time has passed.
pub const LATE: &str = "late";
/// Says that a duty is for now.
pub const NOW: &str = "now";
/// Says that a duty is still to come.
pub const COMING: &str = "coming";
/// Says that a duty is done.
pub const DONE: &str = "done";
