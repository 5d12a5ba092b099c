//! What the Watch shows of a lamb: its job, what keeps it from milk, how long it has been unfed, its volumes while milk is
//! wanted.
//!
//! The headline is the need: the long time left for first milk would tell a late lamb as a calm one.

use yeanling_core::book::{Animal, LambId};
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::colostrum::{self, ColostrumTarget};
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{BeforeMilk, Completion, Duty, LambTask, State, Task, hold_milk, next_milk};

use yeanling_words::common::{clock, mass, volume, volume_number};
use yeanling_words::why::headings;
use yeanling_words::{animals, bottle_round, danger, illness, lamb as lamb_words, watch as words};

use super::acts::{Act, Does, act};
use super::seat::{Seat, reared_by};
use super::shown::{Rooms, Shown, Told, due, is_soft, job, more, offers, told as told_of};
use crate::block::Fact;
use crate::milk::{before, leads};
use crate::milk_ribbon::milk_ribbon;
use crate::view::View;
use crate::{Reason, Screen, Sheet};

/// Shows a lamb with all that is due for it.
pub(super) fn lamb(view: &View, lamb: &Lamb, duties: &[&Duty], seat: Seat, now: Moment) -> Shown {
    let (flock, settings) = (view.flock, view.settings());
    let system = settings.system;
    let newborn = lamb.age(now) < TimeDelta::hours(24);
    let target = lamb
        .birth_weight()
        .and_then(|weight| colostrum::target(weight, settings.day_rule, settings.housing).ok())
        .filter(|_| newborn);
    let job = job(duties, now);
    let state = duties.first().map(|duty| duty.state(now));
    let Told { text, step, says } = told(lamb, job, duties, now, system);
    let main = job.map(|job| act(job, false, system));
    let other = job.and_then(|job| other(view, lamb, job, target.as_ref(), now));
    // The same way is not offered twice.
    let other = other.filter(|other| !main.as_ref().is_some_and(|main| main.is(other)));
    let others: Vec<Act> = other.into_iter().collect();
    let offers = offers(duties, main.as_ref(), &others, system);
    Shown {
        animal: Animal::Lamb(lamb.id),
        state,
        stood: state,
        name: animals::lamb(flock, lamb),
        kind: kind(view, lamb, duties, newborn, now),
        text,
        step,
        says,
        rooms: Rooms::default(),
        soft: is_soft(duties, now),
        held: before(view, lamb).is_some(),
        to: Screen::Lamb(lamb.id),
        button: main,
        others,
        offers,
        ribbon: newborn.then(|| milk_ribbon(lamb, now, false)),
        facts: target
            .filter(|_| wants_milk(view, lamb, duties))
            .map(|target| facts(view, &target, lamb, now))
            .unwrap_or_default(),
        why: target.map(|target| (headings::COLOSTRUM, Reason::Milk(target))),
        seat,
    }
}

/// Says whether milk is wanted and may be given: no volume stands beside a lamb that has had its own, or must not have any.
fn wants_milk(view: &View, lamb: &Lamb, duties: &[&Duty]) -> bool {
    let milk = |duty: &&Duty| {
        let is = matches!(
            duty.task,
            Task::Lamb(
                _,
                LambTask::FirstMilk { .. }
                    | LambTask::Feed { .. }
                    | LambTask::DayTotal { .. }
                    | LambTask::Hollow { .. }
                    | LambTask::DamDry { .. }
            )
        );
        is && duty.state(view.now) > State::Coming
    };
    before(view, lamb).is_none() && (lamb.first_milk().is_none() || duties.iter().any(milk))
}

/// What is due, or that all is well. What keeps it from milk stands with the milk that is due, else before all, unless
/// something worse is told.
fn told(lamb: &Lamb, job: Option<&Duty>, duties: &[&Duty], now: Moment, system: System) -> Told {
    let hold = hold_milk(lamb);
    let Some(job) = job else {
        let text = hold.map_or_else(|| words::well(lamb, now), |hold| lamb_words::held(hold, system));
        return Told { text, ..Told::default() };
    };
    let mut told = told_of(job, duties, now, system);
    let Some(hold) = hold else { return told };
    let before_milk = || lamb_words::before_milk(BeforeMilk::Hold(hold), system);
    if job.state(now) == State::Danger {
        // What no life hangs on is left to its page: the sign and the step are read in three seconds.
        let waits = due(duties, now).iter().find(|duty| milk_must_wait(duty));
        if let Some(duty) = waits {
            told.step = format!("{} · {}: {}", told.step, words::job(duty.task, system), before_milk());
        }
    } else if milk_must_wait(job) {
        told.text = format!("{}: {}", told.text, before_milk());
    } else if !matches!(
        job.task,
        Task::Lamb(_, LambTask::CallVet | LambTask::Danger(_) | LambTask::Ill { .. })
    ) {
        told.text = format!("{} · {}", lamb_words::held(hold, system), told.text);
    }
    told
}

/// Says whether a duty is one of milk that must wait.
const fn milk_must_wait(duty: &Duty) -> bool {
    matches!(duty.task, Task::Lamb(_, task) if matches!(task.before_milk(), Some(BeforeMilk::Hold(_))))
}

