//! How often, and how much is too much.

use super::{hours, kg, ml, same_ml};
use yeanling_core::reckon::colostrum::{ColostrumTarget, target};
use yeanling_core::reckon::feeds::{Guard, Next, Rejection, check, count, next};
use yeanling_core::settings::{DayRule, Housing};
use yeanling_core::units::{Mass, TimeDelta, Volume};

const DAY_ONE: TimeDelta = TimeDelta::hours(1);

#[track_caller]
fn refused(volume: Volume, weight: Option<Mass>, age: TimeDelta, given: Volume) -> Rejection {
    check(volume, weight, age, given).expect_err("this feed must be refused")
}

#[track_caller]
fn let_through(volume: Volume, weight: Option<Mass>, age: TimeDelta, given: Volume) {
    assert_eq!(check(volume, weight, age, given), Ok(()));
}

#[test]
fn feeds_are_the_total_over_the_most_at_once_rounded_up() {
    // Source: 4 kg at 210 and 200 ml/kg (an agricultural merchant; AHDB), 4–5 feeds (Irish Farmers Journal).
    assert_eq!(count(ml(840.0), ml(200.0)), Some(5));
    assert_eq!(count(ml(800.0), ml(200.0)), Some(4));
}

#[test]
fn feeds_of_nothing_or_without_end_are_not_counted() {
    // Source: ours.
    assert_eq!(count(ml(0.0), ml(200.0)), Some(0));
    assert_eq!(count(ml(-5.0), ml(200.0)), Some(0));
    assert_eq!(count(ml(800.0), ml(0.0)), None);
    assert_eq!(count(ml(800.0), ml(-1.0)), None);
    assert_eq!(count(ml(800.0), ml(f64::NAN)), None);
    assert_eq!(count(ml(f64::NAN), ml(200.0)), None);
    assert_eq!(count(ml(2_000.0), ml(1.0)), None);
}

#[test]
fn the_misprint_of_110_ml_per_pound_is_refused() {
    // Source: a newsletter prints 110 ml per lb within 2 h; 110 ml per kg was meant. Known misprint, never followed.
    for pounds in [5.0, 8.8, 12.0] {
        let weight = Mass::from_pounds(pounds);
        let misprint = ml(110.0 * pounds);
        let rejection = refused(misprint, Some(weight), DAY_ONE, Volume::ZERO);
        assert!(
            matches!(rejection, Rejection::TooMuchAtOnce { guard: Guard::FirstWeek, .. }),
            "{rejection:?}"
        );
    }
}

#[test]
fn fifty_ml_per_kilogram_rounded_to_five_always_passes() {
    // Source: AHDB (50 ml/kg); the rounding is ours.
    for grams in 500..=12_000 {
        let weight = kg(f64::from(grams) / 1000.0);
        let feed = ml(50.0 * weight.as_kilograms()).to_nearest_five();
        let_through(feed, Some(weight), DAY_ONE, Volume::ZERO);
    }
}

#[test]
fn the_guidance_for_a_day_passes_whatever_the_rule() {
    // Source: AHDB, RUMA (lower end), Mellor & Murray 1986.
    for rule in [DayRule::Ahdb200, DayRule::Ruma210, DayRule::TenPercent] {
        let target = target(kg(3.9), rule, Housing::Outdoors).expect("in bounds");
        let before = ml(target.by_24h.as_milliliters() - target.next_feed.as_milliliters());
        let_through(target.next_feed, Some(target.weight), hours(20.0), before);
    }
}

#[test]
fn over_60_ml_per_kilogram_at_once_is_refused_with_the_most() {
    // Source: ours.
    let_through(ml(240.0), Some(kg(4.0)), DAY_ONE, Volume::ZERO);
    let rejection = refused(ml(240.1), Some(kg(4.0)), DAY_ONE, Volume::ZERO);
    let expected = Rejection::TooMuchAtOnce {
        given: ml(240.1),
        most: ml(240.0),
        weight: Some(kg(4.0)),
        guard: Guard::FirstWeek,
    };
    assert_eq!(rejection, expected);
}

