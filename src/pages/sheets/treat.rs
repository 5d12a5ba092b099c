//! The sheet that notes a medicine given to one animal or to many; what was given before is filled in with one tap.

use yeanling_core::book::{Animal, EntryId, Event, EweId, GroupId, Life, Treatment};
use yeanling_core::flock::{Flock, Treated};
use yeanling_core::reckon::season::dates::DateTask;
use yeanling_core::seasons::{group_dates, without_booster};
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
/// Whether it is the booster before lambing.
const BOOSTER: &str = "treat-booster";

/// How many medicines given before are offered.
const MOST_BEFORE: usize = 6;

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, of: &[Animal]) -> SheetPage {
    let whose = if let [one] = of { animals::animal(view.flock, *one) } else { String::new() };
    let ewes = of.iter().all(|animal| matches!(animal, Animal::Ewe(_)));
    let booster =
        if ewes { Blocks::new().add(BOOSTER, Kind::Toggle(booster(fields))) } else { Blocks::new() };
    asked(view, fields, words::TREAT_ASK, &blank(), booster).whose(whose)
}

/// Returns the sheet on which the booster of a group's ewes is noted, as it was given last.
pub(super) fn boost(view: &View, fields: &Fields, group: GroupId) -> SheetPage {
    let ewes = to_boost(view, group).len();
    let who = Blocks::new().text(words::boosted(ewes));
    let name = view.flock.groups.get(&group).map(|group| group.name.clone()).unwrap_or_default();
    asked(view, fields, words::BOOST_ASK, &last_booster(view.flock), who).whose(name)
}

/// Asks for a treatment; `stood` stands there until something else is typed.
fn asked(view: &View, fields: &Fields, title: &str, stood: &Treatment, first: Blocks) -> SheetPage {
    let field = |key: &'static str, label: &str, kind, stood: &str| {
        Field::new(label, kind, fields.text(key, stood)).error(fields.error(key))
    };
    let meat = field(MEAT, words::MEAT_DAYS, FieldKind::Whole, &typed_days(stood.meat_days));
    let milk = field(MILK, words::MILK_DAYS, FieldKind::Whole, &typed_days(stood.milk_days));
    let blocks = first
        .then(before(view.flock))
        .field(PRODUCT, field(PRODUCT, words::MEDICINE, FieldKind::Text, &stood.product))
        .field(MEAT, meat.hint(words::DAYS_HINT).unit(words::DAYS))
        .field(MILK, milk.unit(words::DAYS))
        .fold("treat-record", words::RECORD, record(view, fields, stood))
        .caution(words::TREAT_CAUTION)
        .button(Button::new("save", frame::SAVE, Action::Save).filled());
    SheetPage::new(title, blocks)
}

/// Whether a treatment is the booster before lambing: that alone reaches the lambs.
fn booster(fields: &Fields) -> Toggle {
    let pressed = is_booster(fields);
    Toggle {
        label: words::IS_BOOSTER.to_owned(),
        pressed,
        note: None,
        does: Action::Choose(BOOSTER.into(), usize::from(!pressed)),
    }
}

fn is_booster(fields: &Fields) -> bool {
    fields.chosen(BOOSTER) == Some(1)
}

const fn blank() -> Treatment {
    Treatment {
        product: String::new(),
        amount: None,
        route: None,
        reason: None,
        batch: None,
        by: None,
        day_only: false,
        meat_days: None,
        milk_days: None,
    }
}

/// The booster as it was given last; of a new season the bottle is another, and so is its batch.
fn last_booster(flock: &Flock) -> Treatment {
    let last = flock.treatments().into_iter().find(|given| given.booster);
    let last = last.map(|given| Treatment { batch: None, day_only: false, ..given.treatment.clone() });
    last.unwrap_or_else(|| Treatment { product: words::BOOSTER.to_owned(), ..blank() })
}

/// The ewes of a group that are to have their booster now.
fn to_boost(view: &View, group: GroupId) -> Vec<EweId> {
    let Some(group) = view.flock.groups.get(&group) else { return Vec::new() };
    let from = group_dates(view.flock, group).into_iter().find_map(|dated| match dated.what {
        DateTask::Booster { from, .. } => Some(from),
        DateTask::ScoreBeforeRam
        | DateTask::ScoreAtRam
        | DateTask::CrayonChange { .. }
        | DateTask::RamOut
        | DateTask::ScoreAtMid
        | DateTask::ScoreLate
        | DateTask::Feed { .. }
        | DateTask::WatchFrom
        | DateTask::WatchUntil
        | DateTask::FeedUntil => None,
    });
    from.map(|from| without_booster(view.flock, group, from)).unwrap_or_default()
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
fn record(view: &View, fields: &Fields, stood: &Treatment) -> Blocks {
    let field = |key: &'static str, label: &str, stood: &Option<String>| {
        Field::new(label, FieldKind::Text, fields.text(key, stood.as_deref().unwrap_or_default()))
    };
    let routes = words::ROUTES.iter().enumerate();
    let routes =
        routes.map(|(place, way)| Choice::new(words::route(*way), Action::Choose(ROUTE.into(), place)));
    let routes = Choices::new(words::ROUTE, routes.collect(), route(fields, stood)).labelled().snug();
    let when = Field::new(words::WHEN, FieldKind::Moment, fields.text(WHEN, &field_time(view.now)));
    let day_only = is_day_only(fields);
    let day_only = Toggle {
        label: words::DAY_ONLY.to_owned(),
        pressed: day_only,
        note: None,
        does: Action::Choose(DAY_ONLY.into(), usize::from(!day_only)),
    };
    Blocks::new()
        .field(AMOUNT, field(AMOUNT, words::AMOUNT, &stood.amount))
        .choices(ROUTE, routes)
        .field(REASON, field(REASON, words::REASON, &stood.reason))
        .field(BATCH, field(BATCH, words::BATCH, &stood.batch))
        .field(BY, field(BY, words::BY, &stood.by))
        .field(WHEN, when)
        .add(DAY_ONLY, Kind::Toggle(day_only))
}

