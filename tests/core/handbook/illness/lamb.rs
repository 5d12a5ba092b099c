//! A lamb that is not right: the worked cases.

use yeanling_core::reckon::illness::Urgency::{self, Now, Today};
use yeanling_core::reckon::illness::lamb::{Case, Check, Row, decide, found_dead};
use yeanling_core::terms::{Gate, LambSign as Sign};
use yeanling_core::units::TimeDelta;

use crate::handbook::celsius;

/// A lamb of that age that holds its head up, sucks and is warm.
fn well(age: TimeDelta) -> Case {
    Case { age: Some(age), head_up: Gate::Good, swallows: Gate::Good, warm: Gate::Good, ..Case::default() }
}

#[track_caller]
fn check(case: &Case, rows: &[Row], urgency: Urgency) {
    let answer = decide(case);
    let told: Vec<Row> = answer.rows.iter().map(|found| found.row).collect();
    assert_eq!(told, rows, "{case:?}");
    assert_eq!(answer.urgency, urgency, "{case:?}");
}

fn days(days: i64) -> TimeDelta {
    TimeDelta::days(days)
}

fn hours(hours: i64) -> TimeDelta {
    TimeDelta::hours(hours)
}

#[test]
fn four_hours_cold_and_swallowing_is_warmed_and_looked_at_in_20_minutes() {
    // Source: worked case 1.
    let cold = Case { warm: Gate::Bad, ..well(hours(4)) };
    check(&cold, &[Row::ColdYoung], Urgency::minutes(20));
    assert_eq!(decide(&cold).no_better, Now);
    assert!(decide(&cold).hands_first);
    let dumb = Case { swallows: Gate::Bad, ..cold };
    check(&dumb, &[Row::NoSwallow, Row::ColdYoung], Now);
    assert!(decide(&dumb).nothing_by_mouth && decide(&dumb).hands_first);
}

#[test]
fn thirty_hours_cold_without_a_suck_is_now() {
    // Source: worked case 2.
    let cold = Case { temperature: Some(celsius(36.0)), swallows: Gate::Bad, ..well(hours(30)) };
    check(&cold, &[Row::NoSwallow, Row::ColdOlder], Now);
    assert!(decide(&cold).nothing_by_mouth);
}

#[test]
fn the_branch_of_a_cold_lamb_is_fixed_when_its_cold_begins() {
    // Source: the texts above the tables.
    let case = Case { warm: Gate::Bad, cold_since_age: Some(hours(4)), ..well(hours(7)) };
    check(&case, &[Row::ColdYoung], Urgency::minutes(20));
    let unknown = Case { age: None, cold_since_age: None, ..case };
    check(&unknown, &[Row::ColdOlder], Now);
}

#[test]
fn a_wet_chin_and_a_tight_belly_are_watery_mouth() {
    // Source: worked case 3 (Eales 1986; NADIS).
    let case = Case { signs: vec![Sign::WetChin, Sign::TightBelly], ..well(hours(26)) };
    check(&case, &[Row::WateryMouth], Now);
    assert!(decide(&case).nothing_by_mouth);
    let birth = Case { signs: vec![Sign::WetChin], ..well(hours(2)) };
    check(&birth, &[Row::WateryMouth], Urgency::hours(1));
}

#[test]
fn a_tight_belly_on_the_bottle_at_three_weeks_is_bloat() {
    // Source: worked case 4 (NZAgbiz; Levin Vets).
    let case = Case { signs: vec![Sign::TightBelly], on_bottle: true, ..well(days(21)) };
    check(&case, &[Row::Bloat], Now);
    let lively = Case { signs: vec![Sign::TightBelly, Sign::Lively], ..case };
    check(&lively, &[Row::Bloat], Urgency::hours(1));
}

