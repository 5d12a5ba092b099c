//! What is wrong with something given, in plain sentences: what was given, what is allowed, and why.

use yeanling_core::reckon::bottle::{MOST_IN_A_DAY, NoRow};
use yeanling_core::reckon::colostrum::ONE_FEED;
use yeanling_core::reckon::feeds::{ASSUMED, Guard, Rejection};
use yeanling_core::units::{BoundFor, Length, Mass, NotInALamb, OutOfBounds, System, Volume};

mod limit;
mod outdoors;
mod powder;
mod readings;
mod typed;

pub use limit::limit;
pub use powder::{powder_rate, ring_days};
pub use typed::{Field, typed};
pub use {
    outdoors::no_index,
    powder::{no_mix, no_plan},
    readings::{antibody, brix},
};

use super::common::{length, mass, number, per_weight, temperature, volume, volume_as_given, volume_at_most};

/// Returns what is wrong with a weight, and what may have been meant.
pub fn weight(error: &OutOfBounds<Mass>, system: System) -> String {
    let (given, least, most) = (
        in_units(error.given, system),
        in_units(error.allowed.least, system),
        in_units(error.allowed.most, system),
    );
    let unit = match system {
        System::Metric => "kg",
        System::Us => "lb",
    };
    let allowed = format!("Enter {} to {} {unit}.", number(least, 1), number(most, 1));
    if !sayable(given) {
        return format!("That is not a weight. {allowed}");
    }
    let whose = match error.allowed.why {
        BoundFor::LambAtBirth => "a lamb at birth",
        BoundFor::LambOfItsAge => "a lamb of its age",
        BoundFor::SolidsInADay => "a day’s solid feed",
        BoundFor::LambAtWeaning => "a lamb at weaning",
        BoundFor::EweWeight => "a ewe",
        BoundFor::ExtraFeed => "a ewe’s extra feed in a day",
        BoundFor::LambOnTheBottle
        | BoundFor::OneFeed
        | BoundFor::LambTemperature
        | BoundFor::Weather
        | BoundFor::Wind
        | BoundFor::RainInADay
        | BoundFor::BrixOfColostrum
        | BoundFor::Ketones
        | BoundFor::EweTemperature
        | BoundFor::AntibodyInColostrum
        | BoundFor::AntibodyInSerum
        | BoundFor::LabelRate
        | BoundFor::OneRound
        | BoundFor::LambsOnTheBottle
        | BoundFor::PowderInStore
        | BoundFor::Pulse
        | BoundFor::PenSide
        | BoundFor::ConditionScore
        | BoundFor::FrozenBag
        | BoundFor::InStore
        | BoundFor::Price
        | BoundFor::Percent => "a lamb on the bottle",
    };
    let too = match (error.allowed.why, error.given > error.allowed.most) {
        (BoundFor::ExtraFeed, true) => "much",
        (BoundFor::ExtraFeed, false) => "little",
        (_, true) => "heavy",
        (_, false) => "light",
    };
    let said = format!("{} {unit} is too {too} for {whose}. {allowed}", number(given, 2));
    match meant(error, system) {
        Some(meant) => format!("{said} Did you mean {meant}?"),
        None => said,
    }
}

/// Returns whether a number is worth repeating: a key held down makes one that fills the screen.
fn sayable(number: f64) -> bool {
    number.abs() < 1e6
}

fn in_units(mass: Mass, system: System) -> f64 {
    match system {
        System::Metric => mass.as_kilograms(),
        System::Us => mass.as_pounds(),
    }
}

/// Returns the slip that would explain a weight: a lost point, grams for kilograms, or pounds for kilograms.
fn meant(error: &OutOfBounds<Mass>, system: System) -> Option<String> {
    let usual = match error.allowed.why {
        BoundFor::EweWeight => 40.0..=120.0,
        BoundFor::ExtraFeed => 0.1..=1.0,
        _ => 1.5..=8.0,
    };
    let ordinary = |kilograms: f64| usual.contains(&kilograms);
    let kilograms = error.given.as_kilograms();
    let slips = [0.1, 10.0, 0.001];
    let point = slips.into_iter().find(|slip| ordinary(kilograms * slip));
    if let Some(slip) = point {
        return Some(format!("{:.1}", in_units(error.given, system) * slip));
    }
    let pounds = Mass::from_pounds(kilograms);
    let as_pounds = match system {
        System::Metric => ordinary(pounds.as_kilograms()),
        System::Us => false,
    };
    as_pounds.then(|| format!("{} lb", number(kilograms, 1)))
}

/// Returns what is wrong with the side of a pen.
pub fn pen_side(error: &OutOfBounds<Length>, system: System) -> String {
    let told = |side| length(side, system);
    let (least, most) = (told(error.allowed.least), told(error.allowed.most));
    format!("{} is out of range. Enter {least} to {most}.", told(error.given))
}

