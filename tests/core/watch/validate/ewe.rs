//! What a scan, a hand and a scale can say of a ewe.

use yeanling_core::book::{Animal, Event, EweId};
use yeanling_core::units::{Condition, Mass, Moment, OutOfBounds};
use yeanling_core::watch::{EweRejection, Rejection, validate};

use crate::flock::groups::day;
use crate::scribe::{MS, Scribe, kg};

/// A ewe whose ram came in on day 0.
fn field() -> (Scribe, EweId) {
    let mut scribe = Scribe::new(1);
    let ewe = scribe.ewe(day(-9), "101");
    let group = scribe.group(day(-9), "Texel");
    scribe.note(day(-5), Event::JoinedGroup { ewe, group });
    scribe.ram_in(day(0), group);
    (scribe, ewe)
}

#[track_caller]
fn check(scribe: &Scribe, event: &Event, at: Moment, expected: Result<(), EweRejection>) {
    let got = validate(&scribe.flock(), &scribe.book, event, at, day(400));
    assert_eq!(got, expected.map_err(Rejection::from), "{event:?}");
}

#[test]
fn a_scan_shows_lambs_from_thirty_days_after_the_ram_on() {
    let (mut scribe, ewe) = field();
    let scan = |lambs| Event::Scanned { ewe, lambs, days: None };
    let early = |days| Err(EweRejection::ScanTooEarly { ram_in: day(0), days, least: 30 });
    check(&scribe, &scan(4), day(20), early(20));
    check(&scribe, &scan(0), day(30) - MS, early(29));
    check(&scribe, &scan(4), day(30), Ok(()));
    check(&scribe, &scan(2), day(-1), Ok(()));
    // Once she has lambed from it, that ram says nothing any more.
    scribe.born(day(150), Some(ewe));
    check(&scribe, &scan(1), day(160), Ok(()));
    let stray = scribe.ewe(day(0), "102");
    check(&scribe, &Event::Scanned { ewe: stray, lambs: 1, days: None }, day(1), Ok(()));
}

#[test]
fn a_scan_tells_four_lambs_apart_and_no_age_that_cannot_be() {
    let (scribe, ewe) = field();
    let scan = |lambs, days| Event::Scanned { ewe, lambs, days };
    check(&scribe, &scan(5, None), day(60), Err(EweRejection::TooManyLambs { given: 5, most: 4 }));
    check(&scribe, &scan(0, Some(40)), day(60), Err(EweRejection::AgeOfNone));
    for given in [0, 20, 29, 151] {
        let refused = Err(EweRejection::ScanAge { given, least: 30, most: 150 });
        check(&scribe, &scan(4, Some(given)), day(60), refused);
    }
    for days in [30, 150] {
        check(&scribe, &scan(4, Some(days)), day(60), Ok(()));
    }
}

#[test]
fn condition_is_scored_from_one_to_five_in_quarters() {
    let (scribe, ewe) = field();
    let scored = |score| Event::Conditioned { ewe, score: Condition::from_score(score) };
    for score in [1.0, 1.25, 2.5, 3.75, 5.0] {
        check(&scribe, &scored(score), day(1), Ok(()));
    }
    for score in [0.0, 0.75, 5.25] {
        let given = Condition::from_score(score);
        let out = OutOfBounds { given, allowed: Condition::OF_A_EWE };
        check(&scribe, &scored(score), day(1), Err(EweRejection::Condition(out)));
    }
    for score in [2.3, 2.51, 4.999] {
        let given = Condition::from_score(score);
        check(&scribe, &scored(score), day(1), Err(EweRejection::NotAQuarter { given }));
    }
    let none = validate(&scribe.flock(), &scribe.book, &scored(f64::NAN), day(1), day(1));
    assert!(matches!(none, Err(Rejection::Ewe(EweRejection::Condition(_)))), "{none:?}");
}

#[test]
fn a_ewe_weighs_what_a_ewe_weighs_also_when_she_is_dead() {
    let (mut scribe, ewe) = field();
    scribe.died(day(20), Animal::Ewe(ewe));
    let weighed = |kilograms| Event::EweWeighed { ewe, mass: kg(kilograms) };
    for kilograms in [20.0, 72.5, 200.0] {
        check(&scribe, &weighed(kilograms), day(21), Ok(()));
    }
    for kilograms in [19.9, 200.1] {
        let out = OutOfBounds { given: kg(kilograms), allowed: Mass::OF_A_EWE };
        let got = validate(&scribe.flock(), &scribe.book, &weighed(kilograms), day(21), day(21));
        assert_eq!(got, Err(Rejection::Weight(out)));
    }
    let (at, died) = (day(21), day(20));
    for event in [
        Event::CrayonMark { ewe, color: "red".to_owned() },
        Event::Scanned { ewe, lambs: 1, days: None },
        Event::Conditioned { ewe, score: Condition::from_score(3.0) },
    ] {
        let got = validate(&scribe.flock(), &scribe.book, &event, at, at);
        assert_eq!(got, Err(Rejection::AfterDeath { at, died }), "{event:?}");
    }
}
