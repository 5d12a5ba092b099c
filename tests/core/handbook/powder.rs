//! How much powder until weaning.

use super::{kg, near};
use yeanling_core::reckon::powder::{NoPlan, RULES, for_one_lamb, plan, source};
use yeanling_core::settings::PowderRule;
use yeanling_core::units::Mass;

#[track_caller]
fn check(rule: PowderRule, least: f64, most: f64) {
    assert_eq!(for_one_lamb(rule), (kg(least), kg(most)));
}

#[test]
fn new_zealand_plans_7_kg_a_lamb() {
    // Source: New Zealand guidance, 7 kg.
    check(PowderRule::NewZealand, 7.0, 7.0);
    let plan = plan(3, PowderRule::NewZealand, kg(5.0)).expect("a plan");
    assert_eq!((plan.total, plan.left), ((kg(21.0), kg(21.0)), (kg(16.0), kg(16.0))));
}

#[test]
fn ndsu_plans_a_range() {
    // Source: NDSU, 6.8–9.1 kg.
    check(PowderRule::Ndsu, 6.8, 9.1);
    let (least, most) = plan(10, PowderRule::default(), kg(0.0)).expect("a plan").total;
    near(least.as_kilograms(), 68.0, 1e-9);
    near(most.as_kilograms(), 91.0, 1e-9);
}

#[test]
fn the_farmers_journal_plans_13_kg() {
    // Source: Irish Farmers Journal, 13 kg.
    check(PowderRule::FarmersJournal, 13.0, 13.0);
}

#[test]
fn every_rule_names_who_printed_it() {
    // Source: New Zealand guidance; NDSU; Irish Farmers Journal.
    let authors = RULES.map(|rule| source(rule).authors);
    assert_eq!(authors, ["New Zealand guidance", "NDSU", "Irish Farmers Journal"]);
}

#[test]
fn more_used_than_planned_leaves_nothing_to_buy() {
    // Source: ours.
    let plan = plan(1, PowderRule::Ndsu, kg(8.0)).expect("a plan");
    assert_eq!(plan.left.0, kg(0.0));
    near(plan.left.1.as_kilograms(), 1.1, 1e-9);
}

#[test]
fn no_lambs_or_no_powder_is_no_plan() {
    // Source: ours, 1 to 500 lambs.
    for lambs in [0, 501] {
        assert!(matches!(plan(lambs, PowderRule::Ndsu, kg(0.0)), Err(NoPlan::Lambs(_))));
    }
    for used in [-1.0, 10_001.0, f64::NAN] {
        assert!(matches!(plan(3, PowderRule::Ndsu, Mass::from_kilograms(used)), Err(NoPlan::Used(_))));
    }
}
