//! An animal in the grid: its number large, a mark and a word below. The whole tile takes the press; its name is the number
//! alone, so that the grid is read out number by number.

use yeanling_pages::Action;
use yeanling_pages::block::Tile;

use super::{mark, means};
use crate::node::{Element, Node, el};

pub(super) fn tile(it: &Tile) -> Element {
    let before = it.name.strip_suffix(&it.number).unwrap_or_default();
    // A number of a few digits is read from afar; a word has less room.
    let long = it.number.chars().count() > 4;
    let link = match &it.does {
        Action::Go(to) => el("a", "tile-name").has("href", to.hash()),
        does => el("button", "tile-name").has("type", "button").press(does),
    };
    let unseen = (!before.is_empty()).then(|| Node::from(el("span", "unseen").with(before)));
    let link = link
        .has("data-means", means(&it.does))
        .has_some("aria-current", it.here.then_some("page"))
        .all(unseen)
        .with(el("b", "").with(it.number.as_str()));
    let says = (!it.says.is_empty()).then(|| {
        let mark = it.state.map(|state| mark(state, true).into());
        el("span", "tile-says").all(mark).with(el("span", "").with(it.says.as_str())).into()
    });
    el("li", "tile")
        .has_some("data-state", it.state.map(yeanling_pages::State::key))
        .has_some("data-past", it.past.then_some("true"))
        .has_some("data-long", long.then_some("true"))
        .with(link)
        .all(says)
}
