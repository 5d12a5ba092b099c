//! What is wrong with something given, in plain sentences: what was given, what is allowed, and why.

use yeanling_core::reckon::bottle::NoRow;
use yeanling_core::reckon::feeds::{ASSUMED, Guard, Refusal};
use yeanling_core::units::{Length, Mass, NotInALamb, OutOfBounds, System, TypedError, Volume, Why};

mod limit;
mod outdoors;
mod powder;
mod readings;

pub use limit::limit;
pub use powder::{powder_rate, ring_days};
pub use {
    outdoors::no_index,
    powder::{no_mix, no_plan},
    readings::{antibody, brix},
};

use super::common::{length, mass, number, temperature, volume_as_given, volume_at_most};

/// Names the kind of field that was typed into, so that the sentence can show how it is typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// A weight.
    Mass,
    /// A volume of milk.
    Volume,
    /// A temperature of a lamb.
    LambTemperature,
    /// A temperature of the air.
    Air,
    /// A wind.
    Wind,
    /// A day's rain.
    Rain,
    /// A Brix reading.
    Brix,
    /// Powder in a liter.
    PowderRate,
    /// Antibody in a liter.
    Antibody,
    /// Antibody in a liter of serum.
    Serum,
    /// Water for thawing.
    Water,
    /// The side of a pen.
    Length,
    /// A day's feed.
    Feed,
    /// The weight of a ewe.
    EweWeight,
    /// A condition score.
    Condition,
    /// Days.
    Days,
    /// Hay, grain or powder in the store.
    Stock,
    /// Things that are counted one by one.
    Pieces,
}

/// Returns what is wrong with something typed.
pub fn typed(error: &TypedError, field: Field, system: System) -> String {
    let like = example(field, system);
    match error {
        TypedError::Empty => format!("Nothing is typed yet. Type it like {like}."),
        TypedError::NotANumber { given } => format!("“{given}” is not a number. Type it like {like}."),
        TypedError::TwoPoints { given } => format!("“{given}” has more than one point. Type it like {like}."),
        TypedError::OtherUnit { given } => {
            format!("“{given}” has a unit that does not fit here. Type it like {like}.")
        }
    }
}

fn example(field: Field, system: System) -> &'static str {
    match (field, system) {
        (Field::Mass, System::Metric) => "4.2 kg",
        (Field::Mass, System::Us) => "9.3 lb or 9 lb 4 oz",
        (Field::Volume, System::Metric) => "195 ml",
        (Field::Volume, System::Us) => "6.6 fl oz",
        (Field::LambTemperature, System::Metric) => "38.5 °C",
        (Field::LambTemperature, System::Us) => "101.3 °F",
        (Field::Air, System::Metric) => "5 °C",
        (Field::Air, System::Us) => "41 °F",
        (Field::Wind, System::Metric) => "4 m/s or 15 km/h",
        (Field::Wind, System::Us) => "9 mph",
        (Field::Rain, System::Metric) => "10 mm",
        (Field::Rain, System::Us) => "0.4 in",
        (Field::Brix, _) => "26.5 %",
        (Field::PowderRate, _) => "200 g/L",
        (Field::Antibody, _) => "50 g/L",
        (Field::Serum, _) => "18 g/L",
        (Field::Water, System::Metric) => "40 °C",
        (Field::Water, System::Us) => "104 °F",
        (Field::Length, System::Metric) => "1.5 m",
        (Field::Length, System::Us) => "5 ft",
        (Field::Feed, System::Metric) => "250 g",
        (Field::Feed, System::Us) => "9 oz",
        (Field::EweWeight, System::Metric) => "72 kg",
        (Field::EweWeight, System::Us) => "160 lb",
        (Field::Condition, _) => "2.5",
        (Field::Days, _) => "60",
        (Field::Stock, System::Metric) => "250 kg",
        (Field::Stock, System::Us) => "550 lb",
        (Field::Pieces, _) => "12",
    }
}

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
    let allowed = format!("Between {} and {} {unit} is allowed.", number(least, 1), number(most, 1));
    if !sayable(given) {
        return format!("That is not a weight. {allowed}");
    }
    let whose = match error.allowed.why {
        Why::LambAtBirth => "a lamb at birth",
        Why::LambOfItsAge => "a lamb of its age",
        Why::SolidsInADay => "a day’s solid feed",
        Why::LambAtWeaning => "a lamb at weaning",
        Why::EweWeight => "a ewe",
        Why::ExtraFeed => "a ewe’s extra feed in a day",
        Why::LambOnTheBottle
        | Why::OneFeed
        | Why::LambTemperature
        | Why::Weather
        | Why::Wind
        | Why::RainInADay
        | Why::BrixOfColostrum
        | Why::AntibodyInColostrum
        | Why::AntibodyInSerum
        | Why::LabelRate
        | Why::OneRound
        | Why::LambsOnTheBottle
        | Why::PowderInStore
        | Why::Pulse
        | Why::PenSide
        | Why::ConditionScore
        | Why::FrozenBag
        | Why::InStore
        | Why::Percent => "a lamb on the bottle",
    };
    let too = match (error.allowed.why, error.given > error.allowed.most) {
        (Why::ExtraFeed, true) => "much",
        (Why::ExtraFeed, false) => "little",
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
        Why::EweWeight => 40.0..=120.0,
        Why::ExtraFeed => 0.1..=1.0,
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
    format!("{} is no side of a pen. Between {least} and {most} is allowed.", told(error.given))
}

