//! The browser's elements: what a page is drawn with, and the one place that hears what is pressed and typed on it.

use std::cell::RefCell;
use std::rc::Rc;

use wasm_bindgen::{JsCast, closure::Closure};
use web_sys::{
    Document, Element, Event, HtmlDialogElement, HtmlElement, HtmlInputElement, KeyboardEvent, MouseEvent,
    Node,
};
use yeanling_draw::{Dom, HEARS, On, Patcher};
use yeanling_pages::Action;

use super::navigation;

/// Where drawings are at home.
const SVG: &str = "http://www.w3.org/2000/svg";

/// The browser's elements.
#[derive(Debug)]
pub struct Browser(Document);

/// Tells `early.js` that the app's own screen stands: what was pressed before is pressed now.
pub fn say_it_stands() {
    if let Ok(stands) = Event::new("stands") {
        let _ = leptos::prelude::window().dispatch_event(&stands);
    }
}

/// A page that stands in the browser.
pub type Standing = Rc<RefCell<Patcher<Browser>>>;

impl Browser {
    /// Returns the elements of this page.
    #[must_use]
    pub fn new() -> Self {
        Self(leptos::prelude::document())
    }
}

impl Default for Browser {
    fn default() -> Self {
        Self::new()
    }
}

impl Dom for Browser {
    type Node = Node;

    fn element(&self, tag: &'static str, svg: bool) -> Node {
        let made = if svg { self.0.create_element_ns(Some(SVG), tag) } else { self.0.create_element(tag) };
        made.expect("a tag that exists").into()
    }

    fn text(&self, text: &str) -> Node {
        self.0.create_text_node(text).into()
    }

    fn set_text(&self, node: &Node, text: &str) {
        // What says so already is not painted again.
        if node.text_content().as_deref() != Some(text) {
            node.set_text_content(Some(text));
        }
    }

    fn set(&self, node: &Node, name: &'static str, value: &str) {
        if name == ".value" {
            // What stands there already is left alone, and with it the caret and what a phone's keys are still composing.
            let field: &HtmlInputElement = node.unchecked_ref();
            if field.value() != value {
                field.set_value(value);
            }
        } else if name.starts_with("--") {
            // The content policy lets no style be written as an attribute.
            let _ = node.unchecked_ref::<HtmlElement>().style().set_property(name, value);
        } else if !name.starts_with('.') {
            let _ = node.unchecked_ref::<Element>().set_attribute(name, value);
        }
    }

    fn unset(&self, node: &Node, name: &'static str) {
        if name.starts_with("--") {
            let _ = node.unchecked_ref::<HtmlElement>().style().remove_property(name);
        } else {
            let _ = node.unchecked_ref::<Element>().remove_attribute(name);
        }
    }

    fn insert(&self, parent: &Node, node: &Node, before: Option<&Node>) {
        let _ = parent.insert_before(node, before);
    }

    fn remove(&self, parent: &Node, node: &Node) {
        let _ = parent.remove_child(node);
    }

    fn open(&self, node: &Node) {
        let sheet: &HtmlDialogElement = node.unchecked_ref();
        if !sheet.open() && sheet.show_modal().is_err() {
            sheet.set_open(true);
        }
    }

    fn close(&self, node: &Node) {
        let sheet: &HtmlDialogElement = node.unchecked_ref();
        if sheet.open() {
            sheet.close();
        }
    }

    fn inside(&self, node: &Node) -> Vec<Node> {
        // The lines of the page's own text begin with spaces that stand for nothing.
        let stands = |node: &Node| {
            node.node_type() != Node::TEXT_NODE
                || node.text_content().is_some_and(|text| !text.starts_with('\n'))
        };
        let inside = std::iter::successors(node.first_child(), Node::next_sibling);
        inside.filter(stands).collect()
    }

    fn is(&self, node: &Node, tag: &'static str) -> bool {
        node.node_name().eq_ignore_ascii_case(if tag.is_empty() { "#text" } else { tag })
    }

