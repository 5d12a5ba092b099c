//! What the Watch shows of each animal, worked out from the duties: its job, its time, its one button.
//!
//! The job is the need that presses most: what a life hangs on goes before what is only later, and that is told beside it.

use std::collections::BTreeMap;

use yeanling_core::book::Animal;
use yeanling_core::flock::{Ewe, Flock};
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{Duty, EweTask, State, Task, may_be_well};
use yeanling_words::why::LaborClock;
use yeanling_words::{animals, danger, watch as words};

use super::acts::{Act, act, answers, leads_to};
use super::lamb::lamb;
use super::seat::{Seat, seat};
use crate::block::Fact;
use crate::duty_ribbon::duty_ribbon;
use crate::ribbon::Ribbon;
use crate::view::View;
use crate::{Reason, Screen};

/// One animal on the Watch, with all that is due for it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Shown {
    pub(super) animal: Animal,
    pub(super) state: Option<State>,
    /// The state in whose place it stands: its own, unless it keeps its place.
    pub(super) stood: Option<State>,
    pub(super) name: String,
    pub(super) kind: String,
    /// Its job; in danger the sign.
    pub(super) text: String,
    /// The next step, in danger.
    pub(super) step: String,
    pub(super) says: String,
    /// What stood where these three do, and its room is kept; nothing unless it keeps its place.
    pub(super) rooms: Rooms,
    /// Whether no life hangs on what is due: it is told, and does not shout.
    pub(super) soft: bool,
    /// Whether something holds it back from milk: no volume may stand beside it.
    pub(super) held: bool,
    /// Where its words lead.
    pub(super) to: Screen,
    pub(super) button: Option<Act>,
    pub(super) others: Vec<Act>,
    /// All that could be pressed for it: what was a button stays one as long as it is asked for.
    pub(super) offers: Vec<Act>,
    pub(super) ribbon: Option<Ribbon>,
    pub(super) facts: Vec<Fact>,
    /// What "why?" is asked about, and the reason.
    pub(super) why: Option<(&'static str, Reason)>,
    pub(super) seat: Seat,
}

/// The texts whose room is kept.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Rooms {
    pub(super) text: String,
    pub(super) step: String,
    pub(super) says: String,
}

/// What weighs more than this is told when it is late, and does not shout (ours): a navel, a score, a ring.
const SOFT_OVER: u8 = 1;

/// Returns the animals that are on the Watch: those with something due, and lambs in their first day.
pub(super) fn shown(view: &View, now: Moment) -> Vec<Shown> {
    let flock = view.flock;
    let mut order: Vec<(Animal, Vec<&Duty>)> = Vec::new();
    let mut places: BTreeMap<Animal, usize> = BTreeMap::new();
    for duty in view.duties.iter() {
        let place = *places.entry(duty.subject()).or_insert(order.len());
        match order.get_mut(place) {
            Some((_, of)) => of.push(duty),
            None => order.push((duty.subject(), vec![duty])),
        }
    }
    let newborns = flock.born_after(now - TimeDelta::hours(24)).filter(|lamb| lamb.lives());
    let well = newborns.map(|lamb| Animal::Lamb(lamb.id)).filter(|animal| !places.contains_key(animal));
    order.extend(well.map(|animal| (animal, Vec::new())));
    let mut rows: Vec<Shown> =
        order.iter().filter_map(|(animal, duties)| one(view, *animal, duties, now)).collect();
    // A ribbon tells what a glance can take in once: that of the most urgent that is not told as danger.
    if let Some(first) = rows.iter_mut().find(|one| one.state.is_some_and(|state| state < State::Danger)) {
        first.seat.leads = true;
    }
    rows
}

fn one(view: &View, animal: Animal, duties: &[&Duty], now: Moment) -> Option<Shown> {
    let flock = view.flock;
    let seat = seat(flock, animal, duties, now);
    match animal {
        Animal::Lamb(id) => Some(lamb(view, flock.lamb(id)?, duties, seat, now)),
        Animal::Ewe(id) => Some(ewe(flock, flock.ewe(id)?, duties, seat, now)),
    }
}

