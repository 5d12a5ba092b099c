//! No duty with milk in it is one tap, nor has a volume, for a lamb that anything holds back or for which anything comes first.

use yeanling_core::book::{Animal, Event, LambId};
use yeanling_core::flock::Flock;
use yeanling_core::units::Moment;
use yeanling_core::watch::{BeforeMilk, Completion, Duty, LambTask, Task, before_milk};

use super::{Kept, Law, broken, judges};
use crate::nights::model;

/// No milk is one tap where anything comes first, and no volume stands beside it but for the scale.
pub(in crate::nights) fn what_comes_before_milk_comes_first(
    flock: &Flock,
    lamb: LambId,
    now: Moment,
    duties: &[Duty],
) -> Kept {
    let Some(before) = flock.lamb(lamb).and_then(|lamb| before_milk(lamb, now, &flock.settings)) else {
        return Ok(());
    };
    for duty in duties.iter().filter(|duty| duty.subject() == Animal::Lamb(lamb)) {
        let one_tap = matches!(&duty.completion, Completion::Note(Event::Fed { .. } | Event::Sucked { .. }));
        let Task::Lamb(_, task) = duty.task else { continue };
        let volume = matches!(task, LambTask::Feed { volume: Some(_), .. }) && before != BeforeMilk::Weigh;
        if one_tap || volume {
            let told = format!("{before:?} comes first: {task:?} {:?}", duty.completion);
            return broken("what comes before milk comes first", told);
        }
    }
    // A clock that is behind shows nothing of what lies ahead of it.
    if flock.lines_of(Animal::Lamb(lamb)).any(|line| line.at > now) {
        return Ok(());
    }
    // What must be read, looked at or asked of the vet first is asked for by a duty of its own, or by that of the milk.
    let asked = duties.iter().any(|duty| {
        let Task::Lamb(_, task) = duty.task else { return false };
        let own = matches!(
            task,
            LambTask::TakeTemperature
                | LambTask::CallVet
                | LambTask::Danger(_)
                | LambTask::Ill { .. }
                | LambTask::IllLook { .. }
                | LambTask::Weigh { .. }
        );
        duty.subject() == Animal::Lamb(lamb) && (own || task.before_milk() == Some(before))
    });
    let hold = matches!(before, BeforeMilk::Hold(_));
    if asked || hold {
        judges(Law::First);
        return Ok(());
    }
    broken("what comes before milk is asked for", format!("{before:?}"))
}

pub(in crate::nights) fn no_milk_is_one_tap_for_a_lamb_on_hold(
    flock: &Flock,
    lamb: LambId,
    now: Moment,
    duties: &[Duty],
) -> Kept {
    let held = |duty: &Duty| match duty.task {
        Task::Lamb(
            _,
            LambTask::Feed { before, .. }
            | LambTask::FirstMilk { before, .. }
            | LambTask::Hollow { before }
            | LambTask::DamDry { before }
            | LambTask::DayTotal { before, .. },
        ) => matches!(before, Some(BeforeMilk::Hold(_))),
        _ => false,
    };
    if duties.iter().any(held) {
        judges(Law::Hold);
    }
    let mut milk = duties.iter().filter(|duty| duty.subject() == Animal::Lamb(lamb)).filter(|duty| {
        let free = match duty.task {
            Task::Lamb(
                _,
                task @ (LambTask::Feed { .. }
                | LambTask::FirstMilk { .. }
                | LambTask::Hollow { .. }
                | LambTask::DamDry { .. }
                | LambTask::DayTotal { .. }),
            ) => {
                let volume = matches!(task, LambTask::Feed { volume: Some(_), .. });
                volume || !matches!(task.before_milk(), Some(BeforeMilk::Hold(_)))
            }
            _ => false,
        };
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
