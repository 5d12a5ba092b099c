//! A ewe that is not right: the worked cases.

use yeanling_core::reckon::illness::Urgency::{self, Now, Today};
use yeanling_core::reckon::illness::ewe::{Case, Check, Row, decide};
use yeanling_core::terms::EweSign as Sign;
use yeanling_core::terms::EweStage::{AfterLambing, LateInLamb, Milking, Other, Unknown};
use yeanling_core::terms::{Gate, Onset};
use yeanling_core::units::{Ketones, TimeDelta};

use crate::handbook::celsius;

/// A ewe that stands, eats and has nothing out.
fn well(stage: yeanling_core::terms::EweStage) -> Case {
    Case { stage, standing: Gate::Good, eating: Gate::Good, nothing_out: Gate::Good, ..Case::default() }
}

#[track_caller]
fn check(case: &Case, rows: &[Row], urgency: Urgency) {
    let answer = decide(case);
    let told: Vec<Row> = answer.rows.iter().map(|found| found.row).collect();
    assert_eq!(told, rows, "{case:?}");
    assert_eq!(answer.urgency, urgency, "{case:?}");
}

fn ketones(millimoles: f64) -> Option<Ketones> {
    Some(Ketones::from_millimoles(millimoles))
}

#[test]
fn late_in_lamb_and_down_in_hours_is_calcium_then_toxemia() {
    // Source: worked case 1 (ours, after Lima 2016).
    let case =
        Case { standing: Gate::Bad, onset: Some(Onset::Hours), ketones: ketones(0.6), ..well(LateInLamb) };
    check(&case, &[Row::LowCalcium, Row::Toxemia], Now);
}

#[test]
fn down_for_days_or_ketotic_is_toxemia_first() {
    // Source: the table of a down ewe (ours).
    let days = Case { standing: Gate::Bad, onset: Some(Onset::Days), ..well(LateInLamb) };
    check(&days, &[Row::Toxemia, Row::LowCalcium], Now);
    let ketotic = Case { standing: Gate::Bad, ketones: ketones(3.0), ..well(LateInLamb) };
    check(&ketotic, &[Row::Toxemia, Row::LowCalcium], Now);
}

#[test]
fn apart_for_days_but_eating_and_seeing_is_todays() {
    // Source: worked case 2 (NADIS).
    let case = Case {
        signs: vec![Sign::KeepsApart, Sign::Sees],
        onset: Some(Onset::Days),
        ketones: ketones(1.4),
        ..well(LateInLamb)
    };
    check(&case, &[Row::Toxemia], Today);
    let unasked = Case { signs: vec![Sign::KeepsApart], ..case };
    assert_eq!(decide(&unasked).urgency, Now, "nobody said that she sees");
}

#[test]
fn the_same_and_blind_is_now() {
    // Source: worked case 3 (NADIS).
    let case = Case {
        signs: vec![Sign::KeepsApart, Sign::Blind],
        onset: Some(Onset::Days),
        ketones: ketones(4.1),
        ..well(LateInLamb)
    };
    check(&case, &[Row::Toxemia], Now);
}

#[test]
fn a_vagina_that_goes_back_by_itself_is_todays_and_looked_at_every_two_hours() {
    // Source: worked case 4 (NADIS).
    let out = |signs: &[Sign]| Case { nothing_out: Gate::Bad, signs: signs.to_vec(), ..well(LateInLamb) };
    check(&out(&[Sign::SmoothOut, Sign::WentBack]), &[Row::VaginaOut], Today);
    assert_eq!(decide(&out(&[Sign::SmoothOut, Sign::WentBack])).look, Some(TimeDelta::hours(2)));
    check(&out(&[Sign::SmoothOut]), &[Row::VaginaOut], Now);
    check(&out(&[Sign::SmoothOut, Sign::WentBack, Sign::StrainsWithIt]), &[Row::VaginaOut], Now);
}

#[test]
fn knobs_are_the_womb_and_so_is_what_nobody_is_sure_of() {
    // Source: worked case 5 (haf.bz).
    let knobs = Case { nothing_out: Gate::Bad, signs: vec![Sign::RawOut], ..well(AfterLambing) };
    check(&knobs, &[Row::WombOut], Now);
    let unsure = Case { nothing_out: Gate::CannotCheck, ..well(AfterLambing) };
    check(&unsure, &[Row::WombOut, Row::Bleeding], Now);
}

