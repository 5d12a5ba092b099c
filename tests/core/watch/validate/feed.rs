//! A feed that is too much at once, or in a day.

use yeanling_core::book::EntryId;
use yeanling_core::reckon::feeds::{self, Guard};
use yeanling_core::units::{OutOfBounds, TimeDelta, Volume};
use yeanling_core::watch::Rejection;

use super::{Barn, amended, bottle};
use crate::scribe::{MS, at, hour, kg, ml};

#[test]
fn a_feed_is_not_too_much_at_once() {
    let barn = Barn::new();
    let rejection = |given, most, weight| {
        Rejection::Feed(feeds::Rejection::TooMuchAtOnce {
            given: ml(given),
            most: ml(most),
            weight,
            guard: Guard::FirstWeek,
        })
    };
    barn.ok(&bottle(barn.lamb, 240.0));
    barn.check(&bottle(barn.lamb, 900.0), &rejection(900.0, 240.0, Some(kg(4.0))));
    barn.check(&bottle(barn.lamb, 240.1), &rejection(240.1, 240.0, Some(kg(4.0))));
    let mut unweighed = Barn::new();
    let lamb = unweighed.scribe.born(at(5), None);
    unweighed.ok(&bottle(lamb, 240.0));
    unweighed.check(&bottle(lamb, 900.0), &rejection(900.0, 240.0, None));
}

#[test]
fn a_feed_is_a_feed() {
    let barn = Barn::new();
    for milliliters in [0.0, -60.0, 0.9, 2000.1] {
        let out = OutOfBounds { given: ml(milliliters), allowed: Volume::ONE_FEED };
        barn.check(&bottle(barn.lamb, milliliters), &Rejection::Feed(feeds::Rejection::NotAVolume(out)));
    }
}

#[test]
fn a_day_of_feeds_is_not_too_much() {
    let mut barn = Barn::new();
    let lamb = barn.lamb;
    let feeds: Vec<EntryId> = (1..=5).map(|hours| barn.scribe.fed(hour(hours), lamb, 220.0)).collect();
    barn.now = hour(6);
    let too_much = |would_be| {
        let (most, weight, guard) = (ml(1200.0), Some(kg(4.0)), Guard::FirstWeek);
        Rejection::Feed(feeds::Rejection::TooMuchInADay { would_be: ml(would_be), most, weight, guard })
    };
    barn.ok(&bottle(lamb, 100.0));
    barn.check(&bottle(lamb, 120.0), &too_much(1220.0));
    // What the amended feed was is not counted beside what it should have been.
    barn.ok(&amended(feeds[4], bottle(lamb, 230.0), hour(5)));
    barn.check(
        &amended(feeds[4], bottle(lamb, 240.0), hour(6) - TimeDelta::hours(30)),
        &Rejection::BeforeBirth { at: hour(-24), born: at(0) },
    );
    // A day later the first feeds no longer count.
    barn.now = hour(25);
    barn.ok(&bottle(lamb, 240.0));
    barn.check_at(&bottle(lamb, 240.0), hour(25) - MS, &too_much(1340.0));
}
