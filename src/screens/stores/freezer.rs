//! Colostrum in the freezer: what lies there, the oldest first, and what should.

use crate::parts::{each, live};
use crate::signals::prelude::*;
use yeanling_core::book::{BatchId, Event, Item, MilkedFrom};
use yeanling_core::flock::{Batch, Flock};
use yeanling_core::reckon::colostrum;
use yeanling_core::reckon::quality::{self, Keeps, Store};
use yeanling_core::reckon::season::shopping::{self, ON_THE_BOTTLE};
use yeanling_core::units::{Brix, Mass, Volume};
use yeanling_core::watch::{Refusal, StoreRefusal};

use crate::farm::use_farm;
use crate::parts::{
    ActionButton, Button, Caution, Choice, Choices, Field, FieldKind, Remark, Row, RowState, Rows, Section,
    Sheet, SmallButton, Weight,
};
use crate::words::{errors, frame, kit as words, refusals, stores};

/// What to have frozen against what is: for a share of the lambs to come, each its first day.
fn to_freeze(flock: &Flock, lambs: f64) -> Option<String> {
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
pub(super) fn Freezer(
    /// How many ewes and lambs are to come.
    coming: Memo<(u32, f64)>,
) -> impl IntoView {
    let farm = use_farm();
    let freezing = RwSignal::new(false);
    let batches = Memo::new(move |_| {
        let now = farm.now();
        farm.with(|ground| {
            let flock = &ground.flock;
            let shown = |batch: &&Batch| {
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
        let (_, lambs) = coming.get();
        farm.with(|ground| to_freeze(&ground.flock, lambs))
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
            <Button label=words::FREEZE on_press=move || freezing.set(true) />
        </Section>
        {live(move || freezing.get().then(|| view! { <FreezeSheet on_close=move || freezing.set(false) /> }).into_any())}
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
