//! A tree of elements for tests: what a page looks like without a browser, as HTML and as elements that can be told apart.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use yeanling_draw::{Dom, Node as Drawn};

/// A tree of elements.
#[derive(Clone, Debug, Default)]
pub(crate) struct Tree {
    made: Rc<Cell<usize>>,
}

/// An element or a text.
#[derive(Clone, Debug)]
pub(crate) struct Node(Rc<RefCell<Inner>>);

#[derive(Debug, Default)]
struct Inner {
    number: usize,
    tag: &'static str,
    text: String,
    attributes: BTreeMap<String, String>,
    inside: Vec<Node>,
    open: bool,
}

impl Tree {
    fn make(&self, inner: Inner) -> Node {
        self.made.set(self.made.get() + 1);
        Node(Rc::new(RefCell::new(Inner { number: self.made.get(), ..inner })))
    }
}

impl Dom for Tree {
    type Node = Node;

    fn element(&self, tag: &'static str, _: bool) -> Node {
        self.make(Inner { tag, ..Inner::default() })
    }

    fn text(&self, text: &str) -> Node {
        self.make(Inner { text: text.to_owned(), ..Inner::default() })
    }

    fn set_text(&self, node: &Node, text: &str) {
        text.clone_into(&mut node.0.borrow_mut().text);
    }

    fn set(&self, node: &Node, name: &'static str, value: &str) {
        node.0.borrow_mut().attributes.insert(name.to_owned(), value.to_owned());
    }

    fn unset(&self, node: &Node, name: &'static str) {
        assert!(node.0.borrow_mut().attributes.remove(name).is_some(), "{name} was not there");
    }

    fn insert(&self, parent: &Node, node: &Node, before: Option<&Node>) {
        self.take_out(parent, node);
        let inside = &mut parent.0.borrow_mut().inside;
        let place = before.map_or(inside.len(), |before| {
            inside.iter().position(|one| one.is(before)).expect("it is put before one that stands there")
        });
        inside.insert(place, node.clone());
    }

    fn remove(&self, parent: &Node, node: &Node) {
        assert!(self.take_out(parent, node), "what is taken out stood there");
    }

    fn open(&self, node: &Node) {
        node.0.borrow_mut().open = true;
    }

    fn close(&self, node: &Node) {
        node.0.borrow_mut().open = false;
    }

    fn inside(&self, node: &Node) -> Vec<Node> {
        node.inside()
    }

    fn is(&self, node: &Node, tag: &'static str) -> bool {
        node.tag() == tag
    }

    fn bare(&self, node: &Node, but: &[(&'static str, String)]) {
        node.0.borrow_mut().attributes.retain(|name, _| but.iter().any(|(but, _)| but == name));
    }
}

impl PartialEq for Node {
    fn eq(&self, other: &Self) -> bool {
        self.is(other)
    }
}

impl Tree {
    fn take_out(&self, parent: &Node, node: &Node) -> bool {
        let inside = &mut parent.0.borrow_mut().inside;
        let before = inside.len();
        inside.retain(|one| !one.is(node));
        inside.len() < before
    }
}

impl Node {
    fn is(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }

    /// Returns its number: no other element or text of its tree has it.
    pub(crate) fn number(&self) -> usize {
        self.0.borrow().number
    }

    /// Returns its tag; of a text, nothing.
    pub(crate) fn tag(&self) -> &'static str {
        self.0.borrow().tag
    }

    /// Returns an attribute.
    pub(crate) fn attribute(&self, name: &str) -> Option<String> {
        self.0.borrow().attributes.get(name).cloned()
    }

    /// Returns all its attributes, by name.
    pub(crate) fn attributes(&self) -> BTreeMap<String, String> {
        self.0.borrow().attributes.clone()
    }

    /// Returns what stands in it.
    pub(crate) fn inside(&self) -> Vec<Self> {
        self.0.borrow().inside.clone()
    }

    /// Returns it and all that stands in it.
    pub(crate) fn all(&self) -> Vec<Self> {
        let mut all = vec![self.clone()];
        for one in self.inside() {
            all.extend(one.all());
        }
        all
    }

    /// Returns its text and that of all in it.
    pub(crate) fn said(&self) -> String {
        let inner = self.0.borrow();
        inner.inside.iter().fold(inner.text.clone(), |said, one| said + &one.said())
    }

    /// Returns it as HTML, without what only the patcher needs.
    pub(crate) fn html(&self) -> String {
        let inner = self.0.borrow();
        if inner.tag.is_empty() {
            return inner.text.clone();
        }
        let attributes = inner.attributes.iter().filter(|(name, _)| *name != yeanling_draw::HEARS);
        let attributes: String = attributes.map(|(name, value)| format!(" {name}=\"{value}\"")).collect();
        let inside: String = inner.inside.iter().map(Self::html).collect();
        format!("<{0}{attributes}>{inside}</{0}>", inner.tag)
    }
}

/// Returns a new, empty element, and the tree that it is of.
pub(crate) fn root() -> (Tree, Node) {
    let tree = Tree::default();
    let root = tree.element("div", false);
    (tree, root)
}

/// Draws nodes anew.
pub(crate) fn drawn(nodes: Vec<Drawn>) -> Node {
    let (tree, root) = root();
    yeanling_draw::Patcher::new(tree, root.clone()).draw(nodes, usize::MAX);
    root
}
