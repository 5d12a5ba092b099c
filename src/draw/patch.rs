//! Makes what stands in the browser be what the nodes say, touching only what differs.
//!
//! A block that compares equal is passed over whole. An element of the same key and kind stays, and with it the focus, the
//! caret, an open fold, a reader's place.
//!
//! A list moves only the rows that changed places: Leptos' own takes every row behind a moved one
//! out of the page and puts it back, three quarters of what a tap on the Watch cost. A list that opens shows its
//! first rows in the first frame and the others in the next.
//!
//! What stands there before the first draw is the first screen as the page itself brought it: it is taken over element by
//! element, so that nothing is painted twice, and a finger, a focus and a reader stay where they are.

use std::collections::HashMap;
use std::mem::{Discriminant, discriminant};
use std::sync::Arc;

use yeanling_pages::{Block, Key, Kind};

use crate::kinds;
use crate::node::{Element, Node, On};

/// A tree of elements that can be changed.
pub trait Dom {
    /// An element or a text of it.
    type Node: Clone + PartialEq;

    /// Makes an element; `svg` says whether it stands in a drawing.
    fn element(&self, tag: &'static str, svg: bool) -> Self::Node;
    /// Makes a text.
    fn text(&self, text: &str) -> Self::Node;
    /// Changes a text.
    fn set_text(&self, node: &Self::Node, text: &str);
    /// Gives an element an attribute.
    fn set(&self, node: &Self::Node, name: &'static str, value: &str);
    /// Takes an attribute from it.
    fn unset(&self, node: &Self::Node, name: &'static str);
    /// Puts a node into another, before one that stands there, else at the end.
    fn insert(&self, parent: &Self::Node, node: &Self::Node, before: Option<&Self::Node>);
    /// Takes a node out of another.
    fn remove(&self, parent: &Self::Node, node: &Self::Node);
    /// Opens a sheet over the page, once it stands in it.
    fn open(&self, node: &Self::Node);
    /// Closes a sheet before it is taken away, so that the focus comes back to where it was.
    fn close(&self, node: &Self::Node);
    /// Returns what stands in an element, in order.
    fn inside(&self, node: &Self::Node) -> Vec<Self::Node>;
    /// Says whether a node is an element of this tag; of none, whether it is a text.
    fn is(&self, node: &Self::Node, tag: &'static str) -> bool;
    /// Takes from an element all attributes but these.
    fn bare(&self, node: &Self::Node, but: &[(&'static str, String)]);
}

/// So many tiles at most take the room of one row.
const TILES_A_ROW: usize = 6;

/// The attribute by which a listener at the root finds what an element hears of.
pub const HEARS: &str = "data-hears";

/// What stands under one element.
#[derive(Debug)]
pub struct Patcher<D: Dom> {
    root: D::Node,
    live: Vec<Live<D>>,
    pen: Pen<D>,
}

#[derive(Debug)]
struct Pen<D: Dom> {
    dom: D,
    /// So many rows of a list at most.
    most: usize,
    heard: HashMap<u32, On>,
    next: u32,
    /// Sheets that were made and are not open yet.
    sheets: Vec<D::Node>,
}

/// One piece as it stands.
#[derive(Debug)]
struct Live<D: Dom> {
    tag: &'static str,
    key: Key,
    kind: Option<Discriminant<Kind>>,
    /// The block that it was drawn from whole.
    of: Option<Arc<Block>>,
    node: D::Node,
    text: String,
    attributes: Vec<(&'static str, String)>,
    on: Option<u32>,
    inside: Vec<Self>,
}

impl<D: Dom> Patcher<D> {
    /// Returns a patcher of an element. What stands in it is taken over by the first draw.
    pub fn new(dom: D, root: D::Node) -> Self {
        let pen = Pen { dom, most: usize::MAX, heard: HashMap::new(), next: 0, sheets: Vec::new() };
        Self { root, live: Vec::new(), pen }
    }

    /// Draws; of each list at most so many rows.
    pub fn draw(&mut self, nodes: Vec<Node>, most: usize) {
        self.pen.most = most;
        if self.live.is_empty() {
            let there = self.pen.dom.inside(&self.root);
            self.live = self.pen.fill(&self.root, false, there, nodes);
        } else {
            self.pen.inside(&self.root, false, &mut self.live, nodes);
        }
        for sheet in std::mem::take(&mut self.pen.sheets) {
            self.pen.dom.open(&sheet);
        }
    }

    /// Returns what the element with this value of [`HEARS`] hears of.
    #[must_use]
    pub fn hears(&self, id: u32) -> Option<&On> {
        self.pen.heard.get(&id)
    }
}

type Id<'a> = (&'static str, &'a str, Option<Discriminant<Kind>>);

fn id(node: &Node) -> Id<'_> {
    match node {
        Node::Text(_) => ("", "", None),
        Node::Element(element) => (element.tag, &element.key, None),
        Node::Of(block) => ("", &block.key, Some(discriminant(&block.kind))),
    }
}

impl<D: Dom> Live<D> {
    fn is(&self, (tag, key, kind): Id<'_>) -> bool {
        self.kind == kind && self.key == key && (kind.is_some() || self.tag == tag)
    }
}

impl<D: Dom> Pen<D> {
    /// Makes what stands in `parent` be `nodes`, in order.
    fn inside(&mut self, parent: &D::Node, svg: bool, live: &mut Vec<Live<D>>, nodes: Vec<Node>) {
        if live.len() == nodes.len() && live.iter().zip(&nodes).all(|(live, node)| live.is(id(node))) {
            for (live, node) in live.iter_mut().zip(nodes) {
                self.update(parent, live, svg, node);
            }
            return;
        }
        let mut old: Vec<Option<Live<D>>> = live.drain(..).map(Some).collect();
        // Mostly what follows what was found is what is looked for next.
        let mut next = 0;
        let mut before = Vec::with_capacity(nodes.len());
        for node in nodes {
            let is = |at: &usize| old[*at].as_ref().is_some_and(|old| old.is(id(&node)));
            let found = (next..old.len()).chain(0..next).find(is);
            before.push(found);
            next = found.map_or(next, |at| at + 1);
            live.push(match found.and_then(|at| old[at].take()) {
                Some(mut known) => {
                    self.update(parent, &mut known, svg, node);
                    known
                }
                None => self.create(svg, node, None),
            });
        }
        for gone in old.into_iter().flatten() {
            self.forget(&gone);
            self.dom.remove(parent, &gone.node);
        }
        let stays = stays(&before);
        let mut next: Option<&D::Node> = None;
        for (one, stays) in live.iter().zip(&stays).rev() {
            if !stays {
                self.dom.insert(parent, &one.node, next);
            }
            next = Some(&one.node);
        }
    }

    fn update(&mut self, parent: &D::Node, live: &mut Live<D>, svg: bool, node: Node) {
        match node {
            Node::Text(text) => {
                if live.text != text {
                    self.dom.set_text(&live.node, &text);
                    live.text = text;
                }
            }
            Node::Of(block) => {
                let same = |of: &Arc<Block>| Arc::ptr_eq(of, &block) || *of == block;
                if !live.of.as_ref().is_some_and(same) {
                    let element = self.drawn(&block);
                    if element.tag == live.tag {
                        self.change(live, svg, element);
                        live.of = self.whole(block);
                    } else {
                        // A button that became a link or a tick is another element, in its place.
                        let other = self.create(svg, Node::Of(block), None);
                        self.dom.insert(parent, &other.node, Some(&live.node));
                        self.forget(live);
                        self.dom.remove(parent, &live.node);
                        *live = other;
                    }
                }
            }
            Node::Element(element) => self.change(live, svg, element),
        }
    }

    fn change(&mut self, live: &mut Live<D>, svg: bool, element: Element) {
        let Element { tag, attributes, on, inside, .. } = element;
        if attributes != live.attributes {
            for (name, value) in &attributes {
                if !live.attributes.iter().any(|(n, v)| n == name && v == value) {
                    self.dom.set(&live.node, name, value);
                }
            }
            for (name, _) in &live.attributes {
                if !attributes.iter().any(|(n, _)| n == name) {
                    self.dom.unset(&live.node, name);
                }
            }
            live.attributes = attributes;
        } else if let Some((name, value)) = live.attributes.iter().find(|(name, _)| *name == ".value") {
            // A field can have been typed into since: what stands in it is made right also where the page stayed as it was.
            self.dom.set(&live.node, name, value);
        }
        match (on, live.on) {
            (Some(on), Some(id)) => _ = self.heard.insert(id, on),
            (Some(on), None) => live.on = Some(self.hear(&live.node, on)),
            (None, Some(id)) => {
                self.heard.remove(&id);
                self.dom.unset(&live.node, HEARS);
                live.on = None;
            }
            (None, None) => {}
        }
        self.inside(&live.node, svg || tag == "svg", &mut live.inside, inside);
    }

    /// Makes `nodes` stand in an element in which nothing stands but what is `there`.
    fn fill(&mut self, parent: &D::Node, svg: bool, there: Vec<D::Node>, nodes: Vec<Node>) -> Vec<Live<D>> {
        let mut there = there.into_iter();
        let mut inside = Vec::with_capacity(nodes.len());
        for piece in nodes {
            let old = there.next();
            let one = self.create(svg, piece, old.clone());
            if old.as_ref() != Some(&one.node) {
                self.dom.insert(parent, &one.node, old.as_ref());
                if let Some(old) = old {
                    self.dom.remove(parent, &old);
                }
            }
            inside.push(one);
        }
        for gone in there {
            self.dom.remove(parent, &gone);
        }
        inside
    }

    /// Makes a piece, out of what is `there` if that is of the same tag.
    fn create(&mut self, svg: bool, node: Node, there: Option<D::Node>) -> Live<D> {
        let (kind, of, element) = match node {
            Node::Text(text) => {
                let there = there.filter(|there| self.dom.is(there, ""));
                let node = match there {
                    Some(there) => {
                        self.dom.set_text(&there, &text);
                        there
                    }
                    None => self.dom.text(&text),
                };
                let key = Key::Borrowed("");
                return Live {
                    tag: "",
                    key,
                    kind: None,
                    of: None,
                    node,
                    text,
                    attributes: Vec::new(),
                    on: None,
                    inside: Vec::new(),
                };
            }
            Node::Of(block) => {
                let mut element = self.drawn(&block);
                element.key.clone_from(&block.key);
                (Some(discriminant(&block.kind)), self.whole(block), element)
            }
            Node::Element(element) => (None, None, element),
        };
        let Element { tag, key, attributes, on, inside: nodes } = element;
        let svg = svg || tag == "svg";
        let (node, there) = match there.filter(|there| self.dom.is(there, tag)) {
            Some(there) => {
                self.dom.bare(&there, &attributes);
                let inside = self.dom.inside(&there);
                (there, inside)
            }
            None => (self.dom.element(tag, svg), Vec::new()),
        };
        for (name, value) in &attributes {
            self.dom.set(&node, name, value);
            if *name == ".modal" {
                self.sheets.push(node.clone());
            }
        }
        let on = on.map(|on| self.hear(&node, on));
        let inside = self.fill(&node, svg, there, nodes);
        Live { tag, key, kind, of, node, text: String::new(), attributes, on, inside }
    }

    fn hear(&mut self, node: &D::Node, on: On) -> u32 {
        self.next += 1;
        self.dom.set(node, HEARS, &self.next.to_string());
        self.heard.insert(self.next, on);
        self.next
    }

    /// Lets go of what hears in a piece that goes, and closes the sheets in it.
    fn forget(&mut self, gone: &Live<D>) {
        if let Some(id) = gone.on {
            self.heard.remove(&id);
        }
        if gone.attributes.iter().any(|(name, _)| *name == ".modal") {
            self.dom.close(&gone.node);
        }
        for inside in &gone.inside {
            self.forget(inside);
        }
    }

    /// What a block looks like; of rows, so many at most.
    fn drawn(&self, block: &Block) -> Element {
        let mut element = kinds::node(block);
        match block.kind {
            Kind::Rows(_) => element.inside.truncate(self.most),
            Kind::Tiles(_) => element.inside.truncate(self.most.saturating_mul(TILES_A_ROW)),
            _ => {}
        }
        element
    }

    /// Only what was drawn whole need not be looked at again.
    fn whole(&self, block: Arc<Block>) -> Option<Arc<Block>> {
        (self.most == usize::MAX).then_some(block)
    }
}

/// Says of each piece, given where it stood before, whether it can stay where it is: those of the longest run in order do.
fn stays(before: &[Option<usize>]) -> Vec<bool> {
    // The piece on which the shortest chain of its length ends so far, for each length; and the piece before each in its.
    let mut ends: Vec<usize> = Vec::new();
    let mut behind: Vec<Option<usize>> = vec![None; before.len()];
    for (piece, was) in before.iter().enumerate().filter(|(_, was)| was.is_some()) {
        let length = ends.partition_point(|end| before[*end] < *was);
        behind[piece] = length.checked_sub(1).map(|shorter| ends[shorter]);
        if length == ends.len() {
            ends.push(piece);
        } else {
            ends[length] = piece;
        }
    }
    let mut stays = vec![false; before.len()];
    let mut last = ends.last().copied();
    while let Some(piece) = last {
        stays[piece] = true;
        last = behind[piece];
    }
    stays
}

#[cfg(test)]
mod tests {
    use super::stays;

    #[track_caller]
    fn check(before: &str, expected: &str) {
        let places: Vec<Option<usize>> = before.split(' ').map(|place| place.parse().ok()).collect();
        let found: String = stays(&places).into_iter().map(|stays| if stays { '=' } else { '+' }).collect();
        assert_eq!(found, expected);
    }

    #[test]
    fn only_who_changed_places_is_moved() {
        check("0 1 2 3", "====");
        check("1 2 3 0", "===+");
        check("3 0 1 2", "+===");
        check("0 2 1 3", "=+==");
        check("3 2 1 0", "+++=");
    }

    #[test]
    fn new_rows_are_put_in_and_those_behind_a_gap_stay() {
        check("- 0 1", "+==");
        check("1 2 - 4", "==+=");
        check("- -", "++");
        check("2 - 5 0 6", "=+=+=");
    }
}