#[test]
fn over_300_ml_per_kilogram_in_a_day_is_refused_with_the_most() {
    // Source: ours.
    let_through(ml(200.0), Some(kg(4.0)), DAY_ONE, ml(1000.0));
    let rejection = refused(ml(200.0), Some(kg(4.0)), DAY_ONE, ml(1001.0));
    let (would_be, most) = (ml(1201.0), ml(1200.0));
    assert_eq!(
        rejection,
        Rejection::TooMuchInADay { would_be, most, weight: Some(kg(4.0)), guard: Guard::FirstWeek }
    );
    assert!(matches!(refused(ml(50.0), None, DAY_ONE, ml(f64::NAN)), Rejection::TooMuchInADay { .. }));
}

#[test]
fn a_lamb_of_unknown_weight_counts_as_an_ordinary_triplet_of_4_kg() {
    // Source: ours, from Hanrahan & Keady 2013 (78 % of 5 kg).
    let_through(ml(240.0), None, DAY_ONE, Volume::ZERO);
    let rejection = refused(ml(250.0), None, DAY_ONE, Volume::ZERO);
    assert!(matches!(rejection, Rejection::TooMuchAtOnce { weight: None, .. }));
    let_through(ml(250.0), Some(kg(5.0)), DAY_ONE, Volume::ZERO);
}

#[test]
fn what_is_no_volume_or_no_weight_is_refused() {
    // Source: ours, 1 to 2000 ml and 0.5 to 12 kg.
    for milliliters in [0.0, -3.0, 0.5, 2000.5, f64::NAN, f64::INFINITY] {
        for age in [hours(1.0), TimeDelta::days(20)] {
            let rejection = refused(ml(milliliters), Some(kg(4.0)), age, Volume::ZERO);
            assert!(matches!(rejection, Rejection::NotAVolume(_)), "{milliliters}: {rejection:?}");
        }
    }
    for kilograms in [0.0, -3.0, 40.0, f64::NAN] {
        let rejection = refused(ml(100.0), Some(kg(kilograms)), DAY_ONE, Volume::ZERO);
        assert!(matches!(rejection, Rejection::NotAWeight(_)), "{kilograms}: {rejection:?}");
    }
}

#[test]
fn after_a_week_a_liter_at_once_and_three_in_a_day_are_the_most() {
    // Source: a vet supplier's table (1000 ml at once); three of these in a day is ours.
    let week = TimeDelta::days(7);
    assert!(check(ml(500.0), Some(kg(4.0)), week - TimeDelta::seconds(1), Volume::ZERO).is_err());
    let_through(ml(500.0), Some(kg(4.0)), week, Volume::ZERO);
    let_through(ml(1000.0), None, week, ml(2000.0));
    let at_once = refused(ml(1001.0), None, week, Volume::ZERO);
    assert!(matches!(at_once, Rejection::TooMuchAtOnce { guard: Guard::Later, .. }));
    let in_a_day = refused(ml(1000.0), Some(kg(4.0)), week, ml(2001.0));
    assert!(matches!(in_a_day, Rejection::TooMuchInADay { guard: Guard::Later, .. }));
}

fn four_kilograms(rule: DayRule, housing: Housing) -> ColostrumTarget {
    target(kg(4.0), rule, housing).expect("in bounds")
}

/// Feeds a lamb on the dot from birth and returns the ages in hours and the volumes in milliliters.
fn fed_on_the_dot(target: &ColostrumTarget) -> Vec<(f64, f64)> {
    let mut feeds = Vec::new();
    let (mut given, mut last) = (Volume::ZERO, None);
    while let Some(Next { volume, due_age, .. }) = next(target, given, last, last.unwrap_or_default()) {
        feeds.push((due_age.as_seconds_f64() / 3600.0, volume.as_milliliters()));
        given = given + volume;
        last = Some(due_age);
        assert!(feeds.len() < 20, "without end: {feeds:?}");
    }
    feeds
}

#[test]
fn four_even_feeds_fill_a_housed_day_of_200() {
    // Source: AHDB (200 and 50 ml/kg); Irish Farmers Journal (4–5 feeds); the spacing is ours.
    let feeds = fed_on_the_dot(&four_kilograms(DayRule::Ahdb200, Housing::Housed));
    assert_eq!(feeds, [(0.0, 200.0), (6.0, 200.0), (12.0, 200.0), (18.0, 200.0)]);
}

