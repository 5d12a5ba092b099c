//! How a cold lamb is warmed, and what became of those that were.

use super::celsius;
use yeanling_core::reckon::warming::{
    AIR, LIVED_A_WEEK_PERCENT, LOOK_EVERY, Look, Progress, Treated, look, look_again, progress,
};
use yeanling_core::units::{Moment, TimeDelta};

#[test]
fn the_air_is_at_40_degrees() {
    // Source: Eales et al. 1984, Veterinary Record 114:469.
    assert_eq!(AIR, celsius(40.0));
}

#[test]
fn a_lamb_is_looked_at_every_20_minutes_and_not_sooner() {
    // Source: Henderson 1997.
    let last: Moment = "2026-02-25T03:12:00.000-05:00".parse().expect("a moment");
    let after = |seconds| look(last, last + TimeDelta::seconds(seconds));
    assert_eq!(LOOK_EVERY, TimeDelta::minutes(20));
    assert_eq!(look_again(last).since(last), TimeDelta::minutes(20));
    assert_eq!(after(0), Look::NotYet(TimeDelta::minutes(20)));
    assert_eq!(after(1199), Look::NotYet(TimeDelta::seconds(1)));
    assert_eq!(after(1200), Look::Now(TimeDelta::zero()));
    assert_eq!(after(1500), Look::Now(TimeDelta::minutes(5)));
    assert_eq!(after(-600), Look::NotYet(TimeDelta::minutes(20)), "clocks that disagree");
}

#[test]
fn of_treated_lambs_three_in_four_lived_a_week() {
    // Source: Eales et al. 1984, Veterinary Record 114:469.
    let expected = [
        (Treated::ToFiveHours, 76),
        (Treated::Older, 64),
        (Treated::FoundMild, 83),
        (Treated::FoundSevere, 65),
    ];
    assert_eq!(LIVED_A_WEEK_PERCENT, expected);
}

#[test]
fn two_readings_say_whether_warmth_works() {
    // Source: ours; 37 °C is enough (Henderson 1996).
    let of = |before, now| progress(celsius(before), celsius(now));
    assert_eq!(of(35.0, 36.0), Progress::Rising);
    assert_eq!(of(36.0, 36.0), Progress::NotRising);
    assert_eq!(of(36.0, 35.0), Progress::NotRising);
    assert_eq!(of(36.0, 37.0), Progress::WarmEnough);
    assert_eq!(of(39.0, 38.0), Progress::WarmEnough);
    assert_eq!(of(36.0, f64::NAN), Progress::NotRising);
}
