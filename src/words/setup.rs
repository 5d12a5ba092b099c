//! The first run: what is asked once, and may be skipped.

/// The screen's name.
pub const TITLE: &str = "Set up your farm";
/// Says that nothing must be answered.
pub const SUB: &str = "Skip what you like. All of it is in Farm settings too.";
/// Heads the units and the clock.
pub const UNITS: &str = "Units and clock";
/// Says where they come from.
pub const FROM_PHONE: &str = "As your phone has them. Tap to change.";
/// Heads the kind of sheep.
pub const SHEEP: &str = "Your sheep";
/// Hair sheep.
pub const HAIR: &str = "Hair sheep";
/// Any other.
pub const WOOL: &str = "Wool or other";
/// Says what the number is for.
pub const VET_HINT: &str = "A button dials it wherever Yeanling says to call.";
/// Heads the pens.
pub const PENS_TITLE: &str = "Bonding pens (jugs)";
/// Asks how many there are.
pub const PENS: &str = "How many";
/// Says what becomes of them.
pub const PENS_HINT: &str = "They are numbered 1, 2, 3 and so on.";
/// Notes all of it.
pub const DONE: &str = "Done: add ewes";

/// Returns what is wrong with a number of pens.
pub fn pens_wrong(typed: &str, most: u16) -> String {
    format!("{typed} is out of range. Enter 0 to {most}.")
}
