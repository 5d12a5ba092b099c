//! The stores: what is on the shelf against what the season will take, and colostrum in the freezer.

mod count;
mod freezer;

use yeanling_core::arrange::Arrange;
use yeanling_core::book::Item;
use yeanling_core::figures::{Outlooks, ahead};
use yeanling_core::flock::Flock;
use yeanling_core::reckon::season::shopping::{self, ON_THE_BOTTLE, kit};
use yeanling_core::units::{Amount, Moment};
use yeanling_words::{frame, kit as words, stores};

pub(crate) use count::{save as save_count, sheet as count_sheet};
pub(crate) use freezer::{save as save_frozen, sheet as freeze_sheet};

use crate::block::Row;
use crate::page::{Blocks, Page, why};
use crate::view::View;
use crate::{Action, Button, Key, Reason, Screen, Sheet, State};

/// A thing on the shelf.
#[derive(Clone, Debug, PartialEq)]
struct OnShelf {
    item: Item,
    text: String,
    says: String,
    short: bool,
    /// Whether it was counted or is wanted.
    known: bool,
}

/// Returns the screen.
pub(crate) fn page(view: &View) -> Page {
    let coming = to_come(view.flock, &view.outlooks, view.now);
    let (first, others): (Vec<_>, Vec<_>) = shelf(view.flock, coming).into_iter().partition(|one| one.known);
    let why = why(words::SHELF, Reason::Shopping);
    let shelf = Blocks::new().remark(words::SHELF_SUB, [why]).rows("on-shelf", first.iter().map(row));
    let page = Page::new(words::TITLE).back(Screen::More, frame::MORE);
    page.blocks(
        Blocks::new()
            .section("shelf", words::SHELF, shelf)
            .fold("others", words::OTHERS, Blocks::new().rows("not-on-shelf", others.iter().map(row)))
            .then(freezer::blocks(view, coming)),
    )
}

fn row(one: &OnShelf) -> (Key, Row) {
    let named = format!("{} {}", words::CHANGE, stores::item(one.item));
    let change = Button::new("change", words::CHANGE, Action::Ask(Sheet::Count(one.item))).action(named);
    let state = if one.short { State::Now } else { State::Coming };
    let row = Row::new(words::name(one.item)).text(&one.text).says(state, &one.says).action(change);
    (format!("{:?}", one.item).to_lowercase().into(), row)
}

/// What stands in the kit under this thing; none for what the stores count in another unit.
const fn of_kit(item: shopping::Item) -> Option<Item> {
    match item {
        shopping::Item::Gloves => Some(Item::Gloves),
        shopping::Item::Ropes => Some(Item::Ropes),
        shopping::Item::Harness => Some(Item::Harnesses),
        shopping::Item::Tags => Some(Item::Tags),
        shopping::Item::Thermometer => Some(Item::Thermometers),
        shopping::Item::Bottle => Some(Item::Bottles),
        shopping::Item::Teat => Some(Item::Teats),
        shopping::Item::Tube => Some(Item::Tubes),
        shopping::Item::Syringe => Some(Item::Syringes),
        shopping::Item::Electrolyte => Some(Item::Electrolyte),
        shopping::Item::Marker => Some(Item::Markers),
        shopping::Item::Towel => Some(Item::Towels),
        shopping::Item::Lubricant
        | shopping::Item::Iodine
        | shopping::Item::Warming
        | shopping::Item::Disinfectant => None,
    }
}

/// How many pieces the stores count for one of the kit: gloves and tags are reckoned in pairs.
const fn pieces(item: shopping::Item) -> u32 {
    match item {
        shopping::Item::Gloves | shopping::Item::Tags => 2,
        shopping::Item::Lubricant
        | shopping::Item::Ropes
        | shopping::Item::Harness
        | shopping::Item::Iodine
        | shopping::Item::Thermometer
        | shopping::Item::Bottle
        | shopping::Item::Teat
        | shopping::Item::Tube
        | shopping::Item::Syringe
        | shopping::Item::Warming
        | shopping::Item::Electrolyte
        | shopping::Item::Marker
        | shopping::Item::Disinfectant
        | shopping::Item::Towel => 1,
    }
}

/// What lambing will still take: how many ewes and lambs are to come; all living ewes while none was put to the ram.
fn to_come(flock: &Flock, outlooks: &Outlooks, now: Moment) -> (u32, f64) {
    let seen = ahead(flock, outlooks, now);
    if seen.put_to_ram > 0 {
        return seen.to_come();
    }
    let living = flock.ewes.values().filter(|ewe| ewe.lives()).count();
    let ewes = u32::try_from(living).unwrap_or(u32::MAX);
    (ewes, f64::from(ewes) * seen.litters.litters.mean())
}

/// How much of a thing to have, in its own unit; none for what nobody can say.
fn wanted(item: Item, needs: &[shopping::Need], lambs: f64, flock: &Flock) -> Option<Amount> {
    let of_needs = needs
        .iter()
        .find(|need| of_kit(need.rate.item) == Some(item))
        .map(|need| Amount::from_units(f64::from(need.have * pieces(need.rate.item))));
    let powder = || {
        let rule = flock.practice.powder_rule;
        let powder = shopping::powder(lambs, ON_THE_BOTTLE, rule).ok().filter(|powder| powder.lambs > 0)?;
        Some(Amount::from_units(powder.total.1.as_kilograms()))
    };
    match item {
        Item::MilkPowder => powder(),
        Item::Hay
        | Item::Straw
        | Item::Grain
        | Item::ColostrumPowder
        | Item::Electrolyte
        | Item::Iodine
        | Item::Disinfectant
        | Item::Lubricant
        | Item::Gloves
        | Item::Ropes
        | Item::Harnesses
        | Item::Towels
        | Item::Bottles
        | Item::Teats
        | Item::Tubes
        | Item::Syringes
        | Item::Thermometers
        | Item::Markers
        | Item::Crayons
        | Item::Tags
        | Item::Rings => of_needs,
    }
}

/// How many uses of a thing to have where the stores count it in another unit: dips, portions, bottles.
fn in_uses(item: Item, needs: &[shopping::Need]) -> Option<String> {
    let kit = if item == Item::Iodine {
        shopping::Item::Iodine
    } else if item == Item::Lubricant {
        shopping::Item::Lubricant
    } else if item == Item::Disinfectant {
        shopping::Item::Disinfectant
    } else {
        return None;
    };
    needs.iter().find(|need| need.rate.item == kit).map(|need| words::uses(item, need.have))
}

/// The shelf, what is short first, then what was not counted, then what is enough.
fn shelf(flock: &Flock, (ewes, lambs): (u32, f64)) -> Vec<OnShelf> {
    let system = flock.practice.system;
    let needs = kit(ewes, lambs).unwrap_or_default();
    let mut shelf: Vec<(u8, OnShelf)> = Item::ALL
        .into_iter()
        .map(|item| {
            let wanted = wanted(item, &needs, lambs, flock);
            let uses = in_uses(item, &needs);
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
            let text = uses.map_or(stands.clone(), |uses| format!("{stands} · {uses}"));
            (rank, OnShelf { item, text, short: short.is_some(), known, says })
        })
        .collect();
    shelf.arrange_by_key(|(rank, _)| *rank);
    shelf.into_iter().map(|(_, one)| one).collect()
}
