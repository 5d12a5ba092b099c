//! How lively a newborn is, and by when it should be up and fed.

use yeanling_core::reckon::vigor::{
    Ask, FourGrade, GRADED_AT, Milestone, NotAGrade, QUICK, QUICK_ALIVE_AT_90_DAYS_PERCENT, worth_scoring,
};
use yeanling_core::settings::Limits;
use yeanling_core::units::TimeDelta;

#[track_caller]
fn check(number: u8, ask: Ask) {
    let grade = FourGrade::from_number(number).expect("a grade");
    assert_eq!((grade.number(), grade.ask()), (number, ask));
}

#[test]
fn four_grades_run_from_best_to_worst_at_five_minutes() {
    // Source: UK levy-board breeding scheme with SRUC; what each asks for is ours.
    check(1, Ask::LeaveToDam);
    check(2, Ask::WatchUp);
    check(3, Ask::HelpToSuck);
    check(4, Ask::ActNow);
    assert_eq!(GRADED_AT, TimeDelta::minutes(5));
    assert_eq!(FourGrade::ALL.map(FourGrade::number), [1, 2, 3, 4]);
}

#[test]
fn no_other_number_is_a_grade() {
    // Source: UK levy-board breeding scheme with SRUC.
    for given in [0, 5, 10, 255] {
        assert_eq!(FourGrade::from_number(given), Err(NotAGrade { given }));
    }
}

#[test]
fn a_score_says_something_in_the_first_hour_only() {
    // Source: Gronqvist et al. 2020, Asian-Australasian J. Anim. Sci. 33:1848.
    assert!(worth_scoring(TimeDelta::zero()));
    assert!(worth_scoring(TimeDelta::minutes(59)));
    assert!(!worth_scoring(TimeDelta::hours(1)));
    assert!(!worth_scoring(TimeDelta::hours(3)));
}

#[test]
fn the_farms_limits_start_from_the_milestones() {
    // Source: veterinary newsletter 2017 (30 min, 2 h); common practice (1 h); AHDB and Teagasc (6 h).
    let limits = Limits::default();
    let minutes = [limits.up_minutes, limits.help_minutes, limits.red_minutes, limits.last_call_minutes];
    let ages = minutes.map(|minutes| TimeDelta::minutes(i64::from(minutes)));
    assert_eq!(Milestone::ALL.map(Milestone::age), ages);
}

#[test]
fn of_lambs_up_and_sucking_in_15_minutes_nearly_all_live() {
    // Source: New Zealand smallholder press 2021, 90–95 % alive at 90 d.
    assert_eq!((QUICK, QUICK_ALIVE_AT_90_DAYS_PERCENT), (TimeDelta::minutes(15), (90, 95)));
}
