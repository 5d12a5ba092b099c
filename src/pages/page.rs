//! One screen, and the blocks it is put together from.

use std::sync::Arc;

use yeanling_core::book::EntryId;
use yeanling_words::frame;

use crate::block::{
    Aloud, Block, Buttons, Card, Choices, Empty, Fact, Field, Fold, Group, Heading, HeadingLook, Item, Key,
    Kind, Line, LineLook, List, ListLook, Notice, NoticeKind, Row, Section, Shape, State, Tile,
};
use crate::button::Button;
use crate::text::{Text, in_own_units};
use crate::{Action, Screen};

/// A screen.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Page {
    /// The large line: the page's name.
    pub title: String,
    /// How many stand how, beside the name.
    pub tallies: Vec<Tally>,
    /// A line under the name.
    pub under: Text,
    /// The way back: where and what is there. Without one the farm's name stands there.
    pub back: Option<(Screen, String)>,
    /// The list that stands beside it on a wide screen.
    pub beside: Vec<Arc<Block>>,
    /// What stands on it.
    pub blocks: Vec<Arc<Block>>,
    /// What stands under the thumb.
    pub thumb: Vec<Arc<Block>>,
    /// The sheets that lie over it, the uppermost last.
    pub sheets: Vec<SheetPage>,
    /// Whether it has no head of its own: it stands as its blocks alone.
    pub bare: bool,
}

/// How many stand so, with its word.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tally {
    /// How.
    pub state: State,
    /// The count and its word.
    pub text: String,
    /// Whether it only keeps its room, unseen and unread.
    pub empty: bool,
}

/// A sheet of paper over a page.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SheetPage {
    /// The how manieth that was opened on this screen: another one is another element.
    pub opened: usize,
    /// What is asked or told.
    pub title: String,
    /// Whom it is about; empty when that is told on it.
    pub whose: String,
    /// What was refused on it, in words.
    pub refused: Option<String>,
    /// What stands on it.
    pub blocks: Vec<Arc<Block>>,
}

/// Blocks under each other, put together from top to bottom.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Blocks(Vec<Arc<Block>>);

impl Page {
    /// Returns a page that has only a name.
    pub fn new(title: impl Into<String>) -> Self {
        Self { title: title.into(), ..Self::default() }
    }

    /// The same with the way back.
    #[must_use]
    pub fn back(self, to: Screen, name: impl Into<String>) -> Self {
        Self { back: Some((to, name.into())), ..self }
    }

    /// The same with a line under its name.
    #[must_use]
    pub fn under(self, under: impl Into<Text>) -> Self {
        Self { under: under.into(), ..self }
    }

    /// The same with what stands on it.
    #[must_use]
    pub fn blocks(self, blocks: Blocks) -> Self {
        Self { blocks: blocks.into(), ..self }
    }

    /// The same with what stands under the thumb.
    #[must_use]
    pub fn thumb(self, thumb: Blocks) -> Self {
        Self { thumb: thumb.into(), ..self }
    }

    /// Returns every block of it, sheets and thumb too, each before those inside it.
    #[must_use]
    pub fn all(&self) -> Vec<&Arc<Block>> {
        fn add<'a>(block: &'a Arc<Block>, to: &mut Vec<&'a Arc<Block>>) {
            to.push(block);
            for inside in block.inside() {
                add(inside, to);
            }
        }
        let mut all = Vec::new();
        let sheets = self.sheets.iter().flat_map(|sheet| &sheet.blocks);
        for block in self.beside.iter().chain(&self.blocks).chain(&self.thumb).chain(sheets) {
            add(block, &mut all);
        }
        all
    }
}

impl SheetPage {
    /// Returns a sheet.
    pub fn new(title: impl Into<String>, blocks: Blocks) -> Self {
        Self { title: title.into(), blocks: blocks.into(), ..Self::default() }
    }

    /// The same with whom it is about.
    #[must_use]
    pub fn whose(self, whose: impl Into<String>) -> Self {
        Self { whose: whose.into(), ..self }
    }
}

impl Blocks {
    /// Returns none yet.
    #[must_use]
    pub const fn new() -> Self {
        Self(Vec::new())
    }

    /// Says whether there are none.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Adds a block.
    #[must_use]
    pub fn add(mut self, key: impl Into<Key>, kind: Kind) -> Self {
        self.0.push(Block::new(key, kind));
        self
    }

    /// Adds other blocks behind these.
    #[must_use]
    pub fn then(mut self, others: impl IntoIterator<Item = Arc<Block>>) -> Self {
        self.0.extend(others);
        self
    }

