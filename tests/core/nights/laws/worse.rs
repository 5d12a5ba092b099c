//! A worse sign never makes an alarm later or milder.

use yeanling_core::book::{
    Animal, Belly, Care, Event, Found, Illness, LambId, Mouth, Part, Presentation, Sign, Suck, VetSaid,
};
use yeanling_core::flock::Flock;
use yeanling_core::terms::{Change, EweSign, UdderHalf};
use yeanling_core::units::{Moment, TimeDelta};
use yeanling_core::watch::{Duty, EweTask, LambTask, State, Task, duties};

use super::{Broken, Kept, Law, Scene, broken, judges};
use crate::nights::story::clock;

const LAW: &str = "a worse sign never makes an alarm later or milder";

/// What is looked at of the hours after a worse sign, in minutes.
const AHEAD: [i64; 5] = [10, 29, 61, 190, 420];

pub(in crate::nights) fn a_worse_sign_never_makes_an_alarm_later_or_milder(scene: &Scene<'_>) -> Kept {
    let Some(animal) = worse(scene) else { return Ok(()) };
    let kept = |duties: &[Duty]| -> Vec<Duty> {
        let left = |duty: &&Duty| duty.subject() == animal && !answers(scene.event, duty);
        duties.iter().filter(left).cloned().collect()
    };
    let before = kept(scene.before);
    let after: Vec<Duty> = scene.after.iter().filter(|duty| duty.subject() == animal).cloned().collect();
    if before.iter().any(|duty| duty.state(scene.now) >= State::Now) {
        judges(Law::Worse);
    }
    compare(&before, &after, scene.now)?;
    let Some(was) = &scene.was else { return Ok(()) };
    for minutes in AHEAD {
        let then = scene.now + TimeDelta::minutes(minutes);
        let said = |flock: &Flock| duties(flock, then, &flock.settings);
        let (before, after) = (kept(&said(was)), said(scene.flock));
        let after: Vec<Duty> = after.into_iter().filter(|duty| duty.subject() == animal).collect();
        milder(&before, &after, then)?;
    }
    Ok(())
}

fn compare(before: &[Duty], after: &[Duty], now: Moment) -> Result<(), Broken> {
    milder(before, after, now)?;
    let red = |duties: &[Duty]| duties.iter().map(red).min();
    match (red(before), red(after)) {
        // Whatever is late already is late.
        (Some(before), Some(after)) if after.since(before.max(now)) <= TimeDelta::zero() => Ok(()),
        (None, _) => Ok(()),
        (Some(before), after) => {
            let after = after.map_or_else(|| "never".to_owned(), clock);
            broken(LAW, format!("late from {} before it, from {after} after it", clock(before)))
        }
    }
}

fn milder(before: &[Duty], after: &[Duty], now: Moment) -> Kept {
    let worst = |duties: &[Duty]| duties.iter().map(|duty| duty.state(now)).max();
    if worst(after).unwrap_or(State::Coming) >= worst(before).unwrap_or(State::Coming) {
        return Ok(());
    }
    broken(LAW, format!("at {}: {:?} without it, {:?} with it", clock(now), worst(before), worst(after)))
}

/// From when a duty is late, or its animal in danger.
fn red(duty: &Duty) -> Moment {
    let late = duty.put_off.map_or(duty.late, |until| duty.late.max(until));
    duty.danger.map_or(late, |danger| danger.min(late))
}

/// The animal that is worse for what was noted. A part that comes as it should, a hand that found all well, and what is
/// noted of a time before the last look at a lamb are no worse signs.
fn worse(scene: &Scene<'_>) -> Option<Animal> {
    let last = |animal: Animal| {
        let mut others = scene.flock.lines_of(animal).filter(|line| line.event != *scene.event);
        others.all(|line| line.at <= scene.at)
    };
    // What is noted of a time before the vet's visit was seen by the vet.
    let seen = |animal: &Animal| {
        let saw = |line: &yeanling_core::flock::Line| {
            matches!(line.event, Event::Care(Care::VetSaid { said: VetSaid::Saw { .. }, .. }))
        };
        scene.flock.lines_of(*animal).any(|line| saw(line) && line.at > scene.at)
    };
    sign(scene, last).filter(|animal| !seen(animal))
}

fn sign(scene: &Scene<'_>, last: impl Fn(Animal) -> bool) -> Option<Animal> {
    match scene.event {
        Event::SignSeen { ewe, sign: Sign::Restless }
        | Event::WaterBagSeen { ewe }
        | Event::StrainingSeen { ewe }
        | Event::PartShowing { ewe, part: Part::OneFoot | Part::Head | Part::HindFeet | Part::Tail } => {
            Some(Animal::Ewe(*ewe))
        }
        Event::HandChecked { ewe, found: Found::CervixClosed } => Some(Animal::Ewe(*ewe)),
        Event::HandChecked { ewe, found: Found::Lamb(lie) } if *lie != Presentation::Normal => {
            Some(Animal::Ewe(*ewe))
        }
        Event::Illness(fact) => ill(fact).filter(|animal| last(*animal)),
        Event::VetCalled { animal } => Some(*animal),
        Event::TemperatureTaken { lamb, .. } if last(Animal::Lamb(*lamb)) => {
            colder(scene, *lamb).then_some(Animal::Lamb(*lamb))
        }
        Event::SwallowTried { lamb, able: false }
        | Event::VigorScored { lamb, score: 4, .. }
        | Event::BellyFelt { lamb, belly: Belly::Hollow }
        | Event::Care(
            Care::MouthFelt { lamb, mouth: Mouth::Cold, .. }
            | Care::MouthFelt { lamb, mouth: Mouth::Cool, suck: Suck::Weak | Suck::None },
        ) if last(Animal::Lamb(*lamb)) => Some(Animal::Lamb(*lamb)),
        _ => None,
    }
}

