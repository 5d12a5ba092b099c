//! What the words of a ewe's record count.

use yeanling_core::reckon::flock_figures::SOURCES;

use super::{Why, cited};

/// What counts as lost, on every screen.
pub(super) const LOST: &str =
    "Lost: born alive and dead before weaning. With no weaning noted, before 120 days.";

/// Returns what each word of a record counts.
pub fn record() -> Why {
    Why {
        heading: crate::cull_rules::RECORD.to_owned(),
        working: vec![
            LOST.to_owned(),
            "Reared: weaned, or alive at six weeks and not lost since.".to_owned(),
            "Weight reared: each lamb’s weight nearest to its weaning, or to 90 days.".to_owned(),
            "Season without lambs: she was put to the ram for it and can no longer lamb to it.".to_owned(),
        ],
        rule: String::new(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution: Vec::new(),
    }
}
