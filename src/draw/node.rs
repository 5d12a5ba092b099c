//! What stands in the page, as plain data: elements with their attributes, text, and blocks not yet drawn.

use std::sync::Arc;

use yeanling_pages::{Action, Block, Key, Text};

/// A piece of the page.
#[derive(Clone, Debug)]
#[expect(
    clippy::large_enum_variant,
    reason = "a piece is made and taken apart at once: a box for each costs more"
)]
pub enum Node {
    /// Text.
    Text(String),
    /// A block: one that stands there already is not drawn anew.
    Of(Arc<Block>),
    /// An element.
    Element(Element),
}

/// An element.
#[derive(Clone, Debug)]
pub struct Element {
    /// Its tag.
    pub tag: &'static str,
    /// Tells it from its siblings; empty where its place and tag do.
    pub key: Key,
    /// Its attributes by name. `.value` is the text of a field, `.modal` a sheet over the page, `--x` a custom property.
    pub attributes: Vec<(&'static str, String)>,
    /// What a press or a key on it does.
    pub on: Option<On>,
    /// What stands in it.
    pub inside: Vec<Node>,
}

/// What an element hears of.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct On {
    /// A press.
    pub press: Option<Action>,
    /// A press that, with a double tap, counts once.
    pub once: bool,
    /// Something typed: under which key it is kept.
    pub input: Option<Key>,
    /// What was typed is left, or a file was picked.
    pub change: Option<Action>,
    /// Enter.
    pub enter: Option<Action>,
    /// It was closed, however that came.
    pub close: Option<Action>,
}

/// Begins an element of a class; an empty class is none.
#[must_use]
pub fn el(tag: &'static str, class: &str) -> Element {
    let attributes = if class.is_empty() { Vec::new() } else { vec![("class", class.to_owned())] };
    Element { tag, key: Key::Borrowed(""), attributes, on: None, inside: Vec::new() }
}

impl Element {
    /// The same with its key.
    #[must_use]
    pub fn key(self, key: impl Into<Key>) -> Self {
        Self { key: key.into(), ..self }
    }

    /// The same with an attribute.
    #[must_use]
    pub fn has(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.attributes.push((name, value.into()));
        self
    }

    /// The same with an attribute, if there is a value.
    #[must_use]
    pub fn has_some(self, name: &'static str, value: Option<impl Into<String>>) -> Self {
        match value {
            Some(value) => self.has(name, value),
            None => self,
        }
    }

    /// The same with what it hears of.
    #[must_use]
    pub fn on(self, on: On) -> Self {
        Self { on: Some(on), ..self }
    }

    /// The same with what a press does.
    #[must_use]
    pub fn press(self, does: &Action) -> Self {
        self.on(On { press: Some(does.clone()), ..On::default() })
    }

    /// The same with a piece behind all that stands in it.
    #[must_use]
    pub fn with(mut self, node: impl Into<Node>) -> Self {
        self.inside.push(node.into());
        self
    }

    /// The same with pieces behind all that stands in it.
    #[must_use]
    pub fn all(mut self, nodes: impl IntoIterator<Item = Node>) -> Self {
        self.inside.extend(nodes);
        self
    }

    /// The same with blocks behind all that stands in it.
    #[must_use]
    pub fn blocks<'a>(self, blocks: impl IntoIterator<Item = &'a Arc<Block>>) -> Self {
        self.all(blocks.into_iter().map(|block| Node::Of(Arc::clone(block))))
    }

    /// The same with a line of text.
    #[must_use]
    pub fn said(self, text: &Text) -> Self {
        if text.room().is_empty() {
            return self.spans(text);
        }
        self.with(el("span", "room").has("data-room", text.room()).with(el("span", "").spans(text)))
    }

    fn spans(self, text: &Text) -> Self {
        let piece = |span: &yeanling_pages::Span| {
            if span.strong { el("b", "").with(span.text.as_str()).into() } else { span.text.as_str().into() }
        };
        self.all(text.spans().iter().map(piece))
    }
}

impl From<Element> for Node {
    fn from(element: Element) -> Self {
        Self::Element(element)
    }
}

impl From<&str> for Node {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}
