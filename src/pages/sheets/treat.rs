//! The sheet that notes a medicine given to one animal or to many; what was given before is filled in with one tap.

use yeanling_core::book::{Animal, EntryId, Event, Life, Treatment};
use yeanling_core::flock::{Flock, Treated};
use yeanling_core::units::{Moment, System, TypedError, parse_number};
use yeanling_words::common::{field_time, read_field_time};
use yeanling_words::{animals, errors, frame, lamb, life as words};

use crate::block::{Choice, Choices, Field, FieldKind, Kind, Toggle};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage, key_of};
use crate::view::View;
use crate::{Action, Button, Does as Only, Effect};

/// What only this sheet does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Does {
    /// Fills in what was given before, by its entry.
    Fill(EntryId),
}

const PRODUCT: &str = "treat-product";
const MEAT: &str = "treat-meat";
const MILK: &str = "treat-milk";
const AMOUNT: &str = "treat-amount";
const ROUTE: &str = "treat-route";
const REASON: &str = "treat-reason";
const BATCH: &str = "treat-batch";
const BY: &str = "treat-by";
const WHEN: &str = "treat-when";
const DAY_ONLY: &str = "treat-day-only";

/// How many medicines given before are offered.
const MOST_BEFORE: usize = 6;

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, of: &[Animal]) -> SheetPage {
    let field = |key: &'static str, label: &str, kind| {
        Field::new(label, kind, fields.text(key, "")).error(fields.error(key))
    };
    let meat = field(MEAT, words::MEAT_DAYS, FieldKind::Whole).hint(words::DAYS_HINT).unit(words::DAYS);
    let milk = field(MILK, words::MILK_DAYS, FieldKind::Whole).unit(words::DAYS);
    let blocks = before(view.flock)
        .field(PRODUCT, field(PRODUCT, words::MEDICINE, FieldKind::Text))
        .field(MEAT, meat)
        .field(MILK, milk)
        .fold("treat-record", words::RECORD, record(view, fields))
        .caution(words::TREAT_CAUTION)
        .button(Button::new("save", frame::SAVE, Action::Save).filled());
    let whose = if let [one] = of { animals::animal(view.flock, *one) } else { String::new() };
    SheetPage::new(words::TREAT_ASK, blocks).whose(whose)
}

/// What was given before, a button each.
fn before(flock: &Flock) -> Blocks {
    let given = given_before(flock);
    if given.is_empty() {
        return Blocks::new();
    }
    let button = |given: &Treated| {
        let fill = Action::Does(Only::Treat(Does::Fill(given.entry)));
        Button::new(key_of("before", given.entry), &given.treatment.product, fill)
    };
    Blocks::new().text(words::BEFORE).buttons(2, given.into_iter().map(button))
}

/// The rest of the record.
fn record(view: &View, fields: &Fields) -> Blocks {
    let field = |key: &'static str, label: &str| Field::new(label, FieldKind::Text, fields.text(key, ""));
    let routes = words::ROUTES.iter().enumerate();
    let routes =
        routes.map(|(place, way)| Choice::new(words::route(*way), Action::Choose(ROUTE.into(), place)));
    let routes = Choices::new(words::ROUTE, routes.collect(), fields.chosen(ROUTE)).labelled().snug();
    let when = Field::new(words::WHEN, FieldKind::Moment, fields.text(WHEN, &field_time(view.now)));
    let day_only = is_day_only(fields);
    let day_only = Toggle {
        label: words::DAY_ONLY.to_owned(),
        pressed: day_only,
        note: None,
        does: Action::Choose(DAY_ONLY.into(), usize::from(!day_only)),
    };
    Blocks::new()
        .field(AMOUNT, field(AMOUNT, words::AMOUNT))
        .choices(ROUTE, routes)
        .field(REASON, field(REASON, words::REASON))
        .field(BATCH, field(BATCH, words::BATCH))
        .field(BY, field(BY, words::BY))
        .field(WHEN, when)
        .add(DAY_ONLY, Kind::Toggle(day_only))
}

