//! One ewe on a card: her years, her lambs, this season beside the last, and what the farm minds of her.

use yeanling_core::seasons::Kept;
use yeanling_words::{animals, cull_rules, keep as words};

use crate::block::Row;
use crate::page::{Blocks, key_of};
use crate::view::View;
use crate::{Key, Screen, State};

/// Returns her card.
pub(super) fn row(view: &View, kept: &Kept) -> (Key, Row) {
    let system = view.system();
    let seasons = kept.latest.iter().flatten().map(|season| words::season(season, system));
    let lines =
        [words::no_lambing(kept), words::weaned(kept, system), words::rest(kept)].into_iter().chain(seasons);
    let inside = lines.filter(|line| !line.is_empty()).fold(Blocks::new(), Blocks::small);
    let state = if kept.marks.is_empty() { State::Done } else { State::Now };
    let row = Row::new(animals::ewe_of(view.flock, kept.ewe))
        .kind(words::years(kept))
        .text(words::lambs(kept))
        .says(state, cull_rules::marks(&kept.marks, system))
        .to(Screen::Ewe(kept.ewe))
        .inside(inside);
    (key_of("kept", kept.ewe.entry()), row)
}
