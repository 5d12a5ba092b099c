//! What to do with a cold lamb, in large words: one line a step.
#![cfg_attr(not(test), expect(dead_code, reason = "the screen of the cold lamb comes after its words"))]

use yeanling_core::reckon::body_temperature::Band;
use yeanling_core::reckon::cold_lamb::{Answer, Branch, Dissent, Never, Step, Vet};
use yeanling_core::units::{System, Volume};

use super::common::{span, volume_at_most};

/// Returns a step as it stands on the screen; `feed` is 50 ml/kg, where the weight is known.
pub(crate) fn step(step: Step, feed: Option<Volume>, system: System) -> String {
    match step {
        Step::LeaveWithEwe => "Leave it with its ewe. See that it feeds.".to_owned(),
        Step::CallVet => "Call your vet now.".to_owned(),
        Step::GlucoseByVetFirst => {
            "Glucose first, by your vet or someone your vet has trained. No warmth before it.".to_owned()
        }
        Step::Dry => "Rub it dry.".to_owned(),
        Step::Shelter => "Out of wind and rain.".to_owned(),
        Step::DoNotTube => "No tube.".to_owned(),
        Step::Warm => "Warm it.".to_owned(),
        Step::WarmTo37 => "Warm it until it reads 37 °C (98.6 °F).".to_owned(),
        Step::Feed => format!("Feed {} by bottle or tube.", amount(feed, system)),
        Step::FeedAt37 => {
            format!("Then, only with its head up and swallowing: {} of colostrum.", amount(feed, system))
        }
        Step::BackToEwe => "Back to its ewe.".to_owned(),
        Step::LookAgain => "Take its temperature again in 20 min.".to_owned(),
    }
}

fn amount(feed: Option<Volume>, system: System) -> String {
    match feed {
        Some(feed) => volume_at_most(feed, system),
        None => match system {
            System::Metric => "50 ml/kg".to_owned(),
            System::Us => "0.75 fl oz a pound (50 ml/kg)".to_owned(),
        },
    }
}

/// Returns what not to do.
pub(crate) const fn never(never: Never) -> &'static str {
    match never {
        Never::TubeWithoutSwallow => "Never tube a lamb that does not hold its head up and swallow.",
        Never::MilkUnder37 => "No milk and no colostrum below 37 °C (98.6 °F).",
        Never::WarmBeforeGlucose => "Never warm it before it has had energy.",
        Never::GlucoseWhenYoung => "No glucose for a lamb of up to 5 hours.",
    }
}

/// Returns whether a vet is needed.
pub(crate) const fn vet(vet: Vet) -> &'static str {
    match vet {
        Vet::NotNeeded => "No vet for this alone.",
        Vet::IfNoBetter => "No better in 20 min? Call your vet.",
        Vet::Now => "Call your vet now.",
    }
}

/// Returns the band of a temperature in a word or two.
pub(crate) const fn band(band: Band) -> &'static str {
    match band {
        Band::Severe => "dangerously cold",
        Band::Mild => "cold",
        Band::Normal => "warm as it should be",
        Band::Fever => "fever",
    }
}

/// Returns what an answer is called, with what it went by where that was not known.
pub(crate) fn heading(answer: &Answer) -> String {
    let cold = band(answer.band);
    match answer.branch {
        Branch::Normal | Branch::Mild | Branch::Fever => capital(cold),
        Branch::SevereYoung => format!("{}, up to 5 h old", capital(cold)),
        Branch::SevereOlder if answer.age.is_none() => {
            format!("{}, age unknown: taken as over 5 h", capital(cold))
        }
        Branch::SevereOlder => format!("{}, over 5 h old", capital(cold)),
    }
}

/// Returns the answer's age beside its temperature; an age is always shown.
pub(crate) fn age(answer: &Answer) -> String {
    answer.age.map_or_else(|| "age unknown".to_owned(), |age| format!("{} old", span(age)))
}

/// Returns what other sources would do.
pub(crate) const fn dissent(dissent: Dissent) -> &'static str {
    match dissent {
        Dissent::TubeBeforeWarming => {
            "Sources split: some tube a lamb over 5 h that holds its head up before they warm it. Henderson 1996 does \
             not. This goes by the stricter."
        }
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Every step, in no order, so that a page can list them.
pub(crate) const STEPS: [Step; 12] = [
    Step::LeaveWithEwe,
    Step::CallVet,
    Step::GlucoseByVetFirst,
    Step::Dry,
    Step::Shelter,
    Step::DoNotTube,
    Step::Warm,
    Step::WarmTo37,
    Step::Feed,
    Step::FeedAt37,
    Step::BackToEwe,
    Step::LookAgain,
];

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::cold_lamb::{decide, feed};
    use yeanling_core::units::{Mass, Temperature, TimeDelta};

    fn told(degrees: f64, hours: Option<i64>, swallows: bool, system: System) -> (String, Vec<String>) {
        let age = hours.map(TimeDelta::hours);
        let answer = decide(Temperature::from_celsius(degrees), age, Some(swallows)).expect("in bounds");
        let volume = feed(Mass::from_kilograms(4.0)).ok();
        let steps = answer.steps.iter().map(|one| step(*one, volume, system)).collect();
        (heading(&answer), steps)
    }

    #[test]
    fn a_mild_lamb_is_told_with_its_volume() {
        let (heading, steps) = told(38.0, Some(2), true, System::Metric);
        assert_eq!(heading, "Cold");
        assert_eq!(
            steps,
            [
                "Rub it dry.",
                "Out of wind and rain.",
                "Feed 200 ml by bottle or tube.",
                "Back to its ewe.",
                "Take its temperature again in 20 min.",
            ]
        );
        assert_eq!(told(38.0, Some(2), true, System::Us).1[2], "Feed 6.7 fl oz by bottle or tube.");
    }

    #[test]
    fn an_unknown_age_is_said_to_be_taken_as_older() {
        let (heading, steps) = told(36.0, None, true, System::Metric);
        assert_eq!(heading, "Dangerously cold, age unknown: taken as over 5 h");
        assert!(steps[1].starts_with("Glucose first, by your vet"));
        assert_eq!(told(36.0, Some(3), true, System::Metric).0, "Dangerously cold, up to 5 h old");
    }

    #[test]
    fn without_a_weight_the_rule_is_told() {
        assert_eq!(step(Step::Feed, None, System::Metric), "Feed 50 ml/kg by bottle or tube.");
        let us = step(Step::Feed, None, System::Us);
        assert_eq!(us, "Feed 0.75 fl oz a pound (50 ml/kg) by bottle or tube.");
    }

    #[test]
    fn no_line_holds_a_dose_or_is_too_long_to_read_at_night() {
        let lines = STEPS.map(|one| step(one, None, System::Metric));
        for line in &lines {
            assert!(line.len() < 90, "{line}");
            assert!(!line.contains('%') && !line.contains("mg"), "{line}");
        }
    }
}