/// The place of how it was given.
fn route(fields: &Fields, stood: &Treatment) -> Option<usize> {
    let stood = words::ROUTES.iter().position(|way| Some(*way) == stood.route);
    fields.chosen(ROUTE).or(stood)
}

fn is_day_only(fields: &Fields) -> bool {
    fields.chosen(DAY_ONLY) == Some(1)
}

/// Does what only this sheet knows.
pub(crate) fn does(does: Does, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Does::Fill(entry) = does;
    if let Some(given) = view.flock.treatments().into_iter().find(|given| given.entry == entry) {
        fill(draft.top_mut(), &given.treatment);
        draft.top_mut().choose(BOOSTER, usize::from(given.booster));
    }
    Vec::new()
}

fn fill(fields: &mut Fields, from: &Treatment) {
    let texts = [
        (PRODUCT, from.product.clone()),
        (MEAT, typed_days(from.meat_days)),
        (MILK, typed_days(from.milk_days)),
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
    let booster = is_booster(draft.top());
    let treated = |animal: &Animal, treatment: Box<Treatment>| match animal {
        Animal::Ewe(ewe) if booster => Life::Boosted { ewe: *ewe, treatment },
        animal => Life::Treated { animal: *animal, treatment },
    };
    save_each(view, draft, &blank(), of, treated)
}

/// Saves the booster of a group's ewes.
pub(super) fn save_boost(view: &View, draft: &mut Draft, group: GroupId) -> Vec<Effect> {
    let (ewes, stood) = (to_boost(view, group), last_booster(view.flock));
    save_each(view, draft, &stood, &ewes, |ewe, treatment| Life::Boosted { ewe: *ewe, treatment })
}

/// Saves one treatment of each; nothing is noted of none.
fn save_each<T>(
    view: &View,
    draft: &mut Draft,
    stood: &Treatment,
    of: &[T],
    fact: impl Fn(&T, Box<Treatment>) -> Life,
) -> Vec<Effect> {
    let fields = draft.top_mut();
    fields.all_right();
    let (meat_days, milk_days) = (days(fields, MEAT, stood.meat_days), days(fields, MILK, stood.milk_days));
    let (Some(meat_days), Some(milk_days)) = (meat_days, milk_days) else { return Vec::new() };
    let Some(at) = when(view, fields) else { return draft.say_wrong(PRODUCT, lamb::NO_TIME) };
    let written = |key: &str, stood: Option<&str>| {
        let text = fields.text(key, stood.unwrap_or_default()).trim().to_owned();
        Some(text).filter(|text| !text.is_empty())
    };
    let treatment = Treatment {
        product: written(PRODUCT, Some(&stood.product)).unwrap_or_default(),
        amount: written(AMOUNT, stood.amount.as_deref()),
        route: route(fields, stood).and_then(|place| words::ROUTES.get(place).copied()),
        reason: written(REASON, stood.reason.as_deref()),
        batch: written(BATCH, stood.batch.as_deref()),
        by: written(BY, stood.by.as_deref()),
        day_only: is_day_only(fields),
        meat_days,
        milk_days,
    };
    let noting = |one: &T| view.noting_at(Event::Life(fact(one, Box::new(treatment.clone()))), at);
    let notings: Vec<_> = of.iter().map(noting).collect();
    if notings.is_empty() {
        draft.close();
        return Vec::new();
    }
    draft.save(view, PRODUCT, notings)
}

/// Returns when it was given: now, unless something else was typed.
fn when(view: &View, fields: &Fields) -> Option<Moment> {
    match fields.typed(WHEN) {
        None => Some(view.now),
        Some(typed) => read_field_time(typed).map(view.at_local),
    }
}

/// Reads a number of days; `Some(None)` when nothing was typed. What is wrong is said at its field.
fn days(fields: &mut Fields, key: &'static str, stood: Option<u16>) -> Option<Option<u16>> {
    match read_days(&fields.text(key, &typed_days(stood))) {
        Ok(days) => Some(days),
        Err(wrong) => {
            fields.wrong(key, errors::typed(&wrong, errors::Field::Days, System::Metric));
            None
        }
    }
}

fn typed_days(days: Option<u16>) -> String {
    days.map(|days| days.to_string()).unwrap_or_default()
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
