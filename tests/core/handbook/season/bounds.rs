//! What each figure of a season may be.

use yeanling_core::reckon::season::bounds::{
    CONCEPTION, CONDITION_SCORE, COPPER_IN_FEED, EWES, FEED_FOR_ONE_EWE, Figure, GESTATION_MEAN,
};

#[test]
fn an_error_says_what_was_given_and_what_is_allowed() {
    // Source: ours.
    for given in [-0.01, 1.01, 75.0, f64::NAN, f64::INFINITY] {
        let error = CONCEPTION.check(given).expect_err("no share");
        assert_eq!((error.allowed.figure, error.allowed), (Figure::Conception, CONCEPTION));
        assert!(error.given.is_nan() == given.is_nan());
    }
    let error = CONCEPTION.check(75.0).expect_err("no share");
    assert_eq!(error.to_string(), "Conception of 75 is not between 0 and 1");
}

#[test]
fn both_ends_are_allowed() {
    // Source: ours; gestation by Sheep 201.
    for allowed in [CONCEPTION, CONDITION_SCORE, COPPER_IN_FEED, EWES, FEED_FOR_ONE_EWE, GESTATION_MEAN] {
        assert!(allowed.check(allowed.least).is_ok() && allowed.check(allowed.most).is_ok());
        assert!(
            allowed.check(allowed.least - 0.001).is_err() && allowed.check(allowed.most + 0.001).is_err()
        );
    }
}
