//! Why so much should be on the shelf.

use yeanling_core::reckon::season::shopping::SOURCES;

use super::{Why, cited};
use crate::kit as words;

/// Returns how the kit is reckoned.
pub fn shopping() -> Why {
    Why {
        heading: words::SHELF.to_owned(),
        working: vec![
            "Ewes put to the ram, or all ewes if none are".to_owned(),
            "Expected cases × 1.25, rounded up, × what one case takes, plus one spare".to_owned(),
        ],
        rule: "No amounts per ewe are published: these are a start, from how often help is needed."
            .to_owned(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution: Vec::new(),
    }
}