#[test]
fn five_feeds_fill_an_outdoor_day_of_210_by_18_hours() {
    // Source: Mellor & Murray 1986 (210 ml/kg by 18 h); Irish Farmers Journal (4–5 feeds); the spacing is ours.
    let feeds = fed_on_the_dot(&four_kilograms(DayRule::Ruma210, Housing::Outdoors));
    assert_eq!(feeds, [(0.0, 200.0), (4.5, 200.0), (9.0, 200.0), (13.5, 200.0), (18.0, 40.0)]);
}

#[test]
fn the_plan_meets_each_edge_for_every_rule_and_weight() {
    // Source: Bond 2020 (6 h), Mellor & Murray 1986 (18 h), AHDB and RUMA (24 h); a tenth of a feed is rounding (ours).
    for rule in [DayRule::Ahdb200, DayRule::Ruma210, DayRule::TenPercent] {
        for housing in [Housing::Housed, Housing::Outdoors] {
            for grams in [500, 2_300, 3_900, 5_470, 12_000] {
                let target = target(kg(f64::from(grams) / 1000.0), rule, housing).expect("in bounds");
                let feeds = fed_on_the_dot(&target);
                for (edge, wanted) in [(6.0, target.by_6h), (18.0, target.by_18h), (24.0, target.by_24h)] {
                    let by_then: f64 = feeds.iter().filter(|(age, _)| *age <= edge).map(|(_, ml)| ml).sum();
                    let missing = wanted.as_milliliters() - by_then;
                    let rounding = target.next_feed.as_milliliters() / 10.0 + 1e-6;
                    assert!(
                        missing <= rounding,
                        "{rule:?} {housing:?} {grams} g, {edge} h: {missing} ml; {feeds:?}"
                    );
                }
                assert!(feeds.windows(2).all(|pair| (2.0..=6.0).contains(&(pair[1].0 - pair[0].0))));
            }
        }
    }
}

#[test]
fn a_lamb_never_fed_is_due_since_birth() {
    // Source: AHDB, as soon as possible.
    let target = four_kilograms(DayRule::Ahdb200, Housing::Housed);
    let first = next(&target, Volume::ZERO, None, hours(5.0)).expect("a feed");
    assert_eq!((first.due_age, first.feeds_left), (TimeDelta::zero(), 4));
    same_ml(first.volume, 200.0);
}

#[test]
fn a_late_start_brings_the_feeds_closer_but_never_under_two_hours() {
    // Source: ours.
    let target = four_kilograms(DayRule::Ahdb200, Housing::Housed);
    let after_ten = next(&target, ml(200.0), Some(hours(10.0)), hours(10.0)).expect("a feed");
    assert_eq!(after_ten.due_age, hours(10.0) + TimeDelta::minutes(160));
    let after_twenty = next(&target, ml(200.0), Some(hours(20.0)), hours(20.0)).expect("a feed");
    assert_eq!(after_twenty.due_age, hours(22.0));
}

#[test]
fn a_lamb_that_has_had_enough_or_is_a_day_old_has_no_next_feed() {
    // Source: ours.
    let target = four_kilograms(DayRule::Ahdb200, Housing::Housed);
    assert_eq!(next(&target, ml(800.0), Some(hours(18.0)), hours(18.0)), None);
    assert_eq!(next(&target, ml(900.0), Some(hours(18.0)), hours(18.0)), None);
    assert_eq!(next(&target, ml(400.0), Some(hours(18.0)), hours(24.0)), None);
    assert!(next(&target, ml(400.0), Some(hours(18.0)), hours(23.9)).is_some());
}

#[test]
fn rounded_feeds_leave_no_crumb_of_a_feed() {
    // Source: ours.
    let target = target(kg(3.84), DayRule::Ahdb200, Housing::Housed).expect("in bounds");
    let after = |feeds: f64| next(&target, ml(190.0 * feeds), Some(hours(1.0)), hours(2.0));
    assert_eq!(after(1.0).map(|next| next.feeds_left), Some(3));
    assert_eq!(after(4.0), None);
}