#[test]
fn a_bright_scour_is_watched_and_a_dry_one_is_now() {
    // Source: worked cases 5 and 6 (Maryland 2019; infovets).
    let scour =
        |tent_seconds| Case { signs: vec![Sign::WateryScour, Sign::Lively], tent_seconds, ..well(days(7)) };
    check(&scour(Some(1)), &[Row::Scour], Urgency::hours(6));
    check(&scour(Some(2)), &[Row::Scour], Today);
    check(&scour(Some(8)), &[Row::Scour], Now);
    check(&scour(None), &[Row::Scour], Today);
}

#[test]
fn a_hot_joint_that_sucks_is_todays() {
    // Source: worked case 7 (NADIS).
    let joint = Case { signs: vec![Sign::HotJoint], ..well(days(9)) };
    check(&joint, &[Row::Joint], Today);
    check(&Case { swallows: Gate::Bad, ..joint }, &[Row::NoSwallow, Row::Joint], Now);
}

#[test]
fn blood_in_a_dull_lamb_of_five_weeks_is_coccidia_now() {
    // Source: worked case 8 (Irish Farmers Journal).
    let case = Case { signs: vec![Sign::BloodInDung, Sign::Dull], ..well(days(35)) };
    check(&case, &[Row::Coccidia], Now);
    let young = Case { age: Some(days(5)), ..case };
    assert!(decide(&young).has(Row::Dysentery));
}

#[test]
fn a_clear_eye_with_the_lid_in_is_watched() {
    // Source: worked case 9 (FAS 2018).
    let eye = |signs: &[Sign]| Case { signs: signs.to_vec(), ..well(days(2)) };
    check(&eye(&[Sign::LidIn, Sign::EyeClear, Sign::Lively]), &[Row::Eye], Urgency::hours(12));
    check(&eye(&[Sign::LidIn]), &[Row::Eye], Today);
    check(&eye(&[Sign::LidIn, Sign::EyeClear, Sign::CloudyEye]), &[Row::Eye], Today);
}

#[test]
fn a_well_grown_lamb_found_dead_is_todays_and_the_second_is_now() {
    // Source: worked case 10 (SRUC; Farmers Weekly 2002).
    assert_eq!(found_dead(0).urgency, Today);
    assert_eq!(found_dead(1).urgency, Now);
}

#[test]
fn a_fever_is_today_only_up_to_a_little_and_in_a_bright_lamb_that_sucks() {
    // Source: ours.
    let hot = |celsius_read: f64, signs: &[Sign]| Case {
        temperature: Some(celsius(celsius_read)),
        signs: signs.to_vec(),
        ..well(days(4))
    };
    check(&hot(40.4, &[Sign::Lively]), &[Row::Hot], Today);
    check(&hot(40.4, &[]), &[Row::Hot], Now);
    check(&hot(40.6, &[Sign::Lively]), &[Row::Hot], Now);
    assert_eq!(decide(&hot(40.4, &[Sign::Lively])).look, Some(TimeDelta::minutes(30)));
}

#[test]
fn a_dull_newborn_is_looked_at_in_an_hour_and_then_is_now() {
    // Source: ours.
    let dull = Case { signs: vec![Sign::Dull], ..well(days(2)) };
    check(&dull, &[Row::Dull], Urgency::hours(1));
    assert_eq!(decide(&dull).no_better, Now);
    check(&Case { age: Some(days(4)), ..dull.clone() }, &[Row::Dull], Today);
    let pulled = Case { age: Some(hours(3)), hard_birth: true, ..dull };
    assert!(decide(&pulled).has(Row::HardBirth));
}

#[test]
fn what_was_not_checked_is_checked_in_ten_minutes() {
    // Source: ours.
    let answer = decide(&Case { age: Some(days(3)), signs: vec![Sign::LidIn], ..Case::default() });
    assert_eq!(answer.check_now, [Check::HeadUp, Check::Swallows, Check::Warm]);
    assert_eq!(answer.look, Some(TimeDelta::minutes(10)));
}
