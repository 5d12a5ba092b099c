//! How long colostrum works, against the points in print.

use super::{hours, near};
use yeanling_core::reckon::window::{EDGES, Stretch, absorption, left, place_on_ribbon, stretch};
use yeanling_core::units::TimeDelta;

#[track_caller]
fn check(age: f64, percent: f64) {
    near(absorption(hours(age)), percent, 0.005);
}

#[test]
fn the_curve_runs_through_the_printed_points() {
    // Source: Dominguez et al. 2001, Research in Veterinary Science 70:275.
    check(0.5, 16.9);
    check(12.0, 9.8);
    check(24.0, 0.0);
}

#[test]
fn between_the_points_the_curve_is_straight() {
    // Source: ours, straight lines through Dominguez et al. 2001.
    check(0.0, 16.9);
    check(0.25, 16.9);
    check(6.25, (16.9 + 9.8) / 2.0);
    check(18.0, 4.9);
    near(absorption(hours(6.0)), 13.5, 0.05);
}

#[test]
fn an_age_before_birth_is_just_born_and_a_late_one_gets_nothing() {
    // Source: ours (clocks disagree); Dominguez et al. 2001, none at 24 h.
    check(-5.0, 16.9);
    check(24.01, 0.0);
    check(1000.0, 0.0);
}

#[test]
fn the_curve_never_rises() {
    // Source: ours.
    let curve: Vec<f64> = (-60..1800).map(|minutes| absorption(TimeDelta::minutes(minutes))).collect();
    assert!(curve.windows(2).all(|pair| pair[1] <= pair[0]));
}

#[test]
fn each_edge_begins_its_stretch() {
    // Source: common practice (1 h); RUMA, SRUC (2 h); AHDB, Teagasc (6 h); Kerr, Oregon State (12 h); Dominguez (24 h).
    let second = TimeDelta::seconds(1);
    let stretches = [
        Stretch::FirstHour,
        Stretch::ToTwoHours,
        Stretch::ToSixHours,
        Stretch::ToTwelveHours,
        Stretch::ToClose,
        Stretch::Closed,
    ];
    for (edge, pair) in EDGES.into_iter().zip(stretches.windows(2)) {
        assert_eq!([stretch(edge - second), stretch(edge)], pair);
    }
    assert_eq!(stretch(hours(-2.0)), Stretch::FirstHour);
}

#[test]
fn what_is_left_runs_from_a_day_to_nothing() {
    // Source: Dominguez et al. 2001, none at 24 h.
    assert_eq!(left(hours(-1.0)), Some(hours(24.0)));
    assert_eq!(left(hours(1.5)), Some(hours(22.5)));
    assert_eq!(left(hours(24.0) - TimeDelta::seconds(1)), Some(TimeDelta::seconds(1)));
    assert_eq!(left(hours(24.0)), None);
    assert_eq!(left(hours(80.0)), None);
}

#[test]
fn the_ribbon_gives_the_first_two_hours_room() {
    // Source: ours, a square root.
    for (age, place) in
        [(-1.0, 0.0), (0.0, 0.0), (1.5, 0.25), (6.0, 0.5), (13.5, 0.75), (24.0, 1.0), (99.0, 1.0)]
    {
        near(place_on_ribbon(hours(age)), place, 1e-9);
    }
    assert!(place_on_ribbon(hours(2.0)) > 0.28);
}
