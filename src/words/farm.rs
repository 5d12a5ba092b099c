//! The Farm tab: the farm's choices, its book, and the program itself.

use yeanling_core::settings::{BreedType, FarmSettings};

use super::settings::{breed_type, system};

/// Leads to the farm's choices.
pub const SETTINGS: &str = super::settings::TITLE;
/// Says that the book was never backed up.
pub const NO_BACKUP: &str = "Never backed up: a lost phone is a lost book";
/// Says that the only copy of it is on this phone.
pub const ONLY_HERE: &str = "The backup is on this phone only";
/// What is there while nothing is noted.
pub const SHARE_SUB: &str = "Import a book; back up later";
/// Heads the sample flock.
pub const TRY: &str = "Try it";
/// Explains the sample flock.
pub const TRY_SUB: &str = "A sample flock in the middle of a night. Your own book is untouched.";
/// Opens the sample flock.
pub const LOOK_ROUND: &str = "Try a sample flock";
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

/// Returns the farm's choices in a few words: "High Moor · kg, ml, °C · hair sheep".
pub fn settings(settings: &FarmSettings) -> String {
    let name = settings.farm_name.trim();
    let name = (!name.is_empty()).then_some(name);
    // What nobody chose is not told.
    let breed = (settings.breed_type != BreedType::Any).then(|| breed_type(settings.breed_type).0);
    let told = name.into_iter().chain([system(settings.system)]).chain(breed);
    told.collect::<Vec<_>>().join(" · ")
}

/// Returns when the book was backed up last.
pub fn backed_up(when: &str) -> String {
    format!("Last backup {when}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_farm_is_told_by_its_name_and_its_units() {
        let mut chosen = FarmSettings::default();
        assert_eq!(settings(&chosen), "kg, ml, °C");
        chosen.farm_name = " High Moor ".to_owned();
        chosen.breed_type = BreedType::Hair;
        assert_eq!(settings(&chosen), "High Moor · kg, ml, °C · hair sheep");
    }
}
