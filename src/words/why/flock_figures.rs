//! Why the season's figures are what they are.

use yeanling_core::reckon::flock_figures::{
    Figures, GOAL_LOSS, GOOD_FERTILITY, GOOD_WEANING, Mark, SOURCES, Share, USUAL_LOSS,
};

use super::record::LOST;
use super::{Why, cited};
use crate::common::number;
use crate::year;

/// Whom the rates per ewe count.
const ONLY_PUT: &str =
    "Put to the ram: in a group with a ram on days that fit these births. Their rates count no other ewe.";

/// Returns how each figure of a season is made, and what is printed of others.
pub fn flock_figures(figures: &Figures) -> Why {
    let told = |name: &str, share: Option<Share>| {
        share.map(|share| format!("{name}: {} = {}", year::of(share), year::percent(share).replace('*', "")))
    };
    let working = [
        told(year::FERTILITY, figures.fertility),
        told(year::LAMBING, figures.lambing),
        told(year::PROLIFICACY, figures.prolificacy),
        told(year::STILLBIRTH, figures.stillbirth),
        told(year::LOSS, figures.loss),
        told(year::WEANED, figures.weaning),
    ];
    Why {
        heading: year::FLOCK.to_owned(),
        working: working.into_iter().flatten().chain([LOST.to_owned(), ONLY_PUT.to_owned()]).collect(),
        rule: "Every rate says what it is a share of. Births less than 90 days apart are one season."
            .to_owned(),
        sources: cited(SOURCES),
        others: vec![
            mark("Of ewes put to the ram, lambed", GOOD_FERTILITY),
            mark("Reared per 100 ewes put to the ram, indoors", GOOD_WEANING),
            mark("Died before weaning, the goal", GOAL_LOSS),
            mark("Died before weaning, usual", USUAL_LOSS),
        ],
        caution: Vec::new(),
    }
}

fn mark(name: &str, mark: Mark) -> String {
    format!("{name}: {} to {}% ({})", number(mark.from, 0), number(mark.to, 0), mark.by)
}
