//! The sheet that sets a pen up: a name, and its sides if someone likes.

use yeanling_core::book::{Event, PenSize};
use yeanling_core::units::{Length, System};
use yeanling_words::{errors, frame, pens as words};

use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect};

const NAME: &str = "new-pen-name";
const WIDE: &str = "new-pen-wide";
const DEEP: &str = "new-pen-deep";

/// Returns the sheet.
pub(crate) fn sheet(view: &View, fields: &Fields) -> SheetPage {
    let unit = match view.system() {
        System::Metric => "m",
        System::Us => "ft",
    };
    let name = Field::new(words::NAME, FieldKind::Text, fields.text(NAME, &next(view)));
    let side = |key: &'static str, label| {
        Field::new(label, FieldKind::Decimal, fields.text(key, "")).error(fields.error(key)).unit(unit)
    };
    SheetPage::new(
        words::NEW,
        Blocks::new()
            .field(NAME, name.error(fields.error(NAME)))
            .field(WIDE, side(WIDE, words::WIDE))
            .field(DEEP, side(DEEP, words::DEEP))
            .small(words::SIZES)
            .button(Button::new("save", frame::SAVE, Action::Save).filled()),
    )
}

/// The number of the next pen, which is its name where nobody gives it another.
fn next(view: &View) -> String {
    (view.flock.pens.len() + 1).to_string()
}

/// Saves what was typed.
pub(crate) fn save(view: &View, draft: &mut Draft) -> Vec<Effect> {
    draft.top_mut().all_right();
    let fields = draft.top();
    let name = fields.text(NAME, &next(view)).trim().to_owned();
    let mut standing = view.flock.pens.values().filter(|pen| pen.closed.is_none());
    if standing.any(|pen| pen.name.eq_ignore_ascii_case(&name)) {
        return draft.say_wrong(NAME, words::SAME_NAME);
    }
    match size(view, fields) {
        Ok(size) => draft.save(view, NAME, vec![view.noting(Event::PenMade { name, size })]),
        Err(wrong) => draft.say_wrong(WIDE, wrong),
    }
}

/// Reads both sides, or none.
fn size(view: &View, fields: &Fields) -> Result<Option<PenSize>, String> {
    let system = view.system();
    let read = |side: &str| {
        Length::parse(side, system).map_err(|wrong| errors::typed(&wrong, errors::Field::Length, system))
    };
    match (fields.written(WIDE), fields.written(DEEP)) {
        (None, None) => Ok(None),
        (Some(wide), Some(deep)) => Ok(Some(PenSize { wide: read(&wide)?, deep: read(&deep)? })),
        (Some(_), None) | (None, Some(_)) => Err(words::BOTH_SIDES.to_owned()),
    }
}
