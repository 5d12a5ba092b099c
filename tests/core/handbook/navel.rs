//! When a navel is dipped.

use yeanling_core::reckon::navel::{AGAIN_AFTER, IODINE_PERCENT, OTHERS_AGAIN_AFTER};
use yeanling_core::settings::Limits;
use yeanling_core::units::TimeDelta;

#[test]
fn the_first_dip_is_in_iodine_of_10_percent() {
    // Source: Sheep Veterinary Society.
    assert_eq!(IODINE_PERCENT, 10);
}

#[test]
fn the_second_dip_follows_after_six_hours() {
    // Source: FAS, again after about 6 h.
    assert_eq!(AGAIN_AFTER, TimeDelta::hours(6));
    assert_eq!(TimeDelta::minutes(i64::from(Limits::default().navel_again_minutes)), AGAIN_AFTER);
}

#[test]
fn others_dip_again_sooner_or_later() {
    // Source: common practice, 2–4 h or 12 h.
    let hours = OTHERS_AGAIN_AFTER.map(|(from, to)| (from.num_hours(), to.num_hours()));
    assert_eq!(hours, [(2, 4), (12, 12)]);
}
