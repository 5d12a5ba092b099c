//! What is wrong with something typed: what was typed, what is allowed, and how it is typed.

use yeanling_core::units::{System, TypedError, UnitPair};

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
    /// Ketones in blood.
    Ketones,
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
    /// What an animal was sold for.
    Price,
}

/// Returns what is wrong with something typed: what it was, and what is allowed.
pub fn typed(error: &TypedError, field: Field, system: System) -> String {
    let like = example(field, system);
    match error {
        TypedError::Empty => format!("Nothing typed yet. Type it like {like}."),
        TypedError::NotANumber { given } => format!("“{given}” is not a number. Type it like {like}."),
        TypedError::TwoPoints { given } => format!("“{given}” has more than one point. Type it like {like}."),
        TypedError::TwoWays { given, decimal, thousands } => {
            format!("“{given}” can be read as {decimal} or as {thousands}. Type {decimal} or {thousands}.")
        }
        TypedError::OtherUnit { given } => {
            format!("“{given}” has a unit that does not fit. {}. Type it like {like}.", units(field))
        }
        TypedError::LargerNotWhole { given, larger, pair } => {
            let (large, _, small) = names(*pair);
            format!(
                "“{given}” has {larger} {large} before {small}. With {small}, enter {large} as a whole number, 0 or more."
            )
        }
        TypedError::SmallerTooMuch { given, smaller, pair } => {
            let (large, unit, _) = names(*pair);
            let in_one = pair.in_one();
            format!(
                "“{given}” has {smaller} {unit} after {large}. Enter 0 to under {in_one} {unit}: {in_one} {unit} is 1 {large}."
            )
        }
    }
}

/// Returns the larger unit, the smaller, and the smaller's name.
const fn names(pair: UnitPair) -> (&'static str, &'static str, &'static str) {
    match pair {
        UnitPair::PoundsOunces => ("lb", "oz", "ounces"),
        UnitPair::FeetInches => ("ft", "in", "inches"),
    }
}

/// Returns the units that a field reads.
const fn units(field: Field) -> &'static str {
    match field {
        Field::Mass | Field::Feed | Field::EweWeight => "Use kg, g, lb or oz",
        Field::Volume => "Use ml, l or fl oz",
        Field::LambTemperature | Field::Air | Field::Water => "Use °C or °F",
        Field::Wind => "Use m/s, km/h or mph",
        Field::Rain => "Use mm, cm or in",
        Field::Brix => "Use %",
        Field::Ketones => "Use mmol/L",
        Field::PowderRate | Field::Antibody | Field::Serum => "Use g/L or g/dL",
        Field::Length => "Use m, cm, ft or in",
        Field::Stock => "Use kg, g, lb or oz, or ml, l or fl oz",
        Field::Condition | Field::Days | Field::Pieces | Field::Price => "Enter a number alone",
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
        (Field::Brix, _) => "26.5%",
        (Field::Ketones, _) => "1.4 mmol/L",
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
        (Field::Price, _) => "180",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::units::{Length, Mass, Volume};

    #[track_caller]
    fn check(got: String, expected: &str) {
        assert_eq!(got, expected);
    }

    #[test]
    fn what_is_typed_wrong_is_shown_with_how_to_type_it() {
        let wrong = Mass::parse("4..2", System::Metric).expect_err("no number");
        let said = "“4..2” has more than one point. Type it like 4.2 kg.";
        check(typed(&wrong, Field::Mass, System::Metric), said);
        let wrong = Mass::parse("4.2 km", System::Us).expect_err("no mass");
        let said = "“4.2 km” has a unit that does not fit. Use kg, g, lb or oz. \
                    Type it like 9.3 lb or 9 lb 4 oz.";
        check(typed(&wrong, Field::Mass, System::Us), said);
        check(
            typed(&TypedError::Empty, Field::Volume, System::Us),
            "Nothing typed yet. Type it like 6.6 fl oz.",
        );
    }

    #[test]
    fn what_can_be_read_two_ways_is_asked_back_with_both() {
        let wrong = Volume::parse("1,000", System::Metric).expect_err("one or a thousand");
        check(
            typed(&wrong, Field::Volume, System::Metric),
            "“1,000” can be read as 1 or as 1000. Type 1 or 1000.",
        );
    }

    #[test]
    fn of_two_units_the_wrong_one_is_told_with_what_is_allowed() {
        let weight =
            |text| typed(&Mass::parse(text, System::Us).expect_err("refused"), Field::Mass, System::Us);
        check(
            weight("9 lb 16 oz"),
            "“9 lb 16 oz” has 16 oz after lb. Enter 0 to under 16 oz: 16 oz is 1 lb.",
        );
        check(
            weight("9.5 lb 4 oz"),
            "“9.5 lb 4 oz” has 9.5 lb before ounces. With ounces, enter lb as a whole number, 0 or more.",
        );
        let side = Length::parse("5 ft 12 in", System::Us).expect_err("refused");
        check(
            typed(&side, Field::Length, System::Us),
            "“5 ft 12 in” has 12 in after ft. Enter 0 to under 12 in: 12 in is 1 ft.",
        );
    }
}
