//! Which milk a lamb is fed, and how.

use yeanling_core::book::{Milk, Way};
use yeanling_core::units::{System, Volume};
use yeanling_words::common::number;
use yeanling_words::{cautions, lamb as words, noted};

use crate::Action;
use crate::block::{Choice, Choices};
use crate::draft::Fields;

/// The ways of feeding by hand.
const WAYS: [(Way, &str); 2] = [(Way::Bottle, words::BOTTLE), (Way::Tube, words::TUBE)];

/// Returns the way that was chosen; `stood` before one was.
pub(crate) fn way(fields: &Fields, key: &str, stood: Way) -> Way {
    fields.pick(key, &WAYS.map(|(way, _)| way), stood)
}

/// Returns the choice between bottle and tube.
pub(crate) fn ways(fields: &Fields, key: &'static str, stood: Way) -> Choices {
    let chosen = way(fields, key, stood);
    let option =
        |(place, (_, name)): (usize, &(Way, &str))| Choice::new(*name, Action::Choose(key.into(), place));
    let place = WAYS.iter().position(|(way, _)| *way == chosen);
    Choices::new(words::WAY, WAYS.iter().enumerate().map(option).collect(), place)
}

/// Returns the milk that was chosen; `stood` before one was.
pub(crate) fn milk(fields: &Fields, key: &str, stood: Milk) -> Milk {
    fields.pick(key, &noted::MILKS, stood)
}

/// Returns the choice among kinds of milk.
pub(crate) fn milks(fields: &Fields, key: &'static str, stood: Milk) -> Choices {
    let chosen = milk(fields, key, stood);
    let option =
        |(place, milk): (usize, &Milk)| Choice::new(noted::milk(*milk), Action::Choose(key.into(), place));
    let place = noted::MILKS.iter().position(|milk| *milk == chosen);
    Choices::new(words::MILK, noted::MILKS.iter().enumerate().map(option).collect(), place)
        .stacked()
        .labelled()
}

/// Returns the safety list of the tube.
pub(crate) const fn tube() -> &'static [&'static str] {
    cautions::TUBE
}

/// Returns a volume as it would be typed.
pub(crate) fn typed_volume(volume: Volume, system: System) -> String {
    match system {
        System::Metric => number(volume.as_milliliters(), 1),
        System::Us => number(volume.as_fluid_ounces(), 2),
    }
}

/// Returns the sign of the unit in which a volume is typed.
pub(crate) const fn volume_unit(system: System) -> &'static str {
    match system {
        System::Metric => "ml",
        System::Us => "fl oz",
    }
}
