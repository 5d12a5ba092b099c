//! How the lambs of a season grew: gains, weights made alike, classes, and who lags.

use proptest::prelude::*;
use yeanling_core::book::{BirthDay, Event, LambId, Life, Sex};
use yeanling_core::flock::Reared;
use yeanling_core::reckon::adjusted_weight::{DamAge, ToAge};
use yeanling_core::seasons::{Grown, NoAdjusted, by_dam_age, by_litter, grown, seasons, usual_age, year};
use yeanling_core::units::{Mass, TimeDelta};

use super::days;
use crate::book::arbitrary::config;
use crate::scribe::{Scribe, at};

fn of(scribe: &Scribe) -> Vec<Grown> {
    let flock = scribe.flock();
    let season = seasons(&flock).into_iter().next().expect("a season");
    grown(&flock, &season, ToAge::Day60, days(300))
}

fn born(scribe: &mut Scribe, minute: i64, dam: yeanling_core::book::EweId, sex: Sex) -> LambId {
    let event = Event::LambBorn { dam: Some(dam), beside: None, sex: Some(sex), alive: true };
    scribe.note(at(minute), event).as_lamb()
}

fn weigh(scribe: &mut Scribe, lamb: LambId, minute: i64, days: i64, pounds: f64) {
    let event = Event::Weighed { lamb, mass: Mass::from_pounds(pounds) };
    scribe.note(at(minute) + TimeDelta::days(days), event);
}

/// A two-year-old dam with twin ewe lambs.
fn twins() -> (Scribe, [LambId; 2]) {
    let mut scribe = Scribe::new(1);
    let dam = scribe.ewe(at(-600), "12");
    scribe.note(
        at(-500),
        Event::Life(Life::Described { ewe: dam, born: Some(BirthDay::Year(2024)), breed: None }),
    );
    let twins = [0, 10].map(|minute| born(&mut scribe, minute, dam, Sex::Ewe));
    for lamb in twins {
        weigh(&mut scribe, lamb, 30, 0, 10.0);
    }
    (scribe, twins)
}

#[test]
fn the_printed_twin_weighs_79_91_pounds_at_60_days() {
    // Source: Penn State Extension, Barkley: twin ewe lamb of a two-year-old dam, 10 lb at birth, 62 lb at 61 days.
    let (mut scribe, [lamb, _]) = twins();
    weigh(&mut scribe, lamb, 0, 61, 62.0);
    let all = of(&scribe);
    let [one] = &all[..] else { panic!("one was weighed late enough") };
    let adjusted = one.adjusted.as_ref().expect("a weight");
    assert_eq!(format!("{:.2}", adjusted.mass.as_pounds()), "79.91");
    assert_eq!((one.born, one.reared, one.dam_age), (2, Some(Reared::ByEwe(2)), Some(DamAge::Two)));
    let gain = one.since_birth.expect("a gain");
    assert!((gain - (62.0 - 10.0) * 453.592_37 / 61.0).abs() < 0.1, "{gain}");
}

#[test]
fn a_fostered_lamb_is_reckoned_as_born_and_as_reared() {
    let (mut scribe, [lamb, other]) = twins();
    let foster = scribe.ewe(at(-400), "50");
    scribe.note(at(100), Event::Life(Life::Fostered { lamb, dam: foster }));
    for lamb in [lamb, other] {
        weigh(&mut scribe, lamb, 0, 60, 60.0);
    }
    // Born a twin, reared a single: 1.11 in place of 1.21, for both.
    for one in of(&scribe) {
        assert_eq!((one.born, one.reared), (2, Some(Reared::ByEwe(1))));
        assert!((one.adjusted.expect("a weight").litter - 1.11).abs() < 1e-9);
    }
}

