//! Two farms' limits: none is one that Yeanling starts with, none is another's, and all are allowed. The words and the
//! pages are held against the same two.

use yeanling_core::settings::{FarmSettings, LaborLimits, Limit, Limits, PenStay};
use yeanling_core::units::TimeDelta;

/// Returns every limit that can be set.
pub(crate) fn every_limit() -> impl Iterator<Item = Limit> {
    Limit::OF_A_NEWBORN.into_iter().chain(Limit::OF_LABOR).chain(Limit::OF_THE_STAY)
}

/// Returns how long a limit is, so that a limit without a place here does not compile.
pub(crate) fn length(settings: &FarmSettings, limit: Limit) -> TimeDelta {
    let minutes = |minutes: u16| TimeDelta::minutes(i64::from(minutes));
    let hours = |hours: u16| TimeDelta::hours(i64::from(hours));
    let FarmSettings { limits, labor, stay, .. } = settings;
    match limit {
        Limit::Up => minutes(limits.up_minutes),
        Limit::Help => minutes(limits.help_minutes),
        Limit::Red => minutes(limits.red_minutes),
        Limit::LastCall => minutes(limits.last_call_minutes),
        Limit::NavelAgain => minutes(limits.navel_again_minutes),
        Limit::Look => minutes(labor.look_minutes),
        Limit::Restless => minutes(labor.restless_minutes),
        Limit::HandCheck => minutes(labor.hand_check_minutes),
        Limit::StepIn => minutes(labor.step_in_minutes),
        Limit::Progress => minutes(labor.progress_minutes),
        Limit::Neck => minutes(labor.neck_minutes),
        Limit::PutRight => minutes(labor.put_right_minutes),
        Limit::NextLamb => minutes(labor.next_lamb_minutes),
        Limit::NextCheck => minutes(labor.next_check_minutes),
        Limit::AfterbirthAsk => minutes(labor.afterbirth_ask_minutes),
        Limit::AfterbirthLate => minutes(labor.afterbirth_late_minutes),
        Limit::AfterbirthVet => minutes(labor.afterbirth_vet_minutes),
        Limit::StaySingle => hours(stay.single_hours),
        Limit::StayTwins => hours(stay.twins_hours),
        Limit::StayMore => hours(stay.more_hours),
    }
}

fn settings(limits: Limits, labor: LaborLimits, stay: PenStay) -> FarmSettings {
    FarmSettings {
        limits: limits.checked().expect("allowed"),
        labor: labor.checked().expect("allowed"),
        stay: stay.checked().expect("allowed"),
        ..FarmSettings::default()
    }
}

/// Returns the practice of the first farm.
pub(crate) fn first() -> FarmSettings {
    let limits = Limits {
        up_minutes: 23,
        help_minutes: 47,
        red_minutes: 131,
        last_call_minutes: 397,
        navel_again_minutes: 283,
    };
    let labor = LaborLimits {
        look_minutes: 41,
        restless_minutes: 317,
        hand_check_minutes: 19,
        step_in_minutes: 53,
        progress_minutes: 17,
        neck_minutes: 7,
        put_right_minutes: 11,
        next_lamb_minutes: 29,
        next_check_minutes: 59,
        afterbirth_ask_minutes: 331,
        afterbirth_late_minutes: 677,
        afterbirth_vet_minutes: 1009,
    };
    settings(limits, labor, PenStay { single_hours: 31, twins_hours: 67, more_hours: 109 })
}

/// Returns the practice of the second farm.
pub(crate) fn second() -> FarmSettings {
    let limits = Limits {
        up_minutes: 26,
        help_minutes: 44,
        red_minutes: 127,
        last_call_minutes: 389,
        navel_again_minutes: 277,
    };
    let labor = LaborLimits {
        look_minutes: 37,
        restless_minutes: 313,
        hand_check_minutes: 21,
        step_in_minutes: 51,
        progress_minutes: 18,
        neck_minutes: 8,
        put_right_minutes: 13,
        next_lamb_minutes: 33,
        next_check_minutes: 57,
        afterbirth_ask_minutes: 337,
        afterbirth_late_minutes: 683,
        afterbirth_vet_minutes: 1013,
    };
    settings(limits, labor, PenStay { single_hours: 34, twins_hours: 71, more_hours: 113 })
}
