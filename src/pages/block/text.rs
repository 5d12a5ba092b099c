//! Text: lines, headings, lists, what an empty screen says, cards for paper.

use crate::Screen;
use crate::button::Button;
use crate::text::Text;

/// A line.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// How it looks.
    pub look: LineLook,
    /// What it says.
    pub text: Text,
    /// How it is read out when it comes or changes.
    pub aloud: Aloud,
    /// Small buttons behind it.
    pub buttons: Vec<Button>,
}

/// How a line looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LineLook {
    /// As text.
    Plain,
    /// What the page is about, larger.
    Lead,
    /// Small print.
    Small,
    /// A soft line beside what matters.
    Remark,
    /// What is wrong with what was typed.
    Wrong,
    /// That something is done.
    Done,
    /// The label above an answer.
    AnswerLabel,
    /// As text that leads to a screen.
    To(Screen),
    /// What comes next at night, and where it is.
    NightNext(Screen),
    /// That nothing is due at night.
    NightCalm,
    /// What the phone's own alarm can be set for.
    NightPocket,
    /// What the night's alarm cannot do.
    NightOnly,
    /// Seen on paper alone, above all else: whose it is and of which day.
    PaperHead,
}

/// How a line is read out when it comes or changes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aloud {
    /// It is not.
    Not,
    /// When there is a pause. A line that is said so stands there from the start, empty.
    Politely,
    /// At once.
    AtOnce,
}

/// A heading inside a section, or of a card.
#[derive(Clone, Debug, PartialEq)]
pub struct Heading {
    /// How deep, 2 or 3; the page's name is 1, which stands among the blocks of a bare page alone.
    pub level: u8,
    /// How it looks.
    pub look: HeadingLook,
    /// What it says.
    pub text: String,
}

/// How a heading looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeadingLook {
    /// As a heading.
    Plain,
    /// The animal whose turn it is, large.
    Turn,
    /// The only lamb of a litter.
    OneLamb,
}

/// Lines under each other.
#[derive(Clone, Debug, PartialEq)]
pub struct List {
    /// How they look.
    pub look: ListLook,
    /// The lines.
    pub items: Vec<Item>,
}

/// One line of a list.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Item {
    /// What it says.
    pub text: Text,
    /// The file and the symbol of a drawing beside it; empty for none.
    pub drawing: String,
    /// A few small words under it.
    pub note: Text,
    /// Small buttons behind it.
    pub buttons: Vec<Button>,
}

/// How a list looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ListLook {
    /// Lines.
    Plain,
    /// Steps, numbered.
    Steps,
    /// What never to do.
    Nevers,
    /// Readings, each with its time.
    Readings,
    /// What is to be read, each with its source.
    Reading,
    /// The same, numbered: the first comes first.
    Ranked,
    /// Two records beside each other.
    Pair,

    /// What is on a page; each line a button that leads there.
    Contents,
    /// The working of a figure.
    Working,
    /// A rule's name.
    Rule,
    /// What others say.
    Others,
    /// Where it is from.
    Sources,
    /// What comes then at night: the note first, which is its time.
    NightThen,
}

/// An empty screen that says what to do first.
#[derive(Clone, Debug, PartialEq)]
pub struct Empty {
    /// What to do first.
    pub text: Text,
    /// What does it.
    pub buttons: Vec<Button>,
}

/// A card for paper: lists under headings; boxes to tick for what is to do.
#[derive(Clone, Debug, PartialEq)]
pub struct PaperCard {
    /// What stands above.
    pub sub: String,
    /// The lists: heading, lines, whether each has a box.
    pub lists: Vec<CardList>,
}

/// A list of a card for paper.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct CardList {
    /// Its heading.
    pub heading: String,
    /// Its lines.
    pub lines: Vec<String>,
    /// Whether each has a box to tick.
    pub boxes: bool,
}

/// A table for paper: who and when above it, a head a column, a row a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PaperTable {
    /// Whose it is and of which day.
    pub head: String,
    /// The heads of the columns.
    pub heads: Vec<String>,
    /// The rows, each as long as the heads.
    pub rows: Vec<Vec<String>>,
    /// Whether it is seen on the screen too.
    pub on_screen: bool,
}

impl Line {
    /// Returns a line that is not read out, and has nothing behind it.
    pub fn new(look: LineLook, text: impl Into<Text>) -> Self {
        Self { look, text: text.into(), aloud: Aloud::Not, buttons: Vec::new() }
    }
}

impl Item {
    /// Returns a line alone.
    pub fn new(text: impl Into<Text>) -> Self {
        Self { text: text.into(), ..Self::default() }
    }

    /// The same with a few small words under it.
    #[must_use]
    pub fn note(self, note: impl Into<Text>) -> Self {
        Self { note: note.into(), ..self }
    }
}
