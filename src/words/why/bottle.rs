//! Why a bottle lamb takes this much today.

use yeanling_core::reckon::bottle::{self, Day, MOST_IN_A_DAY, SOURCES};
use yeanling_core::reckon::mixing::mix;
use yeanling_core::settings::BottleTable;
use yeanling_core::units::{Mass, System, TimeDelta, Volume};

use super::{Why, cited, converted, headings, told, with_tube};
use crate::common::{mass, number, volume_at_most, volume_both};

/// Returns why a bottle lamb takes this much on this day.
pub fn bottle(day: &Day, system: System) -> Why {
    Why {
        heading: headings::BOTTLE.to_owned(),
        working: working(day, system),
        rule: format!("The middle of the row in {}, never over the limits.", table(day.table)),
        sources: cited(SOURCES),
        others: others(day, system),
        caution: caution(day),
    }
}

fn working(day: &Day, system: System) -> Vec<String> {
    let mut working: Vec<String> =
        day.weight.and_then(|weight| converted(weight, system)).into_iter().collect();
    working.push(format!(
        "Day {}: {} to {}, {} feeds",
        day.days_old.saturating_add(1),
        told(day.least, system),
        told(day.most, system),
        day.feeds
    ));
    match day.weight {
        Some(weight) => working.push(cap(weight, system)),
        None => working.push("Weight not known: no daily limit by weight".to_owned()),
    }
    if day.capped {
        working.push("The row’s middle is too much for this lamb, so the feed is smaller".to_owned());
    }
    let told = |volume| if day.capped { at_most(volume, system) } else { told(volume, system) };
    let (each, total) = (told(day.per_feed), told(day.day_total));
    working.push(format!("{} feeds × {each} = {total}", day.feeds));
    working.push(if day.colostrum {
        "Colostrum, not milk".to_owned()
    } else {
        let (powder, water) = mix(day.day_total);
        let grams = number(powder.as_kilograms() * 1000.0, 0);
        let water = volume_both(water, system);
        format!("Powder for the day: {grams} g with {water} of water, if the label says no other")
    });
    working
}

/// Returns the most as it is read, rounded down, never without milliliters.
fn at_most(most: Volume, system: System) -> String {
    let metric = volume_at_most(most, System::Metric);
    match system {
        System::Metric => metric,
        System::Us => format!("{} ({metric})", volume_at_most(most, system)),
    }
}

/// Returns "At most in a day: 200 ml/kg × 3.09 kg = 618 ml, at most 615 ml".
fn cap(weight: Mass, system: System) -> String {
    let most = MOST_IN_A_DAY.of(weight);
    let exact = number(most.as_milliliters(), 1);
    let kilograms = mass(weight, System::Metric);
    let read = at_most(most, system);
    let working = format!("At most in a day: {} × {kilograms} = {exact} ml", super::rate(MOST_IN_A_DAY));
    if read == format!("{exact} ml") { working } else { format!("{working}, read as {read}") }
}

fn others(day: &Day, system: System) -> Vec<String> {
    let other = match day.table {
        BottleTable::VetSupplier => BottleTable::UsHandbook,
        BottleTable::UsHandbook => BottleTable::VetSupplier,
    };
    let age = TimeDelta::days(i64::from(day.days_old));
    match bottle::day(age, day.weight, other) {
        Ok(other) => vec![format!(
            "By {}: {} feeds of {}, {} in the day",
            table(other.table),
            other.feeds,
            told(other.per_feed, system),
            told(other.day_total, system)
        )],
        Err(_) => Vec::new(),
    }
}

fn caution(day: &Day) -> Vec<String> {
    let mut caution = vec![
        "The label comes first. Make 200 g up to 1 liter; 200 g added to 1 liter is too weak.".to_owned(),
        "A dull, drooling lamb with a swollen belly gets no milk, by bottle or by tube. Call your vet."
            .to_owned(),
    ];
    if day.weight.is_none() {
        caution.push("Weigh it: it is easy to overfeed a light lamb.".to_owned());
    }
    caution.extend(with_tube());
    caution
}

fn table(table: BottleTable) -> &'static str {
    match table {
        BottleTable::VetSupplier => "the vet supplier's table",
        BottleTable::UsHandbook => "the US handbook's table",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(days: i64, kilograms: Option<f64>, system: System, working: &[&str]) {
        let weight = kilograms.map(Mass::from_kilograms);
        let day = bottle::day(TimeDelta::days(days), weight, BottleTable::VetSupplier).expect("a row");
        assert_eq!(bottle(&day, system).working, working);
    }

    #[test]
    fn the_working_names_the_row_the_cap_and_the_powder() {
        check(
            9,
            Some(3.0),
            System::Metric,
            &[
                "Day 10: 180 ml to 250 ml, 4 feeds",
                "At most in a day: 200 ml/kg × 3.0 kg = 600 ml",
                "The row’s middle is too much for this lamb, so the feed is smaller",
                "4 feeds × 150 ml = 600 ml",
                "Powder for the day: 120 g with 480 ml (16.2 fl oz) of water, if the label says no other",
            ],
        );
    }

    #[test]
    fn an_unknown_weight_is_said() {
        check(
            2,
            None,
            System::Us,
            &[
                "Day 3: 3.4 fl oz (100 ml) to 5.1 fl oz (150 ml), 5 feeds",
                "Weight not known: no daily limit by weight",
                "5 feeds × 4.2 fl oz (125 ml) = 21.1 fl oz (625 ml)",
                "Powder for the day: 125 g with 16.9 fl oz (500 ml) of water, if the label says no other",
            ],
        );
    }
}
