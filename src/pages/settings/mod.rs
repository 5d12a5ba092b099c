//! Farm settings in six parts: the farm's choices, each noted in the book as it is made, and the look of this phone, which
//! is not. Each part has a way back to its defaults.

mod care;
mod cull_rules;
mod limits;
mod milk;
mod part;
mod vet;

use yeanling_core::book::Event;
use yeanling_core::settings::{BottleTable, Choice, Clock, DayRule, FarmSettings, Housing};
use yeanling_core::units::System;
use yeanling_words::{frame, settings as words};

use limits::Together;
pub use part::Part;
use vet::Of;

use crate::block::{self, Choices, Field, FieldKind, Row};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::phone::Look;
use crate::view::View;
use crate::{Action, Button, Effect, Key, Request, Screen, timeline};

/// What only this screen does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Goes back to the defaults of a part.
    Defaults(Part),
    /// Saves the farm's name.
    SaveName,
    /// Saves one of the vet's numbers.
    SaveNumber(Of),
    /// Saves the strength on the powder's label.
    SaveRate,
    /// Saves the farm's own limit for rings.
    SaveRingDays,
    /// Saves a group of limits.
    SaveLimits(Together),
    /// The field of a mark for keeping or culling is left, by its place.
    LeaveMark(usize),
}

const NAME: &str = "practice-name";

const SYSTEMS: [System; 2] = [System::Metric, System::Us];
const CLOCKS: [Clock; 3] = [Clock::Phone, Clock::Twelve, Clock::TwentyFour];
const DAY_RULES: [DayRule; 3] = [DayRule::Ahdb200, DayRule::Ruma210, DayRule::TenPercent];
const HOUSINGS: [Housing; 2] = [Housing::Housed, Housing::Outdoors];
const TABLES: [BottleTable; 2] = [BottleTable::VetSupplier, BottleTable::UsHandbook];
const LOOKS: [(Look, &str); 3] =
    [(Look::Phone, words::LOOK_PHONE), (Look::Day, words::LOOK_DAY), (Look::Night, words::LOOK_NIGHT)];

/// Returns the screen: the way to each part, with how much the farm changed there.
pub(crate) fn page(view: &View) -> Page {
    let row = |part: Part| {
        let text = match part {
            Part::Display => part.about().to_owned(),
            _ => words::part(part.about(), part.defaults(view.settings()).len()),
        };
        let key = format!("part-{part:?}").to_lowercase();
        (key, Row::new(part.title()).text(text).to(Screen::SettingsOf(part)))
    };
    Page::new(words::TITLE)
        .under(words::SUB)
        .back(Screen::Farm, frame::FARM)
        .blocks(Blocks::new().rows("parts", Part::ALL.map(row)).then(timeline::of_choices(view)))
}

/// Returns one part.
pub(crate) fn part_page(view: &View, draft: &Draft, part: Part) -> Page {
    let (settings, fields) = (view.settings(), &draft.fields);
    let blocks = match part {
        Part::Farm => farm_name(settings, fields)
            .then(units(settings))
            .then(care::breed_type(settings))
            .then(care::latitude(settings))
            .then(newborns(settings)),
        Part::Vet => vet::blocks(view, fields),
        Part::AlertTimes => Together::ALL
            .into_iter()
            .fold(Blocks::new(), |blocks, together| blocks.then(limits::blocks(settings, fields, together))),
        Part::Feeding => rules(settings).then(milk::blocks(view, fields)),
        Part::Care => {
            care::blocks(settings, fields).then(milk::chill(settings)).then(cull_rules::blocks(view, fields))
        }
        Part::Display => look(view.phone.look),
    };
    Page::new(part.title()).back(Screen::Settings, words::TITLE).blocks(blocks.then(defaults(view, part)))
}

/// The way back to the defaults, where something was changed.
fn defaults(view: &View, part: Part) -> Blocks {
    let changed = match part {
        // A number is nobody's default.
        Part::Vet => return Blocks::new(),
        Part::Display => view.phone.look != Look::default(),
        Part::Farm | Part::AlertTimes | Part::Feeding | Part::Care => {
            !part.defaults(view.settings()).is_empty()
        }
    };
    if !changed {
        return Blocks::new().small(words::ALL_DEFAULTS);
    }
    let sub = if part == Part::Farm { words::DEFAULTS_FARM } else { words::DEFAULTS_SUB };
    let does = Action::Does(crate::Does::FarmSettings(Does::Defaults(part)));
    let back = Button::new("defaults", words::BACK_TO_DEFAULTS, does);
    Blocks::new().section("defaults", words::DEFAULTS, Blocks::new().small(sub).button(back))
}

/// Notes the defaults of a part, all at once; what is typed there is let go.
fn defaults_again(part: Part, view: &View, draft: &mut Draft) -> Vec<Effect> {
    if part == Part::Display {
        return vec![Effect::Phone(Request::ChooseLook(Look::default()))];
    }
    let notings = part.defaults(view.settings()).into_iter().map(|choice| view.noting(Event::Chose(choice)));
    let notings: Vec<_> = notings.collect();
    if notings.is_empty() {
        return Vec::new();
    }
    let effects = draft.note(view, notings);
    if !effects.is_empty() {
        draft.fields = Fields::default();
    }
    effects
}

/// What the farm is called.
fn farm_name(settings: &FarmSettings, fields: &Fields) -> Blocks {
    let typed = fields.text(NAME, &settings.farm_name);
    let is_changed = typed.trim() != settings.farm_name;
    let field = Field::new(words::FARM_NAME, FieldKind::Text, typed);
    let field = field.hint(words::FARM_NAME_SUB).error(fields.error(NAME));
    let save = Button::new("save", words::SAVE_NAME, Action::Does(crate::Does::FarmSettings(Does::SaveName)));
    let inside = Blocks::new().field(NAME, field);
    Blocks::new().section("farm", words::FARM, if is_changed { inside.button(save) } else { inside })
}

