//! Why a newborn's grade asks for what it asks.

use yeanling_core::reckon::vigor::{Ask, FourGrade, GRADED_AT, SOURCES};
use yeanling_core::settings::Limits;
use yeanling_core::units::TimeDelta;

use super::{Why, cited, general};
use crate::common::minutes;

/// Returns what a vigor grade means and asks for.
pub fn vigor(grade: FourGrade, limits: &Limits) -> Why {
    let mut caution =
        vec!["Do not mix up the scales: others give the most points to the best lamb.".to_owned()];
    match grade {
        FourGrade::One | FourGrade::Two => {}
        FourGrade::Three | FourGrade::Four => {
            caution.push("Never tube a lamb that cannot hold its head up and swallow.".to_owned());
            caution.push("If it labors to breathe or does not come round, call your vet.".to_owned());
        }
    }
    caution.extend(general());
    Why {
        heading: format!("Vigor grade {} of 4, 1 is best", grade.number()),
        working: vec![
            format!("Grade {}: {}", grade.number(), meaning(grade)),
            asks(grade.ask(), limits, GRADED_AT),
        ],
        rule: "Graded once, at 5 minutes, before any tube feed. After one hour a score says little.".to_owned(),
        sources: cited(SOURCES),
        others: vec![
            "New Zealand smallholder press 2021: of lambs up and sucking in 15 min, 90–95% are alive at 90 days"
                .to_owned(),
        ],
        caution,
    }
}

/// Returns what a grade looks like.
pub(super) fn meaning(grade: FourGrade) -> &'static str {
    match grade {
        FourGrade::One => "up, or trying to rise",
        FourGrade::Two => "on its chest, knees under it, not yet rising",
        FourGrade::Three => "flat, head held up",
        FourGrade::Four => "head down, little movement, may labor to breathe",
    }
}

/// Returns what is to be done with a lamb of this age, by the farm's limits.
pub(super) fn asks(ask: Ask, limits: &Limits, age: TimeDelta) -> String {
    match ask {
        Ask::LeaveToDam => "Leave it to its dam.".to_owned(),
        Ask::WatchUp if age >= TimeDelta::minutes(i64::from(limits.up_minutes)) => {
            "It should be up by now: dry it, warm it, help it stand.".to_owned()
        }
        Ask::WatchUp => format!("Watch that it is up by {}.", minutes(limits.up_minutes)),
        Ask::HelpToSuck => "Help it nurse.".to_owned(),
        Ask::ActNow => "Act now: clear its nose and mouth, rub it dry, warm it, watch it breathe.".to_owned(),
    }
}

/// Returns what a grade looks like, for a button.
pub fn vigor_meaning(grade: FourGrade) -> &'static str {
    meaning(grade)
}

/// Returns what a grade asks for of a lamb of this age, by the farm's limits.
pub fn vigor_asks(grade: FourGrade, limits: &Limits, age: TimeDelta) -> String {
    asks(grade.ask(), limits, age)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(number: u8, heading: &str, working: [&str; 2]) {
        let why = vigor(FourGrade::from_number(number).expect("a grade"), &Limits::default());
        assert_eq!(why.heading, heading);
        assert_eq!(why.working, working);
    }

    #[test]
    fn a_grade_says_what_it_looks_like_and_what_to_do() {
        let leave = ["Grade 1: up, or trying to rise", "Leave it to its dam."];
        check(1, "Vigor grade 1 of 4, 1 is best", leave);
        let act = [
            "Grade 4: head down, little movement, may labor to breathe",
            "Act now: clear its nose and mouth, rub it dry, warm it, watch it breathe.",
        ];
        check(4, "Vigor grade 4 of 4, 1 is best", act);
    }

    #[test]
    fn a_weak_lamb_is_never_tubed() {
        assert!(
            vigor(FourGrade::Three, &Limits::default())
                .caution
                .iter()
                .any(|line| line.contains("Never tube"))
        );
        assert!(
            !vigor(FourGrade::One, &Limits::default()).caution.iter().any(|line| line.contains("Never tube"))
        );
    }
}
