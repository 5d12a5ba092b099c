//! One lamb: the window, the next feed, what to look at, and all that was noted.

mod care;
mod charts;
mod dam;
mod feeding;
mod fits;
mod look;
mod weaning;

use yeanling_core::book::{Animal, Event, LambId, Life};
use yeanling_core::flock::Lamb;
use yeanling_core::reckon::window;
use yeanling_core::units::TimeDelta;
use yeanling_core::watch::{Duty, LambTask, State, Task};
use yeanling_words::common::{mass, span};
use yeanling_words::why::headings;
use yeanling_words::{animals, danger, frame, illness, lamb as words, life, noted, past, watch};

pub(crate) use dam::{save as save_dam, sheet as dam_sheet, typed as typed_dam};
pub(crate) use weaning::{save_solids, solids_sheet};

use crate::block::{Figure, FigureSize, Kind, Notice, NoticeKind};
use crate::draft::Draft;
use crate::milk::before;
use crate::milk_ribbon::milk_ribbon;
use crate::page::{Blocks, Page, why};
use crate::view::View;
use crate::{Action, Button, Effect, Reason, Screen, Sheet, due_now, timeline, withdrawal};

/// What only this screen knows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Keeps a ewe lamb as a ewe, and goes to her.
    Keep(LambId),
}

/// Does what only this screen knows.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Keep(lamb) => {
            let kept = view.noting(Event::Life(Life::KeptAsEwe { lamb }));
            let ewe = kept.id.as_ewe();
            let mut effects = draft.note(view, vec![kept]);
            if !effects.is_empty() {
                effects.push(Effect::Go(Screen::Ewe(ewe)));
            }
            effects
        }
    }
}

/// Returns the screen.
pub(crate) fn page(view: &View, id: LambId) -> Page {
    let (to, name) = view.back(Screen::Lamb(id));
    let Some(lamb) = view.flock.lamb(id) else {
        return Page::new(frame::NOT_HERE).back(to, name).blocks(Blocks::new().gone());
    };
    let here = if lamb.lives() { living(view, lamb) } else { gone(view, lamb) };
    Page::new(animals::lamb(view.flock, lamb))
        .back(to, name)
        .under(words::about(view.flock, lamb, view.now))
        .blocks(
            here.then(if fits::growth_is_first(view, lamb) {
                Blocks::new()
            } else {
                charts::weights(view, lamb)
            })
            .then(timeline::of_animal(view, Animal::Lamb(lamb.id)))
            .then(family(view, lamb)),
        )
}

/// Returns what stands of a lamb that is here no more.
fn gone(view: &View, lamb: &Lamb) -> Blocks {
    let said = match (&lamb.left, lamb.kept) {
        (Some(left), _) => life::left(left),
        (None, Some(ewe)) => life::kept(&animals::ewe_of(view.flock, ewe)),
        (None, None) => words::DEAD.to_owned(),
    };
    let animal = Animal::Lamb(lamb.id);
    let then = lamb.left.as_ref().and_then(|left| lamb.last_weight(left.at)).map(|weight| weight.mass);
    let more = life::gone_more(&view.flock.gone(animal), then, view.system());
    let mut blocks = Blocks::new().notice("gone", NoticeKind::Calm, said, []).text(more);
    if !lamb.born_alive {
        blocks = blocks.then(born_dead(view, lamb));
    }
    if lamb.died.is_some() || !lamb.born_alive {
        let ask = Action::Ask(Sheet::Examined(animal));
        blocks = blocks.button(Button::new("examined", life::EXAMINED, ask));
    }
    if let Some(ewe) = lamb.kept {
        blocks = blocks.button(Button::new("as-ewe", words::AS_EWE, Action::Go(Screen::Ewe(ewe))));
    }
    blocks
}

/// What is still noted of a lamb that was born dead: its sex, its weight and the cause.
fn born_dead(view: &View, lamb: &Lamb) -> Blocks {
    let asks = |key: &'static str, label: &str, sheet: Sheet| Button::new(key, label, Action::Ask(sheet));
    let weighed = lamb.weights.last().map(|weight| mass(weight.mass, view.system()));
    let cause = lamb.died.map(|died| noted::cause(died.cause).to_owned());
    let told = life::born_dead(animals::sex(lamb.sex), weighed.as_deref(), cause.as_deref());
    let cause = match lamb.died {
        None => vec![asks("cause", life::CAUSE, Sheet::Death(Animal::Lamb(lamb.id)))],
        Some(_) => Vec::new(),
    };
    let buttons = [
        asks("sex", words::SEX, Sheet::Amend(lamb.id.entry())),
        asks("weigh", words::WEIGH, Sheet::Weight(lamb.id)),
    ];
    Blocks::new().text(told).buttons(2, buttons.into_iter().chain(cause))
}

