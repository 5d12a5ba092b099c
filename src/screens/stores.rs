//! The stores: what is on the shelf against what the season will take, and colostrum in the freezer.

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::arrange::Arrange;
use yeanling_core::book::{BatchId, Event, Item, Measure, MilkedFrom};
use yeanling_core::figures::ahead;
use yeanling_core::flock::Flock;
use yeanling_core::reckon::colostrum;
use yeanling_core::reckon::quality::{self, Keeps, Store};
use yeanling_core::reckon::season::shopping::{self, ON_THE_BOTTLE, kit};
use yeanling_core::units::{Amount, Brix, Mass, Moment, Volume};
use yeanling_core::watch::{Refusal, StoreRefusal};

use crate::farm::use_farm;
use crate::parts::{
    ActionButton, Button, Caution, Choice, Choices, Field, FieldKind, Page, Remark, Row, RowState, Rows,
    Section, Sheet, SmallButton, Title, Weight, WhyButton,
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

/// What is open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Open {
    Nothing,
    Count(Item),
    Freeze,
}

/// The stores.
#[component]
pub(crate) fn Stores() -> impl IntoView {
    let farm = use_farm();
    let open = RwSignal::new(Open::Nothing);
    let shelf = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| shelf(&ground.flock, now))
    });
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
                <ActionButton label=words::CHANGE name=named.clone() on_press=move || open.set(Open::Count(item)) />
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
            <Freezer open=open />
            {live(move || {
                let close = move || open.set(Open::Nothing);
                match open.get() {
                    Open::Nothing => ().into_any(),
                    Open::Count(item) => view! { <CountSheet item=item on_close=close /> }.into_any(),
                    Open::Freeze => view! { <FreezeSheet on_close=close /> }.into_any(),
                }
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
fn to_come(flock: &Flock, now: Moment) -> (u32, f64) {
    let seen = ahead(flock, now);
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
fn shelf(flock: &Flock, now: Moment) -> Vec<OnShelf> {
    let system = flock.practice.system;
    let (ewes, lambs) = to_come(flock, now);
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

/// What to have frozen against what is: for a share of the lambs to come, each its first day.
fn to_freeze(flock: &Flock, now: Moment) -> Option<String> {
    let (_, lambs) = to_come(flock, now);
    let each = colostrum::want(USUAL_LAMB, flock.practice.day_rule, flock.practice.housing).ok()?.by_24h;
    let freeze = shopping::freeze(lambs, ON_THE_BOTTLE, each).ok().filter(|freeze| freeze.lambs > 0)?;
    let batches = flock.stores.freezer();
    let there = batches.iter().map(|batch| batch.volume.as_milliliters() * f64::from(batch.left())).sum();
    let there = Volume::from_milliliters(there);
    Some(words::to_freeze(freeze.total, freeze.lambs, there, flock.practice.system))
}

/// A lamb of usual weight, for which colostrum is frozen (ours).
const USUAL_LAMB: Mass = Mass::from_kilograms(4.0);

/// A batch as it is shown.
#[derive(Clone, Debug, PartialEq)]
struct Frozen {
    id: BatchId,
    left: u8,
    from: String,
    text: String,
    says: String,
    old: bool,
}

/// Colostrum in the freezer, the oldest first.
#[component]
fn Freezer(open: RwSignal<Open>) -> impl IntoView {
    let farm = use_farm();
    let batches = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let flock = &ground.flock;
            let shown = |batch: &&yeanling_core::flock::Batch| {
                let keeps =
                    quality::bag(now.since(batch.frozen), Store::Freezer, flock.practice.freezer_life);
                let old = matches!(keeps, Keeps::Past(_));
                let frozen = words::frozen(batch.frozen, now);
                Frozen {
                    id: batch.id,
                    left: batch.left(),
                    from: stores::milked_from(flock, batch.from),
                    text: words::batch(batch, flock.practice.system),
                    says: if old { format!("{frozen}: {}", words::TOO_OLD) } else { frozen },
                    old,
                }
            };
            let mut all = flock.stores.freezer().iter().map(shown).collect::<Vec<Frozen>>();
            if let Some(first) = all.iter_mut().find(|batch| !batch.old) {
                first.says = format!("{} · {}", words::USE_FIRST, first.says);
            }
            all
        })
    });
    let none = Memo::new(move |_| batches.with(Vec::is_empty));
    let freeze = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| to_freeze(&ground.flock, now))
    });
    let row = move |batch: Frozen| {
        let Frozen { id, left, from, text, says, old } = batch;
        let named = format!("{}, {from}", words::THAWED);
        let thrown = format!("{}, {from}", words::THROW);
        let thaw = move || {
            farm.tap(Event::ColostrumThawed { batch: id, bags: 1 });
        };
        let throw = move || {
            farm.tap(Event::ColostrumThrown { batch: id, bags: left });
        };
        let action = move || view! { <ActionButton label=words::THAWED name=named.clone() on_press=thaw /> };
        let state = if old { RowState::Late } else { RowState::Coming };
        view! {
            <Row name=from text=text says=says state=Signal::stored(state) action=action>
                <SmallButton label=words::THROW name=thrown on_press=throw />
            </Row>
        }
        .into_any()
    };
    view! {
        <Section title=words::FREEZER>
            {live(move || freeze.get().map(|text| view! { <Remark text=text /> }).into_any())}
            {live(move || none.get().then(|| view! { <p>{words::NO_COLOSTRUM}</p> }).into_any())}
            <Rows>{each(move || batches.get(), |batch| format!("{} {} {}", batch.id, batch.text, batch.says), row)}</Rows>
            <Caution lines=vec![words::CAUTION.to_owned()] />
            <Button label=words::FREEZE on_press=move || open.set(Open::Freeze) />
        </Section>
    }
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

