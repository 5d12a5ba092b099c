//! Who an animal's parents are, as far as it was said or follows from its birth here; each leads to that animal.

use yeanling_core::book::{Animal, EweId};
use yeanling_words::{animals, past as words};

use crate::block::Row;
use crate::page::Blocks;
use crate::view::View;
use crate::{Screen, page};

/// Returns the parents as rows; nothing while none is known.
pub(super) fn parents(view: &View, animal: Animal) -> Blocks {
    let (dam, sire) = known(view, animal);
    let row = |key: &'static str, what: &str, id: EweId| {
        let row = Row::new(animals::ewe_of(view.flock, id)).kind(what).to(Screen::Ewe(id));
        (page::key_of(key, id.entry()), row)
    };
    let rows = [dam.map(|id| row("dam", words::DAM, id)), sire.map(|id| row("sire", words::SIRE, id))];
    Blocks::new().section(
        "parents",
        words::PARENTS,
        Blocks::new().rows("parent-rows", rows.into_iter().flatten()),
    )
}

/// A grown animal's as said, else as of the lamb that she was.
fn known(view: &View, animal: Animal) -> (Option<EweId>, Option<EweId>) {
    let here = |id: &EweId| view.flock.grown(*id).is_some();
    let (dam, sire) = match animal {
        Animal::Lamb(id) => view.flock.lamb(id).map_or((None, None), |lamb| (None, lamb.sire)),
        Animal::Ewe(id) => {
            let Some(grown) = view.flock.grown(id) else { return (None, None) };
            let was = grown.was.and_then(|lamb| view.flock.lamb(lamb));
            (grown.dam.or(was.and_then(|lamb| lamb.dam)), grown.sire.or(was.and_then(|lamb| lamb.sire)))
        }
    };
    (dam.filter(here), sire.filter(here))
}
