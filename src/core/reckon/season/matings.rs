//! On which days a ewe can have held: her marks from the last one back, then her group, weighed by her scan.

use super::bounds::{AGE_AT_SCAN, DAYS_BETWEEN_LOOKS, LAMBS_AT_SCAN};
use super::cycles::cycles;
use super::days::{between, float, whole};
use super::ewe::{Evidence, MARK_RIGHT, NoOutlook, PASSED, SCAN_FROM_DAY, SCAN_SPREAD_DAYS, Scan};
use super::mating::Mating;
use crate::arrange::Arrange;

/// Days of mating with their weight, in days after ram in.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stretch {
    /// The share of it.
    pub(super) weight: f64,
    /// The first day.
    pub(super) from: f64,
    /// The day on which it ends, not counted any more.
    pub(super) to: f64,
}

/// Returns the days on which she can have held, with their weights, and the share that holds at all.
pub(super) fn matings(evidence: &Evidence) -> Result<(Vec<Stretch>, f64), NoOutlook> {
    let mating = evidence.mating;
    let look = DAYS_BETWEEN_LOOKS.check(f64::from(evidence.look_days))?;
    let mut marks = evidence.marks.clone();
    marks.arrange();
    marks.dedup();
    let mut stretches = Vec::new();
    let mut rest = 1.0;
    for mark in marks.iter().rev() {
        let day = between(mating.ram_in(), *mark);
        // A mark that is found after the ram came out is from his last days.
        if day < 0 || float(day) >= float(mating.days()) + look {
            let (ram_in, ram_out) = (mating.ram_in(), mating.ram_out());
            return Err(NoOutlook::MarkWithoutRam { mark: *mark, ram_in, ram_out });
        }
        let to = (float(day) + 1.0).min(float(mating.days()));
        let from = (float(day) + 1.0 - look).clamp(0.0, to - 1.0);
        stretches.push(Stretch { weight: rest * MARK_RIGHT, from, to });
        rest *= 1.0 - MARK_RIGHT;
    }
    for cycle in cycles(mating, evidence.conception) {
        stretches.push(Stretch { weight: rest * cycle.share, from: cycle.from_day, to: cycle.to_day });
    }
    let Some(scan) = evidence.scan else {
        let held = stretches.iter().map(|one| one.weight).sum();
        return Ok((stretches, held));
    };
    scanned(stretches, scan, mating).map(|stretches| (stretches, 1.0))
}

/// Returns the stretches of a ewe that a scan found in lamb, weighed by the age it gave; their weights sum to one.
fn scanned(stretches: Vec<Stretch>, scan: Scan, mating: Mating) -> Result<Vec<Stretch>, NoOutlook> {
    let on = scan.on;
    let day = between(mating.ram_in(), on);
    if day < SCAN_FROM_DAY {
        return Err(NoOutlook::ScanTooEarly { day });
    }
    if let Some(lambs) = scan.lambs {
        LAMBS_AT_SCAN.check(f64::from(lambs))?;
        if lambs == 0 {
            return Err(NoOutlook::ScannedEmpty { on });
        }
    }
    let mut stretches = stretches;
    if let Some(age_days) = scan.age_days {
        let age = AGE_AT_SCAN.check(f64::from(age_days))?;
        let held_at = float(day) - age + 0.5;
        stretches = stretches.into_iter().flat_map(|one| by_day(one, held_at)).collect();
        let left: f64 = stretches.iter().map(|one| one.weight).sum();
        if left < PASSED {
            return Err(NoOutlook::ScanDoesNotFit { on, age_days });
        }
    }
    let held: f64 = stretches.iter().map(|one| one.weight).sum();
    if held < PASSED {
        return Err(NoOutlook::InLambWithoutMating { on });
    }
    for one in &mut stretches {
        one.weight /= held;
    }
    Ok(stretches)
}

/// Cuts a stretch into days, each weighed by how near it lies to the day that the scan points at.
fn by_day(stretch: Stretch, held_at: f64) -> Vec<Stretch> {
    let Stretch { weight, from, to } = stretch;
    let parts = whole((to - from).ceil()).max(1);
    let width = (to - from) / float(parts);
    let part = |number: i64| {
        let from = from + width * float(number);
        let off = (from + width / 2.0 - held_at) / SCAN_SPREAD_DAYS;
        Stretch { weight: weight / float(parts) * (-0.5 * off * off).exp(), from, to: from + width }
    };
    (0..parts).map(part).filter(|part| part.weight > 1e-12).collect()
}