/// What is seen of an animal that is not right is worse where none of it is good news; so is "worse" and "no better".
fn ill(fact: &Illness) -> Option<Animal> {
    match fact {
        Illness::EweSeen { ewe, standing, eating, nothing_out, signs, .. } => {
            let good = [standing, eating, nothing_out].into_iter().any(|gate| gate.is_good());
            let good = good || signs.iter().any(|sign| sign.is_good_news());
            (!good).then_some(Animal::Ewe(*ewe))
        }
        Illness::LambSeen { lamb, head_up, swallows, warm, signs } => {
            let good = [head_up, swallows, warm].into_iter().any(|gate| gate.is_good());
            let good = good || signs.iter().any(|sign| sign.is_good_news());
            (!good).then_some(Animal::Lamb(*lamb))
        }
        Illness::UdderChecked { ewe, left, right } => {
            let ails = |half: &UdderHalf| matches!(half, UdderHalf::HardOrHot | UdderHalf::ColdOrBlue);
            (ails(left) || ails(right)).then_some(Animal::Ewe(*ewe))
        }
        Illness::Changed { animal, change: Change::Same | Change::Worse } => Some(*animal),
        _ => None,
    }
}

/// Says whether what was read last is under normal and colder than what was read before; under 37 °C, where it was not
/// read since a finger was in its mouth, or was feverish: from 41 to 38 °C is no worse. To a lamb in danger 37 °C and
/// more is the good news that is waited for, whatever was read before.
fn colder(scene: &Scene<'_>, lamb: LambId) -> bool {
    let (mut last, mut before, mut felt) = (None, None, None);
    for line in scene.flock.lines_of(Animal::Lamb(lamb)).filter(|line| !line.struck) {
        match &line.event {
            Event::TemperatureTaken { temperature, .. } => {
                before = last.replace((line.at, temperature.as_celsius()));
            }
            Event::Care(Care::MouthFelt { .. }) => felt = Some(line.at),
            _ => {}
        }
    }
    let before = before.filter(|(at, _)| felt.is_none_or(|felt| felt < *at)).map(|(_, celsius)| celsius);
    let before = before.filter(|celsius| *celsius <= 40.0);
    let animal = Animal::Lamb(lamb);
    let danger = |duty: &Duty| {
        duty.subject() == animal
            && (duty.state(scene.now) == State::Danger
                || matches!(duty.task, Task::Lamb(_, LambTask::Danger(_))))
    };
    let before = before.filter(|_| !scene.before.iter().any(danger));
    last.is_some_and(|(_, last)| before.map_or(last < 37.0, |before| last < before && last < 39.0))
}

/// What the very note answers, and nothing else: a reading, or a finger in the mouth, that a temperature is to be taken
/// again; a score that it is to be scored; a call that the vet is to be called, where the animal is not in danger (a
/// danger is no duty to call).
fn answers(event: &Event, duty: &Duty) -> bool {
    match event {
        Event::TemperatureTaken { .. } | Event::Care(Care::MouthFelt { .. }) => {
            matches!(duty.task, Task::Lamb(_, LambTask::TakeTemperature))
        }
        // A draw is what was asked for; of a ewe that aborted it is asked no more.
        Event::Illness(fact) if is_udder(duty) => match fact {
            Illness::UdderChecked { .. } => true,
            Illness::EweSeen { signs, .. } => signs.contains(&EweSign::Aborted),
            _ => false,
        },
        // A look is what a look was asked for, and the finger in the mouth that goes with it; whether she stands and eats is
        // asked of every ewe that is not right.
        Event::Illness(_) => matches!(
            duty.task,
            Task::Ewe(_, EweTask::IllLook { .. } | EweTask::Settled)
                | Task::Lamb(_, LambTask::IllLook { .. } | LambTask::HardBirth | LambTask::TakeTemperature)
        ),
        Event::VigorScored { .. } => matches!(duty.task, Task::Lamb(_, LambTask::ScoreVigor)),
        // A call that is due today is answered by it; one that is due now is a danger, and is not.
        Event::VetCalled { .. } => matches!(
            duty.task,
            Task::Lamb(_, LambTask::CallVet | LambTask::Ill { now: false, .. })
                | Task::Ewe(_, EweTask::Ill { now: false, .. })
        ),
        _ => false,
    }
}

const fn is_udder(duty: &Duty) -> bool {
    matches!(duty.task, Task::Ewe(_, EweTask::Udder { .. }))
}
