//! Which ewe to keep: every ewe by rank with her reasons, the table of all, the farm's rules where they are used, and the
//! ewe lambs that may follow.

mod cards;
mod rules;
mod young;

use std::cmp::Reverse;

use yeanling_core::seasons::{Kept, keeping, minds_anything};
use yeanling_core::sort_small::SortSmall;
use yeanling_words::common::date;
use yeanling_words::{animals, cull_rules, frame, keep as words};

use crate::block::{Choice, Choices, Kind, PaperTable};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, Page};
use crate::view::View;
use crate::{Action, Button, Request, Screen};

/// Who is shown, and in which order.
const SHOW: &str = "keep-show";
const SORT: &str = "keep-sort";

/// Who is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Show {
    All,
    Met,
    Young,
}

const SHOWS: [(Show, &str); 3] =
    [(Show::All, words::ALL), (Show::Met, words::MET), (Show::Young, words::YOUNG)];

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let fields = &draft.fields;
    let kept = keeping(view.flock, view.now);
    let page = Page::new(words::TITLE).back(Screen::Season, frame::SEASON);
    if kept.is_empty() {
        let flock = Button::new("flock", frame::FLOCK, Action::Go(Screen::Flock));
        return page.blocks(Blocks::new().empty(words::EMPTY, [flock]));
    }
    let (show, _) = fields.pick(SHOW, &SHOWS, SHOWS[0]);
    let names = SHOWS.iter().map(|(_, name)| *name);
    let blocks = Blocks::new().choices(SHOW, choices(fields, SHOW, words::SHOW, names));
    let blocks = match show {
        Show::Young => blocks.then(young::blocks(view, &kept)),
        Show::All | Show::Met => blocks.then(ewes(view, fields, &kept, show)),
    };
    let print = Button::new("print", words::PRINT, Action::Phone(Request::Print));
    page.under(words::stands(met(&kept), kept.len())).blocks(
        blocks
            .then(rules::blocks(view))
            .button(print)
            .add("keep-table", Kind::PaperTable(table(view, fields, &kept))),
    )
}

/// Says how it stands, where the screen is offered.
pub(crate) fn stands(view: &View) -> String {
    let kept = keeping(view.flock, view.now);
    words::stands(met(&kept), kept.len())
}

fn met(kept: &[Kept]) -> usize {
    kept.iter().filter(|one| !one.marks.is_empty()).count()
}

fn choices<'a>(
    fields: &Fields,
    key: &'static str,
    label: &str,
    names: impl Iterator<Item = &'a str>,
) -> Choices {
    let option = |(place, name): (usize, &str)| Choice::new(name, Action::Choose(key.into(), place));
    Choices::new(label, names.enumerate().map(option).collect(), Some(fields.chosen(key).unwrap_or(0)))
        .snug()
        .labelled()
}

/// The ewes, each on a card.
fn ewes(view: &View, fields: &Fields, kept: &[Kept], show: Show) -> Blocks {
    let settings = view.settings();
    let shown = in_order(view, fields, kept);
    let shown = shown.into_iter().filter(|one| show == Show::All || !one.marks.is_empty());
    let rows: Vec<_> = shown.map(|one| cards::row(view, one)).collect();
    let said = if !minds_anything(&settings.cull_rules, &settings.cull_signs) {
        words::NO_RULES
    } else if rows.is_empty() {
        words::NONE_MET
    } else {
        words::RANKED
    };
    Blocks::new()
        .choices(SORT, choices(fields, SORT, words::SORT, words::ORDERS.into_iter()))
        .small(said)
        .rows("kept", rows)
}

/// The ewes in the order that was chosen.
fn in_order<'a>(view: &View, fields: &Fields, kept: &'a [Kept]) -> Vec<&'a Kept> {
    let mut all: Vec<&Kept> = kept.iter().collect();
    let weaned = |one: &Kept| one.weaned_a_season.map(|(mass, _)| mass.as_kilograms());
    match fields.chosen(SORT).unwrap_or(0) {
        // The most first; of whom nothing is known last.
        1 => all.sort_small_by(|one, other| {
            weaned(other).unwrap_or(-1.0).total_cmp(&weaned(one).unwrap_or(-1.0))
        }),
        2 => all.sort_small_by_key(|one| Reverse(one.record.years)),
        3 => all.sort_small_by_key(|one| Reverse(one.record.lost + one.record.born_dead)),
        4 => all.sort_small_by_key(|one| {
            let tag = view.flock.ewe(one.ewe).and_then(|ewe| ewe.tag.clone()).unwrap_or_default();
            (tag.len(), tag)
        }),
        _ => {}
    }
    all
}

/// The table of all: on a wide screen beside the cards, and on paper.
fn table(view: &View, fields: &Fields, kept: &[Kept]) -> PaperTable {
    let system = view.system();
    let row = |one: &&Kept| {
        let mut row = vec![animals::ewe_of(view.flock, one.ewe)];
        row.extend(words::cells(one, cull_rules::marks(&one.marks, system), system));
        row
    };
    PaperTable {
        head: words::table_head(&view.settings().farm_name, &date(view.now)),
        heads: words::HEADS.map(str::to_owned).to_vec(),
        rows: in_order(view, fields, kept).iter().map(row).collect(),
        on_screen: *view.wide,
    }
}
