//! Calculators: every calculation without any record.

use yeanling_core::reckon::window::Stretch;
use yeanling_core::settings::DayRule;
use yeanling_core::units::{Mass, System, Volume};

use super::common::{number, volume, volume_at_most, volume_both};

/// The screen's name.
pub const TITLE: &str = "Calculators";
/// What can be worked out, where it is offered.
pub const ABOUT: &str = "Colostrum, bottle, weaning, chill, scours";
/// What the screen is for.
pub const SUB: &str = "Nothing typed here is noted.";
/// Names the choice of what is worked out.
pub const WHICH: &str = "What to work out";
/// How much colostrum.
pub const FIRST_MILK: &str = "Colostrum";
/// How long colostrum works.
pub const WINDOW: &str = "Time left";
/// How much a bottle lamb takes.
pub const BOTTLE: &str = "Bottle";
/// Whether a bottle lamb can be weaned.
pub const WEANING: &str = "Weaning";
/// Whether a bag of colostrum is good.
pub const BAG: &str = "Colostrum quality";
/// Whether the weather chills lambs.
pub const WEATHER: &str = "Chill";
/// Heads the lambs of the book.
pub const IN_YOUR_BOOK: &str = "In your book, of the last 7 days:";
/// Labels the weight at birth where another stands beside it.
pub const BIRTH_WEIGHT: &str = "Birth weight";
/// Labels the weight of today.
pub const TODAY: &str = "Weight today";

/// Leads to the page of the illness that it is about.
pub const READ_MORE: &str = "What to do";
/// Leads to the cold lamb.
pub const COLD_LAMB: &str = "Cold lamb: step by step";
/// What to type first.
pub const TYPE_WEIGHT: &str = "Enter the birth weight to see the volumes.";
/// Heads one feed.
pub const A_FEED: &str = "A feed";
/// Heads the first six hours.
pub const BY_6: &str = "Together by 6 h";
/// Heads the first eighteen hours.
pub const BY_18: &str = "Together by 18 h";
/// Heads the first day.
pub const BY_24: &str = "Together by 24 h";
/// Heads the number of feeds.
pub const FEEDS: &str = "Feeds in 24 h";
/// Behind the number of feeds.
pub const FEEDS_ALSO: &str = "if all is fed by hand";
/// Names the housing.
pub const HOUSING: &str = "It lives";
/// Names the rule.
pub const RULE: &str = "Rule for 24 hours";
/// Says that nothing is noted by choosing here.
pub const RULE_SUB: &str = "For this sum alone. Your farm’s own rule is in Farm settings.";
/// Returns who stands behind a rule, and its figure, for a button.
pub const fn rule(rule: DayRule) -> (&'static str, &'static str) {
    match rule {
        DayRule::Ahdb200 => ("AHDB", "200 ml/kg (3.05 fl oz/lb)"),
        DayRule::Ruma210 => ("RUMA", "210 ml/kg (3.2 fl oz/lb)"),
        DayRule::TenPercent => ("10%", "of its weight"),
    }
}

/// Said with the ten-percent rule.
pub const HALF: &str = "10% is half the guidance. A cold lamb needs more.";

/// Returns what cold weather adds to the day.
pub fn cold(least: u8, most: u8, from: Volume, to: Volume, system: System) -> String {
    format!(
        "In cold, wet or wind {least} to {most}% more: *{} to {}* in 24 h. Give it as more feeds, never as larger ones.",
        volume(from, system),
        volume(to, system)
    )
}

/// Asks how the age is given.
pub const HOW_OLD: &str = "How old is it?";
/// By hours.
pub const BY_HOURS: &str = "By hours";
/// By the time of birth.
pub const BY_BIRTH: &str = "By time of birth";
/// Labels the age.
pub const AGE: &str = "Age in hours";
/// Says how an age is typed.
pub const AGE_HINT: &str = "Such as 1.5 or 1 h 20 or 40 min";
/// Labels the time of birth.
pub const BORN: &str = "Born at";
/// Says which day is meant.
pub const BORN_HINT: &str = "The last time the clock showed this.";
/// What to type first.
pub const TYPE_AGE: &str = "Enter its age to see how long colostrum still works.";
/// Heads the time that is left.
pub const TIME_LEFT: &str = "Time left for colostrum";
/// Behind the time that is left.
pub const LEFT: &str = "left of 24 h";
/// When the window has closed.
pub const CLOSED: &str = "Closed";
/// Explains a closed window.
pub const CLOSED_ALSO: &str = "at 24 h";
/// Heads the share that still works.
pub const REACHES: &str = "Reaches the blood";
/// Behind the share.
pub const REACHES_ALSO: &str = "of the antibody it swallows now";

/// Returns the share that still reaches the blood, in whole percent: the curve is no finer.
pub fn reaches(percent: f64) -> String {
    format!("{percent:.0}")
}

/// Returns the age that a time of birth comes to.
pub fn born_so_long_ago(age: &str) -> String {
    format!("{age} old")
}

/// Returns the study that found otherwise.
pub fn dissent(source: &str) -> String {
    format!("One study disagrees: {source}")
}