/// Returns what stands of a lamb that lives.
fn living(view: &View, lamb: &Lamb) -> Blocks {
    let newborn = is_newborn(view, lamb);
    let ill = Action::Go(Screen::IllLamb(lamb.id));
    let mut blocks = withdrawal::notice(view, Animal::Lamb(lamb.id))
        .then(in_danger(view, lamb))
        .then(due_now::blocks(view, Animal::Lamb(lamb.id)))
        .then(fits::growth(view, lamb))
        .button(Button::new("not-right", illness::lamb::NOT_RIGHT, ill));
    if lamb.age(view.now) >= fits::FROM {
        return blocks.then(fits::blocks(view, lamb));
    }
    // In danger the long time left would be a comfort that it has not.
    if newborn && danger(view, lamb).is_none() {
        blocks = blocks.section("first-milk", words::FIRST_MILK, first_milk(view, lamb));
    }
    blocks = blocks.then(feeding::blocks(view, lamb));
    if newborn {
        blocks = blocks.then(charts::first_day_milk(view, lamb));
    }
    blocks
        .section("temperature", words::TEMPERATURE, care::warmth(view, lamb))
        .then(weaning::blocks(view, lamb))
        .section("look", words::LOOK, look::looks(view, lamb, &[]))
        .then(care::birth_weight(view, lamb))
        .then(care::marking(view, lamb))
        .then(look::register(view, lamb))
}

/// Says whether the window of first milk is open.
fn is_newborn(view: &View, lamb: &Lamb) -> bool {
    lamb.age(view.now) < TimeDelta::hours(24)
}

/// What its danger is, also once the vet has seen it.
fn danger<'a>(view: &'a View, lamb: &Lamb) -> Option<&'a Duty> {
    let is = |duty: &&Duty| {
        let grave = matches!(duty.task, Task::Lamb(_, LambTask::Danger(_) | LambTask::Ill { .. }));
        grave && duty.subject() == Animal::Lamb(lamb.id)
    };
    view.duties.iter().find(is)
}

/// The sign and the step, as on the Watch: one answer for one lamb.
fn in_danger(view: &View, lamb: &Lamb) -> Blocks {
    let Some(duty) = danger(view, lamb) else { return Blocks::new() };
    let task = watch::task(duty.task, view.system());
    let said = duty.vet.as_ref().map_or(task.clone(), |vet| danger::then(&task, &danger::called(vet)));
    let inside = Blocks::new().lead(said).into();
    Blocks::new().add("danger", Kind::Notice(Notice { kind: NoticeKind::Bad, inside, buttons: Vec::new() }))
}

/// The window of first milk: the time left in large figures, how it stands, and the ribbon.
fn first_milk(view: &View, lamb: &Lamb) -> Blocks {
    let age = lamb.age(view.now);
    // Once it should have had some, the long time left would tell a late lamb as a calm one.
    let hungry = view.duties.iter().any(|duty| {
        let of_it = matches!(duty.task, Task::Lamb(id, LambTask::FirstMilk { .. } | LambTask::DamDry { .. }) if id == lamb.id);
        of_it && duty.state(view.now) > State::Coming
    });
    let (value, also) = match window::left(age) {
        Some(left) if hungry => (span(age), watch::no_milk(&span(left))),
        Some(left) => (span(left), words::LEFT.to_owned()),
        None => (words::CLOSED.to_owned(), words::CLOSED_ALSO.to_owned()),
    };
    let says = words::stands(lamb, before(view, lamb), &view.settings().limits, view.now);
    let beside = Blocks::new().remark(says, [why(headings::WINDOW, Reason::Window(age))]).into();
    let figure = Figure { value, also, size: FigureSize::Head, beside, ..Figure::default() };
    let ribbon = milk_ribbon(lamb, view.now, true);
    Blocks::new().add("window", Kind::Figure(figure)).add("window-ribbon", Kind::Ribbon(ribbon))
}

/// The ways to who bore it and who rears it.
fn family(view: &View, lamb: &Lamb) -> Blocks {
    let name = |ewe| animals::ewe_of(view.flock, ewe);
    let mut blocks = Blocks::new();
    if let Some(ewe) = lamb.foster_dam() {
        let leads = Action::Go(Screen::Ewe(ewe));
        blocks = blocks.button(Button::new("rearer", words::reared_by(&name(ewe)), leads));
    }
    if let Some(sire) = lamb.sire.and_then(|sire| view.flock.ram(sire)) {
        let leads = Action::Go(Screen::Ewe(sire.id));
        blocks = blocks.button(Button::new("sire", past::sire(&animals::ewe(sire)), leads));
    }
    match lamb.dam {
        Some(dam) => {
            let wrong = Action::Ask(Sheet::Dam(lamb.id));
            blocks
                .button(Button::new("dam", words::dam(&name(dam)), Action::Go(Screen::Ewe(dam))))
                .button(Button::new("wrong-ewe", words::WRONG_EWE, wrong).quiet())
        }
        None => {
            let give = Action::Ask(Sheet::GiveDam(lamb.id));
            blocks.button(Button::new("dam", words::GIVE_DAM, give))
        }
    }
}
