//! What is typed, chosen and pressed.

use std::sync::Arc;

use super::Block;
use crate::Action;
use crate::text::in_own_units;

/// What must be typed, with its hint, its unit and what is wrong with it, which never replaces what was typed. What is
/// typed is kept in the draft under the block's key.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Field {
    /// What is asked.
    pub label: String,
    /// What stands there.
    pub value: String,
    /// What is typed.
    pub kind: FieldKind,
    /// A few words of help.
    pub hint: String,
    /// What is wrong; empty when nothing is.
    pub error: String,
    /// Its unit, when there is one.
    pub unit: String,
    /// Its unit, when that can be chosen.
    pub units: Option<Choices>,
    /// What leaving it does: also the phone's back button, which takes the screen away under it.
    pub left: Option<Action>,
    /// What Enter does.
    pub enter: Option<Action>,
}

/// What is typed into a field.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum FieldKind {
    /// Words, one line.
    #[default]
    Text,
    /// Words, several lines.
    Long,
    /// A whole number.
    Whole,
    /// A number.
    Decimal,
    /// A telephone number.
    Phone,
    /// A time of day.
    Time,
    /// A day.
    Date,
    /// A day and a time.
    Moment,
    /// What is looked for.
    Search,
}

/// One of a few: buttons side by side, of which at most one is down.
#[derive(Clone, Debug, PartialEq)]
pub struct Choices {
    /// What is being chosen.
    pub label: String,
    /// Whether the label is seen, too.
    pub labelled: bool,
    /// How they stand.
    pub shape: ChoicesShape,
    /// The choices.
    pub options: Vec<Choice>,
    /// Which is down.
    pub chosen: Option<usize>,
}

/// How choices stand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum ChoicesShape {
    /// Side by side, alike wide.
    #[default]
    Even,
    /// As wide as their words.
    Snug,
    /// Under each other.
    Stacked,
    /// Four in one row, the first two, Yes and No, narrower; two rows where large type needs them.
    Gate,
}

/// One thing that can be chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// What its button says.
    pub label: String,
    /// A few more words under it.
    pub note: String,
    /// What choosing it does.
    pub does: Action,
}

/// A button that stays down: something that was seen, or not.
#[derive(Clone, Debug, PartialEq)]
pub struct Toggle {
    /// What.
    pub label: String,
    /// Whether it was seen.
    pub pressed: bool,
    /// A few small words under it, such as when; `None` where there never are any, so that nothing moves for them.
    pub note: Option<String>,
    /// What a press does.
    pub does: Action,
}

/// What the keys have typed so far.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Readout {
    /// Of what.
    pub label: String,
    /// What stands there, as it was typed; empty shows a dash.
    pub value: String,
    /// The same as numbers, each with its unit.
    pub figures: Vec<(String, String)>,
    /// The same in the other units; empty while nothing is typed that can be told.
    pub also: String,
}

/// Buttons in even columns.
#[derive(Clone, Debug, PartialEq)]
pub struct Buttons {
    /// How many columns.
    pub columns: u8,
    /// Each is a `Button`, a `Toggle` or a `DrawnButton`.
    pub inside: Vec<Arc<Block>>,
}

/// A file of the phone to be picked.
#[derive(Clone, Debug, PartialEq)]
pub struct FilePick {
    /// What the button says.
    pub label: String,
    /// Which files are offered, as the browser's `accept`.
    pub accepts: &'static str,
    /// What picking one does: the farm reads it and tells.
    pub does: Action,
}

/// A drawing as a button: what it is, and a word on what it means.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnButton {
    /// The file and the symbol.
    pub drawing: String,
    /// What it is.
    pub label: String,
    /// What it means.
    pub note: String,
    /// What a press does.
    pub does: Action,
}

impl Field {
    /// Returns a field with what stands in it.
    pub fn new(label: impl Into<String>, kind: FieldKind, value: impl Into<String>) -> Self {
        Self { label: label.into(), kind, value: value.into(), ..Self::default() }
    }

    /// The same with a few words of help.
    #[must_use]
    pub fn hint(self, hint: impl Into<String>) -> Self {
        Self { hint: hint.into(), ..self }
    }

    /// The same with what is wrong; nothing when it is empty.
    #[must_use]
    pub fn error(self, error: impl Into<String>) -> Self {
        Self { error: error.into(), ..self }
    }

    /// The same with its unit.
    #[must_use]
    pub fn unit(self, unit: impl Into<String>) -> Self {
        Self { unit: unit.into(), ..self }
    }

    /// The same with a choice of units.
    #[must_use]
    pub fn units(self, units: Choices) -> Self {
        Self { units: Some(units), ..self }
    }

    /// The same with what leaving it does.
    #[must_use]
    pub fn left(self, does: Action) -> Self {
        Self { left: Some(does), ..self }
    }

    /// The same with what Enter does.
    #[must_use]
    pub fn enter(self, does: Action) -> Self {
        Self { enter: Some(does), ..self }
    }
}

impl Choices {
    /// Returns choices side by side.
    pub fn new(label: impl Into<String>, options: Vec<Choice>, chosen: Option<usize>) -> Self {
        Self { label: label.into(), labelled: false, shape: ChoicesShape::Even, options, chosen }
    }

    /// The same under each other.
    #[must_use]
    pub fn stacked(self) -> Self {
        Self { shape: ChoicesShape::Stacked, ..self }
    }

    /// The same, each as wide as its words.
    #[must_use]
    pub fn snug(self) -> Self {
        Self { shape: ChoicesShape::Snug, ..self }
    }

    /// The same in one row, as a question of Yes, No, not checked and cannot check stands.
    #[must_use]
    pub fn gate(self) -> Self {
        Self { shape: ChoicesShape::Gate, ..self }
    }

    /// The same with its label seen.
    #[must_use]
    pub fn labelled(self) -> Self {
        Self { labelled: true, ..self }
    }
}

impl Choices {
    pub(super) fn texts(&self) -> Vec<String> {
        let options = self.options.iter().flat_map(|one| [one.label.clone(), one.note.clone()]);
        std::iter::once(self.label.clone()).chain(options).collect()
    }
}

impl Choice {
    /// Returns a choice without a note.
    pub fn new(label: impl Into<String>, does: Action) -> Self {
        Self { label: in_own_units(&label.into()), note: String::new(), does }
    }

    /// The same with a few more words.
    #[must_use]
    pub fn note(self, note: impl Into<String>) -> Self {
        Self { note: in_own_units(&note.into()), ..self }
    }
}
