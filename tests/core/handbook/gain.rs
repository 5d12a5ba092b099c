//! How fast a lamb grew.

use super::{kg, near};
use yeanling_core::reckon::gain::{
    MOST_GRAMS_A_DAY, MOST_LOST_PERCENT, ODD_GRAMS_A_DAY, ODD_LOST_PERCENT, SOURCES, gain, plausible,
};
use yeanling_core::units::{Mass, Moment, TimeDelta};

fn born() -> Moment {
    "2026-03-01T04:00:00+01:00".parse().expect("a moment")
}

#[test]
fn gain_is_the_weight_put_on_over_the_days() {
    // Source: Barkley, Penn State Extension: 10 lb at birth, 62 lb at 61 days: 52 lb in 61 days.
    let at = born() + TimeDelta::days(61);
    let gain = gain((born(), Mass::from_pounds(10.0)), (at, Mass::from_pounds(62.0))).expect("61 days");
    near(Mass::from_kilograms(gain.grams_a_day / 1000.0).as_pounds(), 52.0 / 61.0, 1e-9);
}

#[test]
fn days_go_by_the_clock_and_not_by_the_calendar() {
    // Ours: over the change of clocks a day is a day.
    let after: Moment = "2026-04-01T05:00:00+02:00".parse().expect("a moment");
    let gain = gain((born(), kg(4.0)), (after, kg(10.0))).expect("days");
    near(gain.days, 30.0 + 23.0 / 24.0 + 1.0 / 24.0, 1e-9);
}

#[test]
fn two_weights_of_one_day_tell_no_gain() {
    // Ours.
    let later = |hours| born() + TimeDelta::hours(hours);
    assert_eq!(gain((born(), kg(4.0)), (later(23), kg(4.4))), None);
    assert!(gain((born(), kg(4.0)), (later(24), kg(4.2))).is_some());
}

#[test]
fn sixty_two_kilograms_at_ten_days_is_a_slip_of_the_pen() {
    // Ours.
    let days = |days| born() + TimeDelta::days(days);
    assert!(!plausible((born(), kg(4.0)), (days(10), kg(62.0))));
    assert!(plausible((born(), kg(4.0)), (days(10), kg(6.2))));
    assert!(!plausible((born(), kg(20.0)), (days(10), kg(2.0))));
    assert!(plausible((days(1), kg(40.0)), (days(1), kg(4.0))), "the first one is put right");
}

#[test]
fn every_figure_of_a_gain_has_its_source() {
    // Ours.
    for figure in [MOST_GRAMS_A_DAY, MOST_LOST_PERCENT, ODD_GRAMS_A_DAY, ODD_LOST_PERCENT] {
        let cited =
            |title: &str| title.split(' ').any(|word| word.trim_end_matches('%') == figure.to_string());
        assert!(SOURCES.iter().any(|source| cited(source.title)), "{figure}");
    }
    // Season figures of growth: gain as Penn State has it; adjusted weights and ages as Boggess has them.
    assert!(SOURCES.iter().any(|source| source.authors.contains("Penn State")));
}
