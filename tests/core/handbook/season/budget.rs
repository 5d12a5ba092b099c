//! Hay and grain for a season.

use yeanling_core::reckon::season::bounds::Figure;
use yeanling_core::reckon::season::budget::{Fed, Offered, by_body_weight, flock, hay_each_day, plausible};
use yeanling_core::units::Mass;

use super::near;
use crate::handbook::kg;

#[test]
fn ten_ewes_eat_263_bales() {
    // Source: a breeder's sum: 10 × 125 lb × 210 d × 4 % = 10,500 lb → 262.5, so 263 bales of 40 lb.
    let hay =
        by_body_weight(10, Mass::from_pounds(125.0), 210, 0.04, Mass::from_pounds(40.0)).expect("in bounds");
    near(hay.total.as_pounds(), 10_500.0, 1e-6);
    near(hay.each_day.as_pounds(), 5.0, 1e-9);
    near(hay.each.as_pounds(), 1050.0, 1e-6);
    assert_eq!((hay.bales, hay.ewes, hay.days), (263, 10, 210));
}

fn fed(dry_matter: f64, grain: f64, waste: f64) -> Fed {
    Fed { dry_matter: kg(dry_matter), grain: kg(grain), grain_dry_matter: 0.88, hay_dry_matter: 0.85, waste }
}

#[test]
fn hay_is_what_grain_leaves_and_waste_adds() {
    // Source: ours, (DMI − grain × DM) ÷ DM of hay ÷ (1 − waste).
    let of = |fed: Fed| hay_each_day(&fed).expect("in bounds").as_kilograms();
    near(of(fed(1.8, 0.5, 0.1)), (1.8 - 0.44) / 0.85 / 0.9, 1e-12);
    near(of(fed(1.7, 0.0, 0.0)), 2.0, 1e-12);
    near(of(fed(0.8, 1.0, 0.1)), 0.0, 0.0);
    for wrong in [fed(16.0, 0.0, 0.1), fed(1.8, -0.5, 0.1), fed(1.8, 0.5, 0.7), fed(1.8, 0.5, f64::NAN)] {
        assert!(hay_each_day(&wrong).is_err(), "{wrong:?}");
    }
}

#[test]
fn a_rack_wastes_less_than_the_ground() {
    // Source: memory (rack 5 to 15 %, ground 25 to 45 %).
    assert_eq!((Offered::Rack.waste(), Offered::Ground.waste()), ((0.05, 0.15), (0.25, 0.45)));
    near(Offered::Rack.usual_waste(), 0.10, 1e-12);
    near(Offered::Ground.usual_waste(), 0.35, 1e-12);
}

#[test]
fn three_tonnes_of_hay_for_one_ewe_are_refused() {
    // Source: ours, 1,500 kg.
    let error = flock(1, 300, kg(10.0), kg(20.0)).expect_err("3 t");
    assert_eq!(error.allowed.figure, Figure::FeedForOneEwe);
    near(error.given, 3000.0, 1e-9);
    assert_eq!(plausible(kg(3000.0), 1).expect_err("3 t").allowed.figure, Figure::FeedForOneEwe);
    assert_eq!(plausible(kg(3000.0), 4), Ok(kg(3000.0)));
}

#[test]
fn bales_are_rounded_up_and_a_whole_number_stays() {
    // Source: ours.
    let bales = |ewes, days, each| flock(ewes, days, kg(each), kg(20.0)).expect("in bounds").bales;
    assert_eq!((bales(10, 20, 1.0), bales(10, 20, 1.01), bales(3, 10, 0.1)), (10, 11, 1));
    assert_eq!(bales(10, 20, 0.0), 0);
}

#[test]
fn figures_that_are_none_are_refused() {
    // Source: ours.
    for (ewes, days, each, bale) in [
        (0, 20, 1.0, 20.0),
        (3001, 20, 1.0, 20.0),
        (10, 0, 1.0, 20.0),
        (10, 20, 16.0, 20.0),
        (10, 20, 1.0, 0.0),
    ] {
        assert!(flock(ewes, days, kg(each), kg(bale)).is_err());
    }
    assert!(by_body_weight(10, kg(10.0), 210, 0.04, kg(20.0)).is_err());
    assert!(by_body_weight(10, kg(60.0), 210, 4.0, kg(20.0)).is_err(), "4 % is 0.04");
}
