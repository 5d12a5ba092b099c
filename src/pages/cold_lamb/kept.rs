//! What was answered without a record: a few lines of text, kept on this phone so that a reload goes on from there.

use yeanling_core::book::GlucoseBy;
use yeanling_core::flock::{Reading, VetCall};
use yeanling_core::reckon::body_temperature::warm_enough_to_feed;
use yeanling_core::units::{Mass, Moment, Temperature};

use super::case::{Able, Age, Case};

/// Returns the case as text, a line an answer.
pub(super) fn write(case: &Case) -> String {
    let mut lines: Vec<String> = case
        .readings
        .iter()
        .map(|reading| format!("read {} {}", reading.at, reading.temperature.as_celsius()))
        .collect();
    let age = match case.age {
        Age::UpToFive => Some("up-to-five"),
        Age::OverFive => Some("over-five"),
        Age::Unknown => Some("unknown"),
        // What a record knows is not kept twice.
        Age::Ask | Age::Known(_) => None,
    };
    let able = match case.able {
        Able::Ask => None,
        Able::Yes => Some("yes"),
        Able::No => Some("no"),
        Able::NotSure => Some("not-sure"),
    };
    lines.extend(age.map(|age| format!("age {age}")));
    lines.extend(able.map(|able| format!("able {able}")));
    lines.extend(case.weight.map(|weight| format!("kg {}", weight.as_kilograms())));
    lines.extend(case.warmed.map(|at| format!("warmed {at}")));
    lines.extend(case.vet.as_ref().map(|call| format!("vet {}", call.at)));
    lines.extend(case.glucose.map(|(at, by)| match by {
        GlucoseBy::Vet => format!("glucose-vet {at}"),
        GlucoseBy::Trained => format!("glucose-trained {at}"),
    }));
    lines.join("\n")
}

/// Reads a case; a line that makes no sense is passed over, and what it said is asked again.
pub(super) fn read(text: &str) -> Case {
    let mut case = Case::default();
    for line in text.lines() {
        let words: Vec<&str> = line.split(' ').collect();
        match words.as_slice() {
            ["read", at, celsius] => case.readings.extend(reading(at, celsius)),
            ["age", "up-to-five"] => case.age = Age::UpToFive,
            ["age", "over-five"] => case.age = Age::OverFive,
            ["age", "unknown"] => case.age = Age::Unknown,
            ["able", "yes"] => case.able = Able::Yes,
            ["able", "no"] => case.able = Able::No,
            ["able", "not-sure"] => case.able = Able::NotSure,
            ["kg", kilograms] => case.weight = kilograms.parse().ok().map(Mass::from_kilograms),
            ["warmed", at] => case.warmed = at.parse().ok(),
            ["vet", at] => case.vet = at.parse().ok().map(|at| VetCall { at, said: None }),
            ["glucose-vet", at] => case.glucose = at.parse().ok().map(|at| (at, GlucoseBy::Vet)),
            ["glucose-trained", at] => case.glucose = at.parse().ok().map(|at| (at, GlucoseBy::Trained)),
            _ => {}
        }
    }
    case
}

fn reading(at: &str, celsius: &str) -> Option<Reading> {
    let at: Moment = at.parse().ok()?;
    let temperature = Temperature::from_celsius(celsius.parse().ok()?);
    Temperature::IN_A_LAMB.check(temperature).ok().map(|temperature| Reading { at, temperature })
}

/// Takes a reading in: a lamb said to be young is asked about again, since it grows older meanwhile, but not while its
/// cold spell goes on: the branch is fixed when that begins. What was done in an older spell ended with it.
pub(super) fn take(case: &mut Case, reading: Reading) {
    let cold = |reading: &Reading| !warm_enough_to_feed(reading.temperature);
    let goes_on = case.readings.last().is_some_and(cold) && cold(&reading);
    case.readings.push(reading);
    case.able = Able::Ask;
    if goes_on {
        return;
    }
    (case.vet, case.warmed, case.glucose) = (None, None, None);
    case.age = match case.age {
        Age::OverFive => Age::OverFive,
        Age::Unknown => Age::Unknown,
        Age::Ask | Age::Known(_) | Age::UpToFive => Age::Ask,
    };
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(minutes: i64) -> Moment {
        Moment::from_unix_milliseconds(1_772_000_000_000 + minutes * 60_000, -300)
    }

    fn cold(minutes: i64, celsius: f64) -> Reading {
        Reading { at: at(minutes), temperature: Temperature::from_celsius(celsius) }
    }

    #[test]
    fn what_was_answered_comes_back_as_it_was() {
        let case = Case {
            readings: vec![cold(0, 35.5), cold(22, 36.25)],
            age: Age::UpToFive,
            able: Able::NotSure,
            weight: Some(Mass::from_kilograms(3.9)),
            warmed: Some(at(3)),
            glucose: Some((at(5), GlucoseBy::Trained)),
            vet: Some(VetCall { at: at(4), said: None }),
            fed: None,
        };
        assert_eq!(read(&write(&case)), case);
        assert_eq!(read(""), Case::default());
    }

    #[test]
    fn a_spoiled_line_is_asked_again() {
        let case =
            read("read yesterday 36\nread 2026-02-25T03:00:00.000-05:00 98.6\nage old\nable\nkg heavy");
        assert_eq!(case, Case::default());
    }

    #[test]
    fn a_young_lamb_is_asked_about_again_and_an_older_one_is_not() {
        for (before, after) in [
            (Age::UpToFive, Age::Ask),
            (Age::OverFive, Age::OverFive),
            (Age::Unknown, Age::Unknown),
            (Age::Ask, Age::Ask),
        ] {
            let mut case = Case { age: before, able: Able::Yes, ..Case::default() };
            take(&mut case, cold(20, 36.0));
            assert_eq!((case.age, case.able), (after, Able::Ask));
            assert_eq!(case.answer(), None);
            // Within one spell of cold nobody is asked twice.
            (case.age, case.warmed) = (before, Some(at(21)));
            take(&mut case, cold(40, 36.4));
            assert_eq!((case.age, case.able, case.warmed), (before, Able::Ask, Some(at(21))));
            take(&mut case, cold(60, 37.5));
            assert_eq!((case.age, case.warmed), (after, None));
        }
    }
}
