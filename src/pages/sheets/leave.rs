//! The sheet in which is noted how an animal left: on which day, to whom, what it weighed and brought, and why it was culled.
//!
//! Its weight is a weight like any other, noted for that day before it left.

use yeanling_core::book::{Animal, CullReason, Departure, Event, Life};
use yeanling_core::units::{Mass, Moment, Price, System};
use yeanling_core::watch::{LifeRejection, Rejection};
use yeanling_words::common::{field_time, read_field_day};
use yeanling_words::{errors, life as words, rejections};

use super::parts::{choices, save_button, whose, wrong};
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields, Noting};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Effect, weight};

const HOW: &str = "leave-how";
const DAY: &str = "leave-day";
const TO: &str = "leave-to";
const PRICE: &str = "leave-price";
const WEIGHT: &str = "leave-weight";
const CULLED: &str = "leave-culled";

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, animal: Animal) -> SheetPage {
    // What is said of a withdrawal stands only where a medicine was given; it is the last, so that no other changes its
    // place.
    let had = view.flock.treatments().into_iter().any(|treated| treated.animal == animal);
    let offered = |how: &Departure| had || *how != Departure::SoldWithWarning;
    let ways = words::DEPARTURES.into_iter().filter(offered).map(words::departure);
    let ways = choices(HOW, words::LEAVE_ASK, ways, fields.chosen(HOW)).stacked();
    let day = Field::new(words::LEAVE_DAY, FieldKind::Date, fields.text(DAY, &today(view)));
    let price = Field::new(words::PRICE, FieldKind::Decimal, fields.text(PRICE, ""));
    let mass = weight::field(fields, WEIGHT, words::LEAVE_WEIGHT, ("", view.system()));
    // The last of them is that it was no cull, which stands until another is chosen.
    let reasons = CullReason::ALL.map(words::cull_reason).into_iter().chain([words::NOT_CULLED]);
    let chosen = fields.chosen(CULLED).unwrap_or(CullReason::ALL.len());
    let culled = choices(CULLED, words::CULL, reasons, Some(chosen)).snug();
    let blocks = Blocks::new()
        .choices(HOW, ways)
        .then(wrong("leave-wrong", fields.error(HOW)))
        .field(DAY, day.error(fields.error(DAY)))
        .field(TO, Field::new(words::TO, FieldKind::Text, fields.text(TO, "")))
        .field(PRICE, price.hint(words::PRICE_HINT).error(fields.error(PRICE)))
        .field(WEIGHT, mass)
        .fold("leave-cull", words::CULL_FOLD, Blocks::new().choices(CULLED, culled))
        .button(save_button());
    SheetPage::new(words::LEAVE_ASK, blocks).whose(whose(view, animal))
}

fn today(view: &View) -> String {
    field_time(view.now).chars().take(10).collect()
}

/// Saves how it left, all of it or nothing; what is wrong is said at its field.
pub(super) fn save(view: &View, draft: &mut Draft, animal: Animal) -> Vec<Effect> {
    draft.top_mut().all_right();
    let fields = draft.top();
    let Some(how) = fields.chosen(HOW).and_then(|place| words::DEPARTURES.get(place)) else {
        return draft.say_wrong(HOW, words::NO_HOW);
    };
    let Some(day) = read_field_day(&fields.text(DAY, &today(view))) else {
        return draft.say_wrong(DAY, words::NO_LEAVE_DAY);
    };
    let at = view.on_day(day);
    let price = match fields.written(PRICE).map(|typed| Price::parse(&typed)).transpose() {
        Ok(price) => price,
        Err(wrong) => {
            return draft.say_wrong(PRICE, errors::typed(&wrong, errors::Field::Price, System::Metric));
        }
    };
    let unit = weight::unit(fields, WEIGHT, view.system());
    let mass = match fields.written(WEIGHT).map(|typed| Mass::parse(&typed, unit)).transpose() {
        Ok(mass) => mass,
        Err(wrong) => return draft.say_wrong(WEIGHT, errors::typed(&wrong, errors::Field::EweWeight, unit)),
    };
    let went = Event::Life(Life::Went { animal, how: *how, to: fields.written(TO) });
    let culled = fields.chosen(CULLED).and_then(|place| CullReason::ALL.get(place));
    let culled = culled.map(|why| Event::Life(Life::Culled { animal, why: *why }));
    let price = price.map(|price| Event::Life(Life::SoldFor { animal, price }));
    let facts = mass.map(|mass| weighed(animal, mass)).into_iter().chain([went]).chain(price).chain(culled);
    let notings: Vec<Noting> = facts.map(|event| view.noting_at(event, at)).collect();
    match view.allow_each(&notings) {
        Ok(()) => {
            draft.close();
            vec![Effect::Note(notings)]
        }
        Err((place, rejection)) => {
            let said = rejections::rejection(&rejection, view.now, view.system());
            let key = notings.get(place).map_or(HOW, |noting| field_of(&noting.event, &rejection, at, view));
            draft.say_wrong(key, said)
        }
    }
}

const fn weighed(animal: Animal, mass: Mass) -> Event {
    match animal {
        Animal::Ewe(ewe) => Event::EweWeighed { ewe, mass },
        Animal::Lamb(lamb) => Event::Weighed { lamb, mass },
    }
}

/// The field at which a refusal is said.
fn field_of(event: &Event, rejection: &Rejection, at: Moment, view: &View) -> &'static str {
    if at > view.now || matches!(rejection, Rejection::InFuture { .. } | Rejection::BeforeBirth { .. }) {
        return DAY;
    }
    if matches!(event, Event::Weighed { .. } | Event::EweWeighed { .. }) {
        return WEIGHT;
    }
    match rejection {
        Rejection::Life(LifeRejection::Price(_)) => PRICE,
        Rejection::LongText { .. } | Rejection::NoText => TO,
        _ => HOW,
    }
}
