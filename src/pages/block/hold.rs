//! Blocks that hold others.

use std::sync::Arc;

use super::{Block, Key, State};
use crate::Screen;
use crate::button::Button;
use crate::text::Text;

/// A part of the page under a heading with a rule line. It exists only with content.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// The heading.
    pub title: String,
    /// Which state it gathers, so that its heading takes that ink.
    pub state: Option<State>,
    /// A small button at the line's far end.
    pub aside: Option<Button>,
    /// What it holds; at least one.
    pub inside: Vec<Arc<Block>>,
}

/// A few things on a sheet of paper of their own; `lead` and `action` stand side by side above the rest.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Card {
    /// What stands above both.
    pub head: Vec<Arc<Block>>,
    /// What stands first.
    pub lead: Vec<Arc<Block>>,
    /// The button beside it.
    pub action: Option<Button>,
    /// What stands below.
    pub inside: Vec<Arc<Block>>,
}

/// What is folded away until it is asked for.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Fold {
    /// What is in it.
    pub label: Text,
    /// Whether it is one of sources, in small print.
    pub sources: bool,
    /// Whether it lies open from the start.
    pub open: bool,
    /// What it holds.
    pub inside: Vec<Arc<Block>>,
}

/// Blocks that belong together.
#[derive(Clone, Debug, PartialEq)]
pub struct Group {
    /// How they stand.
    pub shape: Shape,
    /// Whether they are out of sight.
    pub hidden: bool,
    /// The blocks.
    pub inside: Vec<Arc<Block>>,
}

/// How the blocks of a group stand. Each is a class of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// Under each other, with the room of blocks between them.
    Blocks,
    /// As if nothing held them; out of sight they keep their layout, so that they are quickly seen again.
    Shown,
    /// Answers of a calculation side by side.
    Answers,
    /// One answer: its label and its figure.
    Answer,
    /// What is due for a ewe at work.
    LaborDue,
    /// All that is noted of a lamb that lives.
    Living,
    /// All that is noted of a lamb that does not live: out of reach.
    NotLiving,
    /// What was seen of a lamb, side by side.
    LambingSeen,
    /// How a birth went.
    LambingHelp,
    /// What a number on the keys comes to, in its own room.
    KeypadSays,
    /// A part of the help, with its anchor.
    HelpPart,
    /// A drawing and its words side by side.
    DrawnLine,
    /// The dark clock, all of it.
    Night,
    /// Its head: the way back, its name, the hour.
    NightTop,
    /// What is due, to be read from afar: a line each.
    NightDue,
    /// The time to what comes next.
    Timer,
    /// What the phone can do about it, at the foot.
    NightFoot,
    /// What is read out at once when it comes.
    Alert,
}

/// One animal, one duty.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// How it looks.
    pub look: RowLook,
    /// Whose it is.
    pub name: String,
    /// A few soft words beside the name.
    pub kind: Text,
    /// What to do.
    pub text: Text,
    /// What to do about it, where its text is what was seen.
    pub step: Text,
    /// How it stands, in words.
    pub says: Text,
    /// How it stands.
    pub state: State,
    /// Where its words lead.
    pub to: Option<Screen>,
    /// The one press that does it.
    pub action: Option<Button>,
    /// What else can be pressed for it, under that.
    pub others: Vec<Button>,
    /// More about it.
    pub inside: Vec<Arc<Block>>,
}

/// How a row looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum RowLook {
    /// On paper, with its button beside it.
    #[default]
    Paper,
    /// A line of its card: its job, its time, one button in a fixed place.
    Line,
    /// The same on a card of its own, whose ground speaks so loudly.
    Alone(State),
    /// A card in full ink, for what a life hangs on.
    Solid,
    /// In words alone, to be read from afar at night.
    Night,
}

/// What the page wants read.
#[derive(Clone, Debug, PartialEq)]
pub struct Notice {
    /// How loudly.
    pub kind: NoticeKind,
    /// What stands on it.
    pub inside: Vec<Arc<Block>>,
    /// What can be done about it.
    pub buttons: Vec<Button>,
}

/// How loudly something is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoticeKind {
    /// Good to know.
    Calm,
    /// To be looked at.
    Warn,
    /// Wrong; read out at once.
    Bad,
}

/// The number pad for wet gloves, one for every number: what is typed and what it comes to across its whole width, the keys,
/// and below them what is asked about it, so that no key moves for that. Each key types into the field of this key.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Keypad {
    /// Under which key what is typed is kept.
    pub types: Key,
    /// What stands there.
    pub value: String,
    /// Whether the next key begins anew.
    pub anew: bool,
    /// Whether it has a point.
    pub point: bool,
    /// The sign of the larger of two units, whose key stands between their numbers ("8 lb 4"); none where there is one unit.
    pub larger: Option<&'static str>,
    /// How many digits and points at most.
    pub most: usize,
    /// What stands above the keys.
    pub inside: Vec<Arc<Block>>,
    /// What stands below them.
    pub below: Vec<Arc<Block>>,
}

impl Row {
    /// Returns a row that says only whose it is; what comes next is put behind it.
    pub fn new(name: impl Into<String>) -> Self {
        Self {
            look: RowLook::Paper,
            name: name.into(),
            kind: Text::default(),
            text: Text::default(),
            step: Text::default(),
            says: Text::default(),
            state: State::Coming,
            to: None,
            action: None,
            others: Vec::new(),
            inside: Vec::new(),
        }
    }

    /// The same in another look.
    #[must_use]
    pub fn look(self, look: RowLook) -> Self {
        Self { look, ..self }
    }

    /// The same, to be read from afar at night.
    #[must_use]
    pub fn at_night(self) -> Self {
        Self { look: RowLook::Night, ..self }
    }

    /// The same with soft words beside the name.
    #[must_use]
    pub fn kind(self, kind: impl Into<Text>) -> Self {
        Self { kind: kind.into(), ..self }
    }

    /// The same with what to do.
    #[must_use]
    pub fn text(self, text: impl Into<Text>) -> Self {
        Self { text: text.into(), ..self }
    }

    /// The same with what to do about what its text says.
    #[must_use]
    pub fn step(self, step: impl Into<Text>) -> Self {
        Self { step: step.into(), ..self }
    }

    /// The same with how it stands.
    #[must_use]
    pub fn says(self, state: State, says: impl Into<Text>) -> Self {
        Self { state, says: says.into(), ..self }
    }

    /// The same, leading somewhere.
    #[must_use]
    pub fn to(self, screen: Screen) -> Self {
        Self { to: Some(screen), ..self }
    }

    /// The same with the press that does it, if there is one.
    #[must_use]
    pub fn action(self, action: impl Into<Option<Button>>) -> Self {
        Self { action: action.into(), ..self }
    }

    /// The same with what else can be pressed for it.
    #[must_use]
    pub fn others(self, others: impl IntoIterator<Item = Button>) -> Self {
        Self { others: others.into_iter().collect(), ..self }
    }

    /// The same with more about it.
    #[must_use]
    pub fn inside(self, inside: impl Into<Vec<Arc<Block>>>) -> Self {
        Self { inside: inside.into(), ..self }
    }
}
