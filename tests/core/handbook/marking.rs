//! Until when rings and tags go on, and when the vaccine is due; laws as read in 2026.

use yeanling_core::reckon::marking::{
    READ_IN, RINGS_FROM, RingState, TagRule, Window, banned, ring, ring_state, tag_by, vaccine,
};
use yeanling_core::settings::{DamsVaccinated, RingRule, Rings};
use yeanling_core::terms::Ring;
use yeanling_core::units::TimeDelta;

fn window(rule: RingRule, kind: Ring) -> Window {
    ring(Rings { rule, tails: true, ram_lambs: true }, kind).expect("rings are chosen")
}

#[track_caller]
fn check(rule: RingRule, tail_days: i64, castration_days: i64) {
    for (kind, days) in [(Ring::Tail, tail_days), (Ring::Castration, castration_days)] {
        let window = window(rule, kind);
        assert_eq!((window.from, window.before), (TimeDelta::hours(24), TimeDelta::days(days)));
        assert_eq!(window.law, !matches!(rule, RingRule::Own { .. }));
    }
}

#[test]
fn england_and_wales_allow_rings_in_the_first_7_days_only() {
    // Source: NFU, Protection of Animals (Anaesthetics) Act 1964.
    check(RingRule::EnglandWales, 7, 7);
    assert_eq!(READ_IN, 2026);
}

#[test]
fn germany_bans_castration_rings_and_allows_tails_under_8_days() {
    // Source: German Animal Welfare Act (TierSchG) §6(2): castration with rings banned; §6(1) 3: tails only where
    // indispensable in the single case, by a competent person. As read in 2026.
    let both = Rings { rule: RingRule::Germany, tails: true, ram_lambs: true };
    assert_eq!(ring(both, Ring::Castration), None);
    assert!(banned(RingRule::Germany, Ring::Castration) && !banned(RingRule::Germany, Ring::Tail));
    assert!(!banned(RingRule::EnglandWales, Ring::Castration));
    let tail = window(RingRule::Germany, Ring::Tail);
    assert_eq!((tail.from, tail.before, tail.law), (TimeDelta::hours(24), TimeDelta::days(8), true));
}

#[test]
fn new_south_wales_and_new_zealand_allow_rings_to_6_months() {
    // Source: rules of New South Wales and New Zealand, as read in 2026; 181 days are ours.
    check(RingRule::NewSouthWales, 181, 181);
    check(RingRule::NewZealand, 181, 181);
}

#[test]
fn no_ring_goes_on_in_the_first_day() {
    // Source: AHDB, never in the first 24 h.
    assert_eq!(RINGS_FROM, TimeDelta::hours(24));
    let window = window(RingRule::EnglandWales, Ring::Tail);
    let second = TimeDelta::seconds(1);
    assert_eq!(ring_state(&window, RINGS_FROM - second), RingState::TooYoung(second));
    assert_eq!(ring_state(&window, RINGS_FROM), RingState::Open(TimeDelta::days(6)));
    assert_eq!(ring_state(&window, TimeDelta::days(7) - second), RingState::Open(second));
    assert_eq!(ring_state(&window, TimeDelta::days(7)), RingState::Past);
}

#[test]
fn the_farm_sets_its_own_limit_within_bounds() {
    // Source: ours, 2 to 181 days.
    check(RingRule::Own { days: 10 }, 10, 10);
    let own = |days| Rings { rule: RingRule::Own { days }, tails: true, ram_lambs: false };
    for days in [0, 1, 182, u16::MAX] {
        assert_eq!(own(days).checked().expect_err("out of bounds").given, days);
    }
    for days in [2, 181] {
        assert!(own(days).checked().is_ok());
    }
}

#[test]
fn a_farm_that_chose_no_rings_is_not_reminded() {
    // Source: ours.
    let chosen = |tails, ram_lambs| Rings { rule: RingRule::EnglandWales, tails, ram_lambs };
    for kind in Ring::ALL {
        assert_eq!(ring(Rings::default(), kind), None);
        assert_eq!(ring(Rings { tails: true, ram_lambs: true, ..Rings::default() }, kind), None);
        assert_eq!(ring(chosen(false, false), kind), None);
    }
    assert!(ring(chosen(true, false), Ring::Tail).is_some());
    assert!(ring(chosen(true, false), Ring::Castration).is_none());
    assert!(ring(chosen(false, true), Ring::Castration).is_some());
}

#[test]
fn great_britain_tags_by_6_months_housed_and_9_outdoors() {
    // Source: gov.uk; 181 and 273 days are ours, the shortest such months.
    assert_eq!(tag_by(TagRule::GreatBritainHoused), Some(TimeDelta::days(181)));
    assert_eq!(tag_by(TagRule::GreatBritainOutdoors), Some(TimeDelta::days(273)));
}

#[test]
fn the_usa_tags_before_a_lamb_leaves() {
    // Source: US rules, before leaving the farm.
    assert_eq!(tag_by(TagRule::Usa), None);
}

#[test]
fn the_vaccine_waits_for_the_dams_own_to_wane() {
    // Source: University of Maryland, 6–8 weeks then 3–4 later; dam not vaccinated 3–4 then 3–4.
    let weeks = |span: (TimeDelta, TimeDelta)| (span.0.num_weeks(), span.1.num_weeks());
    let of = |dam| (weeks(vaccine(dam).first), weeks(vaccine(dam).second_after));
    assert_eq!(of(DamsVaccinated::Yes), ((6, 8), (3, 4)));
    assert_eq!(of(DamsVaccinated::No), ((3, 4), (3, 4)));
}

#[test]
fn where_the_dams_vaccine_is_not_known_the_earlier_dates_hold() {
    // Source: ours, the safer branch.
    let (unknown, no) = (vaccine(DamsVaccinated::Unknown), vaccine(DamsVaccinated::No));
    assert_eq!((unknown.first, unknown.second_after), (no.first, no.second_after));
}
