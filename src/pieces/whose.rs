//! Whom a sheet is about.

use crate::farm::use_farm;
use crate::signals::prelude::*;
use crate::words::animals;
use yeanling_core::book::Animal;

/// Returns an animal's name, to stand above the heading of a sheet: not always is she on the screen behind it.
pub(crate) fn whose(animal: Animal) -> Signal<String> {
    let farm = use_farm();
    Signal::derive(move || farm.with(|ground| animals::animal(&ground.flock, animal)))
}
