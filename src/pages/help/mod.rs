//! Help: one page a topic, found by its name, by what it says or by a word of the trade; the way to the calculators.

mod care;
mod doors;
mod find;
mod illness;
mod topic;

use yeanling_words::help::{self as words, SHELVES, Topic};
use yeanling_words::{calculators, cautions};

use crate::block::{Fold, Item, Kind, ListLook, Row};
use crate::draft::Draft;
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Key, Screen};

pub(crate) use illness::ailment_page;
pub(crate) use topic::page as topic_page;

/// Returns the screen: the finder, and all there is to read.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let blocks = match find::sought(&draft.fields) {
        Some(sought) => find::found(view, &sought),
        None => contents().small(cautions::GENERAL),
    };
    let find = find::field(&draft.fields);
    Page::new(words::TITLE).under(words::SUB).blocks(Blocks::new().field(find::FIND, find).then(blocks))
}

/// Who comes from elsewhere begins anew; who comes back from a topic finds what was looked for.
pub(crate) fn enter(view: &View, draft: &mut Draft) {
    if view.from.0 != Screen::Help {
        *draft = Draft::default();
    }
}

/// All there is, what cannot wait first.
fn contents() -> Blocks {
    SHELVES.iter().enumerate().fold(Blocks::new(), |blocks, (place, (title, topics))| {
        let last = place + 1 == SHELVES.len();
        let rows = last.then(calculators).into_iter().chain(topics.iter().map(|topic| row(*topic)));
        let key = format!("shelf-{place}");
        blocks.section(key.clone(), *title, Blocks::new().rows(format!("{key}-rows"), rows))
    })
}

fn row(topic: Topic) -> (Key, Row) {
    let key = format!("topic-{topic:?}").to_lowercase();
    (key.into(), Row::new(topic.title()).text(topic.about()).to(Screen::Topic(topic)))
}

fn calculators() -> (Key, Row) {
    ("calculators".into(), Row::new(calculators::TITLE).text(calculators::ABOUT).to(Screen::Calculators))
}

/// Lines to be read.
fn read<T: Into<crate::Text>>(lines: impl IntoIterator<Item = T>) -> Blocks {
    Blocks::new().list(ListLook::Reading, lines.into_iter().map(Item::new))
}

/// Steps to be done in order.
fn steps<T: Into<crate::Text>>(lines: impl IntoIterator<Item = T>) -> Blocks {
    Blocks::new().list(ListLook::Ranked, lines.into_iter().map(Item::new))
}

/// Adds what is folded away, in the look of sources.
fn fold(blocks: Blocks, key: String, label: String, inside: Blocks) -> Blocks {
    blocks
        .add(key, Kind::Fold(Fold { label: label.into(), sources: true, open: false, inside: inside.into() }))
}
