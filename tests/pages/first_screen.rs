//! The first screen of a first visit stands in `index.html`, so that it is read before the app is there. It is what the app
//! then draws in its place: nothing moves under a finger, and what was pressed on it is there to be pressed again.

use yeanling_draw::{Dom, Frame, Patcher, frame};
use yeanling_pages::Screen;

use crate::html::nodes;
use crate::phone::Phone;
use crate::tree::{self, Node};

/// The page that every visit loads first.
const INDEX: &str = include_str!("../../index.html");

/// What a hand can press.
const PRESSED: [&str; 2] = ["a", "button"];

/// Returns the screen that a phone draws whose book is empty.
fn drawn() -> Node {
    let phone = Phone::at("2027-02-01 23:55");
    let page =
        phone.view(|view| yeanling_pages::page(Screen::Watch, view, &yeanling_pages::Draft::default()));
    let mut all = nodes(&phone, Screen::Watch, &page);
    all.extend(frame(Screen::Watch, Frame::default()));
    tree::drawn(all)
}

/// Returns what stands in an element as it is written into the page: elements that hold others on lines of their own.
///
/// In the place of the hour stands the app's name. It is no heading and has no id: those are the app's, which takes its place.
fn written(node: &Node, depth: usize) -> String {
    let indent = "  ".repeat(depth);
    let lined = matches!(node.tag(), "div" | "main" | "nav" | "section");
    let attributes: String = node
        .attributes()
        .into_iter()
        .filter(|(name, _)| name != yeanling_draw::HEARS && name != "id")
        .map(|(name, value)| format!(" {name}=\"{value}\""))
        .collect();
    let (tag, inside) = (node.tag(), node.inside());
    if tag == "h1" {
        return format!("{indent}<h1 role=\"none\">Yeanling</h1>\n");
    }
    if lined && !inside.is_empty() {
        let inside: String = inside.iter().map(|one| written(one, depth + 1)).collect();
        return format!("{indent}<{tag}{attributes}>\n{inside}{indent}</{tag}>\n");
    }
    let inside: String = inside.iter().map(inline).collect();
    format!("{indent}<{tag}{attributes}>{inside}</{tag}>\n")
}

/// Returns an element as it is written on the line of another.
fn inline(node: &Node) -> String {
    if node.tag().is_empty() { node.said() } else { written(node, 0).trim_end().to_owned() }
}

/// Returns what stands in the page between two of its words.
fn between(start: &str, end: &str) -> String {
    let rest = INDEX.split_once(start).expect("it begins").1;
    rest.split_once(end).expect("it ends").0.trim_matches(['\n', ' ']).to_owned()
}

#[test]
fn the_page_holds_the_first_screen_as_the_app_draws_it() {
    let expected: String = drawn().inside().iter().map(|one| written(one, 2)).collect();
    let stands = between("<div class=\"frame first\">\n", "\n  </div>\n  <div id=\"splash\"");
    assert_eq!(stands, expected.trim(), "index.html should hold:\n{expected}");
}

#[test]
fn it_can_be_written_as_it_is() {
    let drawn = drawn();
    for node in drawn.all() {
        assert!(!node.said().contains(['<', '>', '&']), "{}", node.said());
        for (name, value) in node.attributes() {
            // A style cannot stand in the page, and what is referred to has no id there.
            assert!(!name.starts_with(['-', '.']), "{name}");
            assert!(
                !name.starts_with("aria-") || !(name.ends_with("by") || name.ends_with("controls")),
                "{name}"
            );
            assert!(!value.contains(['"', '<', '&']), "{value}");
        }
    }
}

/// What is pressed before the app is there is found by its words and its address once it is.
#[test]
fn each_of_its_buttons_is_told_from_the_others() {
    let all: Vec<(String, Option<String>)> = drawn()
        .all()
        .iter()
        .filter(|node| PRESSED.contains(&node.tag()))
        .map(|node| (node.said(), node.attribute("href")))
        .collect();
    assert!(all.len() > 10, "{all:?}");
    for one in &all {
        // Two of the same words lead to the same screen.
        let same = all.iter().filter(|other| *other == one).count();
        assert!(same == 1 || one.1.is_some(), "{one:?}");
    }
}

/// Whatever stands there before the first draw, what the app draws is the same; where it is that already, every element stays.
#[test]
fn what_stands_there_is_taken_over() {
    let phone = Phone::at("2027-02-01 23:55");
    let screens = Screen::alone();
    let drawn = |screen: &Screen| {
        let mut all = nodes(&phone, *screen, &phone.page_of(*screen));
        all.extend(frame(*screen, Frame::default()));
        all
    };
    let numbers = |root: &Node| root.all().iter().map(Node::number).collect::<Vec<_>>();
    for (from, to) in screens.iter().zip(screens.iter().skip(1).chain(&screens[..1])) {
        for to in [from, to] {
            let (tree, root) = tree::root();
            Patcher::new(tree.clone(), root.clone()).draw(drawn(from), usize::MAX);
            let before = numbers(&root);
            for node in root.all() {
                tree.set(&node, "data-pressed", "");
            }
            tree.unset(&root, "data-pressed");
            Patcher::new(tree, root.clone()).draw(drawn(to), usize::MAX);
            assert_eq!(root.html(), tree::drawn(drawn(to)).html(), "{from:?} to {to:?}");
            assert!(from != to || numbers(&root) == before, "{from:?} stays as it is");
        }
    }
}
