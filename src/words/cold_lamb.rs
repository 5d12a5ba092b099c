//! What to do with a cold lamb, in large words: one line a step.

pub mod courses;

use yeanling_core::book::{Mouth, Suck};
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::body_temperature::{self, Band};
use yeanling_core::reckon::cold_lamb::{Branch, ColdLambAnswer, Dissent, Never, Step, Vet};
use yeanling_core::reckon::warming::{Look, Progress};
use yeanling_core::units::{Moment, System, Temperature, Volume};
use yeanling_core::watch::Hold;

use super::common::{capital, mass, span, temperature_both, volume};

/// The aid's name.
pub const TITLE: &str = "Cold lamb";
/// Goes on with another lamb.
pub const ANOTHER: &str = "Another cold lamb";
/// Says where the answers stay without a record.
pub const NO_RECORD: &str = "A lamb with no record. Your answers stay on this phone.";
/// Asks for a reading.
pub const HOW_WARM: &str = "How warm is it?";
/// Asks for the next reading.
pub const HOW_WARM_NOW: &str = "Take its temperature again";
/// Says what is normal.
pub const NORMAL: &str = "Normal is *39 to 40 °C (102.2 to 104 °F)*.";
/// Labels the temperature.
pub const TEMPERATURE: &str = "Temperature";
/// Names the choice of the unit.
pub const UNIT: &str = "Unit of temperature";
/// Takes the reading.
pub const READ: &str = "Use this reading";
/// Asks the age.
pub const HOW_OLD: &str = "How old is it?";
/// Up to five hours.
pub const UP_TO_FIVE: &str = "up to 5 h old";
/// Over five hours.
pub const OVER_FIVE: &str = "over 5 h old";
/// Nobody knows.
pub const AGE_UNKNOWN: &str = "not known";
/// What that means.
pub const AGE_UNKNOWN_SUB: &str = "treated as over 5 h, to be safe";
/// Asks for head and swallow.
pub const HEAD_AND_SWALLOW: &str = "Does it hold its head up and swallow?";
/// Says how it is tried.
pub const HOW_TO_TRY: &str =
    "A clean finger in its mouth: it should suck and swallow. (Common practice, no source.)";
/// It does both.
pub const ABLE: &str = "Yes, both";
/// It does not.
pub const NOT_ABLE: &str = "No";
/// Nobody is sure.
pub const NOT_SURE: &str = "Not sure";
/// What that means.
pub const NOT_SURE_SUB: &str = "treated as no, to be safe";
/// Heads what not to do.
pub const NEVER: &str = "Never";
/// Heads the next look.
pub const LOOK_AGAIN: &str = "Look again at";
/// Asks for another reading before its time.
pub const NEW_READING: &str = "New reading";
/// Heads the readings before.
pub const EARLIER: &str = "Readings before";
/// Notes that its warming began.
pub const WARMING_BEGUN: &str = "Warming begun";
/// Notes the call.
pub const VET_CALLED: &str = "Vet called";
/// Leads to the lamb, where the tube has its list.
pub const OTHER_FEED: &str = "Other feed, tube";
/// Leads to the lamb.
pub const TO_THE_LAMB: &str = "Lamb record";
/// Opens the weight.
pub const WEIGH_IT: &str = "Weigh it for the volume";
/// Asks for the weight.
pub const WEIGHT_FOR_VOLUME: &str = "Weigh it, and the steps say how much.";
/// Forgets the answers.
pub const START_OVER: &str = "Start over";
/// Says what a healthy newborn does in bad weather.
pub const FIRST_DROP: &str = "In bad weather a healthy newborn drops 2 to 3 °C (4 to 5 °F) in its first hour. It is back by 3 h. Follow the steps all the same.";

/// Says what a fever asks for: warmth is taken away first, and one reading is not yet a fever.
pub const FEVER: &str = "*Warmer than 40 °C (104 °F)*: take it out of the box, from the lamp, out of the sun, and read it again in 30 min. Still \
     40.1 to 40.5 °C (104.2 to 104.9 °F), bright and sucking: vet today. Over that, dull or not sucking: vet now.";