/// Where what is to be done for a lamb leads.
pub(super) const fn lamb_to(lamb: LambId, task: LambTask) -> Screen {
    if let Some(before) = task.before_milk()
        && let Some(leads) = leads(lamb, before)
    {
        return leads;
    }
    match task {
        LambTask::Ill { .. } | LambTask::IllLook { .. } => Screen::IllLamb(lamb),
        LambTask::TakeTemperature | LambTask::Danger(_) => Screen::ColdLamb(Some(lamb)),
        LambTask::DipNavel
        | LambTask::DipNavelAgain
        | LambTask::GetUp
        | LambTask::FirstMilk { .. }
        | LambTask::Feed { .. }
        | LambTask::DayTotal { .. }
        | LambTask::Weigh { .. }
        | LambTask::ScoreVigor
        | LambTask::CallVet
        | LambTask::Hollow { .. }
        | LambTask::DamDry { .. }
        | LambTask::WeighAgain
        | LambTask::HardBirth
        | LambTask::Look
        | LambTask::Ring { .. }
        | LambTask::WeaningCheck { .. } => Screen::Lamb(lamb),
    }
}

/// The one further answer on its card: of a danger the steps, of a lamb that waits for milk the other way to it, of a feed
/// another amount. All others are on its page.
fn other(view: &View, lamb: &Lamb, job: &Duty, target: Option<&ColostrumTarget>, now: Moment) -> Option<Act> {
    let Task::Lamb(id, task) = job.task else { return None };
    let system = view.system();
    if matches!(task, LambTask::Danger(_)) {
        let called = job.vet.is_some() || matches!(job.completion, Completion::Note(_));
        return called.then(|| Act::new("steps", danger::STEPS, Does::Leads(Screen::ColdLamb(Some(id)))));
    }
    if matches!(task, LambTask::HardBirth) {
        return Some(Act::new("not-right", illness::TITLE, Does::Leads(Screen::IllLamb(id))));
    }
    if matches!(task, LambTask::Ill { .. }) {
        return Some(Act::new("ill-steps", illness::STEPS, Does::Leads(Screen::IllLamb(id))));
    }
    if before(view, lamb).is_some() {
        return None;
    }
    let ask = |volume| Does::Asks(Sheet::Feed(id, volume, next_milk(view.flock, lamb, now, view.settings())));
    match task {
        LambTask::FirstMilk { before: None, .. } if job.state(now) > State::Coming => {
            let next = target.map(|target| target.next_feed.offered(system));
            let label =
                next.map_or_else(|| words::FEED_IT.to_owned(), |next| words::feed_it(&volume(next, system)));
            Some(Act::new("feed-instead", label, ask(next)))
        }
        LambTask::Feed { volume, before: None } if job.state(now) > State::Coming => {
            Some(Act::new("other-amount", bottle_round::OTHER, ask(volume)))
        }
        LambTask::FirstMilk { .. }
        | LambTask::Feed { .. }
        | LambTask::DipNavel
        | LambTask::DipNavelAgain
        | LambTask::GetUp
        | LambTask::DayTotal { .. }
        | LambTask::Weigh { .. }
        | LambTask::ScoreVigor
        | LambTask::TakeTemperature
        | LambTask::CallVet
        | LambTask::Danger(_)
        | LambTask::Hollow { .. }
        | LambTask::DamDry { .. }
        | LambTask::WeighAgain
        | LambTask::HardBirth
        | LambTask::Look
        | LambTask::Ring { .. }
        | LambTask::WeaningCheck { .. }
        | LambTask::Ill { .. }
        | LambTask::IllLook { .. } => None,
    }
}

/// A few soft words: who rears it where that is not its dam, what was seen in its first day, what more is due; its weight
/// where there is room for it.
fn kind(view: &View, lamb: &Lamb, duties: &[&Duty], newborn: bool, now: Moment) -> String {
    let state = duties.first().map(|duty| duty.state(now));
    let danger = state == Some(State::Danger);
    let seen = if newborn && state.is_some() && !danger { seen(lamb) } else { String::new() };
    let more = if danger { String::new() } else { more(duties, now) };
    let room = state <= Some(State::Coming) || danger || (seen.is_empty() && more.is_empty());
    let weight = lamb.weight().filter(|_| room).map(|weight| mass(weight, view.system())).unwrap_or_default();
    let said = [reared_by(view.flock, lamb), seen, more, weight].into_iter().filter(|said| !said.is_empty());
    said.collect::<Vec<_>>().join(" · ")
}

/// What was done for a newborn, each a small tick.
fn seen(lamb: &Lamb) -> String {
    let up = !lamb.stood.is_empty() || !lamb.sucked.is_empty();
    let milk = if lamb.sucked.is_empty() { words::TICK_FED } else { words::TICK_SUCKED };
    let all = [
        (up, words::TICK_UP),
        (!lamb.navel.is_empty(), words::TICK_DIPPED),
        (lamb.first_milk().is_some(), milk),
    ];
    words::ticks(all.into_iter().filter_map(|(is, word)| is.then_some(word)))
}

/// What it should take at the next feed and by 6, 18 and 24 hours in all, against what it was given by hand.
fn facts(view: &View, target: &ColostrumTarget, lamb: &Lamb, now: Moment) -> Vec<Fact> {
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
        Fact::new(volume(target.next_feed.offered(system), system), words::A_FEED),
        by(target.by_6h, 6),
        by(target.by_18h, 18),
        by(target.by_24h, 24),
    ]
}
