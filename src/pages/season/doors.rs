//! The ways from the season to its supplies, its feed and its summary; each says how it stands.

use yeanling_core::seasons::{SeasonForecast, seasons};
use yeanling_words::{feed, keep as keep_words, what_if, year};

use crate::block::Row;
use crate::page::Blocks;
use crate::view::View;
use crate::{Screen, keep, stores};

/// Returns the ways.
pub(super) fn blocks(view: &View, seen: &SeasonForecast) -> Blocks {
    let feed = Row::new(feed::TITLE).text(feed::SUB).to(Screen::Feed);
    let keep = Row::new(keep_words::TITLE).text(keep::stands(view)).to(Screen::Keep);
    let plan = Row::new(what_if::TITLE).text(what_if::SUB).to(Screen::Plan);
    let supplies = stores::door(view, seen);
    Blocks::new().rows(
        "ways",
        [("plan", plan), ("supplies", supplies), ("feed", feed), ("summary", summary(view)), ("keep", keep)],
    )
}

/// The latest season, with how many were born and how many of them live.
fn summary(view: &View) -> Row {
    let row = Row::new(year::TITLE).to(Screen::Summary);
    let all = seasons(view.flock);
    let Some(latest) = all.first() else { return row.text(year::EMPTY) };
    let lambs = latest.lambs.iter().filter_map(|lamb| view.flock.lamb(*lamb));
    let alive = lambs.filter(|lamb| lamb.is_alive()).count();
    row.text(year::born_and_alive(latest.year(), latest.lambs.len(), alive))
}
