//! How long a pair stays in its pen.

use yeanling_core::reckon::pen_stay;
use yeanling_core::settings::PenStay;

#[test]
fn a_single_stays_a_day_twins_two_and_triplets_three() {
    // Source: equipment firm's lambing diary; triplets 2 to 3 days there, the longer kept (ours).
    assert_eq!(pen_stay::SINGLE.num_hours(), 24);
    assert_eq!(pen_stay::TWINS.num_hours(), 48);
    assert_eq!(pen_stay::TRIPLETS.num_hours(), 72);
}

#[test]
fn the_stays_lie_within_24_to_72_hours() {
    // Source: Montana State, 24 to 72 h.
    let stay = PenStay::default();
    for lambs in 0..6 {
        assert!((24..=72).contains(&stay.hours(lambs)), "{lambs}");
    }
}

#[test]
fn the_farm_starts_from_these_stays() {
    // Ours.
    let stay = PenStay::default();
    let hours = [1, 2, 3, 4].map(|lambs| i64::from(stay.hours(lambs)));
    assert_eq!(hours, [24, 48, 72, 72]);
    assert_eq!(stay.checked(), Ok(stay));
    assert!(PenStay { twins_hours: 1, ..stay }.checked().is_err());
    assert!(PenStay { more_hours: 241, ..stay }.checked().is_err());
}

#[test]
fn pens_are_printed_in_feet() {
    // Source: extension guides: 4 × 4, 5 × 5, 5 × 6 ft.
    let feet = pen_stay::SIZES.map(|(wide, deep)| (wide.as_feet().round(), deep.as_feet().round()));
    assert_eq!(feet, [(4.0, 4.0), (5.0, 5.0), (5.0, 6.0)]);
}

#[test]
fn every_figure_of_a_pen_has_its_source() {
    // Source: equipment firm's diary; Montana State; Irish Farmers Journal; memory; common practice.
    for figure in [
        "single 1 day, twins 2, triplets 2 to 3",
        "24 to 72 h",
        "7 to 8",
        "5 to 6",
        "ten ewes",
        "three days",
        "4 × 4",
    ] {
        assert!(pen_stay::SOURCES.iter().any(|source| source.title.contains(figure)), "{figure}");
    }
    let longer = pen_stay::SOURCES.iter().find(|source| source.title.contains("longer"));
    assert_eq!(longer.map(|source| source.known), Some(yeanling_core::source::HowKnown::Ours), "of triplets");
}
