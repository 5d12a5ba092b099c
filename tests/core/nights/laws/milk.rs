//! No duty with milk in it is one tap, nor has a volume, for a lamb that anything holds back.

use yeanling_core::book::{Animal, Event, LambId};
use yeanling_core::flock::Flock;
use yeanling_core::units::Moment;
use yeanling_core::watch::{Completion, Duty, LambTask, Task};

use super::{Kept, Law, broken, judges};
use crate::nights::model;

pub(in crate::nights) fn no_milk_is_one_tap_for_a_lamb_on_hold(
    flock: &Flock,
    lamb: LambId,
    now: Moment,
    duties: &[Duty],
) -> Kept {
    let held = |duty: &Duty| match duty.task {
        Task::Lamb(
            _,
            LambTask::Feed { hold, .. }
            | LambTask::FirstMilk { hold, .. }
            | LambTask::Hollow { hold, .. }
            | LambTask::DayTotal { hold, .. },
        ) => hold,
        _ => false,
    };
    if duties.iter().any(held) {
        judges(Law::Hold);
    }
    let mut milk = duties.iter().filter(|duty| duty.subject() == Animal::Lamb(lamb)).filter(|duty| {
        let free = matches!(
            duty.task,
            Task::Lamb(
                _,
                LambTask::Feed { volume: Some(_), .. }
                    | LambTask::Feed { hold: false, .. }
                    | LambTask::FirstMilk { hold: false, .. }
                    | LambTask::Hollow { hold: false, .. }
                    | LambTask::DayTotal { hold: false, .. }
            )
        );
        free || matches!(&duty.completion, Completion::Note(Event::Fed { .. } | Event::Sucked { .. }))
    });
    let Some(duty) = milk.next() else { return Ok(()) };
    let seen = model::seen(flock, lamb);
    // A clock that is behind shows nothing of what lies ahead of it.
    let ahead = flock.lines_of(Animal::Lamb(lamb)).any(|line| line.at > now);
    if !seen.holds() || ahead {
        return Ok(());
    }
    let (cold, no_swallow, failing, not_tried) = (seen.cold, seen.no_swallow, seen.failing, seen.not_tried);
    let belly = seen.belly;
    let why = format!(
        "cold {cold}, no swallow {no_swallow}, failing {failing}, not tried {not_tried}, belly {belly}"
    );
    broken("no milk is one tap for a lamb on hold", format!("{why}: {:?} {:?}", duty.task, duty.completion))
}