/// Returns what a stretch of the window asks for.
pub const fn stretch(stretch: Stretch) -> &'static str {
    match stretch {
        Stretch::FirstHour => "The best hour. See that it sucks now.",
        Stretch::ToTwoHours => "Still on target: the first feed is wanted within 2 h.",
        Stretch::ToSixHours => "Do not wait. 6 h is the latest by AHDB and Teagasc.",
        Stretch::ToTwelveHours => "It is late. 12 h counts as the absolute latest.",
        Stretch::ToClose => "Little still gets through, yet it is worth giving.",
        Stretch::Closed => "No antibody gets through any more. Colostrum still feeds it and coats its gut.",
    }
}

/// What is wrong with a typed age.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AgeError {
    /// It is no age.
    NotAnAge {
        /// What was typed.
        given: String,
    },
    /// It lies before birth.
    BeforeBirth {
        /// What was typed.
        given: String,
    },
    /// It is past what is worked out here.
    TooOld {
        /// What was typed.
        given: String,
    },
}

/// The most hours of age that the window is asked about (ours: three days, far past its close).
pub const MOST_HOURS: i64 = 72;

/// Returns what is wrong with a typed age.
pub fn age_error(error: &AgeError) -> String {
    match error {
        AgeError::NotAnAge { given } => format!("“{given}” is not an age. Type it like 1.5 or 1 h 20."),
        AgeError::BeforeBirth { given } => {
            format!("“{given}” is before its birth. An age starts at 0.")
        }
        AgeError::TooOld { given } => format!(
            "“{given}” is past {MOST_HOURS} hours, when the window is long closed. See Bottle for older lambs."
        ),
    }
}

/// Labels the age in days.
pub const DAYS: &str = "Age in days";
/// Says how days are counted.
pub const DAYS_HINT: &str = "Whole days since birth: born yesterday is 1.";
/// What to type first.
pub const TYPE_DAYS: &str = "Enter its age in days to see the feeds.";
/// Heads the weight of today.
pub const WEIGHT_TODAY: &str = "Use today’s weight; a birth weight underfeeds. Leave blank if unknown.";
/// Names the table.
pub const TABLE: &str = "Table";
/// Heads one feed.
pub const EACH_FEED: &str = "Each feed";
/// Heads the feeds of a day.
pub const FEEDS_A_DAY: &str = "Feeds a day";
/// Heads the day's milk.
pub const DAY_TOTAL: &str = "In the day";
/// Heads the cap.
pub const CAP: &str = "Never over, in a day";
/// Behind the cap.
const CAP_ALSO: &str = "200 ml/kg (3.05 fl oz/lb)";
/// Says that the cap cannot be told.
pub const NO_CAP: &str = "No weight, so no cap for the day: weigh it if it is small.";
/// Says that a cap made the feed smaller.
pub const CAPPED: &str = "The table says more than this lamb may have, so the feed is smaller.";
/// Heads the mix of one feed.
pub const MIX_FEED: &str = "Mix for one feed";
/// Heads the mix of the day.
pub const MIX_DAY: &str = "Mix for the day";
/// Says that the table means colostrum.
pub const COLOSTRUM: &str = "On this day the table means colostrum, not milk.";
/// How powder is mixed.
pub const MIX_CAUTION: &str = "The powder’s label comes first. Here 200 g is *made up to* 1 liter (26.7 oz to 1 gal). 200 g *added to* 1 liter of water \
     is too weak: 167 g in a liter (22.3 oz in 1 gal). Water below 45 °C (113 °F).";
/// Which lamb gets no milk.
pub const SICK: &str =
    "A dull, drooling lamb with a swollen belly gets no milk, by bottle or by tube. Call your vet.";

/// Returns a row of the table: "5 feeds of 100 to 150 ml".
pub fn row(feeds: u8, least: Volume, most: Volume, system: System) -> String {
    format!("The table’s row: {feeds} feeds of {} to {}.", volume(least, system), volume(most, system))
}

/// Returns the most in a day in the other units, and by what: "7.9 fl oz · 200 ml/kg".
pub fn cap_also(cap: Volume, other: System) -> String {
    format!("{} · {CAP_ALSO}", volume_at_most(cap, other))
}

/// Returns grams of powder as the figure of a mix: "30".
pub fn powder(powder: Mass) -> String {
    number(powder.as_kilograms() * 1000.0, 0)
}

/// Returns the water that goes with powder: "+ 120 ml water (4.1 fl oz)".
pub fn water(water: Volume, system: System) -> String {
    format!("powder + {} water", volume_both(water, system))
}

/// Returns what is wrong with a number of days.
pub fn days_error(given: &str) -> String {
    format!("“{given}” is not a number of days. Type it like 10.")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_wrong_age_says_what_was_given_and_how_to_type_it() {
        let given = "soon".to_owned();
        assert_eq!(
            age_error(&AgeError::NotAnAge { given }),
            "“soon” is not an age. Type it like 1.5 or 1 h 20."
        );
    }

    #[test]
    fn powder_is_told_in_grams_and_water_in_both_units() {
        let (grams, milliliters) = yeanling_core::reckon::mixing::mix(Volume::from_milliliters(150.0));
        assert_eq!(powder(grams), "30");
        assert_eq!(water(milliliters, System::Metric), "powder + 120 ml (4.1 fl oz) water");
    }
}
