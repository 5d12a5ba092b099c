//! The ewe lambs that may be kept, those of the best dams that grew best first.

use yeanling_core::seasons::{Kept, Replacement, replacements};
use yeanling_words::{animals, cull_rules, keep as words};

use crate::block::Row;
use crate::page::{Blocks, key_of};
use crate::view::View;
use crate::{Key, Screen, State};

/// Returns them.
pub(super) fn blocks(view: &View, kept: &[Kept]) -> Blocks {
    let all = replacements(view.flock, kept, view.now);
    if all.is_empty() {
        return Blocks::new().text(words::NO_YOUNG);
    }
    Blocks::new().rows("young", all.iter().map(|one| row(view, kept, one)))
}

fn row(view: &View, kept: &[Kept], one: &Replacement) -> (Key, Row) {
    let system = view.system();
    let weeks = view.flock.lambs.get(&one.lamb).map_or(0, |lamb| view.now.since(lamb.born).num_weeks());
    let dam = one.dam.map(|id| {
        let dam = kept.iter().find(|kept| kept.ewe == id);
        let reasons = dam.map(|dam| cull_rules::marks(&dam.marks, system)).unwrap_or_default();
        words::dam(&animals::ewe_of(view.flock, id), dam, &reasons)
    });
    let kin = words::kin(&one.kin);
    let state = if kin.is_empty() { State::Done } else { State::Now };
    let row = Row::new(animals::animal(view.flock, one.animal))
        .kind(words::young(one.born, weeks))
        .text(words::young_grew(one, system))
        .says(state, kin)
        .to(Screen::of(one.animal))
        .inside(dam.into_iter().fold(Blocks::new(), Blocks::small));
    (key_of("young", one.lamb.entry()), row)
}
