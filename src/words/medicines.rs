//! The medicine record.

/// The screen's name.
pub const TITLE: &str = "Medicines";
/// Heads what is withheld.
pub const HELD: &str = "In withdrawal now";
/// Says that nothing is.
pub const NONE_HELD: &str = "Nothing in withdrawal, as far as noted.";
/// Heads the treatments.
pub const GIVEN: &str = "Given";
/// Says that there are none.
pub const EMPTY: &str = "No medicine yet. Add one on the ewe or the lamb, or here for many at once.";
/// Folds boosters that were noted of a group as a whole.
pub const GROUP_BOOSTERS: &str = "Boosters noted for a group";
/// Such a booster.
pub const GROUP_BOOSTER: &str = "Booster; which medicine was not noted";
/// Opens a treatment of many.
pub const MANY: &str = "Medicine for many";
/// Asks for whom.
pub const WHO: &str = "Who was treated?";
/// All ewes.
pub const ALL_EWES: &str = "All ewes";
/// All lambs.
pub const ALL_LAMBS: &str = "All lambs";
/// What a medicine record is worth.
pub const CAUTION: [&str; 2] = [
    "Label, vet and your country’s rules come first. They may ask for longer.",
    "Withdrawal is worked out from the days you typed. Check the label before any sale.",
];

/// Returns a choice of many with how many they are: "All ewes · 24".
pub fn counted(name: &str, count: usize) -> String {
    format!("{name} · {count}")
}

/// Folds who had a medicine that many had.
pub const WHICH: &str = "Which animals";

/// Returns who had the same medicine: "10 ewes", "3 ewes, 2 lambs".
pub fn how_many(ewes: usize, lambs: usize) -> String {
    let count = |of: usize, one: &str, many: &str| match of {
        0 => None,
        1 => Some(format!("1 {one}")),
        of => Some(format!("{of} {many}")),
    };
    let parts = [count(ewes, "ewe", "ewes"), count(lambs, "lamb", "lambs")];
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
