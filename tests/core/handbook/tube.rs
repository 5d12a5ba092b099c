//! Whether a lamb may be fed by tube: each item by itself.

use super::{celsius, kg, ml};
use yeanling_core::reckon::tube::{
    AT_MOST, Item, LENGTH_IN_CENTIMETERS, PORTION, PORTION_TAKES, TubeChecks, WATERY_MOUTH_USUAL_TO, check,
    looks_like_watery_mouth, pour_takes,
};
use yeanling_core::units::TimeDelta;

/// A lamb of which every item holds.
fn fit() -> TubeChecks {
    TubeChecks {
        temperature: Some(celsius(37.0)),
        awake: Some(true),
        head_up: Some(true),
        swallows: Some(true),
        swollen_belly: Some(false),
        drools: Some(false),
        weight: Some(kg(4.0)),
        volume: Some(ml(200.0)),
    }
}

#[track_caller]
fn unmet(known: TubeChecks, item: Item) {
    let answer = check(known).expect("in bounds");
    assert_eq!((answer.unmet.as_slice(), answer.may()), ([item].as_slice(), false), "{answer:?}");
}

#[test]
fn a_lamb_of_which_everything_holds_may_be_tubed() {
    // Source: Henderson; Cornell; US extension, the strictest reading.
    let answer = check(fit()).expect("in bounds");
    assert!(answer.may(), "{answer:?}");
    assert_eq!(answer.most, Some(ml(200.0)));
}

#[test]
fn each_item_alone_forbids_it() {
    // Source: Henderson; Cornell; US extension: ≥ 37 °C, conscious, head up, swallows, not bloated.
    unmet(TubeChecks { temperature: Some(celsius(36.9)), ..fit() }, Item::Warm);
    unmet(TubeChecks { awake: Some(false), ..fit() }, Item::Awake);
    unmet(TubeChecks { head_up: Some(false), ..fit() }, Item::HeadUp);
    unmet(TubeChecks { swallows: Some(false), ..fit() }, Item::Swallows);
    unmet(TubeChecks { swollen_belly: Some(true), ..fit() }, Item::NotBloated);
}

#[test]
fn over_50_ml_per_kilogram_is_too_much_for_a_tube() {
    // Source: Vet Times, 17 Dec 2018; AHDB, 50 ml/kg.
    assert_eq!(AT_MOST.of(kg(4.0)), ml(200.0));
    unmet(TubeChecks { volume: Some(ml(200.1)), ..fit() }, Item::NotTooMuch);
    let heavy = check(TubeChecks { weight: Some(kg(25.0)), ..fit() }).expect("in bounds");
    assert_eq!(heavy.most, Some(ml(1000.0)), "never over the largest printed feed");
}

#[test]
fn a_drooling_or_swollen_lamb_gets_no_milk_by_tube() {
    // Source: AHDB, Watery mouth in lambs; Henderson.
    unmet(TubeChecks { drools: Some(true), ..fit() }, Item::NoWateryMouth);
    assert!(looks_like_watery_mouth(true, false) && looks_like_watery_mouth(false, true));
    assert!(!looks_like_watery_mouth(false, false));
    assert_eq!(WATERY_MOUTH_USUAL_TO, TimeDelta::days(3));
}

#[test]
fn what_is_not_known_forbids_it_too() {
    // Source: ours, the safer branch.
    let answer = check(TubeChecks::default()).expect("in bounds");
    assert_eq!((answer.unknown.as_slice(), answer.may(), answer.most), (Item::ALL.as_slice(), false, None));
    for known in [
        TubeChecks { temperature: None, ..fit() },
        TubeChecks { awake: None, ..fit() },
        TubeChecks { head_up: None, ..fit() },
        TubeChecks { swallows: None, ..fit() },
        TubeChecks { swollen_belly: None, ..fit() },
        TubeChecks { drools: None, ..fit() },
        TubeChecks { weight: None, ..fit() },
        TubeChecks { volume: None, ..fit() },
    ] {
        let answer = check(known).expect("in bounds");
        assert_eq!((answer.unknown.len(), answer.may()), (1, false), "{answer:?}");
    }
}

#[test]
fn a_tube_is_40_to_46_cm_and_60_ml_take_20_to_25_seconds() {
    // Source: Henderson; Cornell; US extension.
    let seconds = TimeDelta::seconds;
    assert_eq!(LENGTH_IN_CENTIMETERS, (40.0, 46.0));
    assert_eq!((PORTION, PORTION_TAKES), (ml(60.0), (seconds(20), seconds(25))));
    assert_eq!(pour_takes(ml(60.0)), (seconds(20), seconds(25)));
    assert_eq!(pour_takes(ml(200.0)), (seconds(67), seconds(83)));
    assert_eq!(pour_takes(ml(-5.0)), (seconds(0), seconds(0)));
}

#[test]
fn a_weight_no_lamb_has_is_refused() {
    // Source: ours, 0.5 to 30 kg.
    for kilograms in [0.0, 31.0, f64::NAN] {
        assert!(check(TubeChecks { weight: Some(kg(kilograms)), ..fit() }).is_err());
    }
}