#[test]
fn an_afterbirth_of_14_hours_in_a_ewe_that_eats_is_todays() {
    // Source: worked case 6 (MSD 2022; survey of 7,660 ewes, Greece).
    let kept = |hours: i64, signs: &[Sign]| Case {
        signs: [&[Sign::AfterbirthHangs], signs].concat(),
        highest: Some(celsius(39.4)),
        since_last_lamb: Some(TimeDelta::hours(hours)),
        ..well(AfterLambing)
    };
    check(&kept(14, &[]), &[Row::AfterbirthKept], Today);
    check(&kept(7, &[]), &[Row::AfterbirthKept], Urgency::hours(6));
    check(&kept(18, &[Sign::Bright]), &[Row::AfterbirthKept], Today);
    check(&kept(18, &[]), &[Row::AfterbirthKept], Now);
    let fever = Case { highest: Some(celsius(40.5)), ..kept(7, &[]) };
    check(&fever, &[Row::AfterbirthKept], Now);
}

#[test]
fn foul_with_fever_is_now() {
    // Source: worked case 7 (memory).
    let case = Case { signs: vec![Sign::FoulDischarge], highest: Some(celsius(40.8)), ..well(AfterLambing) };
    check(&case, &[Row::WombInfected], Now);
    check(&Case { highest: Some(celsius(39.5)), ..case }, &[Row::WombInfected], Today);
}

#[test]
fn a_blue_udder_stands_before_lameness() {
    // Source: worked case 8 (NADIS; New Mexico State University).
    let case = Case { signs: vec![Sign::Lame, Sign::UdderCold], ..well(Milking) };
    check(&case, &[Row::UdderCold, Row::Lame], Now);
    check(&Case { signs: vec![Sign::Lame], ..well(Milking) }, &[Row::Lame], Urgency::hours(24));
}

#[test]
fn stiff_and_twitching_in_milk_is_magnesium() {
    // Source: worked case 9 (WikiVet).
    let case = Case { signs: vec![Sign::Stiff, Sign::Twitches], ..well(Milking) };
    check(&case, &[Row::LowMagnesium], Now);
}

#[test]
fn a_first_abortion_in_a_well_ewe_is_told_today_and_a_second_now() {
    // Source: Teagasc; Irish Farmers Journal 2018. DIFFERENCE: the second is now (ours, sooner than printed).
    let aborted = |others_aborted| Case { signs: vec![Sign::Aborted], others_aborted, ..well(LateInLamb) };
    check(&aborted(0), &[Row::Aborted], Today);
    check(&aborted(1), &[Row::Aborted], Now);
    let ill = Case { eating: Gate::Bad, ..aborted(0) };
    assert_eq!(decide(&ill).urgency, Now);
}

#[test]
fn a_cast_ewe_that_stands_after_rolling_is_looked_at_in_an_hour() {
    // Source: NFU; ours.
    let up = Case { signs: vec![Sign::OnBack], ..well(Other) };
    check(&up, &[Row::Cast], Urgency::hours(1));
    assert_eq!(decide(&up).no_better, Now);
    assert!(decide(&up).hands_first);
    let still = Case { standing: Gate::NotChecked, ..up };
    check(&still, &[Row::Cast], Now);
}

#[test]
fn a_down_ewe_in_milk_may_have_all_that_lays_one_down() {
    // Source: the table of a down ewe (ours).
    let case = Case { standing: Gate::Bad, ..well(Milking) };
    let rows = [Row::LowMagnesium, Row::LowCalcium, Row::UdderHot, Row::WombInfected, Row::Chest];
    let told: Vec<Row> = decide(&case).rows.iter().map(|found| found.row).collect();
    assert!(rows.iter().all(|row| told.contains(row)), "{told:?}");
    assert_eq!(told[..2], rows[..2]);
    assert_eq!(decide(&case).urgency, Now);
}

#[test]
fn what_was_not_checked_is_checked_in_ten_minutes() {
    // Source: ours.
    let case = Case { signs: vec![Sign::Lame], ..Case::default() };
    let answer = decide(&case);
    assert_eq!(answer.check_now, [Check::Standing, Check::Eating, Check::NothingOut]);
    assert_eq!(answer.look, Some(TimeDelta::minutes(10)));
}

#[test]
fn with_no_stage_known_every_row_is_shown_that_may_be() {
    // Source: ours.
    let case = Case { standing: Gate::CannotCheck, ..well(Unknown) };
    let told: Vec<Row> = decide(&case).rows.iter().map(|found| found.row).collect();
    assert_eq!(told, [Row::LowCalcium, Row::Toxemia, Row::LowMagnesium, Row::HurtByBirth]);
}