/// Returns what is wrong with the volume of a feed.
pub fn feed(error: &OutOfBounds<Volume>, system: System) -> String {
    let least = volume_as_given(error.allowed.least, system);
    let most = volume_at_most(error.allowed.most, system);
    let allowed = format!("A feed is between {least} and {most}.");
    let given = error.given.as_milliliters();
    if !sayable(given) {
        format!("That is not a volume. {allowed}")
    } else if error.given > error.allowed.most {
        format!("{} is too much for one feed. {allowed}", volume_as_given(error.given, system))
    } else {
        format!("{} is no feed. {allowed}", volume_as_given(error.given, system))
    }
}

/// Returns what is wrong with a lamb's temperature, and on which scale the number would make sense.
pub fn lamb_temperature(error: &NotInALamb) -> String {
    let NotInALamb { out, typed_in, reads_like } = error;
    let least = temperature(out.allowed.least, *typed_in);
    let most = temperature(out.allowed.most, *typed_in);
    let allowed = format!("Between {least} and {most} is allowed.");
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
        (System::Metric, _) => format!("{given} °C cannot be read in a living lamb. {allowed}"),
        (System::Us, _) => format!("{given} °F cannot be read in a living lamb. {allowed}"),
    }
}

/// Returns why a feed is refused, and what to do instead.
pub fn refusal(refusal: &Refusal, system: System) -> String {
    match refusal {
        Refusal::NotAVolume(error) => feed(error, system),
        Refusal::NotAWeight(error) => weight(error, system),
        Refusal::TooMuchAtOnce { given, most, weight, guard } => format!(
            "{} at once is too much for {}. At most {}{}. Too much at once can harm it.{}",
            volume_as_given(*given, system),
            whom(*weight, *guard, system),
            volume_at_most(*most, system),
            by_weight(*guard, " (60 ml/kg)"),
            weigh_it(*weight, *guard),
        ),
        Refusal::TooMuchInADay { would_be, most, weight, guard } => format!(
            "That would make {} in 24 h, too much for {}. At most {}{}. Was a feed noted twice?{}",
            volume_as_given(*would_be, system),
            whom(*weight, *guard, system),
            volume_at_most(*most, system),
            by_weight(*guard, " (300 ml/kg)"),
            weigh_it(*weight, *guard),
        ),
    }
}

fn whom(weight: Option<Mass>, guard: Guard, system: System) -> String {
    match (guard, weight) {
        (Guard::FirstWeek, Some(weight)) => format!("a lamb of {}", mass(weight, system)),
        (Guard::FirstWeek, None) => {
            format!("a lamb of unknown weight, taken as {}", mass(ASSUMED, system))
        }
        (Guard::Later, _) => "any lamb".to_owned(),
    }
}