    fn line(self, look: LineLook, aloud: Aloud, text: Text, buttons: Vec<Button>) -> Self {
        self.add("", Kind::Line(Line { look, text, aloud, buttons }))
    }

    /// Adds a line of text.
    #[must_use]
    pub fn text(self, text: impl Into<Text>) -> Self {
        self.line(LineLook::Plain, Aloud::Not, text.into(), Vec::new())
    }

    /// Adds what the page is about.
    #[must_use]
    pub fn lead(self, text: impl Into<Text>) -> Self {
        self.line(LineLook::Lead, Aloud::Not, text.into(), Vec::new())
    }

    /// Adds small print.
    #[must_use]
    pub fn small(self, text: impl Into<Text>) -> Self {
        self.line(LineLook::Small, Aloud::Not, text.into(), Vec::new())
    }

    /// Adds a soft line with small buttons behind it.
    #[must_use]
    pub fn remark(self, text: impl Into<Text>, buttons: impl IntoIterator<Item = Button>) -> Self {
        self.line(LineLook::Remark, Aloud::Not, text.into(), buttons.into_iter().collect())
    }

    /// Adds a line that is read out when it changes; it stands there from the start, also empty.
    #[must_use]
    pub fn status(self, text: impl Into<Text>) -> Self {
        self.line(LineLook::Plain, Aloud::Politely, text.into(), Vec::new())
    }

    /// Adds what is wrong with what was typed, read out at once; nothing when nothing is.
    #[must_use]
    pub fn wrong(self, text: impl Into<Text>) -> Self {
        let text = text.into();
        if text.is_empty() { self } else { self.line(LineLook::Wrong, Aloud::AtOnce, text, Vec::new()) }
    }

    /// Adds what went wrong as a notice; nothing when nothing did.
    #[must_use]
    pub fn failed(self, text: impl Into<Text>) -> Self {
        let text = text.into();
        if text.is_empty() { self } else { self.notice("failed", NoticeKind::Bad, text, []) }
    }

    /// Adds a heading inside a section.
    #[must_use]
    pub fn heading(self, text: impl Into<String>) -> Self {
        self.add(
            "",
            Kind::Heading(Heading { level: 3, look: HeadingLook::Plain, text: in_own_units(&text.into()) }),
        )
    }

    /// Adds a part of the page under a heading; nothing without content.
    #[must_use]
    pub fn section(self, key: impl Into<Key>, title: impl Into<String>, inside: Self) -> Self {
        if inside.is_empty() {
            return self;
        }
        self.add(
            key,
            Kind::Section(Section {
                title: in_own_units(&title.into()),
                state: None,
                aside: None,
                inside: inside.0,
            }),
        )
    }

    /// Adds rows; nothing without any.
    #[must_use]
    pub fn rows<K: Into<Key>>(self, key: impl Into<Key>, rows: impl IntoIterator<Item = (K, Row)>) -> Self {
        let rows: Vec<Arc<Block>> =
            rows.into_iter().map(|(key, row)| Block::new(key, Kind::Row(row))).collect();
        if rows.is_empty() { self } else { self.add(key, Kind::Rows(rows)) }
    }

    /// Adds animals at their places in a grid; nothing without any.
    #[must_use]
    pub fn tiles<K: Into<Key>>(
        self,
        key: impl Into<Key>,
        tiles: impl IntoIterator<Item = (K, Tile)>,
    ) -> Self {
        let tiles: Vec<Arc<Block>> =
            tiles.into_iter().map(|(key, tile)| Block::new(key, Kind::Tile(tile))).collect();
        if tiles.is_empty() { self } else { self.add(key, Kind::Tiles(tiles)) }
    }

    /// Adds a few things on a sheet of paper of their own.
    #[must_use]
    pub fn card(self, key: impl Into<Key>, inside: Self) -> Self {
        self.add(key, Kind::Card(Card { inside: inside.0, ..Card::default() }))
    }

    /// Adds what is folded away until it is asked for.
    #[must_use]
    pub fn fold(self, key: impl Into<Key>, label: impl Into<Text>, inside: Self) -> Self {
        self.add(key, Kind::Fold(Fold { label: label.into(), inside: inside.0, ..Fold::default() }))
    }

    /// Adds blocks that belong together.
    #[must_use]
    pub fn group(self, key: impl Into<Key>, shape: Shape, inside: Self) -> Self {
        self.add(key, Kind::Group(Group { shape, hidden: false, inside: inside.0 }))
    }

