//! How much powder until weaning, and whether what is there will do.

use yeanling_core::reckon::powder::Plan;
use yeanling_core::units::{Mass, System};

use super::common::mass;
use super::settings::powder_rule;

/// Heads the plan.
pub const TITLE: &str = "Powder until weaning";
/// Labels the number of lambs.
pub const LAMBS: &str = "Lambs";
/// Labels the powder in store.
pub const STOCK: &str = "Powder in store";
/// Helps with the powder in store.
pub const STOCK_HINT: &str = "Leave it blank if not known.";
/// Labels the answer.
pub const WANTED: &str = "Still needed";

/// Returns the least and the most: "20.4 kg to 27.3 kg", or one figure when they are the same.
pub fn range((least, most): (Mass, Mass), system: System) -> String {
    let told = |mass: Mass| match system {
        System::Metric => format!("{:.1} kg", mass.as_kilograms()),
        System::Us => format!("{:.1} lb", mass.as_pounds()),
    };
    if least < most { format!("{} to {}", told(least), told(most)) } else { told(least) }
}

/// Returns by whose rule, and what was used: "By NDSU …. Used so far: 0.4 kg."
pub fn by(plan: &Plan, system: System) -> String {
    let rule = powder_rule(plan.rule).0;
    if plan.used.as_kilograms() > 0.0 {
        format!("By {rule}, a lamb. Used so far, by the feeds noted: {}.", mass(plan.used, system))
    } else {
        format!("By {rule}, a lamb.")
    }
}

/// Returns whether what is in store will do.
pub fn against(plan: &Plan, stock: Mass, system: System) -> String {
    let short = |wanted: Mass| Mass::from_kilograms((wanted.as_kilograms() - stock.as_kilograms()).max(0.0));
    let (least, most) = plan.left;
    if stock >= most {
        format!("*Enough*: {} in store.", mass(stock, system))
    } else if stock >= least {
        format!(
            "*Enough for the low estimate*; {} short for the high one.",
            range((short(most), short(most)), system)
        )
    } else {
        format!("*Short of {}.* Buy before it runs out.", range((short(least), short(most)), system))
    }
}

/// Returns what is wrong with a number of lambs that is none.
pub fn not_lambs(given: &str) -> String {
    format!("“{given}” is not a number of lambs. Type it like 3.")
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::powder::plan;
    use yeanling_core::settings::PowderRule;

    fn kg(kilograms: f64) -> Mass {
        Mass::from_kilograms(kilograms)
    }

    #[test]
    fn a_store_is_enough_or_short_by_the_spread() {
        let plan = plan(3, PowderRule::Ndsu, kg(0.0)).expect("in bounds");
        let says = |stock| against(&plan, kg(stock), System::Metric);
        assert_eq!(range(plan.left, System::Metric), "20.4 kg to 27.3 kg");
        assert_eq!(says(30.0), "*Enough*: 30.0 kg in store.");
        assert_eq!(says(22.0), "*Enough for the low estimate*; 5.3 kg short for the high one.");
        assert_eq!(says(10.0), "*Short of 10.4 kg to 17.3 kg.* Buy before it runs out.");
    }
}
