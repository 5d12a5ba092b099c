//! The sheet on which is noted what was measured of an animal that is not right; what is left empty is not noted.

use yeanling_core::book::{Animal, Event, Illness};
use yeanling_core::units::{Ketones, Temperature, parse_number};
use yeanling_words::{errors, illness as words};

use super::parts::{save_button, whose};
use crate::Effect;
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;

const TEMPERATURE: &str = "measured-temperature";
const KETONES: &str = "measured-ketones";
const PULSE: &str = "measured-pulse";
const BREATHS: &str = "measured-breaths";
const TENT: &str = "measured-tent";

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, animal: Animal) -> SheetPage {
    let field = |key: &'static str, label: &str, kind| {
        Field::new(label, kind, fields.text(key, "")).error(fields.error(key))
    };
    let counts = |blocks: Blocks| {
        blocks
            .field(PULSE, field(PULSE, words::PULSE, FieldKind::Whole))
            .field(BREATHS, field(BREATHS, words::BREATHS, FieldKind::Whole))
    };
    let blocks = match animal {
        Animal::Ewe(_) => counts(
            Blocks::new()
                .field(
                    TEMPERATURE,
                    field(TEMPERATURE, words::TEMPERATURE, FieldKind::Decimal)
                        .unit(yeanling_words::cold_lamb::degrees(view.system())),
                )
                .field(KETONES, field(KETONES, words::KETONES, FieldKind::Decimal).unit("mmol/L")),
        ),
        Animal::Lamb(_) => counts(Blocks::new().field(TENT, field(TENT, words::TENT, FieldKind::Whole))),
    };
    let blocks = blocks.small(words::LOW_PROVES_NOTHING).button(save_button());
    SheetPage::new(words::MEASURE_ASK, blocks).whose(whose(view, animal))
}

/// Saves what was typed, all of it or nothing.
pub(super) fn save(view: &View, draft: &mut Draft, animal: Animal) -> Vec<Effect> {
    match read(view, draft.top(), animal) {
        Ok((facts, first)) if !facts.is_empty() => {
            let notings = facts.into_iter().map(|fact| view.noting(Event::Illness(fact))).collect();
            draft.save(view, first, notings)
        }
        Ok((_, first)) => draft.say_wrong(first, words::NOTHING_MEASURED),
        Err((key, said)) => draft.say_wrong(key, said),
    }
}

type Wrong = (&'static str, String);

/// Returns what was typed, and the first field of it.
fn read(view: &View, fields: &Fields, animal: Animal) -> Result<(Vec<Illness>, &'static str), Wrong> {
    let system = view.system();
    let mut facts: Vec<(&'static str, Illness)> = Vec::new();
    if let (Animal::Ewe(ewe), Some(text)) = (animal, fields.written(TEMPERATURE)) {
        let wrong = |error| (TEMPERATURE, errors::typed(&error, errors::Field::LambTemperature, system));
        let temperature = Temperature::parse(&text, system).map_err(wrong)?;
        facts.push((TEMPERATURE, Illness::EweTemperature { ewe, temperature }));
    }
    if let (Animal::Ewe(ewe), Some(text)) = (animal, fields.written(KETONES)) {
        let wrong = |error| (KETONES, errors::typed(&error, errors::Field::Ketones, system));
        facts.push((KETONES, Illness::KetonesRead { ewe, ketones: Ketones::parse(&text).map_err(wrong)? }));
    }
    if let (Animal::Lamb(lamb), Some(text)) = (animal, fields.written(TENT)) {
        let seconds = u8::try_from(whole(TENT, &text)?).map_err(|_| too_many(TENT, &text))?;
        facts.push((TENT, Illness::SkinTent { lamb, seconds }));
    }
    if let Some(text) = fields.written(PULSE) {
        facts.push((PULSE, Illness::Pulse { animal, per_minute: whole(PULSE, &text)? }));
    }
    if let Some(text) = fields.written(BREATHS) {
        facts.push((BREATHS, Illness::Breaths { animal, per_minute: whole(BREATHS, &text)? }));
    }
    let first = facts.first().map(|(key, _)| *key);
    let none = match animal {
        Animal::Ewe(_) => TEMPERATURE,
        Animal::Lamb(_) => TENT,
    };
    Ok((facts.into_iter().map(|(_, fact)| fact).collect(), first.unwrap_or(none)))
}

/// Reads a count.
fn whole(key: &'static str, text: &str) -> Result<u16, Wrong> {
    let system = yeanling_core::units::System::Metric;
    let wrong = |error| (key, errors::typed(&error, errors::Field::Pieces, system));
    let number = parse_number(text).map_err(wrong)?;
    format!("{number}").parse().map_err(|_| too_many(key, text))
}

fn too_many(key: &'static str, text: &str) -> Wrong {
    (key, words::not_a_count(text))
}
