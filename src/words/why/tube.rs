//! Why a lamb may or may not be fed by tube.

use yeanling_core::reckon::tube::{Item, SOURCES, TubeAnswer, pour_takes};
use yeanling_core::units::System;

use super::{Why, cited, with_tube};
use crate::common::volume;

/// Returns why a lamb may or may not be fed by tube.
pub fn tube(answer: &TubeAnswer, system: System) -> Why {
    let mut working: Vec<String> = answer.unmet.iter().map(|one| format!("No: {}", item(*one))).collect();
    working.extend(answer.unknown.iter().map(|one| format!("Not known: {}", item(*one))));
    if answer.may() {
        working.push("Everything on the list is true".to_owned());
    }
    if let Some(most) = answer.most {
        let (quick, slow) = pour_takes(most);
        working.push(format!(
            "At most {} (50 ml/kg), over {} to {} s",
            volume(most.offered(system), system),
            quick.num_seconds(),
            slow.num_seconds()
        ));
    }
    let mut caution = Vec::new();
    if answer.unmet.contains(&Item::NoWateryMouth) || answer.unmet.contains(&Item::NotBloated) {
        caution.push(
            "Drooling, dull, a swollen belly: no milk, by bottle or by tube. Call your vet.".to_owned(),
        );
    }
    caution.extend(with_tube());
    Why {
        heading: "Feeding by tube".to_owned(),
        working,
        rule: "Everything on the list must be true and known. Tube of 40 to 46 cm (16 to 18 in); mark it from nose to last rib."
            .to_owned(),
        sources: cited(SOURCES),
        others: Vec::new(),
        caution,
    }
}

/// Returns an item of the list.
pub const fn item(item: Item) -> &'static str {
    match item {
        Item::Warm => "37 °C (98.6 °F) or warmer",
        Item::Awake => "awake",
        Item::HeadUp => "holds its head up",
        Item::Swallows => "swallows",
        Item::NotBloated => "belly not bloated or swollen",
        Item::NoWateryMouth => "does not drool",
        Item::NotTooMuch => "no more than 50 ml/kg",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::tube::{TubeChecks, check};
    use yeanling_core::units::{Mass, Temperature, Volume};

    fn fit() -> TubeChecks {
        TubeChecks {
            temperature: Some(Temperature::from_celsius(38.5)),
            awake: Some(true),
            head_up: Some(true),
            swallows: Some(true),
            swollen_belly: Some(false),
            drools: Some(false),
            weight: Some(Mass::from_kilograms(4.0)),
            volume: Some(Volume::from_milliliters(150.0)),
        }
    }

    #[track_caller]
    fn says(known: TubeChecks, working: &[&str]) -> Why {
        let why = tube(&check(known).expect("in bounds"), System::Metric);
        assert_eq!(why.working, working);
        why
    }

    #[test]
    fn what_does_not_hold_and_what_is_not_known_are_told_apart() {
        let most = "At most 200 ml (50 ml/kg), over 67 to 83 s";
        says(fit(), &["Everything on the list is true", most]);
        let why = says(
            TubeChecks { drools: Some(true), swallows: None, ..fit() },
            &["No: does not drool", "Not known: swallows", most],
        );
        assert!(why.caution[0].ends_with("Call your vet."));
    }
}
