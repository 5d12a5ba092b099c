//! What the Watch shows of a lamb: what is due, what keeps it from milk, the time that counts, its volumes.
//!
//! A newborn's large figure is the time left for first milk until it should have had some, then how long it has had
//! none: "21 h left" would tell a late lamb as a calm one.

use yeanling_core::book::{Animal, Event, LambId};
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::colostrum::{self, Want};
use yeanling_core::reckon::window;
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{Discharge, Duty, LambTask, State, Task, hold_milk};

use yeanling_words::common::{clock, span, volume, volume_number};
use yeanling_words::why::headings;
use yeanling_words::{animals, danger, illness, lamb as lamb_words, watch as words};

use super::shown::{Act, Does, Shown, act, due, told as told_of};
use crate::block::Fact;
use crate::milk_ribbon::milk_ribbon;
use crate::view::View;
use crate::{Reason, Screen};

/// Shows a lamb with all that is due for it.
pub(super) fn lamb(view: &View, lamb: &Lamb, duties: &[&Duty], now: Moment) -> Shown {
    let (flock, practice) = (view.flock, view.practice());
    let system = practice.system;
    let first = duties.first().copied();
    let newborn = lamb.age(now) < TimeDelta::hours(24);
    let want = lamb
        .birth_weight()
        .and_then(|weight| colostrum::want(weight, practice.day_rule, practice.housing).ok())
        .filter(|_| newborn);
    let acts = |duty: &&Duty| act(duty, system);
    let more = duties
        .iter()
        .skip(1)
        .map(acts)
        .chain(steps(lamb, duties))
        .chain(ill_steps(lamb, duties))
        .chain(seen_to_suck(lamb, duties));
    let mut others: Vec<Act> = Vec::new();
    for act in more.chain(feed_instead(lamb, duties, want.as_ref(), now, system)) {
        // The same way is not offered twice.
        if !others.iter().any(|other| other.is(&act)) {
            others.push(act);
        }
    }
    let in_danger = first.is_some_and(|duty| matches!(duty.task, Task::Lamb(_, LambTask::Danger(_))));
    // In danger the sign and the step are the headline: no clock of milk beside them.
    let newborn = newborn && !in_danger;
    let (figure, figure_says) = if in_danger { Default::default() } else { milk_figure(lamb, duties, now) };
    Shown {
        animal: Animal::Lamb(lamb.id),
        state: first.map(|duty| duty.state(now)),
        stood: first.map(|duty| duty.state(now)),
        name: animals::lamb(flock, lamb),
        kind: kind(lamb, newborn, system),
        text: told(lamb, duties, now, system),
        says: first.map(|duty| words::when(duty, now)).unwrap_or_default(),
        text_room: String::new(),
        says_room: String::new(),
        figure,
        figure_says,
        to: Screen::Lamb(lamb.id),
        button: first.as_ref().map(acts),
        others,
        first: first.cloned(),
        milk: newborn.then(|| milk_ribbon(lamb, now, false)),
        labor: None,
        why: want.map(|want| (headings::COLOSTRUM, Reason::Milk(want))),
        // No volume stands beside a lamb that must not be given any.
        facts: want
            .filter(|_| hold_milk(lamb).is_none())
            .map(|want| facts(view, &want, lamb, now))
            .unwrap_or_default(),
        place: None,
    }
}

/// What is due, or that all is well. What keeps it from milk stands with the milk that is due, else before all, unless
/// something worse is told.
fn told(lamb: &Lamb, duties: &[&Duty], now: Moment, system: System) -> String {
    if duties.is_empty() && hold_milk(lamb).is_none() {
        return words::well(lamb, now);
    }
    let hold = hold_milk(lamb);
    let due = due(duties, now);
    // In danger what no life hangs on is left to its button: the sign and the step are read in three seconds.
    let in_danger = due.first().is_some_and(|duty| matches!(duty.task, Task::Lamb(_, LambTask::Danger(_))));
    let due: Vec<&Duty> = due.iter().copied().filter(|duty| !in_danger || duty.task.weight() == 0).collect();
    let task = |duty: &&Duty| {
        let task = told_of(duty, system);
        match hold.filter(|_| milk_must_wait(duty)) {
            Some(hold) => format!("{task}: {}", lamb_words::before_milk(hold, system)),
            None => task,
        }
    };
    let told = |duty: &&Duty| {
        let worse = matches!(
            duty.task,
            Task::Lamb(_, LambTask::CallVet | LambTask::Danger(_) | LambTask::Ill { .. })
        );
        milk_must_wait(duty) || worse
    };
    let held = hold.filter(|_| !due.iter().any(told));
    let held = held.map(|hold| lamb_words::held(hold, system));
    held.into_iter().chain(due.iter().map(task)).collect::<Vec<_>>().join(" · ")
}

/// Says whether a duty is one of milk that must wait.
const fn milk_must_wait(duty: &Duty) -> bool {
    matches!(duty.task, Task::Lamb(_, task) if task.milk_must_wait())
}

