//! When ewes are in season, by where the farm lies.

use yeanling_core::reckon::season::breeding::{BreedingSeason, Latitude, season_of};
use yeanling_core::reckon::season::conception::{learned, learned_in};

use super::date;

#[test]
fn the_months_of_the_printed_trials_fall_as_they_came_out() {
    // Source: Wildeus, 35° N: October and December over 90%, April and June under 20%; 17° N: all year. Burke 2005: August
    // and September, December; fewest in April and May.
    for month in 1..=12 {
        let on = date(&format!("2027-{month:02}-15"));
        let inside = |latitude| season_of(on, latitude) == BreedingSeason::Within;
        assert_eq!(inside(Latitude::North), [8, 9, 10, 11, 12, 1].contains(&month), "{month}");
        assert_eq!(inside(Latitude::South), !inside(Latitude::North), "{month}");
        assert!(inside(Latitude::Tropics));
    }
}

#[test]
fn out_of_season_all_that_was_printed_is_within_what_is_believed() {
    // Source: Beta(2, 2): 9 to 91 in 100 hold its middle 95%; printed are under 20 to 72 in 100.
    let open = learned_in(BreedingSeason::Outside, &[]);
    assert!(open.at_most(0.05) < 0.20 && open.at_most(0.95) > 0.72);
    assert!((open.at_most(0.025) - 0.094).abs() < 0.005 && (open.at_most(0.975) - 0.906).abs() < 0.005);
    assert_eq!(learned(&[]).season, BreedingSeason::Within);
}
