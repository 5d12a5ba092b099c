//! How long labor may take, and the limits the farm starts from.

use yeanling_core::reckon::labor::{self, Needs, needs};
use yeanling_core::settings::LaborLimits;
use yeanling_core::terms::Presentation;
use yeanling_core::units::TimeDelta;

fn minutes(minutes: u16) -> TimeDelta {
    TimeDelta::minutes(i64::from(minutes))
}

#[test]
fn a_restless_ewe_is_looked_at_hourly() {
    // Common practice, no source.
    assert_eq!(labor::LOOK, TimeDelta::minutes(60));
}

#[test]
fn restless_over_six_hours_is_examined() {
    // Source: North Canterbury Vets.
    assert_eq!(labor::RESTLESS, TimeDelta::minutes(360));
}

#[test]
fn half_an_hour_of_waters_asks_for_a_hand() {
    // Memory: extension guides.
    assert_eq!(labor::HAND_CHECK, TimeDelta::minutes(30));
}

#[test]
fn an_hour_of_waters_asks_to_step_in() {
    // Source: University of Maryland; Anexa; CHB Vets.
    assert_eq!(labor::STEP_IN, TimeDelta::minutes(60));
}

#[test]
fn a_tight_neck_is_tried_for_the_shorter_of_two_printed_times() {
    // Source: NADIS, 10 min.
    assert_eq!(labor::NECK, TimeDelta::minutes(10));
    // Source: Cornell, 30 min. DIFFERENCE: the shorter is kept.
    assert_eq!(labor::NECK_CORNELL, TimeDelta::minutes(30));
    assert!(LaborLimits::default().neck_minutes < 30);
}

#[test]
fn the_next_lamb_comes_within_half_an_hour_and_is_checked_at_an_hour() {
    // Source: Anexa.
    assert_eq!((labor::NEXT_LAMB, labor::NEXT_CHECK), (TimeDelta::minutes(30), TimeDelta::minutes(60)));
}

#[test]
fn the_afterbirth_is_asked_for_at_6_late_at_12_and_the_vets_at_18_hours() {
    // Source: MSD Vet Manual.
    assert_eq!(labor::AFTERBIRTH.map(|span| span.num_hours()), [6, 12, 18]);
}

#[test]
fn the_farm_starts_from_these_limits() {
    // Ours: the defaults are the printed figures.
    let start = LaborLimits::default();
    assert_eq!(minutes(start.look_minutes), labor::LOOK);
    assert_eq!(minutes(start.restless_minutes), labor::RESTLESS);
    assert_eq!(minutes(start.hand_check_minutes), labor::HAND_CHECK);
    assert_eq!(minutes(start.step_in_minutes), labor::STEP_IN);
    assert_eq!(minutes(start.progress_minutes), labor::PROGRESS);
    assert_eq!(minutes(start.neck_minutes), labor::NECK);
    assert_eq!(minutes(start.put_right_minutes), labor::PUT_RIGHT);
    assert_eq!(minutes(start.next_lamb_minutes), labor::NEXT_LAMB);
    assert_eq!(minutes(start.next_check_minutes), labor::NEXT_CHECK);
    let afterbirth =
        [start.afterbirth_ask_minutes, start.afterbirth_late_minutes, start.afterbirth_vet_minutes];
    assert_eq!(afterbirth.map(minutes), labor::AFTERBIRTH);
    assert_eq!(start.checked(), Ok(start));
}

#[test]
fn limits_out_of_order_or_out_of_bounds_are_refused() {
    // Ours.
    let start = LaborLimits::default();
    let wrong = [
        LaborLimits { look_minutes: 14, ..start },
        LaborLimits { look_minutes: 181, ..start },
        LaborLimits { restless_minutes: 721, ..start },
        LaborLimits { step_in_minutes: 30, ..start },
        LaborLimits { neck_minutes: 31, ..start },
        LaborLimits { next_check_minutes: 30, ..start },
        LaborLimits { afterbirth_late_minutes: 360, ..start },
        LaborLimits { afterbirth_vet_minutes: 720, ..start },
    ];
    for limits in wrong {
        assert!(limits.checked().is_err(), "{limits:?}");
    }
}

#[test]
fn some_lies_go_straight_to_the_vet() {
    // Source: ours.
    for (lie, expected) in [
        (Presentation::Normal, Needs::Nothing),
        (Presentation::HindFeetFirst, Needs::Help),
        (Presentation::Crosswise, Needs::Vet),
        (Presentation::TooBig, Needs::Vet),
        (Presentation::Deformed, Needs::Vet),
    ] {
        assert_eq!(needs(lie), expected, "{lie:?}");
    }
}
