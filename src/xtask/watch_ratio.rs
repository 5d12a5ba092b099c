//! What the Watch costs in a large flock against a small one with the same lambs to look after.
//!
//! Both are worked out in this run and of this build, so the ratio holds whatever the machine. The cost is meant to
//! follow what is live and not what is stored.
use std::hint::black_box;
use std::time::{Duration, Instant};

use uuid::Uuid;
use yeanling_core::book::{Book, DeviceId, Entry, EntryId, Event, EweId};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::units::{Mass, Moment, TimeDelta};
use yeanling_core::watch::duties;

/// Lambs under three days old in either flock.
const LIVE: usize = 60;
/// How often each flock is worked out; the quickest time counts, since everything else is the machine's doing.
const RUNS: usize = 40;

/// Returns the time for 10,000 animals over the time for 100, the same 60 of them newborn.
pub(crate) fn watch_ratio() -> f64 {
    let now = Moment::from_unix_milliseconds(1_772_000_000_000, 0);
    let (large, small) = (flock(10_000, now), flock(100, now));
    let (mut best_large, mut best_small) = (Duration::MAX, Duration::MAX);
    for _ in 0..RUNS {
        best_large = best_large.min(time(&large, now));
        best_small = best_small.min(time(&small, now));
    }
    best_large.as_secs_f64() / best_small.as_secs_f64()
}

fn time(flock: &Flock, now: Moment) -> Duration {
    let start = Instant::now();
    black_box(duties(black_box(flock), now, &flock.settings));
    start.elapsed()
}

/// A flock of so many animals: 60 newborns of thirty ewes, the others ewes and lambs of a year and more ago.
fn flock(animals: usize, now: Moment) -> Flock {
    let mut book = Book::default();
    let mut id = 0_u128;
    let mut note = |at: Moment, event: Event| {
        id += 1;
        let id = EntryId::from_uuid(Uuid::from_u128(id));
        book.add(Entry { id, device: DeviceId::from_uuid(Uuid::from_u128(1)), noted: at, at, event });
        id
    };
    let ewes = if animals > LIVE * 4 { animals / 3 } else { animals - LIVE };
    let long_ago = now - TimeDelta::days(400);
    let dams: Vec<EweId> = (0..ewes)
        .map(|number| note(long_ago, Event::EweCame { tag: Some(number.to_string()) }).as_ewe())
        .collect();
    let born = |dam| Event::LambBorn { dam: Some(dam), beside: None, sex: None, alive: true };
    for number in 0..animals - ewes - LIVE {
        let at = long_ago + TimeDelta::minutes(i64::try_from(number % 50_000).unwrap_or_default());
        let lamb = note(at, born(dams[number % ewes])).as_lamb();
        note(at, Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
        note(at, Event::Sucked { lamb });
    }
    for number in 0..LIVE {
        let at = now - TimeDelta::minutes(i64::try_from(number * 60).unwrap_or_default());
        let lamb = note(at, born(dams[number % ewes.min(30)])).as_lamb();
        note(at, Event::Weighed { lamb, mass: Mass::from_kilograms(4.0) });
    }
    fold(&book)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_flocks_have_the_same_to_do() {
        let now = Moment::from_unix_milliseconds(1_772_000_000_000, 0);
        let count = |animals| {
            let flock = flock(animals, now);
            assert_eq!(flock.ewes.len() + flock.lambs.len(), animals);
            duties(&flock, now, &flock.settings).len()
        };
        assert_eq!(count(10_000), count(100));
    }
}
