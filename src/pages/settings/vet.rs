//! The vet's telephone numbers, by day and at night, and what is agreed before the season.

use yeanling_core::book::Event;
use yeanling_core::seasons::{self, ToAgree, is_agreed};
use yeanling_core::settings::{Choice, FarmSettings};
use yeanling_words::common::date;
use yeanling_words::vet as words;

use crate::block::{Field, FieldKind, Row, State};
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
    /// Of the second one at night.
    Second,
}

impl Of {
    const fn key(self) -> &'static str {
        match self {
            Self::Day => "practice-vet",
            Self::Night => "practice-vet-night",
            Self::Second => "practice-vet-second",
        }
    }

    fn stands(self, settings: &FarmSettings) -> &str {
        match self {
            Self::Day => &settings.vet_phones.day,
            Self::Night => &settings.vet_phones.night,
            Self::Second => &settings.vet_phones.second,
        }
    }

    const fn choice(self, number: String) -> Choice {
        match self {
            Self::Day => Choice::VetPhone(number),
            Self::Night => Choice::VetNightPhone(number),
            Self::Second => Choice::VetSecondPhone(number),
        }
    }
}

/// Returns the numbers, each with its button once it was changed, and what is agreed before the season.
pub(super) fn blocks(view: &View, fields: &Fields) -> Blocks {
    let settings = view.settings();
    let inside = Blocks::new()
        .then(number(Of::Day, words::NUMBER, settings, fields))
        .then(number(Of::Night, words::NIGHT_NUMBER, settings, fields))
        .then(number(Of::Second, words::SECOND_NUMBER, settings, fields))
        .small(words::SUB);
    Blocks::new().section("vet", words::NUMBERS, inside).then(before(view))
}

/// What is agreed with the vet before the first lamb, each with when it was.
fn before(view: &View) -> Blocks {
    let rows = ToAgree::ALL
        .map(|what| (format!("agree-{what:?}").to_lowercase().replace(['(', ')'], "-"), row(view, what)));
    Blocks::new().section("before-season", words::BEFORE, Blocks::new().rows("before-season-rows", rows))
}

fn row(view: &View, what: ToAgree) -> Row {
    let row = Row::new(words::to_agree(what)).text(words::about(what));
    match what {
        ToAgree::NightNumbers if is_agreed(view.flock, what, view.now) => {
            row.says(State::Done, words::BOTH_GIVEN)
        }
        ToAgree::NightNumbers => row.says(State::Coming, words::NOT_YET),
        ToAgree::Agreed(agreed) => match seasons::agreed(view.flock, agreed, view.now) {
            Some(at) => row.says(State::Done, words::agreed_on(&date(at))),
            None => {
                let name = format!("{}: {}", words::AGREED, words::to_agree(what));
                let notes = Action::Note(vec![Event::Chose(Choice::VetAgreed(agreed))]);
                row.says(State::Coming, words::NOT_YET)
                    .action(Button::new("agreed", words::AGREED, notes).action(name))
            }
        },
    }
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
