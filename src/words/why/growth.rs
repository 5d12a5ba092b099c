//! Why a lamb's weight is called on the line or under it.

use yeanling_core::reckon::growth::{Expected, SOURCES};
use yeanling_core::units::{Mass, System, TimeDelta};

use super::{Why, cited, general};
use crate::common::mass;
use crate::growth;

/// Returns why this weight stands where it does against the eight-week target.
pub fn growth(birth_weight: Mass, weight: Mass, age: TimeDelta, at: &Expected, system: System) -> Why {
    let told = |one| mass(one, system);
    Why {
        heading: growth::TITLE.to_owned(),
        working: vec![
            format!("From {} at birth, straight {}", told(birth_weight), growth::target(system)),
            format!(
                "At {} days: {} on the line, {} at its flag",
                age.num_days(),
                told(at.target),
                told(at.flag)
            ),
            growth::stands(weight, age.num_days(), at, system),
        ],
        rule: "20 kg (44 lb) at eight weeks; flagged under 85%.".to_owned(),
        sources: cited(SOURCES),
        others: vec![growth::SOURCE.to_owned()],
        caution: general(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::growth::expected;

    #[test]
    fn the_working_names_the_line_and_its_flag() {
        let (born, age) = (Mass::from_kilograms(4.0), TimeDelta::days(28));
        let at = expected(born, age).expect("a weight").expect("in time");
        let why = growth(born, Mass::from_kilograms(11.0), age, &at, System::Metric);
        assert_eq!(why.working[1], "At 28 days: 12.0 kg on the line, 10.2 kg at its flag");
    }
}
