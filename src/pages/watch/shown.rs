//! What the Watch shows of each animal, worked out from the duties: what is due, its buttons, who is near.

use std::collections::BTreeMap;

use yeanling_core::arrange::{Arrange, Gather};
use yeanling_core::book::{Animal, Awaited, Care, Event, EweId};
use yeanling_core::flock::{Ewe, Flock, Labor, SIGNS_FOR};
use yeanling_core::units::{Moment, System, TimeDelta};
use yeanling_core::watch::{Discharge, Duty, EweTask, LambTask, State, Task, may_be_well};

use yeanling_words::common::{clock, span};
use yeanling_words::why::LaborClock;
use yeanling_words::{ahead as ahead_words, animals, danger, illness, labor, pens, watch as words};

use super::lamb::{lamb, lamb_to};
use crate::block::Fact;
use crate::duty_ribbon::duty_ribbon;
use crate::ribbon::Ribbon;
use crate::view::View;
use crate::{Reason, Screen, Sheet};

/// One animal on the Watch, with all that is due for it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Shown {
    pub(super) animal: Animal,
    pub(super) state: Option<State>,
    /// The state in whose place it stands: its own, unless it keeps its place.
    pub(super) stood: Option<State>,
    pub(super) name: String,
    pub(super) kind: String,
    pub(super) text: String,
    pub(super) says: String,
    /// What stood where its text does, and its room is kept; nothing unless it keeps its place.
    pub(super) text_room: String,
    /// The same for what it says.
    pub(super) says_room: String,
    pub(super) figure: String,
    pub(super) figure_says: String,
    /// Where its words lead.
    pub(super) to: Screen,
    pub(super) button: Option<Act>,
    pub(super) others: Vec<Act>,
    pub(super) first: Option<Duty>,
    /// The ribbon of first milk.
    pub(super) milk: Option<Ribbon>,
    /// That of her labor.
    pub(super) labor: Option<Ribbon>,
    pub(super) facts: Vec<Fact>,
    /// What "why?" is asked about, and the reason.
    pub(super) why: Option<(&'static str, Reason)>,
    /// The pen it is in; nothing for the barn.
    pub(super) place: Option<String>,
}

/// A button of a row.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Act {
    /// What tells it from those beside it.
    pub(super) key: String,
    pub(super) label: String,
    pub(super) does: Does,
}

/// What a tap does.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Does {
    /// Notes this.
    Notes(Event),
    /// Asks for what must be chosen first, on a sheet.
    Asks(Sheet),
    /// Leads to where something must be read first.
    Leads(Screen),
    /// Nothing: this was done, and a tick stands in its place.
    Done(Box<Self>),
    /// Nothing: this is not asked for any more, and its place stays empty.
    Over(Box<Self>),
}

impl Act {
    /// Says whether another button says and does the same.
    pub(super) fn is(&self, other: &Self) -> bool {
        (&self.label, &self.does) == (&other.label, &other.does)
    }
}

impl Does {
    /// Returns what it did before it was done or over.
    pub(super) fn meant(&self) -> &Self {
        match self {
            Self::Done(meant) | Self::Over(meant) => meant,
            Self::Notes(_) | Self::Asks(_) | Self::Leads(_) => self,
        }
    }
}

/// A ewe that is near, by signs or by her days.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Near {
    pub(super) ewe: EweId,
    pub(super) name: String,
    pub(super) text: String,
    pub(super) place: Option<String>,
}

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
    order.iter().filter_map(|(animal, duties)| one(view, *animal, duties, now)).collect()
}

/// A ewe is told of when this much speaks for the next 24 hours (ours).
const LIKELY_FROM: f64 = 0.03;
/// So many at most stand under tonight; the others stand in the season (ours).
const MOST_NEAR: usize = 10;

