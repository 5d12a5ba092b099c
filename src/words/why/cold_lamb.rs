//! Why a cold lamb is treated so.

use yeanling_core::reckon::body_temperature::{US_GUIDANCE, UsBand, may_be_the_first_drop, us_band};
use yeanling_core::reckon::cold_lamb::{Branch, ColdLambAnswer};
use yeanling_core::reckon::warming::{AIR, LIVED_A_WEEK_PERCENT, Treated};
use yeanling_core::units::{System, Temperature, TimeDelta};

use super::{Why, cited, source_line, with_tube};
use crate::cold_lamb::{FEVER, band, courses, dissent, never, vet};
use crate::common::{number, temperature_both};

/// Returns why a lamb of this temperature and age is treated so; `age` is how its age is told.
pub fn cold_lamb(answer: &ColdLambAnswer, age: &str, system: System) -> Why {
    Why {
        heading: "Cold lamb".to_owned(),
        working: working(answer, age, system),
        rule: rule(answer.branch).to_owned(),
        sources: cited(answer.sources()),
        others: others(answer),
        caution: caution(answer, system),
    }
}

fn working(answer: &ColdLambAnswer, age: &str, system: System) -> Vec<String> {
    let mut working = vec![
        format!("{}, {}: {}", exact(answer.temperature, system), age, band(answer.band)),
        match answer.head_up_and_swallows {
            Some(true) => "Holds its head up and swallows".to_owned(),
            Some(false) => "Does not hold its head up and swallow".to_owned(),
            None => "Whether it swallows is not known".to_owned(),
        },
        "Normal 39 to 40 °C (102.2 to 104 °F); cold from 37 (98.6); dangerous under 37; fever over 40"
            .to_owned(),
    ];
    if answer.age.is_some_and(may_be_the_first_drop) {
        working.push(
            "Under 3 h old: in bad weather a healthy lamb drops 2 to 3 °C (4 to 5 °F) at first".to_owned(),
        );
    }
    working.push(vet(answer.vet).to_owned());
    working.extend(course(answer.branch).into_iter().map(str::to_owned));
    working
}

/// A hundredth is told where it decides: 36.96 °C is not 37.0.
fn exact(read: Temperature, system: System) -> String {
    let tenths = read.as_celsius() * 10.0;
    if (tenths - tenths.round()).abs() < 0.01 {
        return temperature_both(read, system);
    }
    let (celsius, fahrenheit) = (number(read.as_celsius(), 2), number(read.as_fahrenheit(), 1));
    match system {
        System::Metric => format!("{celsius} °C ({fahrenheit} °F)"),
        System::Us => format!("{fahrenheit} °F ({celsius} °C)"),
    }
}

const fn rule(branch: Branch) -> &'static str {
    match branch {
        Branch::Normal => "It is not cold.",
        Branch::Mild => {
            "Dry, shelter and feed it if it holds its head up and swallows. If not: no tube, warmth, a vet."
        }
        Branch::SevereYoung => {
            "Up to 5 h old when it got cold: dry and warm it now, swallowing or not. At 37 °C (98.6 °F) feed it."
        }
        Branch::SevereOlder => {
            "Over 5 h old when it got cold, or of unknown age: shelter it and phone, glucose, then warmth, then milk. 5 h 00 \
             counts as young."
        }
        Branch::Fever => "Fever is for a vet, once it is read twice away from heat.",
    }
}

fn others(answer: &ColdLambAnswer) -> Vec<String> {
    let us = match us_band(answer.temperature) {
        UsBand::Severe => "severe",
        UsBand::SevereBySome => "severe by some",
        UsBand::Below => "below normal",
        UsBand::Normal => "normal",
        UsBand::Above => "above normal",
    };
    let mut others = vec![format!("{}: it calls this {us}", source_line(&US_GUIDANCE))];
    others.extend(answer.dissent.map(|one| dissent(one).to_owned()));
    let lived: Vec<String> = LIVED_A_WEEK_PERCENT
        .iter()
        .map(|(who, percent)| {
            let who = match who {
                Treated::ToFiveHours => "up to 5 h old",
                Treated::Older => "older",
                Treated::FoundMild => "found at 37 to 39 °C",
                Treated::FoundSevere => "found colder",
            };
            format!("{percent}% {who}")
        })
        .collect();
    others.push(format!("Eales et al. 1984, treated lambs that lived a week: {}", lived.join(", ")));
    others
}

fn caution(answer: &ColdLambAnswer, system: System) -> Vec<String> {
    let mut caution: Vec<String> = answer.never.iter().map(|one| never(*one).to_owned()).collect();
    match answer.branch {
        Branch::Normal | Branch::Fever => {}
        Branch::Mild | Branch::SevereYoung | Branch::SevereOlder => caution.push(format!(
            "Never air warmer than {}. Look every {} min.",
            temperature_both(AIR, system),
            TimeDelta::minutes(20).num_minutes()
        )),
    }
    caution.extend(with_tube());
    caution
}

/// Returns the whole course of a branch, a line a step.
fn course(branch: Branch) -> Vec<&'static str> {
    match branch {
        Branch::Normal | Branch::Mild => Vec::new(),
        Branch::SevereYoung => [courses::WHICH.as_slice(), &courses::YOUNG].concat(),
        Branch::SevereOlder => [courses::WHICH.as_slice(), &courses::OLDER].concat(),
        Branch::Fever => vec![FEVER],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::cold_lamb::decide;

    fn why(celsius: f64, hours: Option<i64>) -> Why {
        let age = hours.map(TimeDelta::hours);
        let answer = decide(Temperature::from_celsius(celsius), age, Some(true)).expect("in bounds");
        cold_lamb(&answer, &crate::cold_lamb::age(&answer), System::Metric)
    }

    #[test]
    fn the_age_stands_beside_the_temperature() {
        let young = why(37.5, Some(1));
        assert_eq!(young.working[0], "37.5 °C (99.5 °F), 1 h old: cold");
        assert!(young.working.iter().any(|line| line.starts_with("Under 3 h old")));
        assert_eq!(why(36.0, None).working[0], "36.0 °C (96.8 °F), age unknown: dangerously cold");
        assert_eq!(why(36.96, Some(9)).working[0], "36.96 °C (98.5 °F), 9 h old: dangerously cold");
    }

    #[test]
    fn the_sources_that_split_are_shown() {
        let older = why(36.0, Some(9));
        assert!(older.others.iter().any(|line| line.starts_with("Sources differ")));
        assert!(older.others[0].ends_with("it calls this severe"));
        assert!(!why(36.0, Some(3)).others.iter().any(|line| line.starts_with("Sources differ")));
    }

    #[test]
    fn what_not_to_do_comes_first_among_the_cautions() {
        assert_eq!(
            why(36.0, Some(9)).caution[0],
            "No heat before glucose. While you wait: dry it, wrap it, shelter it."
        );
        assert!(why(36.0, Some(3)).caution.contains(&"No glucose for a lamb of up to 5 hours.".to_owned()));
    }
}
