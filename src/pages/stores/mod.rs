//! Supplies: what is on hand against what the season will take, and colostrum in the freezer.

mod count;
mod freezer;
mod list;

use yeanling_core::book::Item;
use yeanling_core::flock::Flock;
use yeanling_core::reckon::season::shopping::{self, ON_THE_BOTTLE, kit};
use yeanling_core::seasons::{SeasonForecast, season_forecast};
use yeanling_core::sort_small::SortSmall;
use yeanling_core::units::Amount;
use yeanling_words::{frame, kit as words, stores};

pub(crate) use count::{
    all_sheet as count_all_sheet, save as save_count, save_all as save_count_all, sheet as count_sheet,
};
pub(crate) use freezer::{save as save_frozen, sheet as freeze_sheet};

pub(crate) use list::{does as share_list, given as list_given, is_ours as is_list};

use crate::block::{Kind, Row};
use crate::draft::Draft;
use crate::page::{Blocks, Page, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Screen, Sheet, State, timeline};

/// A thing on the shelf.
#[derive(Clone, Debug, PartialEq)]
struct OnShelf {
    item: Item,
    there: Option<Amount>,
    wanted: Option<Amount>,
    text: String,
    says: String,
    short: bool,
    /// For how many uses to have it, where the store counts it in another unit.
    uses: Option<String>,
    /// Whether it was counted or is wanted.
    known: bool,
}

/// Returns the screen.
pub(crate) fn page(view: &View, draft: &Draft) -> Page {
    let coming = coming(view);
    let (first, others): (Vec<_>, Vec<_>) = shelf(view.flock, coming).into_iter().partition(|one| one.known);
    let why = why(words::SHELF, Reason::Shopping);
    let list = list::paper(view, &first);
    let all = Button::new("count-all", words::COUNT_ALL, Action::Ask(Sheet::CountAll)).filled();
    let shelf =
        Blocks::new().remark(words::SHELF_SUB, [why]).button(all).rows("on-shelf", first.iter().map(row));
    let shelf = shelf.then(list::buttons(view, draft));
    let page = Page::new(words::TITLE).back(Screen::Season, frame::SEASON);
    page.blocks(
        Blocks::new()
            .section("shelf", words::SHELF, shelf)
            .fold("others", words::OTHERS, Blocks::new().rows("not-on-shelf", others.iter().map(row)))
            .then(freezer::blocks(view, coming))
            .then(timeline::of_stores(view))
            .add("kit-list", Kind::PaperTable(list)),
    )
}

/// Returns the way to this screen, with what is short.
pub(crate) fn door(view: &View, seen: &SeasonForecast) -> Row {
    let shelf = shelf(view.flock, to_come(view.flock, seen));
    let short: Vec<Item> = shelf.iter().filter(|one| one.short).map(|one| one.item).collect();
    let counted = Item::ALL.into_iter().filter(|item| view.flock.stores.level(*item).is_some()).count();
    let bags = view.flock.stores.batches.values().map(|batch| u32::from(batch.left())).sum();
    let row = Row::new(words::TITLE).text(words::counted(counted, bags)).to(Screen::Supplies);
    if short.is_empty() { row } else { row.says(State::Now, words::short_of(&short)) }
}

fn row(one: &OnShelf) -> (Key, Row) {
    let named = format!("{} {}", words::CHANGE, stores::item(one.item));
    let change = Button::new("change", words::CHANGE, Action::Ask(Sheet::Count(one.item))).action(named);
    let state = if one.short { State::Now } else { State::Coming };
    let row = Row::new(words::name(one.item)).text(&one.text).says(state, &one.says).action(change);
    (format!("{:?}", one.item).to_lowercase().into(), row)
}

/// How many ewes and lambs are to come.
fn coming(view: &View) -> (u32, f64) {
    to_come(view.flock, &season_forecast(view.flock, &view.lambing_forecasts, view.now))
}

/// What lambing will still take: how many ewes and lambs are to come; all living ewes while none was put to the ram.
fn to_come(flock: &Flock, seen: &SeasonForecast) -> (u32, f64) {
    if seen.put_to_ram > 0 {
        return seen.to_come();
    }
    let living = flock.ewes.values().filter(|ewe| ewe.lives()).count();
    let ewes = u32::try_from(living).unwrap_or(u32::MAX);
    (ewes, f64::from(ewes) * seen.litters.litters.mean())
}

/// How much of a thing to have, in its own unit; none for what nobody can say.
fn wanted(item: Item, need: Option<&shopping::Need>, lambs: f64, flock: &Flock) -> Option<Amount> {
    if item == Item::MilkPowder {
        let rule = flock.settings.powder_rule;
        let powder = shopping::powder(lambs, ON_THE_BOTTLE, rule).ok().filter(|powder| powder.lambs > 0)?;
        return Some(Amount::from_units(powder.total.1.as_kilograms()));
    }
    need.and_then(shopping::Need::pieces).map(|pieces| Amount::from_units(f64::from(pieces)))
}

/// How many uses of a thing to have where the stores count it in another unit: dips, portions, bottles.
fn in_uses(need: &shopping::Need) -> Option<String> {
    need.pieces().is_none().then(|| words::uses(need.rate.item, need.have))
}

/// The shelf, what is short first, then what was not counted, then what is enough.
fn shelf(flock: &Flock, (ewes, lambs): (u32, f64)) -> Vec<OnShelf> {
    let system = flock.settings.system;
    let needs = kit(ewes, lambs).unwrap_or_default();
    let mut shelf: Vec<(u8, OnShelf)> = Item::ALL
        .into_iter()
        .map(|item| {
            let need = needs.iter().find(|need| need.rate.item == item);
            let wanted = wanted(item, need, lambs, flock);
            let uses = need.and_then(in_uses);
            let there = flock.stores.level(item);
            let short = words::short(item, there, wanted, system);
            let known = there.is_some() || wanted.is_some() || uses.is_some();
            let (rank, says) = match (&short, there, wanted) {
                (Some(short), ..) => (0, short.clone()),
                (None, None, _) => (1, String::new()),
                (None, Some(_), Some(_)) => (2, words::ENOUGH.to_owned()),
                (None, Some(_), None) => (2, String::new()),
            };
            let stands = words::stands(item, there, wanted, system);
            let text = uses.as_ref().map_or(stands.clone(), |uses| format!("{stands} · {uses}"));
            (rank, OnShelf { item, there, wanted, text, short: short.is_some(), uses, known, says })
        })
        .collect();
    shelf.sort_small_by_key(|(rank, _)| *rank);
    shelf.into_iter().map(|(_, one)| one).collect()
}
