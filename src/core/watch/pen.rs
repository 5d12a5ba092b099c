//! The bonding pens: who may go out, and why not yet.

use super::{Completion, Duty, EweTask, Task, hold_milk};
use crate::book::{Animal, Event, EweId, LambId};
use crate::flock::{Flock, Lamb, Stay};
use crate::reckon::body_temperature::{Band, band};
use crate::units::{Moment, TimeDelta};

/// Told as late so long after a pair could go out (ours).
const LATE_AFTER: TimeDelta = TimeDelta::hours(12);

/// A lamb of a pair in a pen is seen to suck or fed within so long of now (ours).
const FED_WITHIN: TimeDelta = TimeDelta::hours(24);

/// Whether a ewe and her lambs may leave their pen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Readiness {
    /// When their stay is over, by the farm's practice for so many lambs.
    pub stay_over: Moment,
    /// How many living lambs she has with her.
    pub lambs: usize,
    /// What holds them back; nothing, when they may go.
    pub why_not: Vec<WhyNot>,
}

/// What holds a pair back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyNot {
    /// The stay is not over.
    Stay,
    /// This lamb was never seen to suck, nor fed.
    NotFed(LambId),
    /// This lamb read too cold or too warm when last taken.
    Temperature(LambId),
    /// Something holds milk back from this lamb, or it is in danger.
    Held(LambId),
    /// The dam turned this lamb away when last noted.
    TurnedAway(LambId),
    /// She has no living lamb with her: nothing to wait for, but nothing is sure either.
    NoLambs,
}

/// Returns whether this ewe may leave her pen.
#[must_use]
pub fn readiness(flock: &Flock, ewe: EweId, since: Moment, now: Moment) -> Readiness {
    let lambs = flock.lambs_at_foot(ewe);
    let hours = flock.settings.stay.hours(lambs.len());
    // The stay counts from the birth where they were together before; from the pen where she went in later.
    let begun = lambs.iter().map(|lamb| lamb.born).max().map_or(since, |born| born.max(since));
    let stay_over = begun + TimeDelta::hours(i64::from(hours));
    let mut why_not = Vec::new();
    if now.since(stay_over) < TimeDelta::zero() {
        why_not.push(WhyNot::Stay);
    }
    if lambs.is_empty() {
        why_not.push(WhyNot::NoLambs);
    }
    for lamb in &lambs {
        why_not.extend(hold_back(lamb, now));
    }
    Readiness { stay_over, lambs: lambs.len(), why_not }
}

fn hold_back(lamb: &Lamb, now: Moment) -> impl Iterator<Item = WhyNot> + use<> {
    let milk = lamb.sucked.iter().copied().chain(lamb.feeds.iter().map(|feed| feed.at)).max();
    // A lamb seen to suck is its dam's; one that lives from the hand needs a feed of the day.
    let fed = milk.is_some_and(|milk| !lamb.hand_fed() || now.since(milk) <= FED_WITHIN);
    let normal = lamb.temperatures.last().is_none_or(|last| band(last.temperature) == Ok(Band::Normal));
    let id = lamb.id;
    [
        (!fed).then_some(WhyNot::NotFed(id)),
        (!normal).then_some(WhyNot::Temperature(id)),
        (normal && hold_milk(lamb).is_some()).then_some(WhyNot::Held(id)),
        lamb.turned_away().then_some(WhyNot::TurnedAway(id)),
    ]
    .into_iter()
    .flatten()
}

/// Returns the duty to let a ewe and her lambs out, once nothing holds them back.
pub(super) fn duty(flock: &Flock, stay: &Stay, now: Moment) -> Option<Duty> {
    let Animal::Ewe(ewe) = stay.animal else { return None };
    let ready = readiness(flock, ewe, stay.since, now);
    let only_stay = ready.why_not.iter().all(|why| *why == WhyNot::Stay);
    only_stay.then(|| Duty {
        task: Task::Ewe(ewe, EweTask::LetOut),
        since: stay.since,
        from: ready.stay_over - TimeDelta::hours(1),
        due: ready.stay_over,
        late: ready.stay_over + LATE_AFTER,
        danger: None,
        vet: None,
        completion: Completion::Note(Event::LetOut { animal: stay.animal }),
        put_off: None,
    })
}
