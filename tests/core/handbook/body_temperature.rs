//! What a lamb's temperature means, edge by edge.

use super::{celsius, hours};
use yeanling_core::reckon::body_temperature::{
    ALEXANDER_MCCANCE, Band, DROP_IN_DEGREES_CELSIUS, RECOVERED_BY, UsBand, band, may_be_the_first_drop,
    us_band, warm_enough_to_feed,
};
use yeanling_core::units::{System, Temperature, TimeDelta};

#[track_caller]
fn check(degrees: f64, expected: Band) {
    assert_eq!(band(celsius(degrees)), Ok(expected), "{degrees}");
}

#[test]
fn the_bands_are_as_printed() {
    // Source: UK hypothermia sheet; Irish Farmers Journal; Eales et al. 1984, Veterinary Record 114:469.
    check(35.0, Band::Severe);
    check(38.0, Band::Mild);
    check(39.5, Band::Normal);
    check(41.0, Band::Fever);
}

#[test]
fn each_edge_belongs_to_one_band() {
    // Source: ours.
    check(36.9, Band::Severe);
    check(37.0, Band::Mild);
    check(38.9, Band::Mild);
    check(39.0, Band::Normal);
    check(40.0, Band::Normal);
    check(40.1, Band::Fever);
}

#[test]
fn what_lies_between_two_tenths_has_one_band_too() {
    // Source: ours, rounded to a hundredth and then by the edge that is reached.
    check(36.95, Band::Severe);
    check(36.99, Band::Severe);
    check(36.996, Band::Mild);
    check(38.95, Band::Mild);
    check(40.05, Band::Fever);
}

#[test]
fn the_edges_are_the_same_in_fahrenheit() {
    // Source: ours, arithmetic; 98.6, 102.2 and 104 °F are 37, 39 and 40 °C.
    for (fahrenheit, expected) in [
        (98.5, Band::Severe),
        (98.6, Band::Mild),
        (102.2, Band::Normal),
        (104.0, Band::Normal),
        (104.1, Band::Fever),
    ] {
        assert_eq!(band(Temperature::from_fahrenheit(fahrenheit)), Ok(expected), "{fahrenheit} °F");
        let typed = Temperature::parse(&fahrenheit.to_string(), System::Us).expect("a temperature");
        assert_eq!(band(typed), Ok(expected), "{fahrenheit} °F, typed");
    }
}

#[test]
fn a_lamb_is_warm_enough_to_feed_where_severe_ends() {
    // Source: Henderson 1996; US extension.
    for (degrees, enough) in [(36.9, false), (36.99, false), (37.0, true), (39.0, true), (f64::NAN, false)] {
        assert_eq!(warm_enough_to_feed(celsius(degrees)), enough, "{degrees}");
    }
}

#[test]
fn us_guidance_runs_warmer() {
    // Source: New Mexico State University, 101.5–102.5 °F normal, under 98–99 °F severe.
    for (fahrenheit, expected) in [
        (97.9, UsBand::Severe),
        (98.0, UsBand::SevereBySome),
        (99.0, UsBand::Below),
        (101.4, UsBand::Below),
        (101.5, UsBand::Normal),
        (102.5, UsBand::Normal),
        (102.6, UsBand::Above),
    ] {
        assert_eq!(us_band(Temperature::from_fahrenheit(fahrenheit)), expected, "{fahrenheit} °F");
    }
}

#[test]
fn a_healthy_lamb_drops_two_to_three_degrees_and_is_back_by_three_hours() {
    // Source: Alexander & McCance 1958, Australian Journal of Agricultural Research 9:339.
    assert_eq!(DROP_IN_DEGREES_CELSIUS, (2.0, 3.0));
    assert_eq!(RECOVERED_BY, TimeDelta::hours(3));
    assert_eq!(ALEXANDER_MCCANCE.year, Some(1958));
    assert!(may_be_the_first_drop(hours(1.0)) && may_be_the_first_drop(hours(2.99)));
    assert!(!may_be_the_first_drop(hours(3.0)));
}

#[test]
fn what_no_living_lamb_reads_is_refused() {
    // Source: ours, 15 to 44 °C.
    for degrees in [14.9, 44.1, 45.0, 98.6, -3.0, f64::NAN, f64::INFINITY] {
        let refused = band(celsius(degrees)).expect_err("out of bounds");
        assert_eq!(refused.allowed, Temperature::IN_A_LAMB);
    }
}

#[test]
fn a_number_of_the_other_scale_is_told_apart() {
    // Source: ours.
    let slip = |number: f64, system| {
        let typed = Temperature::parse(&number.to_string(), system).expect("a number");
        typed.in_a_lamb(system).expect_err("not in a lamb").reads_like
    };
    assert_eq!(slip(98.6, System::Metric), Some(System::Us));
    assert_eq!(slip(102.0, System::Metric), Some(System::Us));
    assert_eq!(slip(39.0, System::Us), Some(System::Metric));
    assert_eq!(slip(45.0, System::Metric), None);
    assert_eq!(slip(-2.0, System::Us), None);
    assert!(celsius(38.0).in_a_lamb(System::Us).is_ok());
}
