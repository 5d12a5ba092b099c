//! How powder is mixed, and the weak mix that comes of adding it to a liter.

use super::{celsius, kg, ml, near, same_ml};
use yeanling_core::reckon::Strength;
use yeanling_core::reckon::mixing::{
    FAT_PERCENT, MIX, Mix, NoMix, PROTEIN_AT_LEAST_PERCENT, WATER_UNDER, mix, round, sample_to,
    strength_if_added,
};

fn rate(grams: f64) -> Strength {
    Strength::from_grams_per_liter(grams)
}

fn mixed(milliliters: f64, grams: f64) -> Mix {
    sample_to(ml(milliliters), rate(grams)).expect("in bounds")
}

#[track_caller]
fn check(milliliters: f64, grams_per_liter: f64, grams: f64, water: f64) {
    let mix = mixed(milliliters, grams_per_liter);
    near(mix.powder.as_kilograms() * 1000.0, grams, 1e-9);
    same_ml(mix.water, water);
}

#[test]
fn two_hundred_grams_and_800_ml_make_a_liter() {
    // Source: feed maker, 200 g made up to 1 liter.
    check(1000.0, 200.0, 200.0, 800.0);
    check(250.0, 200.0, 50.0, 200.0);
    assert_eq!(MIX, rate(200.0));
    let (powder, water) = mix(ml(1000.0));
    near(powder.as_kilograms(), 0.2, 1e-12);
    same_ml(water, 800.0);
}

#[test]
fn the_water_stays_under_45_degrees() {
    // Source: feed maker.
    assert_eq!(WATER_UNDER, celsius(45.0));
}

#[test]
fn the_misprint_of_200_g_added_to_a_liter_is_shown_as_too_weak_and_never_followed() {
    // Source: feed maker, made up to 1 liter; added to 1 liter it is 167 g/L. Known slip, never followed.
    let mix = mixed(1000.0, 200.0);
    near(mix.if_added.as_grams_per_liter(), 166.67, 0.01);
    assert!(mix.if_added < mix.rate);
    assert!(mix.water < ml(1000.0));
    let weak = strength_if_added(kg(0.2), ml(1000.0)).expect("a mix");
    near(weak.as_grams_per_liter(), 167.0, 0.5);
    let right = strength_if_added(mix.powder, mix.water).expect("a mix");
    near(right.as_grams_per_liter(), 200.0, 1e-9);
}

#[test]
fn lamb_replacer_is_30_percent_fat_and_at_least_24_percent_protein() {
    // Source: NDSU.
    assert_eq!((FAT_PERCENT, PROTEIN_AT_LEAST_PERCENT), (30, 24));
}

#[test]
fn a_labels_own_rate_comes_first() {
    // Source: ours, arithmetic; the label wins (feed maker).
    check(1000.0, 150.0, 150.0, 850.0);
    check(600.0, 250.0, 150.0, 450.0);
}

#[test]
fn one_mix_serves_a_round_of_lambs() {
    // Source: ours, arithmetic.
    let feeds = [ml(150.0), ml(125.0), ml(225.0)];
    assert_eq!(round(&feeds, MIX), sample_to(ml(500.0), MIX));
    assert!(matches!(round(&[], MIX), Err(NoMix::Finished(_))));
}

#[test]
fn what_is_on_no_label_is_refused() {
    // Source: ours, 100 to 300 g/L and 1 ml to 100 liters.
    for grams in [0.0, -5.0, 99.9, 300.1, f64::NAN] {
        let refused = sample_to(ml(500.0), rate(grams)).expect_err("no rate");
        assert!(
            matches!(refused, NoMix::Rate(out) if out.allowed == Strength::ON_A_LABEL),
            "{grams}: {refused:?}"
        );
    }
    for milliliters in [0.0, -5.0, 100_001.0, f64::NAN] {
        let refused = sample_to(ml(milliliters), MIX);
        assert!(matches!(refused, Err(NoMix::Finished(_))), "{milliliters}: {refused:?}");
    }
    assert!(sample_to(ml(1.0), rate(100.0)).is_ok() && sample_to(ml(100_000.0), rate(300.0)).is_ok());
}

#[test]
fn a_mix_of_nothing_is_nothing() {
    // Source: ours.
    assert_eq!(mix(ml(-5.0)), (kg(0.0), ml(0.0)));
    assert_eq!(mix(ml(f64::NAN)), (kg(0.0), ml(0.0)));
    assert!(strength_if_added(kg(0.0), ml(0.0)).is_none());
}
