//! Why a plan comes to what it does.

use yeanling_core::reckon::season::{budget, feed_groups, mating, pens};
use yeanling_core::seasons::{HAY_SHARE, UP_FROM};

use super::{Why, cited};
use crate::common::number;
use crate::what_if as words;

/// Returns how a season is planned back from its lambs.
pub fn what_if() -> Why {
    let sources = [mating::SOURCES, pens::SOURCES, budget::SOURCES, feed_groups::SOURCES].concat();
    Why {
        heading: words::RESULT.to_owned(),
        working: vec![
            "First lambs: ram in + 142 days. Last: ram out + 152 days, more where your breed carries longer"
                .to_owned(),
            "Nights and pens: as on Season, with your own conception rate and litters once they are known"
                .to_owned(),
            format!("Nights to be up: a lambing likely {} of the time or more", words::up_from(UP_FROM)),
            format!(
                "Hay: {}% of a ewe’s weight a day, waste included, over the days in the barn",
                number(HAY_SHARE * 100.0, 0)
            ),
        ],
        rule: "About 98 in 100 lamb between the first and the last day.".to_owned(),
        sources: cited(&sources),
        others: Vec::new(),
        caution: Vec::new(),
    }
}
