//! An animal in danger stays first until good news about that very sign.

use yeanling_core::book::{Animal, Care, Event, Found, Illness, LambId, Part, Presentation, VetSaid};
use yeanling_core::flock::{Flock, Lamb};
use yeanling_core::terms::Change;
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, LambTask, State, Task};

use super::{Kept, Law, Scene, broken, judges};
use crate::nights::model;

/// Told: what nobody saw again for seven days is over.
const GONE: TimeDelta = TimeDelta::days(7);

pub(in crate::nights) fn danger_stands_before_all_else(now: Moment, duties: &[Duty]) -> Kept {
    let first = duties.iter().skip_while(|duty| duty.state(now) == State::Danger);
    match first.into_iter().find(|duty| duty.state(now) == State::Danger) {
        None => Ok(()),
        Some(duty) => broken("danger stands before all else", format!("{duty:?} stands behind")),
    }
}

/// A lamb that is cold, does not swallow or is failing is in danger, whatever else was noted: but where the vet saw it
/// since it was last worse, where nobody saw the sign again for seven days, and before the instant of the sign by a
/// clock that is behind.
pub(in crate::nights) fn a_lamb_in_danger_stays_so_until_good_news(
    flock: &Flock,
    lamb: LambId,
    now: Moment,
    duties: &[Duty],
) -> Kept {
    let watched = |lamb: &Lamb| lamb.lives() && lamb.was_in_care();
    if !flock.lamb(lamb).is_some_and(watched) {
        return Ok(());
    }
    let seen = model::seen(flock, lamb);
    let saw = seen.vet_saw.is_some_and(|saw| seen.worse.is_none_or(|worse| worse <= saw));
    let over = seen.seen.is_none_or(|seen| now.since(seen) > GONE || now.since(seen) < TimeDelta::zero());
    if !seen.in_danger() || saw || over {
        return Ok(());
    }
    judges(Law::LambInDanger);
    let here = duties.iter().filter(|duty| duty.subject() == Animal::Lamb(lamb));
    let told = here.filter(|duty| duty.state(now) == State::Danger).find_map(|duty| match duty.task {
        Task::Lamb(_, LambTask::Danger(danger)) => {
            Some((danger.cold.is_some(), danger.no_swallow, danger.failing))
        }
        _ => None,
    });
    if told == Some((seen.cold, seen.no_swallow, seen.failing)) {
        return Ok(());
    }
    let is = format!("cold {}, no swallow {}, failing {}", seen.cold, seen.no_swallow, seen.failing);
    broken("a lamb in danger stays so until good news about that very sign", format!("{is}; told {told:?}"))
}

pub(in crate::nights) fn labors_danger_ends_by_good_news_alone(scene: &Scene<'_>) -> Kept {
    let in_danger = |duties: &[Duty], ewe: Animal| {
        duties.iter().any(|duty| duty.subject() == ewe && duty.state(scene.now) == State::Danger)
    };
    let ewes = scene.before.iter().filter(|duty| matches!(duty.subject(), Animal::Ewe(_)));
    for duty in ewes.filter(|duty| duty.state(scene.now) == State::Danger) {
        judges(Law::LaborInDanger);
        if !in_danger(scene.after, duty.subject()) && !good_news(scene, duty.subject()) {
            return broken(
                "labor's danger ends by good news alone",
                format!("{:?} is over after {:?}", duty.task, scene.event),
            );
        }
    }
    Ok(())
}

/// A birth, a lamb put right, a clean hand that found all well or none left, a lamb that shows as it should, that the vet
/// saw her, her death; and a correction, which says that it was never so.
fn good_news(scene: &Scene<'_>, animal: Animal) -> bool {
    let of = |ewe: &yeanling_core::book::EweId| scene.flock.canonical(Animal::Ewe(*ewe)) == animal;
    match scene.event {
        Event::LambBorn { dam: Some(ewe), .. }
        | Event::DamGiven { dam: ewe, .. }
        | Event::Care(Care::PutRight { ewe })
        | Event::HandChecked {
            ewe,
            found: Found::NothingYet | Found::Empty | Found::Lamb(Presentation::Normal),
        }
        | Event::PartShowing { ewe, part: Part::ForeFeet | Part::FeetAndNose } => of(ewe),
        Event::Care(Care::VetSaid { animal: of, said: VetSaid::Saw { .. } })
        | Event::Died { animal: of, .. } => *of == animal,
        Event::Illness(Illness::Changed { animal: of, change: Change::Well }) => *of == animal,
        // The vet is reached whom nobody had reached.
        Event::Care(Care::VetSaid { animal: of, said: VetSaid::Coming | VetSaid::Advised { .. } }) => {
            let nobody = |line: &yeanling_core::flock::Line| {
                matches!(line.event, Event::Care(Care::VetSaid { said: VetSaid::NobodyReached, .. }))
            };
            *of == animal && scene.flock.lines_of(animal).any(nobody)
        }
        // Good news that is named: about her, and about that very thing.
        Event::Illness(Illness::EweSeen { ewe, standing, eating, nothing_out, signs, .. }) => {
            let good = [standing, eating, nothing_out].into_iter().any(|gate| gate.is_good());
            of(ewe) && (good || signs.iter().any(|sign| sign.is_good_news()))
        }
        Event::Deleted { .. } | Event::Restored { .. } | Event::Amended { .. } => true,
        // What is noted of a time before the vet's visit was seen by the vet.
        _ => scene.flock.lines_of(animal).any(|line| {
            let saw = matches!(line.event, Event::Care(Care::VetSaid { said: VetSaid::Saw { .. }, .. }));
            saw && line.at > scene.at
        }),
    }
}
