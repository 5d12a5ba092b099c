//! What can be read with no network. A list at the top leads down the page; the address stays, since it names screens.

mod care;

use std::sync::Arc;

use yeanling_core::practice::Practice;
use yeanling_core::reckon::{all_sources, season};
use yeanling_core::source::Source;
use yeanling_words::cold_lamb::courses;
use yeanling_words::help::{self as words, lambing, milk};
use yeanling_words::{cautions, figures, why};

use crate::block::{Block, Fold, Group, Item, Kind, ListLook, Row, Shape};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Key, Screen};

/// A part of the page that the list at the top leads to: its key, its heading, and what is read there.
type Topic = (&'static str, &'static str, fn(&Practice) -> Blocks);

const TOPICS: [Topic; 19] = [
    ("clocks", lambing::CLOCKS, clocks),
    ("lies", lambing::LIES, |_| lies()),
    ("first-day", words::FIRST_DAY, first_day),
    ("fed", words::FED, |_| read(words::FED_SIGNS.iter().copied()).small(words::FED_SOURCE)),
    ("cold", words::COLD, |practice| care::cold(practice.system)),
    ("thermometer", courses::THERMOMETER, |_| thermometer()),
    ("vigor", words::VIGOR, |practice| care::vigor(&practice.limits)),
    ("rings", words::RINGS, |_| care::rings()),
    ("tube", words::TUBE, |_| Blocks::new().caution(cautions::TUBE.iter().copied())),
    ("bottle", milk::BOTTLE, |practice| read(milk::bottle(practice))),
    ("weaning", milk::WEANING, |_| read(milk::weaning())),
    ("bag", milk::BAG, |practice| read(milk::bag(practice))),
    ("weather", milk::WEATHER, |practice| read(milk::weather(practice))),
    ("vet", words::VET, vet),
    ("people", words::PEOPLE, |_| Blocks::new().caution([cautions::PEOPLE])),
    ("hygiene", words::HYGIENE, |_| read(cautions::HYGIENE.iter().copied()).small(cautions::HYGIENE_SOURCE)),
    ("install", words::INSTALL, |_| read(words::INSTALL_STEPS.iter().copied())),
    ("limits", words::LIMITS, |_| read(words::LIMITS_LIST.iter().copied())),
    ("sources", words::SOURCES, |_| sources()),
];

/// Returns the screen: decision aids, cautions and sources.
pub(crate) fn page(view: &View) -> Page {
    let part = |(key, title, inside): Topic| -> Arc<Block> {
        let inside = Blocks::new().section(key, title, inside(view.practice()));
        let part = Group { shape: Shape::HelpPart, hidden: false, inside: inside.into() };
        Block::new(place(key), Kind::Group(part))
    };
    Page::new(words::TITLE).under(words::SUB).blocks(
        Blocks::new()
            .small(cautions::GENERAL)
            .rows(
                "ways",
                [("calculators", Row::new(figures::TITLE).text(figures::SUB).to(Screen::Calculators))],
            )
            .list(ListLook::Contents, TOPICS.into_iter().map(link))
            .then(TOPICS.map(part)),
    )
}

/// Where a part of the page is found.
fn place(key: &str) -> Key {
    format!("help-{key}").into()
}

fn link((key, title, _): Topic) -> Item {
    let show = Button::new(key, title, Action::Show(place(key))).small();
    Item { buttons: vec![show], ..Item::default() }
}

/// Lines to be read.
fn read<T: Into<crate::Text>>(lines: impl IntoIterator<Item = T>) -> Blocks {
    Blocks::new().list(ListLook::Reading, lines.into_iter().map(Item::new))
}

/// By when to look, to put in a hand, and to call, in the farm's limits.
fn clocks(practice: &Practice) -> Blocks {
    read(lambing::clocks(&practice.labor, &practice.stay)).small(lambing::CLOCKS_SUB)
}

/// How a lamb can lie, drawn, and what to do.
fn lies() -> Blocks {
    let lie = |(drawing, text): (String, String)| Item { drawing, ..Item::new(text) };
    Blocks::new()
        .caution([cautions::HANDS])
        .list(ListLook::Reading, lambing::lies().into_iter().map(lie))
        .small(lambing::LIES_SUB)
}

/// A newborn's first day, step by step, each with who says so.
fn first_day(practice: &Practice) -> Blocks {
    let steps = words::first_day(practice).into_iter();
    let steps = steps.map(|(step, source)| Item::new(step).note(source));
    Blocks::new().list(ListLook::Ranked, steps).small(words::by_rule(practice))
}

fn thermometer() -> Blocks {
    read(courses::THERMOMETER_STEPS).small(courses::THERMOMETER_SOURCE)
}

/// When to call the vet, about a ewe and about a lamb.
fn vet(practice: &Practice) -> Blocks {
    Blocks::new()
        .heading(words::EWE)
        .then(read(words::vet_ewe(&practice.labor)))
        .heading(words::LAMB)
        .then(read(words::vet_lamb(practice)))
        .small(words::VET_SOURCE)
}

/// Every source, folded under its subject.
fn sources() -> Blocks {
    let of_lambs = all_sources().into_iter().map(|(subject, sources)| (why::subject(subject), sources));
    let of_season =
        season::all_sources().into_iter().map(|(subject, sources)| (why::season_subject(subject), sources));
    let subject = |blocks: Blocks, (place, (subject, sources)): (usize, (&str, &[Source]))| {
        let lines = read(sources.iter().map(why::source_line));
        fold(blocks, format!("source-{place}"), words::sources_of(subject, sources.len()), lines)
    };
    of_lambs.chain(of_season).enumerate().fold(Blocks::new(), subject)
}

/// Adds what is folded away, in the look of sources.
fn fold(blocks: Blocks, key: String, label: String, inside: Blocks) -> Blocks {
    blocks
        .add(key, Kind::Fold(Fold { label: label.into(), sources: true, open: false, inside: inside.into() }))
}
