//! How the fold from book to flock grows with the book.
use yeanling_core::flock::fold;

use crate::quickest::ratio;
use crate::sample_book::book;

/// How often either book is folded.
const RUNS: usize = 10;

/// Returns the time for 100,000 entries over the time for 10,000.
pub(crate) fn fold_growth() -> f64 {
    let (large, small) = (book(100_000), book(10_000));
    ratio(RUNS, || fold(&large), || fold(&small))
}
