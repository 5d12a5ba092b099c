//! What a ewe's condition should be.

use yeanling_core::reckon::season::condition::{
    ConditionStage, Flag, Score, StageOfYear, System, change, flags, mean, target,
};
use yeanling_core::source::HowKnown;

use super::near;
use crate::handbook::kg;

fn score(points: f64) -> Score {
    Score::from_points(points).expect("a score")
}

#[track_caller]
fn check(system: System, stage: ConditionStage, lambs: Option<u8>, printed: Option<(f64, f64)>) {
    let found = target(system, stage, lambs);
    assert_eq!(found.map(|target| (target.low, target.high.unwrap_or(5.0))), printed, "{system:?} {stage:?}");
}

#[test]
fn the_scottish_targets_are_the_printed_ones() {
    // Source: FAS Scotland: mating, mid pregnancy, late, lambing, weaning.
    for (system, scores) in [
        (System::Lowland, [Some(3.5), Some(3.0), None, Some(3.0), Some(2.5)]),
        (System::Upland, [Some(3.0), Some(2.5), None, Some(2.5), Some(2.0)]),
        (System::Hill, [Some(2.5), Some(2.0), None, Some(2.0), Some(2.0)]),
    ] {
        assert_eq!(system.known(), HowKnown::Seen);
        for (stage, printed) in ConditionStage::ALL.into_iter().zip(scores) {
            check(system, stage, None, printed.map(|score| (score, score)));
        }
    }
}

#[test]
fn the_australian_targets_are_the_printed_ones() {
    // Source: Making More from Sheep: 3.0 (2.5), late with one 3.0, with two 3.3 (2.5).
    let australia = System::Australia;
    check(australia, ConditionStage::Mating, None, Some((3.0, 3.0)));
    check(australia, ConditionStage::MidPregnancy, None, Some((3.0, 3.0)));
    check(australia, ConditionStage::LatePregnancy, Some(1), Some((3.0, 3.0)));
    check(australia, ConditionStage::LatePregnancy, Some(2), Some((3.3, 3.3)));
    check(australia, ConditionStage::LatePregnancy, None, Some((3.0, 3.3)));
    check(australia, ConditionStage::Lambing, Some(2), None);
    check(australia, ConditionStage::Weaning, None, None);
    for stage in [ConditionStage::Mating, ConditionStage::MidPregnancy, ConditionStage::LatePregnancy] {
        assert_eq!(target(australia, stage, None).and_then(|target| target.least), Some(2.5));
    }
}

#[test]
fn the_us_targets_are_as_recalled() {
    // Source: memory (Oregon EC 1433).
    let us = System::Us;
    assert_eq!(us.known(), HowKnown::Memory);
    check(us, ConditionStage::Mating, None, Some((3.0, 4.0)));
    check(us, ConditionStage::MidPregnancy, None, Some((2.5, 4.0)));
    for stage in [ConditionStage::LatePregnancy, ConditionStage::Lambing] {
        check(us, stage, Some(1), Some((3.0, 3.5)));
        check(us, stage, Some(2), Some((3.5, 4.0)));
        check(us, stage, None, Some((3.0, 4.0)));
    }
    check(us, ConditionStage::Weaning, None, Some((2.0, 5.0)));
}

#[test]
fn a_score_of_an_80_kg_ewe_is_nine_and_a_half_kilograms() {
    // Source: SRUC prints 9.5 kg and 6 to 8 weeks; 12 % of 80 kg is 9.6, at 170 g a day 56.5 d.
    let found = change(kg(80.0), score(2.0), score(3.0), kg(0.17)).expect("in bounds");
    near(found.kilograms, 9.6, 1e-9);
    near(found.kilograms, 9.5, 0.11);
    near(found.days.expect("to gain"), 56.5, 0.05);
    assert!(found.days.is_some_and(|days| (42.0..=57.0).contains(&days)));
    near(found.scores, 1.0, 0.0);
}

