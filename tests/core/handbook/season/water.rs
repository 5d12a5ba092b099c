//! Water and room at the trough.

use yeanling_core::reckon::season::water::wanted;

use super::near;

#[test]
fn a_ewe_drinks_3_to_8_liters_a_day() {
    // Source: handbook, winter to summer.
    let (winter, summer) = wanted(1).expect("a ewe").water;
    near(winter.as_milliliters(), 3000.0, 0.0);
    near(summer.as_milliliters(), 8000.0, 0.0);
    near(wanted(60).expect("ewes").water.1.as_milliliters(), 480_000.0, 1e-6);
}

#[test]
fn a_ewe_has_400_to_500_mm_of_trough() {
    // Source: EBLEX.
    let (least, most) = wanted(60).expect("ewes").trough;
    near(least.as_meters(), 24.0, 1e-9);
    near(most.as_meters(), 30.0, 1e-9);
}

#[test]
fn no_ewes_and_too_many_are_refused() {
    // Source: ours, 1 to 3,000.
    assert!(wanted(0).is_err() && wanted(3001).is_err() && wanted(3000).is_ok());
}
