//! Why this much powder until weaning.

use yeanling_core::reckon::powder::{Plan, RULES, SOURCES, for_one_lamb};
use yeanling_core::units::{Mass, System};

use super::{Why, cited, general};
use crate::common::mass;
use crate::powder::range;
use crate::settings::powder_rule;

/// Returns why these lambs need this much powder.
pub fn powder(plan: &Plan, system: System) -> Why {
    let lambs = if plan.lambs == 1 { "lamb" } else { "lambs" };
    let others = RULES
        .into_iter()
        .filter(|rule| *rule != plan.rule)
        .map(|rule| {
            let (least, most) = for_one_lamb(rule);
            let all = |one: Mass| Mass::from_kilograms(one.as_kilograms() * f64::from(plan.lambs));
            format!("{}: {} for all", powder_rule(rule).0, range((all(least), all(most)), system))
        })
        .collect();
    Why {
        heading: "Powder until weaning".to_owned(),
        working: vec![
            format!("{} {lambs} × {} = {}", plan.lambs, range(plan.each, system), range(plan.total, system)),
            format!("Less {} used = {} still wanted", mass(plan.used, system), range(plan.left, system)),
        ],
        rule: format!("By {}.", powder_rule(plan.rule).0),
        sources: cited(SOURCES),
        others,
        caution: general(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::powder::plan;
    use yeanling_core::settings::PowderRule;

    #[test]
    fn the_working_counts_the_lambs_and_what_was_used() {
        let plan = plan(3, PowderRule::NewZealand, Mass::from_kilograms(5.0)).expect("a plan");
        let why = powder(&plan, System::Metric);
        assert_eq!(why.working, ["3 lambs × 7.0 kg = 21.0 kg", "Less 5.0 kg used = 16.0 kg still wanted"]);
        assert_eq!(why.others.len(), 2);
        assert!(why.others[0].ends_with("20.4 kg to 27.3 kg for all"), "{:?}", why.others);
    }
}
