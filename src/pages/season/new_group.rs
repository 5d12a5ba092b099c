//! The sheet that forms a group; once it is formed one is led to it.

use yeanling_core::book::Event;
use yeanling_words::{frame, season_forecast as words};

use crate::block::{Field, FieldKind};
use crate::draft::{Draft, Fields};
use crate::page::{Blocks, SheetPage};
use crate::view::View;
use crate::{Action, Button, Effect, Screen};

const NAME: &str = "new-group-name";

/// Returns the sheet.
pub(crate) fn sheet(fields: &Fields) -> SheetPage {
    let name = Field::new(words::NAME, FieldKind::Text, fields.text(NAME, "")).error(fields.error(NAME));
    let save = Button::new("save", frame::SAVE, Action::Save).filled();
    SheetPage::new(words::NEW_GROUP, Blocks::new().field(NAME, name).button(save))
}

/// Saves what was typed.
pub(crate) fn save(view: &View, draft: &mut Draft) -> Vec<Effect> {
    let name = draft.top().written(NAME).unwrap_or_default();
    let mut standing = view.flock.groups.values().filter(|group| group.parted.is_none());
    if standing.any(|group| group.name.eq_ignore_ascii_case(&name)) {
        return draft.say_wrong(NAME, words::SAME_NAME);
    }
    let formed = view.noting(Event::GroupFormed { name });
    let group = formed.id.as_group();
    let mut effects = draft.save(view, NAME, vec![formed]);
    if !effects.is_empty() {
        effects.push(Effect::Go(Screen::Group(group)));
    }
    effects
}