/// Returns what is wrong with the volume of a feed.
pub fn feed(error: &OutOfBounds<Volume>, system: System) -> String {
    let least = volume_as_given(error.allowed.least, system);
    let most = volume_at_most(error.allowed.most, system);
    let allowed = format!("Enter {least} to {most}.");
    let given = error.given.as_milliliters();
    if !sayable(given) {
        format!("That is not a volume. {allowed}")
    } else if error.given > error.allowed.most {
        format!("{} is too much for one feed. {allowed}", volume_as_given(error.given, system))
    } else {
        format!("{} is out of range. {allowed}", volume_as_given(error.given, system))
    }
}

/// Returns what is wrong with a lamb's temperature, and on which scale the number would make sense.
pub fn lamb_temperature(error: &NotInALamb) -> String {
    let NotInALamb { out, typed_in, reads_like } = error;
    let least = temperature(out.allowed.least, *typed_in);
    let most = temperature(out.allowed.most, *typed_in);
    let allowed = format!("Enter {least} to {most}.");
    let given = match typed_in {
        System::Metric => out.given.as_celsius(),
        System::Us => out.given.as_fahrenheit(),
    };
    if !sayable(given) {
        return format!("That is not a temperature. {allowed}");
    }
    let given = number(given, 1);
    match (typed_in, reads_like) {
        (System::Metric, Some(System::Us)) => format!("{given} reads like °F, and °C is chosen. {allowed}"),
        (System::Us, Some(System::Metric)) => format!("{given} reads like °C, and °F is chosen. {allowed}"),
        (System::Metric, _) => format!("{given} °C is out of range. {allowed}"),
        (System::Us, _) => format!("{given} °F is out of range. {allowed}"),
    }
}

/// Returns why a feed is refused, and what to give instead.
///
/// What is taught is the feed of 50 ml/kg and the day of 200 ml/kg, never the guards that stand above them.
pub fn rejection(rejection: &Rejection, system: System) -> String {
    match rejection {
        Rejection::NotAVolume(error) => feed(error, system),
        Rejection::NotAWeight(error) => weight(error, system),
        Rejection::TooMuchAtOnce { given, most, weight, guard } => {
            let given = volume_as_given(*given, system);
            match guard {
                Guard::FirstWeek => format!(
                    "{given} is too much at once for {}. Give {}: {}.{}",
                    whom(*weight, system),
                    volume(ONE_FEED.of(weight.unwrap_or(ASSUMED)).offered(system), system),
                    per_weight(ONE_FEED.as_milliliters(), system),
                    weigh_it(*weight),
                ),
                Guard::Later => format!(
                    "{given} is too much at once for any lamb. Never over {}. Go by the bottle table for its age.",
                    volume_at_most(*most, system)
                ),
            }
        }
        Rejection::TooMuchInADay { would_be, most, weight, guard } => {
            let would_be = volume_as_given(*would_be, system);
            match guard {
                Guard::FirstWeek => format!(
                    "That makes {would_be} in 24 h, too much for {}. Give {} a day: {}. Was a feed noted twice?{}",
                    whom(*weight, system),
                    volume_at_most(MOST_IN_A_DAY.of(weight.unwrap_or(ASSUMED)), system),
                    per_weight(MOST_IN_A_DAY.as_milliliters(), system),
                    weigh_it(*weight),
                ),
                Guard::Later => format!(
                    "That makes {would_be} in 24 h, too much for any lamb. Never over {}. Was a feed noted twice?",
                    volume_at_most(*most, system)
                ),
            }
        }
    }
}

fn whom(weight: Option<Mass>, system: System) -> String {
    match weight {
        Some(weight) => mass(weight, system),
        None => format!("a lamb of unknown weight (taken as {})", mass(ASSUMED, system)),
    }
}

const fn weigh_it(weight: Option<Mass>) -> &'static str {
    match weight {
        None => " If it is heavier, weigh it first.",
        Some(_) => "",
    }
}

