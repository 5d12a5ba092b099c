//! On which days a ewe can have held: her marks from the last one back, then her group, weighed by her scan.

use super::bounds::{AGE_AT_SCAN, DAYS_BETWEEN_LOOKS, LAMBS_AT_SCAN};
use super::cycles::{days, shares};
use super::days::{between, float, whole};
use super::ewe::{Evidence, MARK_RIGHT, NoForecast, PASSED, SCAN_FROM_DAY, SCAN_SPREAD_DAYS, Scan};
use crate::sort_small::SortSmall;

/// Days of mating, in days after ram in.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stretch {
    /// Its way of holding: 0 by a mark, else the number of the cycle.
    pub(super) way: usize,
    /// Its part of what holds in that way.
    pub(super) part: f64,
    /// The first day.
    pub(super) from: f64,
    /// The day on which it ends, not counted any more.
    pub(super) to: f64,
}

/// The days on which she can have held, by the way: a share of all in each cycle, and what her marks make sure.
#[derive(Clone, Debug)]
pub(super) struct Matings {
    /// All of them.
    pub(super) stretches: Vec<Stretch>,
    /// How many ways: that of the marks, and one for each cycle.
    pub(super) ways: usize,
    /// The chance that no mark is right, so that she is as her group.
    pub(super) rest: f64,
    /// Whether a scan found her in lamb.
    pub(super) in_lamb: bool,
}

/// Returns the days on which she can have held.
pub(super) fn matings(evidence: &Evidence) -> Result<Matings, NoForecast> {
    let mating = evidence.mating;
    let look = DAYS_BETWEEN_LOOKS.check(f64::from(evidence.look_days))?;
    let mut marks = evidence.marks.clone();
    marks.sort_small();
    marks.dedup();
    let mut stretches = Vec::new();
    let mut rest = 1.0;
    for mark in marks.iter().rev() {
        let day = between(mating.ram_in(), *mark);
        // A mark that is found after the ram came out is from his last days.
        if day < 0 || float(day) >= float(mating.days()) + look {
            let (ram_in, ram_out) = (mating.ram_in(), mating.ram_out());
            return Err(NoForecast::MarkWithoutRam { mark: *mark, ram_in, ram_out });
        }
        let to = (float(day) + 1.0).min(float(mating.days()));
        let from = (float(day) + 1.0 - look).clamp(0.0, to - 1.0);
        stretches.push(Stretch { way: 0, part: rest * MARK_RIGHT, from, to });
        rest *= 1.0 - MARK_RIGHT;
    }
    let mut ways = 1;
    for (way, (from, to)) in (1..).zip(days(mating)) {
        stretches.push(Stretch { way, part: rest, from, to });
        ways = way + 1;
    }
    let matings = Matings { stretches, ways, rest, in_lamb: evidence.scan.is_some() };
    match evidence.scan {
        Some(scan) => scanned(matings, scan, evidence),
        None => Ok(matings),
    }
}

/// Returns the matings of a ewe that a scan found in lamb, weighed by the age it gave.
fn scanned(matings: Matings, scan: Scan, evidence: &Evidence) -> Result<Matings, NoForecast> {
    let (on, mating) = (scan.on, evidence.mating);
    let day = between(mating.ram_in(), on);
    if day < SCAN_FROM_DAY {
        return Err(NoForecast::ScanTooEarly { day });
    }
    if let Some(lambs) = scan.lambs {
        LAMBS_AT_SCAN.check(f64::from(lambs))?;
        if lambs == 0 {
            return Err(NoForecast::ScannedEmpty { on });
        }
    }
    let mean = evidence.conception.mean().as_share();
    let weights: Vec<f64> = std::iter::once(1.0).chain(shares(mating, mean)).collect();
    let held =
        |matings: &Matings| -> f64 { matings.stretches.iter().map(|one| one.part * weights[one.way]).sum() };
    let mut matings = matings;
    if let Some(age_days) = scan.age_days {
        let age = AGE_AT_SCAN.check(f64::from(age_days))?;
        let held_at = float(day) - age + 0.5;
        matings.stretches = matings.stretches.into_iter().flat_map(|one| by_day(one, held_at)).collect();
        if held(&matings) < PASSED {
            return Err(NoForecast::ScanDoesNotFit { on, age_days });
        }
    }
    if held(&matings) < PASSED {
        return Err(NoForecast::InLambWithoutMating { on });
    }
    Ok(matings)
}

/// Cuts a stretch into days, each weighed by how near it lies to the day that the scan points at.
fn by_day(stretch: Stretch, held_at: f64) -> Vec<Stretch> {
    let Stretch { way, part: all, from, to } = stretch;
    let parts = whole((to - from).ceil()).max(1);
    let width = (to - from) / float(parts);
    let part = |number: i64| {
        let from = from + width * float(number);
        let off = (from + width / 2.0 - held_at) / SCAN_SPREAD_DAYS;
        Stretch { way, part: all / float(parts) * (-0.5 * off * off).exp(), from, to: from + width }
    };
    (0..parts).map(part).filter(|one| one.part > 1e-12).collect()
}
