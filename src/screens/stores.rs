//! The stores: what is on the shelf against what the season will take, and colostrum in the freezer.

mod freezer;

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{Event, Item, Measure};
use yeanling_core::figures::{Outlooks, ahead};
use yeanling_core::flock::Flock;
use yeanling_core::reckon::season::shopping::{self, ON_THE_BOTTLE, kit};
use yeanling_core::units::{Amount, Moment};

use freezer::Freezer;

use crate::farm::use_farm;
use crate::parts::{
    ActionButton, Button, Choice, Choices, Field, FieldKind, Page, Remark, Row, RowState, Rows, Section,
    Sheet, Title, Weight, WhyButton,
};
use crate::pieces::{Standing, Top, why_text};
use crate::route::Screen;
use crate::words::{errors, frame, kit as words, refusals, stores, why};

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

/// The stores.
#[component]
pub(crate) fn Stores() -> impl IntoView {
    let farm = use_farm();
    let counted = RwSignal::new(None::<Item>);
    let coming = Memo::new(move |_| {
        let now = farm.now();
        farm.with_outlooks(|ground, outlooks| to_come(&ground.flock, outlooks, now))
    });
    let shelf = Memo::new(move |_| farm.with(|ground| shelf(&ground.flock, coming.get())));
    let told = move |known: bool| {
        Signal::derive(move || {
            shelf.with(|shelf| shelf.iter().filter(|one| one.known == known).cloned().collect::<Vec<_>>())
        })
    };
    let (first, others) = (told(true), told(false));
    let row = move |one: OnShelf| {
        let item = one.item;
        let named = format!("{} {}", words::CHANGE, stores::item(item));
        let action = move || {
            view! {
                <ActionButton label=words::CHANGE name=named.clone() on_press=move || counted.set(Some(item)) />
            }
        };
        let state = if one.short { RowState::Now } else { RowState::Coming };
        view! { <Row name=words::name(item) text=one.text says=one.says state=Signal::stored(state) action=action /> }
            .into_any()
    };
    let key = |one: &OnShelf| format!("{:?} {} {}", one.item, one.text, one.says);
    view! {
        <Page>
            <Top back=(Screen::More, frame::MORE.to_owned()) />
            <Title text=words::TITLE />
            <Standing />
            <Section title=words::SHELF>
                <Remark text=words::SHELF_SUB>
                    <WhyButton why=why_text(why::shopping()) />
                </Remark>
                <Rows>{each(move || first.get(), key, row)}</Rows>
            </Section>
            <details class="fold">
                <summary>{words::OTHERS}</summary>
                <Rows>{each(move || others.get(), key, row)}</Rows>
            </details>
            <Freezer coming=coming />
            {live(move || {
                let sheet = |item| view! { <CountSheet item=item on_close=move || counted.set(None) /> };
                counted.get().map(sheet).into_any()
            })}
        </Page>
    }
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

/// The kind of field in which an amount of this thing is typed.
const fn field(item: Item) -> errors::Field {
    match item.measure() {
        Measure::Kilograms => errors::Field::Stock,
        Measure::Milliliters => errors::Field::Volume,
        Measure::Pieces => errors::Field::Pieces,
    }
}

/// How an amount changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum How {
    Counted,
    Came,
    Used,
    Thrown,
}

/// Notes what is there, or what came and went.
#[component]
fn CountSheet(item: Item, #[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let system = untrack(|| farm.system());
    let how = RwSignal::new(How::Counted);
    let text = RwSignal::new(String::new());
    let error = RwSignal::new(String::new());
    let hows = vec![
        Choice::new(How::Counted, words::COUNTED),
        Choice::new(How::Came, words::CAME),
        Choice::new(How::Used, words::USED),
        Choice::new(How::Thrown, words::THROWN),
    ];
    let save = move || {
        let amount = match stores::read_amount(&text.get_untracked(), item, system) {
            Ok(amount) => amount,
            Err(wrong) => return error.set(errors::typed(&wrong, field(item), system)),
        };
        let event = match how.get_untracked() {
            How::Counted => Event::StoreCounted { item, amount },
            How::Came => Event::StoreIn { item, amount },
            How::Used => Event::StoreUsed { item, amount },
            How::Thrown => Event::StoreThrown { item, amount },
        };
        match farm.note(event) {
            Ok(_) => on_close.run(()),
            Err(refusal) => error.set(refusals::refusal(&refusal, farm.peek_now(), system)),
        }
    };
    view! {
        <Sheet title=words::name(item) on_close=on_close>
            <Choices
                label=words::ASK
                options=hows
                chosen=Signal::derive(move || Some(how.get()))
                on_choose=move |new| how.set(new)
            />
            <Field label=stores::HOW_MUCH value=text kind=FieldKind::Decimal error=error>
                <span>{stores::unit(item, system)}</span>
            </Field>
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}