/// Returns the ewes that may lamb tonight: those with signs of whom no mating is known first, the latest sign first;
/// then by the chance of the next 24 hours, for which signs weigh more than dates.
pub(super) fn near(view: &View) -> Vec<Near> {
    let (flock, now) = (view.flock, view.now);
    let mut signs: BTreeMap<EweId, (Moment, String)> =
        flock.at_work.iter().filter_map(|id| Some((*id, signs_of(flock, *id, now)?))).gathered();
    let mut near: Vec<(f64, Near)> = Vec::new();
    for awaited in &view.outlooks.awaited {
        let Ok(outlook) = &awaited.outlook else { continue };
        let Some(ewe) = flock.ewe(awaited.ewe) else { continue };
        // Her labor has begun: she stands above, by the clock.
        if ewe.labor.as_ref().is_some_and(Labor::runs) {
            continue;
        }
        let sign = signs.remove(&ewe.id).map(|(_, text)| text);
        if sign.is_some() || outlook.within_24h >= LIKELY_FROM {
            let text = sign.into_iter().chain([ahead_words::within(outlook)]).collect::<Vec<_>>().join(" · ");
            let place = place(flock, Animal::Ewe(ewe.id));
            near.push((outlook.within_24h, Near { ewe: ewe.id, name: animals::ewe(ewe), text, place }));
        }
    }
    near.arrange_by(|(a, one), (b, other)| b.total_cmp(a).then(one.ewe.cmp(&other.ewe)));
    let mut known_by_signs: Vec<(Moment, Near)> = signs
        .into_iter()
        .filter_map(|(id, (last, text))| {
            let ewe = flock.ewe(id)?;
            let place = place(flock, Animal::Ewe(id));
            Some((last, Near { ewe: id, name: animals::ewe(ewe), text, place }))
        })
        .collect();
    known_by_signs.arrange_by_key(|(last, near)| (std::cmp::Reverse(*last), near.ewe));
    let first = known_by_signs.into_iter().map(|(_, near)| near);
    first.chain(near.into_iter().map(|(_, near)| near)).take(MOST_NEAR).collect()
}

/// Returns her latest sign and all of them in words; nothing once her labor runs or the last is old.
fn signs_of(flock: &Flock, id: EweId, now: Moment) -> Option<(Moment, String)> {
    let labor = flock.ewe(id)?.labor.as_ref().filter(|labor| !labor.runs())?;
    let (last, _) = labor.signs.last().filter(|(at, _)| now.since(*at) < SIGNS_FOR)?;
    let told =
        labor.signs.iter().map(|(at, sign)| format!("{} {}", labor::sign(*sign).to_lowercase(), clock(*at)));
    Some((*last, told.collect::<Vec<_>>().join(", ")))
}

fn place(flock: &Flock, animal: Animal) -> Option<String> {
    let (pen, _) = flock.pen_of(animal)?;
    flock.pens.get(&pen).map(pens::pen)
}

fn one(view: &View, animal: Animal, duties: &[&Duty], now: Moment) -> Option<Shown> {
    let flock = view.flock;
    let mut shown = match animal {
        Animal::Lamb(id) => lamb(view, flock.lamb(id)?, duties, now),
        Animal::Ewe(id) => ewe(flock, flock.ewe(id)?, duties, now),
    };
    shown.place = place(flock, animal);
    Some(shown)
}

fn ewe(flock: &Flock, ewe: &Ewe, duties: &[&Duty], now: Moment) -> Shown {
    let system = flock.practice.system;
    let first = duties.first().copied();
    // The labor's own clocks show their ribbon; what may go out of a pen is told without one.
    let clocked = first.filter(|duty| !matches!(duty.task, Task::Ewe(_, EweTask::LetOut)));
    let well = may_be_well(duties.iter().copied(), Animal::Ewe(ewe.id), now);
    let since = |duty: &Duty| labor::since(ewe.saw_at(duty.since), &clock(duty.since));
    Shown {
        animal: Animal::Ewe(ewe.id),
        state: first.map(|duty| duty.state(now)),
        stood: first.map(|duty| duty.state(now)),
        name: animals::ewe(ewe),
        kind: String::new(),
        text: text(duties, now, system),
        says: first.map(|duty| words::when(duty, now)).unwrap_or_default(),
        text_room: String::new(),
        says_room: String::new(),
        figure: clocked.map(|duty| span(now.since(duty.since))).unwrap_or_default(),
        figure_says: clocked.map(since).unwrap_or_default(),
        to: first.map_or(Screen::Ewe(ewe.id), |duty| leads_to(duty.task)),
        button: first.map(|duty| looked(act(duty, system), duty, well)),
        others: others(ewe.id, duties, system),
        first: first.cloned(),
        milk: None,
        labor: clocked.map(|duty| duty_ribbon(duty, now, false, &[])),
        facts: Vec::new(),
        why: first.and_then(LaborClock::of).map(|clock| (words::why_title(clock.task), Reason::Labor(clock))),
        place: None,
    }
}

/// Where what is to be done leads.
const fn leads_to(task: Task) -> Screen {
    match task {
        Task::Ewe(ewe, task) => ewe_to(ewe, task),
        Task::Lamb(lamb, task) => lamb_to(lamb, task),
    }
}

const fn ewe_to(ewe: EweId, task: EweTask) -> Screen {
    match task {
        EweTask::LetOut => Screen::Pens,
        EweTask::Afterbirth { .. } => Screen::Ewe(ewe),
        EweTask::Ill { .. } | EweTask::IllLook { .. } => Screen::IllEwe(ewe),
        EweTask::Look
        | EweTask::LongRestless
        | EweTask::HandCheck { .. }
        | EweTask::Progress
        | EweTask::NeckTight
        | EweTask::PutRight { .. }
        | EweTask::NextLamb { .. } => Screen::LambingEwe(ewe),
    }
}

