//! The ten-point newborn score, sign by sign.

use yeanling_core::reckon::ten_point::{
    Band, Points, Scale, Score, Sign, Signs, TooManyPoints, from_points, oxygen, pulse, score,
};

const ALL: [Points; 3] = [Points::Zero, Points::One, Points::Two];

fn of(points: Points, breathing: Option<Points>) -> Score {
    score(&Signs { pulse: points, breathing, gums: points, nose: points, rump: points })
}

#[test]
fn the_pulse_counts_from_100_and_over_175() {
    // Source: ten-point newborn score, 75 Polypay lambs.
    for (beats, points) in [
        (0, Points::Zero),
        (99, Points::Zero),
        (100, Points::One),
        (175, Points::One),
        (176, Points::Two),
        (400, Points::Two),
    ] {
        assert_eq!(pulse(beats), Ok(points), "{beats}");
    }
    assert!(pulse(401).is_err());
}

#[test]
fn the_oxygen_counts_from_45_and_over_65_percent() {
    // Source: ten-point newborn score, 75 Polypay lambs.
    for (percent, points) in
        [(0, Points::Zero), (44, Points::Zero), (45, Points::One), (65, Points::One), (66, Points::Two)]
    {
        assert_eq!(oxygen(percent), Ok(points), "{percent}");
    }
    assert!(oxygen(101).is_err());
}

#[test]
fn five_signs_of_two_points_make_ten() {
    // Source: ten-point newborn score, 75 Polypay lambs: five signs, 0, 1 or 2 each.
    assert_eq!(Sign::ALL.len(), 5);
    for (points, sum) in ALL.into_iter().zip([0, 5, 10]) {
        let score = of(points, Some(points));
        assert_eq!((score.points, score.scale), (sum, Scale::TenPoint));
    }
}

#[test]
fn the_bands_are_7_and_4() {
    // Source: memory, 7–10, 4–6, 0–3.
    let band = |points| from_points(points, Scale::TenPoint).expect("on the scale").band;
    for points in 0..=10 {
        let expected = match points {
            7.. => Band::Strong,
            4.. => Band::Middling,
            _ => Band::Weak,
        };
        assert_eq!(band(points), Some(expected), "{points}");
    }
}

#[test]
fn without_an_oximeter_it_is_another_scale_of_eight_without_bands() {
    // Source: ours, adapted.
    for (points, sum) in ALL.into_iter().zip([0, 4, 8]) {
        let expected = Score { points: sum, scale: Scale::EightPointAdapted, band: None };
        assert_eq!(of(points, None), expected);
        assert_eq!(from_points(sum, Scale::EightPointAdapted), Ok(expected));
    }
}

#[test]
fn more_points_than_the_scale_has_are_refused() {
    // Source: ten-point newborn score; eight is ours.
    assert_eq!(from_points(11, Scale::TenPoint), Err(TooManyPoints { given: 11, most: 10 }));
    assert_eq!(from_points(9, Scale::EightPointAdapted), Err(TooManyPoints { given: 9, most: 8 }));
}
