//! The sheet that notes how much of a thing is there, or what came and went.

use yeanling_core::book::{Event, Item, Measure};
use yeanling_core::sort_small::SortSmall;
use yeanling_words::{errors, frame, kit as words, rejections, stores};

use super::{OnShelf, coming, shelf};
use crate::block::{Choice, Choices, Field, FieldKind};
use crate::draft::{Draft, Fields, Noting};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect, Key};

const HOW: &str = "count-how";
const AMOUNT: &str = "count-amount";
/// What is wrong with all of a count.
const ALL: &str = "count-all";

/// How an amount changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum How {
    Counted,
    Came,
    Used,
    Thrown,
}

const HOWS: [(How, &str); 4] = [
    (How::Counted, words::COUNTED),
    (How::Came, words::CAME),
    (How::Used, words::USED),
    (How::Thrown, words::THROWN),
];

/// Returns the sheet.
pub(crate) fn sheet(view: &View, fields: &Fields, item: Item) -> SheetPage {
    let hows = HOWS.iter().enumerate();
    let hows = hows.map(|(place, (_, name))| Choice::new(*name, Action::Choose(HOW.into(), place))).collect();
    let amount = Field::new(stores::HOW_MUCH, FieldKind::Decimal, fields.text(AMOUNT, ""))
        .error(fields.error(AMOUNT))
        .unit(stores::unit(item, view.system()));
    SheetPage::new(
        words::name(item),
        Blocks::new()
            .choices(HOW, Choices::new(words::ASK, hows, Some(fields.chosen(HOW).unwrap_or(0))))
            .field(AMOUNT, amount)
            .button(Button::new("save", frame::SAVE, Action::Save).filled()),
    )
}

/// Saves what was typed.
pub(crate) fn save(view: &View, draft: &mut Draft, item: Item) -> Vec<Effect> {
    let (fields, system) = (draft.top(), view.system());
    let amount = match stores::read_amount(&fields.text(AMOUNT, ""), item, system) {
        Ok(amount) => amount,
        Err(wrong) => return draft.say_wrong(AMOUNT, errors::typed(&wrong, kind(item), system)),
    };
    let (how, _) = fields.pick(HOW, &HOWS, HOWS[0]);
    let event = match how {
        How::Counted => Event::StoreCounted { item, amount },
        How::Came => Event::StoreIn { item, amount },
        How::Used => Event::StoreUsed { item, amount },
        How::Thrown => Event::StoreThrown { item, amount },
    };
    draft.save(view, AMOUNT, vec![view.noting(event)])
}

/// The kind of field in which an amount of this thing is typed.
const fn kind(item: Item) -> errors::Field {
    match item.measure() {
        Measure::Kilograms => errors::Field::Stock,
        Measure::Milliliters => errors::Field::Volume,
        Measure::Pieces => errors::Field::Pieces,
    }
}

/// The key of a thing's own field where all are counted.
fn key(item: Item) -> Key {
    format!("count-all-{item:?}").to_lowercase().into()
}

/// Returns the sheet on which the whole kit is counted, a field each.
pub(crate) fn all_sheet(view: &View, fields: &Fields) -> SheetPage {
    let field = |blocks: Blocks, one: &OnShelf| {
        let (item, key) = (one.item, key(one.item));
        let kind = match item.measure() {
            Measure::Kilograms | Measure::Milliliters => FieldKind::Decimal,
            Measure::Pieces => FieldKind::Whole,
        };
        let hint = words::to_count(item, one.there, one.wanted, view.system());
        let field = Field::new(words::name(item), kind, fields.text(&key, "")).error(fields.error(&key));
        blocks.field(key, field.hint(hint).unit(stores::unit(item, view.system())))
    };
    let blocks = Blocks::new().small(words::COUNT_ALL_TEXT);
    let blocks = kit(view).iter().fold(blocks, field).wrong(fields.error(ALL));
    SheetPage::new(
        words::COUNT_ALL_ASK,
        blocks.button(Button::new("save", frame::SAVE, Action::Save).filled()),
    )
}

/// What lambing takes and what was ever counted, in the order of the list.
fn kit(view: &View) -> Vec<OnShelf> {
    let mut kit: Vec<OnShelf> = shelf(view.flock, coming(view)).into_iter().filter(|one| one.known).collect();
    kit.sort_small_by_key(|one| one.item);
    kit
}

/// Saves what was counted, all of it or nothing.
pub(crate) fn save_all(view: &View, draft: &mut Draft) -> Vec<Effect> {
    draft.top_mut().all_right();
    let system = view.system();
    let mut counted: Vec<(Key, Noting)> = Vec::new();
    for OnShelf { item, .. } in kit(view) {
        let key = key(item);
        let Some(typed) = draft.top().written(&key) else { continue };
        match stores::read_amount(&typed, item, system) {
            Ok(amount) => counted.push((key, view.noting(Event::StoreCounted { item, amount }))),
            Err(wrong) => return draft.say_wrong(key, errors::typed(&wrong, kind(item), system)),
        }
    }
    let (keys, notings): (Vec<Key>, Vec<Noting>) = counted.into_iter().unzip();
    if notings.is_empty() {
        return draft.say_wrong(ALL, words::NONE_COUNTED);
    }
    match view.allow_each(&notings) {
        Ok(()) => {
            draft.close();
            vec![Effect::Note(notings)]
        }
        Err((place, rejection)) => {
            let said = rejections::rejection(&rejection, view.now, system);
            draft.say_wrong(keys.get(place).cloned().unwrap_or(ALL.into()), said)
        }
    }
}
