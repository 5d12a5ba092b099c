//! A bag of colostrum: whether it is good, whether it still serves, how to thaw it.
#![cfg_attr(not(test), expect(dead_code, reason = "the screen of the colostrum bag comes after its words"))]

use yeanling_core::reckon::passive_transfer::Suggests;
use yeanling_core::reckon::quality::{Grade, Keeps, Origin, Reading, Store, Thaw};

use super::common::{number, span};

/// Returns what a Brix reading comes to.
pub(crate) fn brix(reading: &Reading) -> String {
    let read = number(reading.brix.as_percent(), 1);
    match reading.grade {
        Grade::Good => format!("{read} % Brix: good ewe colostrum."),
        Grade::Poor if reading.only_by_the_cows_mark => {
            format!("{read} % Brix: poor for a ewe, under 26.5. The cow’s mark of 22 does not carry over.")
        }
        Grade::Poor => format!("{read} % Brix: poor, under 26.5."),
    }
}

/// Returns whether a bag still serves.
pub(crate) fn keeps(keeps: Keeps, store: Store) -> String {
    let place = match store {
        Store::Freezer => "freezer",
        Store::Fridge => "fridge",
    };
    match keeps {
        Keeps::Still(left) if left.num_hours() < 24 => {
            format!("Use it today: its time in the {place} is nearly up.")
        }
        Keeps::Still(left) => format!("Good for {} more in the {place}.", span(left)),
        Keeps::Past(by) => format!("Too old for the {place}, by {}. Use another.", span(by)),
    }
}

/// How a bag is thawed, a line a step.
pub(crate) const THAWING: &[&str] = &[
    "Thaw it in warm water, at most 45 °C (113 °F). SRUC allows up to 60 °C (140 °F).",
    "Never in a microwave.",
    "Feed it at 39 °C (102 °F).",
];

/// Returns whether water is right for thawing.
pub(crate) const fn thaw(thaw: Thaw) -> &'static str {
    match thaw {
        Thaw::Right => "Right for thawing.",
        Thaw::Split => "Warmer than the strictest source allows. Add cold water.",
        Thaw::TooHot => "Too hot. Add cold water.",
    }
}

/// Returns where colostrum comes from.
pub(crate) const fn origin(origin: Origin) -> &'static str {
    match origin {
        Origin::OwnDam => "its own ewe",
        Origin::SameFlock => "another ewe of this flock",
        Origin::OtherFlock => "a ewe of another flock",
        Origin::GoatOrCow => "a goat or a cow",
        Origin::Powder => "powder",
    }
}

/// Returns what antibody in the blood suggests; it is no diagnosis.
pub(crate) const fn suggests(suggests: Suggests) -> &'static str {
    match suggests {
        Suggests::Enough => "suggests that enough got through",
        Suggests::TooLittle => "suggests that too little got through",
        Suggests::IllnessLikelier => "suggests that too little got through, and illness is likelier",
        Suggests::DeathLikelier => "suggests that too little got through, and death is likelier",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::practice::FreezerLife;
    use yeanling_core::reckon::quality::{bag, reading};
    use yeanling_core::units::{Brix, TimeDelta};

    #[test]
    fn a_cows_mark_is_said_not_to_carry_over() {
        let says = |percent| brix(&reading(Brix::from_percent(percent)).expect("in bounds"));
        assert_eq!(says(26.5), "26.5 % Brix: good ewe colostrum.");
        let cow = "24 % Brix: poor for a ewe, under 26.5. The cow’s mark of 22 does not carry over.";
        assert_eq!(says(24.0), cow);
        assert_eq!(says(18.0), "18 % Brix: poor, under 26.5.");
    }

    #[test]
    fn a_bag_says_how_long_it_still_serves() {
        let says = |days, store| keeps(bag(TimeDelta::days(days), store, FreezerLife::OneYear), store);
        assert_eq!(says(300, Store::Freezer), "Good for 65 days more in the freezer.");
        assert_eq!(says(365, Store::Freezer), "Use it today: its time in the freezer is nearly up.");
        assert_eq!(says(5, Store::Fridge), "Too old for the fridge, by 3 days. Use another.");
    }

    #[test]
    fn water_that_is_too_warm_is_cooled() {
        assert_eq!(thaw(Thaw::Right), "Right for thawing.");
        assert!([Thaw::Split, Thaw::TooHot].map(thaw).iter().all(|line| line.ends_with("Add cold water.")));
    }

    #[test]
    fn where_colostrum_comes_from_is_told_best_first() {
        let told = Origin::ALL.map(origin);
        assert_eq!((told[0], told[4]), ("its own ewe", "powder"));
    }

    #[test]
    fn blood_suggests_and_never_says() {
        for one in [Suggests::Enough, Suggests::TooLittle, Suggests::IllnessLikelier, Suggests::DeathLikelier]
        {
            assert!(suggests(one).starts_with("suggests"));
        }
    }
}
