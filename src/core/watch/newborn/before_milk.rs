//! What comes before milk: one rule for every duty, screen and sheet. A lamb may be fed once nothing comes first.
//!
//! What holds milk back comes before all; then the vet for what is in danger; then a look at what was not checked or is due
//! again, and the thermometer; the scale last, which bears on the volume alone.

use super::{Hold, belly, first_milk, hold_milk, temperature, weigh};
use crate::flock::Lamb;
use crate::settings::FarmSettings;
use crate::units::{Moment, TimeDelta};
use crate::watch::{LambTask, Task, illness};

/// What comes before milk, the gravest first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BeforeMilk {
    /// Milk waits: something holds it back.
    Hold(Hold),
    /// It is not right and in danger: the vet, until the vet saw it or it is well again.
    Ill,
    /// Its temperature asks for the vet.
    Vet,
    /// It is not right, and is looked at first: head, swallow or warmth were not checked, or a look is due.
    Look,
    /// A thermometer, or a finger in its mouth.
    Temperature,
    /// The scale: its feeds go by an old weight. Nothing is held back by it but the volume.
    Weigh,
}

/// Returns what comes before milk for this lamb; nothing when it may be fed, or lives no more.
#[must_use]
pub fn before_milk(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Option<BeforeMilk> {
    if !lamb.lives() {
        return None;
    }
    hold_milk(lamb)
        .map(BeforeMilk::Hold)
        .or_else(|| ill(lamb, now))
        .or_else(|| temperature::vet(lamb, now).map(|_| BeforeMilk::Vet))
        .or_else(|| looked_at(lamb, now))
        .or_else(|| to_read(lamb, now, settings).then_some(BeforeMilk::Temperature))
        .or_else(|| weigh::for_feeds(lamb, now, settings).map(|_| BeforeMilk::Weigh))
}

impl BeforeMilk {
    /// Returns this unless it bears on the volume alone, which a lamb that sucks finds by itself.
    #[must_use]
    pub fn before_nursing(self) -> Option<Self> {
        (self != Self::Weigh).then_some(self)
    }
}

/// In danger; the vet who allows it milk was asked.
fn ill(lamb: &Lamb, now: Moment) -> Option<BeforeMilk> {
    if lamb.milk_allowed.last() >= lamb.ill.last().map(|look| &look.at) {
        return None;
    }
    let mut duties = illness::of_lamb(lamb, now).into_iter();
    let danger =
        duties.any(|duty| matches!(duty.task, Task::Lamb(_, LambTask::Ill { .. })) && duty.danger.is_some());
    danger.then_some(BeforeMilk::Ill)
}

fn looked_at(lamb: &Lamb, now: Moment) -> Option<BeforeMilk> {
    let due = |due: Moment| now.since(due) >= TimeDelta::zero();
    let mut duties = illness::of_lamb(lamb, now).into_iter();
    let look = duties.any(
        |duty| matches!(duty.task, Task::Lamb(_, LambTask::IllLook { check, .. }) if check || due(duty.due)),
    );
    look.then_some(BeforeMilk::Look)
}

/// Says whether its warmth is to be known first: it is late and was not seen to nurse, its belly is hollow, or another reading
/// is due.
fn to_read(lamb: &Lamb, now: Moment, settings: &FarmSettings) -> bool {
    let again = temperature::again(lamb, now).is_some_and(|duty| now.since(duty.due) >= TimeDelta::zero());
    again || first_milk::reads_first(lamb, now, settings) || belly::reads_first(lamb, now, settings)
}
