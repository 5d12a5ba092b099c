//! Why a ram is said to differ from the others, or not.

use yeanling_core::reckon::fisher::SOURCES;
use yeanling_core::reckon::season::cycles;

use super::{Why, cited};

/// Returns how rams are held against each other.
pub fn rams() -> Why {
    let mut sources = cited(SOURCES);
    sources.extend(cited(cycles::SOURCES));
    Why {
        heading: crate::rams::BY_RAM.to_owned(),
        working: vec![
            "A ram’s lambs: those of ewes that were with him, and no other, on days that fit.".to_owned(),
            "First cycle: ewes lambing within 20 days of his first, of those put to him.".to_owned(),
            "Gains: lambs reared at a ewe, by the weight nearest to the age above.".to_owned(),
            super::record::LOST.to_owned(),
        ],
        rule: "Each ram against all others together, by Fisher’s exact test. Named: what chance \
               alone does 5 times in 100 at most, by the number of rams."
            .to_owned(),
        sources,
        others: vec!["Groups on other ground or feed differ for that, whoever the ram is.".to_owned()],
        caution: Vec::new(),
    }
}
