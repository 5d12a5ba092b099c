//! A ewe that is not right: what the book knows of her, put before the table.
//!
//! What was seen at several looks is one case. A sign stays until good news takes that very sign back; of what is asked
//! first the last answer counts, but a ewe that was down and not on her back stays down, and what was out stays out.

use super::{Course, Noted, course};
use crate::book::{Animal, EweId};
use crate::flock::{Ewe, EweIll, Flock, LATEST_BIRTH, Labor};
use crate::reckon::illness::ewe::{self, Case, Check, FEVER_TWICE_FROM, OUT, Row};
use crate::reckon::illness::{Answer, Urgency};
use crate::sort_small::SortSmall;
use crate::terms::{EweSign, EweStage, Gate};
use crate::units::{Moment, TimeDelta};
use crate::watch::{Duty, EweTask, Task};

/// Up to three days after lambing, the third day with it.
const AFTER_LAMBING: TimeDelta = TimeDelta::days(4);
/// So long a ewe is in milk whether her lambs live or not (ours).
const IN_MILK: TimeDelta = TimeDelta::days(21);
/// The last six weeks begin so long after the earliest mating that can have been the one: 138 days less 42.
const LATE_FROM: TimeDelta = TimeDelta::days(96);
/// What was read so long before the first look belongs to it (ours).
const READ_BEFORE: TimeDelta = TimeDelta::hours(12);
/// Two warm readings so far apart are one fever.
const WARM_APART: TimeDelta = TimeDelta::minutes(30);
/// An abortion of this season (ours).
const SEASON: TimeDelta = TimeDelta::days(60);

/// Returns where a ewe is in her year by what the book knows; unknown where it knows nothing.
#[must_use]
pub fn stage_of(flock: &Flock, ewe: &Ewe, now: Moment) -> EweStage {
    if ewe.labor.as_ref().is_some_and(Labor::runs) {
        return EweStage::Labor;
    }
    let last = flock.litters_of(ewe.id).first().map(|litter| litter.latest);
    match last.map(|last| now.since(last)) {
        Some(since) if since < AFTER_LAMBING => return EweStage::AfterLambing,
        Some(since) if since < IN_MILK || !flock.lambs_at_foot(ewe.id).is_empty() => {
            return EweStage::Milking;
        }
        Some(_) | None => {}
    }
    if ewe.labor.is_some() {
        return EweStage::LateInLamb;
    }
    let Some(expected) = flock.expectation(ewe.id, now) else {
        // Whose ram nobody noted may have been scanned with the age of her lambs.
        if let Some(stage) = by_scan(ewe, last, now) {
            return stage;
        }
        let empty = ewe.scans.last().is_some_and(|scan| scan.lambs == 0 && now.since(scan.at) < LATE_FROM);
        return if empty || last.is_some() { EweStage::Other } else { EweStage::Unknown };
    };
    let scanned = expected.scan.and_then(|scan| Some(scan.at - TimeDelta::days(i64::from(scan.days?))));
    let marked = expected.marks.first().map(|mark| mark.at);
    let mated = scanned.or(marked).or_else(|| expected.ram_in());
    match mated.map(|mated| now.since(mated) >= LATE_FROM) {
        Some(true) => EweStage::LateInLamb,
        Some(false) => EweStage::Other,
        None => EweStage::Unknown,
    }
}

/// Returns where she is by a scan since her last lambing that told how old her lambs are; nothing once they should be born.
fn by_scan(ewe: &Ewe, last: Option<Moment>, now: Moment) -> Option<EweStage> {
    let scan = ewe.scans.last().filter(|scan| scan.lambs > 0 && last.is_none_or(|last| scan.at > last))?;
    let mated = now.since(scan.at - TimeDelta::days(i64::from(scan.days?)));
    let here = mated >= TimeDelta::zero() && mated <= TimeDelta::days(LATEST_BIRTH);
    here.then_some(if mated >= LATE_FROM { EweStage::LateInLamb } else { EweStage::Other })
}

