//! Colostrum in the freezer: what lies there, the oldest first, and what should; and the sheet that notes more.

use yeanling_core::book::{Event, EweId, Item, MilkedFrom};
use yeanling_core::flock::{Batch, Ewe, Flock};
use yeanling_core::reckon::colostrum;
use yeanling_core::reckon::quality::{self, Keeps, Store};
use yeanling_core::reckon::season::shopping::{self, ON_THE_BOTTLE};
use yeanling_core::units::{Brix, Mass, Moment, Volume};
use yeanling_core::watch::{Rejection, StoreRejection};
use yeanling_words::common::{field_time, read_field_day};
use yeanling_words::{animals, errors, frame, kit as words, rejections, stores};

use crate::block::{Choice, Choices, Field, FieldKind, Row};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect, Key, Sheet, State};

/// A lamb of usual weight, for which colostrum is frozen (ours).
const USUAL_LAMB: Mass = Mass::from_kilograms(4.0);

/// Returns the part of the stores; `coming` is how many ewes and lambs are to come.
pub(super) fn blocks(view: &View, (_, lambs): (u32, f64)) -> Blocks {
    let batches = view.flock.stores.freezer();
    let first = batches.iter().position(|batch| !is_old(view, batch));
    let rows = batches.iter().enumerate().map(|(place, batch)| row(view, batch, first == Some(place)));
    let mut blocks = Blocks::new();
    if let Some(text) = to_freeze(view.flock, lambs) {
        blocks = blocks.remark(text, []);
    }
    if batches.is_empty() {
        blocks = blocks.text(words::NO_COLOSTRUM);
    }
    let freeze = Button::new("freeze", words::FREEZE, Action::Ask(Sheet::Freeze));
    let blocks = blocks.rows("batches", rows).caution([words::CAUTION]).button(freeze);
    Blocks::new().section("freezer", words::FREEZER, blocks)
}

fn is_old(view: &View, batch: &Batch) -> bool {
    let age = view.now.since(batch.frozen);
    matches!(quality::bag(age, Store::Freezer, view.settings().freezer_life), Keeps::Past(_))
}

fn row(view: &View, batch: &Batch, first: bool) -> (Key, Row) {
    let from = stores::milked_from(view.flock, batch.from);
    let thawed = Action::Note(vec![Event::ColostrumThawed { batch: batch.id, bags: 1 }]);
    let thrown = Action::Note(vec![Event::ColostrumThrown { batch: batch.id, bags: batch.left() }]);
    let thaw = Button::new("thaw", words::THAWED, thawed).action(format!("{}, {from}", words::THAWED));
    let throw = Button::new("throw", words::THROW, thrown).small().named(format!("{}, {from}", words::THROW));
    let frozen = words::frozen(batch.frozen, view.now);
    let (state, says) = if is_old(view, batch) {
        (State::Late, format!("{frozen}: {}", words::TOO_OLD))
    } else if first {
        (State::Coming, format!("{} · {frozen}", words::USE_FIRST))
    } else {
        (State::Coming, frozen)
    };
    let text = words::batch(batch, view.system(), boosted(view, batch));
    let row = Row::new(from).text(text).says(state, says).action(thaw);
    (format!("batch-{}", batch.id).into(), row.inside(Blocks::new().button(throw)))
}

/// When the ewe that it is from had her booster; nothing where it is not of a known ewe.
fn boosted(view: &View, batch: &Batch) -> Option<Option<Moment>> {
    match batch.from {
        MilkedFrom::Ewe(ewe) => Some(view.flock.boosted_for(ewe, batch.frozen)),
        MilkedFrom::SomeEwe | MilkedFrom::Goat | MilkedFrom::Cow => None,
    }
}

/// What to have frozen against what is: for a share of the lambs to come, each its first day.
fn to_freeze(flock: &Flock, lambs: f64) -> Option<String> {
    let each = colostrum::target(USUAL_LAMB, flock.settings.day_rule, flock.settings.housing).ok()?.by_24h;
    let freeze = shopping::freeze(lambs, ON_THE_BOTTLE, each).ok().filter(|freeze| freeze.lambs > 0)?;
    let batches = flock.stores.freezer();
    let there = batches.iter().map(|batch| batch.volume.as_milliliters() * f64::from(batch.left())).sum();
    let there = Volume::from_milliliters(there);
    Some(words::to_freeze(freeze.total, freeze.lambs, there, flock.settings.system))
}

const FROM: &str = "freeze-from";
const BAGS: &str = "freeze-bags";
const EACH: &str = "freeze-each";
const BRIX: &str = "freeze-brix";
const LABEL: &str = "freeze-label";
const EWE: &str = "freeze-ewe";
const DAY: &str = "freeze-day";

