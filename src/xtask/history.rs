//! What a farm's years cost: a history of 50,000 lambs against one of 4,449 with the same run's groups, scans and scores.
use std::hint::black_box;

use anyhow::{Result, bail};
use yeanling_core::book::{self, Book};
use yeanling_core::flock::{Flock, fold};
use yeanling_core::reckon::adjusted_weight::ToAge;
use yeanling_core::seasons::{Year, grown, marked, record, seasons, year};
use yeanling_core::units::Moment;

use crate::quickest::{quickest, ratio};
use crate::sample_book::device;
use crate::sample_history::{history as sample, looked_at};
use crate::say::say;

/// Lambs of the smaller history: one flock's years as they were published.
const SMALL: usize = 4_449;
/// Lambs of the larger: eleven times as many.
const LARGE: usize = 50_000;
/// How often each is done.
const RUNS: usize = 7;

/// Measures all, and prints it.
pub(crate) fn history() -> Result<()> {
    let (small, large) = (sample(SMALL), sample(LARGE));
    let times = |name: &str, ratio: f64| say(&format!("{name} {ratio:.2} times"));
    times("fold_growth_history", ratio(RUNS, || fold(&large), || fold(&small)));
    times("load_over_parse_4449", load_ratio(&small)?);
    times("load_over_parse_50000", load_ratio(&large)?);
    let (small, large) = (fold(&small), fold(&large));
    times("year_growth_history", ratio(RUNS, || years(&large), || years(&small)));
    let milliseconds = |name: &str, flock: &Flock| {
        let took = quickest(RUNS, || marked(flock, looked_at()));
        say(&format!("{name} {:.2} ms", took.as_secs_f64() * 1000.0));
    };
    milliseconds("marked_ms_882", &fold(&sample(882)));
    milliseconds("marked_ms_4449", &small);
    milliseconds("marked_ms_50000", &large);
    let Some(ewe) = small.ewes.keys().nth(small.ewes.len() / 4) else { bail!("no ewe") };
    let took = quickest(RUNS * 10, || record(&small, *ewe, looked_at()));
    say(&format!("record_ms {:.3} ms", took.as_secs_f64() * 1000.0));
    Ok(())
}

/// The figures of every season.
fn years(flock: &Flock) -> Vec<Year> {
    let now = looked_at();
    let of = |season| {
        black_box(grown(flock, &season, ToAge::Day90, now));
        year(flock, &season, now)
    };
    seasons(flock).into_iter().map(of).collect()
}

/// Returns the time to open the files of a book over the time that serde_json takes for the same bytes.
fn load_ratio(book: &Book) -> Result<f64> {
    let files = book::split(book, Moment::from_unix_milliseconds(1_772_000_000_000, 0), device());
    let opened = || -> Result<Flock> {
        let mut book = Book::default();
        for file in &files {
            book.union(book::read(file.text.as_bytes())?.entries);
        }
        Ok(fold(&book))
    };
    if opened()?.lines.is_empty() {
        bail!("an empty flock was opened");
    }
    let parsed = || -> Vec<serde_json::Result<serde_json::Value>> {
        files.iter().map(|file| serde_json::from_slice(file.text.as_bytes())).collect()
    };
    Ok(ratio(RUNS, opened, parsed))
}
