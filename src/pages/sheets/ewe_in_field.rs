//! The small sheets in which something is noted of a ewe in the field: condition, weight, scan, crayon mark.

use yeanling_core::book::{Animal, Event, EweId};
use yeanling_core::units::{Condition, Mass};
use yeanling_words::{errors, lamb, season as words};

use super::parts::{choices, read_days, save_button, whose, wrong};
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Effect, weight};

const WHOLE: &str = "condition-whole";
const QUARTERS: &str = "condition-quarters";
/// The scores without a quarter.
const WHOLES: [u8; 5] = [1, 2, 3, 4, 5];
const QUARTER: [u8; 4] = [0, 1, 2, 3];

const WEIGHT: &str = "ewe-weight";

/// How many lambs a scan showed.
pub(super) const LAMBS: &str = "scan-lambs";
/// How old they were said to be.
pub(super) const DAYS: &str = "scan-days";
/// What a scan can show, as many as there are words for.
pub(super) const SCANNED: [u8; words::SCANNED.len()] = [0, 1, 2, 3, 4];

const COLOR: &str = "mark-color";

/// Returns the sheet on which a ewe's condition is scored, in quarters.
pub(super) fn condition(view: &View, fields: &Fields, ewe: EweId) -> SheetPage {
    let wholes = WHOLES.map(|score| score.to_string());
    let wholes = choices(WHOLE, words::WHOLE, wholes, fields.chosen(WHOLE)).snug();
    let stood = Some(fields.chosen(QUARTERS).unwrap_or(0));
    let quarters = choices(QUARTERS, words::QUARTERS, words::QUARTER, stood).snug();
    let blocks = Blocks::new()
        .text(words::CONDITION_HOW)
        .choices(WHOLE, wholes)
        .choices(QUARTERS, quarters)
        .then(wrong("condition-wrong", fields.error(WHOLE)))
        .button(save_button());
    SheetPage::new(words::CONDITION_ASK, blocks).whose(whose(view, Animal::Ewe(ewe)))
}

/// Saves her condition.
pub(super) fn save_condition(view: &View, draft: &mut Draft, ewe: EweId) -> Vec<Effect> {
    let fields = draft.top();
    let Some(whole) = fields.chosen(WHOLE).and_then(|place| WHOLES.get(place)) else {
        return draft.say_wrong(WHOLE, words::NO_SCORE);
    };
    let score = Condition::from_quarters(4 * whole + fields.pick(QUARTERS, &QUARTER, 0));
    draft.save(view, WHOLE, vec![view.noting(Event::Conditioned { ewe, score })])
}

/// Returns the sheet on which a ewe is weighed.
pub(super) fn ewe_weight(view: &View, fields: &Fields, ewe: EweId) -> SheetPage {
    let keys = weight::pad(fields, WEIGHT, lamb::WEIGHT, view.system(), Blocks::new());
    SheetPage::new(words::WEIGH_ASK, keys.button(save_button())).whose(whose(view, Animal::Ewe(ewe)))
}

/// Saves her weight.
pub(super) fn save_ewe_weight(view: &View, draft: &mut Draft, ewe: EweId) -> Vec<Effect> {
    let unit = weight::unit(draft.top(), WEIGHT, view.system());
    match Mass::parse(&draft.top().text(WEIGHT, ""), unit) {
        Ok(mass) => draft.save(view, WEIGHT, vec![view.noting(Event::EweWeighed { ewe, mass })]),
        Err(wrong) => draft.say_wrong(WEIGHT, errors::typed(&wrong, errors::Field::EweWeight, unit)),
    }
}

/// Returns the sheet on which is noted what a scan showed.
pub(super) fn scan(view: &View, fields: &Fields, ewe: EweId) -> SheetPage {
    let blocks = Blocks::new()
        .then(scanned(fields, None, ""))
        .then(wrong("scan-wrong", fields.error(LAMBS)))
        .button(save_button());
    SheetPage::new(words::SCAN_ASK, blocks).whose(whose(view, Animal::Ewe(ewe)))
}

/// Asks how many lambs a scan showed, and how old they were said to be; `lambs` and `days` stood there before.
pub(super) fn scanned(fields: &Fields, lambs: Option<u8>, days: &str) -> Blocks {
    let stood = lambs.and_then(|lambs| SCANNED.iter().position(|count| *count == lambs));
    let lambs = choices(LAMBS, words::SCAN_ASK, words::SCANNED, fields.chosen(LAMBS).or(stood));
    let days = Field::new(words::SCAN_DAYS, FieldKind::Whole, fields.text(DAYS, days))
        .error(fields.error(DAYS))
        .unit(words::DAYS);
    Blocks::new().choices(LAMBS, lambs).field(DAYS, days)
}

/// Saves what the scan showed.
pub(super) fn save_scan(view: &View, draft: &mut Draft, ewe: EweId) -> Vec<Effect> {
    let fields = draft.top();
    let Some(lambs) = fields.chosen(LAMBS).and_then(|place| SCANNED.get(place).copied()) else {
        return draft.say_wrong(LAMBS, words::NO_SCAN);
    };
    match read_days(&fields.text(DAYS, "")) {
        Ok(days) => draft.save(view, LAMBS, vec![view.noting(Event::Scanned { ewe, lambs, days })]),
        Err(wrong) => draft.say_wrong(DAYS, wrong),
    }
}

/// Returns the sheet on which a crayon mark is noted; the crayon that is on the rams of her group is written ready.
pub(super) fn mark(view: &View, fields: &Fields, ewe: EweId) -> SheetPage {
    let color =
        Field::new(words::COLOR, FieldKind::Text, color(view, fields, ewe)).error(fields.error(COLOR));
    SheetPage::new(words::MARK_ASK, Blocks::new().field(COLOR, color).button(save_button()))
        .whose(whose(view, Animal::Ewe(ewe)))
}

fn color(view: &View, fields: &Fields, ewe: EweId) -> String {
    fields.text(COLOR, view.flock.group_of(ewe).and_then(|group| group.crayon()).unwrap_or_default())
}

/// Saves the mark.
pub(super) fn save_mark(view: &View, draft: &mut Draft, ewe: EweId) -> Vec<Effect> {
    let color = color(view, draft.top(), ewe).trim().to_owned();
    draft.save(view, COLOR, vec![view.noting(Event::CrayonMark { ewe, color })])
}
