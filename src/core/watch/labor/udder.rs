//! The udder check after lambing: with the first suck or at two hours, late at six; a half without milk is drawn again at
//! an hour.
//!
//! A half that is hot or cold, and no milk at two draws, are her illness, which has duties of its own. It is not asked of a
//! ewe that aborted and rears no lamb. A day after the last birth, or after the draw, the clock ends (ours): by then her
//! lambs tell.

use super::{Completion, Duty, EweTask, counted};
use crate::book::{Event, Illness};
use crate::flock::{Ewe, Flock, LITTER_APART, Litter, UdderSeen};
use crate::reckon::illness::udder::{AGAIN, DUE, LATE};
use crate::terms::{EweSign, UdderHalf};
use crate::units::{Moment, TimeDelta};

/// Told from so long before it is due (ours).
pub(super) const AHEAD: TimeDelta = TimeDelta::hours(1);
/// So long it is asked for (ours).
pub(super) const GONE: TimeDelta = TimeDelta::hours(24);
/// A half that is drawn again is late so long after its time (ours).
const AGAIN_LATE: TimeDelta = TimeDelta::hours(1);

pub(super) fn duty(flock: &Flock, ewe: &Ewe, litter: &Litter, now: Moment) -> Option<Duty> {
    let checks: Vec<&UdderSeen> = ewe.udder.iter().filter(|seen| seen.at >= litter.began).collect();
    let last = checks.last().map_or(litter.latest, |last| last.at.max(litter.latest));
    if now.since(last) > GONE || aborted(flock, ewe, litter) {
        return None;
    }
    let milks = UdderHalf::Milks;
    let done =
        Completion::Note(Event::Illness(Illness::UdderChecked { ewe: ewe.id, left: milks, right: milks }));
    let Some(last) = checks.last() else {
        let due = first_suck(flock, litter).map_or(DUE, |suck| suck.since(litter.began).min(DUE));
        let first = counted(ewe, EweTask::Udder { again: false }, litter.began, due, LATE, done);
        return Some(Duty { from: first.due - AHEAD, ..first });
    };
    let has_dry = |seen: &UdderSeen| seen.left == UdderHalf::Dry || seen.right == UdderHalf::Dry;
    let draws = checks.iter().filter(|seen| has_dry(seen)).count();
    let again = has_dry(last) && draws == 1;
    again.then(|| counted(ewe, EweTask::Udder { again: true }, last.at, AGAIN, AGAIN + AGAIN_LATE, done))
}

/// When the first of her lambs was seen to suck since the lambing began.
fn first_suck(flock: &Flock, litter: &Litter) -> Option<Moment> {
    let lambs = litter.lambs.iter().filter_map(|id| flock.lambs.get(id));
    lambs.flat_map(|lamb| lamb.sucked.iter().copied()).filter(|at| *at >= litter.began).min()
}

/// Says whether this lambing was an abortion and none of her lambs is left to be reared.
fn aborted(flock: &Flock, ewe: &Ewe, litter: &Litter) -> bool {
    let near = |at: Moment| at.since(litter.began) > -LITTER_APART;
    let seen = ewe.ill.iter().any(|seen| near(seen.at) && seen.signs.contains(&EweSign::Aborted));
    seen && flock.lambs_at_foot(ewe.id).is_empty()
}

/// Returns the last check of a ewe's udder, if it is of these days.
pub(in crate::watch) fn last_check(ewe: &Ewe, now: Moment) -> Option<&UdderSeen> {
    ewe.udder.last().filter(|seen| now.since(seen.at) < LITTER_APART)
}

/// Which half of a ewe's udder her milk may be drawn from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DrawFrom {
    /// Either: nothing speaks against it.
    Either,
    /// The left one alone.
    Left,
    /// The right one alone.
    Right,
    /// Neither: no milk, or hard, hot, cold or blue.
    Neither,
}

/// Returns which half her milk may be drawn from, by the last check of these days, or by what was seen of her udder since.
pub(in crate::watch) fn draw_from(ewe: &Ewe, now: Moment) -> DrawFrom {
    let check = last_check(ewe, now);
    let since = |at: Moment| check.is_none_or(|check| at > check.at);
    let bad = |sign: &EweSign| matches!(sign, EweSign::UdderHot | EweSign::UdderCold | EweSign::NoMilk);
    // Which half it was nobody said.
    if ewe.illness().iter().any(|seen| since(seen.at) && seen.signs.iter().any(bad)) {
        return DrawFrom::Neither;
    }
    let Some(check) = check else { return DrawFrom::Either };
    match (check.left == UdderHalf::Milks, check.right == UdderHalf::Milks) {
        (true, true) => DrawFrom::Either,
        (true, false) => DrawFrom::Left,
        (false, true) => DrawFrom::Right,
        (false, false) => DrawFrom::Neither,
    }
}

/// Returns since when no half of her udder gave milk, if none does.
pub(in crate::watch) fn dry_since(ewe: &Ewe, now: Moment) -> Option<Moment> {
    last_check(ewe, now)?;
    let of_these_days = ewe.udder.iter().rev().filter(|seen| now.since(seen.at) < LITTER_APART);
    of_these_days.take_while(|seen| seen.is_dry()).last().map(|seen| seen.at)
}