pub(super) fn act(duty: &Duty, system: System) -> Act {
    let key = duty.task.kind().to_string();
    let does = match (&duty.discharge, duty.task) {
        (Discharge::Note(event), _) => Does::Notes(event.clone()),
        (Discharge::Open, task) if waits_for_word(duty) => {
            let does = Does::Asks(Sheet::Vet(task.subject()));
            return Act { key, label: danger::SAID.to_owned(), does };
        }
        (Discharge::Open, Task::Lamb(lamb, LambTask::Weigh { .. })) => Does::Asks(Sheet::Weight(lamb)),
        (Discharge::Open, Task::Lamb(lamb, LambTask::ScoreVigor)) => Does::Asks(Sheet::Vigor(lamb)),
        (Discharge::Open, task) => Does::Leads(leads_to(task)),
    };
    let called = matches!(&does, Does::Notes(Event::VetCalled { .. }));
    let label = if called { danger::CALLED.to_owned() } else { words::done(duty.task, system) };
    Act { key, label, does }
}

/// Says whether the vet was called about a duty that is the vet's, so that the next thing to note is what the vet said.
const fn waits_for_word(duty: &Duty) -> bool {
    let vets = matches!(
        duty.task,
        Task::Lamb(_, LambTask::Danger(_) | LambTask::CallVet)
            | Task::Lamb(_, LambTask::Ill { .. })
            | Task::Ewe(_, EweTask::NeckTight | EweTask::PutRight { .. } | EweTask::Ill { .. })
    );
    vets && duty.vet.is_some()
}

/// A look at a ewe says that all is well only where it may be.
fn looked(mut act: Act, duty: &Duty, may_be_well: bool) -> Act {
    if !may_be_well && matches!(duty.task, Task::Ewe(_, EweTask::Look)) {
        danger::LOOKED.clone_into(&mut act.label);
    }
    act
}

/// The buttons of a ewe beside the first, and those that are other answers to the first.
fn others(ewe: EweId, duties: &[&Duty], system: System) -> Vec<Act> {
    let note = |key: &str, label: &str, care: Care| Act {
        key: key.to_owned(),
        label: label.to_owned(),
        does: Does::Notes(Event::Care(care)),
    };
    let mut others = Vec::new();
    for (place, duty) in duties.iter().enumerate() {
        if place > 0 {
            let act = looked(act(duty, system), duty, false);
            // The same way is not offered twice.
            if !others.iter().any(|other: &Act| other.is(&act)) {
                others.push(act);
            }
        }
        match duty.task {
            Task::Ewe(_, EweTask::PutRight { .. }) => {
                others.push(note("was-put-right", danger::PUT_RIGHT, Care::PutRight { ewe }));
            }
            Task::Ewe(_, EweTask::Ill { .. }) => others.push(steps(ewe)),
            Task::Ewe(_, EweTask::Afterbirth { .. }) => {
                others.extend([("hangs", Awaited::Hanging), ("not-seen", Awaited::NotSeenBright)].map(
                    |(key, seen)| note(key, labor::awaited(seen), Care::AfterbirthAwaited { ewe, seen }),
                ));
            }
            Task::Ewe(
                _,
                EweTask::Look
                | EweTask::LongRestless
                | EweTask::HandCheck { .. }
                | EweTask::Progress
                | EweTask::NeckTight
                | EweTask::NextLamb { .. }
                | EweTask::LetOut
                | EweTask::IllLook { .. },
            )
            | Task::Lamb(..) => {}
        }
    }
    others
}

/// The way to what to do for a ewe that is not right, where the vet's button stands first.
fn steps(ewe: EweId) -> Act {
    Act {
        key: "ill-steps".to_owned(),
        label: illness::STEPS.to_owned(),
        does: Does::Leads(Screen::IllEwe(ewe)),
    }
}

/// What a duty asks for, and what is known of the vet.
pub(super) fn told(duty: &Duty, system: System) -> String {
    let task = words::task(duty.task, system);
    let called = duty.vet.as_ref().map(danger::called);
    [Some(task), called].into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// What is due, all of it; when nothing is, what comes first.
fn text(duties: &[&Duty], now: Moment, system: System) -> String {
    let tasks: Vec<String> = due(duties, now).iter().map(|duty| told(duty, system)).collect();
    tasks.join(" · ")
}

/// What is due; when nothing is, what comes first.
pub(super) fn due<'a>(duties: &'a [&'a Duty], now: Moment) -> &'a [&'a Duty] {
    let due = duties.iter().filter(|duty| duty.state(now) > State::Coming).count().max(1);
    &duties[..due.min(duties.len())]
}
