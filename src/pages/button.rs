//! A button, or, when it only leads somewhere, a link that looks like one. Its shape is told by what it does (`meaning.rs`),
//! its weight by how much it asks for.

use crate::{Action, Key};

/// A button.
#[derive(Clone, Debug, PartialEq)]
pub struct Button {
    /// What tells it from those beside it: what it does, not what it says.
    pub key: Key,
    /// What it says.
    pub label: String,
    /// The whole name for those who listen, such as "Nursed, 14a"; empty when the label says all.
    pub name: String,
    /// How much it asks for.
    pub weight: Weight,
    /// How large it is.
    pub size: Size,
    /// Whether it cannot be pressed now.
    pub off: bool,
    /// What stands in its place once it was pressed.
    pub stays: Stays,
    /// What a press does.
    pub does: Action,
}

/// How much a button asks for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Weight {
    /// The one thing to do next: solid ink, or a heavy line where it opens.
    Filled,
    /// One of several things to do.
    #[default]
    Outline,
    /// Seldom used.
    Quiet,
}

/// What stands in the place of a button while a hand is at work, so that nothing moves.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Stays {
    /// The button.
    #[default]
    Button,
    /// A tick with its word: it was done.
    Tick,
    /// Nothing: it is not asked for any more. Its room is neither seen nor read out.
    Room,
}

/// How large a button is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Size {
    /// One of several.
    #[default]
    Plain,
    /// At the side of a row: a double tap is one press.
    Action,
    /// Under the thumb.
    Big,
    /// Small and underlined, in running text.
    Small,
}

impl Button {
    /// Returns an ordinary button.
    pub fn new(key: impl Into<Key>, label: impl Into<String>, does: Action) -> Self {
        Self {
            key: key.into(),
            label: label.into(),
            name: String::new(),
            weight: Weight::Outline,
            size: Size::Plain,
            off: false,
            stays: Stays::Button,
            does,
        }
    }

    /// The same, filled: the one thing to do next.
    #[must_use]
    pub fn filled(self) -> Self {
        Self { weight: Weight::Filled, ..self }
    }

    /// The same, seldom used.
    #[must_use]
    pub fn quiet(self) -> Self {
        Self { weight: Weight::Quiet, ..self }
    }

    /// The same, filled if so.
    #[must_use]
    pub fn filled_if(self, filled: bool) -> Self {
        Self { weight: if filled { Weight::Filled } else { Weight::Outline }, ..self }
    }

    /// The same under the thumb.
    #[must_use]
    pub fn big(self) -> Self {
        Self { size: Size::Big, ..self }
    }

    /// The same in running text.
    #[must_use]
    pub fn small(self) -> Self {
        Self { size: Size::Small, ..self }
    }

    /// The same at the side of a row, with its whole name.
    #[must_use]
    pub fn action(self, name: impl Into<String>) -> Self {
        Self { size: Size::Action, name: name.into(), ..self }
    }

    /// The same with a whole name for those who listen.
    #[must_use]
    pub fn named(self, name: impl Into<String>) -> Self {
        Self { name: name.into(), ..self }
    }

    /// A tick in its place, since it was done.
    #[must_use]
    pub fn ticked(self) -> Self {
        Self { stays: Stays::Tick, off: true, ..self }
    }

    /// Its room alone, since it is not asked for any more.
    #[must_use]
    pub fn emptied(self) -> Self {
        Self { stays: Stays::Room, off: true, ..self }
    }

    /// The same, out of use if so.
    #[must_use]
    pub fn off_if(self, off: bool) -> Self {
        Self { off, ..self }
    }
}
