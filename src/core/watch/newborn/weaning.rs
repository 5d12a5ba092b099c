//! Weaning: a bottle lamb is looked at from its rule's earliest age on, and again a day after each look.
//!
//! A look is a weight or a day's solids that was noted. What is not known is never met, so the check comes all the same.
//!
//! Weaning is asked about at the rule's earliest age, and a day after each look (a weight, a day's solids); what is
//! not known is never met. The last note of a day's solids stands.

use super::{Completion, Duty, LambTask, Task};
use crate::book::Event;
use crate::flock::Lamb;
use crate::reckon::weaning::{self, EARLIEST, FIVE_WEEKS, Verdict, WeaningAnswer};
use crate::settings::{FarmSettings, WeaningRule};
use crate::units::{Mass, Moment, OutOfBounds, TimeDelta};

/// It comes into sight a day before its time, and after a look it is asked about again a day later (ours).
const A_DAY: TimeDelta = TimeDelta::hours(24);
/// It is late a week after its time (ours).
const LATE_AFTER: TimeDelta = TimeDelta::days(7);
/// A lamb so old is no bottle lamb any more, whatever the book says (ours).
const NO_LONGER: TimeDelta = TimeDelta::days(120);

/// Returns whether a lamb can be weaned by the farm's rule, on what the book knows of it at this instant.
///
/// Its weight counts for four days; solids count when each of three days running was noted, the last of them today or
/// yesterday. A day that is known to be too little is enough to say no.
///
/// # Errors
/// A weight is none that a lamb at weaning, or at birth, has.
pub fn may_be_weaned(
    lamb: &Lamb,
    now: Moment,
    rule: WeaningRule,
) -> Result<WeaningAnswer, OutOfBounds<Mass>> {
    let known = weaning::Lamb {
        age: lamb.age(now),
        weight: lamb.recent_weight(now),
        birth_weight: lamb.birth_weight(),
        eats_solids: eats_solids(lamb.solids_of_three_days(now)),
    };
    weaning::wean(known, rule)
}

fn eats_solids(days: [Option<Mass>; 3]) -> Option<bool> {
    if days.iter().flatten().any(|day| *day < weaning::SOLIDS) {
        return Some(false);
    }
    let [Some(first), Some(second), Some(third)] = days else { return None };
    weaning::eats_enough([first, second, third]).ok()
}

const fn earliest(rule: WeaningRule) -> TimeDelta {
    match rule {
        WeaningRule::FeedMaker | WeaningRule::Teagasc => FIVE_WEEKS,
        WeaningRule::FourWeeks => EARLIEST,
    }
}

pub(super) fn duty(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<Duty> {
    let rule = settings.weaning_rule;
    if !lamb.on_bottle() || lamb.age(now) >= NO_LONGER {
        return None;
    }
    let verdict = may_be_weaned(lamb, now, rule).map(|answer| answer.verdict);
    let ready = verdict == Ok(Verdict::Ready);
    let looks = lamb.weights.iter().chain(&lamb.solids).map(|look| look.at).filter(|at| *at <= now);
    let first = lamb.born + earliest(rule);
    let due = match looks.max() {
        Some(look) => first.max(if ready { look } else { look + A_DAY }),
        None => first,
    };
    let wean = Completion::Note(Event::Weaned { lamb: lamb.id });
    Some(Duty {
        task: Task::Lamb(lamb.id, LambTask::WeaningCheck { ready }),
        since: lamb.born,
        from: due - A_DAY,
        due,
        late: due + LATE_AFTER,
        danger: None,
        vet: None,
        completion: if ready { wean } else { Completion::Open },
        put_off: None,
    })
}
