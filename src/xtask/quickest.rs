//! Times two pieces of work against each other on this very machine.
use std::hint::black_box;
use std::time::{Duration, Instant};

/// Returns the quickest of so many runs, since everything else is the machine's doing. What a run gives is put away
/// after the clock has stopped.
pub(crate) fn quickest<T>(runs: usize, mut work: impl FnMut() -> T) -> Duration {
    let mut best = Duration::MAX;
    for _ in 0..runs {
        let start = Instant::now();
        let given = black_box(work());
        best = best.min(start.elapsed());
        drop(given);
    }
    best
}

/// Returns how many times as long `one` takes as `other`, run in turn.
pub(crate) fn ratio<T, U>(runs: usize, mut one: impl FnMut() -> T, mut other: impl FnMut() -> U) -> f64 {
    let (mut best_one, mut best_other) = (Duration::MAX, Duration::MAX);
    for _ in 0..runs {
        best_one = best_one.min(quickest(1, &mut one));
        best_other = best_other.min(quickest(1, &mut other));
    }
    best_one.as_secs_f64() / best_other.as_secs_f64()
}
