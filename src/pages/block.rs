//! What a page is made of. A key is unique on its page: the same thing has the same key next minute, so that its element,
//! its focus and its caret stay.

use std::borrow::Cow;
use std::sync::Arc;

use crate::button::{Button, Stays};
use crate::chart::Chart;
use crate::ribbon::Ribbon;
use crate::text::Text;
use crate::{Action, Screen};

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
    /// One animal, one duty.
    Row(Row),
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
    /// Buttons under a row.
    Others,
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
    /// How it stands, in words.
    pub says: Text,
    /// How it stands.
    pub state: State,
    /// Whose size it keeps while it stands in the place of another state; without one it takes that of its own.
    pub size: Option<State>,
    /// Where its words lead.
    pub to: Option<Screen>,
    /// The one press that does it.
    pub action: Option<Button>,
    /// More about it.
    pub inside: Vec<Arc<Block>>,
}

/// How a row looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum RowLook {
    /// On paper, with its button beside it.
    #[default]
    Paper,
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

/// The number pad for wet gloves. Each key types into the field of this key.
#[derive(Clone, Debug, PartialEq)]
pub struct Keypad {
    /// Under which key what is typed is kept.
    pub types: Key,
    /// What stands there.
    pub value: String,
    /// Whether the next key begins anew.
    pub anew: bool,
    /// Whether it has a point.
    pub point: bool,
    /// How many signs at most.
    pub most: usize,
    /// What stands beside it.
    pub inside: Vec<Arc<Block>>,
}

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
#[derive(Clone, Debug, PartialEq)]
pub struct Readout {
    /// Of what.
    pub label: String,
    /// What stands there; empty shows a dash.
    pub value: String,
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

impl Block {
    /// Returns blocks as one, as if nothing held them.
    pub fn seen(key: impl Into<Key>, inside: impl Into<Vec<Arc<Self>>>) -> Arc<Self> {
        Self::new(key, Kind::Group(Group { shape: Shape::Shown, hidden: false, inside: inside.into() }))
    }

    /// Returns a block.
    pub fn new(key: impl Into<Key>, kind: Kind) -> Arc<Self> {
        Arc::new(Self { key: key.into(), kind })
    }

    /// Returns the blocks inside, those beside a card's action first.
    #[must_use]
    pub fn inside(&self) -> Vec<&Arc<Self>> {
        match &self.kind {
            Kind::Section(it) => it.inside.iter().collect(),
            Kind::Card(it) => it.head.iter().chain(&it.lead).chain(&it.inside).collect(),
            Kind::Fold(it) => it.inside.iter().collect(),
            Kind::Group(it) => it.inside.iter().collect(),
            Kind::Rows(inside) => inside.iter().collect(),
            Kind::Row(it) => it.inside.iter().collect(),
            Kind::Notice(it) => it.inside.iter().collect(),
            Kind::Keypad(it) => it.inside.iter().collect(),
            Kind::Buttons(it) => it.inside.iter().collect(),
            Kind::Figure(it) => it.beside.iter().collect(),
            Kind::Line(_)
            | Kind::Heading(_)
            | Kind::List(_)
            | Kind::Caution(_)
            | Kind::Empty(_)
            | Kind::Facts(_)
            | Kind::Ribbon(_)
            | Kind::Chart(_)
            | Kind::Ledger(_)
            | Kind::Checks(_)
            | Kind::Progress(_)
            | Kind::Timeline(_)
            | Kind::Field(_)
            | Kind::Choices(_)
            | Kind::Toggle(_)
            | Kind::Readout(_)
            | Kind::Button(_)
            | Kind::FilePick(_)
            | Kind::Drawing(_)
            | Kind::DrawnButton(_)
            | Kind::PaperCard(_)
            | Kind::Ring(_) => Vec::new(),
        }
    }

