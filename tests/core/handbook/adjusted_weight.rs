//! Weights adjusted to a set age.

use super::{kg, near};
use yeanling_core::reckon::adjusted_weight::{
    Adjusted, DamAge, Kind, NotAdjusted, ToAge, Weighed, adjust, born_and_reared,
};
use yeanling_core::units::{Mass, TimeDelta};

/// The twin of the printed example: 10 lb at birth, 62 lb at 61 days, its dam two years old.
fn twin() -> Weighed {
    Weighed {
        birth: Mass::from_pounds(10.0),
        weight: Mass::from_pounds(62.0),
        age: TimeDelta::days(61),
        dam: DamAge::Two,
        kind: Kind::Ewe,
        born: 2,
        reared: 2,
    }
}

fn adjusted(lamb: &Weighed) -> Adjusted {
    adjust(lamb).expect("it can be adjusted")
}

#[test]
fn the_printed_twin_is_adjusted_to_79_91_pounds() {
    // Source: Barkley, Penn State Extension: 61.15 lb at 60 days, adjusted 79.91 lb.
    let got = adjusted(&twin());
    assert_eq!(got.at, ToAge::Day60);
    near(got.straight.as_pounds(), 61.15, 0.005);
    near(got.mass.as_pounds(), 79.91, 0.005);
}

#[test]
fn the_bold_factors_are_the_printed_ones() {
    // Source: US sheep industry handbook: dam of two years 1.08, ewe lamb 1.00, twin reared as twin 1.21.
    near(DamAge::Two.factor(), 1.08, 0.0);
    near(Kind::Ewe.factor(), 1.0, 0.0);
    near(born_and_reared(2, 2).expect("printed"), 1.21, 0.0);
}

#[test]
fn the_other_factors_are_as_recalled() {
    // Source: memory, US sheep industry handbook.
    let dams = [DamAge::One, DamAge::ThreeToSix, DamAge::OverSix].map(DamAge::factor);
    assert_eq!(dams.map(|factor| format!("{factor:.2}")), ["1.14", "1.00", "1.05"]);
    assert_eq!([Kind::Wether, Kind::Ram].map(|kind| format!("{:.2}", kind.factor())), ["0.97", "0.91"]);
    let litters = [(1, 1), (1, 2), (2, 1), (3, 1), (3, 2), (3, 3), (4, 2)];
    let factors = litters.map(|(born, reared)| born_and_reared(born, reared).expect("recalled"));
    for (got, expected) in factors.into_iter().zip([1.0, 1.17, 1.11, 1.19, 1.29, 1.36, 1.29]) {
        near(got, expected, 0.0);
    }
    assert_eq!(
        [(1, 3), (2, 3), (0, 1), (1, 0)].map(|(born, reared)| born_and_reared(born, reared)),
        [None; 4]
    );
}

#[test]
fn a_weight_counts_within_its_span_of_days() {
    // Source: Boggess 1991: 7 days about 60, 28 about 90. Ours: 7 about 30, 28 about 120.
    let of = |days| ToAge::of(TimeDelta::days(days));
    assert_eq!([22, 23, 37, 38].map(of), [None, Some(ToAge::Day30), Some(ToAge::Day30), None]);
    assert_eq!([52, 53, 61].map(of), [None, Some(ToAge::Day60), Some(ToAge::Day60)]);
    // Where two spans meet, the nearer age: 75 days lie outside the first and within the second.
    assert_eq!(
        [67, 75, 90, 104, 106, 148, 149].map(of),
        [
            Some(ToAge::Day60),
            Some(ToAge::Day90),
            Some(ToAge::Day90),
            Some(ToAge::Day90),
            Some(ToAge::Day120),
            Some(ToAge::Day120),
            None
        ]
    );
    let young = Weighed { age: TimeDelta::days(10), ..twin() };
    assert_eq!(adjust(&young), Err(NotAdjusted::WrongAge(young.age)));
}

#[test]
fn what_cannot_be_adjusted_says_why() {
    // Ours.
    let heavy = Weighed { birth: kg(12.1), ..twin() };
    assert!(matches!(adjust(&heavy), Err(NotAdjusted::Birth(error)) if error.allowed == Mass::AT_BIRTH));
    let odd = Weighed { born: 2, reared: 3, ..twin() };
    assert_eq!(adjust(&odd), Err(NotAdjusted::NoFactor { born: 2, reared: 3 }));
}
