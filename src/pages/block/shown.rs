//! What is shown: figures, facts, ledgers, checks, progress, what was noted.

use std::sync::Arc;

use super::{Block, Choice, Key};
use crate::button::Button;
use crate::text::Text;

/// One figure, large, with its unit and the same in other units.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Figure {
    /// The number.
    pub value: String,
    /// Its unit; may be empty.
    pub unit: String,
    /// The same in other units, or what it counts.
    pub also: String,
    /// How large.
    pub size: FigureSize,
    /// What stands beside it, such as a verdict.
    pub beside: Vec<Arc<Block>>,
    /// Buttons behind that, such as "why?".
    pub buttons: Vec<Button>,
}

impl Figure {
    /// Returns what stands between the number and its unit: nothing before a percent sign.
    #[must_use]
    pub fn gap(&self) -> &'static str {
        if self.unit.is_empty() || self.unit == "%" { "" } else { " " }
    }
}

/// How large a figure is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum FigureSize {
    /// On a card.
    #[default]
    Card,
    /// At the head of a screen.
    Head,
    /// To be read across a barn.
    Barn,
}

/// A small fact.
#[derive(Clone, Debug, PartialEq)]
pub struct Fact {
    /// The value.
    pub value: Text,
    /// What it is of.
    pub note: String,
}

/// Figures one under another, each with its name, beside those of another time.
#[derive(Clone, Debug, PartialEq)]
pub struct Ledger {
    /// What it is of, for those who listen.
    pub label: String,
    /// The headings of the two columns; of one alone, nothing in the second.
    pub heads: (String, String),
    /// The rows.
    pub rows: Vec<LedgerRow>,
}

/// One figure of a ledger.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LedgerRow {
    /// What it is.
    pub name: String,
    /// A few words under it.
    pub note: String,
    /// The figure.
    pub value: Text,
    /// The one of the other time.
    pub other: Text,
}

/// A condition; `None` is not known.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    /// Whether it is met.
    pub met: Option<bool>,
    /// What it says, its word first.
    pub text: Text,
}

/// What was given against what is wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct Progress {
    /// How much of it, 0 to 1 and more.
    pub share: f64,
    /// The same in words.
    pub text: Text,
}

/// Something that was noted.
#[derive(Clone, Debug, PartialEq)]
pub struct Noted {
    /// Its key.
    pub key: Key,
    /// When.
    pub time: String,
    /// What.
    pub text: Text,
    /// A few soft words under it.
    pub note: String,
    /// Whether it was struck out.
    pub struck: bool,
    /// What can be done about it.
    pub buttons: Vec<Button>,
}

/// What rings at night: the whole screen is one button, since half asleep no one aims.
#[derive(Clone, Debug, PartialEq)]
pub struct Ring {
    /// For whom.
    pub name: String,
    /// What.
    pub text: Text,
    /// How many more ring, in words; nothing of one alone.
    pub more: String,
    /// What answers it, with where to tap under it.
    pub answer: Choice,
}

impl Fact {
    /// Returns a fact.
    pub fn new(value: impl Into<Text>, note: impl Into<String>) -> Self {
        Self { value: value.into(), note: note.into() }
    }
}
