//! What is on hand and in the freezer, each thing in its own unit.

use yeanling_core::book::{Item, Measure, MilkedFrom};
use yeanling_core::flock::Flock;
use yeanling_core::units::{Amount, Mass, System, TypedError, Volume, parse_number};

use super::animals;
use super::common::number;

/// Asks for an amount.
pub const HOW_MUCH: &str = "How much";

/// Returns what a thing is called.
pub const fn item(item: Item) -> &'static str {
    match item {
        Item::Hay => "hay",
        Item::Straw => "straw",
        Item::Grain => "grain",
        Item::MilkPowder => "milk powder",
        Item::ColostrumPowder => "colostrum powder",
        Item::Electrolyte => "electrolyte packets",
        Item::Iodine => "iodine",
        Item::Disinfectant => "disinfectant",
        Item::Lubricant => "lubricant",
        Item::Gloves => "gloves",
        Item::Ropes => "lambing ropes",
        Item::Harnesses => "prolapse harnesses",
        Item::Towels => "towels",
        Item::Bottles => "bottles",
        Item::Teats => "teats",
        Item::Tubes => "stomach tubes",
        Item::Syringes => "syringes",
        Item::Thermometers => "thermometers",
        Item::Markers => "markers",
        Item::Crayons => "crayons",
        Item::Tags => "tags",
        Item::Rings => "rings",
    }
}

/// Returns the unit that a thing is read and typed in; empty for pieces.
pub const fn unit(item: Item, system: System) -> &'static str {
    match (item.measure(), system) {
        (Measure::Kilograms, System::Metric) => "kg",
        (Measure::Kilograms, System::Us) => "lb",
        (Measure::Milliliters, System::Metric) => "ml",
        (Measure::Milliliters, System::Us) => "fl oz",
        (Measure::Pieces, _) => "",
    }
}

/// Returns an amount as it would be typed: "1200", "2.5".
pub fn typed_amount(item: Item, amount: Amount, system: System) -> String {
    let units = amount.as_units();
    match (item.measure(), system) {
        (Measure::Kilograms, System::Metric) => number(units, 2),
        (Measure::Kilograms, System::Us) => number(Mass::from_kilograms(units).as_pounds(), 1),
        (Measure::Milliliters, System::Metric) => number(units, 0),
        (Measure::Milliliters, System::Us) => number(Volume::from_milliliters(units).as_fluid_ounces(), 1),
        (Measure::Pieces, _) => number(units, 2),
    }
}

/// Returns an amount with its unit: "1200 kg", "2645.5 lb", "500 ml", "12".
pub fn amount(item: Item, amount: Amount, system: System) -> String {
    let typed = typed_amount(item, amount, system);
    let unit = unit(item, system);
    if unit.is_empty() { typed } else { format!("{typed} {unit}") }
}

/// Reads an amount as people type it, in the thing's own unit or in another of its kind: `1200`, `2.5 kg`, `1 l`.
///
/// # Errors
/// What was typed is empty, is no number, or names a unit of another kind.
pub fn read_amount(text: &str, item: Item, system: System) -> Result<Amount, TypedError> {
    let units = match item.measure() {
        Measure::Kilograms => Mass::parse(text, system)?.as_kilograms(),
        Measure::Milliliters => Volume::parse(text, system)?.as_milliliters(),
        Measure::Pieces => parse_number(text)?,
    };
    Ok(Amount::from_units(units))
}

/// Returns whom colostrum was milked from.
pub fn milked_from(flock: &Flock, from: MilkedFrom) -> String {
    match from {
        MilkedFrom::Ewe(ewe) => animals::ewe_of(flock, ewe),
        MilkedFrom::SomeEwe => "a ewe".to_owned(),
        MilkedFrom::Goat => "a goat".to_owned(),
        MilkedFrom::Cow => "a cow".to_owned(),
    }
}

/// Returns how many bags: "1 bag", "4 bags".
pub fn bags(bags: u8) -> String {
    format!("{bags} {}", if bags == 1 { "bag" } else { "bags" })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn told(of: Item, units: f64, metric: &str, us: &str) {
        let given = Amount::from_units(units);
        let both = [System::Metric, System::Us].map(|system| amount(of, given, system));
        assert_eq!(both, [metric, us]);
        for system in [System::Metric, System::Us] {
            let read = read_amount(&typed_amount(of, given, system), of, system).expect("it was written");
            assert!((read.as_units() - units).abs() < units / 50.0, "{read:?}");
        }
    }

    #[test]
    fn an_amount_is_told_and_typed_in_the_farms_units() {
        told(Item::Hay, 1200.0, "1200 kg", "2645.5 lb");
        told(Item::MilkPowder, 2.5, "2.5 kg", "5.5 lb");
        told(Item::Iodine, 500.0, "500 ml", "16.9 fl oz");
        told(Item::Gloves, 12.0, "12", "12");
    }

    #[test]
    fn a_unit_of_another_kind_is_refused() {
        assert!(read_amount("3 l", Item::Hay, System::Metric).is_err());
        assert!(read_amount("3 kg", Item::Gloves, System::Metric).is_err());
        assert_eq!(read_amount("1 l", Item::Iodine, System::Metric), Ok(Amount::from_units(1000.0)));
    }
}
