//! What is the same for all ewes of a group at one time, worked out once: a thousand ewes with marks of their own share
//! the cycles of their ram.

use super::conception::Belief;
use super::cycles;
use super::days::{float, whole};
use super::ewe::Evidence;
use super::gestation::{Gestation, lambed_by, reach_days};
use super::mating::Mating;
use crate::sort_small::SortSmall;
use crate::units::{NaiveDateTime, NaiveTime};

/// What ewes have in common that were with a ram for the same days, carry alike and are looked at at one time.
#[derive(Clone, Debug)]
pub struct Common {
    mating: Mating,
    gestation: Gestation,
    belief: Belief,
    pub(super) now: NaiveDateTime,
    /// Now, in days after ram in.
    pub(super) now_day: f64,
    /// The last day on which any of them lambs.
    pub(super) end: i64,
    pub(super) edges: Vec<f64>,
    /// At each edge, what has come of each cycle.
    come: Vec<f64>,
    pub(super) cycles: usize,
    /// What each cycle weighs on the mean, and for each share that may hold.
    pub(super) weights: Vec<f64>,
    pub(super) by_share: Vec<f64>,
}

impl Common {
    /// Returns what this ewe has in common with others at this time.
    #[must_use]
    pub fn of(evidence: &Evidence, now: NaiveDateTime) -> Self {
        let Evidence { mating, gestation, .. } = *evidence;
        let belief = evidence.conception.clone();
        let since = now.signed_duration_since(mating.ram_in().and_time(NaiveTime::MIN));
        let now_day = since.as_seconds_f64() / 86_400.0;
        let end = whole((float(mating.days()) + reach_days(gestation).1).ceil());
        let edges = edges(now_day, end, std::iter::empty());
        let cycles: Vec<(f64, f64)> = cycles::days(mating).collect();
        let at = |edge: &f64| {
            let edge = *edge;
            cycles.iter().map(move |(from, to)| lambed_by(edge, *from, *to, gestation))
        };
        let come = edges.iter().flat_map(at).collect();
        let by_share = belief.each().iter().flat_map(|(share, _)| cycles::shares(mating, *share)).collect();
        let weights = cycles::shares(mating, belief.mean().as_share()).collect();
        Self {
            mating,
            gestation,
            now,
            now_day,
            end,
            come,
            cycles: cycles.len(),
            weights,
            by_share,
            edges,
            belief,
        }
    }

    /// Says whether this ewe has it in common.
    #[must_use]
    pub fn is_of(&self, evidence: &Evidence) -> bool {
        self.mating == evidence.mating
            && self.gestation == evidence.gestation
            && self.belief == evidence.conception
    }

    /// What has come of each cycle at an edge.
    pub(super) fn row(&self, edge: usize) -> &[f64] {
        &self.come[edge * self.cycles..(edge + 1) * self.cycles]
    }
}

/// The days at which something is read off: now, the next hours, each midnight, and these, in order.
pub(super) fn edges(now_day: f64, end: i64, more: impl Iterator<Item = f64>) -> Vec<f64> {
    let mut edges = vec![now_day, now_day + 0.5, now_day + 1.0];
    edges.extend((whole(now_day.floor()) + 1..=end).map(float));
    edges.extend(more);
    edges.retain(|edge| (now_day..=float(end).max(now_day + 1.0)).contains(edge));
    edges.sort_small_by(f64::total_cmp);
    edges
}
