//! Many ewes picked from a grid: a tap picks one, another lets her go. What is picked is kept in the draft.

use yeanling_core::book::EweId;
use yeanling_core::sort_small::SortSmall;
use yeanling_words::{animals, lambing};

use crate::block::{Buttons, Kind, Toggle};
use crate::draft::Fields;
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Key};

/// So many are shown at most (ours); more are typed.
const MOST: usize = 60;

/// A ewe who can be picked, with a word about her.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Pickable {
    /// Who.
    pub(crate) ewe: EweId,
    /// A few small words under her number; empty where there are none.
    pub(crate) note: String,
}

fn key(noun: &str, ewe: EweId) -> Key {
    format!("{noun}-{ewe}").into()
}

/// Returns the grid: the ewes by their tags, 2 before 10.
pub(crate) fn blocks(view: &View, fields: &Fields, noun: &str, of: Vec<Pickable>) -> Blocks {
    if of.is_empty() {
        return Blocks::new();
    }
    let name = |ewe: EweId| {
        let tag = view.flock.ewe(ewe).and_then(|ewe| ewe.tag.clone());
        tag.unwrap_or_else(|| animals::ewe_of(view.flock, ewe))
    };
    let mut named: Vec<(String, Pickable)> = of.into_iter().map(|one| (name(one.ewe), one)).collect();
    named.sort_small_by(|one, other| (one.0.len(), &one.0).cmp(&(other.0.len(), &other.0)));
    let more = named.len().saturating_sub(MOST);
    let toggles = named.into_iter().take(MOST).fold(Blocks::new(), |blocks, (label, one)| {
        let key = key(noun, one.ewe);
        let pressed = fields.chosen(&key) == Some(1);
        let does = Action::Choose(key.clone(), usize::from(!pressed));
        blocks.add(key, Kind::Toggle(Toggle { label, pressed, note: Some(one.note), does }))
    });
    let grid = Kind::Buttons(Buttons { columns: 4, inside: toggles.into() });
    let blocks = Blocks::new().add(format!("{noun}-grid"), grid);
    if more > 0 { blocks.small(lambing::and_more(more)) } else { blocks }
}

/// Returns those of these ewes that are picked.
pub(crate) fn picked(fields: &Fields, noun: &str, of: &[EweId]) -> Vec<EweId> {
    of.iter().copied().filter(|ewe| fields.chosen(&key(noun, *ewe)) == Some(1)).collect()
}

/// Lets go of all that are picked of these.
pub(crate) fn let_go(fields: &mut Fields, noun: &str, of: &[EweId]) {
    for ewe in of {
        fields.forget(&key(noun, *ewe));
    }
}