const FROMS: [MilkedFrom; 3] = [MilkedFrom::SomeEwe, MilkedFrom::Goat, MilkedFrom::Cow];

fn today(view: &View) -> String {
    field_time(view.now).chars().take(10).collect()
}

/// The ewe that wears a tag, one that lives before one that does not: a bag may outlast her.
fn called(flock: &Flock, tag: &str) -> Option<EweId> {
    let tag = animals::tag_of(tag);
    let is = |ewe: &&Ewe| ewe.tag.as_ref().is_some_and(|worn| worn.eq_ignore_ascii_case(tag));
    let all = || flock.ewes.values().filter(is);
    all().find(|ewe| ewe.lives()).or_else(|| all().next_back()).map(|ewe| ewe.id)
}

/// Returns the sheet that notes colostrum that was frozen.
pub(crate) fn sheet(view: &View, fields: &Fields) -> SheetPage {
    let name = |from| stores::milked_from(view.flock, from);
    let froms = FROMS.iter().enumerate();
    let froms = froms.map(|(place, from)| Choice::new(name(*from), Action::Choose(FROM.into(), place)));
    let field = |key: &'static str, label: &str, kind| {
        Field::new(label, kind, fields.text(key, "")).error(fields.error(key))
    };
    let unit = stores::unit(Item::Iodine, view.system());
    let from = Choices::new(words::FROM, froms.collect(), Some(fields.chosen(FROM).unwrap_or(0)));
    let blocks = Blocks::new().choices(FROM, from);
    let blocks = match fields.pick(FROM, &FROMS, MilkedFrom::SomeEwe) {
        MilkedFrom::SomeEwe | MilkedFrom::Ewe(_) => {
            blocks.field(EWE, field(EWE, words::FROM_EWE, FieldKind::Text))
        }
        MilkedFrom::Goat | MilkedFrom::Cow => blocks,
    };
    let day = Field::new(words::FROZEN_DAY, FieldKind::Date, fields.text(DAY, &today(view)));
    SheetPage::new(
        words::FREEZE,
        blocks
            .field(DAY, day.error(fields.error(DAY)))
            .field(BAGS, field(BAGS, words::BAGS, FieldKind::Whole))
            .field(EACH, field(EACH, words::EACH, FieldKind::Decimal).unit(unit))
            .field(BRIX, field(BRIX, words::BRIX, FieldKind::Decimal).unit("%"))
            .field(LABEL, field(LABEL, words::LABEL, FieldKind::Text))
            .button(Button::new("save", frame::SAVE, Action::Save).filled()),
    )
}

/// Saves what was typed.
pub(crate) fn save(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let system = view.system();
    draft.top_mut().all_right();
    let fields = draft.top();
    let Ok(bags) = fields.text(BAGS, "").trim().parse::<u8>() else {
        return draft.say_wrong(BAGS, words::NO_BAGS);
    };
    let volume = match Volume::parse(&fields.text(EACH, ""), system) {
        Ok(volume) => volume,
        Err(wrong) => return draft.say_wrong(EACH, errors::typed(&wrong, errors::Field::Volume, system)),
    };
    let brix = match fields.written(BRIX).map(|typed| Brix::parse(&typed)).transpose() {
        Ok(brix) => brix,
        Err(wrong) => return draft.say_wrong(BRIX, errors::typed(&wrong, errors::Field::Brix, system)),
    };
    let from = match (fields.pick(FROM, &FROMS, MilkedFrom::SomeEwe), fields.written(EWE)) {
        (MilkedFrom::SomeEwe, Some(tag)) => match called(view.flock, &tag) {
            Some(ewe) => MilkedFrom::Ewe(ewe),
            None => return draft.say_wrong(EWE, words::no_such_ewe(&tag)),
        },
        (from, _) => from,
    };
    let label = fields.written(LABEL);
    let Some(day) = read_field_day(&fields.text(DAY, &today(view))) else {
        return draft.say_wrong(DAY, words::NO_FROZEN_DAY);
    };
    let frozen = Event::ColostrumFrozen { from, bags, volume, brix, label };
    let frozen = vec![view.noting_at(frozen, view.on_day(day))];
    match view.validate(&frozen) {
        Ok(()) => draft.answer(view, frozen),
        Err(rejection) => {
            let field = match &rejection {
                Rejection::Store(StoreRejection::Bag(_)) => EACH,
                Rejection::Store(StoreRejection::Brix(_)) => BRIX,
                Rejection::NoText | Rejection::LongText { .. } => LABEL,
                Rejection::InFuture { .. } => DAY,
                _ => BAGS,
            };
            draft.say_wrong(field, rejections::rejection(&rejection, view.now, system))
        }
    }
}
