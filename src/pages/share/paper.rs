//! The ewes on paper: the farm, the day, and a line a ewe in the order of their tags.

use std::collections::BTreeMap;

use yeanling_core::book::EweId;
use yeanling_core::flock::Ewe;
use yeanling_core::sort_small::{Gather, SortSmall};
use yeanling_core::watch::{Product, withdrawal};
use yeanling_words::common::{date, number, short_date};
use yeanling_words::{life, spreadsheet as words};

use crate::block::{Kind, PaperTable};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Request};

/// Returns the part that prints, and what is printed; nothing without a ewe.
pub(super) fn blocks(view: &View) -> Blocks {
    let table = table(view);
    if table.rows.is_empty() {
        return Blocks::new();
    }
    let print = Button::new("print-ewes", words::PRINT_EWES, Action::Phone(Request::Print));
    let inside = Blocks::new().text(words::PAPER_SUB).button(print);
    Blocks::new().section("paper", words::PAPER, inside).add("paper-ewes", Kind::PaperTable(table))
}

fn table(view: &View) -> PaperTable {
    let mut ewes: Vec<&Ewe> = view.flock.ewes.values().filter(|ewe| ewe.lives()).collect();
    ewes.sort_small_by_key(|ewe| super::tables::by_tag(ewe.tag.as_deref()));
    let due: BTreeMap<EweId, String> = view
        .lambing_forecasts
        .awaited
        .iter()
        .filter_map(|one| Some((one.ewe, short_date(one.lambing_forecast.as_ref().ok()?.likely))))
        .gathered();
    PaperTable {
        head: words::paper_head(&view.settings().farm_name, ewes.len(), &date(view.now)),
        heads: words::PAPER_HEADS.map(str::to_owned).to_vec(),
        rows: ewes.into_iter().map(|ewe| row(view, ewe, &due)).collect(),
        on_screen: false,
    }
}

fn row(view: &View, ewe: &Ewe, due: &BTreeMap<EweId, String>) -> Vec<String> {
    let flock = view.flock;
    let litter =
        flock.litters.values().filter(|litter| litter.dam == Some(ewe.id)).max_by_key(|litter| litter.began);
    let lambs = litter.map(|litter| {
        let lambs = litter.lambs.iter().filter_map(|lamb| flock.lamb(*lamb));
        words::alive(lambs.filter(|lamb| lamb.is_alive()).count(), litter.lambs.len())
    });
    let lambed = litter.map(|litter| words::lambed(&short_date(litter.began.local().date())));
    // A ewe that is awaited again has lambed in another season.
    let when = due.get(&ewe.id).cloned();
    let lambs = if when.is_some() { None } else { lambs };
    let held = withdrawal(flock, animal(ewe), Product::Meat, view.now);
    [
        Some(ewe.tag.clone().unwrap_or_default()),
        flock.ewe_born(ewe.id).map(life::birth_day),
        ewe.breed.clone(),
        when.or(lambed),
        ewe.scans.last().map(|scan| scan.lambs.to_string()),
        ewe.scores.last().map(|score| number(score.score.as_score(), 2)),
        lambs,
        held.map(|held| life::withdrawal(Product::Meat, &held, view.now).replace('*', "")),
    ]
    .map(Option::unwrap_or_default)
    .to_vec()
}

const fn animal(ewe: &Ewe) -> yeanling_core::book::Animal {
    yeanling_core::book::Animal::Ewe(ewe.id)
}
