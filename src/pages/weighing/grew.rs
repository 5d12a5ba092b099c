//! How the lambs of the latest season grew, side by side with their like.

use yeanling_core::seasons::{Grown, grown, seasons};
use yeanling_words::{animals, weighing as words};

use crate::block::Row;
use crate::page::{Blocks, key_of, why};
use crate::view::View;
use crate::{Key, Reason, Screen, State};

/// How many lambs stand under how they grew at first.
const ROWS: usize = 40;

/// Returns the part of the screen.
pub(super) fn blocks(view: &View) -> Blocks {
    let season = seasons(view.flock).into_iter().next();
    let all = season.map(|season| grown(view.flock, &season, view.now)).unwrap_or_default();
    let text = if all.is_empty() { words::NONE_GROWN } else { words::ALIKE };
    let inside = Blocks::new()
        .remark(text, [why(words::GROWN, Reason::Grown)])
        .rows("grown", all.iter().take(ROWS).map(|one| row(view, one)));
    Blocks::new().section("how-they-grew", words::GROWN, inside)
}

fn row(view: &View, one: &Grown) -> (Key, Row) {
    let alike = words::alike(&one.adjusted, view.system());
    let (state, says) =
        if one.lags { (State::Now, format!("{} · {alike}", words::LAGS)) } else { (State::Coming, alike) };
    let row = Row::new(animals::lamb_of(view.flock, one.lamb))
        .kind(words::born_and_reared(one.born, one.reared))
        .text(words::grew(one, view.system()))
        .says(state, says)
        .to(Screen::Lamb(one.lamb));
    (key_of("grew", one.lamb.entry()), row)
}
