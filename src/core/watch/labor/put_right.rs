//! A lamb that lies wrong, or that is being pulled: put right within ten minutes, or the vet; some lies at once.
//!
//! A tail or a head alone is a lamb that lies wrong: due now. What was found last stands: a lamb that then shows as it
//! should, a hand that found all well, or a lamb put right ends it.

use super::{Completion, Duty, EweTask, advanced_well, comes_well, counted, hand_well, minutes};
use crate::book::{Animal, Event, Found, Part};
use crate::flock::{Ewe, Labor};
use crate::reckon::labor::{Needs, needs};
use crate::settings::LaborLimits;
use crate::sort_small::SortSmall;
use crate::units::{Moment, TimeDelta};
use crate::watch::Trouble;

/// Late so long after its time: the longer of the printed 10 to 15 minutes.
const LATE_AFTER: TimeDelta = TimeDelta::minutes(5);

pub(super) fn duty(ewe: &Ewe, labor: &Labor, limits: LaborLimits) -> Option<Duty> {
    let wrong = wrong(labor);
    let helped = helped(labor).map(|at| (at, Trouble::Helped));
    let (from, _) = wrong.first().copied().into_iter().chain(helped).min_by_key(|(at, _)| *at)?;
    let trouble = wrong.last().map_or(Trouble::Helped, |(_, trouble)| *trouble);
    let limit = minutes(limits.put_right_minutes);
    // Of several finds the worst stands.
    let due =
        wrong.iter().map(|(at, trouble)| *at + wait(*trouble, limit)).chain(helped.map(|(at, _)| at + limit));
    let due = due.min()?;
    let vet = wrong.iter().find(|(_, trouble)| for_the_vet(*trouble)).map(|(at, _)| *at);
    let danger = from + limit + LATE_AFTER;
    let call = Completion::Note(Event::VetCalled { animal: Animal::Ewe(ewe.id) });
    let mut duty = counted(ewe, EweTask::PutRight { trouble }, from, due.since(from), limit, call);
    duty.late = due.max(from) + LATE_AFTER;
    duty.danger = Some(vet.map_or(danger, |vet| vet.min(danger)));
    Some(duty)
}

/// What was found wrong since it was last found right, oldest first.
fn wrong(labor: &Labor) -> Vec<(Moment, Trouble)> {
    let well = labor.parts.iter().filter(|(_, part)| comes_well(*part)).map(|(at, _)| *at).max();
    let right = hand_well(labor).max(well);
    let lies = labor.checks.iter().filter_map(|(at, found)| match found {
        Found::Lamb(lie) if needs(*lie) != Needs::Nothing => Some((*at, Trouble::Lies(*lie))),
        Found::Lamb(_) | Found::CervixClosed | Found::NothingYet | Found::Empty => None,
    });
    let parts = labor.parts.iter().filter_map(|(at, part)| match part {
        Part::Tail | Part::Head => Some((*at, Trouble::Shows(*part))),
        Part::FeetAndNose | Part::ForeFeet | Part::OneFoot | Part::HindFeet => None,
    });
    let mut wrong: Vec<(Moment, Trouble)> =
        lies.chain(parts).filter(|(at, _)| right.is_none_or(|right| *at > right)).collect();
    wrong.sort_small_by_key(|(at, _)| *at);
    wrong
}

/// Since when she is being helped, if nothing good came of it yet.
fn helped(labor: &Labor) -> Option<Moment> {
    let good = hand_well(labor).max(advanced_well(labor));
    labor.help.iter().copied().find(|at| good.is_none_or(|good| *at > good))
}

const fn for_the_vet(trouble: Trouble) -> bool {
    match trouble {
        Trouble::Lies(lie) => matches!(needs(lie), Needs::Vet),
        Trouble::Shows(_) | Trouble::Helped => false,
    }
}

const fn wait(trouble: Trouble, limit: TimeDelta) -> TimeDelta {
    match trouble {
        Trouble::Lies(lie) if matches!(needs(lie), Needs::Vet) => TimeDelta::zero(),
        Trouble::Shows(_) => TimeDelta::zero(),
        Trouble::Lies(_) | Trouble::Helped => limit,
    }
}
