//! What a page is made of. A key is unique on its page: the same thing has the same key next minute, so that its element,
//! its focus and its caret stay.

mod family;
mod hold;
mod input;
mod read;
mod shown;
mod text;
mod tile;

use std::borrow::Cow;
use std::sync::Arc;

use crate::button::Button;
use crate::chart::Chart;
use crate::ribbon::Ribbon;
use crate::text::Text;

pub use family::*;
pub use hold::*;
pub use input::*;
pub use shown::*;
pub use text::*;
pub use tile::*;

/// What tells one block, field or button of a page from all others: no spaces in it.
pub type Key = Cow<'static, str>;

/// A block with its key.
#[derive(Clone, Debug, PartialEq)]
pub struct Block {
    /// Its key.
    pub key: Key,
    /// What it is.
    pub kind: Kind,
}

/// Every kind of block.
#[derive(Clone, Debug, PartialEq)]
pub enum Kind {
    // Those that hold others.
    /// A part of the page under a heading.
    Section(Section),
    /// A few things on a sheet of paper of their own.
    Card(Card),
    /// What is folded away until it is asked for.
    Fold(Fold),
    /// Blocks side by side or under each other, as their shape says.
    Group(Group),
    /// Rows under each other; each is a `Row`.
    Rows(Vec<Arc<Block>>),
    /// The animals of one family on one card.
    Family(Family),
    /// One animal, one duty.
    Row(Row),
    /// Animals at their places in a grid; each is a `Tile`.
    Tiles(Vec<Arc<Block>>),
    /// One animal in the grid.
    Tile(Tile),
    /// What the page wants read.
    Notice(Notice),
    /// The number pad, with what stands beside it.
    Keypad(Keypad),
    // Text.
    /// A line.
    Line(Line),
    /// A heading inside a section.
    Heading(Heading),
    /// Lines under each other.
    List(List),
    /// What can hurt, and whom to ask; a line each.
    Caution(Vec<Text>),
    /// An empty screen that says what to do first.
    Empty(Empty),
    // Shown.
    /// One figure, large.
    Figure(Figure),
    /// A few small facts side by side.
    Facts(Vec<Fact>),
    /// A strip of time.
    Ribbon(Ribbon),
    /// Lines and bars over a strip of ground.
    Chart(Chart),
    /// Figures one under another.
    Ledger(Ledger),
    /// Conditions, each met, not met or not known.
    Checks(Vec<Check>),
    /// What was given against what is wanted.
    Progress(Progress),
    /// What was noted, line by line.
    Timeline(Vec<Noted>),
    // Input.
    /// What must be typed.
    Field(Field),
    /// One of a few.
    Choices(Choices),
    /// Something that was seen, or not.
    Toggle(Toggle),
    /// What the keys have typed so far.
    Readout(Readout),
    /// Buttons in even columns.
    Buttons(Buttons),
    /// One button.
    Button(Button),
    // Special.
    /// A file of the phone to be picked.
    FilePick(FilePick),
    /// A line drawing.
    Drawing(String),
    /// A drawing as a button.
    DrawnButton(DrawnButton),
    /// A card for paper.
    PaperCard(PaperCard),
    /// A table for paper.
    PaperTable(PaperTable),
    /// What rings at night, over the whole screen.
    Ring(Ring),
}

/// How something stands: told by a shape, then by an ink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum State {
    /// A life hangs on it.
    Danger,
    /// Its time has passed.
    Late,
    /// Its time is now.
    Now,
    /// Its time is still to come.
    Coming,
    /// It is done.
    Done,
}

impl State {
    /// Returns the value of `data-state` that style and tests know.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Danger => "danger",
            Self::Late => "late",
            Self::Now => "now",
            Self::Coming => "coming",
            Self::Done => "done",
        }
    }
}

impl From<yeanling_core::watch::State> for State {
    fn from(state: yeanling_core::watch::State) -> Self {
        use yeanling_core::watch;
        match state {
            watch::State::Danger => Self::Danger,
            watch::State::Late => Self::Late,
            watch::State::Now => Self::Now,
            watch::State::Coming => Self::Coming,
        }
    }
}
