//! A lamb that is not right: what the book knows of it, put before the table.
//!
//! Head, swallow and warmth are told by every look, every try and every reading; where it is only cold or does not swallow,
//! the danger of the cold lamb says so and nothing is told twice.

use super::{Course, Noted, course};
use crate::book::{Animal, LambingEase};
use crate::flock::{Lamb, LambIll};
use crate::reckon::illness::lamb::{self, Case, Check, Row, WET_CHIN_FROM};
use crate::reckon::illness::{Answer, Urgency};
use crate::sort_small::SortSmall;
use crate::terms::{Gate, LambSign};
use crate::units::{Moment, TimeDelta};
use crate::watch::newborn::{age_of_cold, cold_spell};
use crate::watch::{ColdSpell, Duty, LambTask, Task};

/// What was read so long before the first look belongs to it (ours).
const READ_BEFORE: TimeDelta = TimeDelta::hours(1);

/// Returns what is known of a lamb that is not right, with what is being seen of it now, if it is.
#[must_use]
pub fn lamb_case(lamb: &Lamb, now: Moment, seen: Option<&LambIll>) -> Case {
    let looks: Vec<&LambIll> = lamb.illness().iter().chain(seen).collect();
    let since = looks.first().map_or(now, |first| first.at) - READ_BEFORE;
    let mut case = Case { age: Some(lamb.age(now)), ..Case::default() };
    looks.iter().for_each(|look| take(&mut case, look));
    // What may have been wet from birth stands until it is seen to stay dry: what was not pressed is not noted.
    case.chin_from_birth =
        looks.iter().filter(|look| wet(look)).all(|look| lamb.age(look.at) < WET_CHIN_FROM);
    if let (Some(first), Some(last)) = (looks.first(), looks.last()) {
        (case.age, case.first_seen_age) = (Some(lamb.age(last.at)), Some(lamb.age(first.at)));
    }
    let tried = lamb.swallow.last().filter(|(at, _)| *at >= since && seen.is_none());
    if let Some((_, able)) = tried {
        if *able {
            (case.head_up, case.swallows) = (Gate::Good, Gate::Good);
        } else if !case.head_up.is_bad() {
            case.swallows = Gate::Bad;
        }
    }
    let read = lamb.temperatures.last().filter(|reading| reading.at >= since);
    case.temperature = read.map(|reading| reading.temperature);
    let spell = cold_spell(lamb).filter(ColdSpell::goes_on);
    let looked = looks.last().map_or(now, |last| last.at);
    case.cold_since_age =
        Some(spell.as_ref().map_or_else(|| age_of_cold(lamb, looked), |spell| spell.age(lamb)));
    match &spell {
        Some(_) => case.warm = Gate::Bad,
        // A reading of 37 °C or more, or a warm mouth and a strong suck, ended what a hand had felt.
        None if read.is_some() || case.warm.is_bad() && seen.is_none() => case.warm = Gate::Good,
        None => {}
    }
    case.tent_seconds = lamb.tents.iter().filter(|(at, _)| *at >= since).map(|(_, seconds)| *seconds).max();
    case.on_bottle = lamb.on_bottle();
    case.hard_birth = matches!(lamb.ease, Some(LambingEase::HardByHand | LambingEase::Vet));
    case
}

fn wet(look: &LambIll) -> bool {
    look.signs.iter().any(|sign| matches!(sign, LambSign::WetChin | LambSign::Rattles))
}

/// Adds one look; of what is asked first the last answer counts.
fn take(case: &mut Case, look: &LambIll) {
    for sign in &look.signs {
        case.signs.retain(|known| sign.ends() != Some(*known) && known.ends() != Some(*sign));
        if !case.signs.contains(sign) {
            case.signs.push(*sign);
        }
    }
    if wet(look) {
        case.signs.retain(|known| *known != LambSign::ChinDry);
    }
    let later = |before: Gate, now: Gate| if now == Gate::NotChecked { before } else { now };
    case.head_up = later(case.head_up, look.head_up);
    case.swallows = later(case.swallows, look.swallows);
    case.warm = later(case.warm, look.warm);
    case.signs.sort_small();
}

/// Returns the illness of a lamb as it stands, if one goes on.
#[must_use]
pub fn lamb_illness(lamb: &Lamb, now: Moment) -> Option<Course<Row, Check>> {
    let looks = lamb.illness();
    let answer = lamb::decide(&lamb_case(lamb, now, None));
    let noted =
        Noted {
            seen: looks.iter().map(|look| look.at).collect(),
            newest: super::newest(looks.iter().map(|look| {
                (look.at, look.signs.iter().copied().filter(|sign| !sign.is_good_news()), false)
            }))?,
            now_since: now_since(&answer, lamb, looks),
            changed: &lamb.changed,
            vet: &lamb.vet,
        };
    course(answer, &noted)
}

/// Since when the table says now: from the first look whose signs say it, else from the last.
fn now_since(answer: &Answer<Row, Check>, lamb: &Lamb, looks: &[LambIll]) -> Option<Moment> {
    if answer.urgency != Urgency::Now {
        return None;
    }
    let mut case = Case::default();
    for look in looks {
        take(&mut case, look);
        case.age = Some(lamb.age(look.at));
        if lamb::decide(&case).urgency == Urgency::Now {
            return Some(look.at);
        }
    }
    looks.last().map(|look| look.at)
}

pub(in crate::watch) fn duties(lamb: &Lamb, now: Moment) -> Vec<Duty> {
    let Some(course) = lamb_illness(lamb, now) else { return Vec::new() };
    let own = |row: Row| !matches!(row, Row::NoSwallow | Row::ColdYoung | Row::ColdOlder);
    let row = course.answer.rows.iter().map(|found| found.row).find(|row| own(*row));
    let check = !course.answer.check_now.is_empty();
    // What is cold or does not swallow, and nothing else, has a danger and looks of its own.
    if row.is_none() && !course.answer.rows.is_empty() && !check {
        return Vec::new();
    }
    let vet = LambTask::Ill { now: course.urgency == Urgency::Now, row };
    let look = LambTask::IllLook { check, row };
    let mut duties =
        course.duties(Animal::Lamb(lamb.id), Task::Lamb(lamb.id, vet), Task::Lamb(lamb.id, look));
    if row.is_none() && !course.answer.rows.is_empty() {
        duties.retain(|duty| matches!(duty.task, Task::Lamb(_, LambTask::IllLook { .. })));
    }
    duties
}
