//! Whether a bottle lamb can be weaned, rule by rule.

use super::kg;
use yeanling_core::reckon::weaning::{
    Condition, EARLIEST, Lamb, Met, RULES, Verdict, WEIGHT, WeaningAnswer, eats_enough, source, wean,
};
use yeanling_core::settings::WeaningRule;
use yeanling_core::units::TimeDelta;

fn lamb(days: i64, weight: Option<f64>, birth_weight: Option<f64>, eats_solids: Option<bool>) -> Lamb {
    Lamb {
        age: TimeDelta::days(days),
        weight: weight.map(kg),
        birth_weight: birth_weight.map(kg),
        eats_solids,
    }
}

fn answer(lamb: Lamb, rule: WeaningRule) -> WeaningAnswer {
    wean(lamb, rule).expect("in bounds")
}

#[track_caller]
fn check(rule: WeaningRule, lamb: Lamb, verdict: Verdict, met: &[Met]) {
    let answer = answer(lamb, rule);
    let each: Vec<Met> = answer.conditions.iter().map(|(_, met)| *met).collect();
    assert_eq!((answer.verdict, each.as_slice()), (verdict, met), "{answer:?}");
}

#[test]
fn the_feed_maker_asks_for_35_days_two_and_a_half_times_the_birth_weight_and_solids() {
    // Source: feed maker, ≥ 35 d, ≥ 2.5 × birth weight, 250 g solids on 3 days running.
    let rule = WeaningRule::FeedMaker;
    let of = |days, weight, solids| lamb(days, Some(weight), Some(4.2), Some(solids));
    check(rule, of(35, 10.5, true), Verdict::Ready, &[Met::Yes; 3]);
    check(rule, of(34, 10.5, true), Verdict::NotYet, &[Met::No, Met::Yes, Met::Yes]);
    check(rule, of(35, 10.4, true), Verdict::NotYet, &[Met::Yes, Met::No, Met::Yes]);
    check(rule, of(35, 10.5, false), Verdict::NotYet, &[Met::Yes, Met::Yes, Met::No]);
}

#[test]
fn teagasc_asks_for_five_weeks_9_kg_and_solids() {
    // Source: Teagasc, about 5 weeks, ≥ 9 kg, the same intake.
    let rule = WeaningRule::Teagasc;
    check(rule, lamb(35, Some(9.0), None, Some(true)), Verdict::Ready, &[Met::Yes; 3]);
    check(rule, lamb(34, Some(9.0), None, Some(true)), Verdict::NotYet, &[Met::No, Met::Yes, Met::Yes]);
    check(rule, lamb(35, Some(8.9), None, Some(true)), Verdict::NotYet, &[Met::Yes, Met::No, Met::Yes]);
}

#[test]
fn four_weeks_are_the_earliest() {
    // Source: common practice; the same solids are ours.
    let rule = WeaningRule::FourWeeks;
    check(rule, lamb(28, None, None, Some(true)), Verdict::Ready, &[Met::Yes; 2]);
    check(rule, lamb(27, None, None, Some(true)), Verdict::NotYet, &[Met::No, Met::Yes]);
    check(rule, lamb(28, None, None, Some(false)), Verdict::NotYet, &[Met::Yes, Met::No]);
    assert_eq!(EARLIEST, TimeDelta::weeks(4));
    for rule in RULES {
        let young = answer(lamb(27, Some(20.0), Some(3.0), Some(true)), rule);
        assert_eq!(young.verdict, Verdict::NotYet, "{rule:?}");
    }
}

#[test]
fn what_is_not_known_is_not_met() {
    // Source: ours.
    let unknown = Met::Unknown;
    let all = lamb(40, None, None, None);
    check(WeaningRule::FeedMaker, all, Verdict::Unknown, &[Met::Yes, unknown, unknown]);
    check(WeaningRule::Teagasc, all, Verdict::Unknown, &[Met::Yes, unknown, unknown]);
    check(WeaningRule::FourWeeks, all, Verdict::Unknown, &[Met::Yes, unknown]);
    let no_birth_weight = lamb(40, Some(12.0), None, Some(true));
    check(WeaningRule::FeedMaker, no_birth_weight, Verdict::Unknown, &[Met::Yes, unknown, Met::Yes]);
    let weight = answer(no_birth_weight, WeaningRule::FeedMaker).conditions.get(1).copied();
    assert_eq!(weight, Some((Condition::Weight { from: None }, unknown)));
    check(WeaningRule::FeedMaker, lamb(20, None, None, None), Verdict::NotYet, &[Met::No, unknown, unknown]);
}

#[test]
fn solids_count_when_all_three_days_reach_250_g() {
    // Source: feed maker; Teagasc, 250 g on 3 days running.
    assert_eq!(eats_enough([kg(0.25), kg(0.3), kg(0.25)]), Ok(true));
    assert_eq!(eats_enough([kg(0.25), kg(0.249), kg(0.4)]), Ok(false));
    for grams in [-0.1, 3.1, f64::NAN] {
        assert!(eats_enough([kg(0.25), kg(0.3), kg(grams)]).is_err());
    }
}

#[test]
fn every_rule_names_who_printed_it() {
    // Source: feed maker; Teagasc; common practice.
    assert_eq!(RULES.map(|rule| source(rule).authors), ["Feed maker", "Teagasc", ""]);
}

#[test]
fn a_weight_no_lamb_has_is_refused() {
    // Source: ours, 0.5 to 60 kg, and 0.5 to 12 kg at birth.
    for weight in [0.0, -3.0, 61.0, f64::NAN] {
        let refused = wean(lamb(40, Some(weight), Some(4.0), Some(true)), WeaningRule::FeedMaker);
        assert_eq!(refused.expect_err("out of bounds").allowed, WEIGHT);
    }
    assert!(wean(lamb(40, Some(10.0), Some(40.0), Some(true)), WeaningRule::FeedMaker).is_err());
}
