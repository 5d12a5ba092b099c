//! How many lambs of a birth weight live.

use super::{kg, near};
use yeanling_core::reckon::survival::{Fate, by_birth_weight, wilson};

#[track_caller]
fn check(count: u32, of: u32, from: f64, to: f64) {
    let got = wilson(count, of).expect("some of some");
    near(got.from, from, 5e-5);
    near(got.to, to, 5e-5);
}

#[test]
fn the_interval_is_the_printed_one() {
    // Source: Newcombe 1998, Statistics in Medicine 17:857, table I, method 3: 81 of 263, 15 of 148, 0 of 20, 1 of 29.
    check(81, 263, 0.2553, 0.3662);
    check(15, 148, 0.0624, 0.1605);
    check(0, 20, 0.0, 0.1611);
    check(1, 29, 0.0061, 0.1718);
    assert_eq!([wilson(0, 0), wilson(2, 1)], [None, None]);
}

#[test]
fn lambs_are_told_apart_by_half_kilograms_once_there_are_thirty() {
    // Ours.
    let lambs: Vec<Fate> =
        (0..30).map(|lamb| Fate { birth: kg(3.0 + f64::from(lamb) * 0.05), lived: lamb != 0 }).collect();
    assert_eq!(by_birth_weight(&lambs[..29]), None);
    let bins = by_birth_weight(&lambs).expect("thirty");
    let told: Vec<(f64, u32, u32)> =
        bins.iter().map(|bin| (bin.from.as_kilograms(), bin.lambs, bin.lived)).collect();
    assert_eq!(told, [(3.0, 10, 9), (3.5, 10, 10), (4.0, 10, 10)]);
    near(bins[0].to.as_kilograms(), 3.5, 0.0);
}