/// Returns whose temperature it is: "*14a* · 3 h old · 3.9 kg".
pub fn whose(name: &str, lamb: &Lamb, now: Moment, system: System) -> String {
    let mut parts = vec![format!("*{name}*"), super::lamb::age(lamb, now)];
    parts.extend(lamb.last_weight(now).map(|weight| mass(weight.mass, system)));
    parts.join(" · ")
}

/// Returns the button that takes a number on the other scale: "It is 98.6 °F".
pub fn take_as(typed: &str, system: System) -> String {
    format!("It is {typed} {}", degrees(system))
}

/// Returns a reading over the next question.
pub fn just_read(read: Temperature, system: System) -> String {
    format!("*{}*", reading_of(&temperature_both(read, system), read))
}

fn reading_of(told: &str, read: Temperature) -> String {
    match body_temperature::band(read) {
        Ok(is) => format!("{told}: {}", band(is)),
        Err(_) => told.to_owned(),
    }
}

/// Returns an earlier reading: "03:12 · 36.0 °C (96.8 °F): dangerously cold".
pub fn reading(clock: &str, told: &str, read: Temperature) -> String {
    format!("{clock} · {}", reading_of(told, read))
}

/// Returns the age beside the temperature.
pub fn at_age(age: &str) -> String {
    format!("*{age}*")
}

/// Returns what two readings say of the warming.
pub const fn progress(progress: Progress) -> &'static str {
    match progress {
        Progress::WarmEnough => "37 °C (98.6 °F) reached.",
        Progress::Rising => "Warming. Go on.",
        Progress::NotRising => "Not warming: call your vet.",
    }
}

/// Returns the two readings.
pub fn from_to(before: &str, now: &str) -> String {
    format!("{before}, now {now}.")
}

/// Returns what two readings say of the warming, and both.
pub fn warming(is: Progress, before: &str, now: &str) -> String {
    format!("*{}* {}", progress(is), from_to(before, now))
}

/// Returns what a finger in its mouth said, and what that holds back.
pub fn felt(mouth: Mouth, suck: Suck, hold: Option<Hold>, system: System) -> String {
    let line = super::danger::mouth_line(mouth, suck);
    match hold {
        Some(hold) => format!("{line}. {}", super::lamb::held(hold, system)),
        None => line,
    }
}

/// Returns the name of a scale.
pub const fn degrees(system: System) -> &'static str {
    match system {
        System::Metric => "°C",
        System::Us => "°F",
    }
}

/// Returns when the vet was called.
pub fn vet_called_at(clock: &str) -> String {
    format!("Vet called {clock}.")
}

/// Returns since when it is warmed.
pub fn warming_since(clock: &str) -> String {
    format!("Warming since {clock}")
}

/// Returns what it was fed.
pub fn fed_at(volume: &str, clock: &str) -> String {
    format!("Fed {volume} {clock}")
}

/// Returns the button of a feed by bottle.
pub fn fed_by_bottle(volume: &str) -> String {
    format!("Fed {volume} by bottle")
}

/// Returns how long until the next look.
pub fn look(look: Look) -> String {
    match look {
        Look::NotYet(left) if left < yeanling_core::units::TimeDelta::minutes(1) => "in a minute".to_owned(),
        Look::NotYet(left) => format!("in {}", span(left)),
        Look::Now(over) if over < yeanling_core::units::TimeDelta::minutes(1) => "now".to_owned(),
        Look::Now(over) => format!("{} ago: read it now", span(over)),
    }
}

/// Returns a step as it stands on the screen; `feed` is 50 ml/kg, where the weight is known.
pub fn step(step: Step, feed: Option<Volume>, system: System) -> String {
    match step {
        Step::LeaveWithEwe => "Leave it with its ewe. See that it feeds.".to_owned(),
        Step::CallVet => "Call your vet now.".to_owned(),
        Step::ShelterAndWrap => {
            "Out of the wind, dry, wrapped, nose free, off the floor. No lamp or box yet.".to_owned()
        }
        Step::NothingByMouth => "Nothing by mouth.".to_owned(),
        Step::GlucoseByMouthFirst => {
            "Glucose by mouth first, a little at a time, as your vet told you. Then warmth.".to_owned()
        }
        Step::GlucoseByVetFirst => {
            "Glucose injection first, by your vet or someone your vet trained. Then warmth.".to_owned()
        }
        Step::NoGlucose => "No glucose within 30 min? Ask your vet on the phone what to do.".to_owned(),
        Step::NobodyReached => {
            "Nobody reached? Cold kills; warming without sugar can too. Neither is safe.".to_owned()
        }
        Step::WarmSlowly => "If you warm it: slowly, look every 10 min. Fits: stop the heat.".to_owned(),
        Step::OutOfHeat => "Out of the box, lamp or sun.".to_owned(),
        Step::LookAfterHeat => "Take its temperature again in 30 min.".to_owned(),
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
        Some(feed) => volume(feed, system),
        None => match system {
            System::Metric => "50 ml/kg".to_owned(),
            System::Us => "0.75 fl oz a pound (50 ml/kg)".to_owned(),
        },
    }
}