    fn bare(&self, node: &Node, but: &[(&'static str, String)]) {
        let element: &Element = node.unchecked_ref();
        for name in element.get_attribute_names().iter().filter_map(|name| name.as_string()) {
            if !but.iter().any(|(but, _)| *but == name) {
                let _ = element.remove_attribute(&name);
            }
        }
    }
}

/// Puts an empty frame into the page, or takes the one that a first visit reads already, and hears what is pressed and typed
/// in it; `does` is told what that does.
pub fn stand(does: impl Fn(Action) + 'static) -> Standing {
    let document = leptos::prelude::document();
    let find = |which| document.query_selector(which).ok().flatten();
    let frame = find(":root[data-first] .first").unwrap_or_else(|| {
        let frame = document.create_element("div").expect("a tag that exists");
        if let Some(body) = document.body() {
            let _ = body.append_child(&frame);
        }
        frame
    });
    frame.set_class_name("frame");
    for gone in [".first", "#splash"].into_iter().filter_map(find) {
        gone.remove();
    }
    let standing = Rc::new(RefCell::new(Patcher::new(Browser::new(), frame.clone().into())));
    hear(&frame, &standing, does);
    standing
}

/// Hears what is pressed and typed under an element, and passes on what it does.
fn hear(root: &Element, standing: &Standing, does: impl Fn(Action) + 'static) {
    let standing = Rc::clone(standing);
    let listener = Closure::<dyn Fn(Event)>::new(move |event: Event| {
        // What is heard is read first and done after: doing it may draw.
        if let Some(action) = heard(&event, &standing) {
            does(action);
        }
    });
    let call = listener.as_ref().unchecked_ref();
    for name in ["click", "input", "change", "keydown"] {
        let _ = root.add_event_listener_with_callback(name, call);
    }
    // A sheet that closes tells nobody around it; on the way in it is heard.
    let _ = root.add_event_listener_with_callback_and_bool("close", call, true);
    listener.forget();
}

/// Returns what an event does.
fn heard(event: &Event, standing: &Standing) -> Option<Action> {
    let target: Element = event.target()?.dyn_into().ok()?;
    let on = |element: &Element| -> Option<On> {
        let id = element.get_attribute(HEARS)?.parse().ok()?;
        // A field that is taken away while it has the focus says that it was left, in the middle of drawing: the page had
        // its say when it was left itself.
        standing.try_borrow().ok()?.hears(id).cloned()
    };
    match event.type_().as_str() {
        "click" => {
            if let Some(sheet) = target.dyn_ref::<HtmlDialogElement>() {
                // Beside the paper.
                sheet.close();
                return None;
            }
            let pressed = target.closest("button").ok().flatten()?;
            let On { press, once, .. } = on(&pressed)?;
            press.filter(|_| !once || is_new_press(event.unchecked_ref()))
        }
        "input" => {
            let key = on(&target)?.input?;
            Some(Action::Type(key, target.unchecked_ref::<HtmlInputElement>().value()))
        }
        "change" => on(&target)?.change,
        "close" => on(&target)?.close,
        "keydown" => {
            let key = event.unchecked_ref::<KeyboardEvent>().key();
            if key == "Enter" {
                return on(&target)?.enter;
            }
            let keys = keys_for(&target)?;
            let name = if key == "," { "." } else { &key };
            let named = name.len() == 1 || name == "Backspace";
            let pressed = keys.query_selector(&format!("[data-key=\"{name}\"]"));
            let pressed = pressed.ok().flatten().filter(|_| named)?;
            event.prevent_default();
            on(&pressed)?.press
        }
        _ => None,
    }
}

/// Returns the keys that a digit of the keyboard presses: those under the focus, or those of what lies uppermost, where nothing
/// is typed into.
fn keys_for(target: &Element) -> Option<Element> {
    let found = |one: Result<Option<Element>, _>| one.ok().flatten();
    if let Some(keys) = found(target.closest(".keys")) {
        return Some(keys);
    }
    if target.matches("input, textarea, select").unwrap_or(true) {
        return None;
    }
    let document = target.owner_document()?;
    match found(document.query_selector("dialog[open]")) {
        Some(dialog) => found(dialog.query_selector(".keys")),
        None => found(document.query_selector(".keys")),
    }
}

/// A second press so soon (in milliseconds) and so near (in pixels) on one screen is the same one: rows move up under a
/// thumb that taps twice.
const SOON: f64 = 400.0;
const NEAR: i32 = 40;

/// When, where on the glass, and on which screen someone pressed.
#[derive(Debug)]
struct Press {
    at: f64,
    x: i32,
    y: i32,
    screen: String,
}

thread_local! {
    static LAST_PRESS: RefCell<Option<Press>> = const { RefCell::new(None) };
}

fn is_new_press(event: &MouseEvent) -> bool {
    // A press by keyboard counts no clicks, and is at no place.
    if event.detail() == 0 {
        return true;
    }
    let (at, x, y) = (event.time_stamp(), event.client_x(), event.client_y());
    let press = Press { at, x, y, screen: navigation::hash() };
    LAST_PRESS.with_borrow_mut(|last| {
        let again = last.as_ref().is_some_and(|last| {
            let near = (x - last.x).abs() < NEAR && (y - last.y).abs() < NEAR;
            near && (0.0..SOON).contains(&(at - last.at)) && press.screen == last.screen
        });
        *last = Some(press);
        !again
    })
}

/// Brings a part of the page into sight, and puts the focus there.
pub fn show(id: &str) {
    let part = leptos::prelude::document().get_element_by_id(id);
    if let Some(part) = part.and_then(|part| part.dyn_into::<HtmlElement>().ok()) {
        part.scroll_into_view();
        let _ = part.focus();
    }
}
