//! What is done from the Watch at fixed hours: the bottle round and the night clock.

use yeanling_words::{bottle_round, night};

use crate::page::Blocks;
use crate::{Action, Button, Screen};

/// Returns the ways there, under all that is due.
pub(super) fn blocks() -> Blocks {
    let go = |key: &'static str, label, to| Button::new(key, label, Action::Go(to)).quiet();
    let round = go("bottle-round", bottle_round::TITLE, Screen::BottleRound);
    Blocks::new().buttons(2, [round, go("night", night::TITLE, Screen::Night)])
}
