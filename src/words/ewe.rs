//! One ewe.

use super::common::typed;

/// Starts her lambing.
pub const LAMBING: &str = "Lambing";
/// Goes on with it.
pub const LAMBING_ON: &str = "Resume lambing";
/// Heads her lambs.
pub const LAMBS: &str = "Lambs";
/// Says that there are none.
pub const NO_LAMBS: &str = "No lambs noted yet.";
/// Changes her tag.
pub const TAG: &str = "Tag";
/// Notes a remark.
pub const REMARK: &str = "Note";
/// Notes her death.
pub const DIED: &str = "Died";
/// Joins two records.
pub const SAME: &str = "Merge duplicate";
/// Asks which.
pub const SAME_ASK: &str = "Which other record is this ewe?";
/// Says that she is dead.
pub const DEAD: &str = "She is dead. Her record stays.";
/// Heads what can be noted.
pub const NOTE: &str = "Note about her";

/// Folds all else that can be noted.
pub const ALL_NOTES: &str = "Note something else";

/// Returns when she came into the book.
pub fn came(when: &str) -> String {
    format!("in the book since {when}")
}

/// Heads a litter.
pub fn litter(when: &str, lambs: usize) -> String {
    format!("{when}, {}", if lambs == 1 { "one lamb".to_owned() } else { format!("{lambs} lambs") })
}

/// Puts her into a pen.
pub const INTO_PEN: &str = "Into a pen";
/// Lets her out.
pub const OUT_OF_PEN: &str = "Out of the pen";
/// The afterbirth passed.
pub const AFTERBIRTH: &str = "Afterbirth passed";
/// The vet was called.
pub const VET: &str = "Vet called";

/// Returns where she is: "in Pen 2 since 03:10 · in the book since …".
pub fn in_pen(pen: &str, since: &str, came: &str) -> String {
    format!("*{}* since {since} · {}", typed(pen), typed(came))
}

/// Returns what she is: "Cheviot · born 2022 · in the book since …".
pub fn about(breed: Option<String>, born: Option<String>, came: String) -> String {
    let born = born.map(|born| format!("born {born}"));
    breed.into_iter().chain(born).chain([came]).collect::<Vec<_>>().join(" · ")
}

/// Heads her lambings over the years.
pub const HER_YEARS: &str = "Lambings by year";
/// Counts lambs at the side of her chart.
pub const LAMBS_UNIT: &str = "lambs";
/// Names its bars.
pub const BORN: &str = "born";
/// Names its dots.
pub const NOT_LOST: &str = "born alive and not lost";

/// Returns the way to a ewe lamb that was kept: "Kept: Ewe 31".
pub fn kept(ewe: &str) -> String {
    format!("Kept: {ewe}")
}

/// Tells the chart of her lambings in words: "2025: 2 born, 1 not lost. 2026: 1 born, 1 not lost."
pub fn lambings_label(years: &[i32], born: &[usize], alive: &[usize]) -> String {
    let one =
        |((year, born), alive): ((&i32, &usize), &usize)| format!("{year}: {born} born, {alive} not lost.");
    years.iter().zip(born).zip(alive).map(one).collect::<Vec<_>>().join(" ")
}