#[test]
fn a_lamb_reared_by_hand_stands_apart() {
    let (mut scribe, [lamb, other]) = twins();
    scribe.fed(days(20), lamb, 300.0);
    weigh(&mut scribe, lamb, 0, 60, 50.0);
    weigh(&mut scribe, other, 0, 60, 60.0);
    let all = of(&scribe);
    assert_eq!(all[0].lamb, other, "those made alike come first");
    assert_eq!((all[1].reared, all[1].adjusted.clone()), (Some(Reared::ByHand), Err(NoAdjusted::ByHand)));
    let classes = by_litter(&all);
    let names: Vec<_> = classes.iter().map(|(class, gained)| (*class, gained.lambs)).collect();
    assert_eq!(names, [((2, None), 1), ((2, Some(1)), 1)]);
    assert_eq!(
        by_dam_age(&all).iter().map(|(age, gained)| (*age, gained.lambs)).collect::<Vec<_>>(),
        [(DamAge::Two, 1)]
    );
}

#[test]
fn who_is_under_85_percent_of_its_like_lags() {
    let mut scribe = Scribe::new(1);
    let mut lambs = Vec::new();
    for number in 0..5_i64 {
        let dam = scribe.ewe(at(-600 + number), &format!("{number}"));
        let lamb = born(&mut scribe, number * 10, dam, Sex::Ewe);
        weigh(&mut scribe, lamb, number * 10 + 5, 0, 9.0);
        // Four of 70 lb and one of 52: the mean is 66.4, and 85 % of it 56.4.
        weigh(&mut scribe, lamb, number * 10, 60, if number == 2 { 52.0 } else { 70.0 });
        lambs.push(lamb);
    }
    let lagging: Vec<LambId> = of(&scribe).into_iter().filter(|one| one.lags).map(|one| one.lamb).collect();
    assert_eq!(lagging, [lambs[2]]);
}

#[test]
fn a_weight_of_the_first_two_weeks_tells_nothing_and_one_without_birth_weight_little() {
    let mut scribe = Scribe::new(1);
    let dam = scribe.ewe(at(-600), "9");
    let (young, old) = (born(&mut scribe, 0, dam, Sex::Ram), born(&mut scribe, 5, dam, Sex::Ram));
    weigh(&mut scribe, young, 0, 13, 14.0);
    weigh(&mut scribe, old, 5, 58, 50.0);
    let all = of(&scribe);
    let [one] = &all[..] else { panic!("one alone") };
    assert_eq!(
        (one.lamb, one.since_birth, one.adjusted.clone()),
        (old, None, Err(NoAdjusted::NoBirthWeight))
    );
}

/// Five single ewe lambs of 9 lb; each is weighed once, so many pounds at such an age.
fn weighed_at(weights: [(i64, f64); 5]) -> (Scribe, Vec<LambId>) {
    let mut scribe = Scribe::new(1);
    let lambs = weights.into_iter().zip(0_i64..).map(|((days, pounds), number)| {
        let dam = scribe.ewe(at(-600 + number), &format!("{number}"));
        let lamb = born(&mut scribe, number * 10, dam, Sex::Ewe);
        weigh(&mut scribe, lamb, number * 10 + 5, 0, 9.0);
        weigh(&mut scribe, lamb, number * 10, days, pounds);
        lamb
    });
    let lambs = lambs.collect();
    (scribe, lambs)
}

#[test]
fn laggards_come_first_and_then_the_lightest() {
    let (scribe, lambs) = weighed_at([(60, 70.0), (60, 72.0), (60, 52.0), (60, 71.0), (60, 69.0)]);
    let order: Vec<LambId> = of(&scribe).into_iter().map(|one| one.lamb).collect();
    assert_eq!(order, [lambs[2], lambs[4], lambs[0], lambs[3], lambs[1]]);
}

#[test]
fn no_lamb_is_ranked_by_a_weight_of_another_age() {
    let (scribe, lambs) = weighed_at([(60, 70.0), (60, 72.0), (95, 95.0), (61, 71.0), (130, 99.0)]);
    let flock = scribe.flock();
    let season = seasons(&flock).remove(0);
    for to in ToAge::ALL {
        for one in grown(&flock, &season, to, days(300)) {
            if let Ok(adjusted) = one.adjusted {
                assert_eq!(adjusted.at, to);
                assert!(one.in_span && to.holds(one.age));
            }
        }
    }
    let at_sixty: Vec<(LambId, bool)> = of(&scribe).into_iter().map(|one| (one.lamb, one.in_span)).collect();
    assert_eq!(at_sixty.iter().filter(|(_, in_span)| *in_span).count(), 3);
    assert_eq!(at_sixty.iter().skip(3).map(|(lamb, _)| *lamb).collect::<Vec<_>>(), [lambs[4], lambs[2]]);
}

