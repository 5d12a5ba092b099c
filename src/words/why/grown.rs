//! Why an adjusted weight is what it is.

use yeanling_core::reckon::adjusted_weight::SOURCES;
use yeanling_core::reckon::gain;

use super::{Why, cited};

/// Returns how gains and adjusted weights are worked out.
pub fn grown() -> Why {
    let mut sources = cited(SOURCES);
    sources.extend(cited(gain::SOURCES));
    Why {
        heading: crate::weighing::GROWN.to_owned(),
        working: vec![
            "Gain: weight less birth weight, over the days between.".to_owned(),
            "The weight nearest to the age counts: within 7 days of 30 or 60, within 28 of 90 or 120. A later one \
             changes nothing."
                .to_owned(),
            "Adjusted: birth weight + gain a day × 30, 60, 90 or 120 days, × dam’s age × sex × litter.".to_owned(),
            "Dam of one year 1.14, two 1.08, three to six 1, older 1.05. Ewe lamb 1, wether 0.97, ram 0.91.".to_owned(),
            "Born and reared: single 1; twin as twin 1.21, as single 1.11; triplet as triplet 1.36, as twin 1.29, as \
             single 1.19; single as twin 1.17."
                .to_owned(),
        ],
        rule: "Lags: under 85% of the line to 20 kg at eight weeks, or of the mean of lambs like it.".to_owned(),
        sources,
        others: vec!["No factor when the dam’s age or the sex is not known.".to_owned()],
        caution: Vec::new(),
    }
}