/// Returns what not to do.
pub const fn never(never: Never) -> &'static str {
    match never {
        Never::TubeWithoutSwallow => "Never tube a lamb that does not hold its head up and swallow.",
        Never::MilkUnder37 => "No milk and no colostrum below 37 °C (98.6 °F).",
        Never::WarmBeforeGlucose => "No heat before glucose. While you wait: dry it, wrap it, shelter it.",
        Never::GlucoseWhenYoung => "No glucose for a lamb of up to 5 hours.",
    }
}

/// Returns whether a vet is needed.
pub const fn vet(vet: Vet) -> &'static str {
    match vet {
        Vet::NotNeeded => "No vet for this alone.",
        Vet::IfNoBetter => "Not better in 20 min? Call your vet.",
        Vet::Now => "Call your vet now.",
    }
}

/// Returns the band of a temperature in a word or two.
pub const fn band(band: Band) -> &'static str {
    match band {
        Band::Severe => "dangerously cold",
        Band::Mild => "cold",
        Band::Normal => "normal",
        Band::Fever => "fever",
    }
}

/// Returns what an answer is called, with what it went by where that was not known.
pub fn heading(answer: &ColdLambAnswer) -> String {
    let cold = band(answer.band);
    match answer.branch {
        Branch::Normal | Branch::Mild | Branch::Fever => capital(cold),
        Branch::SevereYoung => format!("{}, up to 5 h old", capital(cold)),
        Branch::SevereOlder if answer.age.is_none() => {
            format!("{}, age not known: treated as over 5 h", capital(cold))
        }
        Branch::SevereOlder => format!("{}, over 5 h old", capital(cold)),
    }
}

/// Returns the answer's age beside its temperature; an age is always shown.
pub fn age(answer: &ColdLambAnswer) -> String {
    answer.age.map_or_else(|| "age unknown".to_owned(), super::watch::age)
}

/// Returns what other sources would do.
pub const fn dissent(dissent: Dissent) -> &'static str {
    match dissent {
        Dissent::TubeBeforeWarming => {
            "Sources differ: some tube a lamb over 5 h that holds its head up before warming it. Henderson 1996 does not. Yeanling follows the stricter."
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use yeanling_core::reckon::cold_lamb::{decide, feed};
    use yeanling_core::units::{Mass, Temperature, TimeDelta};

    /// Every step, in no order, so that a page can list them.
    const STEPS: [Step; 20] = [
        Step::ShelterAndWrap,
        Step::NothingByMouth,
        Step::GlucoseByMouthFirst,
        Step::NoGlucose,
        Step::NobodyReached,
        Step::WarmSlowly,
        Step::OutOfHeat,
        Step::LookAfterHeat,
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

    fn told(degrees: f64, hours: Option<i64>, swallows: bool, system: System) -> (String, Vec<String>) {
        let age = hours.map(TimeDelta::hours);
        let answer = decide(Temperature::from_celsius(degrees), age, Some(swallows)).expect("in bounds");
        let volume = feed(Mass::from_kilograms(4.0)).ok().map(|feed| feed.offered(system));
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
        assert_eq!(heading, "Dangerously cold, age not known: treated as over 5 h");
        assert!(steps[2].starts_with("Glucose by mouth first"), "{steps:?}");
        let (_, steps) = told(36.0, None, false, System::Metric);
        assert!(steps[3].starts_with("Glucose injection first, by your vet"), "{steps:?}");
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