/// The units that people read and type.
fn units(settings: &FarmSettings) -> Blocks {
    let systems = SYSTEMS.map(|system| (Choice::System(system), (words::system(system), "")));
    let systems = one_of(words::UNITS, systems, &Choice::System(settings.system));
    let clocks = CLOCKS.map(|clock| (Choice::Clock(clock), (words::clock(clock), "")));
    let clocks = one_of(words::CLOCK, clocks, &Choice::Clock(settings.clock));
    Blocks::new().section("units", words::UNITS, Blocks::new().choices("", systems)).section(
        "clock",
        words::CLOCK,
        Blocks::new().choices("", clocks),
    )
}

/// Where newborns live.
fn newborns(settings: &FarmSettings) -> Blocks {
    let housings = HOUSINGS.map(|housing| (Choice::Housing(housing), (words::housing(housing), "")));
    let housings = one_of(words::NEWBORNS, housings, &Choice::Housing(settings.housing));
    Blocks::new().section("newborns", words::NEWBORNS, Blocks::new().choices("", housings))
}

/// Colostrum and bottle: one tap each.
fn rules(settings: &FarmSettings) -> Blocks {
    let day_rules = DAY_RULES.map(|rule| (Choice::DayRule(rule), words::day_rule(rule)));
    let tables = TABLES.map(|table| (Choice::BottleTable(table), words::bottle_table(table)));
    rule("first-milk", words::FIRST_MILK, day_rules, &Choice::DayRule(settings.day_rule)).then(rule(
        "bottle",
        words::BOTTLE,
        tables,
        &Choice::BottleTable(settings.bottle_table),
    ))
}

/// Day or night, on this phone.
fn look(stands: Look) -> Blocks {
    let look =
        |(look, name): (Look, &str)| block::Choice::new(name, Action::Phone(Request::ChooseLook(look)));
    let chosen = LOOKS.iter().position(|(look, _)| *look == stands);
    let looks = Choices::new(words::LOOK, LOOKS.map(look).to_vec(), chosen);
    Blocks::new().section("look", words::LOOK, Blocks::new().choices("", looks).small(words::LOOK_SUB))
}

/// A rule of several, each with whose it is, under a heading of its own.
fn rule(
    key: &'static str,
    title: &'static str,
    rules: impl IntoIterator<Item = (Choice, (&'static str, &'static str))>,
    stands: &Choice,
) -> Blocks {
    Blocks::new().section(key, title, Blocks::new().choices("", one_of(title, rules, stands).stacked()))
}

/// Choices of the farm's, one tap each, of which this one stands.
fn one_of(
    label: &str,
    of: impl IntoIterator<Item = (Choice, (&'static str, &'static str))>,
    stands: &Choice,
) -> Choices {
    let of: Vec<_> = of.into_iter().collect();
    let chosen = of.iter().position(|(choice, _)| choice == stands);
    options(label, of, chosen)
}

/// Choices of the farm's, one tap each; what stands already is not noted again.
fn options<N: Into<String>>(
    label: &str,
    of: impl IntoIterator<Item = (Choice, (N, &'static str))>,
    chosen: Option<usize>,
) -> Choices {
    let option = |(place, (choice, (name, note))): (usize, (Choice, (N, &'static str)))| {
        let notes = Action::Note(vec![Event::Chose(choice)]);
        let does = if chosen == Some(place) { Action::Nothing } else { notes };
        block::Choice::new(name, does).note(note)
    };
    Choices::new(label, of.into_iter().enumerate().map(option).collect(), chosen)
}

/// Does what only this screen knows.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Defaults(part) => defaults_again(part, view, draft),
        Does::SaveName => save_name(view, draft),
        Does::SaveNumber(of) => vet::save(of, view, draft),
        Does::SaveRate => milk::save_rate(view, draft),
        Does::SaveRingDays => care::save_days(view, draft),
        Does::SaveLimits(together) => limits::save(together, view, draft),
        Does::LeaveMark(place) => cull_rules::leave(place, view, draft),
    }
}

/// Something was typed.
pub(crate) fn typed(key: &Key, draft: &mut Draft) {
    limits::typed(key, &mut draft.fields);
}

/// The screen is left: what was said was read, and a mark that is none is not kept.
pub(crate) fn left(draft: &mut Draft) {
    limits::left(&mut draft.fields);
    cull_rules::left(&mut draft.fields);
}

fn save_name(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(name) = draft.fields.typed(NAME).map(|typed| typed.trim().to_owned()) else {
        return Vec::new();
    };
    if name == view.settings().farm_name {
        return Vec::new();
    }
    save(view, draft, NAME, Choice::FarmName(name))
}

/// Notes a choice; a refusal is said at its field, which follows the book again.
fn save(view: &View, draft: &mut Draft, key: &'static str, choice: Choice) -> Vec<Effect> {
    let effects = draft.save(view, key, vec![view.noting(Event::Chose(choice))]);
    if !effects.is_empty() {
        draft.fields.forget(key);
    }
    effects
}

/// Notes a choice; the fields that it was typed into follow the book again.
fn choose(view: &View, draft: &mut Draft, choice: Choice, typed: &[Key]) -> Vec<Effect> {
    let effects = draft.note(view, vec![view.noting(Event::Chose(choice))]);
    if !effects.is_empty() {
        for key in typed {
            draft.fields.forget(key);
        }
    }
    effects
}
