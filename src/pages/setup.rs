//! The first run: units and clock, kind of sheep, the vet's number and how many pens, on one screen; each may be left as it is.
//!
//! Nothing is noted until the one button is pressed, then all of it at once, so that one press takes it back.

use yeanling_core::book::Event;
use yeanling_core::settings::{BreedType, Choice as Chosen, Clock};
use yeanling_core::units::System;
use yeanling_words::{frame, settings, setup as words, vet};

use crate::block::{Choice, Choices, Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::phone::Hours;
use crate::view::View;
use crate::{Action, Button, Effect, Screen};

/// What only this screen does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Notes all that was chosen and typed, and leads to the flock.
    Done,
}

const UNITS: &str = "setup-units";
const CLOCK: &str = "setup-clock";
const SHEEP: &str = "setup-sheep";
const VET: &str = "setup-vet";
const PENS: &str = "setup-pens";

/// The most pens that are made at once (ours).
const MOST_PENS: u16 = 60;

const SYSTEMS: [System; 2] = [System::Metric, System::Us];
const CLOCKS: [Clock; 2] = [Clock::Twelve, Clock::TwentyFour];
const SHEEP_KINDS: [(BreedType, &str); 2] = [(BreedType::Hair, words::HAIR), (BreedType::Any, words::WOOL)];

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let fields = &draft.fields;
    let done = Action::Does(crate::Does::Setup(Does::Done));
    let units = SYSTEMS
        .iter()
        .enumerate()
        .map(|(place, system)| Choice::new(settings::system(*system), Action::Choose(UNITS.into(), place)));
    let system = system(view, fields);
    let units = Choices::new(words::UNITS, units.collect(), SYSTEMS.iter().position(|one| *one == system));
    let clocks = CLOCKS
        .iter()
        .enumerate()
        .map(|(place, clock)| Choice::new(settings::clock(*clock), Action::Choose(CLOCK.into(), place)));
    let clock = clock(view, fields);
    let clocks = Choices::new(settings::CLOCK, clocks.collect(), CLOCKS.iter().position(|one| *one == clock));
    let sheep = SHEEP_KINDS
        .iter()
        .enumerate()
        .map(|(place, (_, name))| Choice::new(*name, Action::Choose(SHEEP.into(), place)));
    let sheep = Choices::new(words::SHEEP, sheep.collect(), fields.chosen(SHEEP));
    let number = Field::new(vet::NUMBER, FieldKind::Phone, fields.text(VET, "")).error(fields.error(VET));
    let pens = Field::new(words::PENS, FieldKind::Whole, fields.text(PENS, ""))
        .hint(words::PENS_HINT)
        .error(fields.error(PENS));
    Page::new(words::TITLE)
        .under(words::SUB)
        .back(Screen::Watch, frame::WATCH)
        .blocks(
            Blocks::new()
                .section(
                    "units",
                    words::UNITS,
                    Blocks::new().choices(UNITS, units).choices(CLOCK, clocks).small(words::FROM_PHONE),
                )
                .section("sheep", words::SHEEP, Blocks::new().choices(SHEEP, sheep))
                .section("vet", vet::TITLE, Blocks::new().field(VET, number.hint(words::VET_HINT)))
                .section("pens", words::PENS_TITLE, Blocks::new().field(PENS, pens)),
        )
        .thumb(Blocks::new().button(Button::new("done", words::DONE, done).big().filled()))
}

/// The units that are chosen; those of the phone's region until then, or of a book that has some already.
fn system(view: &View, fields: &Fields) -> System {
    let of_region = if view.phone.region_us { System::Us } else { System::Metric };
    let stood = if view.book.is_empty() { of_region } else { view.system() };
    fields.pick(UNITS, &SYSTEMS, stood)
}

/// The clock that is chosen; until then the farm's own, or that of the phone's region.
fn clock(view: &View, fields: &Fields) -> Clock {
    let stood = match view.way().hours {
        Hours::Twelve => Clock::Twelve,
        Hours::TwentyFour => Clock::TwentyFour,
    };
    fields.pick(CLOCK, &CLOCKS, stood)
}

/// Does what only this screen knows.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Done => done(view, draft),
    }
}

fn done(view: &View, draft: &mut Draft) -> Vec<Effect> {
    draft.fields.all_right();
    let settings = view.settings();
    let mut events = Vec::new();
    let system = system(view, &draft.fields);
    if system != settings.system {
        events.push(Event::Chose(Chosen::System(system)));
    }
    if draft.fields.chosen(CLOCK).is_some() {
        let clock = clock(view, &draft.fields);
        let changes = clock != self::clock(view, &Fields::default());
        events.extend(changes.then_some(Event::Chose(Chosen::Clock(clock))));
    }
    let sheep = draft.fields.chosen(SHEEP).and_then(|place| SHEEP_KINDS.get(place)).map(|(kind, _)| *kind);
    if let Some(kind) = sheep.filter(|kind| *kind != settings.breed_type) {
        events.push(Event::Chose(Chosen::BreedType(kind)));
    }
    if let Some(number) = draft.fields.written(VET).filter(|number| *number != settings.vet_phones.day) {
        let fact = Event::Chose(Chosen::VetPhone(number));
        if let Err(rejection) = view.validate(&[view.noting(fact.clone())]) {
            let said = yeanling_words::rejections::rejection(&rejection, view.now, view.system());
            return draft.say_wrong(VET, said);
        }
        events.push(fact);
    }
    match pens(view, &draft.fields) {
        Ok(pens) => events.extend(pens),
        Err(wrong) => return draft.say_wrong(PENS, wrong),
    }
    let notings: Vec<_> = events.into_iter().map(|event| view.noting(event)).collect();
    let mut effects = if notings.is_empty() { Vec::new() } else { draft.note(view, notings) };
    if draft.refused.is_none() {
        draft.fields = Fields::default();
        effects.push(Effect::Go(Screen::Flock));
    }
    effects
}

/// The pens that are asked for, by their numbers; those whose number is there already are not made twice.
fn pens(view: &View, fields: &Fields) -> Result<Vec<Event>, String> {
    let Some(typed) = fields.written(PENS) else { return Ok(Vec::new()) };
    let count: u16 = typed
        .parse()
        .ok()
        .filter(|count| *count <= MOST_PENS)
        .ok_or_else(|| words::pens_wrong(&typed, MOST_PENS))?;
    let there = |name: &str| view.flock.pens.values().any(|pen| pen.closed.is_none() && pen.name == name);
    let names = (1..=count).map(|number| number.to_string()).filter(|name| !there(name));
    Ok(names.map(|name| Event::PenMade { name, size: None }).collect())
}
