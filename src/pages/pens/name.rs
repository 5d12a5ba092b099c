//! The sheet that gives a pen another name.

use yeanling_core::book::{Event, PenId};
use yeanling_words::{frame, pens as words};

use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect};

const NAME: &str = "pen-name";

/// Returns the sheet.
pub(crate) fn sheet(fields: &Fields) -> SheetPage {
    let name = Field::new(words::NAME, FieldKind::Text, fields.text(NAME, "")).error(fields.error(NAME));
    let save = Button::new("save", frame::SAVE, Action::Save).filled();
    SheetPage::new(words::RENAME, Blocks::new().field(NAME, name).button(save))
}

/// Saves what was typed.
pub(crate) fn save(view: &View, draft: &mut Draft, pen: PenId) -> Vec<Effect> {
    let name = draft.top().written(NAME).unwrap_or_default();
    draft.save(view, NAME, vec![view.noting(Event::PenNamed { pen, name })])
}
