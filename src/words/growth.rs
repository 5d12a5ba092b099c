//! How a lamb grows, and how its first day's milk stands, told beside their charts.

use yeanling_core::reckon::growth::Expected;
use yeanling_core::units::{Mass, System};

use super::common::mass;

/// Heads the chart of weights.
pub const TITLE: &str = "Weight since birth";
/// Heads the chart of the first day's milk.
pub const MILK: &str = "Fed by hand against target";
/// Names the line of what was given.
pub const GIVEN: &str = "fed by hand";
/// Names the line of what is wanted.
pub const WANTED: &str = "wanted";
/// Names the line of its weights.
pub const WEIGHTS: &str = "weighed";
/// Names the line to the target.
pub const TARGET: &str = "to 20 kg at 8 weeks";
/// Names the line to the target on a farm in pounds.
pub const TARGET_US: &str = "to 44 lb at 8 weeks";
/// Names the ground between the line and its flag.
pub const BAND: &str = "85 to 100% of it";
/// Says where the line comes from.
pub const SOURCE: &str =
    "No published band by age. The line runs straight from its birth weight to AHDB’s target.";

/// Says that no weight of it is known.
pub const NOT_WEIGHED: &str = "Not weighed yet.";

/// Returns the one weight that is known: "Weighed once: *4.0 kg*, 3 Mar 14:10."
pub fn weighed(mass: &str, when: &str) -> String {
    format!("Weighed once: *{mass}*, {when}.")
}

/// Returns the name of the line to the target.
pub const fn target(system: System) -> &'static str {
    match system {
        System::Metric => TARGET,
        System::Us => TARGET_US,
    }
}

/// Returns how its last weight stands: "10.2 kg at 20 days: 84% of the line. Under 85% it is flagged."
pub fn stands(weight: Mass, days: i64, expected: &Expected, system: System) -> String {
    let share = weight.as_kilograms() / expected.target.as_kilograms() * 100.0;
    let share = super::common::number(share, 0);
    let told = mass(weight, system);
    if weight < expected.flag {
        format!("*{told}* at {days} days: {share}% of the line. *Under 85%*: find out why.")
    } else {
        format!("*{told}* at {days} days: {share}% of the line.")
    }
}

/// Labels a week under the chart of weights.
pub fn weeks(weeks: i64) -> String {
    if weeks == 0 { "born".to_owned() } else { format!("{weeks} wk") }
}

/// Labels the last hour under the chart of the first day.
pub fn hours(hours: i64) -> String {
    format!("{hours} h")
}

/// Tells the chart of the first day in words.
pub fn milk_label(given: &str, wants: &[(i64, String)]) -> String {
    let wants: Vec<String> = wants.iter().map(|(hours, target)| format!("{target} by {hours} h")).collect();
    format!("Chart of the first 24 hours. Given by hand so far: {given}. Wanted: {}.", wants.join(", "))
}

/// Tells the chart of weights in words.
pub fn weight_label(weights: &[(i64, String)], target: &str) -> String {
    let weights: Vec<String> =
        weights.iter().map(|(days, weight)| format!("{weight} at {days} days")).collect();
    format!("Chart of its weight. Weighed: {}. The line goes {target}.", weights.join(", "))
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::growth::expected;
    use yeanling_core::units::TimeDelta;

    #[test]
    fn a_lamb_under_its_flag_is_told_so() {
        let at =
            expected(Mass::from_kilograms(4.0), TimeDelta::days(28)).expect("a weight").expect("in time");
        let says = |kilograms| stands(Mass::from_kilograms(kilograms), 28, &at, System::Metric);
        assert_eq!(says(12.0), "*12.0 kg* at 28 days: 100% of the line.");
        assert!(says(10.0).ends_with("83% of the line. *Under 85%*: find out why."));
    }
}
