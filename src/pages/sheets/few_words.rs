//! The sheets that note a few words of an animal: a tag, a mark of paint, what was found in it, a remark.

use yeanling_core::book::{Animal, Event, Life};
use yeanling_words::{lamb as words, life};

use super::parts::{save_button, whose};
use crate::Effect;
use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;

const WORDS: &str = "few-words";

/// What the words are of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Of {
    Tag,
    Paint,
    Finding,
    Remark,
}

/// Returns the sheet.
pub(super) fn sheet(view: &View, fields: &Fields, of: Of, animal: Animal) -> SheetPage {
    let (title, label, kind) = match of {
        Of::Tag => (words::TAG_ASK, words::TAG_LABEL, FieldKind::Text),
        Of::Paint => (life::MARK_ASK, life::MARK_LABEL, FieldKind::Text),
        Of::Finding => (life::EXAMINED_ASK, life::EXAMINED_LABEL, FieldKind::Long),
        Of::Remark => (words::REMARK_ASK, words::REMARK_LABEL, FieldKind::Long),
    };
    let field = Field::new(label, kind, fields.text(WORDS, "")).error(fields.error(WORDS));
    let field = if of == Of::Finding { field.hint(life::EXAMINED_HINT) } else { field };
    SheetPage::new(title, Blocks::new().field(WORDS, field).button(save_button())).whose(whose(view, animal))
}

/// Saves what was typed.
pub(super) fn save(view: &View, draft: &mut Draft, of: Of, animal: Animal) -> Vec<Effect> {
    let text = draft.top().written(WORDS).unwrap_or_default();
    let event = match of {
        Of::Tag => Event::Tagged { animal, tag: text },
        Of::Paint => Event::Life(Life::Marked { animal, mark: text }),
        Of::Finding => Event::Life(Life::Examined { animal, finding: text }),
        Of::Remark => Event::Remarked { animal, text },
    };
    draft.save(view, WORDS, vec![view.noting(event)])
}
