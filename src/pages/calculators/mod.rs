//! Calculators: every calculation without any record. Nothing typed here is noted.
//!
//! What is typed once stays, and a birth weight is known to all that ask for one; the weight of today is another, so that a
//! birth weight never starves an older lamb.

mod age;
mod answer;
mod bag;
mod bottle;
mod first_milk;
mod fluids;
mod ketones;
mod typed;
mod weaning;
mod weather;
mod window;

use yeanling_core::settings::Housing;
use yeanling_core::units::{Mass, System};
use yeanling_words::{calculators as words, cautions, dry, frame};

use crate::block::{Choice, Choices, Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Effect, Screen, weight};

/// What is worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Which {
    FirstMilk,
    Window,
    Bottle,
    Weaning,
    Bag,
    Weather,
    Fluids,
    Ketones,
}

/// All of it, each with its name.
const WHICH: [(Which, &str); 8] = [
    (Which::FirstMilk, words::FIRST_MILK),
    (Which::Window, words::WINDOW),
    (Which::Bottle, words::BOTTLE),
    (Which::Weaning, words::WEANING),
    (Which::Bag, words::BAG),
    (Which::Weather, words::WEATHER),
    (Which::Fluids, dry::FLUIDS),
    (Which::Ketones, dry::KETONES),
];

/// Which of them is open.
const OPEN: &str = "figures-which";
/// The birth weight as typed.
const BIRTH_WEIGHT: &str = "figures-birth-weight";
/// The weight of today as typed.
const TODAY: &str = "figures-today";
/// The weight whose unit both are typed in.
const BOTH_WEIGHTS: &str = "figures-weight";
/// The days as typed.
const DAYS: &str = "figures-days";
/// Where the lamb lives.
const HOUSING: &str = "figures-housing";
const HOUSINGS: [Housing; 2] = [Housing::Housed, Housing::Outdoors];

/// What only this screen does.
#[derive(Clone, Debug, PartialEq)]
pub enum Does {
    /// This is the birth weight that was meant, as it was typed or in pounds.
    Meant(Mass),
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let fields = &draft.fields;
    let (open, _) = fields.pick(OPEN, &WHICH, WHICH[0]);
    let tabs = choices(OPEN, words::WHICH, WHICH.into_iter().enumerate(), |(which, name)| {
        (which == open, name.to_owned(), "")
    });
    let inside = match open {
        Which::FirstMilk => first_milk::blocks(view, fields),
        Which::Window => window::blocks(view, fields),
        Which::Bottle => bottle::blocks(view, fields),
        Which::Weaning => weaning::blocks(view, fields),
        Which::Bag => bag::blocks(view, fields),
        Which::Weather => weather::blocks(view, fields),
        Which::Fluids => fluids::blocks(view, fields),
        Which::Ketones => ketones::blocks(view, fields),
    };
    let cold_lamb = Button::new("cold-lamb", words::COLD_LAMB, Action::Go(Screen::ColdLamb(None)));
    Page::new(words::TITLE)
        .under(words::SUB)
        .back(Screen::Help, frame::HELP)
        .blocks(Blocks::new().choices(OPEN, tabs).then(inside).button(cold_lamb).small(cautions::GENERAL))
}

/// Does what only this screen knows.
pub(crate) fn does(does: &Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    match does {
        Does::Meant(weight) => first_milk::meant(*weight, view.system(), &mut draft.fields),
    }
    Vec::new()
}

/// Returns choices that are kept under a key, each with its place there; `say` tells whether it is down, its name and a note.
fn choices<T: Copy>(
    key: &'static str,
    label: &str,
    of: impl Iterator<Item = (usize, T)>,
    say: impl Fn(T) -> (bool, String, &'static str),
) -> Choices {
    let mut chosen = None;
    let options = of.enumerate().map(|(shown, (place, one))| {
        let (down, name, note) = say(one);
        if down {
            chosen = Some(shown);
        }
        Choice::new(name, Action::Choose(key.into(), place)).note(note)
    });
    let options = options.collect();
    Choices::new(label, options, chosen)
}

/// Returns the unit that weights are typed in.
fn weight_unit(view: &View, fields: &Fields) -> System {
    weight::unit(fields, BOTH_WEIGHTS, view.system())
}

/// Returns the field of a weight, with the choice of the unit of both.
fn weight_field(view: &View, fields: &Fields, key: &'static str, label: &str, error: String) -> Field {
    let units = weight::units(fields, BOTH_WEIGHTS, view.system());
    Field::new(label, FieldKind::Decimal, fields.text(key, "")).error(error).units(units)
}

/// Returns where the lamb lives.
fn housing(view: &View, fields: &Fields) -> Housing {
    fields.pick(HOUSING, &HOUSINGS, view.settings().housing)
}
