//! The sheet that notes how much of a thing is there, or what came and went.

use yeanling_core::book::{Event, Item, Measure};
use yeanling_words::{errors, frame, kit as words, stores};

use crate::block::{Choice, Choices, Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect};

const HOW: &str = "count-how";
const AMOUNT: &str = "count-amount";

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
