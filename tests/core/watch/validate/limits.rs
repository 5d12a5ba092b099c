//! The farm's own limits, which have limits.

use yeanling_core::book::Event;
use yeanling_core::settings::{Choice, Limit, LimitError, Limits};
use yeanling_core::watch::Rejection;

use super::Barn;
use crate::scribe::at;

#[track_caller]
fn limits(change: impl FnOnce(&mut Limits), expected: Option<LimitError>) {
    let mut limits = Limits::default();
    change(&mut limits);
    let got = Barn::new().try_at(&Event::Chose(Choice::Limits(limits)), at(0));
    assert_eq!(got, expected.map_or(Ok(()), |error| Err(Rejection::Limit(error))));
}

#[test]
fn the_farms_limits_have_limits() {
    let error = |limit, given, least, most| Some(LimitError { limit, given, least, most });
    for (up, expected) in
        [(4, error(Limit::Up, 4, 5, 120)), (5, None), (120, None), (121, error(Limit::Up, 121, 5, 120))]
    {
        limits(|limits| limits.up_minutes = up, expected);
    }
    for (help, expected) in [
        (14, error(Limit::Help, 14, 15, 180)),
        (15, None),
        (119, None),
        (120, error(Limit::Red, 120, 121, 240)),
        (181, error(Limit::Help, 181, 15, 180)),
    ] {
        limits(|limits| limits.help_minutes = help, expected);
    }
    for (red, expected) in [
        (60, error(Limit::Red, 60, 61, 240)),
        (61, None),
        (240, None),
        (241, error(Limit::Red, 241, 61, 240)),
    ] {
        limits(|limits| limits.red_minutes = red, expected);
    }
    for (last_call, expected) in [
        (120, error(Limit::LastCall, 120, 121, 720)),
        (121, None),
        (720, None),
        (721, error(Limit::LastCall, 721, 121, 720)),
    ] {
        limits(|limits| limits.last_call_minutes = last_call, expected);
    }
    for (again, expected) in [
        (59, error(Limit::NavelAgain, 59, 60, 1440)),
        (60, None),
        (1440, None),
        (1441, error(Limit::NavelAgain, 1441, 60, 1440)),
    ] {
        limits(|limits| limits.navel_again_minutes = again, expected);
    }
}
