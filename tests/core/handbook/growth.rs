//! The eight-week target.

use super::{kg, near};
use yeanling_core::reckon::growth::{FLAG_PERCENT, TARGET, TARGET_AT, expected};
use yeanling_core::units::{Mass, TimeDelta};

#[track_caller]
fn check(birth_weight: f64, days: i64, target: f64, flag: f64) {
    let expected =
        expected(kg(birth_weight), TimeDelta::days(days)).expect("a birth weight").expect("in time");
    near(expected.target.as_kilograms(), target, 1e-9);
    near(expected.flag.as_kilograms(), flag, 1e-9);
}

#[test]
fn twenty_kilograms_at_eight_weeks_flagged_under_85_percent() {
    // Source: AHDB, eight-week target 20 kg, flag under 85 %.
    assert_eq!((TARGET, TARGET_AT), (kg(20.0), TimeDelta::weeks(8)));
    near(FLAG_PERCENT, 85.0, 0.0);
    check(4.0, 56, 20.0, 17.0);
    check(2.5, 56, 20.0, 17.0);
}

#[test]
fn the_way_there_is_straight_and_the_flag_starts_at_the_birth_weight() {
    // Source: ours.
    check(4.0, 0, 4.0, 4.0);
    check(4.0, 28, 12.0, 10.2);
}

#[test]
fn past_eight_weeks_nothing_is_said() {
    // Source: ours.
    assert_eq!(expected(kg(4.0), TARGET_AT + TimeDelta::milliseconds(1)), Ok(None));
    assert_eq!(expected(kg(4.0), TimeDelta::milliseconds(-1)), Ok(None));
    let refused = expected(kg(12.1), TimeDelta::days(3)).expect_err("no birth weight");
    assert_eq!(refused.allowed, Mass::AT_BIRTH);
}