fn ewe(flock: &Flock, ewe: &Ewe, duties: &[&Duty], seat: Seat, now: Moment) -> Shown {
    let system = flock.settings.system;
    let job = job(duties, now);
    let state = duties.first().map(|duty| duty.state(now));
    let well = may_be_well(duties.iter().copied(), Animal::Ewe(ewe.id), now);
    // The labor's own clocks have a ribbon; what may go out of a pen is told without one.
    let clocked = job.filter(|duty| !matches!(duty.task, Task::Ewe(_, EweTask::LetOut)));
    let Told { text, step, says } = job.map(|job| told(job, duties, now, system)).unwrap_or_default();
    let button = job.map(|duty| act(duty, well, system));
    let others: Vec<Act> = job.and_then(|duty| other(ewe, duty, state)).into_iter().collect();
    let offers = offers(duties, button.as_ref(), &others, system);
    Shown {
        animal: Animal::Ewe(ewe.id),
        state,
        stood: state,
        name: animals::ewe(ewe),
        kind: if state == Some(State::Danger) { String::new() } else { more(duties, now) },
        text,
        step,
        says,
        rooms: Rooms::default(),
        soft: is_soft(duties, now),
        held: false,
        to: job.map_or(Screen::Ewe(ewe.id), |duty| leads_to(duty.task)),
        button,
        others,
        offers,
        ribbon: clocked.map(|duty| duty_ribbon(duty, now, false, &[])),
        facts: Vec::new(),
        why: job.and_then(LaborClock::of).map(|clock| (words::why_title(clock.task), Reason::Labor(clock))),
        seat,
    }
}

/// Returns all that could be pressed for an animal, what its row offers first.
pub(super) fn offers(duties: &[&Duty], button: Option<&Act>, others: &[Act], system: System) -> Vec<Act> {
    let mut all: Vec<Act> = button.into_iter().chain(others).cloned().collect();
    for act in duties.iter().map(|duty| act(duty, false, system)) {
        if !all.iter().any(|one| one.is(&act)) {
            all.push(act);
        }
    }
    all
}

/// The one further answer on her card: in danger, what ends it; of the udder and of a ewe after lambing, what is not well.
/// All others are on her page.
fn other(ewe: &Ewe, duty: &Duty, state: Option<State>) -> Option<Act> {
    let Task::Ewe(_, task) = duty.task else { return None };
    let asks = matches!(task, EweTask::Ill { .. } | EweTask::Udder { .. } | EweTask::Settled);
    let told = state == Some(State::Danger) || asks;
    told.then(|| answers(ewe.id, task).into_iter().next()).flatten()
}

/// What a row says.
#[derive(Debug, Default)]
pub(super) struct Told {
    pub(super) text: String,
    pub(super) step: String,
    pub(super) says: String,
}

/// Returns the duty that a row is about: what is in danger, else of those due the one that weighs most; when nothing is due,
/// what comes first.
pub(super) fn job<'a>(duties: &[&'a Duty], now: Moment) -> Option<&'a Duty> {
    let first = duties.first().copied()?;
    if first.state(now) == State::Danger {
        return Some(first);
    }
    let due = duties.iter().take_while(|duty| duty.state(now) > State::Coming);
    due.min_by_key(|duty| duty.task.weight()).copied().or(Some(first))
}

/// Returns what a row says of its job; in danger sign and step apart, and what is known of the vet.
pub(super) fn told(job: &Duty, duties: &[&Duty], now: Moment, system: System) -> Told {
    let task = words::job(job.task, system);
    let called = job.vet.as_ref().map(danger::called);
    if job.state(now) == State::Danger {
        let (text, step) = danger::sign_and_step(&task);
        return Told { text, step, says: called.unwrap_or_else(|| words::when(job, now)) };
    }
    let text = [Some(task), called].into_iter().flatten().collect::<Vec<_>>().join(" · ");
    // What is later than the job is told too: lateness is never left to the tint.
    let later = duties.first().filter(|first| first.state(now) > job.state(now));
    Told { text, step: String::new(), says: words::need(job, later.copied(), now) }
}

/// Says how much more is due than the job.
pub(super) fn more(duties: &[&Duty], now: Moment) -> String {
    words::more(due(duties, now).len().saturating_sub(1))
}

/// What is due; when nothing is, what comes first.
pub(super) fn due<'a>(duties: &'a [&'a Duty], now: Moment) -> &'a [&'a Duty] {
    let due = duties.iter().filter(|duty| duty.state(now) > State::Coming).count().max(1);
    &duties[..due.min(duties.len())]
}

/// Says whether no life hangs on anything that is late.
pub(super) fn is_soft(duties: &[&Duty], now: Moment) -> bool {
    duties.iter().filter(|duty| duty.state(now) > State::Now).all(|duty| duty.task.weight() > SOFT_OVER)
}
