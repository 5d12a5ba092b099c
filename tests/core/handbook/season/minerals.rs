//! Copper and selenium.

use yeanling_core::reckon::season::bounds::Figure;
use yeanling_core::reckon::season::minerals::{Caution, Copper, Part, Selenium, guard};

use super::near;
use crate::handbook::kg;

fn part(kilograms: f64, copper_ppm: Option<f64>, selenium_ppm: Option<f64>) -> Part {
    Part { dry_matter: kg(kilograms), copper_ppm, selenium_ppm }
}

#[track_caller]
fn copper(ppm: f64, expected: Copper) {
    let guarded = guard(&[part(1.6, Some(ppm), Some(0.1))]).expect("a feed");
    assert_eq!(guarded.copper, expected, "{ppm} ppm");
    assert_eq!(guarded.caution, Caution::AskVet);
}

#[test]
fn the_whole_diet_has_at_most_15_ppm_of_copper() {
    // Source: Duncan 1997.
    copper(15.0, Copper::Watch);
    copper(15.01, Copper::TooMuch);
}

#[test]
fn copper_poisons_from_10_ppm_where_molybdenum_is_low() {
    // Source: Berger.
    copper(9.99, Copper::Safe);
    copper(10.0, Copper::Watch);
}

#[test]
fn copper_is_weighed_by_dry_matter() {
    // Source: ours, Σ(kg DM × ppm) ÷ Σ kg DM.
    let guarded =
        guard(&[part(1.5, Some(6.0), None), part(0.4, Some(12.0), None), part(0.1, Some(60.0), None)]);
    near(guarded.expect("feeds").copper_ppm, (9.0 + 4.8 + 6.0) / 2.0, 1e-12);
}

#[test]
fn a_strong_mineral_is_judged_by_what_the_whole_diet_comes_to() {
    // Source: Duncan 1997, the whole diet at most 15 ppm; Berger, from 10 ppm; ours for the arithmetic.
    let with = |ppm| guard(&[part(1.99, Some(5.0), None), part(0.01, Some(ppm), None)]).expect("feeds");
    let (little, much) = (with(635.0), with(3885.0));
    near(little.copper_ppm, 8.15, 1e-9);
    assert_eq!(little.copper, Copper::Safe);
    near(much.copper_ppm, 24.4, 1e-9);
    assert_eq!(much.copper, Copper::TooMuch);
}

#[test]
fn no_feed_is_more_than_copper() {
    // Source: ours, a million parts in a million.
    let error = guard(&[part(0.01, Some(1_000_001.0), None)]).expect_err("no feed");
    assert_eq!(error.allowed.figure, Figure::CopperInFeed);
    assert!(guard(&[part(0.01, Some(1_000_000.0), None)]).is_ok_and(|diet| diet.copper == Copper::TooMuch));
}

#[test]
fn a_feed_that_is_not_known_leaves_the_whole_unknown() {
    // Source: ours, the safer branch.
    let guarded = guard(&[part(1.5, Some(6.0), Some(0.1)), part(0.5, None, None)]).expect("feeds");
    assert_eq!((guarded.copper, guarded.selenium), (Copper::Unknown, Selenium::Unknown));
    let guarded = guard(&[part(1.0, Some(40.0), Some(1.0)), part(0.5, None, None)]).expect("feeds");
    assert_eq!((guarded.copper, guarded.selenium), (Copper::TooMuch, Selenium::TooMuch), "already too much");
    near(guard(&[]).expect("nothing").copper_ppm, 0.0, 0.0);
}

#[test]
fn selenium_is_at_most_three_tenths_ppm_and_seven_tenths_milligrams() {
    // Source: FDA 1997: 0.3 ppm of feed, 0.7 mg a head a day, every source counted.
    let of = |kilograms, ppm| guard(&[part(kilograms, Some(5.0), Some(ppm))]).expect("a feed").selenium;
    assert_eq!(of(2.0, 0.3), Selenium::Within);
    assert_eq!(of(2.0, 0.31), Selenium::TooMuch);
    assert_eq!(of(2.4, 0.3), Selenium::TooMuch, "0.72 mg a day");
    let with_salt = [part(1.8, Some(5.0), Some(0.15)), part(0.008, Some(0.0), Some(90.0))];
    let guarded = guard(&with_salt).expect("feeds");
    near(guarded.selenium_mg, 0.27 + 0.72, 1e-9);
    assert_eq!(guarded.selenium, Selenium::TooMuch);
}

#[test]
fn a_free_choice_mineral_has_at_most_90_ppm_of_selenium() {
    // Source: FDA 1997.
    assert!(guard(&[part(0.01, Some(0.0), Some(90.0))]).is_ok());
    let error = guard(&[part(0.01, Some(0.0), Some(90.1))]).expect_err("too strong");
    assert_eq!(error.allowed.figure, Figure::SeleniumInFeed);
}

#[test]
fn figures_that_are_none_are_refused() {
    // Source: ours.
    for wrong in [
        part(-1.0, None, None),
        part(16.0, None, None),
        part(1.0, Some(-1.0), None),
        part(1.0, Some(f64::NAN), None),
        part(1.0, None, Some(-0.1)),
    ] {
        assert!(guard(&[wrong]).is_err(), "{wrong:?}");
    }
}
