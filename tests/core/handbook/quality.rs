//! Antibody in a feed, and when colostrum is good.

use super::{ml, near};
use yeanling_core::reckon::{Strength, quality};

#[track_caller]
fn check(milliliters: f64, grams_per_liter: f64, grams: f64) {
    let mass = quality::antibody(ml(milliliters), Strength::from_grams_per_liter(grams_per_liter));
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
    near(quality::ANTIBODY_WANTED.as_kilograms() * 1000.0, 30.0, 1e-9);
}

#[test]
fn ewe_colostrum_is_good_from_26_and_a_half_brix_on() {
    // Source: Page et al. 2022, UK-Vet Livestock.
    assert!(quality::is_good(26.5));
    assert!(!quality::is_good(26.4));
    assert!(!quality::is_good(f64::NAN));
}

#[test]
fn the_marks_for_blood_are_as_printed() {
    // Source: Bond 2020 (15 g/L); Gökçe et al. 2025 (9.98 and 1.93 g/L).
    near(quality::TOO_LITTLE_IN_BLOOD.as_grams_per_liter(), 15.0, 0.0);
    near(quality::ILLNESS_IN_BLOOD.as_grams_per_liter(), 9.98, 0.0);
    near(quality::DEATH_IN_BLOOD.as_grams_per_liter(), 1.93, 0.0);
}