    /// Returns every button of its own; not those of the blocks inside.
    #[must_use]
    pub fn buttons(&self) -> Vec<&Button> {
        match &self.kind {
            Kind::Section(it) => it.aside.iter().collect(),
            Kind::Card(it) => it.action.iter().collect(),
            Kind::Row(it) => it.action.iter().collect(),
            Kind::Notice(it) => it.buttons.iter().collect(),
            Kind::Line(it) => it.buttons.iter().collect(),
            Kind::List(it) => it.items.iter().flat_map(|item| &item.buttons).collect(),
            Kind::Empty(it) => it.buttons.iter().collect(),
            Kind::Figure(it) => it.buttons.iter().collect(),
            Kind::Timeline(lines) => lines.iter().flat_map(|line| &line.buttons).collect(),
            Kind::Button(it) => vec![it],
            Kind::Fold(_)
            | Kind::Group(_)
            | Kind::Rows(_)
            | Kind::Keypad(_)
            | Kind::Heading(_)
            | Kind::Caution(_)
            | Kind::Facts(_)
            | Kind::Ribbon(_)
            | Kind::Chart(_)
            | Kind::Ledger(_)
            | Kind::Checks(_)
            | Kind::Progress(_)
            | Kind::Field(_)
            | Kind::Choices(_)
            | Kind::Toggle(_)
            | Kind::Readout(_)
            | Kind::Buttons(_)
            | Kind::FilePick(_)
            | Kind::Drawing(_)
            | Kind::DrawnButton(_)
            | Kind::PaperCard(_)
            | Kind::Ring(_) => Vec::new(),
        }
    }
}

impl Block {
    /// Returns every text of its own, as it is read out; not those of the blocks inside.
    #[must_use]
    pub fn texts(&self) -> Vec<String> {
        let mut all: Vec<String> = Vec::new();
        for button in self.buttons().into_iter().filter(|button| button.stays != Stays::Room) {
            all.extend([button.label.clone(), button.name.clone()]);
        }
        match &self.kind {
            Kind::Section(it) => all.push(it.title.clone()),
            Kind::Fold(it) => all.push(it.label.plain()),
            Kind::Row(it) => all.extend([it.name.clone(), it.kind.plain(), it.text.plain(), it.says.plain()]),
            Kind::Line(it) => all.push(it.text.plain()),
            Kind::Heading(it) => all.push(it.text.clone()),
            Kind::List(it) => {
                all.extend(it.items.iter().flat_map(|one| [one.text.plain(), one.note.plain()]))
            }
            Kind::Caution(lines) => all.extend(lines.iter().map(Text::plain)),
            Kind::Empty(it) => all.push(it.text.plain()),
            Kind::Figure(it) => {
                all.extend([format!("{} {}", it.value, it.unit).trim().to_owned(), it.also.clone()])
            }
            Kind::Facts(facts) => {
                all.extend(facts.iter().flat_map(|one| [one.value.plain(), one.note.clone()]))
            }
            Kind::Ribbon(it) => {
                all.push(it.label.clone());
                all.extend(it.stretches.iter().map(|one| one.label.clone()));
                all.extend(it.ticks.iter().map(|one| one.text.clone()));
                all.extend(it.pins.iter().map(|one| one.title.clone()));
            }
            Kind::Chart(it) => {
                all.extend([
                    it.label.clone(),
                    it.band_name.clone(),
                    it.bars_name.clone(),
                    it.spreads_name.clone(),
                ]);
                all.extend(it.lines.iter().map(|one| one.name.clone()));
                all.extend(it.across.iter().chain(&it.up).map(|(_, text)| text.clone()));
            }
            Kind::Ledger(it) => {
                all.extend([it.label.clone(), it.heads.0.clone(), it.heads.1.clone()]);
                let row = |one: &LedgerRow| {
                    [one.name.clone(), one.note.clone(), one.value.plain(), one.other.plain()]
                };
                all.extend(it.rows.iter().flat_map(row));
            }
            Kind::Checks(checks) => all.extend(checks.iter().map(|one| one.text.plain())),
            Kind::Progress(it) => all.push(it.text.plain()),
            Kind::Timeline(lines) => {
                all.extend(
                    lines.iter().flat_map(|one| [one.time.clone(), one.text.plain(), one.note.clone()]),
                );
            }
            Kind::Field(it) => {
                all.extend([it.label.clone(), it.hint.clone(), it.error.clone(), it.unit.clone()]);
                all.extend(it.units.iter().flat_map(Choices::texts));
            }
            Kind::Choices(it) => all.extend(it.texts()),
            Kind::Toggle(it) => all.extend([it.label.clone(), it.note.clone().unwrap_or_default()]),
            Kind::Readout(it) => all.extend([it.label.clone(), it.value.clone()]),
            Kind::FilePick(it) => all.push(it.label.clone()),
            Kind::DrawnButton(it) => all.extend([it.label.clone(), it.note.clone()]),
            Kind::PaperCard(it) => {
                all.push(it.sub.clone());
                let list = |one: &CardList| {
                    std::iter::once(one.heading.clone()).chain(one.lines.clone()).collect::<Vec<_>>()
                };
                all.extend(it.lists.iter().flat_map(list));
            }
            Kind::Ring(it) => {
                all.extend([it.name.clone(), it.text.plain(), it.more.clone()]);
                all.extend([it.answer.label.clone(), it.answer.note.clone()]);
            }
            Kind::Card(_)
            | Kind::Group(_)
            | Kind::Rows(_)
            | Kind::Notice(_)
            | Kind::Keypad(_)
            | Kind::Buttons(_)
            | Kind::Button(_)
            | Kind::Drawing(_) => {}
        }
        all.retain(|text| !text.is_empty());
        all
    }
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

impl Row {
    /// Returns a row that says only whose it is; what comes next is put behind it.
    pub fn new(name: impl Into<String>) -> Self {
        Self {
            look: RowLook::Paper,
            name: name.into(),
            kind: Text::default(),
            text: Text::default(),
            says: Text::default(),
            state: State::Coming,
            size: None,
            to: None,
            action: None,
            inside: Vec::new(),
        }
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

    /// The same with how it stands.
    #[must_use]
    pub fn says(self, state: State, says: impl Into<Text>) -> Self {
        Self { state, says: says.into(), ..self }
    }

    /// The same in the size of another state, if there is one.
    #[must_use]
    pub fn sized(self, size: Option<State>) -> Self {
        Self { size, ..self }
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

    /// The same with more about it.
    #[must_use]
    pub fn inside(self, inside: impl Into<Vec<Arc<Block>>>) -> Self {
        Self { inside: inside.into(), ..self }
    }
}

impl Line {
    /// Returns a line that is not read out, and has nothing behind it.
    pub fn new(look: LineLook, text: impl Into<Text>) -> Self {
        Self { look, text: text.into(), aloud: Aloud::Not, buttons: Vec::new() }
    }
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

    /// The same with its label seen.
    #[must_use]
    pub fn labelled(self) -> Self {
        Self { labelled: true, ..self }
    }
}

impl Choices {
    fn texts(&self) -> Vec<String> {
        let options = self.options.iter().flat_map(|one| [one.label.clone(), one.note.clone()]);
        std::iter::once(self.label.clone()).chain(options).collect()
    }
}

impl Choice {
    /// Returns a choice without a note.
    pub fn new(label: impl Into<String>, does: Action) -> Self {
        Self { label: label.into(), note: String::new(), does }
    }

    /// The same with a few more words.
    #[must_use]
    pub fn note(self, note: impl Into<String>) -> Self {
        Self { note: note.into(), ..self }
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

impl Fact {
    /// Returns a fact.
    pub fn new(value: impl Into<Text>, note: impl Into<String>) -> Self {
        Self { value: value.into(), note: note.into() }
    }
}