/// Notes colostrum that was frozen.
#[component]
fn FreezeSheet(#[prop(into)] on_close: Callback<()>) -> impl IntoView {
    let farm = use_farm();
    let system = untrack(|| farm.system());
    let from = RwSignal::new(MilkedFrom::SomeEwe);
    let (bags, each) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let (brix, label) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let (bags_wrong, each_wrong) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let (brix_wrong, label_wrong) = (RwSignal::new(String::new()), RwSignal::new(String::new()));
    let froms = [MilkedFrom::SomeEwe, MilkedFrom::Goat, MilkedFrom::Cow]
        .map(|from| Choice::new(from, farm.peek(|ground| stores::milked_from(&ground.flock, from))))
        .to_vec();
    let save = move || {
        for wrong in [bags_wrong, each_wrong, brix_wrong, label_wrong] {
            wrong.set(String::new());
        }
        let Ok(bags) = bags.get_untracked().trim().parse::<u8>() else {
            return bags_wrong.set(words::NO_BAGS.to_owned());
        };
        let volume = match Volume::parse(&each.get_untracked(), system) {
            Ok(volume) => volume,
            Err(wrong) => return each_wrong.set(errors::typed(&wrong, errors::Field::Volume, system)),
        };
        let typed = brix.get_untracked();
        let brix = match Brix::parse(&typed) {
            _ if typed.trim().is_empty() => None,
            Ok(brix) => Some(brix),
            Err(wrong) => return brix_wrong.set(errors::typed(&wrong, errors::Field::Brix, system)),
        };
        let label = Some(label.get_untracked().trim().to_owned()).filter(|label| !label.is_empty());
        let event = Event::ColostrumFrozen { from: from.get_untracked(), bags, volume, brix, label };
        match farm.note(event) {
            Ok(_) => on_close.run(()),
            Err(refusal) => {
                let field = match &refusal {
                    Refusal::Store(StoreRefusal::Bag(_)) => each_wrong,
                    Refusal::Store(StoreRefusal::Brix(_)) => brix_wrong,
                    Refusal::NoText | Refusal::LongText { .. } => label_wrong,
                    _ => bags_wrong,
                };
                field.set(refusals::refusal(&refusal, farm.peek_now(), system));
            }
        }
    };
    let unit = stores::unit(Item::Iodine, system);
    view! {
        <Sheet title=words::FREEZE on_close=on_close>
            <Choices
                label=words::FROM
                options=froms
                chosen=Signal::derive(move || Some(from.get()))
                on_choose=move |new| from.set(new)
            />
            <Field label=words::BAGS value=bags kind=FieldKind::Whole error=bags_wrong />
            <Field label=words::EACH value=each kind=FieldKind::Decimal error=each_wrong>
                <span>{unit}</span>
            </Field>
            <Field label=words::BRIX value=brix kind=FieldKind::Decimal error=brix_wrong>
                <span>"%"</span>
            </Field>
            <Field label=words::LABEL value=label error=label_wrong />
            <Button label=frame::SAVE on_press=save weight=Weight::Filled />
        </Sheet>
    }
}
