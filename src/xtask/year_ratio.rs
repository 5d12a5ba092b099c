//! What the figures of ten seasons cost against those of one.
use yeanling_core::flock::{Flock, fold};
use yeanling_core::seasons::{Year, seasons, year};
use yeanling_core::units::Moment;

use crate::quickest::ratio;
use crate::sample_book::Phone;

/// How often either is worked out.
const RUNS: usize = 40;

/// Returns the time for ten seasons of 500 ewes over the time for one.
pub(crate) fn year_ratio() -> f64 {
    let now = Moment::from_unix_milliseconds(2_100_000_000_000, 0);
    let (ten, one) = (fold(&Phone::new(1).seasons(10)), fold(&Phone::new(1).seasons(1)));
    ratio(RUNS, || figures(&ten, now), || figures(&one, now))
}

fn figures(flock: &Flock, now: Moment) -> Vec<Year> {
    let of = |season| year(flock, &season, now);
    seasons(flock).into_iter().map(of).collect()
}