fn is_day_only(fields: &Fields) -> bool {
    fields.chosen(DAY_ONLY) == Some(1)
}

/// Does what only this sheet knows.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Does::Fill(entry) = does;
    if let Some(given) = view.flock.treatments().into_iter().find(|given| given.entry == entry) {
        fill(draft.top_mut(), &given.treatment);
    }
    Vec::new()
}

fn fill(fields: &mut Fields, from: &Treatment) {
    let days = |days: Option<u16>| days.map(|days| days.to_string()).unwrap_or_default();
    let texts = [
        (PRODUCT, from.product.clone()),
        (MEAT, days(from.meat_days)),
        (MILK, days(from.milk_days)),
        (AMOUNT, from.amount.clone().unwrap_or_default()),
        (REASON, from.reason.clone().unwrap_or_default()),
        (BATCH, from.batch.clone().unwrap_or_default()),
        (BY, from.by.clone().unwrap_or_default()),
    ];
    for (key, text) in texts {
        fields.set(key, text);
    }
    match words::ROUTES.iter().position(|way| Some(*way) == from.route) {
        Some(place) => fields.choose(ROUTE, place),
        None => fields.forget(ROUTE),
    }
    fields.all_right();
}

/// Saves what was typed.
pub(super) fn save(view: &View, draft: &mut Draft, of: &[Animal]) -> Vec<Effect> {
    let fields = draft.top_mut();
    fields.all_right();
    let (meat_days, milk_days) = (days(fields, MEAT), days(fields, MILK));
    let (Some(meat_days), Some(milk_days)) = (meat_days, milk_days) else { return Vec::new() };
    let Some(at) = when(view, fields) else { return draft.say_wrong(PRODUCT, lamb::NO_TIME) };
    let treatment = Treatment {
        product: fields.written(PRODUCT).unwrap_or_default(),
        amount: fields.written(AMOUNT),
        route: fields.chosen(ROUTE).and_then(|place| words::ROUTES.get(place).copied()),
        reason: fields.written(REASON),
        batch: fields.written(BATCH),
        by: fields.written(BY),
        day_only: is_day_only(fields),
        meat_days,
        milk_days,
    };
    let noting = |animal: &Animal| {
        let treated = Life::Treated { animal: *animal, treatment: Box::new(treatment.clone()) };
        view.noting_at(Event::Life(treated), at)
    };
    draft.save(view, PRODUCT, of.iter().map(noting).collect())
}

/// Returns when it was given: now, unless something else was typed.
fn when(view: &View, fields: &Fields) -> Option<Moment> {
    match fields.typed(WHEN) {
        None => Some(view.now),
        Some(typed) => read_field_time(typed).map(view.at_local),
    }
}

/// Reads a number of days; `Some(None)` when nothing was typed. What is wrong is said at its field.
fn days(fields: &mut Fields, key: &'static str) -> Option<Option<u16>> {
    match read_days(&fields.text(key, "")) {
        Ok(days) => Some(days),
        Err(wrong) => {
            fields.wrong(key, errors::typed(&wrong, errors::Field::Days, System::Metric));
            None
        }
    }
}

fn read_days(text: &str) -> Result<Option<u16>, TypedError> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let days = parse_number(text)?;
    let none = |_| TypedError::NotANumber { given: text.trim().to_owned() };
    format!("{days}").parse().map(Some).map_err(none)
}

/// Returns the last treatment with each of the medicines given last.
fn given_before(flock: &Flock) -> Vec<&Treated> {
    let mut seen: Vec<&Treated> = Vec::new();
    for treated in flock.treatments() {
        if seen.len() == MOST_BEFORE {
            break;
        }
        if seen.iter().all(|other| other.treatment.product != treated.treatment.product) {
            seen.push(treated);
        }
    }
    seen
}
