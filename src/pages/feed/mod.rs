//! Hay for the winter, a ration of up to five feeds against the table, and water.

mod groups;
mod hay;
mod ration;
pub(crate) mod typed;
mod water;

use yeanling_core::seasons;
use yeanling_words::{feed as words, feed_groups, frame};

use crate::block::{Choice, Choices};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Key, Screen};

/// What is worked out.
const WHAT: &str = "feed-what";
/// How many ewes: the same for hay and for water.
const EWES: &str = "feed-ewes";
/// What can be worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum What {
    Hay,
    Groups,
    Ration,
    Water,
}

const WHATS: [(What, &str); 4] = [
    (What::Hay, words::HAY),
    (What::Groups, feed_groups::GROUPS_SHORT),
    (What::Ration, words::RATION),
    (What::Water, words::WATER),
];

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let fields = &draft.fields;
    let (what, _) = fields.pick(WHAT, &WHATS, WHATS[0]);
    let options = WHATS.iter().enumerate();
    let options = options.map(|(place, (_, name))| Choice::new(*name, Action::Choose(WHAT.into(), place)));
    let whats = Choices::new(words::WHAT, options.collect(), Some(fields.chosen(WHAT).unwrap_or(0)));
    let blocks = match what {
        What::Hay => hay::blocks(view, fields),
        What::Groups => groups::blocks(view, fields),
        What::Ration => ration::blocks(view, fields),
        What::Water => water::blocks(view, fields),
    };
    Page::new(words::TITLE)
        .back(Screen::Season, frame::SEASON)
        .blocks(Blocks::new().choices(WHAT, whats).then(blocks))
}

/// What a ewe weighs, as it was typed; until then the flock's own mean, or what is usual of its kind.
fn ewe_weight(view: &View, fields: &Fields, key: impl Into<Key>) -> typed::Weight {
    let usual = seasons::ewe_weight(view.flock, view.now).mass.as_kilograms();
    typed::Weight::of(fields, key, usual, view.system())
}

/// Says whose weight stands there.
fn whose_weight(view: &View) -> String {
    words::whose_weight(&seasons::ewe_weight(view.flock, view.now), view.system())
}

/// How many ewes, as it was typed; those of the book until then.
fn ewes(view: &View, fields: &Fields) -> typed::Number {
    let living = view.flock.ewes.values().filter(|ewe| ewe.lives()).count();
    typed::Number::of(fields, EWES, &if living > 0 { living.to_string() } else { String::new() })
}
