//! A bag of colostrum: whether it is good, whether it still serves, how to thaw it.

use yeanling_core::reckon::passive_transfer::{self, Suggests};
use yeanling_core::reckon::quality::{Grade, Keeps, Origin, Reading, Store, Thaw};
use yeanling_core::settings::FreezerLife;

use yeanling_core::units::Strength;

use super::common::{number, span};
use super::settings::freezer_life;

/// Heads how good it is.
pub const GOOD: &str = "Is it good?";
/// Labels the Brix reading.
pub const BRIX: &str = "Brix";
/// Helps with the Brix reading.
pub const BRIX_HINT: &str = "From a refractometer. It grades; it does not count grams.";
/// Labels the antibody.
pub const ANTIBODY: &str = "Antibody in it";
/// Helps with the antibody.
pub const ANTIBODY_HINT: &str = "If a laboratory measured it, or the packet says so.";
/// Labels the volume.
pub const VOLUME: &str = "This feed";
/// Says what is missing for the feed.
pub const WANTS_ANTIBODY: &str = "Enter the antibody in a liter to see the grams in this feed.";
/// Labels the antibody of a feed.
pub const IN_FEED: &str = "Antibody in this feed";
/// Heads how old it is.
pub const OLD: &str = "How old is it?";
/// Asks where it lies.
pub const WHERE: &str = "Where it lies";
/// A freezer.
pub const FREEZER: &str = "Freezer";
/// A fridge.
pub const FRIDGE: &str = "Fridge";
/// Labels the day it was filled.
pub const FILLED: &str = "Put in on";
/// Says that there is no such day.
pub const NO_DAY: &str = "That is not a date. Enter day, month and year.";
/// Says that the day is still to come.
pub const DAY_TO_COME: &str = "That day is in the future. Enter the day it was put in.";
/// Heads thawing.
pub const THAW: &str = "Thaw it";
/// Labels the water.
pub const WATER: &str = "Water for thawing";
/// Heads where it comes from.
pub const NONE_THERE: &str = "When the ewe has none, best first";
/// Who says so.
pub const ORIGIN_SOURCE: &str = "Order of choice: SRUC.";
/// Heads the blood.
pub const BLOOD: &str = "Did it get through?";
/// Labels the serum.
pub const SERUM: &str = "Antibody (IgG) in the lamb’s serum";
/// Helps with the serum.
pub const SERUM_HINT: &str = "From a blood sample that your vet took.";
/// Asks when the blood was taken.
pub const TAKEN: &str = "Blood taken";
/// From a day on.
pub const FROM_24: &str = "at 24 h or later";
/// Earlier.
pub const BEFORE_24: &str = "before 24 h";

/// Returns a sentence with its verdict in bold: what stands behind a reading's colon, or all of it.
pub fn bold(said: &str) -> String {
    match said.split_once(": ") {
        Some((read, verdict)) => format!("{read}: *{verdict}*"),
        None => format!("*{said}*"),
    }
}

/// Returns what antibody in a liter comes to.
pub fn antibody(strength: Strength, good: bool) -> String {
    let read = number(strength.as_grams_per_liter(), 1);
    if good {
        format!("{read} g/L: good (20 or more). Older targets are 50 and 60.")
    } else {
        format!("{read} g/L: poor, under 20.")
    }
}

/// Returns how much of the day's antibody a feed brings.
pub fn share(percent: f64) -> String {
    format!("{}% of the 30 g wanted in 24 h", number(percent, 0))
}

/// Returns what another freezer life says: "2 years (SRUC …): still good".
pub fn by_other(life: FreezerLife, good: bool) -> String {
    let (name, who) = freezer_life(life);
    format!("By {name} ({who}): {}.", if good { "still good" } else { "too old" })
}

/// Returns what a reading of serum suggests: "12 g/L *suggests that …*".
pub fn blood(reading: &passive_transfer::Reading) -> String {
    let read = number(reading.serum.as_grams_per_liter(), 2);
    let early = if reading.early { " Taken early: the marks are for 24 h or later." } else { "" };
    format!(
        "{read} g/L *{}*. This is not a diagnosis: show it to your vet.{early}",
        suggests(reading.suggests)
    )
}

/// Returns what a Brix reading comes to.
pub fn brix(reading: &Reading) -> String {
    let read = number(reading.brix.as_percent(), 1);
    match reading.grade {
        Grade::Good => format!("{read}% Brix: good ewe colostrum."),
        Grade::Poor if reading.only_by_the_cows_mark => {
            format!("{read}% Brix: poor for a ewe, under 26.5. The mark of 22 is for cows only.")
        }
        Grade::Poor => format!("{read}% Brix: poor, under 26.5."),
    }
}

/// Returns whether a bag still serves.
pub fn keeps(keeps: Keeps, store: Store) -> String {
    let place = match store {
        Store::Freezer => "freezer",
        Store::Fridge => "fridge",
    };
    match keeps {
        Keeps::Still(left) if left.num_hours() < 24 => {
            format!("Use it today: its time in the {place} is almost over.")
        }
        Keeps::Still(left) => format!("Good for {} more in the {place}.", span(left)),
        Keeps::Past(by) => format!("Too old for the {place}, by {}. Use another.", span(by)),
    }
}

/// How a bag is thawed, a line a step.
pub const THAWING: &[&str] = &[
    "Thaw it in warm water, at most 45 °C (113 °F). SRUC allows up to 60 °C (140 °F).",
    "Never in a microwave.",
    "Feed it at 39 °C (102 °F).",
];

/// Returns whether water is right for thawing.
pub const fn thaw(thaw: Thaw) -> &'static str {
    match thaw {
        Thaw::Right => "Right for thawing.",
        Thaw::Split => "Hotter than the strictest source allows. Add cold water.",
        Thaw::TooHot => "Too hot. Add cold water.",
    }
}

/// Returns where colostrum comes from.
pub const fn origin(origin: Origin) -> &'static str {
    match origin {
        Origin::OwnDam => "its own ewe",
        Origin::SameFlock => "another ewe of this flock",
        Origin::OtherFlock => "a ewe of another flock",
        Origin::GoatOrCow => "a goat or a cow",
        Origin::Powder => "powder",
    }
}

/// Returns what antibody in the blood suggests; it is no diagnosis.
pub const fn suggests(suggests: Suggests) -> &'static str {
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
    use yeanling_core::reckon::quality::{bag, reading};
    use yeanling_core::units::{Brix, TimeDelta};

    #[test]
    fn a_cows_mark_is_said_not_to_carry_over() {
        let says = |percent| brix(&reading(Brix::from_percent(percent)).expect("in bounds"));
        assert_eq!(says(26.5), "26.5% Brix: good ewe colostrum.");
        let cow = "24% Brix: poor for a ewe, under 26.5. The mark of 22 is for cows only.";
        assert_eq!(says(24.0), cow);
        assert_eq!(says(18.0), "18% Brix: poor, under 26.5.");
    }

    #[test]
    fn a_bag_says_how_long_it_still_serves() {
        let says = |days, store| keeps(bag(TimeDelta::days(days), store, FreezerLife::OneYear), store);
        assert_eq!(says(300, Store::Freezer), "Good for 65 days more in the freezer.");
        assert_eq!(says(365, Store::Freezer), "Use it today: its time in the freezer is almost over.");
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
