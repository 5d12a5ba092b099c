//! Why a bottle lamb can or cannot be weaned yet.

use yeanling_core::reckon::weaning::{RULES, SOURCES, WeaningAnswer, source, wean};
use yeanling_core::units::System;

use super::{Why, cited, general, headings, source_line};
use crate::weaning::{conditions, verdict};

/// Returns why a lamb can or cannot be weaned yet.
pub fn weaning(answer: &WeaningAnswer, system: System) -> Why {
    let mut working = conditions(answer, system);
    working.push(verdict(answer));
    let others = RULES
        .into_iter()
        .filter(|rule| *rule != answer.rule)
        .filter_map(|rule| wean(answer.lamb, rule).ok())
        .map(|other| verdict(&other))
        .collect();
    Why {
        heading: headings::WEANING.to_owned(),
        working,
        rule: format!("{}. Not known counts as not met.", source_line(&source(answer.rule))),
        sources: cited(SOURCES),
        others,
        caution: general(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::weaning::Lamb;
    use yeanling_core::settings::WeaningRule;
    use yeanling_core::units::{Mass, TimeDelta};

    #[test]
    fn each_rule_has_its_own_verdict() {
        let lamb = Lamb {
            age: TimeDelta::days(36),
            weight: Some(Mass::from_kilograms(9.5)),
            birth_weight: Some(Mass::from_kilograms(4.0)),
            eats_solids: Some(true),
        };
        let why = weaning(&wean(lamb, WeaningRule::FeedMaker).expect("in bounds"), System::Metric);
        assert_eq!(
            why.working,
            [
                "Yes: 35 days old",
                "No: weighs 10.0 kg",
                "Yes: eats 250 g of solids on 3 days running",
                "Not yet, by the feed maker’s rule",
            ]
        );
        assert_eq!(why.others, ["Ready to wean, by Teagasc’s rule", "Ready to wean, by the four-week rule"]);
    }
}
