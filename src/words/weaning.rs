//! Whether a bottle lamb can be weaned.

use yeanling_core::reckon::weaning::{Condition, Met, Verdict, WeaningAnswer};
use yeanling_core::units::System;

use super::common::mass;
use super::settings::weaning_rule;

/// Heads weaning.
pub const TITLE: &str = "Weaning";
/// Opens the sheet of solid feed.
pub const SOLIDS: &str = "Solids eaten";
/// Opens the sheet of the weight.
pub const WEIGH: &str = "Weigh it";
/// Notes that it was weaned.
pub const WEANED: &str = "Weaned";
/// Asks for a day's solid feed.
pub const SOLIDS_ASK: &str = "How much solid feed in the last 24 hours?";
/// Labels a day's solid feed.
pub const SOLIDS_LABEL: &str = "Solid feed";

/// Asks about solids.
pub const EATS_ASK: &str = "250 g (9 oz) of solids, 3 days running";
/// It does.
pub const EATS: &str = "Yes";
/// It does not.
pub const EATS_NOT: &str = "Not yet";
/// Nobody knows.
pub const EATS_UNKNOWN: &str = "Not known";
/// What to type first.
pub const TYPE_DAYS: &str = "Enter its age in days to see the verdict.";
/// Labels the rule.
pub const RULE: &str = "Rule";

/// Returns what helps with a day's solid feed.
pub const fn solids_hint(system: System) -> &'static str {
    match system {
        System::Metric => "Creep or starter feed, in grams. The rule asks for 250 g on three days running.",
        System::Us => "Creep or starter feed, in ounces. The rule asks for 9 oz on three days running.",
    }
}

/// Returns the unit of a day's solid feed, as a feed scale reads.
pub const fn solids_unit(system: System) -> &'static str {
    match system {
        System::Metric => "g",
        System::Us => "oz",
    }
}

/// Returns a typed amount of feed with grams or ounces behind a bare number, as a feed scale reads.
pub fn with_unit(typed: &str, system: System) -> String {
    let bare = !typed.trim().is_empty() && !typed.contains(char::is_alphabetic);
    match (bare, system) {
        (true, System::Metric) => format!("{typed} g"),
        (true, System::Us) => format!("{typed} oz"),
        (false, _) => typed.to_owned(),
    }
}

/// Returns each condition with whether it is met, and what is known of the lamb: "*Not yet:* 35 days old. It is 31."
pub fn checks(answer: &WeaningAnswer, system: System) -> Vec<(Option<bool>, String)> {
    let line = |(condition, met): &(Condition, Met)| {
        let (known, word) = match met {
            Met::Yes => (Some(true), "Yes"),
            Met::No => (Some(false), "Not yet"),
            Met::Unknown => (None, "Not known"),
        };
        let now = now(*condition, answer, system);
        (known, format!("*{word}:* {}{now}", says(*condition, system)))
    };
    answer.conditions.iter().map(line).collect()
}

/// Returns what the lamb has of a condition: " · it is 31".
fn now(condition: Condition, answer: &WeaningAnswer, system: System) -> String {
    let lamb = &answer.lamb;
    match condition {
        Condition::Age { .. } => format!(" · it is {}", lamb.age.num_days()),
        Condition::Weight { .. } => match lamb.weight {
            Some(weight) => format!(" · it weighs {}", mass(weight, system)),
            None => " · no weight of the last 4 days".to_owned(),
        },
        Condition::Solids => String::new(),
    }
}

/// Returns the verdict with its rule's name: "Not yet, by Teagasc’s rule".
pub fn verdict(answer: &WeaningAnswer) -> String {
    let said = match answer.verdict {
        Verdict::Ready => "Ready to wean",
        Verdict::NotYet => "Not yet",
        Verdict::Unknown => "Not enough known yet",
    };
    format!("{said}, by {}", by(answer))
}

fn by(answer: &WeaningAnswer) -> String {
    let name = weaning_rule(answer.rule).0;
    if name.starts_with("feed maker") { format!("the {name}") } else { name.to_owned() }
}

/// Returns each condition with whether it is met: "Yes: 35 days old".
pub fn conditions(answer: &WeaningAnswer, system: System) -> Vec<String> {
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
        Condition::Weight { from: None } => "2.5 times its birth weight (not known)".to_owned(),
        Condition::Solids => match system {
            System::Metric => "eats 250 g of solids on 3 days running".to_owned(),
            System::Us => "eats 9 oz (250 g) of solids on 3 days running".to_owned(),
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::weaning::{Lamb, wean};
    use yeanling_core::settings::WeaningRule;
    use yeanling_core::units::{Mass, TimeDelta};

    fn answer(days: i64, birth_weight: Option<f64>, rule: WeaningRule) -> WeaningAnswer {
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
        assert_eq!(says(36, WeaningRule::FeedMaker), "Ready to wean, by the feed maker’s rule");
        assert_eq!(says(30, WeaningRule::Teagasc), "Not yet, by Teagasc’s rule");
        let unknown = verdict(&answer(36, None, WeaningRule::FeedMaker));
        assert_eq!(unknown, "Not enough known yet, by the feed maker’s rule");
    }

    #[test]
    fn each_condition_says_whether_it_is_met() {
        let lines = conditions(&answer(30, Some(4.0), WeaningRule::FeedMaker), System::Metric);
        assert_eq!(
            lines,
            ["No: 35 days old", "Yes: weighs 10.0 kg", "Yes: eats 250 g of solids on 3 days running"]
        );
        let lines = conditions(&answer(36, None, WeaningRule::FeedMaker), System::Us);
        assert_eq!(lines[1], "Not known: 2.5 times its birth weight (not known)");
        let checks = checks(&answer(30, Some(4.0), WeaningRule::FeedMaker), System::Metric);
        assert_eq!(checks[0], (Some(false), "*Not yet:* 35 days old · it is 30".to_owned()));
        assert_eq!(checks[1].1, "*Yes:* weighs 10.0 kg · it weighs 10.0 kg");
    }

    #[test]
    fn a_bare_amount_of_feed_is_grams_or_ounces() {
        assert_eq!(with_unit("250", System::Metric), "250 g");
        assert_eq!(with_unit("9", System::Us), "9 oz");
        assert_eq!(with_unit("0.25 kg", System::Us), "0.25 kg");
        assert_eq!(with_unit(" ", System::Us), " ");
    }
}
