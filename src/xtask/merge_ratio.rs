//! What it costs to join the books of two phones, against a general library for merging doing the same.
use anyhow::{Context, Result, ensure};
use automerge::transaction::Transactable;
use automerge::{AutoCommit, ObjType, ROOT, ReadDoc};
use yeanling_core::book::{Book, Entry};

use crate::quickest::quickest;
use crate::sample_book::Phone;

/// Entries in either book, half of them in both.
const ENTRIES: usize = 50_000;
/// How often each is done.
const RUNS: usize = 5;

/// Returns the time of our union over the time of automerge, which gets each entry as one text under its id.
pub(crate) fn merge_ratio() -> Result<f64> {
    let shared = Phone::new(1).lambings(ENTRIES / 2);
    let (ours, theirs) = (Phone::new(2).lambings(ENTRIES / 2), Phone::new(3).lambings(ENTRIES / 2));
    let of = |own: &[Entry]| -> Book { shared.iter().chain(own).cloned().collect() };
    let (one, other) = (of(&ours), of(&theirs));
    let together = one.with(other.entries().cloned()).0.len();
    ensure!(together == ENTRIES / 2 * 3, "{together} entries together");
    let union = quickest(RUNS, || one.with(other.entries().cloned()));

    let mut base = AutoCommit::new();
    base.put_object(ROOT, "entries", ObjType::Map)?;
    base.commit();
    note(&mut base, &shared)?;
    let mut theirs_too = base.fork();
    note(&mut base, &ours)?;
    note(&mut theirs_too, &theirs)?;
    let merged = quickest(RUNS, || -> Result<AutoCommit> {
        let mut document = base.clone();
        document.merge(&mut theirs_too)?;
        Ok(document)
    });
    let mut document = base.clone();
    document.merge(&mut theirs_too)?;
    let map = entries(&document)?;
    ensure!(document.length(map) == together, "automerge has other entries");
    // A copy is made in either run; automerge's is taken off, which is to its advantage.
    let copy = quickest(RUNS, || base.clone());
    Ok(union.as_secs_f64() / merged.saturating_sub(copy).as_secs_f64())
}

/// Notes each entry as a change of its own, as a phone does.
fn note(document: &mut AutoCommit, noted: &[Entry]) -> Result<()> {
    let map = entries(document)?;
    for entry in noted {
        document.put(&map, entry.id.to_string(), serde_json::to_string(entry)?)?;
        document.commit();
    }
    Ok(())
}

fn entries(document: &AutoCommit) -> Result<automerge::ObjId> {
    Ok(document.get(ROOT, "entries")?.context("no entries")?.1)
}
