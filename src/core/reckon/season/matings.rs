//! On which days a ewe can have held: her marks from the last one back and the heats after each, then her group, weighed
//! by her scan.
//!
//! A mark is one service, and holds as any service does. A ewe that did not hold comes in heat again 14 to 19 days later;
//! if the ram was there she was marked again, or came back unseen. So the longer no other mark follows, the surer one is.

use super::bounds::{AGE_AT_SCAN, DAYS_BETWEEN_LOOKS, LAMBS_AT_SCAN};
use super::cycles::{CYCLE_RANGE_DAYS, days, shares};
use super::days::{between, float, whole};
use super::ewe::{
    Evidence, MARK_WRONG, NoForecast, PASSED, RETURN_SEEN, SCAN_FROM_DAY, SCAN_SPREAD_DAYS, Scan,
};
use crate::sort_small::SortSmall;

/// Days of mating, in days after ram in.
#[derive(Clone, Copy, Debug)]
pub(super) struct Stretch {
    /// Its way of holding: first those of the marks, then the cycles of the group.
    pub(super) way: usize,
    /// Its part of what holds in that way.
    pub(super) part: f64,
    /// The first day.
    pub(super) from: f64,
    /// The day on which it ends, not counted any more.
    pub(super) to: f64,
}

/// One mark and the heats after it, if that mark was a service.
#[derive(Clone, Debug)]
struct Chain {
    /// The chance that this mark is the last service that was seen.
    part: f64,
    /// Of each heat after it: the share that fell into the ram's days, and of that the share nobody would have seen.
    returns: Vec<(f64, f64)>,
}

/// The days on which she can have held, by the way: a share of all in each cycle, and what her marks make sure.
#[derive(Clone, Debug)]
pub(super) struct Matings {
    /// All of them.
    pub(super) stretches: Vec<Stretch>,
    /// How many ways are of marks: the last mark first, then each heat after it, then the mark before.
    pub(super) of_marks: usize,
    /// How many ways: those of the marks, and one for each cycle.
    pub(super) ways: usize,
    /// The chance that no mark is right, so that she is as her group.
    pub(super) rest: f64,
    /// Whether a scan found her in lamb.
    pub(super) in_lamb: bool,
    chains: Vec<Chain>,
}

impl Matings {
    /// Returns what each way is worth if this share holds at a service, and these shares of her group in its cycles.
    pub(super) fn weights(&self, share: f64, cycles: impl Iterator<Item = f64>) -> Vec<f64> {
        let mut weights = Vec::with_capacity(self.ways);
        for chain in &self.chains {
            let from = weights.len();
            let (mut open, mut empty) = (1.0 - share, 0.0);
            weights.push(share);
            for (inside, unseen) in &chain.returns {
                empty += open * (1.0 - inside);
                open *= inside * unseen;
                weights.push(open * share);
                open *= 1.0 - share;
            }
            let all = weights[from..].iter().sum::<f64>() + empty + open;
            for weight in &mut weights[from..] {
                *weight /= all.max(f64::MIN_POSITIVE);
            }
        }
        weights.extend(cycles);
        weights
    }

    /// Returns the chance that she is empty, by what each way is worth.
    pub(super) fn empty(&self, weights: &[f64]) -> f64 {
        if self.in_lamb {
            return 0.0;
        }
        let (marks, cycles) = weights.split_at(self.of_marks);
        let mut from = 0;
        let mut empty = self.rest * (1.0 - cycles.iter().sum::<f64>()).max(0.0);
        for chain in &self.chains {
            let to = from + 1 + chain.returns.len();
            empty += chain.part * (1.0 - marks[from..to].iter().sum::<f64>()).max(0.0);
            from = to;
        }
        empty
    }
}

/// Returns the days on which she can have held, as it looks so many days after ram in.
pub(super) fn matings(evidence: &Evidence, now_day: f64) -> Result<Matings, NoForecast> {
    let mating = evidence.mating;
    let look = DAYS_BETWEEN_LOOKS.check(f64::from(evidence.look_days))?;
    let with_ram = float(mating.days());
    let mut marks = evidence.marks.clone();
    marks.sort_small();
    marks.dedup();
    let mut stretches = Vec::new();
    let mut chains = Vec::new();
    let (mut rest, mut ways) = (1.0, 0);
    for mark in marks.iter().rev() {
        let day = between(mating.ram_in(), *mark);
        // A mark that is found after the ram came out is from his last days.
        if day < 0 || float(day) >= with_ram + look {
            let (ram_in, ram_out) = (mating.ram_in(), mating.ram_out());
            return Err(NoForecast::MarkWithoutRam { mark: *mark, ram_in, ram_out });
        }
        if rest < PASSED {
            continue;
        }
        let to = (float(day) + 1.0).min(with_ram);
        let from = (float(day) + 1.0 - look).clamp(0.0, to - 1.0);
        let part = rest * (1.0 - MARK_WRONG);
        stretches.push(Stretch { way: ways, part, from, to });
        ways += 1;
        let mut returns = Vec::new();
        for heat in 1..u16::MAX {
            let (least, most) = CYCLE_RANGE_DAYS;
            let (first, last) = (from + f64::from(heat * least), to + f64::from(heat * most));
            if first >= with_ram {
                break;
            }
            let inside = ((with_ram - first) / (last - first)).min(1.0);
            let until = last.min(with_ram);
            // What is still to come has not been missed.
            let gone = ((now_day - first) / (until - first)).clamp(0.0, 1.0);
            returns.push((inside, 1.0 - RETURN_SEEN * gone));
            stretches.push(Stretch { way: ways, part, from: first, to: until });
            ways += 1;
        }
        chains.push(Chain { part, returns });
        rest *= MARK_WRONG;
    }
    let of_marks = ways;
    for (from, to) in days(mating) {
        stretches.push(Stretch { way: ways, part: rest, from, to });
        ways += 1;
    }
    let matings = Matings { stretches, of_marks, ways, rest, in_lamb: evidence.scan.is_some(), chains };
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
    let weights = matings.weights(mean, shares(mating, mean));
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