/// Returns what is known of a ewe that is not right, with what is being seen of her now, if it is.
#[must_use]
pub fn ewe_case(flock: &Flock, ewe: &Ewe, now: Moment, seen: Option<&EweIll>) -> Case {
    let looks: Vec<&EweIll> = ewe.illness().iter().chain(seen).collect();
    let since = looks.first().map_or(now, |first| first.at) - READ_BEFORE;
    let mut case = Case::default();
    for (place, look) in looks.iter().enumerate() {
        // Of two stages neither is known: what was seen in the one is as urgent in the other.
        let same = place == 0 || case.stage == look.stage;
        case.stage = if same { look.stage } else { EweStage::Unknown };
        take(&mut case, look);
    }
    let read = || ewe.temperatures.iter().filter(|reading| reading.at >= since);
    let all = || read().map(|reading| reading.temperature);
    case.highest = all().reduce(|one, other| if other > one { other } else { one });
    case.lowest = all().reduce(|one, other| if other < one { other } else { one });
    let warm: Vec<Moment> =
        read().filter(|reading| reading.temperature >= FEVER_TWICE_FROM).map(|reading| reading.at).collect();
    case.warm_twice =
        warm.first().zip(warm.last()).is_some_and(|(first, last)| last.since(*first) >= WARM_APART);
    let ketones = ewe.ketones.iter().filter(|(at, _)| *at >= since).map(|(_, ketones)| *ketones);
    case.ketones = ketones.reduce(|one, other| if other > one { other } else { one });
    case.since_last_lamb = flock.litters_of(ewe.id).first().map(|litter| now.since(litter.latest));
    if case.signs.contains(&EweSign::Aborted) {
        case.others_aborted = others_aborted(flock, ewe.id, since + READ_BEFORE);
    }
    case
}

/// Adds one look.
fn take(case: &mut Case, look: &EweIll) {
    case.onset = look.onset.or(case.onset);
    for sign in &look.signs {
        // The bad sign takes its good news back, too.
        case.signs.retain(|known| sign.ends() != Some(*known) && known.ends() != Some(*sign));
        if !case.signs.contains(sign) {
            case.signs.push(*sign);
        }
    }
    if look.signs.contains(&EweSign::SmoothOut) && !look.signs.contains(&EweSign::WentBack) {
        case.signs.retain(|known| *known != EweSign::WentBack);
    }
    let cast = case.signs.contains(&EweSign::OnBack);
    case.standing = stays_bad(case.standing, look.standing, !cast);
    case.eating = stays_bad(case.eating, look.eating, false);
    case.nothing_out = stays_bad(case.nothing_out, look.nothing_out, true);
    case.signs.sort_small();
}

/// Returns the later answer, if there is one; a bad one stays where it `stays`.
fn stays_bad(before: Gate, later: Gate, stays: bool) -> Gate {
    if later == Gate::NotChecked || stays && before.is_bad() && !later.is_bad() { before } else { later }
}

fn others_aborted(flock: &Flock, than: EweId, then: Moment) -> usize {
    let aborted = |ewe: &&Ewe| {
        let mut looks = ewe.ill.iter().filter(|look| then.since(look.at) < SEASON);
        ewe.id != than && looks.any(|look| look.signs.contains(&EweSign::Aborted))
    };
    flock.ewes.values().filter(aborted).count()
}

/// Returns the illness of a ewe as it stands, if one goes on.
#[must_use]
pub fn ewe_illness(flock: &Flock, ewe: &Ewe, now: Moment) -> Option<Course<Row, Check>> {
    let looks = ewe.illness();
    let answer = ewe::decide(&ewe_case(flock, ewe, now, None));
    let noted = Noted {
        seen: looks.iter().map(|look| look.at).collect(),
        newest: newest(looks)?,
        now_since: now_since(&answer, looks),
        changed: &ewe.changed,
        vet: &ewe.vet,
    };
    course(answer, &noted)
}

/// When something was last seen that had not been seen before. A ewe that is down, and what is out, is new at each look.
fn newest(looks: &[EweIll]) -> Option<Moment> {
    super::newest(looks.iter().map(|look| {
        let out = look.nothing_out.is_bad() && look.signs.iter().any(|sign| OUT.contains(sign));
        let bad = look.signs.iter().copied().filter(|sign| !sign.is_good_news());
        (look.at, bad, look.standing.is_bad() || out)
    }))
}

/// Since when the table says now: from the first look whose signs alone say it, else from the last.
fn now_since(answer: &Answer<Row, Check>, looks: &[EweIll]) -> Option<Moment> {
    if answer.urgency != Urgency::Now {
        return None;
    }
    let mut case = Case::default();
    for look in looks {
        take(&mut case, look);
        case.stage = look.stage;
        if ewe::decide(&case).urgency == Urgency::Now {
            return Some(look.at);
        }
    }
    looks.last().map(|look| look.at)
}

pub(in crate::watch) fn duties(flock: &Flock, ewe: &Ewe, now: Moment) -> Vec<Duty> {
    let Some(course) = ewe_illness(flock, ewe, now) else { return Vec::new() };
    let row = course.first();
    let check = !course.answer.check_now.is_empty();
    let vet = EweTask::Ill { now: course.urgency == Urgency::Now, row };
    let look = EweTask::IllLook { check, row };
    course.duties(Animal::Ewe(ewe.id), Task::Ewe(ewe.id, vet), Task::Ewe(ewe.id, look))
}