/// Returns why a bottle table has no answer.
pub fn no_row(error: &NoRow, system: System) -> String {
    match error {
        NoRow::TooYoung { first_day, .. } => {
            format!("This table starts on day {first_day}. Before that, use the colostrum volumes.")
        }
        NoRow::TooOld { last_day, .. } => {
            format!("This table ends on day {last_day}. See if the lamb can be weaned.")
        }
        NoRow::NotAWeight(error) => weight(error, system),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::feeds;
    use yeanling_core::units::{Temperature, TimeDelta};

    #[track_caller]
    fn check(got: String, expected: &str) {
        assert_eq!(got, expected);
    }

    #[track_caller]
    fn wrong_weight(kilograms: f64, system: System, expected: &str) {
        let error = Mass::AT_BIRTH.check(Mass::from_kilograms(kilograms)).expect_err("out of bounds");
        check(weight(&error, system), expected);
    }

    #[test]
    fn a_wrong_weight_says_what_is_allowed_and_what_was_meant() {
        let allowed = "Enter 0.5 to 12 kg.";
        let metric = |given: f64, said: &str| {
            wrong_weight(given, System::Metric, &said.replace("{allowed}", allowed));
        };
        metric(40.0, "40 kg is too heavy for a lamb at birth. {allowed} Did you mean 4.0?");
        metric(0.39, "0.39 kg is too light for a lamb at birth. {allowed} Did you mean 3.9?");
        metric(4200.0, "4200 kg is too heavy for a lamb at birth. {allowed} Did you mean 4.2?");
        metric(12.5, "12.5 kg is too heavy for a lamb at birth. {allowed} Did you mean 12.5 lb?");
        metric(0.0, "0 kg is too light for a lamb at birth. {allowed}");
        metric(-3.0, "-3 kg is too light for a lamb at birth. {allowed}");
        metric(1e300, "That is not a weight. {allowed}");
        metric(f64::NAN, "That is not a weight. {allowed}");
    }

    #[test]
    fn a_wrong_weight_is_told_in_pounds_on_a_farm_in_pounds() {
        let pounds = Mass::from_pounds(93.0).as_kilograms();
        let expected = "93 lb is too heavy for a lamb at birth. Enter 1.1 to 26.5 lb. Did you mean 9.3?";
        wrong_weight(pounds, System::Us, expected);
    }

    fn refused(milliliters: f64, kilograms: Option<f64>, days: i64, before: f64) -> String {
        let volume = Volume::from_milliliters;
        let weight = kilograms.map(Mass::from_kilograms);
        let check = feeds::check(volume(milliliters), weight, TimeDelta::days(days), volume(before));
        rejection(&check.expect_err("refused"), System::Metric)
    }

    #[test]
    fn a_refused_feed_says_what_to_give_instead() {
        check(
            refused(390.0, Some(3.9), 0, 0.0),
            "390 ml is too much at once for 3.9 kg. Give 195 ml: 50 ml/kg.",
        );
        check(
            refused(250.0, None, 0, 0.0),
            "250 ml is too much at once for a lamb of unknown weight (taken as 4.0 kg). Give 200 ml: 50 ml/kg. \
             If it is heavier, weigh it first.",
        );
        check(
            refused(200.0, Some(4.0), 1, 1100.0),
            "That makes 1300 ml in 24 h, too much for 4.0 kg. Give 800 ml a day: 200 ml/kg. \
             Was a feed noted twice?",
        );
        check(
            refused(1200.0, Some(4.0), 10, 0.0),
            "1200 ml is too much at once for any lamb. Never over 1000 ml. Go by the bottle table for its age.",
        );
        check(refused(0.0, None, 0, 0.0), "0 ml is out of range. Enter 1 ml to 2000 ml.");
    }

    #[test]
    fn no_refusal_teaches_the_guard() {
        for kilograms in [None, Some(0.5), Some(2.0), Some(3.9), Some(4.0), Some(11.7)] {
            let weight = kilograms.map(Mass::from_kilograms).unwrap_or(ASSUMED);
            let guards = [feeds::MOST_AT_ONCE.of(weight), feeds::MOST_IN_A_DAY.of(weight)];
            for (volume, before) in [(1900.0, 0.0), (25.0, 3600.0)] {
                let said = refused(volume, kilograms, 0, before);
                for system in [System::Metric, System::Us] {
                    for guard in guards.map(|guard| volume_at_most(guard, system)) {
                        assert!(!said.contains(&format!(" {guard}")), "{said}");
                    }
                }
                assert!(!said.contains("60 ml/kg") && !said.contains("300 ml/kg"), "{said}");
            }
        }
    }

    #[test]
    fn a_wrong_temperature_says_which_scale_it_reads_like() {
        let wrong = |text, system, said: &str| {
            let typed = Temperature::parse(text, system).expect("a number");
            check(lamb_temperature(&typed.in_a_lamb(system).expect_err("not in a lamb")), said);
        };
        let (metric, us) = ("Enter 15.0 °C to 44.0 °C.", "Enter 59.0 °F to 111.2 °F.");
        wrong("98.6", System::Metric, &format!("98.6 reads like °F, and °C is chosen. {metric}"));
        wrong("39", System::Us, &format!("39 reads like °C, and °F is chosen. {us}"));
        wrong("45", System::Metric, &format!("45 °C is out of range. {metric}"));
        wrong("120", System::Us, &format!("120 °F is out of range. {us}"));
        wrong("9999999", System::Metric, &format!("That is not a temperature. {metric}"));
    }
}
