//! Illness in Help: a page for the ewe and one for the lamb, by what is seen, and a page for each row of the tables.
//!
//! What it may be, what to do and what never to do are the words of the answers; the signs are those that lead the table to
//! the row.

use yeanling_core::reckon::illness::{Ailment, ewe, lamb};
use yeanling_core::source::Source;
use yeanling_core::units::System;
use yeanling_words::help::illness::{self as words, More, more};
use yeanling_words::illness::{self as told, RowWords};
use yeanling_words::{cautions, why};

use super::{fold, read, steps};
use crate::block::{Item, ListLook, Row};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Key, Screen};

/// Returns the page of a row.
pub(crate) fn ailment_page(view: &View, ailment: Ailment) -> Page {
    let (to, name) = view.back(Screen::Ailment(ailment));
    Page::new(row_words(ailment).name).under(whose(ailment)).back(to, name).blocks(inside(ailment))
}

/// Returns whose it is.
pub(super) const fn whose(ailment: Ailment) -> &'static str {
    match ailment {
        Ailment::Ewe(_) => words::A_EWE,
        Ailment::Lamb(_) => words::A_LAMB,
    }
}

/// Returns what the answers say of a row.
pub(super) const fn row_words(ailment: Ailment) -> RowWords {
    match ailment {
        Ailment::Ewe(row) => told::ewe::row(row),
        Ailment::Lamb(row) => told::lamb::row(row),
    }
}

/// Returns what leads to a row, in words.
pub(super) fn signs(ailment: Ailment) -> Vec<&'static str> {
    match ailment {
        Ailment::Ewe(row) => row.leads().map(told::ewe::lead).collect(),
        Ailment::Lamb(row) => row.leads().map(told::lamb::lead).collect(),
    }
}

/// Returns what stands on the page of a row: first the vet and what never to do.
fn inside(ailment: Ailment) -> Blocks {
    let RowWords { may_be, tells, until, never, .. } = row_words(ailment);
    let More { call, also, published, differ, .. } = more(ailment);
    let list = |key: &'static str, title, look, lines: &[&'static str]| {
        let items = lines.iter().map(|line| Item::new(*line));
        Blocks::new().section(key, title, Blocks::new().list(look, items))
    };
    let seen = told::sentence(&signs(ailment));
    let looks: Vec<String> = [seen, also.to_owned()].into_iter().filter(|line| !line.is_empty()).collect();
    let open = Button::new("not-right", told::TITLE, Action::Go(Screen::NotRight));
    let blocks = Blocks::new().lead(call).then(list("never", told::NEVER, ListLook::Nevers, never));
    let blocks = if ailment.people_catch_it() { blocks.caution([cautions::PEOPLE]) } else { blocks };
    blocks
        .section("looks", words::LOOKS, read(looks))
        .then(list("until", words::UNTIL, ListLook::Ranked, until))
        .then(list("may-be", words::MAY_BE, ListLook::Ranked, may_be))
        .section("tells", words::TELLS, Blocks::new().text(tells))
        .then(list("published", words::PUBLISHED, ListLook::Reading, published))
        .then(list("differ", words::DIFFER, ListLook::Reading, differ))
        .button(open)
        .then(foot(ailment.sources()))
}

/// Returns the page of the ewe: a ewe that is down first, then every row by what is seen, and what is normal.
pub(super) fn of_the_ewe(system: System) -> Blocks {
    let down = [words::DOWN_CALL].into_iter().chain(told::DOWN).chain([told::NOTHING_BY_MOUTH]);
    by_what_is_seen(Blocks::new().section("down", words::DOWN, read(down)), |ailment| {
        matches!(ailment, Ailment::Ewe(_))
    })
    .section("normal", words::NORMAL, read(words::normal(system)))
    .then(foot(ewe::SOURCES))
}

/// Returns the page of the lamb: what is asked first, then every row by what is seen.
pub(super) fn of_the_lamb() -> Blocks {
    by_what_is_seen(Blocks::new().section("first", words::FIRST, steps(words::FIRST_STEPS)), |ailment| {
        matches!(ailment, Ailment::Lamb(_))
    })
    .then(foot(lamb::SOURCES))
}

/// What stands under each page: the sources, that it replaces no vet, and that none has read it yet.
fn foot(sources: &[Source]) -> Blocks {
    let lines = read(sources.iter().map(why::source_line));
    fold(Blocks::new(), "sources".to_owned(), words::SOURCES.to_owned(), lines)
        .small(told::HELPS)
        .small(told::UNREAD)
}

fn by_what_is_seen(blocks: Blocks, of: fn(&Ailment) -> bool) -> Blocks {
    let rows = Ailment::all().filter(of).map(row);
    let open = Button::new("not-right", told::TITLE, Action::Go(Screen::NotRight));
    blocks.button(open).section("every", words::EVERY, Blocks::new().rows("every-rows", rows))
}

/// So many signs stand behind a name in a list; its page has them all.
const SIGNS: usize = 3;

/// Returns a row of a list, which leads to its page.
pub(super) fn row(ailment: Ailment) -> (Key, Row) {
    let (kind, place) = match ailment {
        Ailment::Ewe(row) => ("ewe", format!("{row:?}")),
        Ailment::Lamb(row) => ("lamb", format!("{row:?}")),
    };
    let all = signs(ailment);
    let shown = told::sentence(&all[..all.len().min(SIGNS)]);
    let text = if shown.is_empty() { more(ailment).also.to_owned() } else { shown };
    let key = format!("{kind}-{place}").to_lowercase();
    (key.into(), Row::new(row_words(ailment).name).text(text).to(Screen::Ailment(ailment)))
}
