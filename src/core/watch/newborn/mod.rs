//! The duties of a lamb's first day, one rule a file, and of a lamb that lives from the bottle.

mod before_milk;
mod belly;
pub(super) mod dam_dry;
mod danger;
mod day_total;
mod feed;
mod first_milk;
mod get_up;
mod hard_birth;
mod hold;
mod look;
mod navel;
pub(super) mod one_half;
pub(super) mod ring;
mod temperature;
mod vigor;
mod warmth;
mod weaning;
mod weigh;

pub use before_milk::{BeforeMilk, before_milk};
pub use danger::{LambDanger, LambStep};
pub use feed::{dams_milk, next_milk};
pub(super) use hold::shuts;
pub use hold::{Hold, hold_milk, holds, may_be_tubed};
pub use warmth::{ColdSpell, age_of_cold, cold_spell};
pub use weaning::may_be_weaned;

use super::{Completion, Duty, LambTask, Task};
use crate::flock::{Flock, Lamb};
use crate::reckon::colostrum::{self, ColostrumTarget};
use crate::settings::FarmSettings;
use crate::units::{Mass, Moment, TimeDelta};

/// Returns the duties for one living lamb.
pub(super) fn duties(flock: &Flock, lamb: &Lamb, now: Moment, settings: &FarmSettings) -> Vec<Duty> {
    [
        danger::duty(lamb, now),
        temperature::vet(lamb, now),
        temperature::again(lamb, now),
        look::duty(lamb, now),
        belly::duty(lamb, now, settings),
        first_milk::duty(lamb, now, settings),
        feed::duty(flock, lamb, now, settings),
        day_total::duty(lamb, now, settings),
        get_up::duty(lamb, now, settings),
        hard_birth::duty(lamb, now),
        navel::duty(lamb, now, settings),
        vigor::duty(lamb, now),
        weigh::duty(lamb, now, settings),
        weaning::duty(lamb, now, settings),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// The age after which the first day's duties have no more sense: they are dropped, not shouted for ever (ours).
const FIRST_TWO_DAYS: TimeDelta = TimeDelta::hours(48);

/// Says whether its warmth was looked at since, with a thermometer or a finger in the mouth.
fn looked_at_since(lamb: &Lamb, since: Moment) -> bool {
    let read = lamb.temperatures.iter().map(|reading| reading.at);
    read.chain(lamb.mouth.iter().map(|felt| felt.at)).any(|at| at >= since)
}

/// A duty of this lamb, its instants given as ages.
fn at_ages(lamb: &Lamb, task: LambTask, due: TimeDelta, late: TimeDelta, completion: Completion) -> Duty {
    Duty {
        task: Task::Lamb(lamb.id, task),
        since: lamb.born,
        from: lamb.born,
        due: lamb.born + due,
        late: lamb.born + late,
        danger: None,
        vet: None,
        completion,
        put_off: None,
    }
}

/// A duty of this lamb, counted from an instant at which it is due at once.
fn at_once(lamb: &Lamb, task: LambTask, from: Moment, late: TimeDelta, completion: Completion) -> Duty {
    Duty {
        task: Task::Lamb(lamb.id, task),
        since: from,
        from,
        due: from,
        late: from + late,
        danger: None,
        vet: None,
        completion,
        put_off: None,
    }
}

fn minutes(minutes: u16) -> TimeDelta {
    TimeDelta::minutes(i64::from(minutes))
}

/// What the lamb wants in its first day, by its birth weight; nothing while that is not known.
pub(super) fn target(lamb: &Lamb, settings: &FarmSettings) -> Option<ColostrumTarget> {
    let weight: Mass = lamb.birth_weight()?;
    colostrum::target(weight, settings.day_rule, settings.housing).ok()
}
