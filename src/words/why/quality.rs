//! Why a bag of colostrum is called good, and what a feed of it brings.

use yeanling_core::reckon::quality::{
    self, GOOD_ANTIBODY, Keeps, Reading, SOURCES, Store, freezer_life, percent_of_wanted,
};
use yeanling_core::settings::FreezerLife;
use yeanling_core::units::{Strength, System, Volume};

use super::{Why, cited, general, told};
use crate::bag::{self, THAWING, brix as verdict, keeps};
use crate::common::{number, span};

/// Returns why a Brix reading comes to its verdict.
pub fn brix(reading: &Reading) -> Why {
    Why {
        heading: "Colostrum, Brix".to_owned(),
        working: vec![verdict(reading)],
        rule: "A ewe’s colostrum is good at 26.5% Brix or more.".to_owned(),
        sources: cited(SOURCES),
        others: vec![
            "For a cow’s, 22% is about 50 g/L. That mark is not for ewes.".to_owned(),
            "As antibody: 20 g/L is good (Kessler et al. 2021); older targets are 50 and 60 g/L.".to_owned(),
        ],
        caution: general(),
    }
}

/// Returns why a reading of antibody comes to its verdict.
pub fn antibody(strength: Strength) -> Why {
    Why {
        heading: "Colostrum, antibody".to_owned(),
        working: vec![bag::antibody(strength, strength >= GOOD_ANTIBODY)],
        rule: "A ewe’s colostrum is good at 20 g/L or more (Kessler et al. 2021).".to_owned(),
        sources: cited(SOURCES),
        others: vec!["Older targets are 50 and 60 g/L.".to_owned()],
        caution: general(),
    }
}

/// Returns what a feed of this volume and strength brings.
pub fn antibody_in(volume: Volume, strength: Strength, system: System) -> Why {
    let brings = quality::antibody(volume, strength);
    let grams = number(brings.as_kilograms() * 1000.0, 1);
    let share = number(percent_of_wanted(brings), 0);
    Why {
        heading: "Antibody in this feed".to_owned(),
        working: vec![
            format!(
                "{} × {} g/L = {grams} g",
                told(volume, system),
                number(strength.as_grams_per_liter(), 1)
            ),
            format!("{grams} g is {share}% of the 30 g needed in the first 24 h"),
        ],
        rule: "Volume times strength.".to_owned(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution: general(),
    }
}

/// Returns why a bag still serves or does not.
pub fn bag(cull_rules: Keeps, store: Store, life: FreezerLife) -> Why {
    let rule = match store {
        Store::Freezer => {
            format!("Frozen colostrum keeps {} (your farm’s choice).", span(freezer_life(life)))
        }
        Store::Fridge => "Colostrum keeps 2 days in a fridge (SRUC).".to_owned(),
    };
    let mut caution: Vec<String> = THAWING.iter().map(|line| (*line).to_owned()).collect();
    caution.extend(general());
    Why {
        heading: "How old is this bag?".to_owned(),
        working: vec![keeps(cull_rules, store)],
        rule,
        sources: cited(SOURCES),
        others: vec![
            "Ozarks Farm: 6 months. WikiVet and common practice: 1 year. SRUC: 2 years at −18 °C (0 °F)."
                .to_owned(),
        ],
        caution,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::quality::{bag as age_of, reading};
    use yeanling_core::units::{Brix, TimeDelta};

    #[test]
    fn a_feed_says_its_share_of_30_grams() {
        let strength = Strength::from_grams_per_liter(50.0);
        let why = antibody_in(Volume::from_milliliters(250.0), strength, System::Metric);
        let expected = ["250 ml × 50 g/L = 12.5 g", "12.5 g is 42% of the 30 g needed in the first 24 h"];
        assert_eq!(why.working, expected);
    }

    #[test]
    fn the_cows_mark_is_among_the_others() {
        let why = brix(&reading(Brix::from_percent(24.0)).expect("in bounds"));
        assert!(why.others[0].contains("is not for ewes"));
    }

    #[test]
    fn a_bag_tells_how_it_is_thawed() {
        let (store, life) = (Store::Freezer, FreezerLife::OneYear);
        let why = bag(age_of(TimeDelta::days(10), store, life), store, life);
        assert_eq!(why.rule, "Frozen colostrum keeps 365 days (your farm’s choice).");
        assert!(why.caution.iter().any(|line| line.contains("microwave")));
    }
}
