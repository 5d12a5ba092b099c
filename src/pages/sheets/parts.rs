//! What several sheets have in common.

use yeanling_core::book::{Animal, Event};
use yeanling_core::units::{System, TypedError, parse_number};
use yeanling_words::{animals, errors, frame};

use crate::block::{Choice, Choices, NoticeKind};
use crate::page::Blocks;
use crate::view::View;
use crate::{Action, Button, Key};

/// Returns an animal's name, to stand above the heading of a sheet: not always is she on the screen behind it.
pub(crate) fn whose(view: &View, animal: Animal) -> String {
    animals::animal(view.flock, animal)
}

/// Returns the button that saves what was typed.
pub(super) fn save_button() -> Button {
    Button::new("save", frame::SAVE, Action::Save).filled()
}

/// Returns choices of which one press notes a fact and closes the sheet.
pub(super) fn answers<N: Into<String>>(
    label: &str,
    options: impl IntoIterator<Item = (N, Event)>,
) -> Choices {
    let option = |(name, event): (N, Event)| Choice::new(name, Action::Answer(vec![event]));
    Choices::new(label, options.into_iter().map(option).collect(), None)
}

/// Returns choices that are kept under a key until the sheet is saved.
pub(super) fn choices<N: Into<String>>(
    key: &'static str,
    label: &str,
    names: impl IntoIterator<Item = N>,
    chosen: Option<usize>,
) -> Choices {
    let option = |(place, name): (usize, N)| Choice::new(name, Action::Choose(key.into(), place));
    Choices::new(label, names.into_iter().enumerate().map(option).collect(), chosen)
}

/// Returns what is wrong where no field can say it; nothing when nothing is.
pub(super) fn wrong(key: impl Into<Key>, said: &str) -> Blocks {
    if said.is_empty() { Blocks::new() } else { Blocks::new().notice(key, NoticeKind::Bad, said, []) }
}

/// Reads an age or a span in whole days; nothing when nothing was typed.
pub(crate) fn read_days(text: &str) -> Result<Option<u16>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let wrong = |error: &TypedError| errors::typed(error, errors::Field::Days, System::Metric);
    let days = parse_number(text).map_err(|error| wrong(&error))?;
    let whole =
        format!("{days}").parse().map_err(|_| TypedError::NotANumber { given: text.trim().to_owned() });
    whole.map(Some).map_err(|error| wrong(&error))
}
