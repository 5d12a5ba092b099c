//! Why this much of the window is left.

use yeanling_core::reckon::window::{CLOSE, CURVE, DISSENT, SOURCES, Stretch, absorption, left, stretch};
use yeanling_core::units::TimeDelta;

use super::{Why, cited, general, headings, source_line};
use crate::common::span;

/// Returns why the window stands where it does at this age.
pub fn window(age: TimeDelta) -> Why {
    let age = age.max(TimeDelta::zero());
    let working = vec![
        reaches_the_blood(age),
        formula(age),
        match left(age) {
            Some(left) => format!("{} h − {} = {} left", CLOSE.num_hours(), span(age), span(left)),
            None => "The window closed at 24 h".to_owned(),
        },
    ];
    Why {
        heading: headings::WINDOW.to_owned(),
        working,
        rule: rule(stretch(age)).to_owned(),
        sources: cited(SOURCES),
        others: vec![source_line(&DISSENT)],
        caution: general(),
    }
}

fn reaches_the_blood(age: TimeDelta) -> String {
    if age < CLOSE {
        format!("About {:.0}% of the antibody it swallows still reaches the blood", absorption(age))
    } else {
        "None of the antibody it swallows reaches the blood any more".to_owned()
    }
}

fn formula(age: TimeDelta) -> String {
    let hours = age.as_seconds_f64() / 3600.0;
    let result = absorption(age);
    let by = source_line(&CURVE);
    if hours <= 0.5 {
        format!("Up to half an hour: {result:.0}% ({by})")
    } else if hours <= 12.0 {
        format!("16.9 − ({hours:.1} h − 0.5 h) × 7.1 ÷ 11.5 h = {result:.0}%")
    } else if age < CLOSE {
        format!("9.8 × (24 h − {hours:.1} h) ÷ 12 h = {result:.0}%")
    } else {
        format!("From 24 h on: none ({by})")
    }
}

fn rule(stretch: Stretch) -> &'static str {
    match stretch {
        Stretch::FirstHour => "The first hour is the best.",
        Stretch::ToTwoHours => "Published: first feed within 2 h (RUMA, SRUC, Vet Times 2018).",
        Stretch::ToSixHours => "Published: 6 h at the latest (AHDB, Teagasc).",
        Stretch::ToTwelveHours => "It is late. Published: 12 h is the absolute latest (Kerr, Oregon State).",
        Stretch::ToClose => "Little still gets through. Colostrum is worth giving up to 24 h.",
        Stretch::Closed => {
            "After 24 h no antibody gets through. Colostrum still feeds the lamb and coats its gut."
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(age: TimeDelta, working: [&str; 3]) {
        assert_eq!(window(age).working, working);
    }

    #[test]
    fn the_working_fills_in_the_age() {
        check(
            TimeDelta::hours(6),
            [
                "About 14% of the antibody it swallows still reaches the blood",
                "16.9 − (6.0 h − 0.5 h) × 7.1 ÷ 11.5 h = 14%",
                "24 h − 6 h = 18 h left",
            ],
        );
        check(
            TimeDelta::hours(30),
            [
                "None of the antibody it swallows reaches the blood any more",
                "From 24 h on: none (Dominguez et al. 2001, Research in Veterinary Science 70:275)",
                "The window closed at 24 h",
            ],
        );
    }

    #[test]
    fn the_study_that_disagrees_is_shown() {
        assert!(window(TimeDelta::hours(3)).others.iter().any(|line| line.contains("Hernández-Castellano")));
    }
}
