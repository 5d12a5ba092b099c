//! The vet's telephone numbers, by day and at night.

use yeanling_core::settings::{Choice, FarmSettings};
use yeanling_words::vet as words;

use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Does, Effect};

/// Of which number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Of {
    /// Of the one by day.
    Day,
    /// Of the one at night.
    Night,
}

impl Of {
    const fn key(self) -> &'static str {
        match self {
            Self::Day => "practice-vet",
            Self::Night => "practice-vet-night",
        }
    }

    fn stands(self, settings: &FarmSettings) -> &str {
        match self {
            Self::Day => &settings.vet_phones.day,
            Self::Night => &settings.vet_phones.night,
        }
    }

    const fn choice(self, number: String) -> Choice {
        match self {
            Self::Day => Choice::VetPhone(number),
            Self::Night => Choice::VetNightPhone(number),
        }
    }
}

/// Returns both numbers, each with its button once it was changed.
pub(super) fn blocks(settings: &FarmSettings, fields: &Fields) -> Blocks {
    let inside = Blocks::new()
        .then(number(Of::Day, words::NUMBER, settings, fields))
        .then(number(Of::Night, words::NIGHT_NUMBER, settings, fields))
        .small(words::SUB);
    Blocks::new().section("vet", words::TITLE, inside)
}

fn number(of: Of, label: &str, settings: &FarmSettings, fields: &Fields) -> Blocks {
    let (key, stood) = (of.key(), of.stands(settings));
    let typed = fields.text(key, stood);
    let is_changed = typed.trim() != stood;
    let blocks =
        Blocks::new().field(key, Field::new(label, FieldKind::Phone, typed).error(fields.error(key)));
    let save = Action::Does(Does::FarmSettings(super::Does::SaveNumber(of)));
    if is_changed { blocks.button(Button::new(format!("save-{key}"), words::SAVE, save)) } else { blocks }
}

/// Saves a number; one that cannot be dialed is said at its field.
pub(super) fn save(of: Of, view: &View, draft: &mut Draft) -> Vec<Effect> {
    let Some(number) = draft.fields.typed(of.key()).map(|typed| typed.trim().to_owned()) else {
        return Vec::new();
    };
    if number == of.stands(view.settings()) {
        draft.fields.forget(of.key());
        return Vec::new();
    }
    super::save(view, draft, of.key(), of.choice(number))
}
