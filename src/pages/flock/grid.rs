//! A small flock as numbers in their places: they never close up. Who has lambed, died or was sold stays, dimmed, with a word.

use yeanling_words::{animals, flock as words};

use crate::block::Tile;
use crate::in_brief::InBrief;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Key, Screen};

/// So many of a kind stand at their places (ours); more are a list.
pub(crate) const MOST: usize = 60;
/// A name of longer words than this has no room on a tile: then there is a list.
const LETTERS: usize = 9;

/// Says whether animals of these names stand at places.
pub(crate) fn fits<'a>(names: impl IntoIterator<Item = &'a str>) -> bool {
    let short = |name: &str| name.split_whitespace().all(|word| word.chars().count() <= LETTERS);
    let mut count = 0;
    names.into_iter().all(|name| {
        count += 1;
        count <= MOST && short(name)
    })
}

/// Returns ewes and lambs at their places, that of the screen one is on marked; nothing where there are too many, or their
/// names are too long.
pub(super) fn blocks(view: &View, here: Option<Screen>) -> Option<Blocks> {
    let flock = view.flock;
    let (ewes, lambs) = view.everyone.places(flock, view.now);
    let ewes: Vec<_> = ewes.iter().filter_map(|id| flock.ewes.get(id)).collect();
    let lambs: Vec<_> = lambs.iter().filter_map(|id| flock.lambs.get(id)).collect();
    let names: Vec<String> = lambs.iter().map(|lamb| animals::lamb(flock, lamb)).collect();
    let tags = ewes.iter().map(|ewe| ewe.tag.as_deref().unwrap_or_default());
    if !fits(tags) || !fits(names.iter().map(String::as_str)) {
        return None;
    }
    let brief = InBrief::of(view);
    let mark = |(key, tile): (Key, Tile), to: Screen| (key, Tile { here: here == Some(to), ..tile });
    let ewes = ewes.into_iter().map(|ewe| {
        let to = Screen::Ewe(ewe.id);
        mark(brief.ewe_tile(ewe, animals::ewe(ewe), Action::Go(to)), to)
    });
    let lambs = lambs.into_iter().map(|lamb| mark(brief.lamb_tile(lamb), Screen::Lamb(lamb.id)));
    let blocks = Blocks::new()
        .section("here-ewes", words::EWES, Blocks::new().tiles("ewe-tiles", ewes))
        .section("here-lambs", words::LAMBS, Blocks::new().tiles("lamb-tiles", lambs));
    (!blocks.is_empty()).then_some(blocks)
}
