//! Whether a bottle lamb can be weaned.

use yeanling_core::reckon::weaning::{Answer, Condition, Met, Verdict};
use yeanling_core::units::System;

use super::common::mass;
use super::practice::weaning_rule;

/// Returns the verdict with its rule's name: "Not yet, by Teagasc’s rule".
pub(crate) fn verdict(answer: &Answer) -> String {
    let said = match answer.verdict {
        Verdict::Ready => "It can be weaned",
        Verdict::NotYet => "Not yet",
        Verdict::Unknown => "Cannot be told yet",
    };
    format!("{said}, by {}", by(answer))
}

fn by(answer: &Answer) -> String {
    let name = weaning_rule(answer.rule).0;
    if name.starts_with("feed maker") { format!("the {name}") } else { name.to_owned() }
}

/// Returns each condition with whether it is met: "Yes: 35 days old".
pub(crate) fn conditions(answer: &Answer, system: System) -> Vec<String> {
    let line = |(condition, met): &(Condition, Met)| format!("{}: {}", word(*met), says(*condition, system));
    answer.conditions.iter().map(line).collect()
}

const fn word(met: Met) -> &'static str {
    match met {
        Met::Yes => "Yes",
        Met::No => "No",
        Met::Unknown => "Not known",
    }
}

fn says(condition: Condition, system: System) -> String {
    match condition {
        Condition::Age { from } => format!("{} days old", from.num_days()),
        Condition::Weight { from: Some(from) } => format!("weighs {}", mass(from, system)),
        Condition::Weight { from: None } => "2.5 times its birth weight, which is not known".to_owned(),
        Condition::Solids => match system {
            System::Metric => "eats 250 g of solids on 3 days running".to_owned(),
            System::Us => "eats 9 oz (250 g) of solids on 3 days running".to_owned(),
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::practice::WeaningRule;
    use yeanling_core::reckon::weaning::{Lamb, wean};
    use yeanling_core::units::{Mass, TimeDelta};

    fn answer(days: i64, birth_weight: Option<f64>, rule: WeaningRule) -> Answer {
        let lamb = Lamb {
            age: TimeDelta::days(days),
            weight: Some(Mass::from_kilograms(10.0)),
            birth_weight: birth_weight.map(Mass::from_kilograms),
            eats_solids: Some(true),
        };
        wean(lamb, rule).expect("in bounds")
    }

    #[test]
    fn a_verdict_names_its_rule() {
        let says = |days, rule| verdict(&answer(days, Some(4.0), rule));
        assert_eq!(says(36, WeaningRule::FeedMaker), "It can be weaned, by the feed maker’s rule");
        assert_eq!(says(30, WeaningRule::Teagasc), "Not yet, by Teagasc’s rule");
        let unknown = verdict(&answer(36, None, WeaningRule::FeedMaker));
        assert_eq!(unknown, "Cannot be told yet, by the feed maker’s rule");
    }

    #[test]
    fn each_condition_says_whether_it_is_met() {
        let lines = conditions(&answer(30, Some(4.0), WeaningRule::FeedMaker), System::Metric);
        assert_eq!(
            lines,
            ["No: 35 days old", "Yes: weighs 10.0 kg", "Yes: eats 250 g of solids on 3 days running"]
        );
        let lines = conditions(&answer(36, None, WeaningRule::FeedMaker), System::Us);
        assert_eq!(lines[1], "Not known: 2.5 times its birth weight, which is not known");
    }
}