    /// Adds what is seen at times only; out of sight it keeps its layout.
    #[must_use]
    pub fn seen_if(self, seen: bool, key: impl Into<Key>, inside: Self) -> Self {
        self.add(key, Kind::Group(Group { shape: Shape::Shown, hidden: !seen, inside: inside.0 }))
    }

    /// Adds what the page wants read, and what can be done about it.
    #[must_use]
    pub fn notice(
        self,
        key: impl Into<Key>,
        kind: NoticeKind,
        text: impl Into<Text>,
        buttons: impl IntoIterator<Item = Button>,
    ) -> Self {
        let inside = Self::new().text(text).0;
        self.add(key, Kind::Notice(Notice { kind, inside, buttons: buttons.into_iter().collect() }))
    }

    /// Adds what can hurt, and whom to ask.
    #[must_use]
    pub fn caution<T: Into<Text>>(self, lines: impl IntoIterator<Item = T>) -> Self {
        self.add("", Kind::Caution(lines.into_iter().map(Into::into).collect()))
    }

    /// Adds what an empty screen says to do first.
    #[must_use]
    pub fn empty(self, text: impl Into<Text>, buttons: impl IntoIterator<Item = Button>) -> Self {
        self.add("empty", Kind::Empty(Empty { text: text.into(), buttons: buttons.into_iter().collect() }))
    }

    /// Adds that what is looked for is not in the book, with the way to all that is.
    #[must_use]
    pub fn gone(self) -> Self {
        let flock = Button::new("flock", frame::FLOCK, Action::Go(Screen::Flock));
        self.empty(frame::GONE, [flock])
    }

    /// Adds lines under each other; nothing without any.
    #[must_use]
    pub fn list(self, look: ListLook, items: impl IntoIterator<Item = Item>) -> Self {
        let items: Vec<Item> = items.into_iter().collect();
        if items.is_empty() { self } else { self.add("", Kind::List(List { look, items })) }
    }

    /// Adds small facts side by side; nothing without any.
    #[must_use]
    pub fn facts(self, facts: impl IntoIterator<Item = Fact>) -> Self {
        let facts: Vec<Fact> = facts.into_iter().collect();
        if facts.is_empty() { self } else { self.add("", Kind::Facts(facts)) }
    }

    /// Adds a field; what is typed is kept under its key.
    #[must_use]
    pub fn field(self, key: impl Into<Key>, field: Field) -> Self {
        self.add(key, Kind::Field(field))
    }

    /// Adds choices; nothing without any.
    #[must_use]
    pub fn choices(self, key: impl Into<Key>, choices: Choices) -> Self {
        if choices.options.is_empty() { self } else { self.add(key, Kind::Choices(choices)) }
    }

    /// Adds one button.
    #[must_use]
    pub fn button(self, button: Button) -> Self {
        let key = button.key.clone();
        self.add(key, Kind::Button(button))
    }

    /// Adds buttons in columns.
    #[must_use]
    pub fn buttons(self, columns: u8, buttons: impl IntoIterator<Item = Button>) -> Self {
        let inside = buttons.into_iter().fold(Self::new(), Self::button).0;
        self.add("", Kind::Buttons(Buttons { columns, inside }))
    }
}

impl From<Blocks> for Vec<Arc<Block>> {
    fn from(blocks: Blocks) -> Self {
        blocks.0
    }
}

impl IntoIterator for Blocks {
    type Item = Arc<Block>;
    type IntoIter = std::vec::IntoIter<Arc<Block>>;

    fn into_iter(self) -> Self::IntoIter {
        self.0.into_iter()
    }
}

/// Returns the key of what belongs to an entry.
#[must_use]
pub fn key_of(noun: &'static str, entry: EntryId) -> Key {
    format!("{noun}-{entry}").into()
}

/// Returns a key that is none of those taken before, which are added to: what comes twice is counted.
#[must_use]
pub(crate) fn unlike(key: String, taken: &mut std::collections::BTreeSet<String>) -> Key {
    let mut other = key.clone();
    let mut count = 1;
    while !taken.insert(other.clone()) {
        count += 1;
        other = format!("{key}-{count}");
    }
    other.into()
}

/// Returns the small button that asks "why?"; its answer is put into words only when it is asked.
#[must_use]
pub fn why(about: &str, reason: crate::why::Reason) -> Button {
    let label = yeanling_words::label::WHY;
    let asks = Action::Ask(crate::Sheet::Why(Box::new(reason)));
    Button::new("why", label, asks).small().named(format!("{label} {about}"))
}