#[test]
fn each_figure_uses_the_weight_nearest_to_its_age() {
    let (mut scribe, lambs) = weighed_at([(55, 60.0); 5]);
    weigh(&mut scribe, lambs[0], 0, 62, 70.0);
    weigh(&mut scribe, lambs[0], 0, 66, 74.0);
    weigh(&mut scribe, lambs[0], 0, 95, 99.0);
    let all = of(&scribe);
    let one = all.iter().find(|one| one.lamb == lambs[0]).expect("it was weighed");
    assert_eq!((one.age.num_days(), one.mass), (62, Mass::from_pounds(70.0)));
}

/// A season's figures at every age.
fn figures(scribe: &Scribe) -> Vec<Vec<Grown>> {
    let flock = scribe.flock();
    let season = seasons(&flock).pop().expect("a season");
    ToAge::ALL.into_iter().map(|to| grown(&flock, &season, to, days(3000))).collect()
}

proptest! {
    #![proptest_config(config(200))]

    #[test]
    fn a_later_weight_changes_no_past_figure(
        weights in prop::collection::vec((0..5_usize, 14..160_i64, 20.0..120.0), 0..12),
        later in prop::collection::vec((0..5_usize, 0..900_i64, 20.0..200.0), 1..6),
    ) {
        let (mut scribe, lambs) = weighed_at([(60, 70.0), (88, 90.0), (61, 52.0), (110, 71.0), (30, 40.0)]);
        for (lamb, days, pounds) in weights {
            weigh(&mut scribe, lambs[lamb], 1, days, pounds);
        }
        let flock = scribe.flock();
        let season = seasons(&flock).pop().expect("a season");
        let (before, counted) = (figures(&scribe), year(&flock, &season, days(3000)));
        for (lamb, days, pounds) in later {
            // After the span of the oldest age, by an hour and more.
            weigh(&mut scribe, lambs[lamb], 200, 149 + days, pounds);
        }
        prop_assert_eq!(figures(&scribe), before);
        let flock = scribe.flock();
        prop_assert_eq!(year(&flock, &season, days(3000)), counted);
    }

    #[test]
    fn a_weight_further_from_an_age_changes_no_figure_of_that_age(
        first in 53..67_i64, other in 14..300_i64, pounds in 20.0..200.0
    ) {
        let (mut scribe, lambs) = weighed_at([(first, 70.0); 5]);
        let before = figures(&scribe);
        weigh(&mut scribe, lambs[3], 31, other, pounds);
        if (other - 60).abs() > (first - 60).abs() + 1 {
            let told = |all: &[Grown]| -> Vec<_> {
                all.iter().map(|one| (one.lamb, one.mass, one.adjusted.clone(), one.since_birth, one.lags)).collect()
            };
            prop_assert_eq!(told(&figures(&scribe)[1]), told(&before[1]));
        }
    }
}

#[test]
fn the_usual_age_is_the_oldest_to_which_enough_lambs_were_weighed() {
    #[track_caller]
    fn check(ages: [i64; 5], more: &[(usize, i64)], expected: ToAge) {
        let (mut scribe, lambs) = weighed_at(ages.map(|days| (days, 60.0)));
        for (lamb, days) in more {
            weigh(&mut scribe, lambs[*lamb], 7, *days, 80.0);
        }
        let flock = scribe.flock();
        let season = seasons(&flock).pop().expect("a season");
        assert_eq!(usual_age(&flock, &season, days(900)), expected, "{ages:?} {more:?}");
    }
    check([60, 61, 60, 59, 58], &[], ToAge::Day60);
    check([60, 61, 60, 59, 58], &[(0, 92), (1, 92)], ToAge::Day60);
    check([60, 61, 60, 59, 58], &[(0, 92), (1, 92), (2, 93)], ToAge::Day90);
    check([40, 41, 45, 46, 300], &[], ToAge::Day60);
    // Weighed on one day, a flock of many ages is adjusted to one that holds them all.
    check([95, 99, 103, 110, 115], &[], ToAge::Day120);
}