fn by_weight(guard: Guard, rate: &'static str) -> &'static str {
    match guard {
        Guard::FirstWeek => rate,
        Guard::Later => "",
    }
}

fn weigh_it(weight: Option<Mass>, guard: Guard) -> &'static str {
    match (guard, weight) {
        (Guard::FirstWeek, None) => " If it is heavier, enter its weight first.",
        (Guard::FirstWeek, Some(_)) | (Guard::Later, _) => "",
    }
}

/// Returns why a bottle table has no answer.
pub fn no_row(error: &NoRow, system: System) -> String {
    match error {
        NoRow::TooYoung { first_day, .. } => {
            format!("This table starts on day {first_day}. Before that, go by the colostrum volumes.")
        }
        NoRow::TooOld { last_day, .. } => {
            format!("This table ends on day {last_day}. See whether the lamb can be weaned.")
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
        let allowed = "Between 0.5 and 12 kg is allowed.";
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
        let expected =
            "93 lb is too heavy for a lamb at birth. Between 1.1 and 26.5 lb is allowed. Did you mean 9.3?";
        wrong_weight(pounds, System::Us, expected);
    }

    #[test]
    fn what_is_typed_wrong_is_shown_with_how_to_type_it() {
        let wrong = Mass::parse("4..2", System::Metric).expect_err("no number");
        let said = "“4..2” has more than one point. Type it like 4.2 kg.";
        check(typed(&wrong, Field::Mass, System::Metric), said);
        let wrong = Mass::parse("4.2 km", System::Us).expect_err("no mass");
        let said = "“4.2 km” has a unit that does not fit here. Type it like 9.3 lb or 9 lb 4 oz.";
        check(typed(&wrong, Field::Mass, System::Us), said);
        check(
            typed(&TypedError::Empty, Field::Volume, System::Us),
            "Nothing is typed yet. Type it like 6.6 fl oz.",
        );
    }

    fn refused(milliliters: f64, kilograms: Option<f64>, days: i64, before: f64) -> String {
        let volume = Volume::from_milliliters;
        let weight = kilograms.map(Mass::from_kilograms);
        let check = feeds::check(volume(milliliters), weight, TimeDelta::days(days), volume(before));
        refusal(&check.expect_err("refused"), System::Metric)
    }

    #[test]
    fn a_refused_feed_says_the_most_and_why() {
        check(
            refused(390.0, Some(3.9), 0, 0.0),
            "390 ml at once is too much for a lamb of 3.9 kg. At most 230 ml (60 ml/kg). Too much at once can harm it.",
        );
        check(
            refused(250.0, None, 0, 0.0),
            "250 ml at once is too much for a lamb of unknown weight, taken as 4.0 kg. At most 240 ml (60 ml/kg). \
             Too much at once can harm it. If it is heavier, enter its weight first.",
        );
        check(
            refused(200.0, Some(4.0), 1, 1100.0),
            "That would make 1300 ml in 24 h, too much for a lamb of 4.0 kg. At most 1200 ml (300 ml/kg). \
             Was a feed noted twice?",
        );
        check(
            refused(1200.0, Some(4.0), 10, 0.0),
            "1200 ml at once is too much for any lamb. At most 1000 ml. Too much at once can harm it.",
        );
        check(refused(0.0, None, 0, 0.0), "0 ml is no feed. A feed is between 1 ml and 2000 ml.");
    }

    #[test]
    fn a_wrong_temperature_says_which_scale_it_reads_like() {
        let wrong = |text, system, said: &str| {
            let typed = Temperature::parse(text, system).expect("a number");
            check(lamb_temperature(&typed.in_a_lamb(system).expect_err("not in a lamb")), said);
        };
        let (metric, us) =
            ("Between 15.0 °C and 44.0 °C is allowed.", "Between 59.0 °F and 111.2 °F is allowed.");
        wrong("98.6", System::Metric, &format!("98.6 reads like °F, and °C is chosen. {metric}"));
        wrong("39", System::Us, &format!("39 reads like °C, and °F is chosen. {us}"));
        wrong("45", System::Metric, &format!("45 °C cannot be read in a living lamb. {metric}"));
        wrong("120", System::Us, &format!("120 °F cannot be read in a living lamb. {us}"));
        wrong("9999999", System::Metric, &format!("That is not a temperature. {metric}"));
    }
}
