//! A season: births that lie close together, told from the book alone.
//!
//! A season is not noted: it is what is left of a ewe's windows after her last lambing, and births no more than 90
//! days apart. A lambing from day 138 after the ram came in ends that window, also while he is still in.

use crate::book::LambId;
use crate::flock::Flock;
use crate::units::{Moment, TimeDelta};

/// Births further apart than this belong to two seasons (ours: longer than a mating of four cycles, shorter than the
/// way from one lambing to the next).
pub const APART: TimeDelta = TimeDelta::days(90);

/// A season of births.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Season {
    /// The first birth.
    pub first: Moment,
    /// The last birth.
    pub last: Moment,
    /// Its lambs, oldest first.
    pub lambs: Vec<LambId>,
}

impl Season {
    /// Returns the year by which it is called: that of its last birth by the clock it was lived at.
    #[must_use]
    pub fn year(&self) -> i32 {
        chrono::Datelike::year(&self.last.local().date())
    }
}

/// Returns the seasons of a flock, the latest first.
#[must_use]
pub fn seasons(flock: &Flock) -> Vec<Season> {
    let mut seasons: Vec<Season> = Vec::new();
    for (born, id) in flock.births() {
        match seasons.last_mut() {
            Some(season) if born.since(season.last) <= APART => {
                season.last = born;
                season.lambs.push(id);
            }
            Some(_) | None => seasons.push(Season { first: born, last: born, lambs: vec![id] }),
        }
    }
    seasons.reverse();
    seasons
}
