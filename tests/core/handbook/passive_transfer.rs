//! What antibody in a lamb's serum suggests.

use super::hours;
use yeanling_core::reckon::Strength;
use yeanling_core::reckon::passive_transfer::{MEASURED_AT, Suggests, reading};
use yeanling_core::units::TimeDelta;

#[track_caller]
fn check(grams: f64, suggests: Suggests) {
    let read = reading(Strength::from_grams_per_liter(grams), hours(24.0)).expect("in bounds");
    assert_eq!((read.suggests, read.early), (suggests, false), "{grams} g/L");
}

#[test]
fn under_15_grams_suggests_that_too_little_got_through() {
    // Source: Bond 2020, serum IgG < 15 g/L at 24 h.
    check(15.0, Suggests::Enough);
    check(14.99, Suggests::TooLittle);
    assert_eq!(MEASURED_AT, TimeDelta::hours(24));
}

#[test]
fn under_the_points_of_illness_and_death_it_suggests_more() {
    // Source: Gökçe et al. 2025, illness point 9.98, death point 1.93 g/L.
    check(9.98, Suggests::TooLittle);
    check(9.97, Suggests::IllnessLikelier);
    check(1.93, Suggests::IllnessLikelier);
    check(1.92, Suggests::DeathLikelier);
}

#[test]
fn blood_taken_before_a_day_is_said_to_be_early() {
    // Source: Bond 2020, at 24 h.
    let early = |age| reading(Strength::from_grams_per_liter(20.0), hours(age)).expect("in bounds").early;
    assert!(early(23.9));
    assert!(!early(24.0));
}

#[test]
fn what_no_serum_holds_is_refused() {
    // Source: ours, 0 to 100 g/L.
    for grams in [-1.0, 100.1, 1500.0, f64::NAN] {
        let refused = reading(Strength::from_grams_per_liter(grams), hours(24.0)).expect_err("out of bounds");
        assert_eq!(refused.allowed, Strength::IN_SERUM);
    }
}
