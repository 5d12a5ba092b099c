//! The duties of a lamb's first day, one rule a file, and of a lamb that lives from the bottle.

mod belly;
mod day_total;
mod feed;
mod first_milk;
mod get_up;
mod hold;
mod navel;
pub(super) mod ring;
mod temperature;
mod vigor;
mod weaning;
mod weigh;

pub use feed::next_milk;
pub use hold::{Hold, hold_milk};
pub use weaning::may_be_weaned;

use super::{Discharge, Duty, Task};
use crate::book::Animal;
use crate::flock::Lamb;
use crate::practice::Practice;
use crate::reckon::colostrum::{self, Want};
use crate::units::{Mass, Moment, TimeDelta};

/// Returns the duties for one living lamb.
pub(super) fn duties(lamb: &Lamb, now: Moment, practice: &Practice) -> Vec<Duty> {
    [
        temperature::vet(lamb),
        temperature::again(lamb),
        vigor::failing(lamb, now),
        belly::duty(lamb),
        first_milk::duty(lamb, now, practice),
        feed::duty(lamb, now, practice),
        day_total::duty(lamb, now, practice),
        get_up::duty(lamb, now, practice),
        navel::duty(lamb, now, practice),
        vigor::duty(lamb, now),
        weigh::duty(lamb, now),
        weaning::duty(lamb, now, practice),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// The age after which the first day's duties have no more sense: they are dropped, not shouted for ever (ours).
const FIRST_TWO_DAYS: TimeDelta = TimeDelta::hours(48);

/// A duty of this lamb, its instants given as ages.
fn at_ages(lamb: &Lamb, task: Task, due: TimeDelta, late: TimeDelta, discharge: Discharge) -> Duty {
    Duty {
        subject: Animal::Lamb(lamb.id),
        task,
        since: lamb.born,
        from: lamb.born,
        due: lamb.born + due,
        late: lamb.born + late,
        discharge,
        put_off: None,
    }
}

/// A duty of this lamb, counted from an instant at which it is due at once.
fn at_once(lamb: &Lamb, task: Task, from: Moment, late: TimeDelta, discharge: Discharge) -> Duty {
    Duty {
        subject: Animal::Lamb(lamb.id),
        task,
        since: from,
        from,
        due: from,
        late: from + late,
        discharge,
        put_off: None,
    }
}

fn minutes(minutes: u16) -> TimeDelta {
    TimeDelta::minutes(i64::from(minutes))
}

/// What the lamb wants in its first day, by its birth weight; nothing while that is not known.
pub(super) fn want(lamb: &Lamb, practice: &Practice) -> Option<Want> {
    let weight: Mass = lamb.birth_weight()?;
    colostrum::want(weight, practice.day_rule, practice.housing).ok()
}
