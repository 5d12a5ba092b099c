//! Antibody in a feed, when colostrum is good, and how long a bag serves.

use super::{celsius, kg, ml, near};
use yeanling_core::reckon::Strength;
use yeanling_core::reckon::quality::{
    ANTIBODY_WANTED, FEED_AT, FREEZER_AT, GOOD_ANTIBODY, GOOD_BRIX_OF_A_COW, Grade, Keeps, OLDER_TARGETS,
    Origin, Store, Thaw, antibody, bag, freezer_life, percent_of_wanted, reading, thaw,
};
use yeanling_core::settings::FreezerLife;
use yeanling_core::units::{Brix, TimeDelta};

fn rate(grams: f64) -> Strength {
    Strength::from_grams_per_liter(grams)
}

#[track_caller]
fn check(milliliters: f64, grams_per_liter: f64, grams: f64) {
    let mass = antibody(ml(milliliters), rate(grams_per_liter));
    near(mass.as_kilograms() * 1000.0, grams, 1e-9);
}

#[test]
fn antibody_in_a_feed_is_volume_times_strength() {
    // Source: ours, arithmetic.
    check(250.0, 50.0, 12.5);
    check(1000.0, 30.0, 30.0);
    check(0.0, 50.0, 0.0);
}

#[test]
fn a_liter_at_30_grams_is_what_a_lamb_wants_in_its_first_day() {
    // Source: memory, Alves et al. 2015, about 30 g.
    near(ANTIBODY_WANTED.as_kilograms() * 1000.0, 30.0, 1e-9);
    near(percent_of_wanted(kg(0.030)), 100.0, 1e-9);
    near(percent_of_wanted(antibody(ml(250.0), rate(50.0))), 41.67, 0.01);
}

#[test]
fn ewe_colostrum_is_good_from_26_and_a_half_brix_on() {
    // Source: Page et al. 2022, UK-Vet Livestock.
    let grade = |percent| reading(Brix::from_percent(percent)).expect("in bounds").grade;
    assert_eq!([grade(26.5), grade(40.0)], [Grade::Good; 2]);
    assert_eq!([grade(26.4), grade(0.0)], [Grade::Poor; 2]);
}

#[test]
fn the_cows_mark_of_22_does_not_carry_over_to_a_ewe() {
    // Source: J. Dairy Sci. 2012, 10.3168/jds.2012-5823, cow 22 % ≈ 50 g/L.
    let of = |percent| reading(Brix::from_percent(percent)).expect("in bounds");
    assert_eq!(GOOD_BRIX_OF_A_COW, Brix::from_percent(22.0));
    for percent in [22.0, 24.0, 26.4] {
        assert_eq!((of(percent).grade, of(percent).only_by_the_cows_mark), (Grade::Poor, true));
    }
    assert!(!of(21.9).only_by_the_cows_mark && !of(26.5).only_by_the_cows_mark);
}

#[test]
fn good_ewe_colostrum_holds_20_grams_and_older_targets_ask_for_more() {
    // Source: Kessler et al. 2021, J. Dairy Sci. 104:2438 (20 g/L); Bond 2020 and Vet Times 2018 (50 and 60 g/L).
    assert_eq!(GOOD_ANTIBODY, rate(20.0));
    assert_eq!(OLDER_TARGETS, [rate(50.0), rate(60.0)]);
}

#[test]
fn a_brix_of_265_is_refused() {
    // Source: ours, 0 to 40 %.
    for percent in [265.0, 40.1, -0.1, f64::NAN] {
        let refused = reading(Brix::from_percent(percent)).expect_err("out of bounds");
        assert_eq!(refused.allowed, Brix::OF_COLOSTRUM);
    }
}

#[test]
fn a_frozen_bag_serves_six_months_a_year_or_two_by_rule() {
    // Source: Ozarks Farm (6 months); common practice and WikiVet (1 year); SRUC (2 years at −18 °C).
    assert_eq!(freezer_life(FreezerLife::SixMonths), TimeDelta::days(181));
    assert_eq!(freezer_life(FreezerLife::OneYear), TimeDelta::days(365));
    assert_eq!(freezer_life(FreezerLife::TwoYears), TimeDelta::days(730));
    assert_eq!(FREEZER_AT, celsius(-18.0));
    let at = |days| bag(TimeDelta::days(days), Store::Freezer, FreezerLife::OneYear);
    assert_eq!(at(365), Keeps::Still(TimeDelta::zero()));
    assert_eq!(at(366), Keeps::Past(TimeDelta::days(1)));
    assert_eq!(at(-3), Keeps::Still(TimeDelta::days(365)), "clocks that disagree");
}

#[test]
fn a_bag_in_the_fridge_serves_two_days_by_any_rule() {
    // Source: SRUC, 2 days.
    for life in [FreezerLife::SixMonths, FreezerLife::OneYear, FreezerLife::TwoYears] {
        let at = |hours| bag(TimeDelta::hours(hours), Store::Fridge, life);
        assert_eq!(at(48), Keeps::Still(TimeDelta::zero()));
        assert_eq!(at(49), Keeps::Past(TimeDelta::hours(1)));
    }
}

#[test]
fn thawing_water_is_at_most_45_degrees_and_never_60() {
    // Source: an agricultural merchant (≤ 45 °C); SRUC (below 60 °C, feed at 39 °C).
    assert_eq!([thaw(celsius(39.0)), thaw(celsius(45.0))], [Thaw::Right; 2]);
    assert_eq!([thaw(celsius(45.1)), thaw(celsius(59.9))], [Thaw::Split; 2]);
    assert_eq!([thaw(celsius(60.0)), thaw(celsius(f64::NAN))], [Thaw::TooHot; 2]);
    assert_eq!(FEED_AT, celsius(39.0));
}

#[test]
fn the_own_dam_comes_first_and_powder_last() {
    // Source: SRUC, order of choice.
    let order = [Origin::OwnDam, Origin::SameFlock, Origin::OtherFlock, Origin::GoatOrCow, Origin::Powder];
    assert_eq!(Origin::ALL, order);
}
