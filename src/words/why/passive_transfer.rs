//! What a reading of serum suggests.

use yeanling_core::reckon::passive_transfer::{Reading, SOURCES};

use super::{Why, cited, general};
use crate::bag::suggests;
use crate::common::number;

/// Returns what stands behind a reading of serum.
pub fn passive_transfer(reading: &Reading) -> Why {
    let grams = number(reading.serum.as_grams_per_liter(), 2);
    let mut caution = vec!["This is a hint, not a diagnosis. Show it to your vet.".to_owned()];
    if reading.early {
        caution.insert(
            0,
            "Taken before 24 h of age: do not go by the marks, which are for 24 h or later.".to_owned(),
        );
    }
    caution.extend(general());
    Why {
        heading: "Antibody in the blood".to_owned(),
        working: vec![
            "Marks: 15, 9.98 and 1.93 g/L".to_owned(),
            format!("{grams} g/L {}", suggests(reading.suggests)),
        ],
        rule: "Under 15 g/L at 24 h suggests that too little got through.".to_owned(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::passive_transfer::reading;
    use yeanling_core::units::{Strength, TimeDelta};

    #[test]
    fn a_reading_suggests_and_is_no_diagnosis() {
        let low = reading(Strength::from_grams_per_liter(12.0), TimeDelta::hours(20)).expect("in bounds");
        let why = passive_transfer(&low);
        assert_eq!(why.working[1], "12 g/L suggests that too little got through");
        assert!(why.caution[0].starts_with("Taken before 24 h"));
        assert!(why.caution[1].contains("not a diagnosis"));
    }
}