/// Where what is to be done for a lamb leads.
pub(super) const fn lamb_to(lamb: LambId, task: LambTask) -> Screen {
    if task.milk_must_wait() {
        return Screen::ColdLamb(Some(lamb));
    }
    match task {
        LambTask::Ill { .. } | LambTask::IllLook { .. } => Screen::IllLamb(lamb),
        LambTask::TakeTemperature
        | LambTask::Danger(_)
        | LambTask::FirstMilk { check: true, .. }
        | LambTask::Hollow { check: true, .. } => Screen::ColdLamb(Some(lamb)),
        LambTask::DipNavel
        | LambTask::DipNavelAgain
        | LambTask::GetUp
        | LambTask::FirstMilk { check: false, .. }
        | LambTask::Feed { .. }
        | LambTask::DayTotal { .. }
        | LambTask::Weigh { .. }
        | LambTask::ScoreVigor
        | LambTask::CallVet
        | LambTask::Hollow { check: false, .. }
        | LambTask::Look
        | LambTask::Ring { .. }
        | LambTask::WeaningCheck { .. } => Screen::Lamb(lamb),
    }
}

/// A lamb that is read before it is fed may be seen to suck meanwhile; not while milk must wait.
fn seen_to_suck(lamb: &Lamb, duties: &[&Duty]) -> Option<Act> {
    let read_first = |duty: &&Duty| {
        matches!(duty.task, Task::Lamb(_, LambTask::FirstMilk { check: true, hold: false, .. }))
    };
    duties.iter().any(read_first).then(|| Act {
        key: "sucked".to_owned(),
        label: lamb_words::SUCKED.to_owned(),
        does: Does::Notes(Event::Sucked { lamb: lamb.id }),
    })
}

/// The way to the steps for a cold lamb, where the vet's button stands first.
fn steps(lamb: &Lamb, duties: &[&Duty]) -> Option<Act> {
    let first = duties.first().filter(|duty| matches!(duty.task, Task::Lamb(_, LambTask::Danger(_))))?;
    let called = first.vet.is_some() || matches!(first.discharge, Discharge::Note(_));
    let to = Screen::ColdLamb(Some(lamb.id));
    called.then(|| Act { key: "steps".to_owned(), label: danger::STEPS.to_owned(), does: Does::Leads(to) })
}

/// The way to what to do for a lamb that is not right, where the vet's button stands first.
fn ill_steps(lamb: &Lamb, duties: &[&Duty]) -> Option<Act> {
    duties.iter().find(|duty| matches!(duty.task, Task::Lamb(_, LambTask::Ill { .. })))?;
    let does = Does::Leads(Screen::IllLamb(lamb.id));
    Some(Act { key: "ill-steps".to_owned(), label: illness::STEPS.to_owned(), does })
}

/// Says whether a duty is first milk that it should have had by now.
fn is_hungry(duty: &Duty, now: Moment) -> bool {
    matches!(duty.task, Task::Lamb(_, LambTask::FirstMilk { .. })) && duty.state(now) > State::Coming
}

/// The large figure of a newborn: the time left for first milk; once it should have had some, how long it has had none,
/// since the long time left would tell a late lamb as a calm one.
fn milk_figure(lamb: &Lamb, duties: &[&Duty], now: Moment) -> (String, String) {
    let hungry = |duty: &&Duty| is_hungry(duty, now);
    let age = lamb.age(now);
    let fed = lamb.feeds.last().map(|feed| feed.at);
    if let Some(left) = window::left(age).filter(|_| duties.iter().any(hungry)) {
        return (span(age), words::no_milk(&span(left)));
    }
    let says = match (lamb.sucked.last().copied(), fed) {
        (sucked, Some(fed)) if sucked.is_none_or(|sucked| sucked < fed) => words::left_fed(fed),
        (Some(sucked), _) => words::left_sucked(sucked),
        (None, _) => words::left(&words::age(age)),
    };
    (window::left(age).map(span).unwrap_or_default(), says)
}

/// A lamb that has waited too long for its dam can be fed: the way there, beside "it sucked"; not while milk must wait.
fn feed_instead(
    lamb: &Lamb,
    duties: &[&Duty],
    want: Option<&Want>,
    now: Moment,
    system: System,
) -> Option<Act> {
    let hungry = |duty: &&Duty| is_hungry(duty, now);
    duties.iter().find(|duty| hungry(duty))?;
    if hold_milk(lamb).is_some() {
        return None;
    }
    let label = match want {
        Some(want) => words::feed_it(&volume(want.next_feed.offered(system), system)),
        None => words::FEED_IT.to_owned(),
    };
    Some(Act { key: "feed-instead".to_owned(), label, does: Does::Leads(Screen::Lamb(lamb.id)) })
}

/// A few soft words: what it is, its weight, and in its first day its vigor.
fn kind(lamb: &Lamb, newborn: bool, system: System) -> String {
    let kind = animals::lamb_kind(lamb, system);
    match lamb.vigor.last() {
        Some(scored) if newborn => format!("{kind} · {}", words::vigor(scored)),
        Some(_) | None => kind,
    }
}

/// What it should take at the next feed and by 6, 18 and 24 hours in all, against what it was given by hand.
fn facts(view: &View, want: &Want, lamb: &Lamb, now: Moment) -> Vec<Fact> {
    let system = view.system();
    let given = lamb.given_first_day(now);
    let by = |wanted, hours: i64| {
        let at = clock((view.here)(lamb.born + TimeDelta::hours(hours)));
        let wanted = volume_number(wanted, system);
        let text =
            if lamb.feeds.is_empty() { wanted } else { words::of(&volume_number(given, system), &wanted) };
        Fact::new(text, words::by(&at))
    };
    vec![
        Fact::new(volume(want.next_feed.offered(system), system), words::A_FEED),
        by(want.by_6h, 6),
        by(want.by_18h, 18),
        by(want.by_24h, 24),
    ]
}
