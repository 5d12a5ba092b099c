//! The sheet that asks who was treated: all ewes, all lambs or the ewes of a group.

use yeanling_core::book::{Animal, GroupId};
use yeanling_core::flock::{Ewe, Flock};
use yeanling_words::{flock as flock_words, medicines as words};

use crate::block::{Choice, Choices};
use crate::draft::Draft;
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Does, Effect, Sheet};

/// Many animals at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Many {
    /// All ewes.
    Ewes,
    /// All lambs.
    Lambs,
    /// The ewes of a group.
    Group(GroupId),
}

/// Returns the sheet.
pub(crate) fn sheet(view: &View) -> SheetPage {
    let groups = view.flock.groups.values().map(|group| (Many::Group(group.id), group.name.clone()));
    let all =
        [(Many::Ewes, words::ALL_EWES.to_owned()), (Many::Lambs, words::ALL_LAMBS.to_owned())].into_iter();
    let choice = |(many, name): (Many, String)| {
        let does = Action::Does(Does::Medicines(super::Does::Treat(many)));
        let count = animals_of(view.flock, many).len();
        (count > 0).then(|| Choice::new(words::counted(&name, count), does))
    };
    let options: Vec<Choice> = all.chain(groups).filter_map(choice).collect();
    let blocks = if options.is_empty() {
        Blocks::new().text(flock_words::NONE_SUCH)
    } else {
        Blocks::new().choices("who", Choices::new(words::WHO, options, None).stacked())
    };
    SheetPage::new(words::WHO, blocks)
}

/// Goes on to what they were treated with.
pub(crate) fn choose(many: Many, view: &View, draft: &mut Draft) -> Vec<Effect> {
    draft.close();
    draft.ask(Sheet::Treat(animals_of(view.flock, many)));
    Vec::new()
}

fn animals_of(flock: &Flock, many: Many) -> Vec<Animal> {
    match many {
        Many::Ewes => flock.ewes.values().filter(|ewe| ewe.lives()).map(|ewe| Animal::Ewe(ewe.id)).collect(),
        Many::Lambs => {
            flock.lambs.values().filter(|lamb| lamb.lives()).map(|lamb| Animal::Lamb(lamb.id)).collect()
        }
        Many::Group(group) => flock
            .groups
            .get(&group)
            .map(|group| group.ewes().collect::<Vec<_>>())
            .unwrap_or_default()
            .into_iter()
            .filter(|ewe| flock.ewe(*ewe).is_some_and(Ewe::lives))
            .map(Animal::Ewe)
            .collect(),
    }
}
