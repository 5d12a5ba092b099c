//! The way to what has no tab.

/// The screen's name.
pub const TITLE: &str = "More";
/// Leads to the farm's choices.
pub const PRACTICE: &str = "Practice";
/// What is there.
pub const PRACTICE_SUB: &str = "Farm name, units, rules, limits, the look of this phone";
/// Leads to the help.
pub const HELP: &str = "Help";
/// What is there.
pub const HELP_SUB: &str = "A newborn’s first day, when to call the vet, every source";
/// Heads the made-up flock.
pub const TRY: &str = "Try it";
/// Explains the made-up flock.
pub const TRY_SUB: &str = "A made-up flock in the middle of a night. Your own book is untouched.";
/// Opens the made-up flock.
pub const LOOK_ROUND: &str = "Look round a made-up flock";
/// Heads the program itself.
pub const ABOUT: &str = "About";
/// What the program promises.
pub const PROMISE: &str =
    "Free, without an account. What you note stays on this phone until you send it yourself.";
/// The license.
pub const LICENSE: &str = "MIT or Apache-2.0, as you like.";

/// Returns the version.
pub fn version(version: &str) -> String {
    format!("Yeanling {version}")
}
