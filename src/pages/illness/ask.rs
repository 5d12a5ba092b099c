//! What is asked first, three questions on one screen, and the signs as buttons that stay down.

use yeanling_core::book::Animal;
use yeanling_core::terms::Gate;
use yeanling_words::illness::{self as words, Place};

use crate::block::{Buttons, Choice, Choices, Kind, Toggle};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::{Action, Block, Key};

/// The answers to what is asked first, as they are offered.
pub(super) const GATES: [Gate; 4] = [Gate::Good, Gate::Bad, Gate::NotChecked, Gate::CannotCheck];
/// Whether more is being told of an animal that has its answer.
const MORE: &str = "ill-more";

fn of(animal: Animal) -> String {
    match animal {
        Animal::Ewe(id) => id.to_string(),
        Animal::Lamb(id) => id.to_string(),
    }
}

/// What is chosen belongs to one animal: going to another takes nothing along.
pub(super) fn key(what: &str, animal: Animal) -> Key {
    format!("{what}-{}", of(animal)).into()
}

pub(super) fn more_key(animal: Animal) -> Key {
    key(MORE, animal)
}

/// Asks one of what is asked first; what is known of it stands until another answer is chosen.
pub(super) fn gate(fields: &Fields, what: &str, label: &str, (animal, known): (Animal, Gate)) -> Blocks {
    let key = key(what, animal);
    let chosen =
        fields.chosen(&key).or_else(|| GATES.iter().position(|gate| *gate == known)).unwrap_or_default();
    let option =
        |(place, gate): (usize, &Gate)| Choice::new(words::gate(*gate), Action::Choose(key.clone(), place));
    let options = GATES.iter().enumerate().map(option).collect();
    Blocks::new().choices(key.clone(), Choices::new(label, options, Some(chosen)).labelled().gate())
}

/// Returns what was answered, or is known.
pub(super) fn answered(fields: &Fields, what: &str, (animal, known): (Animal, Gate)) -> Gate {
    fields.pick(&key(what, animal), &GATES, known)
}

/// Returns signs as buttons in two columns, each down once it was pressed.
pub(super) fn signs<S: Copy + std::fmt::Debug>(
    fields: &Fields,
    animal: Animal,
    signs: impl IntoIterator<Item = S>,
    name: fn(S) -> &'static str,
) -> Blocks {
    let toggle = |sign: S| {
        let key = sign_key(sign, animal);
        let pressed = fields.chosen(&key) == Some(1);
        let does = Action::Choose(key.clone(), usize::from(!pressed));
        let toggle = Toggle { label: name(sign).to_owned(), pressed, note: None, does };
        Block::new(key, Kind::Toggle(toggle))
    };
    let inside = signs.into_iter().map(toggle).collect();
    Blocks::new().add("", Kind::Buttons(Buttons { columns: 2, inside }))
}

/// Returns signs under where they are seen, as an animal is looked over: from how it is over its head to its legs.
pub(super) fn by_place<S: Copy + std::fmt::Debug>(
    fields: &Fields,
    animal: Animal,
    signs: impl IntoIterator<Item = S>,
    place: fn(S) -> Place,
    name: fn(S) -> &'static str,
) -> Blocks {
    let all: Vec<S> = signs.into_iter().collect();
    Place::ALL.into_iter().fold(Blocks::new(), |blocks, here| {
        let of: Vec<S> = all.iter().copied().filter(|sign| place(*sign) == here).collect();
        if of.is_empty() {
            return blocks;
        }
        blocks.heading(here.title()).then(self::signs(fields, animal, of, name))
    })
}

fn sign_key<S: std::fmt::Debug>(sign: S, animal: Animal) -> Key {
    key(&format!("sign-{sign:?}"), animal)
}

/// Returns the signs that are down.
pub(super) fn pressed<S: Copy + std::fmt::Debug>(fields: &Fields, animal: Animal, all: &[S]) -> Vec<S> {
    all.iter().copied().filter(|sign| fields.chosen(&sign_key(*sign, animal)) == Some(1)).collect()
}

/// Forgets what was answered and pressed: it was noted.
pub(super) fn forget<S: Copy + std::fmt::Debug>(
    fields: &mut Fields,
    animal: Animal,
    gates: &[&str],
    all: &[S],
) {
    for gate in gates {
        fields.forget(&key(gate, animal));
    }
    for sign in all {
        fields.forget(&sign_key(*sign, animal));
    }
    fields.forget(&more_key(animal));
}