#[test]
fn one_score_is_10_to_14_percent_of_weight() {
    // Source: FAS Scotland, SRUC, Montana: about 12 %, 10 to 14.
    let found = change(kg(70.0), score(2.5), score(3.0), kg(0.1)).expect("in bounds");
    near(found.kilograms, 4.2, 1e-9);
    near(found.range_kilograms.0, 3.5, 1e-9);
    near(found.range_kilograms.1, 4.9, 1e-9);
}

#[test]
fn who_is_to_lose_has_no_days() {
    // Source: ours.
    let found = change(kg(70.0), score(4.0), score(3.5), kg(0.1)).expect("in bounds");
    near(found.kilograms, -4.2, 1e-9);
    assert_eq!(found.days, None);
    assert_eq!(change(kg(70.0), score(3.0), score(3.0), kg(0.1)).expect("in bounds").days, None);
}

#[test]
fn scores_are_in_quarters_from_1_to_5() {
    // Source: Russel, Doney & Gunn 1969, 1 to 5.
    for (given, kept) in [(1.0, 1.0), (2.6, 2.5), (2.63, 2.75), (5.0, 5.0)] {
        near(score(given).as_points(), kept, 0.0);
    }
    for points in [0.0, 0.9, 5.1, f64::NAN] {
        assert!(Score::from_points(points).is_err(), "{points}");
    }
}

#[test]
fn a_weight_or_a_gain_no_ewe_has_is_refused() {
    // Source: ours.
    for (weight, gain) in [(10.0, 0.1), (250.0, 0.1), (70.0, 0.0), (70.0, 0.6), (f64::NAN, 0.1)] {
        assert!(change(kg(weight), score(2.0), score(3.0), kg(gain)).is_err(), "{weight} {gain}");
    }
}

fn late(days: i64, before: Option<f64>) -> StageOfYear {
    StageOfYear {
        stage: ConditionStage::LatePregnancy,
        lambs: Some(2),
        days_to_lambing: Some(days),
        before: before.map(score),
    }
}

#[test]
fn four_and_over_in_the_last_month_is_a_risk() {
    // Source: NADIS, prolapse and toxemia.
    assert_eq!(flags(System::Lowland, score(4.0), late(30, None)), [Flag::TooFatLate]);
    assert_eq!(flags(System::Lowland, score(4.0), late(31, None)), []);
    assert_eq!(flags(System::Lowland, score(3.75), late(10, None)), []);
    assert_eq!(flags(System::Lowland, score(4.5), late(-3, None)), [], "she has lambed");
}

#[test]
fn more_than_half_a_score_late_is_flagged() {
    // Source: ours.
    assert_eq!(flags(System::Upland, score(2.25), late(20, Some(3.0))), [Flag::ChangedLate]);
    assert_eq!(flags(System::Upland, score(2.5), late(20, Some(3.0))), []);
    assert_eq!(flags(System::Upland, score(3.75), late(20, Some(3.0))), [Flag::ChangedLate]);
    let early = StageOfYear {
        stage: ConditionStage::Mating,
        lambs: None,
        days_to_lambing: Some(142),
        before: Some(score(2.0)),
    };
    assert_eq!(flags(System::Upland, score(3.0), early), []);
}

#[test]
fn under_and_over_the_target_are_told_and_a_quarter_is_enough() {
    // Source: Making More from Sheep, late with two 3.3, least 2.5; the nearest quarter is ours.
    let of = |points| flags(System::Australia, score(points), late(40, None));
    assert_eq!(of(3.25), []);
    assert_eq!(of(3.0), [Flag::Under]);
    assert_eq!(of(2.25), [Flag::UnderLeast, Flag::Under]);
    assert_eq!(of(3.5), [Flag::Over]);
    let weaning =
        StageOfYear { stage: ConditionStage::Weaning, lambs: None, days_to_lambing: None, before: None };
    assert_eq!(flags(System::Us, score(4.5), weaning), []);
    assert_eq!(flags(System::Us, score(1.75), weaning), [Flag::Under]);
}

#[test]
fn a_group_has_its_mean() {
    // Source: ours.
    near(mean(&[score(2.0), score(3.0), score(3.25)]).expect("scores"), 2.75, 1e-12);
    assert_eq!(mean(&[]), None);
}
